import { type Computed, formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { VELOCITY_CONSTANT } from "./bingham-flow.ts";

/*
 * Friction of a Herschel–Bulkley fluid in the units of the source: ft/min, in, lb/gal, lbf/100 ft². One curve runs from
 * laminar through the turn to turbulent flow, so that the loss never falls where the flow turns.
 */

const source = (at: string) => cite("api-rp-13d", `${at}; equations read in copies, the rest from memory`);

interface YieldFluid {
	readonly ρ: number;
	readonly τ_y: number;
	readonly n: number;
	readonly k: number;
}

/** α of the source: 0 in pipe, 1 in an annulus taken as a slot. */
type Geometry = 0 | 1;

/**
 * Friction [psi/ft] at a mean velocity [ft/s] through a width [in]: the bore, or the gap on diameter.
 */
export const yieldGradient = (
	{ ρ, τ_y, n, k }: YieldFluid,
	velocity: number,
	width: number,
	α: Geometry,
): Computed => {
	if (!(width > 0 && n > 0 && k > 0 && ρ > 0)) return Number.NaN;
	if (velocity === 0) return { value: 0, branch: "at rest" };
	const V = 60 * velocity;
	const G = (((3 - α) * n + 1) / ((4 - α) * n)) * (1 + α / 2);
	const wall = 1.066 * (((4 - α) / (3 - α)) ** n * τ_y + k * ((1.6 * G * V) / width) ** n);
	const Re = (ρ * V ** 2) / (19.36 * wall);
	const critical = 3470 - 1370 * n;
	const laminar = 16 / Re;
	const turning = (16 * Re) / critical ** 2;
	const turbulent = (Math.log10(n) + 3.93) / 50 / Re ** ((1.75 - Math.log10(n)) / 7);
	const past = (turning ** -8 + turbulent ** -8) ** (-1 / 8);
	const f = (past ** 12 + laminar ** 12) ** (1 / 12);
	return {
		value: (1.076 * ρ * V ** 2 * f) / (1e5 * width),
		branch: Re <= critical ? "laminar" : turbulent <= turning ? "turbulent" : "turning",
	};
};

const fluid = { ρ: "density", Q: "flow-rate", τ_y: "yield-point", n: "ratio", k: "ratio" } as const;

const EXPRESSION =
	"dp/dL = 1.076 ρ V² f / (10⁵ d_h); f = (f_i¹² + f_l¹²)^(1/12), f_i = (f_tr⁻⁸ + f_t⁻⁸)^(−1/8), f_l = 16/Re, f_tr = 16 Re / (3470 − 1370 n)², f_t = a / Re^b, a = (log n + 3.93)/50, b = (1.75 − log n)/7; Re = ρ V² / (19.36 τ_w)";

/** [psi/ft] */
export const annulusYieldFriction = formula({
	id: "pressure/herschel-bulkley-annulus-friction",
	name: "Annulus friction gradient, Herschel–Bulkley",
	expression: `${EXPRESSION}, τ_w = 1.066 [(3/2)ⁿ τ_y + k (2.4 V (2n + 1) / (3n d_h))ⁿ], d_h = D − d, V in ft/min`,
	source: source("simplified hydraulics, annulus"),
	inputs: { ...fluid, D: "diameter", d: "diameter" },
	gives: "pressure-gradient",
	validity: "inner diameter less than outer; pipe in the middle of the hole, not turning",
	compute: ({ ρ, Q, τ_y, n, k, D, d }) =>
		d >= D
			? Number.NaN
			: yieldGradient({ ρ, τ_y, n, k }, (VELOCITY_CONSTANT * Q) / (D ** 2 - d ** 2), D - d, 1),
});

/** [psi/ft] */
export const pipeYieldFriction = formula({
	id: "pressure/herschel-bulkley-pipe-friction",
	name: "Pipe friction gradient, Herschel–Bulkley",
	expression: `${EXPRESSION}, τ_w = 1.066 [(4/3)ⁿ τ_y + k (1.6 V (3n + 1) / (4n d))ⁿ], d_h = d, V in ft/min`,
	source: source("simplified hydraulics, pipe"),
	inputs: { ...fluid, d: "diameter" },
	gives: "pressure-gradient",
	validity: "smooth pipe; tool joints not counted",
	compute: ({ ρ, Q, τ_y, n, k, d }) =>
		yieldGradient({ ρ, τ_y, n, k }, (VELOCITY_CONSTANT * Q) / d ** 2, d, 0),
});
