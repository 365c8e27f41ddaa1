import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { JURISDICTION_CODES, loadJurisdictions, loadPractice } from "../../../src/catalog/jurisdictions.ts";
import { SETBACK_KINDS } from "../../../src/catalog/limits/vocabulary.ts";
import { definitionJsonSchema } from "../../../src/definition/json-schema.ts";
import { NEIGHBOR_KINDS } from "../../../src/definition/neighbors.ts";
import { PAPERS } from "../../../src/document/document.ts";
import { DECLARED } from "../../../src/messages/es/declared.ts";
import { jobName, jobsOfWell } from "../../../src/paper/jobs.ts";
import { loadWords } from "../../../src/paper/words/words.ts";
import { EVERY_FORMULA } from "../../../src/rules/every-formula.ts";
import { composeOnce } from "../../run/compose-once.ts";
import { findingsOf, STARTERS, type Starter, starterText } from "../../starters.ts";
import { told } from "../../told.ts";
import { ENGLISH } from "./english-words.ts";

/*
 * A Spanish paper holds no English but what a person typed into the definition, and the titles and citations of sources, which
 * stand in the language they were published in. Words that bind sentences together tell the languages apart: English cannot
 * do without them and Spanish has none of them.
 */

/** Fields of a document that hold no words: they are read by the program. */
const NO_WORDS = new Set([
	"kind",
	"id",
	"key",
	"to",
	"dimension",
	"unit",
	"verdict",
	"tone",
	"d",
	"language",
	// The names of a job's file and of its sheet, printed nowhere.
	"part",
	"sheet",
	"file",
	"version",
	"fingerprint",
	"paper",
	"part",
	"pattern",
	"lithology",
	"hash",
	// What was typed, letter for letter.
	"as_written",
]);

const stringsIn = (node: unknown, name = ""): readonly string[] => {
	if (NO_WORDS.has(name)) return [];
	if (typeof node === "string") return [node];
	if (typeof node !== "object" || node === null) return [];
	if (Array.isArray(node)) return node.flatMap((child) => stringsIn(child, name));
	// A group of shapes is named for the program, as `label line 1`; its words are in its texts.
	if ("kind" in node && node.kind === "group" && "children" in node)
		return stringsIn(node.children, "children");
	return Object.entries(node).flatMap(([key, child]) => stringsIn(child, key));
};

const plain = (text: string): string => text.replaceAll(/\s+/gu, " ").trim();

/** Words a person typed: every text of the definition and of the files beside it, the longest first. */
const typedIn = (starter: Starter): readonly string[] => {
	const tree: unknown = parse(starterText(starter));
	return [...new Set(stringsIn(tree).map(plain))].filter((text) => /\p{L}{2}/u.test(text));
};

/** Titles and citations of what was published. */
const published = (): readonly string[] => {
	const sources: unknown = parse(
		readFileSync(new URL("../../../seeds/sources.yaml", import.meta.url), "utf8"),
	);
	const rules = [...(loadJurisdictions(JURISDICTION_CODES).value ?? []), ...(loadPractice().value ?? [])];
	return [
		...stringsIn(sources),
		...rules.flatMap((set) => [
			set.name,
			set.agency,
			...set.rules.flatMap(({ citation, forms = [] }) => [told(citation), ...forms]),
		]),
	].map(plain);
};

const known = published();

const englishIn = (starter: Starter, document: unknown): readonly string[] => {
	const given = [...new Set([...typedIn(starter), ...known])].sort((a, b) => b.length - a.length);
	// A value inside a typed text is printed in the units of the paper.
	const withValues = typedIn(starter)
		.filter((text) => /\d \p{L}/u.test(text))
		.map(
			(text) =>
				new RegExp(
					text.replaceAll(/[.*+?^${}()|[\]\\]/gu, "\\$&").replaceAll(/\d[\d,\\.]* [\p{L}³/]+/gu, ".{2,14}"),
					"gu",
				),
		);
	return [...new Set(stringsIn(document).map(plain))]
		.filter((text) => text.search(ENGLISH) >= 0)
		.filter((text) => {
			const rest = withValues.reduce(
				(left, each) => left.replaceAll(each, "·"),
				given.reduce((left, each) => (left.includes(each) ? left.replaceAll(each, "·") : left), text),
			);
			return rest.search(ENGLISH) >= 0;
		});
};

describe.each(STARTERS)("the Spanish papers of %s", (starter) => {
	it.each(PAPERS)("%s", (paper) => {
		const findings = findingsOf(starter);
		const readers = paper === "crew" ? jobsOfWell(findings.well).map((job) => ({ job: jobName(job) })) : [{}];
		const requests = readers.map(
			(reader) => ({ paper, language: "es", units: "metric", ...reader }) as const,
		);
		const { documents } = composeOnce(findings, requests);
		expect(documents.length).toBeGreaterThan(0);
		expect(documents.flatMap((document) => englishIn(starter, document.paper))).toEqual([]);
	});
});

/** Words that a field of the definition chooses from: they are the program's words, and no person's. */
const choices = (node: unknown = definitionJsonSchema()): readonly string[] => {
	if (typeof node !== "object" || node === null) return [];
	const own =
		"enum" in node && Array.isArray(node.enum) ? node.enum.filter((each) => typeof each === "string") : [];
	return [...own, ...Object.values(node).flatMap(choices)];
};

describe("words that a definition is written with", () => {
	/** Typed as words of their own in a starter: what a contractor does, a proppant's kind, that no mud was lost. */
	const typed = new Set(["cementing", "drilling", "completion", "sand", "none"]);
	const english = new Set(choices().filter((word) => /[a-z]{3}/u.test(word) && !typed.has(word)));
	const spanish = loadWords("es");
	/** The same in both languages. */
	const alike = (word: string): boolean => spanish.findLabel(`given.${word}`) === word;

	it.each(STARTERS)("are printed in Spanish, for %s", (starter) => {
		const { documents } = composeOnce(
			findingsOf(starter),
			PAPERS.map((paper) => ({ paper, language: "es", units: "metric" }) as const),
		);
		const said = documents.flatMap(({ paper }) => stringsIn(paper).map(plain));
		expect(english.size).toBeGreaterThan(100);
		expect([...new Set(said)].filter((text) => english.has(text) && !alike(text))).toEqual([]);
	});
});

/** The texts of every module in a folder of the source. */
const sourcesIn = (folder: string): readonly string[] => {
	const src = new URL(`../../../src/${folder}/`, import.meta.url);
	return readdirSync(src, { recursive: true, encoding: "utf8" })
		.filter((name) => name.endsWith(".ts"))
		.map((name) => readFileSync(new URL(name, src), "utf8"));
};

describe("texts that are declared in English", () => {
	const questions = [
		...(loadJurisdictions(JURISDICTION_CODES).value ?? []),
		...(loadPractice().value ?? []),
	].flatMap(({ rules }) =>
		rules.flatMap(({ limit }) => (limit.form === "judgement" ? [limit.question] : [])),
	);
	it.each([...new Set(questions)])("%s", (question) => {
		expect(DECLARED.get(question)).toBeDefined();
	});
	it("beside formulas have their Spanish", () => {
		const formulas = [...EVERY_FORMULA.values()];
		expect(formulas.length).toBeGreaterThan(400);
		const declared = formulas.flatMap(({ expression, source }) => [expression, source.at ?? ""]);
		const lacking = declared.filter((text) => text.search(ENGLISH) >= 0 && !DECLARED.has(text));
		expect([...new Set(lacking)]).toEqual([]);
		expect([...DECLARED.values()].filter((text) => text.search(ENGLISH) >= 0)).toEqual([]);
	});
	it("are declared somewhere", () => {
		const declared = new Set([
			...[...EVERY_FORMULA.values()].flatMap(({ expression, source, inputs, validity }) => [
				expression,
				source.at,
				validity,
				...Object.keys(inputs),
			]),
			...questions,
			...SETBACK_KINDS,
			...NEIGHBOR_KINDS,
			...(loadPractice().value ?? []).flatMap(({ rules }) => rules.map(({ citation }) => told(citation))),
		]);
		// Constants, kinds of value and the cases of formulas are words in the code.
		const code = ["calc", "rules", "well", "catalog"].flatMap(sourcesIn).join("\n");
		const isInCode = (text: string) =>
			[
				text,
				text.replaceAll(" ", "-"),
				text
					.replace(/^(?:.*: |roughness of )/u, "")
					.replace(/ pipe$/u, "")
					.replaceAll(" ", "-"),
			].some((each) =>
				new RegExp(`(?<![\\w-])${each.replaceAll(/[.*+?^${}()|[\]\\]/gu, "\\$&")}(?![\\w-])`, "u").test(code),
			);
		const lacking = [...DECLARED.keys()].filter((text) => !declared.has(text) && !isInCode(text));
		expect(lacking).toEqual([]);
	});
});
