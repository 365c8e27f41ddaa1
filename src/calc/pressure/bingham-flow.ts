import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { HYDROSTATIC_CONSTANT } from "./hydrostatic.ts";

/*
 * Friction of a Bingham plastic in the oilfield units of the source: psi/ft, lb/gal, ft/s, cP, lbf/100 ft², in.
 * Effective viscosity decides the regime at a Reynolds number of 2,100; past it the greater of the laminar and the
 * turbulent loss is taken, so that the loss never falls where the flow turns.
 */

/** Reynolds number at which flow is taken as turbulent. */
export const CRITICAL_REYNOLDS = 2100;

const source = (at: string) => cite("bourgoyne-1986", `ch. 4, ${at}`);

/** Mean velocity in a pipe or hole without pipe in it [ft/s]. */
export const pipeVelocity = formula({
	id: "pressure/pipe-velocity",
	name: "Mean velocity in pipe",
	expression: "v = 17.157 Q / d²",
	source: cite("geometry", "exact: 9702/(60 · 3π) = 17.157"),
	inputs: { rate: "flow-rate", diameter: "diameter" },
	gives: "fluid-velocity",
	compute: ({ rate, diameter }) => (VELOCITY_CONSTANT * rate) / diameter ** 2,
});

/** bbl/min through in² to ft/s: 9702 in³/bbl over 60 s, 12 in/ft and π/4. */
export const VELOCITY_CONSTANT = 9702 / (60 * 12 * (Math.PI / 4));

/** Mean velocity in an annulus [ft/s]. */
export const annulusVelocity = formula({
	id: "pressure/annulus-velocity",
	name: "Mean velocity in an annulus",
	expression: "v = 17.157 Q / (D² − d²)",
	source: cite("geometry", "exact: 9702/(60 · 3π) = 17.157"),
	inputs: { rate: "flow-rate", outer: "diameter", inner: "diameter" },
	gives: "fluid-velocity",
	validity: "inner diameter less than outer",
	compute: ({ rate, outer, inner }) =>
		inner >= outer ? Number.NaN : (VELOCITY_CONSTANT * rate) / (outer ** 2 - inner ** 2),
});

/** Effective viscosity in pipe [cP]. */
export const pipeEffectiveViscosity = formula({
	id: "pressure/bingham-pipe-effective-viscosity",
	name: "Effective viscosity in pipe, Bingham",
	expression: "μ_e = PV + 6.65 YP d / v",
	source: source("Bingham plastic, turbulence criteria"),
	inputs: {
		plastic_viscosity: "plastic-viscosity",
		yield_point: "yield-point",
		diameter: "diameter",
		velocity: "fluid-velocity",
	},
	gives: "plastic-viscosity",
	validity: "moving fluid",
	compute: ({ plastic_viscosity, yield_point, diameter, velocity }) =>
		velocity > 0 ? plastic_viscosity + (6.65 * yield_point * diameter) / velocity : Number.NaN,
});

/** Effective viscosity in an annulus [cP]. */
export const annulusEffectiveViscosity = formula({
	id: "pressure/bingham-annulus-effective-viscosity",
	name: "Effective viscosity in an annulus, Bingham",
	expression: "μ_e = PV + 5 YP (D − d) / v",
	source: source("Bingham plastic, turbulence criteria"),
	inputs: {
		plastic_viscosity: "plastic-viscosity",
		yield_point: "yield-point",
		outer: "diameter",
		inner: "diameter",
		velocity: "fluid-velocity",
	},
	gives: "plastic-viscosity",
	validity: "moving fluid",
	compute: ({ plastic_viscosity, yield_point, outer, inner, velocity }) =>
		velocity > 0 ? plastic_viscosity + (5 * yield_point * (outer - inner)) / velocity : Number.NaN,
});

/** Re in pipe. */
export const pipeReynolds = formula({
	id: "pressure/pipe-reynolds",
	name: "Reynolds number in pipe",
	expression: "Re = 928 ρ v d / μ",
	source: source("Newtonian and effective viscosity"),
	inputs: {
		density: "density",
		velocity: "fluid-velocity",
		diameter: "diameter",
		viscosity: "plastic-viscosity",
	},
	gives: "ratio",
	compute: ({ density, velocity, diameter, viscosity }) => (928 * density * velocity * diameter) / viscosity,
});

/** Re in an annulus. */
export const annulusReynolds = formula({
	id: "pressure/annulus-reynolds",
	name: "Reynolds number in an annulus",
	expression: "Re = 757 ρ v (D − d) / μ",
	source: source("slot approximation"),
	inputs: {
		density: "density",
		velocity: "fluid-velocity",
		outer: "diameter",
		inner: "diameter",
		viscosity: "plastic-viscosity",
	},
	gives: "ratio",
	validity: "slot form, inner over outer diameter more than 0.3",
	compute: ({ density, velocity, outer, inner, viscosity }) =>
		inner <= 0.3 * outer ? Number.NaN : (757 * density * velocity * (outer - inner)) / viscosity,
});

const flowInputs = {
	density: "density",
	rate: "flow-rate",
	plastic_viscosity: "plastic-viscosity",
	yield_point: "yield-point",
} as const;

/** Friction gradient of a Bingham fluid in an annulus [psi/ft]; zero at rest. */
export const annulusFrictionGradient = formula({
	id: "pressure/bingham-annulus-friction",
	name: "Annulus friction gradient, Bingham",
	expression:
		"laminar PV v / (1000 (D−d)²) + YP / (200 (D−d)); turbulent ρ^0.75 v^1.75 PV^0.25 / (1396 (D−d)^1.25) from Re 2,100, the greater",
	source: source("annular flow, Bingham plastic"),
	inputs: { ...flowInputs, outer: "diameter", inner: "diameter" },
	gives: "pressure-gradient",
	validity: "slot form, inner over outer diameter more than 0.3; pipe in the middle of the hole",
	compute: ({ density, rate, plastic_viscosity, yield_point, outer, inner }) => {
		if (inner <= 0.3 * outer || inner >= outer) return Number.NaN;
		if (rate === 0) return { value: 0, branch: "at rest" };
		const gap = outer - inner;
		const v = (VELOCITY_CONSTANT * rate) / (outer ** 2 - inner ** 2);
		const effective = plastic_viscosity + (5 * yield_point * gap) / v;
		const reynolds = (757 * density * v * gap) / effective;
		const laminar = (plastic_viscosity * v) / (1000 * gap ** 2) + yield_point / (200 * gap);
		const turbulent = (density ** 0.75 * v ** 1.75 * plastic_viscosity ** 0.25) / (1396 * gap ** 1.25);
		return greater(reynolds, laminar, turbulent);
	},
});

/** Friction gradient of a Bingham fluid in pipe [psi/ft]; zero at rest. */
export const pipeFrictionGradient = formula({
	id: "pressure/bingham-pipe-friction",
	name: "Pipe friction gradient, Bingham",
	expression:
		"laminar PV v / (1500 d²) + YP / (225 d); turbulent ρ^0.75 v^1.75 PV^0.25 / (1800 d^1.25) from Re 2,100, the greater",
	source: source("pipe flow, Bingham plastic"),
	inputs: { ...flowInputs, diameter: "diameter" },
	gives: "pressure-gradient",
	compute: ({ density, rate, plastic_viscosity, yield_point, diameter: d }) => {
		if (rate === 0) return { value: 0, branch: "at rest" };
		const v = (VELOCITY_CONSTANT * rate) / d ** 2;
		const effective = plastic_viscosity + (6.65 * yield_point * d) / v;
		const reynolds = (928 * density * v * d) / effective;
		const laminar = (plastic_viscosity * v) / (1500 * d ** 2) + yield_point / (225 * d);
		const turbulent = (density ** 0.75 * v ** 1.75 * plastic_viscosity ** 0.25) / (1800 * d ** 1.25);
		return greater(reynolds, laminar, turbulent);
	},
});

const greater = (reynolds: number, laminar: number, turbulent: number) =>
	reynolds < CRITICAL_REYNOLDS
		? { value: laminar, branch: "laminar" }
		: turbulent >= laminar
			? { value: turbulent, branch: "turbulent" }
			: { value: laminar, branch: "past laminar; the laminar loss is the greater" };

/** Friction over a length of one cross-section [psi]. */
export const frictionLoss = formula({
	id: "pressure/friction-loss",
	name: "Friction pressure loss",
	expression: "ΔP = (dP/dL) L",
	source: cite("definition"),
	inputs: { gradient: "pressure-gradient", length: "length" },
	gives: "pressure",
	compute: ({ gradient, length }) => gradient * length,
});

/** Density that the moving column amounts to at a depth [lb/gal]. */
export const equivalentCirculatingDensity = formula({
	id: "pressure/equivalent-circulating-density",
	name: "Equivalent circulating density (ECD)",
	expression: "ECD = ρ + ΔP_annulus / (0.052 D)",
	source: cite("lapeyrouse", "ch. 1, equivalent circulating density"),
	inputs: { density: "density", friction: "pressure", depth: "true-vertical-depth" },
	gives: "density",
	validity: "below the datum",
	compute: ({ density, friction, depth }) =>
		depth > 0 ? density + friction / (HYDROSTATIC_CONSTANT * depth) : Number.NaN,
});
