import type { Known, KnownTable } from "../cite/known.ts";
import type { SourceRef } from "../cite/source.ts";
import type { CementJob } from "./cement.ts";
import type { DesignFactors } from "./design-basis.ts";
import type { AnnulusReading } from "./seal-evidence.ts";

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
		/** Flowing, at the wellhead. */
		readonly producingTemperature?: Known<"temperature">;
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
