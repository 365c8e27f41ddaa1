import type { Known, KnownTable } from "../cite/known.ts";
import type { HoleMark } from "./result-marks.ts";

export interface StimulationResults {
	readonly stages: readonly StageResults[];
	/** Every perforation, every stage. */
	readonly top_perforation: HoleMark;
	readonly bottom_perforation: HoleMark;
	readonly stage_count: Known<"count">;
	/** Water and acid, before proppant. Totals are of the records, and of the plan for stages and quantities without one. */
	readonly clean_volume: Known<"volume">;
	readonly water_volume: Known<"volume">;
	readonly recycled_water_volume?: Known<"volume">;
	/** Where the dissolved solids of every source are given: the blend, and how far the stated base fluid is off it. */
	readonly water_blend?: { readonly density: Known<"density">; readonly off: Known<"density"> };
	readonly water_by_source: readonly {
		readonly id: string;
		readonly name: string;
		readonly recycled: boolean;
		readonly volume: Known<"volume">;
		/** Where its dissolved solids are given. */
		readonly density?: Known<"density">;
	}[];
	/** Additives pumped neat, such as acid. */
	readonly neat_volumes: readonly {
		readonly id: string;
		readonly volume: Known<"volume">;
	}[];
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
	/** Whose that is, and how its pressure goes while it is pumped. */
	readonly hardest_stage?: HardestStage;
	/** Expected < kickouts < relief ≤ maximum ≤ each element. */
	readonly ladder?: PressureLadder;
	/** Of sliding sleeves, the deepest first. */
	readonly sleeves?: readonly {
		readonly id: string;
		/** Of the stage. */
		readonly number: number;
		readonly uppermost: HoleMark;
		readonly seat: Known<"diameter">;
		readonly ball?: Known<"diameter">;
		/** By how much the ball is larger than its seat. */
		readonly bearing?: Known<"diameter">;
		/** By how much the narrowest seat above is larger than the ball. */
		readonly room?: Known<"diameter">;
	}[];
	/** What must be read at the surface to open the initiation valve. */
	readonly toe_opens_at_surface?: Known<"pressure">;
	/** Pumps that give the power, each loaded no more than stated, the spare ones with them. */
	readonly pumps?: Known<"count">;
	/** Averages over the stages and over the treated length. */
	readonly averages?: StimulationAverages;
	readonly fractures?: FractureRange;
	/** By annulus watched. */
	readonly annuli: readonly AnnulusResults[];
	/** Plugs to be drilled out. */
	readonly plugs: Known<"count">;
	/** Water expected back, by the stated shares. */
	readonly returned?: {
		readonly low: Known<"volume">;
		readonly high: Known<"volume">;
	};
	/** That stage's pressure with smoother and rougher pipe: how far the figure may be trusted. */
	readonly roughness_sensitivity?: readonly {
		readonly id: string;
		readonly roughness: Known<"diameter">;
		readonly pipe_friction: Known<"pressure">;
		readonly treating_pressure: Known<"pressure">;
	}[];
	/** The same by how much of the stated friction reduction is had; empty where none is stated. */
	readonly reduction_sensitivity?: readonly {
		readonly id: string;
		readonly reduction: Known<"share">;
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
	/** What the records come to beside the plan; absent before a stage has one. */
	readonly as_pumped?: TreatmentAsPumped;
}

/** The records of the treatment as a whole, with the plan's totals beside them. */
export interface TreatmentAsPumped {
	/** Stages with a record. */
	readonly stages_recorded: Known<"count">;
	/** Whether every stage has one, with its clean volume and its proppant. */
	readonly complete: boolean;
	/** Highest on record, and the stage it is of. */
	readonly highest_pressure?: Known<"pressure">;
	readonly highest_pressure_stage?: number;
	readonly planned: {
		readonly clean_volume: Known<"volume">;
		readonly water_volume: Known<"volume">;
		readonly slurry_volume: Known<"volume">;
		readonly proppant_mass: Known<"mass">;
		readonly pumping_time: Known<"duration">;
		readonly proppant_by_type: readonly { readonly id: string; readonly mass: Known<"mass"> }[];
		readonly averages: StimulationAverages;
	};
	/** Recorded less planned. */
	readonly clean_difference: Known<"volume">;
	readonly water_difference: Known<"volume">;
	readonly slurry_difference: Known<"volume">;
	readonly proppant_difference: Known<"mass">;
	readonly clean_of_plan?: Known<"share">;
	readonly proppant_of_plan?: Known<"share">;
}

/** One stage as recorded. */
export interface StageAsPumped {
	readonly clean_volume?: Known<"volume">;
	readonly proppant_mass?: Known<"mass">;
	/** Divided as the plan divides it. */
	readonly proppant_by_type: readonly { readonly id: string; readonly mass: Known<"mass"> }[];
	readonly slurry_volume?: Known<"volume">;
	readonly pumping_time?: Known<"duration">;
	/** Recorded less planned. */
	readonly clean_difference?: Known<"volume">;
	readonly clean_of_plan?: Known<"share">;
	readonly proppant_difference?: Known<"mass">;
	readonly proppant_of_plan?: Known<"share">;
}

/** Pressures that limit the job, from the lowest due to the highest; the line test stands last, apart. */
export interface PressureLadder {
	readonly rungs: readonly {
		readonly id: string;
		readonly tier: "expected" | "kickout" | "relief" | "maximum" | "element" | "line-test";
		/** The element, or the number of the kickout. */
		readonly name?: string;
		readonly pressure: Known<"pressure">;
	}[];
	/** Each pair that stands the wrong way round: ids of rungs, and by how much the lower passes the upper. */
	readonly broken: readonly {
		readonly id: string;
		readonly lower: string;
		readonly upper: string;
		readonly over: Known<"pressure-difference">;
	}[];
}

/** What is pumped, by mass. Shares are greatest shares: their sum may pass the whole. */
export interface DisclosureResults {
	readonly total_mass: Known<"mass">;
	readonly base_fluid: {
		readonly mass: Known<"mass">;
		readonly share: Known<"share">;
	};
	/** Of all proppants, and of all additives, in everything pumped. */
	readonly proppant_share: Known<"share">;
	readonly additive_share: Known<"share">;
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

export interface StimulationAverages {
	readonly treated_length: Known<"length">;
	readonly clean_per_stage: Known<"volume">;
	readonly proppant_per_stage: Known<"mass">;
	/** Barrels on each foot of hole. */
	readonly clean_per_length: Known<"capacity">;
	readonly proppant_per_length: Known<"linear-weight">;
}

export interface HardestStage {
	readonly number: number;
	/**
	 * While it is pumped: cumulative slurry and time, the rate, and the surface pressure with its parts, as the column in
	 * the casing changes and the perforations wear. Two rows where the rate steps.
	 */
	readonly course: KnownTable<CourseColumn>;
	/** Greatest over the course. */
	readonly greatest: Known<"pressure">;
	/** With the casing full of the richest slurry when the perforations pack off. */
	readonly screen_out?: {
		readonly proppant_in_pipe: Known<"mass">;
		readonly room_to_first_kickout?: Known<"pressure-difference">;
	};
	/** Rate into each cluster, deepest first, by the stress differences stated. */
	readonly limited_entry?: readonly {
		readonly id: string;
		readonly cluster: number;
		readonly stress: Known<"pressure">;
		readonly fresh: Known<"flow-rate">;
		readonly worn: Known<"flow-rate">;
	}[];
}

type CourseColumn =
	| "step"
	| "slurry"
	| "time"
	| "rate"
	| "hydrostatic"
	| "pipe_friction"
	| "perforation_friction"
	| "surface";

/** One fracture by several simple models: a range that illustrates, and predicts nothing. */
export interface FractureRange {
	readonly formation: string;
	readonly models: readonly {
		readonly id: FractureModel;
		readonly height: Known<"length">;
		/** From the well to the tip, one wing. */
		readonly half_length: Known<"length">;
		/** Mean over the fracture. */
		readonly width: Known<"diameter">;
		readonly net_pressure: Known<"pressure">;
		readonly efficiency: Known<"share">;
		/** Its shallowest point. */
		readonly top: Known<"true-vertical-depth">;
		/** Rock between that and the base of protected water. */
		readonly below_protected_water?: Known<"offset">;
	}[];
	/** The shallowest of the tops, and its rock to protected water. */
	readonly highest_top: Known<"true-vertical-depth">;
	readonly least_below_protected_water?: Known<"offset">;
}

type FractureModel = "pkn" | "kgd" | "pkn-grown" | "radial";

export interface AnnulusResults {
	readonly id: string;
	/** From the swelling of the string inside it, where the pressure in that string is known. */
	readonly rise_from_pressure?: AnnulusRise;
	/** From the warming stated, in a closed annulus. */
	readonly rise_from_heat?: AnnulusRise;
	readonly rise?: AnnulusRise;
	/** The most that may stand in it without a leak: the greater rise, or what its relief valve lets stand. */
	readonly highest?: Known<"pressure">;
}

/** With the outer pipe free to swell, and with cement and rock holding it. */
interface AnnulusRise {
	readonly free: Known<"pressure">;
	readonly held: Known<"pressure">;
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
	/** Beside the plan, where the stage has a record. */
	readonly as_pumped?: StageAsPumped;
	readonly recorded_pressure?: StageRecordedPressure;
	readonly chart?: StageChartResults;
}

/** What the treatment chart of a stage comes to. */
export interface StageChartResults {
	readonly slurry_volume: Known<"volume">;
	readonly highest_pressure: Known<"pressure">;
	/** Where the chart has an annulus. */
	readonly highest_annulus?: Known<"pressure">;
	/** How far its volume is from the record's, as a part of that. */
	readonly apart?: Known<"share">;
}

/** What the pressures on a stage's record say of rock and friction. */
export interface StageRecordedPressure {
	/** At instantaneous shut-in, over the depth of the uppermost cluster. */
	readonly gradient: Known<"pressure-gradient">;
	/** Above the stated closure; absent where none is stated. */
	readonly net?: Known<"pressure-difference">;
	/** Of everything pumped, mixed evenly. */
	readonly mean_density?: Known<"density">;
	/** Between surface and fracture, at the average rate. */
	readonly friction?: Known<"pressure-difference">;
	/** What the friction reducer saved of water's friction, with fresh and with worn perforations. */
	readonly reduction_fresh?: Known<"share">;
	readonly reduction_worn?: Known<"share">;
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
