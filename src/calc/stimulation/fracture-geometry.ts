import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { BARREL, FOOT, INCH, PSI } from "../../units/factors.ts";

/*
 * Plane, single, Newtonian fractures. In shale with many clusters these are illustrative ranges, never a predicted
 * length; every paper that prints one says so. Equations hold in any consistent units and are worked here in SI
 * between two conversions. q is the rate into one wing. PKN has two published solutions (rate constant along the wing;
 * rate falling along it) whose constants must not be mixed: both are given whole.
 */

const source = (at: string) => cite("valko-economides-1995", at);

/** E' = E / (1 − ν²) [psi]. */
export const planeStrainModulus = formula({
	id: "stimulation/plane-strain-modulus",
	name: "Plane-strain modulus",
	expression: "E' = E / (1 − ν²)",
	source: source("plane-strain modulus"),
	inputs: { youngs_modulus: "pressure", poissons_ratio: "ratio" },
	gives: "pressure",
	validity: "Poisson's ratio from 0 to 0.5",
	compute: ({ youngs_modulus, poissons_ratio: nu }) =>
		nu < 0 || nu > 0.5 ? Number.NaN : youngs_modulus / (1 - nu ** 2),
});

/** E' from the shear modulus, E' = 2 G / (1 − ν) [psi]. */
export const planeStrainModulusFromShear = formula({
	id: "stimulation/plane-strain-modulus-from-shear",
	name: "Plane-strain modulus from shear modulus",
	expression: "E' = 2 G / (1 − ν)",
	source: source("plane-strain modulus"),
	inputs: { shear_modulus: "pressure", poissons_ratio: "ratio" },
	gives: "pressure",
	validity: "Poisson's ratio from 0 to 0.5",
	compute: ({ shear_modulus, poissons_ratio: nu }) =>
		nu < 0 || nu > 0.5 ? Number.NaN : (2 * shear_modulus) / (1 - nu),
});

const bblPerMin = BARREL / 60;
const centipoise = 1e-3;

const injection = {
	rate: "flow-rate",
	viscosity: "plastic-viscosity",
	modulus: "pressure",
} as const;

const si = (given: { rate: number; viscosity: number; modulus: number }) => ({
	q: given.rate * bblPerMin,
	mu: given.viscosity * centipoise,
	e: given.modulus * PSI,
});

/** The two PKN solutions: wellbore width at length, its average, and length, width and pressure against time. */
const PKN = {
	"constant rate": { width: 3.57, average: 0.628, length: 0.524, growth: 3.04, pressure: 1.52 },
	"rate falling along the wing": { width: 3.27, average: 0.589, length: 0.592, growth: 2.87, pressure: 1.43 },
} as const;
const KGD = { width: 3.22, average: Math.PI / 4, length: 0.539, growth: 2.36, pressure: 1.09 };
const RADIAL = { radius: 0.572, growth: 3.65 };

const pknWidth = (id: string, solution: keyof typeof PKN) =>
	formula({
		id: `stimulation/${id}`,
		name: `PKN average width at a half-length, ${solution}`,
		expression: `w̄ = ${PKN[solution].average} · ${PKN[solution].width} (μ q x_f / E')^¼`,
		source: source(`PKN, ${solution}`),
		inputs: { ...injection, half_length: "length" },
		gives: "diameter",
		validity: "half-length well above the height; one-wing rate; Newtonian fluid",
		compute: (given) => {
			const { q, mu, e } = si(given);
			const { width, average } = PKN[solution];
			return (average * width * ((mu * q * given.half_length * FOOT) / e) ** 0.25) / INCH;
		},
	});

/** [in] */
export const pknWidthConstantRate = pknWidth("pkn-width-constant-rate", "constant rate");
/** [in] */
export const pknWidthFallingRate = pknWidth("pkn-width-falling-rate", "rate falling along the wing");

/** [in] */
export const kgdWidth = formula({
	id: "stimulation/kgd-width",
	name: "KGD average width at a half-length",
	expression: "w̄ = π/4 · 3.22 (μ q x_f² / (E' h))^¼",
	source: source("KGD"),
	inputs: { ...injection, half_length: "length", height: "length" },
	gives: "diameter",
	validity: "half-length below the height; one-wing rate; Newtonian fluid",
	compute: (given) => {
		const { q, mu, e } = si(given);
		const x = given.half_length * FOOT;
		return (KGD.average * KGD.width * ((mu * q * x ** 2) / (e * given.height * FOOT)) ** 0.25) / INCH;
	},
});

const timed = { ...injection, height: "length", time: "duration" } as const;

const pknTimed = <const D extends "length" | "diameter" | "pressure">(
	solution: keyof typeof PKN,
	what: { id: string; name: string; expression: string; gives: D },
	value: (
		k: (typeof PKN)[keyof typeof PKN],
		g: { q: number; mu: number; e: number; h: number; t: number },
	) => number,
) =>
	formula({
		...what,
		source: source(`PKN, ${solution}, no leakoff`),
		inputs: timed,
		validity: "no leakoff; half-length well above the height; one-wing rate; Newtonian fluid",
		compute: (given) => value(PKN[solution], { ...si(given), h: given.height * FOOT, t: given.time * 60 }),
	});

const pknLengthOf = (solution: keyof typeof PKN, id: string) =>
	pknTimed(
		solution,
		{
			id: `stimulation/${id}`,
			name: `PKN half-length without leakoff, ${solution}`,
			expression: `x_f = ${PKN[solution].length} (q³ E' / (μ h⁴))^⅕ t^⅘`,
			gives: "length",
		},
		(k, { q, mu, e, h, t }) => (k.length * ((q ** 3 * e) / (mu * h ** 4)) ** 0.2 * t ** 0.8) / FOOT,
	);

/** [ft] */
export const pknLengthConstantRate = pknLengthOf("constant rate", "pkn-length-constant-rate");
/** [ft] */
export const pknLengthFallingRate = pknLengthOf("rate falling along the wing", "pkn-length-falling-rate");

const pknGrowthOf = (solution: keyof typeof PKN, id: string) =>
	pknTimed(
		solution,
		{
			id: `stimulation/${id}`,
			name: `PKN greatest width at the well without leakoff, ${solution}`,
			expression: `w₀ = ${PKN[solution].growth} (q² μ / (E' h))^⅕ t^⅕`,
			gives: "diameter",
		},
		(k, { q, mu, e, h, t }) => (k.growth * ((q ** 2 * mu) / (e * h)) ** 0.2 * t ** 0.2) / INCH,
	);

/** [in] */
export const pknGrowthConstantRate = pknGrowthOf("constant rate", "pkn-growth-constant-rate");
/** [in] */
export const pknGrowthFallingRate = pknGrowthOf("rate falling along the wing", "pkn-growth-falling-rate");

const pknPressureOf = (solution: keyof typeof PKN, id: string) =>
	pknTimed(
		solution,
		{
			id: `stimulation/${id}`,
			name: `PKN net pressure at the well without leakoff, ${solution}`,
			expression: `p = ${PKN[solution].pressure} (E'⁴ μ q² / h⁶)^⅕ t^⅕`,
			gives: "pressure",
		},
		(k, { q, mu, e, h, t }) => (k.pressure * ((e ** 4 * mu * q ** 2) / h ** 6) ** 0.2 * t ** 0.2) / PSI,
	);

/** [psi] */
export const pknPressureConstantRate = pknPressureOf("constant rate", "pkn-pressure-constant-rate");
/** [psi] */
export const pknPressureFallingRate = pknPressureOf(
	"rate falling along the wing",
	"pkn-pressure-falling-rate",
);

/** [ft] */
export const kgdLength = formula({
	id: "stimulation/kgd-length",
	name: "KGD half-length without leakoff",
	expression: "x_f = 0.539 (q³ E' / (μ h³))^⅙ t^⅔",
	source: source("KGD, no leakoff"),
	inputs: timed,
	gives: "length",
	validity: "no leakoff; half-length below the height; one-wing rate; Newtonian fluid",
	compute: (given) => {
		const { q, mu, e } = si(given);
		const h = given.height * FOOT;
		return (KGD.length * ((q ** 3 * e) / (mu * h ** 3)) ** (1 / 6) * (given.time * 60) ** (2 / 3)) / FOOT;
	},
});

/** [in] */
export const kgdGrowth = formula({
	id: "stimulation/kgd-growth",
	name: "KGD greatest width at the well without leakoff",
	expression: "w = 2.36 (q³ μ / (E' h³))^⅙ t^⅓",
	source: source("KGD, no leakoff"),
	inputs: timed,
	gives: "diameter",
	validity: "no leakoff; half-length below the height; one-wing rate; Newtonian fluid",
	compute: (given) => {
		const { q, mu, e } = si(given);
		const h = given.height * FOOT;
		return (KGD.growth * ((q ** 3 * mu) / (e * h ** 3)) ** (1 / 6) * (given.time * 60) ** (1 / 3)) / INCH;
	},
});

/** [psi] */
export const kgdPressure = formula({
	id: "stimulation/kgd-pressure",
	name: "KGD net pressure at the well without leakoff",
	expression: "p = 1.09 (E'² μ)^⅓ t^−⅓",
	source: source("KGD, no leakoff"),
	inputs: { viscosity: "plastic-viscosity", modulus: "pressure", time: "duration" },
	gives: "pressure",
	validity: "no leakoff; half-length below the height; Newtonian fluid; time above zero",
	compute: ({ viscosity, modulus, time }) =>
		time <= 0
			? Number.NaN
			: (KGD.pressure *
					((modulus * PSI) ** 2 * viscosity * centipoise) ** (1 / 3) *
					(time * 60) ** (-1 / 3)) /
				PSI,
});

const radial = { ...injection, time: "duration" } as const;

/** [ft] */
export const radialRadius = formula({
	id: "stimulation/radial-radius",
	name: "Radial fracture, radius without leakoff",
	expression: "R = 0.572 (q³ E' / μ)^(1/9) t^(4/9)",
	source: source("radial, no leakoff"),
	inputs: radial,
	gives: "length",
	validity: "no leakoff; one-wing rate; Newtonian fluid",
	compute: (given) => {
		const { q, mu, e } = si(given);
		return (RADIAL.radius * ((q ** 3 * e) / mu) ** (1 / 9) * (given.time * 60) ** (4 / 9)) / FOOT;
	},
});

/** [in] */
export const radialWidth = formula({
	id: "stimulation/radial-width",
	name: "Radial fracture, greatest width without leakoff",
	expression: "w₀ = 3.65 (q³ μ² / E'²)^(1/9) t^(1/9)",
	source: source("radial, no leakoff"),
	inputs: radial,
	gives: "diameter",
	validity: "no leakoff; one-wing rate; Newtonian fluid",
	compute: (given) => {
		const { q, mu, e } = si(given);
		return (RADIAL.growth * ((q ** 3 * mu ** 2) / e ** 2) ** (1 / 9) * (given.time * 60) ** (1 / 9)) / INCH;
	},
});
