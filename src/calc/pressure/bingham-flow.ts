import { type Computed, formula } from "../../cite/formula.ts";
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
	inputs: { Q: "flow-rate", d: "diameter" },
	gives: "fluid-velocity",
	compute: ({ Q, d }) => (VELOCITY_CONSTANT * Q) / d ** 2,
});

/** bbl/min through in² to ft/s: 9702 in³/bbl over 60 s, 12 in/ft and π/4. */
export const VELOCITY_CONSTANT = 9702 / (60 * 12 * (Math.PI / 4));

/** Mean velocity in an annulus [ft/s]. */
export const annulusVelocity = formula({
	id: "pressure/annulus-velocity",
	name: "Mean velocity in an annulus",
	expression: "v = 17.157 Q / (D² − d²)",
	source: cite("geometry", "exact: 9702/(60 · 3π) = 17.157"),
	inputs: { Q: "flow-rate", D: "diameter", d: "diameter" },
	gives: "fluid-velocity",
	validity: "inner diameter less than outer",
	compute: ({ Q, D, d }) => (d >= D ? Number.NaN : (VELOCITY_CONSTANT * Q) / (D ** 2 - d ** 2)),
});

/** Effective viscosity in pipe [cP]. */
export const pipeEffectiveViscosity = formula({
	id: "pressure/bingham-pipe-effective-viscosity",
	name: "Effective viscosity in pipe, Bingham",
	expression: "μ_e = PV + 6.65 YP d / v",
	source: source("Bingham plastic, turbulence criteria"),
	inputs: {
		PV: "plastic-viscosity",
		YP: "yield-point",
		d: "diameter",
		v: "fluid-velocity",
	},
	gives: "plastic-viscosity",
	validity: "moving fluid",
	compute: ({ PV, YP, d, v }) => (v > 0 ? PV + (6.65 * YP * d) / v : Number.NaN),
});

/** Effective viscosity in an annulus [cP]. */
export const annulusEffectiveViscosity = formula({
	id: "pressure/bingham-annulus-effective-viscosity",
	name: "Effective viscosity in an annulus, Bingham",
	expression: "μ_e = PV + 5 YP (D − d) / v",
	source: source("Bingham plastic, turbulence criteria"),
	inputs: {
		PV: "plastic-viscosity",
		YP: "yield-point",
		D: "diameter",
		d: "diameter",
		v: "fluid-velocity",
	},
	gives: "plastic-viscosity",
	validity: "moving fluid",
	compute: ({ PV, YP, D, d, v }) => (v > 0 ? PV + (5 * YP * (D - d)) / v : Number.NaN),
});

/** Re in pipe. */
export const pipeReynolds = formula({
	id: "pressure/pipe-reynolds",
	name: "Reynolds number in pipe",
	expression: "Re = 928 ρ v d / μ",
	source: source("Newtonian and effective viscosity"),
	inputs: {
		ρ: "density",
		v: "fluid-velocity",
		d: "diameter",
		μ: "plastic-viscosity",
	},
	gives: "ratio",
	compute: ({ ρ, v, d, μ }) => (928 * ρ * v * d) / μ,
});

/** Re in an annulus. */
export const annulusReynolds = formula({
	id: "pressure/annulus-reynolds",
	name: "Reynolds number in an annulus",
	expression: "Re = 757 ρ v (D − d) / μ",
	source: source("slot approximation"),
	inputs: {
		ρ: "density",
		v: "fluid-velocity",
		D: "diameter",
		d: "diameter",
		μ: "plastic-viscosity",
	},
	gives: "ratio",
	validity: "slot form, inner over outer diameter more than 0.3",
	compute: ({ ρ, v, D, d, μ }) => (d <= 0.3 * D ? Number.NaN : (757 * ρ * v * (D - d)) / μ),
});

const flowInputs = {
	ρ: "density",
	Q: "flow-rate",
	PV: "plastic-viscosity",
	YP: "yield-point",
} as const;

/** A Bingham fluid in canonical units: lb/gal, cP, lbf/100 ft². */
export interface BinghamFluid {
	readonly ρ: number;
	readonly PV: number;
	readonly YP: number;
}

/** Annulus friction [psi/ft] at a rate [bbl/min], for methods that work it many times; NaN outside the slot form. */
export const annulusGradient = ({ ρ, PV, YP }: BinghamFluid, Q: number, D: number, d: number): Computed => {
	if (d <= 0.3 * D || d >= D) return Number.NaN;
	if (Q === 0) return { value: 0, branch: "at rest" };
	const gap = D - d;
	const v = (VELOCITY_CONSTANT * Q) / (D ** 2 - d ** 2);
	const effective = PV + (5 * YP * gap) / v;
	const reynolds = (757 * ρ * v * gap) / effective;
	const laminar = (PV * v) / (1000 * gap ** 2) + YP / (200 * gap);
	const turbulent = (ρ ** 0.75 * v ** 1.75 * PV ** 0.25) / (1396 * gap ** 1.25);
	return greater(reynolds, laminar, turbulent);
};

/** Pipe friction [psi/ft] at a rate [bbl/min], for methods that work it many times. */
export const pipeGradient = ({ ρ, PV, YP }: BinghamFluid, Q: number, d: number): Computed => {
	if (Q === 0) return { value: 0, branch: "at rest" };
	const v = (VELOCITY_CONSTANT * Q) / d ** 2;
	const effective = PV + (6.65 * YP * d) / v;
	const reynolds = (928 * ρ * v * d) / effective;
	const laminar = (PV * v) / (1500 * d ** 2) + YP / (225 * d);
	const turbulent = (ρ ** 0.75 * v ** 1.75 * PV ** 0.25) / (1800 * d ** 1.25);
	return greater(reynolds, laminar, turbulent);
};

/** Friction gradient of a Bingham fluid in an annulus [psi/ft]; zero at rest. */
export const annulusFrictionGradient = formula({
	id: "pressure/bingham-annulus-friction",
	name: "Annulus friction gradient, Bingham",
	expression:
		"laminar PV v / (1000 (D − d)²) + YP / (200 (D − d)); turbulent ρ^0.75 v^1.75 PV^0.25 / (1396 (D − d)^1.25) from Re = 2,100, the greater; v = 17.157 Q / (D² − d²)",
	source: source("annular flow, Bingham plastic"),
	inputs: { ...flowInputs, D: "diameter", d: "diameter" },
	gives: "pressure-gradient",
	validity: "slot form, inner over outer diameter more than 0.3; pipe in the middle of the hole",
	compute: ({ ρ, Q, PV, YP, D, d }) => annulusGradient({ ρ, PV, YP }, Q, D, d),
});

/** Friction gradient of a Bingham fluid in pipe [psi/ft]; zero at rest. */
export const pipeFrictionGradient = formula({
	id: "pressure/bingham-pipe-friction",
	name: "Pipe friction gradient, Bingham",
	expression:
		"laminar PV v / (1500 d²) + YP / (225 d); turbulent ρ^0.75 v^1.75 PV^0.25 / (1800 d^1.25) from Re = 2,100, the greater; v = 17.157 Q / d²",
	source: source("pipe flow, Bingham plastic"),
	inputs: { ...flowInputs, d: "diameter" },
	gives: "pressure-gradient",
	compute: ({ ρ, Q, PV, YP, d }) => pipeGradient({ ρ, PV, YP }, Q, d),
});

const greater = (reynolds: number, laminar: number, turbulent: number) =>
	reynolds < CRITICAL_REYNOLDS
		? { value: laminar, branch: "laminar" }
		: turbulent >= laminar
			? { value: turbulent, branch: "turbulent" }
			: {
					value: laminar,
					branch: "past laminar; the laminar loss is the greater",
				};

/** Friction over a length of one cross-section [psi]. */
export const frictionLoss = formula({
	id: "pressure/friction-loss",
	name: "Friction pressure loss",
	expression: "ΔP = G L",
	source: cite("definition"),
	inputs: { G: "pressure-gradient", L: "length" },
	gives: "pressure",
	compute: ({ G, L }) => G * L,
});

/** Friction of lengths one after another [psi]. */
export const totalLoss = formula({
	id: "pressure/total-friction",
	name: "Total friction pressure loss",
	expression: "ΔP = Σ ΔP_i",
	source: cite("definition"),
	inputs: { ΔP_i: { many: "pressure" } },
	gives: "pressure",
	compute: ({ ΔP_i }) => ΔP_i.reduce<number>((sum, loss) => sum + loss, 0),
});

/** Density that the moving column amounts to at a depth [lb/gal]. */
export const equivalentCirculatingDensity = formula({
	id: "pressure/equivalent-circulating-density",
	name: "Equivalent circulating density (ECD)",
	expression: "ECD = ρ + ΔP / (0.052 D)",
	source: cite("lapeyrouse", "ch. 1, equivalent circulating density"),
	inputs: { ρ: "density", ΔP: "pressure", D: "true-vertical-depth" },
	gives: "density",
	validity: "below the datum",
	compute: ({ ρ, ΔP, D }) => (D > 0 ? ρ + ΔP / (HYDROSTATIC_CONSTANT * D) : Number.NaN),
});
