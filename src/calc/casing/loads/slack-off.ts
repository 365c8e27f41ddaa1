import { formula, tableFormula } from "../../../cite/formula.ts";
import type { KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import { type LoadSection, loadSectionsOf } from "./load-sections.ts";
import { runTo } from "./run-to.ts";
import { LOCKED, laidOut, type Slide, slidingForce } from "./soft-string.ts";

/*
 * Whether pipe that is let down gets to bottom. It is pushed by nothing but its own weight: where friction presses it
 * together so hard that it coils, the coil's load on the wall is dragged along as well, and that drag grows with the
 * square of the push. Beyond some depth of the shoe nothing more gets through, and the string stops.
 */

const source = cite(
	"wu-juvkam-wold-1993",
	"drag of helically buckled pipe on that of the soft string of johancsik-1984; from memory",
);

const inputs = {
	path: { table: "path" },
	sections: { table: "sections" },
	inside: { table: "pressure" },
	outside: { table: "pressure" },
	MD_cased: "measured-depth",
	μ_cased: "ratio",
	μ_open: "ratio",
	D_cased: "diameter",
	D_open: "diameter",
	MD_collar: { many: "measured-depth" },
} as const;

const validity =
	"pushed by its own weight alone, the traveling block not counted; no stiffness before it coils; coiled pipe as a full helix";

/** Depths of the shoe at which the hook load is worked. */
const SHOE_DEPTHS = 25;
/** The reach is found to this [ft]. */
const NEAR = 5;

interface Run extends Omit<Slide, "way" | "room"> {
	readonly path: KnownTable;
	readonly D_cased: number;
	readonly D_open: number;
}

const runOf = (given: Run, sections: readonly LoadSection[], shoe: number) => {
	const left = (sections.at(-1)?.bottom ?? 0) - shoe;
	const MD_collar = given.MD_collar.map((md) => md - left);
	return slidingForce(laidOut(given.path, runTo(sections, shoe), given.MD_cased, MD_collar), {
		...given,
		MD_collar,
		way: -1,
		room: { cased: given.D_cased, open: given.D_open },
	});
};

/** What the hook carries with the shoe at a depth; nothing where the string does not go down there. */
const hookAt = (given: Run, sections: readonly LoadSection[], shoe: number): number => {
	const [top] = runOf(given, sections, shoe);
	return top === undefined || top.force < LOCKED ? Number.NEGATIVE_INFINITY : top.force;
};

/** Rows down to where the string stops; the last one is there, or at bottom. */
export const slackOffHookLoad = tableFormula({
	id: "casing/slack-off-hook-load",
	name: "Hook load let down, with the drag of coiled pipe, as far as the string goes",
	expression:
		"axial force at the top: ΔF = W cos Ī − μ (N + N_h ΔL), N_h = r F² / (4 E J) where the compression is above that of helical buckling",
	source,
	inputs,
	gives: { md: "measured-depth", hook_load: "force" },
	validity,
	compute: (given) => {
		const sections = loadSectionsOf(given.sections);
		const [top, bottom] = [sections[0]?.top, sections.at(-1)?.bottom];
		if (top === undefined || bottom === undefined) return [];
		const rows: { md: number; hook_load: number }[] = [];
		for (let i = 1; i <= SHOE_DEPTHS; i++) {
			const md = top + (i / SHOE_DEPTHS) * (bottom - top);
			const hook_load = hookAt(given, sections, md);
			if (hook_load > 0) {
				rows.push({ md, hook_load });
				continue;
			}
			let [goes, stops] = [rows.at(-1)?.md ?? top, md];
			while (stops - goes > NEAR) {
				const middle = (goes + stops) / 2;
				if (hookAt(given, sections, middle) > 0) goes = middle;
				else stops = middle;
			}
			return [...rows, { md: goes, hook_load: Math.max(0, hookAt(given, sections, goes)) }];
		}
		return rows;
	},
});

const line = { line: { table: "md, hook_load" } } as const;

/** How deep the shoe gets: the planned depth where nothing stops it [ft]. */
export const greatestReach = formula({
	id: "casing/greatest-reach",
	name: "Greatest depth that the shoe reaches by the weight of the string",
	expression: "MD where the hook load let down comes to nothing, or the shoe",
	source: cite("definition"),
	inputs: line,
	gives: "measured-depth",
	compute: ({ line: { rows } }) => rows.at(-1)?.["md"] ?? Number.NaN,
});

/** [lbf] */
export const slackOffAtReach = formula({
	id: "casing/slack-off-at-reach",
	name: "Hook load let down at the greatest depth that the shoe reaches",
	expression: "hook load at the last MD",
	source: cite("definition"),
	inputs: line,
	gives: "force",
	compute: ({ line: { rows } }) => rows.at(-1)?.["hook_load"] ?? Number.NaN,
});

/** The push in a string let down to where its shoe gets, beside the pushes that buckle it. */
export const slackOffCompression = tableFormula({
	id: "casing/slack-off-compression",
	name: "Compression of the string let down, beside those of buckling",
	expression:
		"−(F − p_i A_i + p_o A_o), F let down with friction and the drag of coiled pipe; F_sinusoidal, F_helical there",
	source,
	inputs: { ...inputs, MD_shoe: "measured-depth" },
	gives: {
		md: "measured-depth",
		tvd: "true-vertical-depth",
		compression: "force",
		sinusoidal: "force",
		helical: "force",
	},
	validity,
	compute: (given) => {
		const rows = runOf(given, loadSectionsOf(given.sections), given.MD_shoe).map(
			({ md, tvd, effective, sinusoidal = Number.NaN, helical = Number.NaN }) => ({
				md,
				tvd,
				compression: Math.max(0, -effective),
				sinusoidal,
				helical,
			}),
		);
		// The lowest node has no element below it that could buckle.
		const worked = rows.filter(({ helical }) => helical > 0);
		return worked.length >= rows.length - given.sections.rows.length ? worked : [];
	},
});

/** Where the push comes nearest to the coiling one, or passes it most. */
const worst = ({ rows }: KnownTable) =>
	rows.reduce<KnownTable["rows"][number] | undefined>(
		(most, row) => (most === undefined || shareOf(row) > shareOf(most) ? row : most),
		undefined,
	);

const shareOf = (row: KnownTable["rows"][number]): number =>
	(row["compression"] ?? Number.NaN) / (row["helical"] ?? Number.NaN);

const pressed = { line: { table: "compression and helical limit" } } as const;
const atReach = "let down with the greatest friction, the shoe as deep as it gets";

export const compressionOverHelical = formula({
	id: "casing/compression-over-helical",
	name: "Greatest compression of the string let down over that of helical buckling",
	expression: "max (compression / F_helical) along the string",
	source: cite("definition"),
	inputs: pressed,
	gives: "ratio",
	validity: atReach,
	compute: ({ line: table }) => shareOf(worst(table) ?? {}),
});

export const compressionDepth = formula({
	id: "casing/compression-over-helical-depth",
	name: "Depth of the greatest compression over that of helical buckling",
	expression: "MD where compression / F_helical is greatest",
	source: cite("definition"),
	inputs: pressed,
	gives: "measured-depth",
	validity: atReach,
	compute: ({ line: table }) => worst(table)?.["md"] ?? Number.NaN,
});

export const compressionThere = formula({
	id: "casing/compression-at-worst",
	name: "Compression where it is greatest against helical buckling",
	expression: "compression where compression / F_helical is greatest",
	source: cite("definition"),
	inputs: pressed,
	gives: "force",
	validity: atReach,
	compute: ({ line: table }) => worst(table)?.["compression"] ?? Number.NaN,
});

export const helicalThere = formula({
	id: "casing/helical-buckling-at-worst",
	name: "Helical buckling force where compression is greatest against it",
	expression: "F_helical where compression / F_helical is greatest",
	source: cite("definition"),
	inputs: pressed,
	gives: "force",
	validity: atReach,
	compute: ({ line: table }) => worst(table)?.["helical"] ?? Number.NaN,
});
