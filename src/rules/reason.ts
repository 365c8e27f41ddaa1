import type { Fact } from "../messages/message.ts";
import {
	capital,
	ENGLISH_READER,
	factParts,
	factText,
	type Reader,
	type ToldPart,
} from "../messages/print.ts";

/** Messages, values and sentences one after another, its numbers still numbers, so that a paper may print them in its own units. */
export type Reason = readonly ReasonPart[];
export type ReasonPart = Fact;

/** A part of a sentence as it is told: words, or a value with the style that prints it. */
export type SaidPart = ToldPart;

/** Words and numbers joined, for use inside a sentence. */
export const phrase = (reason: Reason, reader: Reader = ENGLISH_READER): string =>
	factText({ parts: reason }, reader);

/** The sentence as a paper for this reader prints it. */
export const say = (reason: Reason, reader: Reader = ENGLISH_READER): string =>
	capital(phrase(reason, reader));

/** The sentence in parts, its values still values, for a paper that prints each with the key it is known by. */
export const sayParts = (reason: Reason, reader: Reader): readonly ToldPart[] =>
	factParts({ sentence: reason }, reader);

/** Sentences one after another, none of them twice. */
export const joined = (reasons: readonly Reason[]): Reason =>
	[...new Map(reasons.map((reason) => [say(reason), reason])).values()].flatMap(
		(reason, i): Reason => [...(i === 0 ? [] : [" "]), { sentence: reason }],
	);

/** `a`, `a and b`, `a, b and c`, in the reader's language. */
export const listed = (words: readonly Fact[]): Fact => ({ list: words, joined: "and" });

/** `a or b`. */
export const orListed = (words: readonly Fact[]): Fact => ({ list: words, joined: "or" });
