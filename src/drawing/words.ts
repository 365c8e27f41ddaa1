import type { Lithology } from "../well/well.ts";
import type { ENGLISH } from "./words-en.ts";

/**
 * What the drawings say, in one language. `{names}` are filled with values; a language has every phrase, and the type
 * holds it to that.
 */
export type DrawingWords = {
	readonly [K in Exclude<keyof typeof ENGLISH, "rocks" | "strings" | "evidence" | "norths">]: string;
} & {
	readonly rocks: Readonly<Record<Lithology, string>>;
	readonly norths: Readonly<Record<keyof (typeof ENGLISH)["norths"], string>>;
	readonly evidence: Readonly<Record<keyof (typeof ENGLISH)["evidence"], string>>;
	/** Names of strings by their usual ids; others print the id. */
	readonly strings: Readonly<Record<string, string>>;
};
