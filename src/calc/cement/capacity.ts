import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { BARREL, CUBIC_FOOT, FOOT, INCH } from "../../units/factors.ts";

/**
 * Bores and rings in bbl per foot and square inch of diameter squared: π/4 of an inch squared, a foot long, in barrels.
 * Handbooks print its inverse as 1029.4; nothing here is rounded.
 */
const BARRELS_PER_FOOT = ((Math.PI / 4) * INCH ** 2 * FOOT) / BARREL;

/** Cubic feet in a barrel, exactly 9702/1728. */
export const CUBIC_FEET_PER_BARREL = BARREL / CUBIC_FOOT;

/** Volume per length of a bore [bbl/ft]. */
export const pipeCapacity = formula({
	id: "cement/pipe-capacity",
	name: "Capacity of a bore",
	expression: "C = d² / 1029.4",
	source: cite("lapeyrouse", "ch. 1, capacity formulas; the constant from exact definitions"),
	inputs: { d: "diameter" },
	gives: "capacity",
	validity: "diameter not below zero",
	compute: ({ d }) => (d < 0 ? Number.NaN : BARRELS_PER_FOOT * d ** 2),
});

/** Volume per length between a pipe and what surrounds it [bbl/ft]. */
export const annularCapacity = formula({
	id: "cement/annular-capacity",
	name: "Annular capacity",
	expression: "C = (D² − d²) / 1029.4",
	source: cite("lapeyrouse", "ch. 1, annular capacity; the constant from exact definitions"),
	inputs: { D: "diameter", d: "diameter" },
	gives: "capacity",
	validity: "the pipe is no larger than what surrounds it",
	compute: ({ D, d }) => (d > D ? Number.NaN : BARRELS_PER_FOOT * (D ** 2 - d ** 2)),
});

/** Hole diameter after enlargement [in]; washout is on diameter. */
export const washedOutDiameter = formula({
	id: "cement/washed-out-diameter",
	name: "Washed-out hole diameter",
	expression: "D_w = D (1 + w)",
	source: cite("definition"),
	inputs: { D: "diameter", w: "share" },
	gives: "diameter",
	validity: "washout not below zero",
	compute: ({ D, w }) => (w < 0 ? Number.NaN : D * (1 + w)),
});

/** Diameter of the round hole that holds as much as a logged one between two depths [in]. */
export const caliperDiameter = formula({
	id: "cement/caliper-diameter",
	name: "Hole diameter of equal volume, by caliper",
	expression: "D = √(∫ D(z)² dz / (MD_bottom − MD_top)), D(z) on the straight line between rows",
	source: cite("geometry"),
	inputs: {
		log: { table: "md, diameter" },
		MD_top: "measured-depth",
		MD_bottom: "measured-depth",
	},
	gives: "diameter",
	validity: "above the first row and below the last the hole is as wide as there",
	compute: ({ log, MD_top, MD_bottom }) => {
		if (MD_bottom <= MD_top) return Number.NaN;
		const widthAt = (depth: number): number => {
			const i = log.rows.findIndex((row) => (row["md"] ?? 0) >= depth);
			const [row, before] = [log.rows.at(i), log.rows[i - 1]];
			if (i <= 0 || row === undefined || before === undefined) return row?.["diameter"] ?? Number.NaN;
			const [a, b] = [before["md"] ?? 0, row["md"] ?? 0];
			const [p, q] = [before["diameter"] ?? 0, row["diameter"] ?? 0];
			return b > a ? p + ((q - p) * (depth - a)) / (b - a) : q;
		};
		const between = log.rows.flatMap(({ md }) =>
			md !== undefined && md > MD_top && md < MD_bottom ? [md] : [],
		);
		const depths = [MD_top, ...between, MD_bottom];
		const integral = depths.slice(1).reduce((sum, depth, i) => {
			const above = depths[i] ?? depth;
			const [p, q] = [widthAt(above), widthAt(depth)];
			// A straight line's square has the mean (p² + pq + q²)/3.
			return sum + ((p * p + p * q + q * q) / 3) * (depth - above);
		}, 0);
		return Math.sqrt(integral / (MD_bottom - MD_top));
	},
});

/** Length along the hole between two depths [ft]. */
export const intervalLength = formula({
	id: "cement/interval-length",
	name: "Length of an interval",
	expression: "L = MD_bottom − MD_top",
	source: cite("geometry"),
	inputs: { MD_top: "measured-depth", MD_bottom: "measured-depth" },
	gives: "length",
	validity: "the bottom is no shallower than the top",
	compute: ({ MD_top, MD_bottom }) => (MD_bottom < MD_top ? Number.NaN : MD_bottom - MD_top),
});

/** Volume of an interval of one cross-section [bbl]. */
export const intervalVolume = formula({
	id: "cement/interval-volume",
	name: "Volume of an interval",
	expression: "V = C L",
	source: cite("geometry"),
	inputs: { C: "capacity", L: "length" },
	gives: "volume",
	compute: ({ C, L }) => C * L,
});

/** [bbl] */
export const totalVolume = formula({
	id: "cement/total-volume",
	name: "Total volume",
	expression: "V = Σ V_i",
	source: cite("conservation"),
	inputs: { V_i: { many: "volume" } },
	gives: "volume",
	compute: ({ V_i }) => V_i.reduce<number>((sum, V) => sum + V, 0),
});

/** Open-hole annulus with its allowance for what the hole takes beyond its measure [bbl]. Applied once, and only here. */
export const volumeWithExcess = formula({
	id: "cement/volume-with-excess",
	name: "Open-hole volume with excess",
	expression: "V_e = V (1 + e)",
	source: cite("lapeyrouse", "ch. 2, cement volumes with excess"),
	inputs: { V: "volume", e: "share" },
	gives: "volume",
	validity: "excess not below zero; open hole only",
	compute: ({ V, e }) => (e < 0 ? Number.NaN : V * (1 + e)),
});
