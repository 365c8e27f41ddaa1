import { tableFormula } from "../../../cite/formula.ts";
import type { KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import { collapseOf } from "../collapse.ts";

/**
 * A string's sections as the load lines see them: walls worn, and the ratings of pipe and connection, each lowered by
 * the same wear. A connection that has no rating of its own stands with the pipe's.
 */
export const loadSections = tableFormula({
	id: "casing/load-sections",
	name: "Sections as loaded",
	expression: "t (1 − wear); P (1 − wear); F (1 − wear); stated collapse over calculated, k",
	source: cite("common-practice", "uniform wear"),
	inputs: {
		top: { many: "measured-depth" },
		bottom: { many: "measured-depth" },
		D: { many: "diameter" },
		t: { many: "diameter" },
		Y_p: { many: "pressure" },
		w: { many: "linear-weight" },
		P_pipe: { many: "pressure" },
		P_connection: { many: "pressure" },
		P_c: { many: "pressure" },
		F_pipe: { many: "force" },
		F_connection: { many: "force" },
		wear: "share",
	},
	gives: {
		top: "measured-depth",
		bottom: "measured-depth",
		D: "diameter",
		t: "diameter",
		Y_p: "pressure",
		w: "linear-weight",
		P_pipe: "pressure",
		P_connection: "pressure",
		F_pipe: "force",
		F_connection: "force",
		k: "ratio",
	},
	validity: "0 ≤ wear < 1; as many of each as sections",
	compute: (given) => {
		const { top, wear } = given;
		if (!(wear >= 0 && wear < 1)) return [];
		const left = 1 - wear;
		const rows = top.map((depth, i) => {
			const [D, t, Y_p] = [at(given.D, i), at(given.t, i), at(given.Y_p, i)];
			const nominal = collapseOf({ D, t, Y_p });
			return {
				top: depth as number,
				bottom: at(given.bottom, i),
				D,
				t: t * left,
				Y_p,
				w: at(given.w, i),
				P_pipe: at(given.P_pipe, i) * left,
				P_connection: at(given.P_connection, i) * left,
				F_pipe: at(given.F_pipe, i) * left,
				F_connection: at(given.F_connection, i) * left,
				k: at(given.P_c, i) / (typeof nominal === "number" ? nominal : nominal.value),
			};
		});
		return rows.every((row) => Object.values(row).every(Number.isFinite)) ? rows : [];
	},
});

const at = (values: readonly number[], i: number): number => values[i] ?? Number.NaN;

/** One row of the table, typed. */
export interface LoadSection {
	readonly top: number;
	readonly bottom: number;
	readonly D: number;
	readonly t: number;
	readonly Y_p: number;
	readonly w: number;
	readonly P_pipe: number;
	readonly P_connection: number;
	readonly F_pipe: number;
	readonly F_connection: number;
	readonly k: number;
}

export const loadSectionsOf = (table: KnownTable): readonly LoadSection[] =>
	table.rows as unknown as readonly LoadSection[];
