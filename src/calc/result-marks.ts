import type { Known } from "../cite/known.ts";

/** One place in the well, on every axis a reader may use. `md` is absent for places the hole does not reach. */
export interface DepthMark {
	readonly md?: Known<"measured-depth">;
	readonly tvd: Known<"true-vertical-depth">;
	readonly below_ground: Known<"depth-below-ground">;
	/** How often the hole passes this depth, where more than once; `md` is then the first time. */
	readonly passes?: Known<"count">;
}

/** A mark in the hole. */
export interface HoleMark extends DepthMark {
	readonly md: Known<"measured-depth">;
}
