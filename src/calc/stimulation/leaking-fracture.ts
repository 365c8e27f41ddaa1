import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { BARREL, CUBIC_FOOT, FOOT, INCH } from "../../units/factors.ts";
import { kgdWidth } from "./kgd.ts";
import { carterBracket, carterHalfLength } from "./leakoff.ts";
import { pknWidthConstantRate } from "./pkn.ts";
import { INJECTION, inSi } from "./plane-strain.ts";

/*
 * Width and length of one fracture that loses fluid, found together: the width of the published model at a length, the
 * length of Carter's balance at that width, until neither moves. Illustrative, as every geometry here.
 */

const planar = { ...INJECTION, h: "length", C: "leakoff", t: "duration" } as const;
const source = cite("valko-economides-1995", "width equation and Carter's material balance solved together");
const validity = "constant rate, height and leakoff coefficient; no spurt; one-wing rate; Newtonian fluid";

type Planar = { readonly [S in keyof typeof planar]: number };

/** [ft] */
export const pknLeakingLength = formula({
	id: "stimulation/pkn-leaking-length",
	name: "PKN half-length with leakoff (illustrative)",
	expression: "x_f by Carter at w = 0.628 · 3.57 (μ q x_f / E')^¼",
	source,
	inputs: planar,
	gives: "length",
	validity: `half-length well above the height; ${validity}`,
	compute: (given) =>
		balanced(given, (x_f) => Number(pknWidthConstantRate.compute({ ...given, x_f } as never))),
});

/** [ft] */
export const kgdLeakingLength = formula({
	id: "stimulation/kgd-leaking-length",
	name: "KGD half-length with leakoff (illustrative)",
	expression: "x_f by Carter at w = π/4 · 3.22 (μ q x_f² / (E' h))^¼",
	source,
	inputs: planar,
	gives: "length",
	validity: `half-length below the height; ${validity}`,
	compute: (given) => balanced(given, (x_f) => Number(kgdWidth.compute({ ...given, x_f } as never))),
});

/** Constant of the radial width at a radius: the published radius and width in time, with the time taken out. */
const RADIAL_WIDTH = 3.65 / 0.572 ** 0.25;

/** Mean over the disk is 8/15 of it [in]. */
export const radialWidthAtRadius = formula({
	id: "stimulation/radial-width-at-radius",
	name: "Radial fracture, greatest width at a radius",
	expression: "w_0 = 3.65 / 0.572^¼ (μ q R / E')^¼",
	source: cite("valko-economides-1995", "radial fracture: radius and width, the time eliminated"),
	inputs: { ...INJECTION, R: "length" },
	gives: "diameter",
	validity: "one-wing rate; Newtonian fluid",
	compute: (given) => {
		const { q, μ, E } = inSi(given);
		return (RADIAL_WIDTH * ((μ * q * given.R * FOOT) / E) ** 0.25) / INCH;
	},
});

/** [ft] */
export const radialLeakingRadius = formula({
	id: "stimulation/radial-leaking-radius",
	name: "Radial fracture, radius with leakoff (illustrative)",
	expression:
		"R² = 2 q (4 w_0) / (30 π² C²) [e^(β²) erfc β + 2β/√π − 1], β = 15 C √(π t) / (4 w_0), w_0 at R",
	source: cite("geertsma-de-klerk-1969", "radial fracture with Carter leakoff"),
	inputs: { ...INJECTION, C: "leakoff", t: "duration" },
	gives: "length",
	validity: `nothing holds the height; ${validity}`,
	compute: (given) => {
		const q = given.q * (BARREL / CUBIC_FOOT);
		return settled((R) => {
			const w = Number(radialWidthAtRadius.compute({ ...given, R } as never)) / 12;
			const beta = (15 * given.C * Math.sqrt(Math.PI * given.t)) / (4 * w);
			return Math.sqrt(((8 * q * w) / (30 * Math.PI ** 2 * given.C ** 2)) * carterBracket(beta));
		});
	},
});

const balanced = (given: Planar, inchesAt: (length: number) => number): number =>
	settled((length) =>
		Number(carterHalfLength.compute({ ...given, w: inchesAt(length) / 12, S: 0 } as never)),
	);

/** The length that its own width gives back. Width grows with a root of the length, so the steps close in. */
const settled = (next: (length: number) => number): number => {
	let length = 300;
	for (let i = 0; i < 200; i++) {
		const better = next(length);
		if (!(better > 0)) return Number.NaN;
		if (Math.abs(better - length) < 1e-12 * better) return better;
		length = better;
	}
	return Number.NaN;
};

/** Mean of a radial fracture's width over its face [in]. */
export const radialMeanWidth = formula({
	id: "stimulation/radial-mean-width",
	name: "Radial fracture, mean width",
	expression: "w = 8/15 w_0",
	source: cite("valko-economides-1995", "radial fracture"),
	inputs: { w_0: "diameter" },
	gives: "diameter",
	compute: ({ w_0 }) => (8 / 15) * w_0,
});

/** Part of what went into a radial fracture that is still in it. */
export const radialEfficiency = formula({
	id: "stimulation/radial-efficiency",
	name: "Fluid efficiency of a radial fracture",
	expression: "η = π R² w / (2 q t)",
	source: cite("conservation", "volume of the disk over what went into both wings"),
	inputs: { R: "length", w: "diameter", q: "flow-rate", t: "duration" },
	gives: "share",
	validity: "one-wing rate",
	compute: ({ R, w, q, t }) => (Math.PI * R ** 2 * (w / 12)) / (2 * q * (BARREL / CUBIC_FOOT) * t),
});

/** Part of what went into a wing of constant height that is still in it. */
export const planarEfficiency = formula({
	id: "stimulation/planar-efficiency",
	name: "Fluid efficiency of a fracture of constant height",
	expression: "η = x_f h w / (q t)",
	source: cite("conservation", "volume of the wing over what went into it"),
	inputs: { x_f: "length", h: "length", w: "diameter", q: "flow-rate", t: "duration" },
	gives: "share",
	validity: "one-wing rate",
	compute: ({ x_f, h, w, q, t }) => (x_f * h * (w / 12)) / (q * (BARREL / CUBIC_FOOT) * t),
});

/** Net pressure that holds a width open [psi]. */
export const netPressureOfWidth = formula({
	id: "stimulation/net-pressure-of-width",
	name: "Net pressure at the well, from the width",
	expression: "p = E' w_0 / (2 h), with w = 0.628 w_0",
	source: cite(
		"valko-economides-1995",
		"PKN: elliptical cross-section of a pressurized crack, after Sneddon",
	),
	inputs: { "E'": "pressure", w: "diameter", h: "length" },
	gives: "pressure",
	validity: "PKN, the width mean over the wing",
	compute: (given) => (given["E'"] * (given.w / 12 / 0.628)) / (2 * given.h),
});

/** [psi] */
export const kgdNetPressure = formula({
	id: "stimulation/kgd-net-pressure",
	name: "KGD net pressure at the well, from the width",
	expression: "p = E' w_0 / (4 x_f), with w = π/4 w_0",
	source: cite("valko-economides-1995", "KGD: width of a crack pressed open along its length, after Sneddon"),
	inputs: { "E'": "pressure", w: "diameter", x_f: "length" },
	gives: "pressure",
	validity: "KGD, the width mean over the wing",
	compute: (given) => (given["E'"] * (given.w / 12 / (Math.PI / 4))) / (4 * given.x_f),
});

/** [psi] */
export const radialNetPressure = formula({
	id: "stimulation/radial-net-pressure",
	name: "Radial net pressure, from the width",
	expression: "p = π E' w_0 / (8 R), with w = 8/15 w_0",
	source: cite("valko-economides-1995", "radial fracture: width of a disk pressed open, after Sneddon"),
	inputs: { "E'": "pressure", w: "diameter", R: "length" },
	gives: "pressure",
	validity: "radial, the width mean over the face",
	compute: (given) => (Math.PI * given["E'"] * (given.w / 12 / (8 / 15))) / (8 * given.R),
});

/** How far up a fracture reaches [ft]. */
export const fractureTop = formula({
	id: "stimulation/fracture-top",
	name: "Top of a fracture (illustrative)",
	expression: "TVD_top = TVD − a",
	source: cite("definition"),
	inputs: { TVD: "true-vertical-depth", a: "length" },
	gives: "true-vertical-depth",
	compute: ({ TVD, a }) => TVD - a,
});

/** The shallowest [ft]. */
export const shallowestTop = formula({
	id: "stimulation/shallowest-top",
	name: "Shallowest top of the models",
	expression: "min TVD_i",
	source: cite("definition"),
	inputs: { TVD_i: { many: "true-vertical-depth" } },
	gives: "true-vertical-depth",
	validity: "at least one",
	compute: ({ TVD_i }) => (TVD_i.length === 0 ? Number.NaN : Math.min(...TVD_i)),
});

/** Rate into one wing of one of several equal fractures [bbl/min]. */
export const wingRate = formula({
	id: "stimulation/wing-rate",
	name: "Rate into one wing of one fracture",
	expression: "q = Q / (2 n)",
	source: cite("definition", "the pumps' rate shared evenly by the clusters, each with two wings"),
	inputs: { Q: "flow-rate", n: "count" },
	gives: "flow-rate",
	validity: "at least one fracture",
	compute: ({ Q, n }) => (n >= 1 ? Q / (2 * n) : Number.NaN),
});

/** Across a disk [ft]. */
export const radialHeight = formula({
	id: "stimulation/radial-height",
	name: "Height of a radial fracture (illustrative)",
	expression: "h = 2 R",
	source: cite("geometry"),
	inputs: { R: "length" },
	gives: "length",
	compute: ({ R }) => 2 * R,
});
