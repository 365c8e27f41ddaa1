import type { Dimension } from "../units/dimensions.ts";
import type { EnglishEntries } from "./en/index.ts";

/*
 * A message is a code and its facts; its words stand in `en/` and `es/`, an entry each. Stages make messages and never
 * sentences, so that one printer can give any of them in the reader's language and units.
 */

export type MessageCode = keyof EnglishEntries;

/** A value as a message carries it; a `Known` is one. */
export interface Quantified {
	readonly dimension: Dimension;
	/** In the dimension's canonical unit. */
	readonly value: number;
}

export type Fact =
	/** A name or text that a person typed, or an id: printed as it stands. */
	| string
	/** A count, for plurals; grouped as the language groups. */
	| number
	| Quantified
	/** Printed with as many decimals as tell it from the other. */
	| { readonly told: Quantified; readonly from: Quantified; readonly magnitude?: boolean }
	/** The size of a signed value, where the words already say on which side it lies. */
	| { readonly magnitude: Quantified }
	/** A factor as a rule has it: with no more decimals than it needs, and enough that the product can be checked. */
	| { readonly factor: Quantified }
	/** `a, b and c` or `a, b or c`, in the language's own way. */
	| { readonly list: readonly Fact[]; readonly joined: "and" | "or" }
	/** Parts of a sentence, one after another as they stand. */
	| { readonly parts: readonly Fact[] }
	/** The same, beginning with a capital letter. */
	| { readonly sentence: readonly Fact[] }
	/** Sentences one after another, none of them twice. */
	| { readonly sentences: readonly Message[] }
	/** A text declared in English where it belongs, beside a formula or in a file of rules; `es/declared.ts` has the Spanish. */
	| { readonly declared: string }
	/** A part of a sentence that has an entry of its own. */
	| Message;

export interface Message {
	readonly code: MessageCode;
	readonly facts: Readonly<Record<string, Fact>>;
}

type Before<T extends string, Stop extends string> = T extends `${infer Head}${Stop}${string}` ? Head : T;

/** `{count, plural, …}` and `{name}` name facts; `one {# joint}` is a branch of a plural and names none. */
type NameIn<Inner extends string> =
	Before<Before<Before<Inner, "}">, ",">, "{"> extends infer Name extends string
		? Name extends "" | `${string} ${string}` | `${string}'${string}` | `#${string}`
			? never
			: Name
		: never;

/** Names of the facts of an entry. A branch of a plural or a choice must not be a lone word; a test holds it. */
type FactNames<T extends string> = T extends `${string}{${infer Inner}`
	? NameIn<Inner> | FactNames<Inner>
	: never;

type TextOf<C extends MessageCode> = EnglishEntries[C][0];

type FactsOf<C extends MessageCode> = { readonly [N in FactNames<TextOf<C>>]: Fact };

/** What a stage says: a message, or the text that a person typed. */
export type Said = string | Message;

/**
 * A message by its code, with exactly the facts that its entry names.
 *
 * @param code  of an entry in `en/`
 */
export const message = <C extends MessageCode>(
	code: C,
	...[facts]: FactNames<TextOf<C>> extends never ? [] : [FactsOf<C>]
): Message => ({ code, facts: (facts ?? {}) as Readonly<Record<string, Fact>> });

export const isMessage = (fact: Fact): fact is Message => typeof fact === "object" && "code" in fact;
