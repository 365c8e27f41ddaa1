import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { areaOf } from "./pipe-body.ts";
import { bendingStressAt, STEEL_MODULUS } from "./triaxial.ts";

/*
 * What an axial load is made of. Tension is positive. Weights act along the vertical, whatever the hole does: the hole's
 * wall carries the rest; no friction.
 */

export const weightInAir = formula({
	id: "casing/weight-in-air",
	name: "Weight in air",
	expression: "F = w · ΔTVD",
	source: cite("devereux", "sec. 1.4.13, p. 75: unit weight by vertical interval"),
	inputs: { w: "linear-weight", ΔTVD: "offset" },
	gives: "force",
	compute: ({ w, ΔTVD }) => w * ΔTVD,
});

export const totalWeight = formula({
	id: "casing/total-weight",
	name: "Weight of the string",
	expression: "Σ F",
	source: cite("definition"),
	inputs: { F: { many: "force" } },
	gives: "force",
	compute: ({ F }) => F.reduce((sum, f) => sum + f, 0),
});

/** Density of steel as the trade takes it [lb/gal]. */
const STEEL = 65.5;

/** For one fluid inside and out, and a uniform string. */
export const buoyancyFactor = formula({
	id: "casing/buoyancy-factor",
	name: "Buoyancy factor",
	expression: "BF = 1 − ρ / 65.5",
	source: cite("lapeyrouse", "buoyancy factor"),
	inputs: { ρ: "density" },
	gives: "ratio",
	validity: "the same fluid inside and outside",
	compute: ({ ρ }) => 1 - ρ / STEEL,
});

export const buoyedWeight = formula({
	id: "casing/buoyed-weight",
	name: "Buoyed weight",
	expression: "W · BF",
	source: cite("lapeyrouse", "buoyancy factor"),
	inputs: { W: "force", BF: "ratio" },
	gives: "force",
	compute: ({ W, BF }) => W * BF,
});

/** Pressure on the end of open pipe; compression where the outside wins. */
export const endForce = formula({
	id: "casing/end-force",
	name: "Pressure force at the shoe",
	expression: "F = p_i A_i − p_o A_o",
	source: cite("lubinski", "pressure-area method"),
	inputs: { D: "diameter", t: "diameter", p_i: "pressure", p_o: "pressure" },
	gives: "force",
	compute: ({ D, t, p_i, p_o }) => (Math.PI / 4) * ((D - 2 * t) ** 2 * p_i - D ** 2 * p_o),
});

export const bendingStress = formula({
	id: "casing/bending-stress",
	name: "Bending stress",
	expression: "σ_b = E D κ / 2 = 218 D DLS",
	source: cite("lubinski", "pipe bent to the hole's curvature"),
	inputs: { D: "diameter", DLS: "dogleg" },
	gives: "pressure",
	validity: "pipe in contact with the hole; elastic",
	compute: ({ D, DLS }) => bendingStressAt(D / 2, Math.abs(DLS)),
});

/** The tension that would stress the whole section as the bend does its outer wall. */
export const bendingForce = formula({
	id: "casing/bending-force",
	name: "Equivalent force of bending",
	expression: "F_b = σ_b A_p",
	source: cite("rabia", "bending force"),
	inputs: { D: "diameter", t: "diameter", DLS: "dogleg" },
	gives: "force",
	compute: ({ D, t, DLS }) => bendingStressAt(D / 2, Math.abs(DLS)) * areaOf(D, t),
});

/** String stopped dead while moving at `v`. */
export const shockForce = formula({
	id: "casing/shock-force",
	name: "Shock force",
	expression: "F = 1780 v A_p",
	source: cite("rabia", "shock loading; √(E ρ) of steel"),
	inputs: { v: "fluid-velocity", D: "diameter", t: "diameter" },
	gives: "force",
	compute: ({ v, D, t }) => 1780 * v * areaOf(D, t),
});

/** Pressure on the landed plug, before the cement sets. */
export const bumpForce = formula({
	id: "casing/bump-force",
	name: "Force of a pressure test on the landed plug",
	expression: "F = (π/4) d² P",
	source: cite("rabia", "pressure test load"),
	inputs: { D: "diameter", t: "diameter", P: "pressure" },
	gives: "force",
	compute: ({ D, t, P }) => (Math.PI / 4) * (D - 2 * t) ** 2 * P,
});

/** Poisson's ratio of steel. */
const ν = 0.28;

/** Pipe held at both ends, pressures changed after it was held. */
export const ballooningForce = formula({
	id: "casing/ballooning-force",
	name: "Ballooning force",
	expression: "ΔF = 2 ν (A_i Δp_i − A_o Δp_o), ν = 0.28",
	source: cite("lubinski", "ballooning"),
	inputs: {
		D: "diameter",
		t: "diameter",
		Δp_i: "pressure-difference",
		Δp_o: "pressure-difference",
	},
	gives: "force",
	validity: "both ends held",
	compute: ({ D, t, Δp_i, Δp_o }) => 2 * ν * (Math.PI / 4) * ((D - 2 * t) ** 2 * Δp_i - D ** 2 * Δp_o),
});

/** Thermal expansion of steel [1/°F]. */
const α = 6.9e-6;

/** Pipe held at both ends; cooling pulls. */
export const temperatureForce = formula({
	id: "casing/temperature-force",
	name: "Force of a temperature change",
	expression: "ΔF = −α E A_p ΔT = −207 A_p ΔT",
	source: cite("lubinski", "temperature effect"),
	inputs: {
		D: "diameter",
		t: "diameter",
		T_1: "temperature",
		T_2: "temperature",
	},
	gives: "force",
	validity: "both ends held",
	compute: ({ D, t, T_1, T_2 }) => -α * STEEL_MODULUS * areaOf(D, t) * (T_2 - T_1),
});
