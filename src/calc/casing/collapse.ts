import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { collapseConstants, collapseLimits } from "./collapse-constants.ts";

/*
 * Zero axial load, zero pressure inside. The four equations apply each to its own range of D/t; outside it each still
 * has a value, which means nothing.
 */

const inputs = { D: "diameter", t: "diameter", Y_p: "pressure" } as const;
const validity = "D/t > 2; 24,000 ≤ Y_p ≤ 180,000 psi";

interface Pipe {
	readonly D: number;
	readonly t: number;
	readonly Y_p: number;
}

type CollapseRegime = "yield" | "plastic" | "transition" | "elastic";

/** [psi] by the equation of one regime, whether or not it governs. */
const byRegime: Readonly<Record<CollapseRegime, (dt: number, Y: number) => number>> = {
	yield: (dt, Y) => 2 * Y * ((dt - 1) / dt ** 2),
	plastic: (dt, Y) => {
		const { A, B, C } = collapseConstants(Y);
		return Y * (A / dt - B) - C;
	},
	transition: (dt, Y) => {
		const { F, G } = collapseConstants(Y);
		return Y * (F / dt - G);
	},
	elastic: (dt) => 46.95e6 / (dt * (dt - 1) ** 2),
};

/** The regime whose range of D/t the pipe lies in; undefined outside the validity. */
const collapseRegime = ({ D, t, Y_p }: Pipe): CollapseRegime | undefined => {
	const dt = D / t;
	const { yieldPlastic, plasticTransition, transitionElastic } = collapseLimits(Y_p);
	if (!(dt > 2) || !Number.isFinite(yieldPlastic)) return undefined;
	if (dt <= yieldPlastic) return "yield";
	if (dt <= plasticTransition) return "plastic";
	return dt <= transitionElastic ? "transition" : "elastic";
};

const within = ({ D, t, Y_p }: Pipe, regime: CollapseRegime): number =>
	collapseRegime({ D, t, Y_p }) === undefined ? Number.NaN : byRegime[regime](D / t, Y_p);

/** Collapse pressure with its regime; NaN outside the validity. */
export const collapseOf = (
	pipe: Pipe,
): number | { readonly value: number; readonly branch: CollapseRegime } => {
	const regime = collapseRegime(pipe);
	return regime === undefined ? Number.NaN : { value: within(pipe, regime), branch: regime };
};

export const yieldCollapse = formula({
	id: "casing/collapse-yield",
	name: "Yield strength collapse",
	expression: "P = 2 Y_p [(D/t − 1) / (D/t)²]",
	source: cite("api-5c3", "yield strength collapse"),
	inputs,
	gives: "pressure",
	validity,
	compute: (pipe) => within(pipe, "yield"),
});

export const plasticCollapse = formula({
	id: "casing/collapse-plastic",
	name: "Plastic collapse",
	expression: "P = Y_p [A/(D/t) − B] − C",
	source: cite("api-5c3", "plastic collapse"),
	inputs,
	gives: "pressure",
	validity,
	compute: (pipe) => within(pipe, "plastic"),
});

export const transitionCollapse = formula({
	id: "casing/collapse-transition",
	name: "Transition collapse",
	expression: "P = Y_p [F/(D/t) − G]",
	source: cite("api-5c3", "transition collapse"),
	inputs,
	gives: "pressure",
	validity,
	compute: (pipe) => within(pipe, "transition"),
});

export const elasticCollapse = formula({
	id: "casing/collapse-elastic",
	name: "Elastic collapse",
	expression: "P = 46.95e6 / [(D/t)(D/t − 1)²]",
	source: cite("api-5c3", "elastic collapse"),
	inputs,
	gives: "pressure",
	validity,
	compute: (pipe) => within(pipe, "elastic"),
});

export const collapsePressure = formula({
	id: "casing/collapse",
	name: "Collapse rating",
	expression: "yield, plastic, transition or elastic collapse, by D/t",
	source: cite("api-5c3", "collapse, four regimes; zero axial load and internal pressure"),
	inputs,
	gives: "pressure",
	validity,
	compute: (pipe) => collapseOf(pipe),
});
