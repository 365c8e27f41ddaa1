import type { Known, KnownTable } from "../cite/known.ts";

/**
 * Everything computed, once, for every paper. Keys are what `results` prints and what papers agree by: snake_case here,
 * because they are read by people beside the definition. A value that could not be computed is absent, and says why
 * in `undetermined`.
 */
export interface Results {
	readonly trajectory: TrajectoryResults;
	readonly geology: GeologyResults;
	/** By string id, in the definition's order. */
	readonly casing: Readonly<Record<string, CasingResults>>;
	readonly cement: Readonly<Record<string, CementResults>>;
	readonly stimulation?: StimulationResults;
	readonly isolation: IsolationResults;
	readonly logistics?: LogisticsResults;
	readonly safety?: SafetyResults;
	readonly undetermined: readonly Undetermined[];
}

/** A result that could not be had, and what is missing for it. */
export interface Undetermined {
	readonly key: string;
	/** One sentence. */
	readonly because: string;
	/** Definition paths that would mend it. */
	readonly needs: readonly (readonly (string | number)[])[];
}

/** One place in the well, on every axis a reader may use. `md` is absent for places the hole does not reach. */
export interface DepthMark {
	readonly md?: Known<"measured-depth">;
	readonly tvd: Known<"true-vertical-depth">;
	readonly below_ground: Known<"depth-below-ground">;
	/** How often the hole passes this depth, where more than once; `md` is then the first time. */
	readonly passes?: Known<"count">;
}

/** A mark in the hole. */
export interface HoleMark extends DepthMark {
	readonly md: Known<"measured-depth">;
}

export type PathColumn =
	| "md"
	| "inclination"
	| "azimuth"
	| "tvd"
	| "north"
	| "east"
	| "vertical_section"
	| "dogleg";
export type WellPath = KnownTable<PathColumn>;

export interface TrajectoryResults {
	/** `planned` or `surveyed`; calculations use this path. */
	readonly basis: "planned" | "surveyed";
	readonly path: WellPath;
	/** The plan's path where `path` is surveyed. */
	readonly planned?: WellPath;
	readonly vertical_section_azimuth: Known<"angle">;
	readonly total_depth: HoleMark;
	readonly kickoff?: HoleMark;
	readonly landing?: HoleMark;
	/** Measured length from landing to total depth. */
	readonly lateral_length?: Known<"length">;
	readonly maximum_dogleg: Known<"dogleg">;
	readonly maximum_inclination: Known<"angle">;
	/** Horizontal distance and direction from wellhead to total depth. */
	readonly closure: Known<"length">;
	readonly closure_azimuth: Known<"angle">;
}

export interface GeologyResults {
	readonly formations: readonly {
		readonly id: string;
		readonly name: string;
		readonly top: DepthMark;
		readonly base?: DepthMark;
	}[];
	readonly water: readonly {
		readonly id: string;
		readonly name: string;
		readonly top: DepthMark;
		readonly base: DepthMark;
	}[];
	readonly protected_water_base?: DepthMark;
}

export interface CasingResults {
	readonly id: string;
	readonly top: HoleMark;
	readonly shoe: HoleMark;
	readonly length: Known<"length">;
	readonly joints?: Known<"count">;
	/** Weight that hangs: unit weight by vertical extent. */
	readonly weight_in_air: Known<"force">;
	/** The same in the mud of its hole. */
	readonly weight_in_mud?: Known<"force">;
	/** Mass of the pipe along the hole: what the trucks carry. */
	readonly pipe_mass: Known<"mass">;
	readonly sections: readonly PipeSectionResults[];
	/** The least over the string's sections, pipe and coupling both. */
	readonly least_internal_yield: Known<"pressure">;
	readonly least_collapse: Known<"pressure">;
	/** The least drift over the sections. */
	readonly drift: Known<"diameter">;
	/** Drilling fluid's hydrostatic pressure at the shoe. */
	readonly mud_hydrostatic_at_shoe?: Known<"pressure">;
	/** Formation breakdown pressure at the shoe, from the fracture gradient there. */
	readonly fracture_pressure_at_shoe?: Known<"pressure">;
	/** Surface pressure that the shoe test needs. */
	readonly shoe_test_surface_pressure?: Known<"pressure">;
	/** Clearance on each side between coupling (or pipe) and hole. */
	readonly hole_clearance?: Known<"diameter">;
	/** The same inside the string it was run through, by that string's drift; negative where it does not pass. */
	readonly drift_clearance?: Known<"diameter">;
	/** What gas may bring to surface while the hole below is drilled. */
	readonly maximum_surface_pressure?: Known<"pressure">;
	/** Loads against ratings over depth, by situation and kind. */
	readonly loads: readonly LoadCaseResults[];
}

/** What happens to the string; papers word it. */
export type LoadSituation =
	/** Hanging in mud. */
	| "running"
	/** Stuck and pulled, in air. */
	| "overpull"
	/** Cement in place outside, displacement fluid inside, no pressure held. */
	| "cementing"
	/** Gas kick taken in the hole below and shut in. */
	| "gas-kick"
	| "pressure-test"
	/** Treated down the string at the greatest pressure, heaviest slurry, no friction, steel cooled. */
	| "stimulation"
	/** Shut in full of gas from the deepest formation. */
	| "shut-in-gas"
	/** Empty, or down to a fluid level, with mud outside. */
	| "evacuation";

export interface LoadCaseResults {
	/** `kind-situation`. */
	readonly id: string;
	readonly kind: "burst" | "collapse" | "tension" | "triaxial";
	readonly situation: LoadSituation;
	/** Load and the rating it is compared with: psi, or lbf for tension. */
	readonly line: KnownTable<"md" | "tvd" | "load" | "rating">;
	/** Rating over load where that is least, and where; absent where nothing loads the string this way. */
	readonly least_factor?: Known<"ratio">;
	readonly at?: HoleMark;
	/** The design factor that the well's design basis asks for. */
	readonly required: Known<"ratio">;
}

export interface PipeSectionResults {
	readonly number: number;
	readonly top: HoleMark;
	readonly bottom: HoleMark;
	readonly length: Known<"length">;
	readonly internal_yield: Known<"pressure">;
	readonly coupling_internal_yield?: Known<"pressure">;
	readonly collapse: Known<"pressure">;
	readonly body_yield: Known<"force">;
	readonly joint_strength?: Known<"force">;
	/** Unit weight by the section's vertical extent. */
	readonly weight_in_air: Known<"force">;
	readonly capacity: Known<"capacity">;
	readonly plain_end_mass: Known<"linear-weight">;
}

export interface CementResults {
	readonly id: string;
	/** Planned top, or the recorded one. */
	readonly top: HoleMark;
	readonly top_basis: "planned" | "recorded";
	/** How the top is or will be known. */
	readonly top_method: "returns seen" | "calculated" | "temperature survey" | "bond log" | "tagged";
	/** The plan's top, where a recorded one stands in `top`. */
	readonly planned_top?: HoleMark;
	readonly bottom: HoleMark;
	/** Whether the column comes to ground level. */
	readonly to_surface: boolean;
	readonly slurries: readonly SlurryResults[];
	readonly float_collar?: HoleMark;
	readonly shoe_track_volume?: Known<"volume">;
	/** Hole below the shoe, filled with the last slurry. */
	readonly rathole_volume?: Known<"volume">;
	/** Depth datum to float collar. */
	readonly displacement_volume?: Known<"volume">;
	readonly slurry_volume: Known<"volume">;
	readonly sacks: Known<"count">;
	readonly mix_water: Known<"volume">;
	/** Annulus from shoe to the column's top, without excess. */
	readonly annulus_volume: Known<"volume">;
	/** Time that the spacer takes to pass a point, at the displacement rate. */
	readonly spacer_contact_time?: Known<"duration">;
	/** Where the spacer ends above the cement when the plug lands. */
	readonly spacer_top?: HoleMark;
	/** Outside at the shoe with cement in place. */
	readonly annulus_hydrostatic_at_shoe?: Known<"pressure">;
	/** The same as a density. */
	readonly equivalent_density_at_shoe?: Known<"density">;
	/** The same while the last of the displacement is pumped. */
	readonly circulating_density_at_shoe?: Known<"density">;
	/** Inside at the shoe when the plug lands. */
	readonly inside_hydrostatic_at_shoe?: Known<"pressure">;
	/** Outside less inside: what the pump holds when the plug lands. */
	readonly final_lift?: Known<"pressure-difference">;
	/** Weight of the string and what is in it, less the push of the annulus on its end; negative lifts the string. */
	readonly net_hold_down?: Known<"force">;
	/** Pressure outside the string when the plug lands, against depth. */
	readonly annulus_column?: AnnulusColumn;
	/** Where cement in place comes nearest to breaking the rock down. */
	readonly least_fracture_margin?: {
		readonly formation: string;
		readonly at: DepthMark;
		readonly margin: Known<"pressure-difference">;
	};
	readonly pumped_volume?: Known<"volume">;
	readonly pumped_over_calculated?: Known<"ratio">;
}

/** `standing` with everything at rest; a pressure at each change of fluid, from the datum to the shoe. */
export type AnnulusColumn = KnownTable<"tvd" | "standing">;

export interface SlurryResults {
	readonly id: string;
	readonly top: HoleMark;
	readonly bottom: HoleMark;
	/** Volume by what surrounds the pipe: open hole (excess in), cased annulus, shoe track, rathole. */
	readonly open_hole_volume: Known<"volume">;
	readonly cased_volume: Known<"volume">;
	readonly shoe_track_volume?: Known<"volume">;
	readonly rathole_volume?: Known<"volume">;
	readonly volume: Known<"volume">;
	/** Before rounding. */
	readonly sacks_exact: Known<"ratio">;
	/** Rounded up to whole sacks. */
	readonly sacks: Known<"count">;
	readonly mix_water: Known<"volume">;
	/** What yield and water alone say of the density, for comparison; dry additives make the stated one greater. */
	readonly density_from_yield: Known<"density">;
}

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

export interface IsolationResults {
	/** Surface shoe below the base of protected water; negative when above. By the string that protects the water. */
	readonly protecting_string?: string;
	readonly shoe_below_protected_water?: Known<"offset">;
	/** Vertical rock between the base of protected water and the shallowest perforation. */
	readonly protected_water_to_top_perforation?: Known<"offset">;
	/** Strings of steel across the base of protected water. */
	readonly steel_at_protected_water?: Known<"count">;
	/** Cement columns across it, by evidence. */
	readonly cement_at_protected_water?: readonly {
		readonly string: string;
		readonly evidence: "planned" | "calculated" | "logged" | "tested" | "returns seen";
	}[];
	/** Neighbor's water wells: bottom of the well to the shallowest perforation. */
	readonly neighbor_wells: readonly {
		readonly id: string;
		readonly name: string;
		/** As drilled, below its own ground. */
		readonly depth?: Known<"depth-below-ground">;
		readonly bottom?: Known<"true-vertical-depth">;
		readonly above_top_perforation?: Known<"offset">;
	}[];
}

/** Truck loads over the whole job; a load is one truck in and one truck out. */
export interface LogisticsResults {
	readonly water_loads?: Known<"count">;
	readonly proppant_loads?: Known<"count">;
	readonly cement_loads?: Known<"count">;
	readonly pipe_loads?: Known<"count">;
	readonly other_loads?: Known<"count">;
	readonly total_loads?: Known<"count">;
	/** Twice the loads. */
	readonly one_way_trips?: Known<"count">;
}

export interface SafetyResults {
	readonly noise_at_nearest_dwelling?: {
		readonly id: string;
		readonly name: string;
		readonly distance: Known<"distance">;
		readonly level: Known<"sound-level">;
	};
}
