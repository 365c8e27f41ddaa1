import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/** Room for slurry in a length of open hole, with the excess that the plan allows for. */
export const capacityWithExcess = formula({
	id: "cement/capacity-with-excess",
	name: "Annular capacity with excess",
	expression: "C_e = C (1 + e)",
	source: cite("common-practice", "excess is added to open hole only"),
	inputs: { C: "capacity", e: "share" },
	gives: "capacity",
	validity: "an excess that leaves room",
	compute: ({ C, e }) => (e > -1 ? C * (1 + e) : Number.NaN),
});

/** The same with twice the excess: a hole as much wider again as the plan took it to be. */
export const capacityWithTwiceExcess = formula({
	id: "cement/capacity-with-twice-excess",
	name: "Annular capacity with twice the excess",
	expression: "C_2e = C (1 + 2e)",
	source: cite("common-practice", "a calculated top is no better than the excess that it rests on"),
	inputs: { C: "capacity", e: "share" },
	gives: "capacity",
	validity: "an excess that leaves room",
	compute: ({ C, e }) => (e > -0.5 ? C * (1 + 2 * e) : Number.NaN),
});

/** Slurry pumped as a part of the slurry calculated. */
export const slurryOfPlan = formula({
	id: "cement/slurry-of-plan",
	name: "Slurry pumped over slurry calculated",
	expression: "V_pumped / V",
	source: cite("definition"),
	inputs: { V_pumped: "volume", V: "volume" },
	gives: "share",
	validity: "a calculated volume above zero",
	compute: ({ V_pumped, V }) => (V > 0 ? V_pumped / V : Number.NaN),
});

/** How far a slurry was weighed from its design, either way [lb/gal]. */
export const densityOffPlan = formula({
	id: "cement/density-off-plan",
	name: "Slurry density, recorded against design",
	expression: "|ρ − ρ_p|",
	source: cite("definition"),
	inputs: { ρ: "density", ρ_p: "density" },
	gives: "density",
	compute: ({ ρ, ρ_p }) => Math.abs(ρ - ρ_p),
});

/**
 * How far a recorded lift pressure lies from the calculated one, as a part of it. A gauge reads the columns alone or the
 * columns with the friction of the last slow pumping, so that anything between the two agrees.
 */
export const liftOffCalculated = formula({
	id: "cement/lift-off-calculated",
	name: "Final lift pressure, recorded against calculated",
	expression:
		"(Δp − p) / Δp below the columns at rest; (p − p_f) / p_f above the final circulating pressure; else 0",
	source: cite("common-practice", "lift agrees with the columns if the cement is where it should be"),
	inputs: { p: "pressure", Δp: "pressure-difference", p_f: "pressure" },
	gives: "share",
	validity: "a calculated lift above zero",
	compute: ({ p, Δp, p_f }) => {
		if (!(Δp > 0)) return Number.NaN;
		if (p < Δp) return { value: (Δp - p) / Δp, branch: "below the columns at rest" };
		const most = Math.max(Δp, p_f);
		return p > most
			? { value: (p - most) / most, branch: "above the final circulating pressure" }
			: { value: 0, branch: "between the two" };
	},
});

/** The least part of its calculated volume that any slurry of a job was pumped to. */
export const leastOfPlan = formula({
	id: "cement/least-of-plan",
	name: "Least part of a calculated slurry that was pumped",
	expression: "min s_i",
	source: cite("definition"),
	inputs: { s_i: { many: "share" } },
	gives: "share",
	validity: "at least one slurry",
	compute: ({ s_i }) => (s_i.length === 0 ? Number.NaN : Math.min(...s_i)),
});

/** The greatest distance of any slurry of a job from its design density [lb/gal]. */
export const greatestDensityOff = formula({
	id: "cement/greatest-density-off",
	name: "Greatest difference of slurry density from design",
	expression: "max |ρ_i − ρ_p,i|",
	source: cite("definition"),
	inputs: { d_i: { many: "density" } },
	gives: "density",
	validity: "at least one slurry",
	compute: ({ d_i }) => (d_i.length === 0 ? Number.NaN : Math.max(...d_i)),
});
