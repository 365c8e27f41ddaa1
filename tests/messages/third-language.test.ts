import { IntlMessageFormat } from "intl-messageformat";
import { describe, expect, it } from "vitest";
import { ENGLISH, type EnglishEntries } from "../../src/messages/en/index.ts";
import type { Translation } from "../../src/messages/entries.ts";

/*
 * What a third language costs: an entry a message, typed by the English codes. A missing one and one too many do not compile;
 * a fact that the English does not name fails here, before any well is read.
 */

type Ten =
	| "check/margin"
	| "check/practice"
	| "rules/evacuated"
	| "rules/kick-tolerance"
	| "rules/subject-well"
	| "rules/days-before"
	| "rules/not-given"
	| "well/hole-order.what"
	| "quantity/comma.what"
	| "limits/limit.what";

type Slice = Pick<EnglishEntries, Ten>;

const FRENCH: Translation<Slice> = {
	"check/margin": "Marge {margin}.",
	"check/practice": "usage",
	"rules/evacuated": "entièrement vidé",
	"rules/kick-tolerance": "tolérance à la venue",
	"rules/subject-well": "puits",
	"rules/days-before": "{count, plural, one {# jour} other {# jours}} avant",
	"rules/not-given": "{what} {count, plural, one {n’est pas} other {ne sont pas}} donné.",
	"well/hole-order.what": "le trou {each} ne descend pas plus bas que le trou {above} au-dessus",
	"quantity/comma.what": "une virgule dans un nombre",
	"limits/limit.what": "il faut ici une limite",
};

// @ts-expect-error nine entries of ten do not compile
const NINE: Translation<Slice> = { ...FRENCH, "check/margin": undefined };

const ELEVEN: Translation<Slice> = {
	...FRENCH,
	// @ts-expect-error an entry that English does not have does not compile
	"check/margins": "Marges.",
};

// @ts-expect-error ten entries are no whole language: every other message is missing
const WHOLE: Translation<EnglishEntries> = FRENCH;

interface Node {
	readonly type: number;
	readonly value?: string;
	readonly options?: Readonly<Record<string, { readonly value: readonly Node[] }>>;
}

const namesIn = (nodes: readonly Node[]): readonly string[] =>
	nodes.flatMap(({ type, value, options }) => [
		...(type === 0 || type === 7 || value === undefined ? [] : [value]),
		...Object.values(options ?? {}).flatMap((branch) => namesIn(branch.value)),
	]);

const factsOf = (text: string, locale: string): readonly string[] => {
	const ast = new IntlMessageFormat(text, locale, undefined, { ignoreTag: true }).getAst();
	return [...new Set(namesIn(ast as unknown as readonly Node[]))].sort();
};

/** Entries whose facts are not those of the English. */
const unlike = (entries: Readonly<Record<string, string>>, locale: string): readonly string[] =>
	(Object.keys(entries) as Ten[]).filter(
		(code) => factsOf(entries[code] ?? "", locale).join() !== factsOf(ENGLISH[code][0], "en").join(),
	);

describe("a third language", () => {
	it("of ten entries takes the facts of the English ones", () => {
		expect(Object.keys(FRENCH)).toHaveLength(10);
		expect(unlike(FRENCH, "fr")).toEqual([]);
	});
	it("is told of a fact that the English does not name, and of one left out", () => {
		expect(unlike({ ...FRENCH, "check/margin": "Marge {marge}." }, "fr")).toEqual(["check/margin"]);
		expect(unlike({ ...FRENCH, "well/hole-order.what": "le trou {each}" }, "fr")).toEqual([
			"well/hole-order.what",
		]);
	});
	it("counts as its language counts", () => {
		const before = new IntlMessageFormat(FRENCH["rules/days-before"], "fr");
		expect(before.format({ count: 0 })).toBe("0 jour avant");
		expect(before.format({ count: 2 })).toBe("2 jours avant");
	});
	it("lacks the rest of the entries, and types name them", () => {
		const lacking = Object.keys(ENGLISH).filter((code) => !(code in FRENCH));
		expect(lacking).toHaveLength(Object.keys(ENGLISH).length - 10);
		expect([NINE, ELEVEN, WHOLE]).toHaveLength(3);
	});
});
