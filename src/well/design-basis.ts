import type { Known } from "../cite/known.ts";

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
