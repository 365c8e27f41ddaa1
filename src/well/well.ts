import type { ErrorModel } from "../catalog/error-model-table.ts";
import type { Known, KnownTable } from "../cite/known.ts";
import type { SourceRef } from "../cite/source.ts";
import type {
	Agency,
	Community,
	DrillString,
	Identity,
	Logistics,
	Neighbor,
	OffsetWell,
	PermitCondition,
	Safety,
	Schedule,
	Site,
	WellBarriers,
	WellControl,
	Wellhead,
} from "../definition/definition.ts";
import { LITHOLOGIES } from "../definition/lithologies.ts";
import type { STAGE_ENDS } from "../definition/stages.ts";
import type { Place } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import type { Paper } from "../document/document.ts";
import type { Said } from "../messages/message.ts";
import type { EndOfLife } from "./end-of-life.ts";
import type { AnnulusReading, SealEvidence } from "./seal-evidence.ts";
import type { StageChart } from "./stage-chart.ts";

/**
 * What was understood of a definition: references joined, catalogue rows found, datums reduced to one, defaults filled
 * in and each of them recorded. Every quantity knows its origin. Lists are ordered from the outermost string inward
 * and from the surface down.
 */
export interface Well {
	readonly identity: Identity;
	readonly site: Site;
	readonly datum: Datum;
	readonly geology: Geology;
	readonly trajectory: Trajectory;
	readonly holes: readonly Hole[];
	readonly strings: readonly CasingString[];
	readonly designBasis: DesignBasis;
	readonly stimulation?: Stimulation;
	readonly drillString?: DrillString;
	readonly wellControl?: WellControl;
	readonly wellhead?: Wellhead;
	/** Elements and tests of the barriers that nothing else states. */
	readonly barriers: WellBarriers;
	readonly neighbors: readonly Neighbor[];
	readonly offsetWells: readonly OffsetWell[];
	readonly offsetPaths: OffsetPaths;
	readonly conditions: readonly PermitCondition[];
	readonly schedule: Schedule;
	readonly logistics?: Logistics;
	readonly endOfLife?: EndOfLife;
	readonly agency?: Agency;
	readonly community?: Community;
	readonly safety?: Safety;
	readonly assumptions: readonly Assumption[];
}

/** Something the definition left out and the tool filled in; every paper that uses it can say so. */
export interface Assumption {
	readonly id: string;
	/** Where the engineer may state it instead. */
	readonly at: Path;
	/** One sentence: what was assumed. */
	readonly what: Said;
	/** Why this value. */
	readonly why: Said;
	readonly value?: Known;
	readonly source?: SourceRef;
}

export interface Datum {
	/** `rotary table`, `kelly bushing` … */
	readonly name: string;
	/** Height of the depth datum above ground level. */
	readonly aboveGround: Known<"length">;
	readonly groundElevation: Known<"elevation">;
	/** Depth of the casing hanger below the datum: where strings that come to surface end. */
	readonly casingHanger: Known<"measured-depth">;
	/** Ground level as a depth from the datum: where cement that comes to surface ends. */
	readonly groundLevel: Known<"measured-depth">;
}

/** A depth as given: along the hole, or vertically from the datum (depths below ground are already shifted). */
export type GivenDepth =
	| { readonly reference: "measured"; readonly depth: Known<"measured-depth"> }
	| { readonly reference: "vertical"; readonly depth: Known<"true-vertical-depth"> };

export interface Geology {
	readonly surfaceTemperature?: Known<"temperature">;
	readonly temperatureGradient?: Known<"temperature-gradient">;
	readonly overburden?: Known<"pressure-gradient">;
	readonly formations: readonly Formation[];
	readonly water: readonly WaterZone[];
	readonly protectedWater?: ProtectedWater;
}

export interface Formation {
	/** Kebab-case of the name. */
	readonly id: string;
	readonly name: string;
	readonly top: Known<"true-vertical-depth">;
	/** The prognosis, where `top` is as found. */
	readonly plannedTop?: Known<"true-vertical-depth">;
	/** As given, else the next formation's top; absent for the last. */
	readonly base?: Known<"true-vertical-depth">;
	readonly lithology: Lithology;
	readonly porePressure?: Known<"density">;
	readonly fractureGradient?: Known<"pressure-gradient">;
	/** Where no gradient is given: how it is to be worked. */
	readonly fractureFrom?: {
		readonly method: "Eaton" | "Hubbert-Willis lower" | "Hubbert-Willis upper" | "Matthews-Kelly";
		readonly poissonsRatio?: Known<"ratio">;
		readonly matrixStressCoefficient?: Known<"ratio">;
	};
	readonly flowZone?: "gas" | "oil" | "water" | "brine";
	readonly competent?: boolean;
	/** Whether it creeps onto the pipe, where stated. */
	readonly mobile?: boolean;
	readonly confining: boolean;
	readonly target: boolean;
	readonly mechanical?: {
		readonly youngsModulus?: Known<"pressure">;
		readonly poissonsRatio?: Known<"ratio">;
		readonly closure?: Known<"pressure-gradient">;
		readonly stressContrast?: Known<"pressure">;
		readonly leakoff?: Known<"leakoff">;
	};
}

export { LITHOLOGIES };
export type Lithology = (typeof LITHOLOGIES)[number];

export interface WaterZone {
	readonly id: string;
	readonly name: string;
	readonly top: Known<"true-vertical-depth">;
	readonly base: Known<"true-vertical-depth">;
	readonly dissolvedSolids?: Known<"dissolved-solids">;
	readonly use?: string;
}

export interface ProtectedWater {
	/** From the depth datum. */
	readonly base: Known<"true-vertical-depth">;
	readonly determinedBy?: string;
	readonly reference?: string;
	readonly dated?: string;
}

export interface Trajectory {
	readonly plan?: TrajectoryPlan;
	readonly survey?: Survey;
	readonly verticalSectionAzimuth?: Known<"angle">;
	/** From the wellhead; the wellhead itself where absent. */
	readonly verticalSectionOrigin?: { readonly north: Known<"offset">; readonly east: Known<"offset"> };
	/** What the survey tool errs by, and the magnetic field that it is steered by. */
	readonly errorModel?: {
		readonly name: string;
		readonly table: ErrorModel["table"];
		readonly field: Known<"magnetic-field">;
		readonly dip: Known<"angle">;
	};
	/** Stated by the engineer. */
	readonly uncertainty?: {
		readonly radius: Known<"distance">;
		readonly confidence?: Known<"share">;
		readonly source: string;
	};
}

/** Where the other wells go, as far as it is given. */
export interface OffsetPaths {
	readonly paths: readonly OffsetPath[];
	/** Of radii stated without a confidence. */
	readonly confidence?: Known<"share">;
}

/** The hole of an offset well; depths from its own datum. */
export type OffsetPath = { readonly id: string } & (
	| { readonly kind: "vertical"; readonly depth: Known<"true-vertical-depth"> }
	| {
			readonly kind: "bottom hole";
			readonly latitude: Known<"angle">;
			readonly longitude: Known<"angle">;
			readonly depth: Known<"true-vertical-depth">;
	  }
	| {
			readonly kind: "surveyed";
			readonly stations: KnownTable<"md" | "inclination" | "azimuth">;
			readonly north?: "grid" | "true" | "magnetic";
			/** Of a well of the same pad: what its survey tool errs by, from true north. */
			readonly covariance?: KnownTable;
	  }
);

/** Shapes of plan; each is an exact list of arcs and straights. */
export type TrajectoryPlan =
	| { readonly kind: "vertical"; readonly to: Known<"measured-depth"> }
	| {
			readonly kind: "build-and-land";
			readonly kickoff: Known<"measured-depth">;
			readonly build: Known<"dogleg">;
			readonly azimuth: Known<"angle">;
			readonly landingInclination: Known<"angle">;
			readonly lateral: Known<"length">;
	  }
	| {
			readonly kind: "build-and-hold";
			readonly kickoff: Known<"measured-depth">;
			readonly build: Known<"dogleg">;
			readonly azimuth: Known<"angle">;
			readonly target: { readonly tvd: Known<"true-vertical-depth">; readonly departure: Known<"length"> };
	  }
	| { readonly kind: "segments"; readonly segments: readonly PathSegment[] };

/** One arc (or straight) from the end of the segment before; inclination and azimuth are those at its own end. */
export interface PathSegment {
	readonly length: Known<"length">;
	readonly inclination: Known<"angle">;
	readonly azimuth: Known<"angle">;
}

/** Stations as surveyed; the first is the tie-in. */
export interface Survey {
	readonly stations: KnownTable<"md" | "inclination" | "azimuth">;
	/** The north its azimuths are counted from, where stated; else that of the site. */
	readonly north?: "grid" | "true" | "magnetic";
	readonly company?: string;
	readonly tool?: string;
	readonly dates?: readonly [string, string];
}

export interface Hole {
	readonly id: string;
	readonly diameter: Known<"diameter">;
	/** Bottom of the hole above it, or ground level. */
	readonly top: Known<"measured-depth">;
	readonly bottom: Known<"measured-depth">;
	/** The plan's bottom, where `bottom` is as drilled. */
	readonly plannedBottom?: Known<"measured-depth">;
	/** Enlargement on diameter. */
	readonly washout?: Known<"share">;
	/** What that is known from, as written: `offset caliper`. */
	readonly washoutFrom?: string;
	/** The caliper log, deeper row by row. */
	readonly caliper?: KnownTable<"md" | "diameter">;
	/** Where it is not the well's. */
	readonly kick?: { readonly intensity: Known<"density">; readonly volume?: Known<"volume"> };
	readonly fluid?: DrillingFluid;
	/** How it is drilled, as stated. */
	readonly drilling?: {
		readonly rate?: Known<"flow-rate">;
		readonly cuttings?: Known<"density">;
		readonly nozzles?: readonly Known<"diameter">[];
		readonly tripSpeed?: Known<"fluid-velocity">;
	};
}

export interface DrillingFluid {
	/** `air`, `fresh-water mud` … as written. */
	readonly kind: string;
	readonly density?: Known<"density">;
	readonly plasticViscosity?: Known<"plastic-viscosity">;
	readonly yieldPoint?: Known<"yield-point">;
	/** Degrees of the viscometer's dial. */
	readonly readings?: Readonly<Record<"six_hundred" | "three_hundred" | "six" | "three", Known<"ratio">>>;
}

export interface CasingString {
	readonly id: string;
	/** `casing` reaches the hanger; a `liner` hangs inside the string before it. */
	readonly kind: "casing" | "liner" | "tieback";
	readonly hole: Hole;
	/** Id of the next string outside, if any. */
	readonly within?: string;
	readonly top: Known<"measured-depth">;
	readonly shoe: Known<"measured-depth">;
	/** The plan's shoe, where an actual one stands in `shoe`. */
	readonly plannedShoe?: Known<"measured-depth">;
	/** Joints run, where the record counts them. */
	readonly jointsRun?: Known<"count">;
	/** Date landed, where recorded. */
	readonly landed?: string;
	readonly sections: readonly PipeSection[];
	readonly shoeTrack?: Known<"length">;
	/** Of a liner: what it is run and cemented through. */
	readonly runningString?: {
		readonly outsideDiameter: Known<"diameter">;
		readonly insideDiameter: Known<"diameter">;
	};
	/** What the crew that runs it keeps to, as stated. */
	readonly running?: {
		readonly speed?: Known<"fluid-velocity">;
		readonly maximumPull?: Known<"force">;
		/** With the shoe landed; below it the string is run empty of all but air. */
		readonly flotationCollar?: Known<"measured-depth">;
		readonly torque?: {
			readonly least: Known<"torque">;
			readonly greatest: Known<"torque">;
			readonly source: string;
		};
	};
	readonly floats: readonly string[];
	readonly centralizers: readonly CentralizerRun[];
	readonly cement?: CementJob;
	readonly pressureTest?: PressureTest;
	readonly shoeTest?: ShoeTest;
	/** Of the annulus outside it. */
	readonly annulusReadings?: readonly AnnulusReading[];
	readonly designFactors: DesignFactors;
	/** Collapse: empty, or a fluid level. */
	readonly evacuation?:
		| { readonly kind: "full" }
		| {
				readonly kind: "level";
				readonly level: Known<"true-vertical-depth">;
				readonly fluid: Known<"density">;
		  };
	/** Where not the well's own. */
	readonly burstBackup?: Known<"pressure-gradient">;
	readonly wear?: Known<"share">;
	/** How it is produced through tubing. */
	readonly production?: {
		readonly packer: Known<"measured-depth">;
		readonly packerFluid: Known<"density">;
		/** Shut in at surface; worked from the rock where absent. */
		readonly tubingPressure?: Known<"pressure">;
		/** Least pressure below the packer; none at all where absent. */
		readonly drawnDownTo?: Known<"pressure">;
	};
}

/** A run of one pipe, top to bottom, joined with its catalogue rows. */
export interface PipeSection {
	/** 1 is the uppermost. */
	readonly number: number;
	readonly outsideDiameter: Known<"diameter">;
	readonly nominalWeight: Known<"linear-weight">;
	readonly wall: Known<"diameter">;
	readonly insideDiameter: Known<"diameter">;
	readonly drift: Known<"diameter">;
	readonly couplingDiameter?: Known<"diameter">;
	readonly grade: string;
	readonly minimumYield: Known<"pressure">;
	readonly minimumTensile: Known<"pressure">;
	/** Where the standard takes this steel in hydrogen sulfide: above a temperature, or at any. Absent where it has no row. */
	readonly sourService?: { readonly lowestTemperature?: Known<"temperature">; readonly source: SourceRef };
	/** `STC`, `LTC`, `BTC`, `BTC special clearance`, `plain end`, or the name of a proprietary connection. */
	readonly connection: string;
	/**
	 * Dimensions of the API thread that `connection` names, from the catalogue's thread table: round with the short
	 * lengths for STC and the long ones for LTC, buttress for BTC. Absent for plain end and proprietary connections; the
	 * joint's strength is then the stated one or cannot be told. The coupling is of the pipe's own grade.
	 */
	readonly threads?: ThreadDimensions;
	readonly condition: "new" | "used" | "reconditioned";
	readonly joint?: Known<"length">;
	readonly top: Known<"measured-depth">;
	readonly bottom: Known<"measured-depth">;
	/** Ratings the engineer states, for pipe or connections outside the catalogue. */
	readonly stated?: {
		readonly internalYield?: Known<"pressure">;
		readonly collapse?: Known<"pressure">;
		readonly tension?: Known<"force">;
		/** Whether the maker gives it, connection and all, for sour service. */
		readonly sourService?: boolean;
		/** Maker's data sheet and its date. */
		readonly source?: string;
	};
}

/** Under the symbols of API 5B [in; taper and turns without unit]. */
export type ThreadDimensions =
	| {
			readonly kind: "round";
			/** Face of the coupling to the hand-tight plane. */
			readonly M: Known<"diameter">;
			/** Pitch diameter at the hand-tight plane. */
			readonly E1: Known<"diameter">;
			/** Hand-tight standoff. */
			readonly A: Known<"diameter">;
			/** End of pipe to the hand-tight plane, of the short or the long thread. */
			readonly L1: Known<"diameter">;
			/** End of pipe to the vanish point, of the short or the long thread. */
			readonly L4: Known<"diameter">;
	  }
	| {
			readonly kind: "buttress";
			/** Length of perfect threads. */
			readonly L7: Known<"diameter">;
			/** Pitch diameter. */
			readonly E7: Known<"diameter">;
			/** Face of the coupling to the base of the triangle, hand tight. */
			readonly I: Known<"diameter">;
			/** On diameter, per unit length. */
			readonly taper: Known<"ratio">;
			/** Turns of make-up that the leak resistance is worked with. */
			readonly leakTurns: Known<"ratio">;
	  };

export interface CentralizerRun {
	readonly kind: "bow spring" | "rigid";
	readonly top: Known<"measured-depth">;
	readonly bottom: Known<"measured-depth">;
	/** Joints between centralizers; 1 is every joint. */
	readonly everyJoints: Known<"count">;
	/** At 67 % standoff: as stated, else the least of the standard for bow springs on this pipe. */
	readonly restoringForce?: Known<"force">;
	/** Over the blades. */
	readonly outsideDiameter?: Known<"diameter">;
}

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

export interface Rheology {
	readonly plasticViscosity?: Known<"plastic-viscosity">;
	readonly yieldPoint?: Known<"yield-point">;
}

/** A top-up from the surface, or a squeeze. */
export interface FurtherCementJob {
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

export interface PressureTest {
	readonly pressure: Known<"pressure">;
	readonly hold: Known<"duration">;
	/** The wellhead that is on while the string is tested; the drilling one where absent. */
	readonly head?: "drilling" | "stimulation";
	readonly allowedFall?: Known<"share">;
	readonly actual?: {
		readonly date?: string;
		readonly pressure: Known<"pressure">;
		readonly hold?: Known<"duration">;
		readonly fall?: Known<"share">;
		readonly witnessedBy?: string;
	};
}

export interface ShoeTest {
	readonly kind: "FIT" | "LOT";
	readonly equivalent: Known<"density">;
	readonly newHole?: Known<"length">;
	readonly actual?: {
		readonly date?: string;
		readonly equivalent: Known<"density">;
		/** `held`, `leaked off` … as written. */
		readonly outcome?: string;
	};
}

export interface DesignFactors {
	readonly burst: Known<"ratio">;
	readonly collapse: Known<"ratio">;
	readonly tension: Known<"ratio">;
	/** Of tension with bending counted in. */
	readonly bending: Known<"ratio">;
	/** Of a string stuck and pulled. */
	readonly overpull: Known<"ratio">;
	readonly triaxial: Known<"ratio">;
}

/** A coefficient of friction, from the least to the greatest that is reckoned with. */
export type FrictionRange = readonly [least: Known<"ratio">, greatest: Known<"ratio">];

export interface DesignBasis {
	readonly burstBackup: Known<"pressure-gradient">;
	readonly designFactors: DesignFactors;
	readonly wear: Known<"share">;
	readonly temperatureDerating: Known<"share-per-temperature">;
	readonly overpull: Known<"force">;
	/** Pipe on casing, and pipe on rock. */
	readonly friction: { readonly cased: FrictionRange; readonly openHole: FrictionRange };
	/** The fastest that pipe moves while it is run. */
	readonly runningSpeed: Known<"fluid-velocity">;
	/** Partial pressure of hydrogen sulfide from which service counts as sour. */
	readonly sourThreshold: Known<"pressure">;
}

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
