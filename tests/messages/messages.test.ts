import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { IntlMessageFormat } from "intl-messageformat";
import { describe, expect, it } from "vitest";
import { ENGLISH } from "../../src/messages/en/index.ts";
import { SPANISH } from "../../src/messages/es/index.ts";
import { type MessageCode, message } from "../../src/messages/message.ts";
import { type Reader, tell, tellParts } from "../../src/messages/print.ts";

const CODES = Object.keys(ENGLISH) as readonly MessageCode[];
const SRC = fileURLToPath(new URL("../../src", import.meta.url));

interface Node {
	readonly type: number;
	readonly value?: string;
	readonly options?: Readonly<Record<string, { readonly value: readonly Node[] }>>;
}

/** Literals and the plural's `#` name no fact (kinds 0 and 7 of the parser's tree). */
const namesIn = (nodes: readonly Node[]): readonly string[] =>
	nodes.flatMap(({ type, value, options }) => [
		...(type === 0 || type === 7 || value === undefined ? [] : [value]),
		...Object.values(options ?? {}).flatMap((branch) => namesIn(branch.value)),
	]);

/** Names of the facts of a text, as the library that prints it understands the text. */
const factsOf = (text: string, locale: string): readonly string[] => {
	const format = new IntlMessageFormat(text, locale, undefined, { ignoreTag: true });
	return [...new Set(namesIn(format.getAst() as unknown as readonly Node[]))].sort();
};

/** The same, as the types of `message` understand it. */
const factsByType = (text: string): readonly string[] =>
	[...new Set([...text.matchAll(/\{([^{},]+)/g)].map(([, name = ""]) => name))]
		.filter((name) => !/[ #']/.test(name))
		.sort();

const filesOf = (folder: string): readonly string[] =>
	readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
		const path = join(folder, entry.name);
		if (entry.isDirectory()) return entry.name === "messages" ? [] : filesOf(path);
		return /\.tsx?$/.test(entry.name) ? [path] : [];
	});

describe("the room of the messages", () => {
	it.each(CODES)("%s: both languages take the facts that the types ask for", (code) => {
		const [text, note] = ENGLISH[code];
		expect(factsOf(text, "en")).toEqual(factsByType(text));
		expect(factsOf(SPANISH[code], "es")).toEqual(factsOf(text, "en"));
		expect(note.length).toBeGreaterThan(10);
	});
	it("holds no entry that nobody says", () => {
		const source = filesOf(SRC)
			.map((path) => readFileSync(path, "utf8"))
			.join("\n");
		expect(CODES.filter((code) => !source.includes(`"${code}"`))).toEqual([]);
	});
	it("has Spanish of its own for every sentence", () => {
		const alike = CODES.filter(
			(code) => /[a-z]{3} [a-z]{3}/.test(ENGLISH[code][0]) && ENGLISH[code][0] === SPANISH[code],
		);
		expect(alike).toEqual([]);
	});
});

const english: Reader = { language: "en", units: "field" };
const spanish: Reader = { language: "es", units: "metric" };
const plain = (text: string): string => text.replaceAll(/[\u00a0\u202f]/g, " ");
const pressure = { dimension: "pressure", value: 9500 } as const;

describe("a message", () => {
	it("is told in the reader's language and units", () => {
		const said = message("check/margin", { margin: pressure });
		expect(plain(tell(said, english))).toBe("Margin 9,500 psi.");
		expect(plain(tell(said, spanish))).toBe("Margen 65.50 MPa.");
	});
	it("counts as the language counts", () => {
		const one = message("rules/not-given", { count: 1, what: { list: ["the mud density"], joined: "and" } });
		const three = message("rules/not-given", { count: 3, what: { list: ["a", "b", "c"], joined: "and" } });
		expect(tell(one, english)).toBe("The mud density is not given.");
		expect(tell(three, english)).toBe("A, b and c are not given.");
		expect(tell(three, spanish)).toBe("No se indicaron a, b y c.");
	});
	it("keeps its values as values for a paper", () => {
		const parts = tellParts(message("check/margin", { margin: pressure }), english);
		expect(parts).toEqual(["Margin ", { known: pressure, value: 9500, style: {} }, "."]);
	});
	it("takes exactly the facts that its entry names", () => {
		// @ts-expect-error the margin is missing
		expect(() => tell(message("check/margin"), english)).toThrow();
		// @ts-expect-error there is no such entry
		expect(() => tell(message("check/nothing-of-the-kind"), english)).toThrow();
	});
	it("puts a name as it was typed, whatever signs are in it", () => {
		expect(tell(message("check/unknown-jurisdiction", { code: "<b>{x}" }), english)).toContain("“<b>{x}”");
	});
});
