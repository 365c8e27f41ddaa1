import type { Known, KnownTable } from "../cite/known.ts";
import type { HoleMark } from "./result-marks.ts";

export interface IsolationResults {
	/** Surface shoe below the base of protected water; negative when above. By the string that protects the water. */
	readonly protecting_string?: string;
	readonly shoe_below_protected_water?: Known<"offset">;
	/** Vertical rock between the base of protected water and the shallowest perforation. */
	readonly protected_water_to_top_perforation?: Known<"offset">;
	/** The same rock less what a simple model lets the fracture open: illustrative. */
	readonly protected_water_to_illustrative_fracture?: Known<"offset">;
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
		/** With the neighbor's ground taken at the elevation of this well's. */
		readonly bottom?: Known<"true-vertical-depth">;
		readonly above_top_perforation?: Known<"offset">;
	}[];
	/** Offset wells whose vertical depth is given. */
	readonly offset_wells: readonly {
		readonly id: string;
		readonly name: string;
		readonly bottom?: Known<"true-vertical-depth">;
		readonly above_top_perforation?: Known<"offset">;
	}[];
}

export interface PressureResults {
	readonly holes: readonly HolePressureResults[];
	/** Pore and fracture pressure at the top and base of each formation that has both. */
	readonly window: KnownTable<"tvd" | "pore" | "fracture">;
}

/** A hole while it is drilled. */
export interface HolePressureResults {
	readonly id: string;
	readonly bottom: HoleMark;
	readonly mud_hydrostatic_at_bottom?: Known<"pressure">;
	/** Of the undisturbed rock. */
	readonly bottom_temperature?: Known<"temperature">;
	/** The string that is drilled out of. */
	readonly shoe?: string;
	readonly shoe_strength?: Known<"density">;
	readonly shoe_strength_basis?: "tested" | "planned test" | "fracture gradient";
	/** MAASP with this hole's mud. */
	readonly maximum_annulus_pressure?: Known<"pressure">;
	/** Without any influx volume. */
	readonly kick_tolerance_factor?: Known<"density">;
	/** Single bubble. */
	readonly kick_height?: Known<"length">;
	readonly kick_tolerance?: Known<"volume">;
}

/** Horizontal distances from coordinates; a surveyed distance stands before them. */
export interface SiteResults {
	readonly neighbors: readonly PlaceResults[];
	readonly offset_wells: readonly PlaceResults[];
}

export interface PlaceResults {
	readonly id: string;
	readonly name: string;
	readonly from_wellhead?: Known<"distance">;
	/** From the wellhead, from true north. */
	readonly direction?: Known<"angle">;
	/** From the wellhead, in the north that the path's azimuths are counted from. */
	readonly north?: Known<"offset">;
	readonly east?: Known<"offset">;
	/** Least horizontal distance to the well path, and where on it. */
	readonly from_path?: Known<"distance">;
	readonly nearest?: HoleMark;
}
