import { beforeAll, describe, expect, it } from "vitest";
import type { Block } from "../../src/document/blocks.ts";
import { renderPdf } from "../../src/render/pdf/render-pdf.ts";
import { printCell, printingOf } from "../../src/render/print/print-text.ts";
import { stringsOf } from "./printed-strings.ts";
import { elementsOf, objectsOf, type ReadPdf, readPdf } from "./read-pdf.ts";
import { drawing, samplePaper, surveyTable } from "./sample-paper.ts";

const paper = samplePaper("office");
const attachment = new TextEncoder().encode("name: Quarry Lantern 12-4H\n");
let read: ReadPdf;
let bytes: Uint8Array;
const table = (id: string): Extract<Block, { kind: "table" }> => {
	const found = paper.sections.flatMap((s) => s.blocks).find((b) => b.kind === "table" && b.id === id);
	if (found?.kind !== "table") throw new Error(id);
	return found;
};
/** Micro sign and Greek mu share a glyph; a reader may give back either. */
const squash = (text: string): string => text.normalize("NFKC").replace(/\s+/g, "");

beforeAll(async () => {
	const rendered = await renderPdf(paper, {
		attachments: [
			{
				name: "well.yaml",
				bytes: attachment,
				mime: "application/yaml",
				description: "The definition",
				relationship: "Source",
			},
		],
	});
	expect(rendered.findings).toEqual([]);
	bytes = rendered.bytes;
	read = await readPdf(bytes);
	expect(read.pages).toBe(rendered.pages);
});

describe("the file", () => {
	it("is tagged, has language, title and a date that is the paper's own", () => {
		expect(read.marked).toBe(true);
		expect(read.info["PDFFormatVersion"]).toBe("1.7");
		expect(read.info["Language"]).toBe("en-US");
		expect(read.info["Title"]).toBe("Well construction and stimulation plan – Quarry Lantern 12-4H");
		expect(read.info["Author"]).toBe("Bluestem & Rye Operating (fictional)");
		expect(read.info["CreationDate"]).toBe("D:20260302000000Z");
	});

	it("writes well-formed metadata, ampersands and all", () => {
		expect(read.xmp).toContain("Bluestem &#38; Rye");
		expect(read.xmp).not.toMatch(/&(?!#?\w+;)/);
	});

	it("carries its definition", () => {
		expect(Object.keys(read.attachments)).toEqual(["well.yaml"]);
		expect(Buffer.from(read.attachments["well.yaml"] ?? []).equals(Buffer.from(attachment))).toBe(true);
	});

	it("has the sections as bookmarks, with their headings below", () => {
		expect(read.outline).toEqual([
			{ title: "1 Summary of the plan", items: [] },
			{ title: "2 Water, and how it is kept apart", items: ["Strings"] },
			{ title: "3 Survey", items: ["Attendance"] },
		]);
	});

	it("links to places that exist", () => {
		const inside = read.links.flat().filter((target) => !target.startsWith("http"));
		expect(inside).toEqual(["summary", "water", "survey", "water"]);
		expect(read.destinations).toEqual(
			expect.arrayContaining(["summary", "water", "survey", "t-casing", "f-close-up", "attendance"]),
		);
		expect(read.links.flat()).toContain("https://example.org/permit");
	});
});

describe("the structure", () => {
	it("has one title and the headings in order", () => {
		expect(elementsOf(read.structure, "H1").map((e) => e.text)).toEqual([paper.imprint.title]);
		expect(elementsOf(read.structure, "H2").map((e) => e.text)).toEqual([
			"1 Summary of the plan",
			"2 Water, and how it is kept apart",
			"3 Survey",
		]);
		expect(elementsOf(read.structure, "H3").map((e) => e.text)).toEqual(["Strings", "Attendance"]);
		expect(elementsOf(read.structure, "H4").map((e) => e.text)).toEqual(["What was assumed"]);
	});

	it("takes the reader of headings down one level at a time, however small a heading is set", async () => {
		const blocks: readonly Block[] = [
			{ kind: "heading", level: 3, text: "Small" },
			{ kind: "heading", level: 2, text: "Large" },
			{ kind: "heading", level: 3, text: "Under it" },
		];
		const { bytes } = await renderPdf({ ...paper, sections: [{ id: "s", title: "Heads", blocks }] });
		const { structure } = await readPdf(bytes);
		expect(elementsOf(structure, "H3").map(({ text }) => text)).toEqual(["Small", "Large"]);
		expect(elementsOf(structure, "H4").map(({ text }) => text)).toEqual(["Under it"]);
	});

	it("gives the contents as links that name the right pages", () => {
		const entries = elementsOf(read.structure, "TOCI").map((e) => e.text);
		expect(entries).toHaveLength(3);
		for (const [i, section] of paper.sections.entries()) {
			const page =
				read.structure.findIndex((tree) =>
					elementsOf([tree], "H2").some((h) => h.text.endsWith(section.title)),
				) + 1;
			expect(entries[i]).toBe(`${section.number} ${section.title} ${page}`);
		}
		expect(elementsOf(elementsOf(read.structure, "TOCI"), "Link")).toHaveLength(3);
	});

	it("gives the figure's text alternative", () => {
		const figures = elementsOf(read.structure, "Figure");
		expect(figures.map((f) => f.alt)).toEqual([`${drawing.title}. ${drawing.alternative}`]);
	});

	it("gives every cell of a table that runs over pages, its head once", () => {
		const table = surveyTable(70);
		const printing = printingOf(paper);
		const onPages = elementsOf(read.structure, "Table").filter((t) =>
			elementsOf([t], "TR").some((r) => r.children.length === table.columns.length),
		);
		const rows = onPages.flatMap((t) => elementsOf([t], "TR"));
		const heads = rows.filter((row) => row.children.every((cell) => cell.role === "TH"));
		expect(heads.map((row) => row.children.map((c) => c.text))).toEqual([
			[
				"Station",
				"Measured depth ft",
				"True vertical depth ft",
				"Inclination °",
				"Azimuth °",
				"Dogleg °/100 ft",
				"How known",
			],
		]);
		const cells = rows.filter((row) => !heads.includes(row)).map((row) => row.children.map((c) => c.text));
		const wanted = table.rows.map((row) =>
			table.columns.map((column) => printCell(row.cells[column.id], printing, column)),
		);
		expect(cells).toEqual(wanted);
		expect(rows.at(-1)?.children.map((c) => c.role)).toEqual(["TH", "TD", "TD", "TD", "TD", "TD", "TD"]);
	});

	it("keeps every row of a table equally long, empty cells and subheads included", () => {
		// pdf.js leaves out elements without content, so the rows are read from the file itself.
		const rows = objectsOf(bytes).filter(({ role }) => role === "TR");
		const { columns, rows: body } = table("t-casing");
		const casing = rows.slice(0, body.length + 1);
		expect(casing.map(({ children }) => children)).toEqual(casing.map(() => columns.length));
		const signing = rows.slice(-7);
		expect(signing.map(({ children }) => children)).toEqual([3, 3, 3, 3, 3, 3, 3]);
		expect(rows).toHaveLength(body.length + 1 + 71 + 7);
	});

	it("labels and bodies its list items", () => {
		const items = objectsOf(bytes).filter(({ role }) => role === "LI");
		expect(items.length).toBeGreaterThan(10);
		for (const { children } of items) expect(children).toBeGreaterThanOrEqual(2);
	});
});

describe("the print", () => {
	it("holds every word and number of the paper", () => {
		const printed = squash(read.texts.join(" "));
		const strings = paper.sections.flatMap((s) => [s.title, ...stringsOf(s.blocks)]);
		expect(strings.length).toBeGreaterThan(600);
		expect(strings.filter((text) => !printed.includes(squash(text)))).toEqual([]);
	});

	it("says on every page whose paper it is, how far it may be relied on, and which page", () => {
		for (const [i, text] of read.texts.entries()) {
			for (const words of [
				paper.imprint.operator,
				paper.imprint.well,
				"API 99-123-45678",
				paper.imprint.title,
				paper.imprint.caution,
				"draft",
				"revision B",
				paper.imprint.digest,
				`page ${i + 1} of ${read.pages}`,
			]) {
				expect(squash(text)).toContain(squash(words));
			}
		}
	});
});
