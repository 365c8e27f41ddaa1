import type { Known } from "../cite/known.ts";
import type { STAGE_ENDS } from "../definition/stages.ts";
import type { Place } from "../diagnostics/diagnostic.ts";
import type { Paper } from "../document/document.ts";
import type { StageChart } from "./stage-chart.ts";
import type { PipeSection } from "./strings.ts";

export interface Stimulation {
	readonly method: "plug and perforate" | "sliding sleeve" | "single interval";
	/** Id of the string treated down. */
	readonly treatedThrough: string;
	/** Pipe pumped down inside that string, where there is one; below its end the string itself is pumped through. */
	readonly treatingString?: TreatingString;
	readonly baseFluid: {
		readonly kind: string;
		readonly density: Known<"density">;
		readonly viscosity?: Known<"plastic-viscosity">;
	};
	readonly waterSources: readonly {
		readonly name: string;
		readonly share: Known<"share">;
		readonly recycled: boolean;
		readonly dissolvedSolids?: Known<"dissolved-solids">;
	}[];
	readonly pressureModel?: {
		readonly net?: Known<"pressure">;
		readonly nearWellbore?: Known<"pressure">;
		readonly frictionReduction?: Known<"share">;
		readonly roughness?: Known<"diameter">;
		readonly discharge?: readonly [Known<"ratio">, Known<"ratio">];
		/** Of each cluster above the easiest, deepest first. */
		readonly clusterStress?: readonly Known<"pressure">[];
	};
	readonly pumps?: {
		readonly horsepowerEach: Known<"hydraulic-power">;
		readonly load: Known<"share">;
		readonly spare?: Known<"count">;
	};
	readonly boundary: readonly {
		readonly element: string;
		readonly rating?: Known<"pressure">;
		readonly factor: Known<"ratio">;
	}[];
	readonly limits?: {
		readonly maximumTreatingPressure?: Known<"pressure">;
		readonly pumpKickouts: readonly Known<"pressure">[];
		readonly reliefValve?: Known<"pressure">;
		readonly reliefDischargesTo?: string;
		readonly lineTest?: Known<"pressure">;
	};
	readonly toe?: {
		readonly kind: string;
		readonly depth: Known<"measured-depth">;
		readonly opensAt?: Known<"pressure">;
		readonly opensAtMeasured?: "surface" | "valve";
	};
	readonly stages: readonly Stage[];
	/** Of sliding sleeves, the deepest first. */
	readonly sleeves?: readonly Sleeve[];
	readonly proppants: readonly Proppant[];
	readonly additives: readonly Additive[];
	readonly annuli: readonly AnnulusLimit[];
	readonly flowback?: {
		readonly returned?: readonly [Known<"share">, Known<"share">];
		readonly goesTo?: string;
	};
	readonly ifItScreensOut?: string;
}

/**
 * One stage, as laid out or listed. Stage 1 is the deepest.
 *
 * A regular layout puts a stage's bottom cluster at its bottom and the others above it at the cluster spacing; the stage
 * ends where the next one's bottom cluster lies. Its plug is set below its bottom cluster, above the uppermost cluster
 * of the stage below; stage 1 has none.
 */
export interface Stage {
	readonly number: number;
	/** Deepest opening. */
	readonly bottom: Known<"measured-depth">;
	readonly top: Known<"measured-depth">;
	/** Cluster mid-depths, deepest first; none of a single interval, which is open from bottom to top. */
	readonly clusters: readonly Known<"measured-depth">[];
	/** Of a single interval, the holes in all of it. */
	readonly shotsPerCluster?: Known<"count">;
	readonly shotDiameter?: Known<"diameter">;
	readonly phasing?: Known<"angle">;
	/** The plug set below this stage's clusters, where there is one. */
	readonly plug?: Known<"measured-depth">;
	readonly rate?: Known<"flow-rate">;
	/** As written; the calculation adds the ramp's before the flush. */
	readonly steps: readonly TreatmentStep[];
	/** Pad and proppant by efficiency, in equal steps of slurry. */
	readonly ramp?: {
		readonly slurryVolume: Known<"volume">;
		readonly proppant: string;
		readonly mass: Known<"mass">;
		readonly efficiency: Known<"share">;
		readonly steps: Known<"count">;
	};
	/** Why the stage differs from the layout, where it does. */
	readonly why?: string;
	readonly actual?: StageActual;
}

export interface Sleeve {
	/** Number of its stage. */
	readonly stage: number;
	/** Bore of the seat. */
	readonly seat: Known<"diameter">;
	/** Absent where pressure alone opens the sleeve. */
	readonly ball?: Known<"diameter">;
}

export interface TreatingString {
	/** From the top down. */
	readonly sections: readonly PipeSection[];
	readonly packer?: { readonly depth: Known<"measured-depth">; readonly rating?: Known<"pressure"> };
}

export interface TreatmentStep {
	readonly name: string;
	/** Id of an additive pumped neat (acid), else the base fluid. */
	readonly fluid?: string;
	readonly proppant?: string;
	readonly concentration?: Known<"proppant-concentration">;
	/** Absent where the step is a flush to the top cluster; the calculation finds it. */
	readonly cleanVolume?: Known<"volume">;
	readonly flushTo?: "top cluster";
	readonly rate: Known<"flow-rate">;
}

export interface StageActual {
	readonly date?: string;
	/** Where the date is written. */
	readonly dateAt?: Place;
	readonly averageRate?: Known<"flow-rate">;
	readonly averagePressure?: Known<"pressure">;
	readonly maximumPressure?: Known<"pressure">;
	readonly breakdown?: Known<"pressure">;
	readonly instantaneousShutIn?: Known<"pressure">;
	readonly cleanVolume?: Known<"volume">;
	readonly proppantMass?: Known<"mass">;
	/** Times of day, as written. */
	readonly started?: string;
	readonly ended?: string;
	readonly endedBy?: (typeof STAGE_ENDS)[number];
	readonly problem?: string;
	readonly chart?: StageChart;
}

export interface Proppant {
	readonly id: string;
	readonly material: string;
	readonly specificGravity: Known<"ratio">;
	readonly bulkDensity?: Known<"bulk-density">;
	readonly cas?: string;
	readonly supplier?: string;
}

export interface Additive {
	readonly id: string;
	readonly name: string;
	readonly purpose: string;
	readonly supplier?: string;
	readonly rate?: Known<"additive-rate">;
	readonly density?: Known<"density">;
	/** What the crew wears, and where the eyewash is. */
	readonly handling?: string;
	/** Papers it may appear in, where narrowed. */
	readonly papers?: readonly Paper[];
	readonly ingredients: readonly {
		readonly name: string;
		readonly cas?: string;
		readonly maxShare?: Known<"share">;
		readonly tradeSecret?: string;
	}[];
}

export interface AnnulusLimit {
	/** Ids of the inner and the outer string; `treating-string` for pipe that is pumped down inside casing. */
	readonly between: readonly [string, string];
	readonly predictedRise?: Known<"pressure">;
	/** Of the fluid in it. */
	readonly warming?: { readonly from: Known<"temperature">; readonly to: Known<"temperature"> };
	/** Set point of the valve that relieves it; closed where there is none. */
	readonly relief?: Known<"pressure">;
	/** Who is told, where it is not the agency. */
	readonly tell?: string;
	readonly stopAbove?: Known<"pressure">;
	readonly notifyWithin?: Known<"duration">;
	/** Highest pressure recorded on the job. */
	readonly highest?: Known<"pressure">;
}
