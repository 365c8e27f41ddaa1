import type { Known, KnownTable } from "../cite/known.ts";
import type { DepthMark, HoleMark } from "./result-marks.ts";

export interface IsolationResults {
	/**
	 * The string that protects the water: the surface string, if its shoe lies below the base of protected water and its
	 * cement spans it, and no other in its stead; of a well without one, the outermost that does both.
	 */
	readonly protecting_string?: string;
	/** Its shoe below the base of protected water. */
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
	/** Bond logs on record, the outermost string first. */
	readonly bond_logs: readonly BondLogResults[];
	/** Zones of protected water and its base that no sheath is shown to seal by more than plan or volume. */
	readonly unsealed_water?: Known<"count">;
	/** Where plugs are planned. */
	readonly end_of_life?: EndOfLifeResults;
	/** Annuli whose pressure was read. */
	readonly annulus_readings: readonly AnnulusSeal[];
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
	/** Rock from its base to the shallowest opening of the pipe; absent where none is planned. */
	readonly above_perforations?: Known<"offset">;
	/** Cement of each string that touches it with what shows its seal, the outermost first. */
	readonly seals: readonly ZoneSeal[];
	/** Ids of gaps in which the zone's rock stands open to an annulus. */
	readonly gaps: readonly string[];
}

/**
 * How well a seal is known: *planned*; *placed* by what was pumped; *inferred* from returns, a survey or a top that was
 * found; *measured* by a bond log across the zone; *tested* with pressure.
 */
type SealState = "planned" | "placed" | "inferred" | "measured" | "tested";

/** The cement of one string across a zone, and what shows that it seals. */
export interface ZoneSeal {
	readonly string: string;
	/** From top to base. */
	readonly covers: boolean;
	readonly state: SealState;
	/** What shows it: `returns seen`, `bond log`, `tracer`, `annulus`, `squeeze` … */
	readonly by?: string;
	readonly date?: string;
	readonly stated_by?: string;
	/** Of a test. */
	readonly pressure?: Known<"pressure">;
	/** Cement seen at surface. */
	readonly returns?: Known<"volume">;
	/** Of a bond log: how much of the zone it covers, and how much of that is bonded. */
	readonly logged?: Known<"length">;
	readonly bonded?: Known<"length">;
	readonly bond?: "throughout" | "in part" | "nowhere";
	/** Equivalent density of the test that the shoe below the zone held. */
	readonly shoe_test?: Known<"density">;
}

export interface BondLogResults {
	readonly string: string;
	readonly date: string;
	readonly run_by?: string;
	readonly stated_by?: string;
	/** The amplitude at which a stretch begins to count as bonded. */
	readonly bonded_amplitude?: Known<"sonic-amplitude">;
	readonly intervals: readonly {
		readonly top: HoleMark;
		readonly bottom: HoleMark;
		readonly amplitude?: Known<"sonic-amplitude">;
		/** As stated, else worked from the amplitudes. */
		readonly index?: Known<"share">;
		readonly quality?: "good" | "fair" | "poor" | "none";
		readonly bonded: boolean;
	}[];
	/** Longest continuous bonded stretch where the string lies against rock. */
	readonly longest_bonded: Known<"length">;
	readonly against_rock_from: HoleMark;
}

/** The plan of abandonment. */
export interface EndOfLifeResults {
	readonly plugs: readonly {
		readonly what: string;
		readonly top: HoleMark;
		readonly bottom: HoleMark;
		readonly volume: Known<"volume">;
		readonly sacks?: Known<"count">;
	}[];
	/** Each zone that has to be closed, with how many plugs close it. */
	readonly closed: readonly {
		readonly zone: string;
		readonly name: string;
		readonly kind: ZoneIsolation["kind"];
		readonly plugs: Known<"count">;
	}[];
	readonly open_zones: Known<"count">;
}

export interface AnnulusSeal {
	/** The string inside. */
	readonly string: string;
	/** The string outside, where there is one. */
	readonly outer?: string;
	readonly readings: number;
	/** Most that was found before a bleed. */
	readonly highest?: Known<"pressure">;
	/** Most that came back after a bleed. */
	readonly rebuilt?: Known<"pressure">;
	/** Whether pressure was found of which nobody saw whether it comes back. */
	readonly unwatched: boolean;
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
	/** The same from the ground of this well. */
	readonly bottom_below_ground?: Known<"depth-below-ground">;
	readonly above_top_perforation?: Known<"offset">;
	/** Nearest approach of the two holes, center to center, and where in each; no uncertainty is deducted. */
	readonly in_space?: Known<"distance">;
	readonly nearest_in_space?: HoleMark;
	readonly nearest_in_other?: Known<"measured-depth">;
	/** Nearest approach to the treated interval, in space and as seen on the map. */
	readonly treated_in_space?: Known<"distance">;
	readonly treated_in_plan?: Known<"distance">;
	/** The factor from each place of this hole, as a ladder plot shows it. */
	readonly separation?: KnownTable<"md" | "other_md" | "distance" | "standard_deviation" | "factor">;
	/** The least of them, where on this hole it is, and how far apart the holes are there. */
	readonly separation_factor?: Known<"ratio">;
	readonly separation_at?: HoleMark;
	readonly separation_distance?: Known<"distance">;
	/** Longest half-length of the fracture models and the uncertainties of both places. */
	readonly fracture_reach?: Known<"distance">;
	/** How far its bottom lies above the highest top of the fracture models; negative where it goes as deep. */
	readonly above_fractures?: Known<"offset">;
	/** Of a hole that goes as deep: the least horizontal distance from the treated interval to that part of it. */
	readonly treated_in_plan_at_depth?: Known<"distance">;
	/** Whether its stated barriers cover the height of the fractures. */
	readonly shut_off_beside_fractures?: boolean;
	/** Of a hole that goes as deep: what is left between reach and hole, horizontally; negative where they may meet. */
	readonly clear_of_fractures?: Known<"offset">;
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
	/** The formation open to it that the mud has most to hold back, its pressure as a density from the datum. */
	readonly highest_pore?: {
		readonly formation: string;
		readonly at: DepthMark;
		readonly density: Known<"density">;
	};
	/** Mud less that; below zero the rock may flow. */
	readonly mud_over_pore?: Known<"density">;
	/** The weakest place open to it, its shoe or a formation below, less the mud at rest. */
	readonly weakest_over_mud?: {
		/** Id of the string at the shoe, or the formation's name. */
		readonly place: string;
		readonly density: Known<"density">;
		readonly margin: Known<"density">;
	};
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
	/** What it is held against, over pore pressure: of the hole where it has one of its own, else of the well. */
	readonly kick_intensity?: Known<"density">;
	/** The kick's pressure over the mud in the hole. */
	readonly kick_over_mud?: Known<"density">;
	/** A formation below the shoe, where it and not the shoe limits the kick. */
	readonly kick_limited_by?: string;
	readonly design_kick?: Known<"volume">;
	/** Tolerance less the design kick; negative where the shoe does not hold it. */
	readonly kick_margin?: Known<"volume">;
	/** What pumps and moving pipe add to the mud or take from it; absent where neither rate nor speed is stated. */
	readonly hydraulics?: HydraulicsResults;
	/** The most that gas of this hole may bring to surface; nothing to do with pressures while treating. */
	readonly anticipated_surface_pressure?: Known<"pressure">;
	/** Of the preventers on the string that is drilled out of. */
	readonly preventer_rating?: Known<"pressure">;
	readonly preventer_margin?: Known<"pressure-difference">;
}

/** A place of the open hole against a moving column, as equivalent densities. */
export interface OpenHoleMargin {
	/** Id of the string at the shoe, or the formation's name. */
	readonly place: string;
	/** Of the moving column there. */
	readonly density: Known<"density">;
	/** What the rock bears, or its pore pressure. */
	readonly against: Known<"density">;
	/** Below zero the rock is broken, or may flow. */
	readonly margin: Known<"density">;
}

type AnnulusColumn = KnownTable<"md" | "tvd" | "pressure" | "density">;

export interface HydraulicsResults {
	readonly model: "Herschel–Bulkley" | "Bingham";
	readonly yield_stress?: Known<"yield-point">;
	readonly flow_index?: Known<"ratio">;
	/** lbf·sⁿ/100 ft². */
	readonly consistency?: Known<"ratio">;
	readonly rate?: Known<"flow-rate">;
	/** With the bit at the bottom of the hole. */
	readonly circulating?: AnnulusColumn;
	readonly annulus_loss?: Known<"pressure">;
	readonly ecd_at_bottom?: Known<"density">;
	readonly ecd_at_shoe?: Known<"density">;
	readonly weakest_over_ecd?: OpenHoleMargin;
	readonly string_loss?: Known<"pressure">;
	readonly bit_loss?: Known<"pressure">;
	/** Annulus, string, bit and the tools stated; surface lines not counted. */
	readonly pump_pressure?: Known<"pressure">;
	readonly moving: readonly SurgeResults[];
}

/** Closed pipe run into a hole, or pulled out of it, at its bottom. */
export interface SurgeResults {
	/** `drill string`, or a string's id. */
	readonly by: string;
	readonly speed: Known<"fluid-velocity">;
	readonly surge: AnnulusColumn;
	readonly surge_at_bottom: Known<"density">;
	readonly weakest_over_surge?: OpenHoleMargin;
	readonly swab?: AnnulusColumn;
	readonly swab_at_bottom?: Known<"density">;
	readonly swab_over_pore?: OpenHoleMargin;
}

/** Horizontal distances from coordinates; a surveyed distance stands before them. */
export interface SiteResults {
	readonly neighbors: readonly PlaceResults[];
	readonly offset_wells: readonly OffsetPlaceResults[];
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
	readonly nearest?: HoleMark;
	/** Of a line on the ground: its corners from the wellhead, in the north of the path. */
	readonly line?: KnownTable<"north" | "east">;
}

export interface OffsetPlaceResults extends PlaceResults {
	/** Its hole from this wellhead and this well's datum, where the definition says where it goes. */
	readonly path?: KnownTable;
	readonly path_given_by?: "vertical" | "bottom hole" | "surveyed";
}
