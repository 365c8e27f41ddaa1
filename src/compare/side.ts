import type { ValueIndex } from "../cite/index-values.ts";
import type { DueItem } from "../rules/due-dates.ts";
import type { Judgement, MissingItem } from "../rules/finding.ts";
import type { UnitSystem } from "../units/format.ts";
import type { Well } from "../well/well.ts";

/** One state of a well: what was found of it, as far as it is compared with another. */
export interface Side {
	readonly well: Well;
	readonly judgement: Judgement;
	readonly missing: readonly MissingItem[];
	readonly due: readonly DueItem[];
	readonly index: ValueIndex;
	/** The definition as written. */
	readonly written: unknown;
	/** First 8 hex digits of the digest over every file read. */
	readonly digest: string;
}

/** An earlier and a later state, and the units in which a difference counts once it can be printed. */
export interface Sides {
	readonly before: Side;
	readonly after: Side;
	readonly units: UnitSystem;
}
