import type { Known, KnownTable } from "../cite/known.ts";
import type { DepthMark, HoleMark } from "./result-marks.ts";

/** The job in steps; volumes [bbl] from the first of the spacer. */
type PlacementTable = KnownTable<
	"pumped" | "time" | "displaced" | "empty" | "rate" | "pump" | "standing" | "circulating" | "net_force"
>;

/** A cement job from the first spacer to the landing of the plug, as planned. */
export interface PlacementResults {
	/** In the order pumped. */
	readonly schedule: readonly PumpedFluid[];
	readonly pumped: Known<"volume">;
	readonly time: Known<"duration">;
	/** Pumped when the first cement comes out of the shoe, or of the stage tool, the pipe full. */
	readonly cement_at_shoe: Known<"volume">;
	readonly steps: PlacementTable;
	/** False where a fluid's flow is not given: pressures are then those at rest. */
	readonly with_friction: boolean;
	readonly fracture?: TightestMargin;
	readonly pore?: TightestMargin;
	/** Absent, like the two below it, where friction could not be worked: at rest they would be too low. */
	readonly greatest_pump_pressure?: Known<"pressure">;
	readonly final_circulating_pressure?: Known<"pressure">;
	readonly bump_pressure?: Known<"pressure">;
	/** The weakest of casing, its coupling and the wellhead, as rated and without a factor. */
	readonly bump_weakest?: Known<"pressure">;
	/** The least of what casing, its test and the wellhead are good for. */
	readonly bump_limit?: {
		readonly element: string;
		readonly allowed: Known<"pressure">;
	};
	readonly free_fall?: {
		readonly from: Known<"volume">;
		readonly most_empty: Known<"volume">;
	};
	/** Least over the job, moving; of a string of one diameter that reaches the hanger. */
	readonly least_net_force?: {
		readonly force: Known<"force">;
		readonly at_pumped: Known<"volume">;
	};
	/** Water zones that the string passes: how long spacer and cement flow past their base. */
	readonly contact: readonly {
		readonly id: string;
		readonly name: string;
		readonly at: HoleMark;
		readonly spacer?: Known<"duration">;
		readonly cement: Known<"duration">;
	}[];
	/** Cement that comes back if the hole takes none of the excess; of a column to the surface. */
	readonly returns_at_measure?: Known<"volume">;
}

export interface PumpedFluid {
	/** `spacer`, a slurry's id, `displacement`, `last displacement`. */
	readonly id: string;
	readonly volume: Known<"volume">;
	/** From the beginning of the job to the end of this fluid. */
	readonly cumulative: Known<"volume">;
	readonly density: Known<"density">;
	readonly rate: Known<"flow-rate">;
	readonly time: Known<"duration">;
	readonly elapsed: Known<"duration">;
}

export interface TightestMargin {
	readonly steps: KnownTable<"pumped" | "tvd" | "pressure" | "rock" | "margin">;
	readonly margin: Known<"pressure-difference">;
	/** The least over depth and time as a density of the column above it; not always at the place of `margin`. */
	readonly least_as_density: Known<"density">;
	readonly at: DepthMark;
	/** Name of the formation, or `shoe test` where that and not the rock bears the least there. */
	readonly formation: string;
	readonly at_pumped: Known<"volume">;
	/** The fluid that is being pumped then. */
	readonly during: string;
	/** Where the margin is lost: from which volume pumped on, and the fluid that then passes the place. */
	readonly lost?: { readonly from: Known<"volume">; readonly passing: string };
}

/** A second stage, pumped through the stage tool. */
export interface SecondStageResults {
	readonly tool: HoleMark;
	/** Depth datum to the tool. */
	readonly displacement_volume: Known<"volume">;
	readonly displacement_strokes?: Known<"count">;
	/** Outside at the tool with the second stage in place. */
	readonly annulus_hydrostatic_at_tool?: Known<"pressure">;
	/** Inside at the tool when the closing plug lands. */
	readonly inside_hydrostatic_at_tool?: Known<"pressure">;
	/** Outside less inside: what the pump holds when the closing plug lands. */
	readonly final_lift?: Known<"pressure-difference">;
	readonly placement?: PlacementResults;
}

/** How strong the slurry at the shoe is, and when. Times from the landing of the plug. */
export interface SettingResults {
	readonly slurry: string;
	/** Strength that drilling out waits for. */
	readonly strength_wanted: Known<"pressure">;
	readonly strength_reached?: Known<"duration">;
	/** When drill-out is planned, and the strength then. */
	readonly drill_out_planned?: Known<"duration">;
	readonly strength_at_drill_out?: Known<"pressure">;
	/** The later of the wait and the strength: drilling out and testing from. */
	readonly free_from?: Known<"duration">;
	/** Undisturbed rock at the shoe, beside the temperatures of the tests. */
	readonly temperature_at_shoe?: Known<"temperature">;
	/** Of each slurry with a thickening time: mixing to landing, and what is left. */
	readonly thickening: readonly {
		readonly id: string;
		readonly in_use: Known<"duration">;
		readonly thickening_time: Known<"duration">;
	}[];
}

export interface StandoffResults {
	/** `shoe`, or the water zone's name. */
	readonly at_name: string;
	readonly at: HoleMark;
	readonly spacing: Known<"length">;
	readonly side_load: Known<"force">;
	readonly at_centralizer: Known<"share">;
	readonly between: Known<"share">;
}

/** A depth of the standoff profile; without a standoff where no centralizer is near. */
export interface ProfileStation {
	readonly at: HoleMark;
	readonly inclination: Known<"angle">;
	readonly side_load?: Known<"force">;
	readonly at_centralizer?: Known<"share">;
	readonly between?: Known<"share">;
}

/** How one fluid displaces the one ahead of it at a place. */
export interface MudRemoval {
	/** `shoe`, or the water zone's name. */
	readonly at_name: string;
	readonly at: HoleMark;
	/** `mud`, `spacer`, or a slurry's id. */
	readonly ahead: string;
	readonly behind: string;
	/** The lower of those at and between centralizers. */
	readonly standoff: Known<"share">;
	readonly density_step: Known<"share">;
	readonly friction_step: Known<"share">;
	/** Over what it takes to move the fluid ahead on the narrow side. */
	readonly drive: Known<"ratio">;
	readonly rate: Known<"flow-rate">;
	/** The fluid behind flows turbulent from this rate. */
	readonly turbulent_from: Known<"flow-rate">;
	/** Criteria missed, 0 to 4. */
	readonly index: Known<"count">;
}

export interface CentralizerCount {
	readonly kind: "bow spring" | "rigid";
	readonly top: Known<"measured-depth">;
	readonly bottom: Known<"measured-depth">;
	readonly count: Known<"count">;
}

export interface FurtherJobResults {
	readonly kind: "top-up" | "squeeze";
	readonly top: HoleMark;
	readonly bottom: HoleMark;
	readonly volume: Known<"volume">;
	readonly sacks: Known<"count">;
	readonly mix_water?: Known<"volume">;
	readonly when?: string;
}
