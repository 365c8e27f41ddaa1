import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/** A load that is full within this is not a load more; it absorbs the last bits of binary arithmetic. */
const LAST_BITS = 1e-9;
const whole = (loads: number): number => Math.ceil(loads - LAST_BITS * Math.max(1, loads));

/** Loads of something weighed [count]. */
export const loadsByMass = formula({
	id: "logistics/loads-by-mass",
	name: "Truck loads, by mass",
	expression: "loads = ⌈m / payload⌉",
	source: cite("common-practice", "a part load is a load"),
	inputs: { mass: "mass", payload: "mass" },
	gives: "count",
	validity: "a payload above zero",
	compute: ({ mass, payload }) => (payload > 0 ? whole(mass / payload) : Number.NaN),
});

/** Loads of something measured by volume [count]. */
export const loadsByVolume = formula({
	id: "logistics/loads-by-volume",
	name: "Truck loads, by volume",
	expression: "loads = ⌈V / capacity⌉",
	source: cite("common-practice", "a part load is a load"),
	inputs: { volume: "volume", capacity: "volume" },
	gives: "count",
	validity: "a capacity above zero",
	compute: ({ volume, capacity }) => (capacity > 0 ? whole(volume / capacity) : Number.NaN),
});

/** What goes by road [bbl]. */
export const truckedVolume = formula({
	id: "logistics/trucked-volume",
	name: "Water that goes by road",
	expression: "V_road = V (1 − piped)",
	source: cite("definition"),
	inputs: { volume: "volume", piped: "share" },
	gives: "volume",
	validity: "a piped share from 0 to 1",
	compute: ({ volume, piped }) => (piped < 0 || piped > 1 ? Number.NaN : volume * (1 - piped)),
});

/** Dry cement [lb]. */
export const cementMass = formula({
	id: "logistics/cement-mass",
	name: "Mass of dry cement",
	expression: "m = 94 · sacks",
	source: cite("lapeyrouse", "ch. 2, a sack of cement is 94 lb"),
	inputs: { sacks: { many: "count" } },
	gives: "mass",
	validity: "sacks of 94 lb; blended additives come on top",
	compute: ({ sacks }) => sacks.reduce<number>((sum, n) => sum + 94 * n, 0),
});

/** Pipe [lb]: the weight of strings in air, as a mass. */
export const pipeMass = formula({
	id: "logistics/pipe-mass",
	name: "Mass of pipe",
	expression: "m = Σ W_air",
	source: cite("definition", "a pound of force is the weight of a pound"),
	inputs: { weights: { many: "force" } },
	gives: "mass",
	compute: ({ weights }) => weights.reduce<number>((sum, w) => sum + w, 0),
});

/** [count] */
export const totalLoads = formula({
	id: "logistics/total-loads",
	name: "Total truck loads",
	expression: "Σ loadsᵢ",
	source: cite("definition"),
	inputs: { parts: { many: "count" } },
	gives: "count",
	compute: ({ parts }) => parts.reduce<number>((sum, part) => sum + part, 0),
});

/** A load comes and goes [count]. */
export const oneWayTrips = formula({
	id: "logistics/one-way-trips",
	name: "One-way truck trips",
	expression: "trips = 2 · loads",
	source: cite("definition", "each load is a trip in and a trip out"),
	inputs: { loads: "count" },
	gives: "count",
	compute: ({ loads }) => 2 * loads,
});

/** Loads spread evenly over days [per day]. */
export const loadsPerDay = formula({
	id: "logistics/loads-per-day",
	name: "Truck loads a day, on average",
	expression: "loads / days",
	source: cite("definition", "an average; the busiest day is busier"),
	inputs: { loads: "count", days: "duration" },
	gives: "ratio",
	validity: "a duration above zero",
	compute: ({ loads, days }) => (days > 0 ? loads / (days / (24 * 60)) : Number.NaN),
});
