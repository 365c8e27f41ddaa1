import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { BARREL, PSI } from "../../units/factors.ts";

/*
 * Fracture geometry here is plane, single and Newtonian. In shale with many clusters its figures are illustrative
 * ranges, never a predicted length, and every paper that prints one says so. The equations hold in any consistent units
 * and are worked in SI between two conversions. q is the rate into one wing.
 */

/** E' = E / (1 − ν²) [psi]. */
export const planeStrainModulus = formula({
	id: "stimulation/plane-strain-modulus",
	name: "Plane-strain modulus",
	expression: "E' = E / (1 − ν²)",
	source: cite("valko-economides-1995", "plane-strain modulus"),
	inputs: { E: "pressure", ν: "ratio" },
	gives: "pressure",
	validity: "Poisson's ratio from 0 to 0.5",
	compute: ({ E, ν }) => (ν < 0 || ν > 0.5 ? Number.NaN : E / (1 - ν ** 2)),
});

/** E' from the shear modulus [psi]. */
export const planeStrainModulusFromShear = formula({
	id: "stimulation/plane-strain-modulus-from-shear",
	name: "Plane-strain modulus from shear modulus",
	expression: "E' = 2 G / (1 − ν)",
	source: cite("valko-economides-1995", "plane-strain modulus"),
	inputs: { G: "pressure", ν: "ratio" },
	gives: "pressure",
	validity: "Poisson's ratio from 0 to 0.5",
	compute: ({ G, ν }) => (ν < 0 || ν > 0.5 ? Number.NaN : (2 * G) / (1 - ν)),
});

/** Inputs that every geometry shares. */
export const INJECTION = { q: "flow-rate", μ: "plastic-viscosity", "E'": "pressure" } as const;

/** The same in SI: m³/s, Pa·s, Pa. */
export const inSi = (given: { readonly q: number; readonly μ: number; readonly "E'": number }) => ({
	q: (given.q * BARREL) / 60,
	μ: given.μ * 1e-3,
	E: given["E'"] * PSI,
});
