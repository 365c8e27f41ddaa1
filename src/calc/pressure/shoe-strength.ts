import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { HYDROSTATIC_CONSTANT } from "./hydrostatic.ts";

/** What a surface pressure on a full column amounts to at the shoe [lb/gal]. */
export const leakOffEquivalent = formula({
	id: "pressure/leak-off-equivalent",
	name: "Leak-off pressure as equivalent mud weight",
	expression: "EMW = ρ + P_surface / (0.052 D_shoe)",
	source: cite("lapeyrouse", "ch. 1, formation integrity and leak-off tests"),
	inputs: { density: "density", surface_pressure: "pressure", shoe: "true-vertical-depth" },
	gives: "density",
	validity: "the shoe lies below the datum and the column is full to it",
	compute: ({ density, surface_pressure, shoe }) =>
		shoe > 0 ? density + surface_pressure / (HYDROSTATIC_CONSTANT * shoe) : Number.NaN,
});

/** Surface pressure that loads the shoe to a target equivalent [psi]. */
export const shoeTestSurfacePressure = formula({
	id: "pressure/shoe-test-surface-pressure",
	name: "Surface pressure of a shoe test",
	expression: "P_surface = 0.052 D_shoe (EMW_target − ρ)",
	source: cite("lapeyrouse", "ch. 1, formation integrity and leak-off tests"),
	inputs: { target: "density", density: "density", shoe: "true-vertical-depth" },
	gives: "pressure",
	validity: "the target is no lighter than the fluid in the hole",
	compute: ({ target, density, shoe }) =>
		target < density ? Number.NaN : HYDROSTATIC_CONSTANT * shoe * (target - density),
});

/** Greatest surface pressure that does not break the shoe down [psi]; nothing below zero. */
export const maximumAnnulusPressure = formula({
	id: "pressure/maximum-annulus-surface-pressure",
	name: "Maximum allowable annular surface pressure (MAASP)",
	expression: "MAASP = (EMW_shoe − ρ) 0.052 D_shoe",
	source: cite("lapeyrouse", "ch. 4, maximum shut-in casing pressure"),
	inputs: { strength: "density", density: "density", shoe: "true-vertical-depth" },
	gives: "pressure",
	validity: "while the annulus is full of the present mud; a strength below the mud's density gives zero",
	compute: ({ strength, density, shoe }) => {
		const pressure = (strength - density) * HYDROSTATIC_CONSTANT * shoe;
		return pressure < 0
			? { value: 0, branch: "the shoe cannot hold the mud itself" }
			: { value: pressure, branch: "limited by the shoe" };
	},
});

/** The same after the mud has been weighted up [psi]. */
export const adjustedAnnulusPressure = formula({
	id: "pressure/adjusted-annulus-surface-pressure",
	name: "Maximum shut-in casing pressure after weighting up",
	expression: "MASICP = P_L − D_shoe (ρ₂ − ρ₁) 0.052",
	source: cite("lapeyrouse", "ch. 4, adjusted maximum allowable shut-in casing pressure"),
	inputs: {
		leak_off: "pressure",
		shoe: "true-vertical-depth",
		old_density: "density",
		new_density: "density",
	},
	gives: "pressure-difference",
	validity: "leak-off as a surface pressure measured with the old mud",
	compute: ({ leak_off, shoe, old_density, new_density }) =>
		leak_off - shoe * (new_density - old_density) * HYDROSTATIC_CONSTANT,
});

/** Barite to weight up a hundred barrels of mud [sacks of 100 lb]. */
export const weightUpSacks = formula({
	id: "pressure/weight-up-sacks",
	name: "Barite to weight up 100 bbl of mud",
	expression: "sacks = 1470 (W₂ − W₁) / (35 − W₂)",
	source: cite("lapeyrouse", "ch. 1, mud weight increase with barite"),
	inputs: { from: "density", to: "density" },
	gives: "ratio",
	validity: "a weight-up, to less than barite's own 35 lb/gal; sacks of 100 lb",
	compute: ({ from, to }) => (to < from || to >= 35 ? Number.NaN : (1470 * (to - from)) / (35 - to)),
});
