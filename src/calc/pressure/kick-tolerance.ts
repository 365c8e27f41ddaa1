import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { HYDROSTATIC_CONSTANT } from "./hydrostatic.ts";

/** Extra mud weight that a shut-in of no influx at all allows [lb/gal]: a zero-volume figure. */
export const kickToleranceFactor = formula({
	id: "pressure/kick-tolerance-factor",
	name: "Kick tolerance factor (zero influx volume)",
	expression: "KTF = (D_shoe / D_well)(MW_max − MW)",
	source: cite("lapeyrouse", "ch. 4, kick tolerance factor"),
	inputs: {
		shoe: "true-vertical-depth",
		well: "true-vertical-depth",
		maximum: "density",
		density: "density",
	},
	gives: "density",
	validity: "the well is at least as deep as the shoe; says nothing of how large an influx may be",
	compute: ({ shoe, well, maximum, density }) =>
		well < shoe || well <= 0 ? Number.NaN : (shoe / well) * (maximum - density),
});

/** Formation pressure at total depth that the factor allows [psi]. */
export const maximumFormationPressure = formula({
	id: "pressure/maximum-formation-pressure",
	name: "Maximum formation pressure",
	expression: "FP_max = (KTF + MW) 0.052 D_well",
	source: cite("lapeyrouse", "ch. 4, maximum formation pressure"),
	inputs: { factor: "density", density: "density", well: "true-vertical-depth" },
	gives: "pressure",
	compute: ({ factor, density, well }) => (factor + density) * HYDROSTATIC_CONSTANT * well,
});

/**
 * Tallest single gas bubble that the shoe holds when its top is there [ft, vertical].
 * Zero where the kick's own excess pressure already breaks the shoe.
 */
export const kickHeight = formula({
	id: "pressure/kick-height",
	name: "Kick tolerance, height of influx below the shoe",
	expression: "h = [(FG − ρ) 0.052 D_shoe − KI · 0.052 D_td] / (0.052 ρ − g), 0 ≤ h ≤ D_td − D_shoe",
	source: cite("common-practice", "single-bubble kick tolerance"),
	inputs: {
		strength: "density",
		density: "density",
		intensity: "density",
		gas_gradient: "pressure-gradient",
		shoe: "true-vertical-depth",
		td: "true-vertical-depth",
	},
	gives: "length",
	validity: "gas lighter than mud; a single bubble, no friction, no gas in solution",
	compute: ({ strength, density, intensity, gas_gradient, shoe, td }) => {
		const spread = HYDROSTATIC_CONSTANT * density - gas_gradient;
		if (spread <= 0 || td < shoe) return Number.NaN;
		const height =
			((strength - density) * HYDROSTATIC_CONSTANT * shoe - intensity * HYDROSTATIC_CONSTANT * td) / spread;
		if (height < 0) return { value: 0, branch: "no influx is held" };
		return height > td - shoe
			? { value: td - shoe, branch: "the whole open hole" }
			: { value: height, branch: "limited by the shoe" };
	},
});

/** Influx of that height, as volume with its top at the shoe [bbl]. */
export const kickVolumeAtShoe = formula({
	id: "pressure/kick-volume-at-shoe",
	name: "Influx volume with its top at the shoe",
	expression: "V_shoe = h C_annulus",
	source: cite("common-practice", "single-bubble kick tolerance"),
	inputs: { height: "length", annulus: "capacity" },
	gives: "volume",
	validity: "the annulus below the shoe is vertical over that height; a slant holds more",
	compute: ({ height, annulus }) => height * annulus,
});

/** The same influx at total depth, by Boyle's law [bbl]. */
export const kickVolumeAtBottom = formula({
	id: "pressure/kick-volume-at-bottom",
	name: "Influx volume at total depth",
	expression: "V_td = V_shoe P_shoe / P_td, P_shoe = 0.052 FG D_shoe, P_td = 0.052 (ρ + KI) D_td",
	source: cite("common-practice", "single-bubble kick tolerance with Boyle's law"),
	inputs: {
		volume: "volume",
		strength: "density",
		density: "density",
		intensity: "density",
		shoe: "true-vertical-depth",
		td: "true-vertical-depth",
	},
	gives: "volume",
	validity: "constant temperature and ideal gas",
	compute: ({ volume, strength, density, intensity, shoe, td }) =>
		(volume * (strength * shoe)) / ((density + intensity) * td),
});

/** The lesser of what may stand at the bit and what expands to the shoe's limit [bbl]. */
export const kickTolerance = formula({
	id: "pressure/kick-tolerance",
	name: "Kick tolerance (single bubble)",
	expression: "V = min(h C_annulus at the bit, V_shoe P_shoe / P_td)",
	source: cite("common-practice", "single-bubble kick tolerance"),
	inputs: { height: "length", annulus_at_bit: "capacity", at_bottom: "volume" },
	gives: "volume",
	compute: ({ height, annulus_at_bit, at_bottom }) => {
		const atBit = height * annulus_at_bit;
		return atBit <= at_bottom
			? { value: atBit, branch: "limited with the influx at the bit" }
			: { value: at_bottom, branch: "limited when the influx reaches the shoe" };
	},
});
