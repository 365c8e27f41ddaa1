import type { Known } from "../cite/known.ts";

/** Truck loads over the whole job; a load is one truck in and one truck out. */
export interface LogisticsResults {
	readonly water_loads?: Known<"count">;
	readonly proppant_loads?: Known<"count">;
	readonly cement_loads?: Known<"count">;
	readonly pipe_loads?: Known<"count">;
	readonly equipment_loads?: Known<"count">;
	/** Water that comes back and is hauled away, at the greater of the shares stated. */
	readonly returned_water_loads?: Known<"count">;
	readonly other_loads?: Known<"count">;
	readonly total_loads?: Known<"count">;
	/** Twice the loads. */
	readonly one_way_trips?: Known<"count">;
	/** All phases of the schedule, one after another. */
	readonly duration?: {
		readonly low: Known<"duration">;
		readonly base: Known<"duration">;
		readonly high: Known<"duration">;
	};
	/** From the number of stages and the stages a day. */
	readonly stimulation_days?: Known<"duration">;
	/** An average over the base duration; the busiest day is busier. */
	readonly loads_per_day?: Known<"ratio">;
	/** What each phase brings down the road, in the order of the work; what belongs to none of them stands last. */
	readonly by_phase: readonly PhaseLoads[];
	readonly comparisons?: WaterComparisons;
}

export interface PhaseLoads {
	readonly id: string;
	/** Absent for loads that belong to no one phase. */
	readonly phase?: string;
	readonly water?: Known<"count">;
	readonly sand?: Known<"count">;
	readonly cement?: Known<"count">;
	readonly pipe?: Known<"count">;
	readonly equipment?: Known<"count">;
	readonly returned_water?: Known<"count">;
	readonly loads: Known<"count">;
	/** Twice the loads. */
	readonly one_way_trips: Known<"count">;
	/** Over the phase's likely duration. */
	readonly loads_per_day?: Known<"ratio">;
	readonly busiest_day?: Known<"count">;
	readonly busiest_day_trips?: Known<"count">;
}

/** The water pumped beside amounts that a reader knows. */
interface WaterComparisons {
	/** People whose use at home over a year is as much. */
	readonly people_for_a_year: Known<"count">;
	/** Ground that an inch of rain would wet with as much. */
	readonly ground_under_an_inch: Known<"land-area">;
}

export interface SafetyResults {
	readonly noise_at_nearest_dwelling?: NoiseAtPlace;
	/** At every neighbor whose distance is known: by spreading alone, without ground, wind or walls. */
	readonly noise_at_neighbors: readonly NoiseAtPlace[];
	/** Where the definition states both the fraction and the rate of gas that could escape. */
	readonly hydrogen_sulfide?: HydrogenSulfideResults;
}

/**
 * Radii of exposure by two published methods, each whole: no radius of one is compared with a limit of the other. Neither
 * is a safe distance.
 */
export interface HydrogenSulfideResults {
	/** The form of the rules, by the fraction and the rate of gas. */
	readonly rule: {
		readonly to_100_ppm: Known<"distance">;
		readonly to_500_ppm: Known<"distance">;
	};
	/** The recommended practice's screening, by the hydrogen sulfide released, to 100 ppm, a continuous release. */
	readonly practice: {
		readonly released: Known<"gas-rate">;
		readonly by_day: Known<"distance">;
		readonly at_night: Known<"distance">;
	};
}

export interface NoiseAtPlace {
	readonly id: string;
	readonly name: string;
	readonly distance: Known<"distance">;
	readonly level: Known<"sound-level">;
	/** The loudest everyday sound that is no louder, and the softest that is louder. */
	readonly as_loud_as?: EverydaySound;
	readonly softer_than?: EverydaySound;
}

export interface EverydaySound {
	readonly id: string;
	readonly level: Known<"sound-level">;
}
