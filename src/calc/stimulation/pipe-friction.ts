import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { VELOCITY_CONSTANT } from "../pressure/bingham-flow.ts";

/*
 * Friction of fracturing fluid going down casing, in Fanning form. Every figure depends on the wall's roughness and the
 * fluid's drag reduction, both inputs: print neither number without its basis.
 */

/** Reynolds number below which flow is laminar. */
const LAMINAR_BELOW = 2100;

/** Re of a Newtonian fluid in pipe. */
export const reynoldsNumber = formula({
	id: "stimulation/reynolds-number",
	name: "Reynolds number in pipe",
	expression: "Re = 928 ρ v d / μ, v = 17.157 Q / d²",
	source: cite("fracturing-calculation-procedure", "Reynolds number in field units"),
	inputs: { density: "density", rate: "flow-rate", diameter: "diameter", viscosity: "plastic-viscosity" },
	gives: "ratio",
	validity: "viscosity above zero",
	compute: ({ density, rate, diameter, viscosity }) =>
		viscosity > 0
			? (928 * density * ((VELOCITY_CONSTANT * rate) / diameter ** 2) * diameter) / viscosity
			: Number.NaN,
});

/** f in smooth pipe. */
export const smoothFrictionFactor = formula({
	id: "stimulation/friction-factor-smooth",
	name: "Fanning friction factor, smooth pipe",
	expression: "laminar f = 16 / Re; turbulent 1/√f = 4 log(Re √f) − 0.4",
	source: cite("fracturing-calculation-procedure", "smooth turbulent pipe flow"),
	inputs: { reynolds: "ratio" },
	gives: "ratio",
	validity: "Re above zero",
	compute: ({ reynolds }) =>
		reynolds <= 0
			? Number.NaN
			: reynolds < LAMINAR_BELOW
				? { value: 16 / reynolds, branch: "laminar" }
				: { value: solve((root) => 4 * Math.log10(reynolds / root) - 0.4), branch: "turbulent" },
});

/** f in rough pipe. */
export const colebrookFrictionFactor = formula({
	id: "stimulation/friction-factor-colebrook",
	name: "Fanning friction factor, rough pipe",
	expression: "laminar f = 16 / Re; turbulent 1/√f = −4 log(ε / (3.7065 d) + 1.2613 / (Re √f))",
	source: cite("colebrook-1939", "in Fanning form"),
	inputs: { reynolds: "ratio", roughness: "diameter", diameter: "diameter" },
	gives: "ratio",
	validity: "Re above zero; roughness less than a twentieth of the diameter",
	compute: ({ reynolds, roughness, diameter }) =>
		reynolds <= 0 || roughness < 0 || roughness >= diameter / 20
			? Number.NaN
			: reynolds < LAMINAR_BELOW
				? { value: 16 / reynolds, branch: "laminar" }
				: {
						value: solve(
							(root) => -4 * Math.log10(roughness / (3.7065 * diameter) + (1.2613 * root) / reynolds),
						),
						branch: "turbulent",
					},
});

/** The least f that drag reduction by polymer reaches. */
export const virkFrictionFactor = formula({
	id: "stimulation/friction-factor-virk",
	name: "Fanning friction factor at maximum drag reduction",
	expression: "1/√f = 19.0 log(Re √f) − 32.4",
	source: cite("virk-1975", "maximum drag reduction asymptote"),
	inputs: { reynolds: "ratio" },
	gives: "ratio",
	validity: "turbulent flow, Re above 4,000",
	compute: ({ reynolds }) => (reynolds < 4000 ? Number.NaN : asymptote(reynolds)),
});

/** f of the fluid as pumped: that of water in the same pipe, less the drag reduction, never below the asymptote. */
export const reducedFrictionFactor = formula({
	id: "stimulation/friction-factor-reduced",
	name: "Fanning friction factor with drag reduction",
	expression: "f = max(f_water (1 − DR), f_Virk)",
	source: cite(
		"virk-1975",
		"drag reduction is against the solvent in the same pipe, bounded by the asymptote",
	),
	inputs: { water: "ratio", reduction: "share", least: "ratio" },
	gives: "ratio",
	validity: "a reduction from 0 to less than 1",
	compute: ({ water, reduction, least }) => {
		if (reduction < 0 || reduction >= 1) return Number.NaN;
		const reduced = water * (1 - reduction);
		return reduced >= least || reduction === 0
			? { value: reduced, branch: "as stated" }
			: { value: Math.min(water, least), branch: "held at the maximum drag reduction asymptote" };
	},
});

/** Friction over a length of one pipe [psi]. */
export const pipeFriction = formula({
	id: "stimulation/pipe-friction",
	name: "Pipe friction",
	expression: "ΔP = f ρ v² L / (25.8 d), v = 17.157 Q / d²",
	source: cite("fracturing-calculation-procedure", "Fanning equation in field units; 25.8 derives as 25.806"),
	inputs: {
		friction_factor: "ratio",
		density: "density",
		rate: "flow-rate",
		diameter: "diameter",
		length: "length",
	},
	gives: "pressure",
	compute: ({ friction_factor, density, rate, diameter, length }) =>
		(friction_factor * density * ((VELOCITY_CONSTANT * rate) / diameter ** 2) ** 2 * length) /
		(25.8 * diameter),
});

/** Share by which friction falls below water's in the same pipe. */
export const dragReduction = formula({
	id: "stimulation/drag-reduction",
	name: "Drag reduction reached",
	expression: "DR = 1 − ΔP / ΔP_water",
	source: cite("virk-1975"),
	inputs: { friction: "pressure", water_friction: "pressure" },
	gives: "share",
	validity: "water friction above zero",
	compute: ({ friction, water_friction }) =>
		water_friction > 0 ? 1 - friction / water_friction : Number.NaN,
});

/** Finds 1/√f where the right-hand side gives it back; the map contracts, so plain iteration is enough. */
const solve = (next: (root: number) => number): number => {
	let root = 15;
	for (let i = 0; i < 60; i++) {
		const better = next(root);
		if (Math.abs(better - root) < 1e-13 * better) return 1 / better ** 2;
		root = better;
	}
	return Number.NaN;
};

/** Virk's equation contracts too slowly near its low end for plain iteration: Newton on 1/√f. */
const asymptote = (reynolds: number): number => {
	let root = 19 * Math.log10(reynolds) - 50;
	for (let i = 0; i < 60; i++) {
		const excess = root - 19 * Math.log10(reynolds / root) + 32.4;
		const better = root - excess / (1 + 19 / (Math.LN10 * root));
		if (!(better > 0)) return Number.NaN;
		if (Math.abs(better - root) < 1e-13 * better) return 1 / better ** 2;
		root = better;
	}
	return Number.NaN;
};
