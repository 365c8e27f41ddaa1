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
