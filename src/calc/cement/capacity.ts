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
	inputs: { diameter: "diameter" },
	gives: "capacity",
	validity: "diameter not below zero",
	compute: ({ diameter }) => (diameter < 0 ? Number.NaN : BARRELS_PER_FOOT * diameter ** 2),
});

/** Volume per length between a pipe and what surrounds it [bbl/ft]. */
export const annularCapacity = formula({
	id: "cement/annular-capacity",
	name: "Annular capacity",
	expression: "C = (D² − d²) / 1029.4",
	source: cite("lapeyrouse", "ch. 1, annular capacity; the constant from exact definitions"),
	inputs: { outer: "diameter", inner: "diameter" },
	gives: "capacity",
	validity: "the pipe is no larger than what surrounds it",
	compute: ({ outer, inner }) => (inner > outer ? Number.NaN : BARRELS_PER_FOOT * (outer ** 2 - inner ** 2)),
});

/** Hole diameter after enlargement [in]; washout is on diameter. */
export const washedOutDiameter = formula({
	id: "cement/washed-out-diameter",
	name: "Washed-out hole diameter",
	expression: "D_w = D (1 + w)",
	source: cite("definition"),
	inputs: { diameter: "diameter", washout: "share" },
	gives: "diameter",
	validity: "washout not below zero",
	compute: ({ diameter, washout }) => (washout < 0 ? Number.NaN : diameter * (1 + washout)),
});

/** Length along the hole between two depths [ft]. */
export const intervalLength = formula({
	id: "cement/interval-length",
	name: "Length of an interval",
	expression: "L = MD_bottom − MD_top",
	source: cite("geometry"),
	inputs: { top: "measured-depth", bottom: "measured-depth" },
	gives: "length",
	validity: "the bottom is no shallower than the top",
	compute: ({ top, bottom }) => (bottom < top ? Number.NaN : bottom - top),
});

/** Volume of an interval of one cross-section [bbl]. */
export const intervalVolume = formula({
	id: "cement/interval-volume",
	name: "Volume of an interval",
	expression: "V = C L",
	source: cite("geometry"),
	inputs: { capacity: "capacity", length: "length" },
	gives: "volume",
	compute: ({ capacity, length }) => capacity * length,
});

/** [bbl] */
export const totalVolume = formula({
	id: "cement/total-volume",
	name: "Total volume",
	expression: "V = Σ Vᵢ",
	source: cite("conservation"),
	inputs: { parts: { many: "volume" } },
	gives: "volume",
	compute: ({ parts }) => parts.reduce<number>((sum, part) => sum + part, 0),
});

/** Open-hole annulus with its allowance for what the hole takes beyond its measure [bbl]. Applied once, and only here. */
export const volumeWithExcess = formula({
	id: "cement/volume-with-excess",
	name: "Open-hole volume with excess",
	expression: "V_e = V (1 + e)",
	source: cite("lapeyrouse", "ch. 2, cement volumes with excess"),
	inputs: { volume: "volume", excess: "share" },
	gives: "volume",
	validity: "excess not below zero; open hole only",
	compute: ({ volume, excess }) => (excess < 0 ? Number.NaN : volume * (1 + excess)),
});
