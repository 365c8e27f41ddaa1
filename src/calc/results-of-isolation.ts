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
		readonly evidence: CementEvidence;
	}[];
	/** What is crossed from the inside of the well to the rock, from the surface to total depth. */
	readonly layers: readonly LayerInterval[];
	/** Each water zone, flow zone and target, with what stands across it in each part of the well's life. */
	readonly zones: readonly ZoneIsolation[];
	/** Stretches of annulus without cement. */
	readonly gaps: readonly AnnulusGap[];
	/** Of each string, from the base of protected water; negative when above it. */
	readonly strings: readonly {
		readonly id: string;
		readonly shoe_below_protected_water?: Known<"offset">;
		/** Negative when the cement ends below the water. */
		readonly cement_top_above_protected_water?: Known<"offset">;
	}[];
	/** Formations stated to confine, between the base of protected water and the shallowest perforation. */
	readonly confining: readonly {
		readonly id: string;
		readonly name: string;
		readonly lithology: string;
		readonly top: Known<"true-vertical-depth">;
		readonly base: Known<"true-vertical-depth">;
		/** As far as it lies between the two. */
		readonly thickness: Known<"offset">;
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
	/** Other wells nearby, with how near their bore may come to this one's. */
	readonly offset_wells: readonly OffsetWellResults[];
}

/** What a cement column rests on: a planned one is never counted as verified. */
export type CementEvidence = "planned" | "calculated" | "logged" | "tested" | "returns seen";
/** What a string of steel rests on: planned, run by the record, or tested with pressure. */
export type SteelEvidence = "planned" | "run" | "tested";

/** One thing between the inside of the well and the rock. */
export type IsolationLayer =
	| {
			readonly kind: "steel";
			readonly string: string;
			readonly evidence: SteelEvidence;
	  }
	| {
			readonly kind: "cement";
			readonly string: string;
			readonly evidence: CementEvidence;
	  }
	/** An annulus that holds fluid, outside the string named. */
	| { readonly kind: "open annulus"; readonly string: string };

/** A stretch of hole along which the layers are the same. */
export interface LayerInterval {
	/** 1 is the uppermost. */
	readonly number: number;
	readonly top: HoleMark;
	readonly bottom: HoleMark;
	/** From the inside outward; none in open hole. */
	readonly layers: readonly IsolationLayer[];
}

export interface ZoneIsolation {
	readonly id: string;
	readonly name: string;
	readonly kind: "water" | "base of protected water" | "flow zone" | "target";
	readonly top: Known<"true-vertical-depth">;
	/** As far as the well reaches; the top itself where the base is not given. */
	readonly base: Known<"true-vertical-depth">;
	readonly phases: readonly ZonePhase[];
	/** Ids of gaps in which the zone's rock stands open to an annulus. */
	readonly gaps: readonly string[];
}

/** Layers that span a zone from top to base in one part of the well's life; a part that does not span it is not counted. */
export interface ZonePhase {
	/** `drilling-surface`, `stimulating`, `producing`. */
	readonly id: string;
	readonly phase: "drilling" | "stimulating" | "producing";
	/** Of drilling: the hole. */
	readonly hole?: string;
	readonly steel: Known<"count">;
	readonly cement: Known<"count">;
	/** Of the steel, tested by the record; of the cement, seen by it. */
	readonly verified_steel: Known<"count">;
	readonly verified_cement: Known<"count">;
	/** What the zone is open to. */
	readonly open?: "hole" | "perforations";
	/** Of a flow zone open to the hole: whether the drilling fluid weighs at least what its pore pressure does. */
	readonly fluid?: "holds" | "does not hold" | "not known";
}

/** A stretch of a string's annulus without cement. */
export interface AnnulusGap {
	/** `production-1`. */
	readonly id: string;
	/** The string inside. */
	readonly string: string;
	readonly top: HoleMark;
	readonly bottom: HoleMark;
	/** What is outside: the rock, or the id of a string. */
	readonly against: string;
	/** Zones whose rock stands open in it; where there are two, they are joined by it. */
	readonly zones: readonly string[];
}

export interface OffsetWellResults {
	readonly id: string;
	readonly name: string;
	/** Where its vertical depth is given. */
	readonly bottom?: Known<"true-vertical-depth">;
	readonly above_top_perforation?: Known<"offset">;
	/** Least distance in space from its bore, taken vertical, to the treated interval. */
	readonly treated_in_space?: Known<"distance">;
	/** Least distance in space from its bore, taken vertical, to this well's path, and where on it. */
	readonly in_space?: Known<"distance">;
	readonly nearest_in_space?: HoleMark;
	/** The same less the uncertainties stated, of its place and of this well's survey. */
	readonly in_space_at_least?: Known<"distance">;
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
	/** What it is held against: of the hole where it has one of its own, else of the well. */
	readonly kick_intensity?: Known<"density">;
	readonly design_kick?: Known<"volume">;
	/** Tolerance less the design kick; negative where the shoe does not hold it. */
	readonly kick_margin?: Known<"volume">;
	/** The most that gas of this hole may bring to surface; nothing to do with pressures while treating. */
	readonly anticipated_surface_pressure?: Known<"pressure">;
	/** Of the preventers on the string that is drilled out of. */
	readonly preventer_rating?: Known<"pressure">;
	readonly preventer_margin?: Known<"pressure-difference">;
}

/** Horizontal distances from coordinates; a surveyed distance stands before them. */
export interface SiteResults {
	readonly neighbors: readonly PlaceResults[];
	readonly offset_wells: readonly PlaceResults[];
	/** Every station of the path, in the surface location's datum. */
	readonly stations?: KnownTable<"md" | "latitude" | "longitude">;
	readonly landing?: PlaceOnMap;
	readonly total_depth?: PlaceOnMap;
}

export interface PlaceOnMap {
	readonly latitude: Known<"angle">;
	readonly longitude: Known<"angle">;
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
	/** The same less the survey's stated uncertainty. */
	readonly from_path_least?: Known<"distance">;
	readonly nearest?: HoleMark;
}
