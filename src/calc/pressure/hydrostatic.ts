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
	inputs: { density: "density", top: "true-vertical-depth", bottom: "true-vertical-depth" },
	gives: "pressure",
	validity: "the bottom is no shallower than the top",
	compute: ({ density, top, bottom }) =>
		bottom < top ? Number.NaN : HYDROSTATIC_CONSTANT * density * (bottom - top),
});

/** Pressure of a fluid that fills the hole from the depth datum down [psi]. */
export const hydrostaticPressure = formula({
	id: "pressure/hydrostatic",
	name: "Hydrostatic pressure",
	expression: "p = 0.052 ρ D",
	source: cite("lapeyrouse", "ch. 1, hydrostatic pressure"),
	inputs: { density: "density", depth: "true-vertical-depth" },
	gives: "pressure",
	compute: ({ density, depth }) => HYDROSTATIC_CONSTANT * density * depth,
});

/** Pressure of fluids standing one on another [psi]. */
export const stackedPressure = formula({
	id: "pressure/stacked-columns",
	name: "Hydrostatic pressure of stacked columns",
	expression: "p = Σ pᵢ",
	source: cite("hydrostatics"),
	inputs: { columns: { many: "pressure" } },
	gives: "pressure",
	compute: ({ columns }) => columns.reduce<number>((sum, p) => sum + p, 0),
});

/** The density of the fluid column that would give a pressure at a depth [lb/gal]. */
export const equivalentMudWeight = formula({
	id: "pressure/equivalent-mud-weight",
	name: "Equivalent mud weight",
	expression: "EMW = p / (0.052 D)",
	source: cite("lapeyrouse", "ch. 1, pressure to equivalent mud weight"),
	inputs: { pressure: "pressure", depth: "true-vertical-depth" },
	gives: "density",
	validity: "below the datum",
	compute: ({ pressure, depth }) => (depth > 0 ? pressure / (HYDROSTATIC_CONSTANT * depth) : Number.NaN),
});

/** [psi/ft] */
export const mudGradient = formula({
	id: "pressure/mud-gradient",
	name: "Pressure gradient of a fluid",
	expression: "g = 0.052 ρ",
	source: cite("lapeyrouse", "ch. 1, pressure gradient"),
	inputs: { density: "density" },
	gives: "pressure-gradient",
	compute: ({ density }) => HYDROSTATIC_CONSTANT * density,
});

/** Outside pressure less inside pressure, or the like [psi]; either sign. */
export const pressureDifference = formula({
	id: "pressure/difference",
	name: "Pressure difference",
	expression: "Δp = p₁ − p₂",
	source: cite("definition"),
	inputs: { first: "pressure", second: "pressure" },
	gives: "pressure-difference",
	compute: ({ first, second }) => first - second,
});

/** Temperature of the undisturbed rock [°F]. */
export const temperatureAtDepth = formula({
	id: "pressure/temperature",
	name: "Static temperature",
	expression: "T = T_s + G D / 100",
	source: cite("lapeyrouse", "ch. 1, temperature conversion and gradient"),
	inputs: { surface: "temperature", gradient: "temperature-gradient", depth: "depth-below-ground" },
	gives: "temperature",
	validity: "an average gradient from ground level; the rock beside a circulating well is cooler or warmer",
	compute: ({ surface, gradient, depth }) => surface + (gradient * depth) / 100,
});
