import type { Known } from "../cite/known.ts";

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
