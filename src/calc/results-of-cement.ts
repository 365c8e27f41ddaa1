import type { Known, KnownTable } from "../cite/known.ts";
import type { DepthMark, HoleMark } from "./result-marks.ts";
import type {
	CentralizerCount,
	FurtherJobResults,
	MudRemoval,
	PlacementResults,
	ProfileStation,
	SecondStageResults,
	SettingResults,
	StandoffResults,
} from "./results-of-placement.ts";

export interface CementResults {
	readonly id: string;
	/** Planned top, or the recorded one, or the one that the recorded volumes come to. */
	readonly top: HoleMark;
	readonly top_basis: TopBasis;
	/** How the top is or will be known. */
	readonly top_method: "returns seen" | "calculated" | "temperature survey" | "bond log" | "tagged";
	/** The plan's top, where another one stands in `top`. */
	readonly planned_top?: HoleMark;
	readonly bottom: HoleMark;
	/** Stretches filled without a gap, from the surface down: one, or two where a first stage ends below its stage tool. */
	readonly columns: readonly { readonly top: HoleMark; readonly bottom: HoleMark }[];
	/** Whether one column comes to ground level. */
	readonly to_surface: boolean;
	readonly slurries: readonly SlurryResults[];
	readonly float_collar?: HoleMark;
	readonly shoe_track_volume?: Known<"volume">;
	/** Hole below the shoe, filled with the last slurry. */
	readonly rathole_volume?: Known<"volume">;
	/** Depth datum to float collar. */
	readonly displacement_volume?: Known<"volume">;
	/** The same in strokes of the pump, where its output is given. */
	readonly displacement_strokes?: Known<"count">;
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
		/** Name of the formation, or `shoe test`. */
		readonly formation: string;
		readonly at: DepthMark;
		readonly margin: Known<"pressure-difference">;
		readonly as_density: Known<"density">;
	};
	/** Zones marked as gas-bearing that the cement of this string covers, when the plug lands. */
	readonly gas_flow: readonly {
		readonly formation: string;
		readonly at: DepthMark;
		/** What the gelling column may lose. */
		readonly restriction: Known<"pressure">;
		readonly overbalance: Known<"pressure-difference">;
		readonly potential: Known<"ratio">;
		/** At which overbalance is gone. */
		readonly critical_gel: Known<"yield-point">;
		/** Overbalance that is left as the column gels. */
		readonly decay: readonly {
			readonly gel: Known<"yield-point">;
			readonly left: Known<"pressure-difference">;
		}[];
	}[];
	/** Undisturbed rock at the foot of each slurry, and how far the nearest strength test was from what lies along the slurry. */
	readonly temperatures: readonly {
		readonly id: string;
		readonly rock: Known<"temperature">;
		readonly test_off?: Known<"temperature-difference">;
	}[];
	/** The job from the first spacer to the plug, as planned; of a job with a stage tool the first stage. */
	readonly placement?: PlacementResults;
	/** Strength and time of the slurry at the shoe. */
	readonly setting?: SettingResults;
	readonly centralizers: readonly CentralizerCount[];
	readonly standoff: readonly StandoffResults[];
	/** From the top of the cement to the shoe. */
	readonly standoff_profile: readonly ProfileStation[];
	readonly mud_removal: readonly MudRemoval[];
	/** Of a job with a stage tool: what is pumped through it once the first stage is in place and set. */
	readonly second_stage?: SecondStageResults;
	readonly further: readonly FurtherJobResults[];
	/** What the column on record is short of the returns seen: recorded top below surface after cement came back. */
	readonly fall_back?: Known<"length">;
	readonly pumped_volume?: Known<"volume">;
	readonly pumped_over_calculated?: Known<"ratio">;
	/** The record beside the plan, where there is one. */
	readonly record?: JobRecordResults;
}

/** `calculated`: worked from the volumes pumped, where nothing that was seen or logged says more. */
export type TopBasis = "planned" | "recorded" | "calculated";

export interface JobRecordResults {
	readonly slurries: readonly {
		readonly id: string;
		readonly volume?: Known<"volume">;
		/** Of the calculated volume. */
		readonly of_plan?: Known<"share">;
		readonly density?: Known<"density">;
		/** From the design density, either way. */
		readonly density_off?: Known<"density">;
		/** Where it ends by the volume pumped. */
		readonly top_by_volume?: HoleMark;
		/** With no excess in open hole, and with twice that of the plan: what the worked top may be off by. */
		readonly highest_by_volume?: HoleMark;
		readonly lowest_by_volume?: HoleMark;
	}[];
	/** Absent where the record of any slurry lacks it. */
	readonly least_of_plan?: Known<"share">;
	readonly greatest_density_off?: Known<"density">;
	readonly lift_off_calculated?: Known<"share">;
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
	/**
	 * What yield and water alone say of the density, for comparison; dry additives make the stated one greater. Absent where
	 * the components are given, which say it better.
	 */
	readonly density_from_yield?: Known<"density">;
	/** Of each component, for the whole slurry. */
	readonly components: readonly {
		readonly material: string;
		readonly mass: Known<"mass">;
	}[];
}
