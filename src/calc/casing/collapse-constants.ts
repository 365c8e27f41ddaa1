import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

const source = cite("api-5c3", "collapse, empirical constants");
const inputs = { Y_p: "pressure" } as const;
const validity = "24,000 ≤ Y_p ≤ 180,000 psi";

/** The empirical constants of collapse for a yield strength. `C` is in psi, the others are pure numbers. */
interface CollapseConstants {
	readonly A: number;
	readonly B: number;
	readonly C: number;
	readonly F: number;
	readonly G: number;
}

/** Below this the constants turn useless; it is reached only by heavy tension. Above is outside the published table [psi]. */
const [LEAST, GREATEST] = [24_000, 180_000];

/**
 * @param Y  yield strength, or what tension leaves of it [psi]; outside 24,000 to 180,000 every constant is NaN
 * @source   api-5c3, collapse: empirical constants (as printed, oilfield units)
 */
export const collapseConstants = (Y: number): CollapseConstants => {
	if (!(Y >= LEAST && Y <= GREATEST)) return NONE;
	const A = 2.8762 + 0.10679e-5 * Y + 0.21301e-10 * Y ** 2 - 0.53132e-16 * Y ** 3;
	const B = 0.026233 + 0.50609e-6 * Y;
	const C = -465.93 + 0.030867 * Y - 0.10483e-7 * Y ** 2 + 0.36989e-13 * Y ** 3;
	const ratio = B / A;
	const k = (3 * ratio) / (2 + ratio);
	const F = (46.95e6 * k ** 3) / (Y * (k - ratio) * (1 - k) ** 2);
	return { A, B, C, F, G: F * ratio };
};

const NONE: CollapseConstants = {
	A: Number.NaN,
	B: Number.NaN,
	C: Number.NaN,
	F: Number.NaN,
	G: Number.NaN,
};

/** D/t at which one regime of collapse hands over to the next. */
interface CollapseLimits {
	readonly yieldPlastic: number;
	readonly plasticTransition: number;
	readonly transitionElastic: number;
}

/** @source api-5c3, collapse: D/t limits of the four regimes */
export const collapseLimits = (Y: number): CollapseLimits => {
	const { A, B, C, F, G } = collapseConstants(Y);
	return {
		yieldPlastic: (Math.sqrt((A - 2) ** 2 + 8 * (B + C / Y)) + (A - 2)) / (2 * (B + C / Y)),
		plasticTransition: (Y * (A - F)) / (C + Y * (B - G)),
		transitionElastic: (2 + B / A) / ((3 * B) / A),
	};
};

export const collapseA = formula({
	id: "casing/collapse-a",
	name: "Collapse constant A",
	expression: "A = 2.8762 + 0.10679e-5 Y_p + 0.21301e-10 Y_p² − 0.53132e-16 Y_p³",
	source,
	inputs,
	gives: "ratio",
	validity,
	compute: ({ Y_p }) => collapseConstants(Y_p).A,
});

export const collapseB = formula({
	id: "casing/collapse-b",
	name: "Collapse constant B",
	expression: "B = 0.026233 + 0.50609e-6 Y_p",
	source,
	inputs,
	gives: "ratio",
	validity,
	compute: ({ Y_p }) => collapseConstants(Y_p).B,
});

export const collapseC = formula({
	id: "casing/collapse-c",
	name: "Collapse constant C",
	expression: "C = −465.93 + 0.030867 Y_p − 0.10483e-7 Y_p² + 0.36989e-13 Y_p³",
	source,
	inputs,
	gives: "pressure",
	validity,
	compute: ({ Y_p }) => collapseConstants(Y_p).C,
});

export const collapseF = formula({
	id: "casing/collapse-f",
	name: "Collapse constant F",
	expression: "F = 46.95e6 k³ / {Y_p [k − B/A] (1 − k)²}, k = 3(B/A) / (2 + B/A)",
	source,
	inputs,
	gives: "ratio",
	validity,
	compute: ({ Y_p }) => collapseConstants(Y_p).F,
});

export const collapseG = formula({
	id: "casing/collapse-g",
	name: "Collapse constant G",
	expression: "G = F B / A",
	source,
	inputs,
	gives: "ratio",
	validity,
	compute: ({ Y_p }) => collapseConstants(Y_p).G,
});

export const yieldPlasticLimit = formula({
	id: "casing/collapse-limit-yield-plastic",
	name: "D/t between yield and plastic collapse",
	expression: "{√[(A−2)² + 8(B + C/Y_p)] + (A−2)} / [2(B + C/Y_p)]",
	source: cite("api-5c3", "collapse, D/t limits"),
	inputs,
	gives: "ratio",
	validity,
	compute: ({ Y_p }) => collapseLimits(Y_p).yieldPlastic,
});

export const plasticTransitionLimit = formula({
	id: "casing/collapse-limit-plastic-transition",
	name: "D/t between plastic and transition collapse",
	expression: "Y_p (A − F) / [C + Y_p (B − G)]",
	source: cite("api-5c3", "collapse, D/t limits"),
	inputs,
	gives: "ratio",
	validity,
	compute: ({ Y_p }) => collapseLimits(Y_p).plasticTransition,
});

export const transitionElasticLimit = formula({
	id: "casing/collapse-limit-transition-elastic",
	name: "D/t between transition and elastic collapse",
	expression: "(2 + B/A) / (3 B/A)",
	source: cite("api-5c3", "collapse, D/t limits"),
	inputs,
	gives: "ratio",
	validity,
	compute: ({ Y_p }) => collapseLimits(Y_p).transitionElastic,
});
