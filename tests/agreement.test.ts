import { describe, expect, it } from "vitest";
import { isTable } from "../src/cite/known.ts";
import type { Block, Cell } from "../src/document/blocks.ts";
import { PAPERS, type PaperDocument, readBy } from "../src/document/document.ts";
import type { Inline, QuantityText } from "../src/document/inline.ts";
import { attachmentsOf } from "../src/pipeline.ts";
import { stringsOf } from "./render/printed-strings.ts";
import { readPdf } from "./render/read-pdf.ts";
import { composeOnce } from "./run/compose-once.ts";
import { documentOf, EDITIONS } from "./run/editions.ts";
import { setOnce } from "./run/set-once.ts";
import { findingsOf, STARTERS, type Starter } from "./starters.ts";

/** Every number printed outside drawings, with its key. */
const numbersOf = (blocks: readonly Block[]): QuantityText[] =>
	blocks.flatMap((block): QuantityText[] => {
		switch (block.kind) {
			case "paragraph":
				return block.children.flatMap(ofInline);
			case "list":
				return block.items.flatMap(numbersOf);
			case "facts":
			case "figures":
				return block.items.flatMap((item) => ofCell(item.value));
			case "table":
				return block.rows.flatMap((row) => Object.values(row.cells).flatMap(ofCell));
			case "callout":
			case "columns":
				return numbersOf(block.blocks);
			case "beside":
				return numbersOf([...block.left, ...block.right]);
			default:
				return [];
		}
	});
const ofInline = (inline: Inline): QuantityText[] =>
	inline.kind === "quantity" ? [inline] : "children" in inline ? inline.children.flatMap(ofInline) : [];
const ofCell = (cell: Cell): QuantityText[] =>
	cell.kind === "quantity" ? [cell] : cell.kind === "rich" ? cell.children.flatMap(ofInline) : [];

const papersOf = (starter: Starter): readonly PaperDocument[] =>
	composeOnce(
		findingsOf(starter),
		PAPERS.map((paper) => ({
			paper,
			language: "en",
			units: "field",
			...(paper === "crew" && starter === "horizontal" ? { job: "pumping" } : {}),
		})),
	).documents.map(({ paper }) => paper);

const squash = (text: string): string => text.replaceAll(/\s+/gu, "");

describe.each(STARTERS)("the papers of %s", (starter) => {
	it("print the value of the results wherever they print a key, and share keys", () => {
		const { index } = findingsOf(starter);
		const printedIn = new Map<string, Set<string>>();
		let numbers = 0;
		for (const document of papersOf(starter))
			for (const number of document.sections.flatMap((section) => numbersOf(section.blocks))) {
				numbers += 1;
				if (number.key === undefined) continue;
				const value = index.byKey.get(number.key);
				expect(value, number.key).toBeDefined();
				if (value !== undefined && !isTable(value)) {
					expect(number.value, number.key).toBe(value.value);
					expect(number.dimension, number.key).toBe(value.dimension);
				}
				printedIn.set(number.key, (printedIn.get(number.key) ?? new Set()).add(document.paper));
			}
		expect(numbers).toBeGreaterThan(200);
		const shared = [...printedIn.values()].filter((papers) => papers.size > 1);
		expect(shared.length).toBeGreaterThan(5);
		const unkeyed = papersOf(starter)
			.filter((document) => readBy(document.paper) !== "regulator")
			.flatMap((document) => document.sections.flatMap((section) => numbersOf(section.blocks)))
			.filter((number) => number.key === undefined && number.dimension !== "count");
		expect(unkeyed).toEqual([]);
	});
});

/** Whether a text prints a string: whole, or parted once by the head and foot of pages that it runs over. */
const prints = (text: string, string: string): boolean => {
	if (text.includes(string)) return true;
	let [held, most] = [0, string.length];
	while (most - held > 1) {
		const half = Math.floor((held + most) / 2);
		if (text.includes(string.slice(0, half))) held = half;
		else most = half;
	}
	const LINE = 40;
	return held >= LINE && string.length - held >= LINE && text.includes(string.slice(held));
};

it.each(EDITIONS)(
	"$title: prints every string that it is made of, and sets without a fault",
	async (edition) => {
		const document = documentOf(edition);
		const { bytes, findings } = await setOnce(document, attachmentsOf(findingsOf(edition.starter), document));
		expect(findings).toEqual([]);
		const text = squash((await readPdf(bytes)).texts.join(" "));
		const { units, language } = document;
		const strings = document.sections.flatMap((section) => stringsOf(section.blocks, { units, language }));
		expect(strings.length).toBeGreaterThan(30);
		expect(strings.map(squash).filter((string) => string !== "" && !prints(text, string))).toEqual([]);
	},
);
