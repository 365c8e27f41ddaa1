import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { HYDROSTATIC_CONSTANT } from "./hydrostatic.ts";

/** What a surface pressure on a full column amounts to at the shoe [lb/gal]. */
export const leakOffEquivalent = formula({
	id: "pressure/leak-off-equivalent",
	name: "Leak-off pressure as equivalent mud weight",
	expression: "EMW = ρ + P_s / (0.052 D_shoe)",
	source: cite("lapeyrouse", "ch. 1, formation integrity and leak-off tests"),
	inputs: { ρ: "density", P_s: "pressure", D_shoe: "true-vertical-depth" },
	gives: "density",
	validity: "the shoe lies below the datum and the column is full to it",
	compute: ({ ρ, P_s, D_shoe }) => (D_shoe > 0 ? ρ + P_s / (HYDROSTATIC_CONSTANT * D_shoe) : Number.NaN),
});

/** Surface pressure that loads the shoe to a target equivalent [psi]. */
export const shoeTestSurfacePressure = formula({
	id: "pressure/shoe-test-surface-pressure",
	name: "Surface pressure of a shoe test",
	expression: "P_s = 0.052 D_shoe (EMW − ρ)",
	source: cite("lapeyrouse", "ch. 1, formation integrity and leak-off tests"),
	inputs: { EMW: "density", ρ: "density", D_shoe: "true-vertical-depth" },
	gives: "pressure",
	validity: "the target is no lighter than the fluid in the hole",
	compute: ({ EMW, ρ, D_shoe }) => (EMW < ρ ? Number.NaN : HYDROSTATIC_CONSTANT * D_shoe * (EMW - ρ)),
});

/** Greatest surface pressure that does not break the shoe down [psi]; nothing below zero. */
export const maximumAnnulusPressure = formula({
	id: "pressure/maximum-annulus-surface-pressure",
	name: "Maximum allowable annular surface pressure (MAASP)",
	expression: "MAASP = (EMW − ρ) 0.052 D_shoe",
	source: cite("lapeyrouse", "ch. 4, maximum shut-in casing pressure"),
	inputs: { EMW: "density", ρ: "density", D_shoe: "true-vertical-depth" },
	gives: "pressure",
	validity: "while the annulus is full of the present mud; a strength below the mud's density gives zero",
	compute: ({ EMW, ρ, D_shoe }) => {
		const pressure = (EMW - ρ) * HYDROSTATIC_CONSTANT * D_shoe;
		return pressure < 0
			? { value: 0, branch: "the shoe cannot hold the mud itself" }
			: { value: pressure, branch: "limited by the shoe" };
	},
});

/** The same after the mud has been weighted up [psi]. */
export const adjustedAnnulusPressure = formula({
	id: "pressure/adjusted-annulus-surface-pressure",
	name: "Maximum shut-in casing pressure after weighting up",
	expression: "MASICP = P_L − D_shoe (ρ_2 − ρ_1) 0.052",
	source: cite("lapeyrouse", "ch. 4, adjusted maximum allowable shut-in casing pressure"),
	inputs: {
		P_L: "pressure",
		D_shoe: "true-vertical-depth",
		ρ_1: "density",
		ρ_2: "density",
	},
	gives: "pressure-difference",
	validity: "leak-off as a surface pressure measured with the old mud",
	compute: ({ P_L, D_shoe, ρ_1, ρ_2 }) => P_L - D_shoe * (ρ_2 - ρ_1) * HYDROSTATIC_CONSTANT,
});

/** Barite to weight up a hundred barrels of mud [sacks of 100 lb]. */
export const weightUpSacks = formula({
	id: "pressure/weight-up-sacks",
	name: "Barite to weight up 100 bbl of mud",
	expression: "sacks = 1470 (W_2 − W_1) / (35 − W_2)",
	source: cite("lapeyrouse", "ch. 1, mud weight increase with barite"),
	inputs: { W_1: "density", W_2: "density" },
	gives: "ratio",
	validity: "a weight-up, to less than barite's own 35 lb/gal; sacks of 100 lb",
	compute: ({ W_1, W_2 }) => (W_2 < W_1 || W_2 >= 35 ? Number.NaN : (1470 * (W_2 - W_1)) / (35 - W_2)),
});
