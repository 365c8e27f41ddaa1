import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { HYDROSTATIC_CONSTANT } from "./hydrostatic.ts";

/** Extra mud weight that a shut-in of no influx at all allows [lb/gal]: a zero-volume figure. */
export const kickToleranceFactor = formula({
	id: "pressure/kick-tolerance-factor",
	name: "Kick tolerance factor (zero influx volume)",
	expression: "KTF = (D_shoe / D_td)(ρ_max − ρ)",
	source: cite("lapeyrouse", "ch. 4, kick tolerance factor"),
	inputs: {
		D_shoe: "true-vertical-depth",
		D_td: "true-vertical-depth",
		ρ_max: "density",
		ρ: "density",
	},
	gives: "density",
	validity: "the well is at least as deep as the shoe; says nothing of how large an influx may be",
	compute: ({ D_shoe, D_td, ρ_max, ρ }) =>
		D_td < D_shoe || D_td <= 0 ? Number.NaN : (D_shoe / D_td) * (ρ_max - ρ),
});

/** Formation pressure at total depth that the factor allows [psi]. */
export const maximumFormationPressure = formula({
	id: "pressure/maximum-formation-pressure",
	name: "Maximum formation pressure",
	expression: "FP_max = (KTF + ρ) 0.052 D_td",
	source: cite("lapeyrouse", "ch. 4, maximum formation pressure"),
	inputs: { KTF: "density", ρ: "density", D_td: "true-vertical-depth" },
	gives: "pressure",
	compute: ({ KTF, ρ, D_td }) => (KTF + ρ) * HYDROSTATIC_CONSTANT * D_td,
});

/** The pressure a kick comes with, over the mud that it meets; below zero where the mud still outweighs it [lb/gal]. */
export const kickOverMud = formula({
	id: "pressure/kick-over-mud",
	name: "Kick pressure over the mud",
	expression: "KI_m = ρ_p + KI − ρ",
	source: cite("common-practice", "kick intensity counted from the highest pore pressure of the open hole"),
	inputs: { ρ_p: "density", KI: "density", ρ: "density" },
	gives: "density",
	validity: "all three as densities from the depth datum",
	compute: ({ ρ_p, KI, ρ }) => ρ_p + KI - ρ,
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
		FG: "density",
		ρ: "density",
		KI: "density",
		g: "pressure-gradient",
		D_shoe: "true-vertical-depth",
		D_td: "true-vertical-depth",
	},
	gives: "length",
	validity: "gas lighter than mud; a single bubble, no friction, no gas in solution",
	compute: ({ FG, ρ, KI, g, D_shoe, D_td }) => {
		const spread = HYDROSTATIC_CONSTANT * ρ - g;
		if (spread <= 0 || D_td < D_shoe) return Number.NaN;
		const h = ((FG - ρ) * HYDROSTATIC_CONSTANT * D_shoe - KI * HYDROSTATIC_CONSTANT * D_td) / spread;
		if (h < 0) return { value: 0, branch: "no influx is held" };
		return h > D_td - D_shoe
			? { value: D_td - D_shoe, branch: "the whole open hole" }
			: { value: h, branch: "limited by the shoe" };
	},
});

/** Influx of that height, as volume with its top at the shoe [bbl]. */
export const kickVolumeAtShoe = formula({
	id: "pressure/kick-volume-at-shoe",
	name: "Influx volume with its top at the shoe",
	expression: "V = h C",
	source: cite("common-practice", "single-bubble kick tolerance"),
	inputs: { h: "length", C: "capacity" },
	gives: "volume",
	validity: "the annulus below the shoe is vertical over that height; a slant holds more",
	compute: ({ h, C }) => h * C,
});

/** The same influx at total depth, by Boyle's law [bbl]. */
export const kickVolumeAtBottom = formula({
	id: "pressure/kick-volume-at-bottom",
	name: "Influx volume at total depth",
	expression: "V_td = V_shoe (0.052 FG D_shoe) / (0.052 (ρ + KI) D_td)",
	source: cite("common-practice", "single-bubble kick tolerance with Boyle's law"),
	inputs: {
		V_shoe: "volume",
		FG: "density",
		ρ: "density",
		KI: "density",
		D_shoe: "true-vertical-depth",
		D_td: "true-vertical-depth",
	},
	gives: "volume",
	validity: "constant temperature and ideal gas",
	compute: ({ V_shoe, FG, ρ, KI, D_shoe, D_td }) => (V_shoe * (FG * D_shoe)) / ((ρ + KI) * D_td),
});

/** Length along a slanting hole of a vertical height [ft]. */
export const kickLength = formula({
	id: "pressure/kick-length",
	name: "Influx length along the hole",
	expression: "L = h / cos I",
	source: cite("geometry"),
	inputs: { h: "length", I: "angle" },
	gives: "length",
	validity: "one inclination over the influx, below 90°",
	compute: ({ h, I }) => (I < 0 || I >= 90 ? Number.NaN : h / Math.cos((I * Math.PI) / 180)),
});

/** The lesser of what may stand at the bit and what expands to the shoe's limit [bbl]. */
export const kickTolerance = formula({
	id: "pressure/kick-tolerance",
	name: "Kick tolerance (single bubble)",
	expression: "V = min(h C_bit, V_td), h along the hole",
	source: cite("common-practice", "single-bubble kick tolerance"),
	inputs: { h: "length", C_bit: "capacity", V_td: "volume" },
	gives: "volume",
	compute: ({ h, C_bit, V_td }) => {
		const atBit = h * C_bit;
		return atBit <= V_td
			? { value: atBit, branch: "limited with the influx at the bit" }
			: { value: V_td, branch: "limited when the influx reaches the shoe" };
	},
});

/** Below zero the shoe does not hold the design kick [bbl]. */
export const kickMargin = formula({
	id: "pressure/kick-margin",
	name: "Kick tolerance over the design kick",
	expression: "V − V_design",
	source: cite("definition"),
	inputs: { V: "volume", V_design: "volume" },
	gives: "volume",
	compute: ({ V, V_design }) => V - V_design,
});
