import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { loadCatalog } from "../../src/catalog/load-catalog.ts";
import type { Block } from "../../src/document/blocks.ts";
import { LANGUAGES, PAPERS, type Paper } from "../../src/document/document.ts";
import { keysIn } from "../../src/paper/places.ts";
import { loadWords } from "../../src/paper/words/words.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { composeOnce } from "../run/compose-once.ts";
import { findingsOf, STARTERS } from "../starters.ts";

const TEMPLATES = new URL("../../templates/", import.meta.url);
const others = LANGUAGES.filter((language) => language !== "en");

const keysOf = (node: unknown, path = ""): string[] =>
	typeof node === "object" && node !== null
		? Object.entries(node).flatMap(([key, child]) => keysOf(child, path === "" ? key : `${path}.${key}`))
		: [path];
const labelsOf = (language: string): string[] =>
	keysOf(parse(readFileSync(new URL(`${language}/labels.yaml`, TEMPLATES), "utf8")));
const filesOf = (language: string): string[] =>
	readdirSync(new URL(`${language}/`, TEMPLATES), { recursive: true, encoding: "utf8" })
		.filter((name) => /\.(?:hbs|yaml)$/u.test(name))
		.sort();

/** `{{#if lateral}}` and `{{lateral}}`: what a template takes from the well, each as often as it does. */
const named = (text: string): string[] =>
	[...text.matchAll(/\{\{(#?\w+)\s*(\w*)\}\}/gu)].map(([, first, second]) => `${first} ${second}`).sort();

/** In a drawing a longer name may push a label out: of figures the captions are compared. */
const withoutFigures = (blocks: readonly Block[]): readonly Block[] =>
	blocks
		.flatMap((block) => (block.kind === "beside" ? [...block.left, ...block.right] : [block]))
		.map(
			(block): Block => (block.kind === "figure" ? { kind: "paragraph", children: block.caption } : block),
		);

describe.each(others)("%s beside English", (language) => {
	const here = loadWords(language);
	const english = loadWords("en");

	it("has the same labels, in the same order", () => {
		expect(labelsOf(language).length).toBeGreaterThan(900);
		expect(labelsOf(language)).toEqual(labelsOf("en"));
	});

	/** Words that English has outside the templates, in the rule sets and beside each formula: own-lists.test.ts. */
	const OWN_LISTS = ["formulas.yaml", "requirements.yaml"];

	it("has the same files and its own lists, and each template takes the same values", () => {
		expect(filesOf(language)).toEqual([...filesOf("en"), ...OWN_LISTS].sort());
		let read = 0;
		for (const file of filesOf(language).filter((name) => name.endsWith(".md.hbs"))) {
			read += 1;
			const [theirs, ours] = ["en", language].map((folder) =>
				readFileSync(new URL(`${folder}/${file}`, TEMPLATES), "utf8"),
			);
			expect(named(ours ?? ""), file).toEqual(named(theirs ?? ""));
		}
		expect(read).toBeGreaterThan(20);
	});

	it.each(PAPERS)("has the pages of the %s paper in the same order", (paper) => {
		const shape = (words: typeof here) => {
			const { setting, numbered, sections } = words.order(paper);
			return {
				setting,
				numbered,
				sections: sections.map(({ title: _, titleDone: __, continued, ...rest }) => ({
					...rest,
					goesOn: continued !== undefined,
				})),
			};
		};
		expect(shape(here)).toEqual(shape(english));
	});

	it("has the same questions", () => {
		const shape = (words: typeof here) =>
			words
				.questions()
				.map(({ questions }) =>
					questions.map(({ needs, own, answer }) => ({ needs, own, answered: answer !== undefined })),
				);
		expect(shape(here)).toEqual(shape(english));
	});

	it("has every word of the glossary", () => {
		const terms = loadCatalog().value?.glossary ?? [];
		expect(terms.length).toBeGreaterThan(40);
		expect(terms.filter((term) => term.words[language] === undefined)).toEqual([]);
	});

	// In a drawing a longer name may push a label of little weight out; what a drawing must keep is tested with it.
	it.each(STARTERS)("prints the same values as English, section by section, for %s", (starter) => {
		const findings = findingsOf(starter);
		const keys = (spoken: (typeof LANGUAGES)[number], paper: Paper) =>
			composeOnce(findings, [{ paper, language: spoken, units: "field" }]).documents.flatMap((document) =>
				document.paper.sections.map(({ id, blocks }) => ({
					id,
					keys: keysIn(withoutFigures(blocks)).sort(),
				})),
			);
		for (const paper of PAPERS) {
			const ours = keys(language, paper);
			if (paper !== "transmittal")
				expect(ours.flatMap((section) => section.keys).length, paper).toBeGreaterThan(3);
			expect(ours, paper).toEqual(keys("en", paper));
		}
	});

	it("says in each paper that English is the authoritative version", () => {
		for (const paper of PAPERS) {
			const [document] = composeOnce(findingsOf("horizontal"), [
				{ paper, language, units: "field" },
			]).documents;
			const text = document === undefined ? "" : renderText(document.paper).replaceAll(/\s+/gu, " ");
			expect(text, paper).toMatch(/(?:la versión en inglés|versión en inglés es la que vale)/iu);
			expect(text, paper).toMatch(/revisión (?:de una persona )?bilingüe/u);
		}
	});
});
