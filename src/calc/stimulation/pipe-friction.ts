import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { VELOCITY_CONSTANT } from "../pressure/bingham-flow.ts";

/*
 * Friction of fracturing fluid going down casing, in Fanning form. Every figure depends on the wall's roughness and the
 * fluid's drag reduction, both inputs: print neither number without its basis.
 */

/** Reynolds number below which flow is laminar. */
const LAMINAR_BELOW = 2100;
/** Reynolds number from which drag reduction by polymer is reckoned with. */
export const FULLY_TURBULENT = 4000;

/** Re of a Newtonian fluid in pipe. */
export const reynoldsNumber = formula({
	id: "stimulation/reynolds-number",
	name: "Reynolds number in pipe",
	expression: "Re = 928 ρ v d / μ, v = 17.157 Q / d²",
	source: cite("fracturing-calculation-procedure", "Reynolds number in field units"),
	inputs: { ρ: "density", Q: "flow-rate", d: "diameter", μ: "plastic-viscosity" },
	gives: "ratio",
	validity: "viscosity above zero",
	compute: ({ ρ, Q, d, μ }) => (μ > 0 ? (928 * ρ * ((VELOCITY_CONSTANT * Q) / d ** 2) * d) / μ : Number.NaN),
});

/** f in smooth pipe. */
export const smoothFrictionFactor = formula({
	id: "stimulation/friction-factor-smooth",
	name: "Fanning friction factor, smooth pipe",
	expression: "laminar f = 16 / Re; turbulent 1/√f = 4 log(Re √f) − 0.4",
	source: cite("fracturing-calculation-procedure", "smooth turbulent pipe flow"),
	inputs: { Re: "ratio" },
	gives: "ratio",
	validity: "Re above zero",
	compute: ({ Re }) =>
		Re <= 0
			? Number.NaN
			: Re < LAMINAR_BELOW
				? { value: 16 / Re, branch: "laminar" }
				: { value: solve((root) => 4 * Math.log10(Re / root) - 0.4), branch: "turbulent" },
});

/** f in rough pipe. */
export const colebrookFrictionFactor = formula({
	id: "stimulation/friction-factor-colebrook",
	name: "Fanning friction factor, rough pipe",
	expression: "laminar f = 16 / Re; turbulent 1/√f = −4 log(ε / (3.7065 d) + 1.2613 / (Re √f))",
	source: cite("colebrook-1939", "in Fanning form"),
	inputs: { Re: "ratio", ε: "diameter", d: "diameter" },
	gives: "ratio",
	validity: "Re above zero; roughness less than a twentieth of the diameter",
	compute: ({ Re, ε, d }) =>
		Re <= 0 || ε < 0 || ε >= d / 20
			? Number.NaN
			: Re < LAMINAR_BELOW
				? { value: 16 / Re, branch: "laminar" }
				: {
						value: solve((root) => -4 * Math.log10(ε / (3.7065 * d) + (1.2613 * root) / Re)),
						branch: "turbulent",
					},
});

/** The least f that drag reduction by polymer reaches. */
export const virkFrictionFactor = formula({
	id: "stimulation/friction-factor-virk",
	name: "Fanning friction factor at maximum drag reduction",
	expression: "1/√f = 19.0 log(Re √f) − 32.4",
	source: cite("virk-1975", "maximum drag reduction asymptote"),
	inputs: { Re: "ratio" },
	gives: "ratio",
	validity: "turbulent flow, Re above 4,000",
	compute: ({ Re }) => (Re < FULLY_TURBULENT ? Number.NaN : asymptote(Re)),
});

/** f of the fluid as pumped: that of water in the same pipe, less the drag reduction, never below the asymptote. */
export const reducedFrictionFactor = formula({
	id: "stimulation/friction-factor-reduced",
	name: "Fanning friction factor with drag reduction",
	expression: "f = max(f_w (1 − DR), f_v)",
	source: cite(
		"virk-1975",
		"drag reduction is against the solvent in the same pipe, bounded by the asymptote",
	),
	inputs: { f_w: "ratio", DR: "share", f_v: "ratio" },
	gives: "ratio",
	validity: "a reduction from 0 to less than 1",
	compute: ({ f_w, DR, f_v }) => {
		if (DR < 0 || DR >= 1) return Number.NaN;
		const reduced = f_w * (1 - DR);
		return reduced >= f_v || DR === 0
			? { value: reduced, branch: "as stated" }
			: { value: Math.min(f_w, f_v), branch: "held at the maximum drag reduction asymptote" };
	},
});

/** Friction over a length of one pipe [psi]. */
export const pipeFriction = formula({
	id: "stimulation/pipe-friction",
	name: "Pipe friction",
	expression: "ΔP = f ρ v² L / (25.8 d), v = 17.157 Q / d²",
	source: cite("fracturing-calculation-procedure", "Fanning equation in field units; 25.8 derives as 25.806"),
	inputs: {
		f: "ratio",
		ρ: "density",
		Q: "flow-rate",
		d: "diameter",
		L: "length",
	},
	gives: "pressure",
	compute: ({ f, ρ, Q, d, L }) => (f * ρ * ((VELOCITY_CONSTANT * Q) / d ** 2) ** 2 * L) / (25.8 * d),
});

/** Share by which friction falls below water's in the same pipe. */
export const dragReduction = formula({
	id: "stimulation/drag-reduction",
	name: "Drag reduction reached",
	expression: "DR = 1 − ΔP / ΔP_w",
	source: cite("virk-1975"),
	inputs: { ΔP: "pressure", ΔP_w: "pressure" },
	gives: "share",
	validity: "water friction above zero",
	compute: ({ ΔP, ΔP_w }) => (ΔP_w > 0 ? 1 - ΔP / ΔP_w : Number.NaN),
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
