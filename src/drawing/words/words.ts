import type { Lithology } from "../../well/well.ts";
import type { ENGLISH } from "./en/index.ts";

/** Lists of words, each phrase of which every language has. */
type Lists =
	| "norths"
	| "evidence"
	| "strengthBasis"
	| "windowLines"
	| "windowLegend"
	| "situations"
	| "loadAxes"
	| "barrierLegend"
	| "barrierPhases"
	| "loadKinds"
	| "treatmentAxes"
	| "chartAxes"
	| "phases"
	| "phaseSeen"
	| "months"
	| "ladderTiers";

/**
 * What the drawings say, in one language. `{names}` are filled with values; a language has every phrase, and the type
 * holds it to that.
 */
export type DrawingWords = {
	readonly [K in Exclude<
		keyof typeof ENGLISH,
		| "rocks"
		| "groundLines"
		| "strings"
		| "holes"
		| "elements"
		| "hoursGiven"
		| "stepsGiven"
		| "plugsGiven"
		| Lists
	>]: string;
} & {
	readonly [L in Lists]: Readonly<Record<keyof (typeof ENGLISH)[L], string>>;
} & {
	readonly rocks: Readonly<Record<Lithology, string>>;
	/** Kinds of line on the ground, as a map's key has them. */
	readonly groundLines: Readonly<Record<string, string>>;
	/** Names of strings and holes by their usual ids; others print the id. */
	readonly strings: Readonly<Record<string, string>>;
	readonly holes: Readonly<Record<string, string>>;
	/** Names of the elements under treating pressure; others print as they are called. */
	readonly elements: Readonly<Record<string, string>>;
	/** Hours that definitions often give; others are printed as they were written. */
	readonly hoursGiven: Readonly<Record<string, string>>;
	/** Steps of a treatment, without the number they may carry, and plugs, as `hoursGiven`. */
	readonly stepsGiven: Readonly<Record<string, string>>;
	readonly plugsGiven: Readonly<Record<string, string>>;
};
