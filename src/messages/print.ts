import { IntlMessageFormat } from "intl-messageformat";
import { type QuantityStyle, quantityString, type UnitSystem } from "../units/format.ts";
import { ENGLISH } from "./en/index.ts";
import { DECLARED } from "./es/declared.ts";
import { SPANISH } from "./es/index.ts";
import { nameInSpanish } from "./es/named-places.ts";
import {
	type Fact,
	isMessage,
	type Message,
	type MessageCode,
	type Quantified,
	type Said,
} from "./message.ts";
import { decimalsToTell, factorStyle, sentenceStyle } from "./quantity.ts";

/** To whom a message is told. */
export interface Reader {
	readonly language: "en" | "es";
	readonly units: UnitSystem;
}

export const ENGLISH_READER: Reader = { language: "en", units: "field" };

/** A part of a sentence as it is told: words, or a value with the style that prints it. */
export type ToldPart =
	| string
	| { readonly known: Quantified; readonly value: number; readonly style: QuantityStyle };

/** Numbers in Spanish as Mexico and Texas write them: 1,185. */
const LOCALES = { en: "en-US", es: "es-MX" } as const;

/** Lists as the papers write them, `a, b and c`: American English would put a comma before the last. */
const LIST_LOCALES = { en: "en-GB", es: "es-MX" } as const;

const texts: Readonly<Record<Reader["language"], (code: MessageCode) => string>> = {
	en: (code) => ENGLISH[code][0],
	es: (code) => SPANISH[code],
};

const compiled = new Map<string, IntlMessageFormat>();

const formatOf = (code: MessageCode, language: Reader["language"]): IntlMessageFormat => {
	const key = `${language} ${code}`;
	const known = compiled.get(key);
	if (known !== undefined) return known;
	const made = new IntlMessageFormat(texts[language](code), LOCALES[language], undefined, {
		ignoreTag: true,
	});
	compiled.set(key, made);
	return made;
};

/** Marks a fact in a formatted message, so that it comes out as a part of its own. */
class Placed {
	readonly parts: readonly ToldPart[];
	/** What an entry that chooses by the fact (`{what, select, …}`) chooses by: the word as the definition has it. */
	readonly key: string;
	constructor(parts: readonly ToldPart[], key: string) {
		this.parts = parts;
		this.key = key;
	}
	toString(): string {
		return this.key;
	}
}

/**
 * A string or a hole that goes by a name of the trade, and in findings a word that definitions are written with, is called
 * by it in the reader's language; any other name is as typed.
 */
const nameFact = (code: MessageCode, name: string, fact: Fact, reader: Reader): Fact => {
	if (reader.language === "en") return fact;
	if (typeof fact === "string") return nameInSpanish(code, name, fact);
	if (typeof fact === "object" && "list" in fact)
		return { ...fact, list: fact.list.map((each) => nameFact(code, name, each, reader)) };
	return fact;
};

/** Spanish runs `de el` and `a el` together. */
const contracted = (text: string): string =>
	text.replaceAll(/\bde el (?=\p{Ll})/gu, "del ").replaceAll(/\ba el (?=\p{Ll})/gu, "al ");

/** The words of a message, its values still values, for a paper that prints each with the key it is known by. */
export const tellParts = ({ code, facts }: Message, reader: Reader): readonly ToldPart[] => {
	const given = Object.fromEntries(
		Object.entries(facts).map(([name, fact]) => [
			name,
			typeof fact === "number"
				? fact
				: new Placed(
						factParts(nameFact(code, name, fact, reader), reader),
						typeof fact === "string" ? fact : "",
					),
		]),
	);
	const formatted = formatOf(code, reader.language).formatToParts<Placed>(given);
	const told = merged(
		formatted.flatMap(({ value }): readonly ToldPart[] =>
			value instanceof Placed ? value.parts : [String(value)],
		),
	);
	return reader.language === "es"
		? told.map((part) => (typeof part === "string" ? contracted(part) : part))
		: told;
};

/** The message as one string, beginning with a capital letter. */
export const tell = (message: Message, reader: Reader): string => capital(tellPhrase(message, reader));

/** What a stage says, inside a sentence: a person's own words stand as they are. */
export const tellSaid = (said: Said, reader: Reader): string =>
	typeof said === "string" ? said : tellPhrase(said, reader);

/** As `tell`, for use inside a sentence. */
export const tellPhrase = (message: Message, reader: Reader): string => factText(message, reader);

/** A fact as one string, for use inside a sentence. */
export const factText = (fact: Fact, reader: Reader): string =>
	factParts(fact, reader)
		.map((part) => (typeof part === "string" ? part : quantityOf(part, reader.units)))
		.join("");

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const quantityOf = ({ known, value, style }: Exclude<ToldPart, string>, units: UnitSystem): string =>
	quantityString({ dimension: known.dimension, value, style }, units);

/** A declared text in the reader's language; one of the user's own is told as written. */
export const declaredText = (text: string, { language }: Pick<Reader, "language">): string =>
	language === "es" ? (DECLARED.get(text) ?? text) : text;

/** A fact in parts. */
export const factParts = (fact: Fact, reader: Reader): readonly ToldPart[] => {
	if (typeof fact === "string") return [fact];
	if (typeof fact === "number") return [new Intl.NumberFormat(LOCALES[reader.language]).format(fact)];
	if (isMessage(fact)) return tellParts(fact, reader);
	if ("declared" in fact) return [declaredText(fact.declared, reader)];
	if ("list" in fact) return listParts(fact.list, fact.joined, reader);
	if ("parts" in fact) return fact.parts.flatMap((part) => factParts(part, reader));
	if ("sentence" in fact) return sentenceCase(fact.sentence.flatMap((part) => factParts(part, reader)));
	if ("sentences" in fact) return sentenceParts(fact.sentences, reader);
	if ("factor" in fact)
		return [{ known: fact.factor, value: fact.factor.value, style: factorStyle(fact.factor, reader.units) }];
	if ("magnitude" in fact && typeof fact.magnitude === "object") return [sized(fact.magnitude, reader, 0)];
	if ("told" in fact) {
		const { told, from, magnitude } = fact;
		const extra = decimalsToTell(told, from, reader.units);
		return [magnitude === true ? sized(told, reader, extra) : valued(told, reader, extra)];
	}
	return [valued(fact as Quantified, reader, 0)];
};

const valued = (known: Quantified, { units }: Reader, extra: number): ToldPart => ({
	known,
	value: known.value,
	style: sentenceStyle(known, units, extra),
});

/** The size of a value whose direction the words say: printed without its sign, still the value that its key has. */
const sized = (known: Quantified, reader: Reader, extra: number): ToldPart => ({
	known,
	value: known.value,
	style: {
		...sentenceStyle({ ...known, value: Math.abs(known.value) }, reader.units, extra),
		unsigned: true,
	},
});

const listParts = (list: readonly Fact[], joined: "and" | "or", reader: Reader): readonly ToldPart[] => {
	const format = new Intl.ListFormat(LIST_LOCALES[reader.language], {
		type: joined === "and" ? "conjunction" : "disjunction",
	});
	let next = 0;
	return format.formatToParts(list.map(() => "·")).flatMap(({ type, value }): readonly ToldPart[] => {
		const fact = type === "element" ? list[next++] : undefined;
		return fact === undefined ? [value] : factParts(fact, reader);
	});
};

const sentenceParts = (sentences: readonly Message[], reader: Reader): readonly ToldPart[] => {
	const distinct = new Map(sentences.map((each) => [tell(each, reader), each]));
	return [...distinct.values()].flatMap((each, i): readonly ToldPart[] => {
		const parts = sentenceCase(tellParts(each, reader));
		return i === 0 ? parts : [" ", ...parts];
	});
};

/** The first letter a capital one. */
export const sentenceCase = ([first, ...rest]: readonly ToldPart[]): readonly ToldPart[] =>
	first === undefined ? [] : [typeof first === "string" ? capital(first) : first, ...rest];

/** Words beside each other as one part. */
const merged = (parts: readonly ToldPart[]): readonly ToldPart[] => {
	const done: ToldPart[] = [];
	for (const part of parts) {
		const last = done.at(-1);
		if (typeof part === "string" && typeof last === "string") done[done.length - 1] = last + part;
		else if (part !== "") done.push(part);
	}
	return done;
};
