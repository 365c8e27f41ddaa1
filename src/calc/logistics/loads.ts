import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/** A load that is full within this is not a load more; it absorbs the last bits of binary arithmetic. */
const LAST_BITS = 1e-9;
const whole = (loads: number): number => Math.max(0, Math.ceil(loads - LAST_BITS * Math.max(1, loads)));

/** Loads of something weighed [count]. */
export const loadsByMass = formula({
	id: "logistics/loads-by-mass",
	name: "Truck loads, by mass",
	expression: "n = m / p, rounded up",
	source: cite("common-practice", "a part load is a load"),
	inputs: { m: "mass", p: "mass" },
	gives: "count",
	validity: "a payload above zero",
	compute: ({ m, p }) => (p > 0 ? whole(m / p) : Number.NaN),
});

/** Loads of something measured by volume [count]. */
export const loadsByVolume = formula({
	id: "logistics/loads-by-volume",
	name: "Truck loads, by volume",
	expression: "n = V / V_t, rounded up",
	source: cite("common-practice", "a part load is a load"),
	inputs: { V: "volume", V_t: "volume" },
	gives: "count",
	validity: "a capacity above zero",
	compute: ({ V, V_t }) => (V_t > 0 ? whole(V / V_t) : Number.NaN),
});

/** What goes by road [bbl]. */
export const truckedVolume = formula({
	id: "logistics/trucked-volume",
	name: "Water that goes by road",
	expression: "V_r = V (1 − s)",
	source: cite("definition"),
	inputs: { V: "volume", s: "share" },
	gives: "volume",
	validity: "a piped share from 0 to 1",
	compute: ({ V, s }) => (s < 0 || s > 1 ? Number.NaN : V * (1 - s)),
});

/** Dry cement [lb]. */
export const cementMass = formula({
	id: "logistics/cement-mass",
	name: "Mass of dry cement",
	expression: "m = 94 Σ n_i",
	source: cite("lapeyrouse", "ch. 2, a sack of cement is 94 lb"),
	inputs: { n_i: { many: "count" } },
	gives: "mass",
	validity: "sacks of 94 lb; blended additives come on top",
	compute: ({ n_i }) => n_i.reduce<number>((sum, n) => sum + 94 * n, 0),
});

/** Pipe [lb]: what the trucks carry, along the hole. */
export const pipeMass = formula({
	id: "logistics/pipe-mass",
	name: "Mass of pipe",
	expression: "m = Σ m_i",
	source: cite("conservation"),
	inputs: { m_i: { many: "mass" } },
	gives: "mass",
	compute: ({ m_i }) => m_i.reduce<number>((sum, m) => sum + m, 0),
});

/** [count] */
export const totalLoads = formula({
	id: "logistics/total-loads",
	name: "Total truck loads",
	expression: "n = Σ n_i",
	source: cite("definition"),
	inputs: { n_i: { many: "count" } },
	gives: "count",
	compute: ({ n_i }) => n_i.reduce<number>((sum, n) => sum + n, 0),
});

/** A load comes and goes [count]. */
export const oneWayTrips = formula({
	id: "logistics/one-way-trips",
	name: "One-way truck trips",
	expression: "trips = 2 n",
	source: cite("definition", "each load is a trip in and a trip out"),
	inputs: { n: "count" },
	gives: "count",
	compute: ({ n }) => 2 * n,
});

/** Loads spread evenly over days [per day]. */
export const loadsPerDay = formula({
	id: "logistics/loads-per-day",
	name: "Truck loads a day, on average",
	expression: "n / t",
	source: cite("definition", "an average; the busiest day is busier"),
	inputs: { n: "count", t: "duration" },
	gives: "ratio",
	validity: "a duration above zero",
	compute: ({ n, t }) => (t > 0 ? n / (t / (24 * 60)) : Number.NaN),
});

/** Loads on the busiest day of a phase, spread evenly over its shortest time [count]. */
export const busiestDay = formula({
	id: "logistics/busiest-day",
	name: "Truck loads on the busiest day, by the shortest duration",
	expression: "n_d = n / max(t, 1 d), rounded up",
	source: cite(
		"definition",
		"all loads within the shortest time, evenly; deliveries that bunch make it busier",
	),
	inputs: { n: "count", t: "duration" },
	gives: "count",
	validity: "a duration above zero",
	compute: ({ n, t }) => (t > 0 ? whole(n / Math.max(t / (24 * 60), 1)) : Number.NaN),
});

/** The same by the stages that may be pumped in one day [count]. */
export const busiestDayOfStages = formula({
	id: "logistics/busiest-day-of-stages",
	name: "Truck loads on the busiest day, by stages",
	expression: "n_d = (n / N) ⌈r⌉, rounded up",
	source: cite("definition", "the loads of as many whole stages as the pace begins in a day"),
	inputs: { n: "count", N: "count", r: "count" },
	gives: "count",
	validity: "at least one stage; a pace above zero",
	compute: ({ n, N, r }) => (N > 0 && r > 0 ? whole((n / N) * Math.min(Math.ceil(r), N)) : Number.NaN),
});

/** The greatest of several counts [count]. */
export const greatestCount = formula({
	id: "logistics/greatest-count",
	name: "Greatest count",
	expression: "max n_i",
	source: cite("definition"),
	inputs: { n_i: { many: "count" } },
	gives: "count",
	validity: "at least one",
	compute: ({ n_i }) => (n_i.length === 0 ? Number.NaN : Math.max(...n_i)),
});
