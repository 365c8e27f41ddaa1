import type { Known } from "../cite/known.ts";
import type { SealEvidence } from "./seal-evidence.ts";

export interface CementJob {
	readonly volumeBasis: "gauge hole" | "washed-out hole" | "caliper";
	/** In the order pumped: the lead first. */
	readonly slurries: readonly Slurry[];
	readonly spacer?: { readonly volume: Known<"volume">; readonly density?: Known<"density"> } & Rheology;
	readonly displacement?: {
		readonly density: Known<"density">;
		readonly rate?: Known<"flow-rate">;
		/** Of one stroke of the pump that displaces. */
		readonly pumpOutput?: Known<"volume">;
		/** What is pumped slowly at the end. */
		readonly last?: { readonly volume: Known<"volume">; readonly rate: Known<"flow-rate"> };
	} & Rheology;
	/** Of the lines, before anything is pumped. */
	readonly lineTest?: Known<"pressure">;
	/** Over the final circulating pressure. */
	readonly bump?: Known<"pressure">;
	/** Slurries above it are a second stage. */
	readonly stageTool?: Known<"measured-depth">;
	/** Either way of each slurry's density. */
	readonly densityWindow?: Known<"density">;
	readonly drillOut?: { readonly after?: Known<"duration">; readonly strength?: Known<"pressure"> };
	readonly further?: readonly FurtherCementJob[];
	readonly plugs: readonly string[];
	readonly waitOnCement?: Known<"duration">;
	readonly topMethod: "returns seen" | "calculated" | "temperature survey" | "bond log" | "tagged";
	readonly ifReturnsStop?: string;
	readonly actual?: CementActual;
}

interface Rheology {
	readonly plasticViscosity?: Known<"plastic-viscosity">;
	readonly yieldPoint?: Known<"yield-point">;
}

/** A top-up from the surface, or a squeeze. */
interface FurtherCementJob {
	readonly kind: "top-up" | "squeeze";
	readonly top: Known<"measured-depth">;
	readonly bottom: Known<"measured-depth">;
	readonly excess?: Known<"share">;
	readonly yield: Known<"slurry-yield">;
	readonly water?: Known<"water-requirement">;
	readonly density?: Known<"density">;
	readonly when?: string;
}

/** What a slurry is made of, for a sack of cement. */
export interface SlurryDesign {
	/** Of the cement itself. */
	readonly cementGravity: Known<"ratio">;
	readonly water?: Known<"water-requirement">;
	readonly waterByWeight?: Known<"share">;
	readonly components: readonly SlurryComponent[];
	/** Which of the slurry's own figures are to be worked from it. */
	readonly open: readonly ("density" | "yield" | "water")[];
}

export interface SlurryComponent {
	readonly material: string;
	readonly specificGravity: Known<"ratio">;
	/** Where it does not follow from the specific gravity: salt in solution. */
	readonly absoluteVolume?: Known<"specific-volume">;
	readonly share?: Known<"share">;
	readonly shareOfWater?: Known<"share">;
	readonly volume?: Known<"water-requirement">;
}

export interface Slurry {
	/** Unique in the job: the role, numbered where it repeats. */
	readonly id: string;
	readonly role: string;
	readonly cementClass?: string;
	readonly top: Known<"measured-depth">;
	readonly bottom: Known<"measured-depth">;
	/** Added to the open-hole annulus only. */
	readonly excess: Known<"share">;
	readonly density: Known<"density">;
	readonly yield: Known<"slurry-yield">;
	readonly water: Known<"water-requirement">;
	readonly rate?: Known<"flow-rate">;
	readonly plasticViscosity?: Known<"plastic-viscosity">;
	readonly yieldPoint?: Known<"yield-point">;
	readonly thickeningTime?: Known<"duration">;
	/** From a gel strength of 100 to 500 lbf/100 ft². */
	readonly transitionTime?: Known<"duration">;
	readonly strength: readonly StrengthPoint[];
	readonly freeFluid?: Known<"free-fluid">;
	/** Recipe in words. */
	readonly additives?: string;
	/** Recipe in figures. */
	readonly design?: SlurryDesign;
}

export interface StrengthPoint {
	readonly value: Known<"pressure">;
	readonly after: Known<"duration">;
	readonly at?: Known<"temperature">;
}

/** The record of a job done. */
export interface CementActual {
	readonly date?: string;
	readonly pumped: readonly {
		readonly fluid: string;
		readonly volume: Known<"volume">;
		readonly density?: Known<"density">;
	}[];
	readonly returnsToSurface?: Known<"volume">;
	/** Of the annulus, while the cement was placed. */
	readonly returnsWhilePumping?: "full" | "partial" | "none";
	readonly top?: { readonly depth: Known<"measured-depth">; readonly method: CementJob["topMethod"] };
	readonly lift?: Known<"pressure">;
	readonly bump?: Known<"pressure">;
	readonly floatsHeld?: boolean;
	/** `none`, or the log, its date and what it showed. */
	readonly evaluationLog?: string;
	readonly remedial?: string;
	readonly seal?: SealEvidence;
}
