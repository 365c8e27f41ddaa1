import type { Known } from "../cite/known.ts";
import type { HoleMark } from "./result-marks.ts";

export interface StimulationResults {
	readonly stages: readonly StageResults[];
	/** Every perforation, every stage. */
	readonly top_perforation: HoleMark;
	readonly bottom_perforation: HoleMark;
	readonly stage_count: Known<"count">;
	/** Water and acid, before proppant. */
	readonly clean_volume: Known<"volume">;
	readonly water_volume: Known<"volume">;
	readonly recycled_water_volume?: Known<"volume">;
	readonly water_by_source: readonly {
		readonly id: string;
		readonly name: string;
		readonly recycled: boolean;
		readonly volume: Known<"volume">;
	}[];
	/** Additives pumped neat, such as acid. */
	readonly neat_volumes: readonly { readonly id: string; readonly volume: Known<"volume"> }[];
	readonly slurry_volume: Known<"volume">;
	readonly proppant_mass: Known<"mass">;
	readonly proppant_by_type: readonly {
		readonly id: string;
		readonly mass: Known<"mass">;
	}[];
	readonly pumping_time: Known<"duration">;
	/** The elements of the pressure boundary, each with rating × factor. */
	readonly boundary: readonly {
		readonly id: string;
		readonly element: string;
		readonly rating: Known<"pressure">;
		readonly allowed: Known<"pressure">;
	}[];
	/** The least of them. */
	readonly limiting?: {
		readonly element: string;
		readonly allowed: Known<"pressure">;
	};
	/** The greatest surface pressure expected of any stage, perforations fresh, and the power that it takes. */
	readonly expected_treating_pressure?: Known<"pressure">;
	readonly expected_horsepower?: Known<"hydraulic-power">;
	/** That stage's pressure with smoother and rougher pipe: how far the figure may be trusted. */
	readonly roughness_sensitivity?: readonly {
		readonly id: string;
		readonly roughness: Known<"diameter">;
		readonly pipe_friction: Known<"pressure">;
		readonly treating_pressure: Known<"pressure">;
	}[];
	/** Height of the fractures by a simple model: illustrative, never a promise. */
	readonly illustrative_height?: {
		readonly formation: string;
		readonly pay: Known<"length">;
		readonly height: Known<"length">;
		readonly growth_above: Known<"length">;
	};
	readonly disclosure?: DisclosureResults;
}

/** What is pumped, by mass. Shares are greatest shares: their sum may pass the whole. */
export interface DisclosureResults {
	readonly total_mass: Known<"mass">;
	readonly base_fluid: { readonly mass: Known<"mass">; readonly share: Known<"share"> };
	readonly proppants: readonly {
		readonly id: string;
		readonly mass: Known<"mass">;
		readonly share: Known<"share">;
	}[];
	readonly additives: readonly {
		readonly id: string;
		readonly name: string;
		readonly volume: Known<"volume">;
		readonly mass: Known<"mass">;
		readonly share: Known<"share">;
		readonly ingredients: readonly {
			/** CAS number, or the name where there is none. */
			readonly id: string;
			readonly name: string;
			readonly cas?: string;
			readonly trade_secret?: string;
			readonly share_of_additive?: Known<"share">;
			/** Of the whole fluid. */
			readonly share?: Known<"share">;
		}[];
	}[];
	/** Each chemical once, over every additive, the base fluid and the proppants. */
	readonly chemicals: readonly {
		readonly id: string;
		readonly name: string;
		readonly cas?: string;
		readonly share: Known<"share">;
	}[];
}

export interface StageResults {
	readonly number: number;
	readonly top: HoleMark;
	readonly bottom: HoleMark;
	readonly plug?: HoleMark;
	readonly clusters: readonly HoleMark[];
	readonly steps: readonly StepResults[];
	readonly perforations?: Known<"count">;
	/** Casing from its top to the uppermost cluster. */
	readonly flush_volume?: Known<"volume">;
	readonly clean_volume: Known<"volume">;
	readonly slurry_volume: Known<"volume">;
	readonly proppant_mass: Known<"mass">;
	readonly pumping_time: Known<"duration">;
	readonly pressure?: StagePressure;
}

/** Pressures of a stage at its own rate, with clean base fluid in the casing, by the parts they are made of. */
export interface StagePressure {
	readonly fracturing: Known<"pressure">;
	readonly hydrostatic: Known<"pressure">;
	/** Of the base fluid without friction reducer. */
	readonly water_friction: Known<"pressure">;
	readonly pipe_friction: Known<"pressure">;
	/** As reached; less than stated where the asymptote holds it. */
	readonly drag_reduction: Known<"share">;
	readonly perforation_friction_fresh: Known<"pressure">;
	readonly perforation_friction_worn: Known<"pressure">;
	readonly near_wellbore: Known<"pressure">;
	readonly treating_fresh: Known<"pressure">;
	readonly treating_worn: Known<"pressure">;
	/** With fresh perforations. */
	readonly horsepower: Known<"hydraulic-power">;
}

export interface StepResults {
	readonly name: string;
	/** An additive pumped neat, else the base fluid. */
	readonly fluid?: string;
	readonly proppant?: string;
	/** Pounds added to a gallon of clean fluid. */
	readonly concentration?: Known<"proppant-concentration">;
	readonly rate: Known<"flow-rate">;
	readonly clean_volume: Known<"volume">;
	readonly slurry_volume: Known<"volume">;
	readonly slurry_density?: Known<"density">;
	readonly proppant_mass: Known<"mass">;
	readonly time: Known<"duration">;
}
