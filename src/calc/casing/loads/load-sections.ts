import { tableFormula } from "../../../cite/formula.ts";
import type { KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import { collapseOf } from "../collapse.ts";

/**
 * A string's sections as the load lines see them: walls worn, ratings the least of pipe and connection and lowered by
 * the same wear.
 */
export const loadSections = tableFormula({
	id: "casing/load-sections",
	name: "Sections as loaded",
	expression: "t (1 − wear); P_i (1 − wear); F_t (1 − wear); stated collapse over calculated, k",
	source: cite("common-practice", "uniform wear"),
	inputs: {
		top: { many: "measured-depth" },
		bottom: { many: "measured-depth" },
		D: { many: "diameter" },
		t: { many: "diameter" },
		Y_p: { many: "pressure" },
		w: { many: "linear-weight" },
		P_i: { many: "pressure" },
		P_c: { many: "pressure" },
		F_t: { many: "force" },
		wear: "share",
	},
	gives: {
		top: "measured-depth",
		bottom: "measured-depth",
		D: "diameter",
		t: "diameter",
		Y_p: "pressure",
		w: "linear-weight",
		P_i: "pressure",
		F_t: "force",
		k: "ratio",
	},
	validity: "0 ≤ wear < 1; as many of each as sections",
	compute: ({ top, bottom, D, t, Y_p, w, P_i, P_c, F_t, wear }) => {
		if (!(wear >= 0 && wear < 1)) return [];
		const left = 1 - wear;
		const rows = top.map((depth, i) => {
			const [size, wall, grade] = [at(D, i), at(t, i), at(Y_p, i)];
			const nominal = collapseOf({ D: size, t: wall, Y_p: grade });
			return {
				top: depth as number,
				bottom: at(bottom, i),
				D: size,
				t: wall * left,
				Y_p: grade,
				w: at(w, i),
				P_i: at(P_i, i) * left,
				F_t: at(F_t, i) * left,
				k: at(P_c, i) / (typeof nominal === "number" ? nominal : nominal.value),
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
	readonly P_i: number;
	readonly F_t: number;
	readonly k: number;
}

export const loadSectionsOf = (table: KnownTable): readonly LoadSection[] =>
	table.rows as unknown as readonly LoadSection[];
