import { formula } from "../../cite/formula.ts";
import { constant } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";

/**
 * The one hydrostatic constant of the tool [psi per ft per lb/gal]. The exact figure is 12/231 = 0.051948…; the trade
 * works with 0.052, 0.1 % on the high side, and so do the handbook pages that the results are laid beside.
 *
 * @source lapeyrouse, ch. 1, hydrostatic pressure
 */
export const HYDROSTATIC_CONSTANT = 0.052;

/** The depth datum itself, where a column that is full to the flowline is taken to begin. */
export const DATUM_DEPTH = constant(
	"true-vertical-depth",
	0,
	"columns of fluid are full to the depth datum",
	cite("hydrostatics"),
);

/** Pressure at the foot of one column of fluid, above that at its top [psi]. Heights are vertical. */
export const columnPressure = formula({
	id: "pressure/column",
	name: "Hydrostatic pressure of a fluid column",
	expression: "p = 0.052 ρ (D_bottom − D_top)",
	source: cite("lapeyrouse", "ch. 1, hydrostatic pressure"),
	inputs: { ρ: "density", D_top: "true-vertical-depth", D_bottom: "true-vertical-depth" },
	gives: "pressure",
	validity:
		"top and bottom along the hole; where it climbs between them the pressure falls, and the result is negative",
	compute: ({ ρ, D_top, D_bottom }) => HYDROSTATIC_CONSTANT * ρ * (D_bottom - D_top),
});

/** Pressure of a fluid that fills the hole from the depth datum down [psi]. */
export const hydrostaticPressure = formula({
	id: "pressure/hydrostatic",
	name: "Hydrostatic pressure",
	expression: "p = 0.052 ρ D",
	source: cite("lapeyrouse", "ch. 1, hydrostatic pressure"),
	inputs: { ρ: "density", D: "true-vertical-depth" },
	gives: "pressure",
	compute: ({ ρ, D }) => HYDROSTATIC_CONSTANT * ρ * D,
});

/** Pressure of fluids standing one on another [psi]. */
export const stackedPressure = formula({
	id: "pressure/stacked-columns",
	name: "Hydrostatic pressure of stacked columns",
	expression: "p = Σ p_i",
	source: cite("hydrostatics"),
	inputs: { p_i: { many: "pressure" } },
	gives: "pressure",
	compute: ({ p_i }) => p_i.reduce<number>((sum, p) => sum + p, 0),
});

/** The density of the fluid column that would give a pressure at a depth [lb/gal]. */
export const equivalentMudWeight = formula({
	id: "pressure/equivalent-mud-weight",
	name: "Equivalent mud weight",
	expression: "EMW = p / (0.052 D)",
	source: cite("lapeyrouse", "ch. 1, pressure to equivalent mud weight"),
	inputs: { p: "pressure", D: "true-vertical-depth" },
	gives: "density",
	validity: "below the datum",
	compute: ({ p, D }) => (D > 0 ? p / (HYDROSTATIC_CONSTANT * D) : Number.NaN),
});

/** [psi/ft] */
export const mudGradient = formula({
	id: "pressure/mud-gradient",
	name: "Pressure gradient of a fluid",
	expression: "g = 0.052 ρ",
	source: cite("lapeyrouse", "ch. 1, pressure gradient"),
	inputs: { ρ: "density" },
	gives: "pressure-gradient",
	compute: ({ ρ }) => HYDROSTATIC_CONSTANT * ρ,
});

/** Outside pressure less inside pressure, or the like [psi]; either sign. */
export const pressureDifference = formula({
	id: "pressure/difference",
	name: "Pressure difference",
	expression: "Δp = p_1 − p_2",
	source: cite("definition"),
	inputs: { p_1: "pressure", p_2: "pressure" },
	gives: "pressure-difference",
	compute: ({ p_1, p_2 }) => p_1 - p_2,
});

/** Temperature of the undisturbed rock [°F]. */
export const temperatureAtDepth = formula({
	id: "pressure/temperature",
	name: "Static temperature",
	expression: "T = T_s + G D / 100",
	source: cite("lapeyrouse", "ch. 1, temperature conversion and gradient"),
	inputs: { T_s: "temperature", G: "temperature-gradient", D: "depth-below-ground" },
	gives: "temperature",
	validity: "an average gradient from ground level; the rock beside a circulating well is cooler or warmer",
	compute: ({ T_s, G, D }) => T_s + (G * D) / 100,
});
