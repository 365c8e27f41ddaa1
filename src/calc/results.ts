import type { Known, KnownTable } from "../cite/known.ts";
import type { Said } from "../messages/message.ts";
import type { DepthMark, HoleMark } from "./result-marks.ts";
import type { BarrierResults } from "./results-of-barriers.ts";
import type { CementResults } from "./results-of-cement.ts";
import type { IsolationResults, PressureResults, SiteResults } from "./results-of-isolation.ts";
import type { LogisticsResults, SafetyResults } from "./results-of-logistics.ts";
import type { StimulationResults } from "./results-of-stimulation.ts";

export type * from "./result-marks.ts";
export type * from "./results-of-barriers.ts";
export type * from "./results-of-cement.ts";
export type * from "./results-of-isolation.ts";
export type * from "./results-of-logistics.ts";
export type * from "./results-of-placement.ts";
export type * from "./results-of-stimulation.ts";

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
	/** Where a drill string is given. */
	readonly drill_string?: DrillStringResults;
	readonly cement: Readonly<Record<string, CementResults>>;
	readonly stimulation?: StimulationResults;
	readonly pressure: PressureResults;
	readonly isolation: IsolationResults;
	readonly barriers: BarrierResults;
	readonly site: SiteResults;
	readonly logistics?: LogisticsResults;
	readonly safety?: SafetyResults;
	readonly undetermined: readonly Undetermined[];
}

/** A result that could not be had, and what is missing for it. */
export interface Undetermined {
	readonly key: string;
	/** One sentence. */
	readonly because: Said;
	/** Definition paths that would mend it. */
	readonly needs: readonly (readonly (string | number)[])[];
	/** What stands at each of them, a noun phrase with its article, where a check asks for it by name. */
	readonly wanting?: readonly Said[];
}

type PathColumn =
	| "md"
	| "inclination"
	| "azimuth"
	| "tvd"
	| "north"
	| "east"
	| "vertical_section"
	| "dogleg"
	| "build"
	| "turn";
export type WellPath = KnownTable<PathColumn>;

export interface TrajectoryResults {
	/** `planned` or `surveyed`; calculations use this path. */
	readonly basis: "planned" | "surveyed";
	readonly path: WellPath;
	/** The plan's path where `path` is surveyed. */
	readonly planned?: WellPath;
	readonly vertical_section_azimuth: Known<"angle">;
	readonly total_depth: HoleMark;
	/** The last station, where the hole goes on past it; below here the path is straight at its last direction. */
	readonly last_station?: HoleMark;
	readonly kickoff?: HoleMark;
	readonly landing?: HoleMark;
	/** From kickoff to landing. */
	readonly curve?: CurveResults;
	/** Measured length from landing to total depth. */
	readonly lateral_length?: Known<"length">;
	readonly maximum_dogleg: Known<"dogleg">;
	readonly maximum_inclination: Known<"angle">;
	/** Horizontal distance and direction from wellhead to total depth. */
	readonly closure: Known<"length">;
	readonly closure_azimuth: Known<"angle">;
	/** Of a survey: between stations of the build and the lateral; absent of a hole without either. */
	readonly longest_interval?: Known<"length">;
	/** By the error model of the survey tool, where one is stated. */
	readonly survey_error?: SurveyErrorResults;
	/** How far from its stated place the hole may be, as stated. */
	readonly uncertainty_radius?: Known<"distance">;
}

export interface SurveyErrorResults {
	/** North, east and down, axes along true north; a standard deviation squared. */
	readonly covariance: KnownTable<"md" | "nn" | "ee" | "vv" | "ne" | "nv" | "ev">;
	/** What takes azimuths of the path to true north. */
	readonly turn: Known<"angle">;
	/** Of the ellipse at the end of the hole. */
	readonly confidence: Known<"share">;
	readonly semi_major: Known<"distance">;
	readonly semi_minor: Known<"distance">;
	/** From true north. */
	readonly major_azimuth: Known<"angle">;
	/** At the end of the hole, one standard deviation. */
	readonly vertical_sigma: Known<"distance">;
	/** The radius that the definition states. */
	readonly stated?: Known<"distance">;
}

export interface CurveResults {
	readonly length: Known<"length">;
	readonly depth_gained: Known<"offset">;
	/** Horizontally. */
	readonly departure: Known<"length">;
	/** Mean over the curve. */
	readonly radius?: Known<"length">;
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

/** The string that drills each hole, at its bottom. */
export interface DrillStringResults {
	readonly joint_mass?: Known<"mass">;
	readonly holes: readonly {
		readonly id: string;
		readonly pipe_length: Known<"length">;
		readonly joints?: Known<"count">;
		readonly pipe_mass: Known<"mass">;
		/** With the collars, where they are weighed. */
		readonly mass?: Known<"mass">;
	}[];
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
	/** The same with the wear that the design reckons with; absent where it reckons with none. */
	readonly worn_internal_yield?: Known<"pressure">;
	readonly least_collapse: Known<"pressure">;
	/** The least over the sections of pipe and connection; absent where a connection's strength is not known. */
	readonly least_tension?: Known<"force">;
	/** On the hook: the least tension rating with its design factor kept, or less where less is stated. */
	readonly maximum_pull?: Known<"force">;
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
	/** Pressures inside and outside by situation. */
	readonly situations: readonly SituationResults[];
	/** What the hook carries over the depth of the shoe, hung free and pulled. */
	readonly hook_loads?: KnownTable<"md" | "free" | "pulled_least" | "pulled_greatest">;
	/** At bottom. */
	readonly hook_load?: HookLoadResults;
	/** Let down with the drag of coiled pipe counted: how deep the shoe gets, and what the hook carries on the way. */
	readonly slack_off?: {
		readonly least_friction: SlackOffResults;
		readonly greatest_friction: SlackOffResults;
	};
	/** Let down with the greatest friction, as deep as it gets: where the push in the string is greatest against what would coil it. */
	readonly slack_off_compression?: {
		readonly line: KnownTable<"md" | "tvd" | "compression" | "sinusoidal" | "helical">;
		readonly over_helical: Known<"ratio">;
		readonly at: HoleMark;
		readonly compression: Known<"force">;
		readonly helical: Known<"force">;
	};
	/** Loads against ratings over depth, by situation and kind. */
	readonly loads: readonly LoadCaseResults[];
}

/** A string pushed by its own weight alone. */
interface SlackOffResults {
	/** Down to where it stops. */
	readonly line: KnownTable<"md" | "hook_load">;
	/** The shoe as planned, or where it stops before. */
	readonly reach: HoleMark;
	/** There. */
	readonly hook_load: Known<"force">;
}

/** With the shoe at bottom; the traveling block not counted. */
export interface HookLoadResults {
	readonly free: Known<"force">;
	/** Let down; absent where the string does not slide to bottom by its own weight. */
	readonly run_in_least_friction?: Known<"force">;
	readonly run_in_greatest_friction?: Known<"force">;
	readonly pulled_least_friction: Known<"force">;
	readonly pulled_greatest_friction: Known<"force">;
}

/** A section's steel and connection against hydrogen sulfide. */
export interface SourServiceResults {
	readonly finding:
		| "not sour"
		| "within the limits"
		| "outside the limits"
		| "stated fit"
		| "stated unfit"
		| "cannot tell";
	/** What is wanting where it cannot be told. */
	readonly missing?:
		| "hydrogen sulfide"
		| "fraction"
		| "pore pressure"
		| "temperature"
		| "grade"
		| "connection"
		| "welds";
	readonly partial_pressure?: Known<"pressure">;
	readonly threshold?: Known<"pressure">;
	/** At rest, at the section's top. */
	readonly coldest?: Known<"temperature">;
	/** Above which the standard takes the grade; absent where it takes it at any. */
	readonly lowest_temperature?: Known<"temperature">;
}

/** What happens to the string; papers word it. In the order that a string meets it. */
export type LoadSituation =
	/** Let down, dragging on the wall, and pulled back. */
	| "running"
	/** Pulled back while it is bent in the curve. */
	| "bending"
	/** Stopped dead while it is let down. */
	| "shock"
	/** Stuck and pulled, in air. */
	| "overpull"
	/** Cement in place outside, displacement fluid inside, no pressure held. */
	| "cementing"
	/** Pressure held on the landed plug, cement still wet outside. */
	| "bumped-plug"
	| "pressure-test"
	/** Gas kick taken in the hole below and shut in. */
	| "gas-kick"
	/** Empty, or down to a fluid level, with mud outside. */
	| "evacuation"
	/** Treated down the string at the greatest pressure, heaviest slurry, no friction, steel cooled. */
	| "stimulation"
	/** Shut in full of gas from the deepest formation. */
	| "shut-in-gas"
	/** Tubing pressure leaks onto the packer fluid near the surface. */
	| "tubing-leak"
	/** The rock drawn down below the packer, packer fluid above it. */
	| "drawdown"
	/** The same, steel at the producing temperature. */
	| "producing-hot"
	/** Shut in full of gas before it has cooled. */
	| "shut-in-hot"
	/** Tubing leaks near the surface before the string has cooled. */
	| "tubing-leak-hot"
	/** Salt presses with its overburden on empty pipe. */
	| "mobile-salt";

/** Part of the job that a situation belongs to. */
export type LoadPhase = "running" | "cementing" | "testing" | "drilling below" | "stimulation" | "production";

export type LoadKind = "burst" | "collapse" | "tension" | "triaxial";

/** Pressures that stand inside and outside when something happens. */
export interface SituationResults {
	readonly id: LoadSituation;
	readonly phase: LoadPhase;
	/** The side that the greater pressure is on. */
	readonly kind: "burst" | "collapse";
	/** At surface, inside. */
	readonly surface_pressure?: Known<"pressure">;
	readonly inside: KnownTable<"tvd" | "pressure">;
	readonly outside: KnownTable<"tvd" | "pressure">;
	/** Hot cases: effective axial force where the cement begins; below zero the free pipe is pressed together. */
	readonly effective_force?: Known<"force">;
	readonly effective_force_at?: HoleMark;
}

export interface LoadCaseResults {
	/** `kind-situation`. */
	readonly id: string;
	readonly kind: LoadKind;
	readonly situation: LoadSituation;
	readonly phase: LoadPhase;
	/**
	 * Load and the rating it is compared with: psi, or lbf for tension. Burst and tension have the ratings of `pipe` and
	 * `connection` apart in two more columns.
	 */
	readonly line: KnownTable<"md" | "tvd" | "load" | "rating">;
	/** Rating over load where that is least, and where; absent where nothing loads the string this way. */
	readonly least_factor?: Known<"ratio">;
	readonly at?: HoleMark;
	/** There. */
	readonly load?: Known<"pressure" | "pressure-difference" | "force">;
	readonly rating?: Known<"pressure" | "force">;
	/** What is weakest there: `pipe` or `connection`, the regime of collapse, the wall of the greatest stress. */
	readonly governed_by?: string;
	readonly pipe_factor?: Known<"ratio">;
	readonly connection_factor?: Known<"ratio">;
	/** Of collapse, the least factor by the method from 2015 on, beside the historical one. */
	readonly combined_factor?: Known<"ratio">;
	/** The design factor asked for. */
	readonly required: Known<"ratio">;
	/** Whether the least factor is at least the one required. */
	readonly reached?: boolean;
}

export interface PipeSectionResults {
	readonly number: number;
	readonly top: HoleMark;
	readonly bottom: HoleMark;
	readonly length: Known<"length">;
	readonly internal_yield: Known<"pressure">;
	readonly coupling_internal_yield?: Known<"pressure">;
	/** Where the wall of the pipe body tears. */
	readonly ductile_rupture?: Known<"pressure">;
	readonly collapse: Known<"pressure">;
	readonly body_yield: Known<"force">;
	readonly joint_strength?: Known<"force">;
	/** The lesser of pipe body and connection, where both are known. */
	readonly tension?: Known<"force">;
	/** Unit weight by the section's vertical extent. */
	readonly weight_in_air: Known<"force">;
	readonly capacity: Known<"capacity">;
	readonly plain_end_mass: Known<"linear-weight">;
	readonly sour_service: SourServiceResults;
}
