import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { parseAst } from "rolldown/parseAst";
import { describe, expect, it } from "vitest";
import * as checks from "../../src/catalog/limits/checks.ts";
import * as limits from "../../src/catalog/limits/limit.ts";
import * as measures from "../../src/catalog/limits/measures.ts";
import * as vocabulary from "../../src/catalog/limits/vocabulary.ts";
import { VERDICTS } from "../../src/document/verdict.ts";

const SRC = fileURLToPath(new URL("../../src", import.meta.url));

/** Folders that say what they have to say by message, and hold no wording of their own. */
const WORDLESS = ["source", "definition", "well", "catalog", "rules", "compare", "drawing", "paper"];

/** The calculation declares its formulas in words; what it finds fault with and leaves open it says by message. */
const SAYING = new Set(["diagnose", "missing", "finite"]);

/** Makers whose words are declarations: of a field, of a formula, of a citation. They are printed by no message. */
const DECLARED = new Set(["formula", "cite", "constant", "numbered"]);

/** Words of the data themselves: a definition is written with them. */
const OF_THE_DATA = new Set([
	// Names of the shipped tables and of their rows.
	"cement classes",
	"sour service",
	"any temperature",
	"read in part",
	"… … lb/ft",
	"… long",

	"BTC special clearance",
	"bottom hole",
	"bow spring",
	"gauge hole",
	"initiation valve",
	"plain end",
	"plug and perforate",
	"returns seen",
	"Engineering practice",
	"fracture gradient",
	"washed-out hole",
]);

/** How a value of common practice is cited: it has no source to name. */
const CITATION = /^common practice, no source/;

/** Makers of the fields of a definition, whose words describe it to who writes one. */
const FIELDS = new Set([
	...["field", "group", "entry", "list", "text", "oneOf", "flag", "date", "identifier", "reference", "file"],
	...["q", "part", "ratio", "fraction", "count", "tally", "coordinate", "eastWest", "partSpan", "depth"],
	...["measuredDepth", "measuredDepthOrSurface", "verticalDepth", "straightDepth", "columnsField"],
	...[
		"frictionRange",
		"runs",
		"answer",
		"apiNumber",
		"casNumber",
		"person",
		"alarmOf",
		"distance",
		"northReference",
	],
	// The text of a value, as the definition has it.
	"typed",
]);

/** Pages for people who write definitions: of the fields, and for editors. */
const PAGES = ["definition/field-table.ts", "definition/json-schema.ts", "rules/explain-check.ts"];

/** The drawings' own words, a folder a language; and the reader of page orders, which tells who builds the tool what is wrong with one. */
const ROOMS = ["drawing/words/en/", "drawing/words/es/", "paper/words/page-order.ts"];

/** Names of shapes, which tests find them by, and keys of words: nobody reads them. */
const NAMED = new Set(["named", "tagOf", "mark", "level", "label", "findLabel"]);

/** Two words in a row, one of them with a small letter; a value put into a text counts as a word. */
const PHRASE = /[A-Za-z]{2,}[,;:.]?\s+(?:[A-Za-z]{2,}|…)|…\s+[a-z]{2,}/;

const filesOf = (folder: string): readonly string[] =>
	readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
		const path = join(folder, entry.name);
		if (entry.isDirectory()) return filesOf(path);
		return entry.name.endsWith(".ts") ? [path] : [];
	});

interface Node {
	readonly type: string;
	readonly start: number;
	readonly [key: string]: unknown;
}

const isNode = (value: unknown): value is Node =>
	typeof value === "object" && value !== null && typeof (value as { type?: unknown }).type === "string";

/** The first of what such a maker is given. */
const isNameGiven = (node: Node, child: Node): boolean =>
	node.type === "CallExpression" &&
	NAMED.has(calleeOf(node)) &&
	(node["arguments"] as readonly Node[])[0] === child;

/** Keys of records are read by the code and printed by nobody. */
const childrenOf = (node: Node): readonly Node[] =>
	Object.entries(node)
		.filter(([name]) => !(node.type === "Property" && name === "key"))
		.filter(([name]) => !(node.type === "SwitchCase" && name === "test"))
		.flatMap(([, child]) => child)
		.filter(isNode)
		.filter((child) => !isNameGiven(node, child));

/** The words of a literal, each value in it as `…`. */
const wordsOf = ({ type, value, quasis }: Node): string | undefined => {
	if (type === "Literal" && typeof value === "string") return value;
	if (type !== "TemplateLiteral") return undefined;
	return (quasis as readonly { readonly value: { readonly raw: string } }[])
		.map((piece) => piece.value.raw)
		.join("…");
};

const calleeOf = ({ callee }: Node): string => String((callee as { name?: string } | undefined)?.name);

/** Words that a file of rules is written with, verdicts, and what results find of a section of pipe. */
const OF_RULES: ReadonlySet<string> = new Set([
	...VERDICTS,
	"cement at surface",
	"outside the limits",
	"stated unfit",
	// The first sentence of several checks' explanations.
	"A record is held against what was designed; before the job is recorded the check does not apply.",
	...([checks, measures, vocabulary, limits].flatMap((room) =>
		Object.values(room).flatMap((words): readonly unknown[] =>
			Array.isArray(words) ? words : typeof words === "object" ? Object.keys(words) : [],
		),
	) as readonly string[]),
]);

const isGiven = (words: string): boolean =>
	OF_THE_DATA.has(words) || OF_RULES.has(words) || CITATION.test(words) || SAMPLE.test(words);

/** A piece of a file as it is written, to copy. */
const SAMPLE = /^(?:[a-z_]+: )?\{.*\}$/;

/** Where a constant or a value of a table comes from: the name it is cited by. */
const isOrigin = ({ type, properties }: Node): boolean =>
	type === "ObjectExpression" &&
	(properties as readonly { readonly key?: { name?: string }; readonly value?: { value?: unknown } }[]).some(
		({ key, value }) => key?.name === "kind" && /^(?:constant|catalogue)$/.test(String(value?.value)),
	);

/** The name of what is called, of a method without its object; empty for what is no call. */
const calledIn = (node: Node): string => {
	if (node.type !== "CallExpression") return "";
	const { property } = node["callee"] as { property?: { name?: string } };
	return property?.name ?? calleeOf(node);
};

const excepted = (node: Node, inFolder: string): boolean => {
	if (isOrigin(node)) return true;
	if (/^(?:Import|Export.*)Declaration$/.test(node.type) && isNode(node["source"])) return true;
	if (node.type === "TSLiteralType") return true;
	if (node.type === "NewExpression") return /^(?:(?:Type|Range)?Error)$/.test(calleeOf(node));
	// Lists of words that a definition may hold, and a word of it compared with one of them.
	if (node.type === "TSAsExpression") return (node["typeAnnotation"] as Node)["typeName"] !== undefined;
	if (node.type === "BinaryExpression") return /^[!=]==$/.test(String(node["operator"]));
	// By which word the members of a union are told apart.
	if (node.type === "Property" && /^(?:kind|form)$/.test(String((node["key"] as { name?: string }).name)))
		return true;
	// What a check is, for who writes rules, and what a formula is, for the appendix.
	if (inFolder === "rules" && node.type === "Property")
		return /^(?:title|looksAt|explain|name|expression|validity)$/.test(
			String((node["key"] as { name?: string }).name),
		);
	if (inFolder === "drawing" && node.type === "Property")
		if (/^(?:id|name)$/.test(String((node["key"] as { name?: string }).name))) return true;
	const makers = inFolder === "definition" ? FIELDS : DECLARED;
	return node.type === "CallExpression" && makers.has(calleeOf(node));
};

/** Phrases of a source text, each with its line. */
const phrasesIn = (
	name: string,
	text: string,
	within: (node: Node) => boolean = () => true,
): readonly string[] => {
	const found: string[] = [];
	const visit = (node: Node, inside: boolean): void => {
		if (excepted(node, name.split("/")[0] ?? "")) return;
		const words = wordsOf(node);
		// Names of characters stand in capitals, as the Unicode standard has them.
		if (inside && words !== undefined && PHRASE.test(words) && /[a-z]/.test(words) && !isGiven(words))
			found.push(`${name}:${text.slice(0, node.start).split("\n").length} ${words}`);
		const here = inside || within(node);
		for (const child of childrenOf(node)) visit(child, here);
	};
	const tree = parseAst(text, { lang: "ts" }) as unknown as Node;
	visit(tree, within(tree));
	return found;
};

const isPage = (path: string): boolean => PAGES.includes(path) || ROOMS.some((room) => path.startsWith(room));

describe("folders that hold no wording", () => {
	it.each(WORDLESS)("%s says everything by message", (folder) => {
		const files = filesOf(join(SRC, folder)).filter((path) => !isPage(relative(SRC, path)));
		expect(files.length).toBeGreaterThan(3);
		const phrases = files.flatMap((path) => phrasesIn(relative(SRC, path), readFileSync(path, "utf8")));
		expect(phrases).toEqual([]);
	});
});

describe("the calculation", () => {
	it("says by message what is wrong and what is left open", () => {
		const files = filesOf(join(SRC, "calc"));
		expect(files.length).toBeGreaterThan(50);
		const phrases = files.flatMap((path) =>
			phrasesIn(relative(SRC, path), readFileSync(path, "utf8"), (node) => SAYING.has(calledIn(node))),
		);
		expect(phrases).toEqual([]);
	});
});

/** What makes digits of a number: the units, the messages and the renderers do, nobody else. */
const FORMATTING = /\.(?:toFixed|toPrecision|toLocaleString)\(|Intl\.NumberFormat/;

describe("numbers", () => {
	it.each([...WORDLESS, "calc"])("%s formats none", (folder) => {
		const lines = filesOf(join(SRC, folder)).flatMap((path) =>
			readFileSync(path, "utf8")
				.split("\n")
				.flatMap((line, i) =>
					FORMATTING.test(line) ? [`${relative(SRC, path)}:${i + 1} ${line.trim()}`] : [],
				),
		);
		expect(lines).toEqual([]);
	});
});

describe("what is looked for", () => {
	it.each([
		["a sentence", 'const what = "the colon has no space";', 1],
		["a value in words", `const found = \`item \${n}\`;`, 1],
		["words of a choice", 'tell(n === 1 ? "is given" : "x");', 1],
		["a code", 'message("syntax/colon.what");', 0],
		["a path", `const file = \`seeds/\${name}.yaml\`;`, 0],
		["an import", 'import { a } from "./a b.ts";', 0],
		["a fault of the tool", 'throw new TypeError("no such unit");', 0],
		["a list of words that are data", 'const roles = ["rig up", "rig down"] as const;', 0],
		["a comparison with data", 'if (method === "sliding sleeve") stop();', 0],
		["a name of a character", 'const name = "SOFT HYPHEN";', 0],
	])("%s", (_, text, count) => {
		expect(phrasesIn("a.ts", text)).toHaveLength(count);
	});
});
