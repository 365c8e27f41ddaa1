import { describe, expect, it } from "vitest";
import type { Section } from "../../src/document/blocks.ts";
import type { PaperDocument } from "../../src/document/document.ts";
import type { Inline, QuantityText } from "../../src/document/inline.ts";
import type { Shape } from "../../src/document/shapes.ts";
import { loadWords } from "../../src/paper/words/words.ts";
import { composePapers } from "../../src/pipeline.ts";
import { SHEETS } from "../../src/render/pdf/design.ts";
import { placesIn } from "../../src/render/pdf/layout/arrange.ts";
import type { Laid } from "../../src/render/pdf/layout/laid.ts";
import { renderPdf } from "../../src/render/pdf/render-pdf.ts";
import { runningMatter } from "../../src/render/pdf/running.ts";
import { setPaper } from "../../src/render/pdf/set-paper.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { formatQuantity } from "../../src/units/format.ts";
import { readPdf } from "../render/read-pdf.ts";
import { composeOnce } from "../run/compose-once.ts";
import { findingsOf, STARTERS, type Starter, starterText, understandText } from "../starters.ts";

/** Least type of a slide, in drawings too [pt]. */
const LEAST = 20;

const paperOf = (
	starter: Starter,
	paper: "slides" | "notes" | "landowner",
	language: "en" | "es" = "en",
	units: "field" | "metric" = "field",
): PaperDocument => {
	const [made] = composeOnce(findingsOf(starter), [{ paper, language, units }]).documents;
	if (made === undefined) throw new Error("no slides");
	return made.paper;
};

const sizesIn = (shapes: readonly Shape[]): readonly number[] =>
	shapes.flatMap((shape) =>
		shape.kind === "group" ? sizesIn(shape.children) : shape.kind === "text" ? [shape.size] : [],
	);

const sizesOf = (item: Laid): readonly number[] => {
	if (item.kind === "text") return item.lines.flatMap((line) => line.runs.map(({ style }) => style.size));
	if (item.kind === "drawing") return sizesIn(item.drawing.shapes);
	return placesIn(item).flatMap((child) => sizesOf(child.item));
};

const EDITIONS = STARTERS.flatMap((starter) =>
	(["en", "es"] as const).flatMap((language) =>
		(["field", "metric"] as const).map((units) => [starter, language, units] as const),
	),
);

describe("slides", () => {
	it.each(EDITIONS)("of %s in %s, %s: a page each, nothing under 20 points", (starter, language, units) => {
		const document = paperOf(starter, "slides", language, units);
		expect(document.sections.length).toBeGreaterThanOrEqual(25);
		expect(document.sections.length).toBeLessThanOrEqual(35);
		const { pages, findings } = setPaper(document);
		expect(findings).toEqual([]);
		expect(pages.length).toBe(document.sections.length);
		const sizes = pages.flatMap(({ children }) => children.flatMap(({ item }) => sizesOf(item)));
		expect(sizes.length).toBeGreaterThan(300);
		expect(Math.min(...sizes)).toBeGreaterThanOrEqual(LEAST);
		const matter = runningMatter(document, SHEETS.screen);
		expect(matter.size).toBeGreaterThanOrEqual(LEAST);
		expect(matter.standing).toContain(document.imprint.digest);
	});

	it("are 16:9, tagged, and say on each which issue they are", async () => {
		const document = paperOf("horizontal", "slides");
		const { bytes, pages } = await renderPdf(document);
		const read = await readPdf(bytes);
		expect(Buffer.from(bytes).toString("latin1")).toContain("/MarkInfo");
		expect(SHEETS.screen.width / SHEETS.screen.height).toBeCloseTo(16 / 9, 6);
		for (const [i, text] of read.texts.entries()) {
			expect(text).toContain(`${i + 1} / ${pages}`);
			expect(text).toContain(document.imprint.digest);
		}
	});

	it("have room for a well with a very long name", () => {
		const document = paperOf("horizontal", "slides");
		const imprint = { ...document.imprint, well: "A well with a name that goes on and on ".repeat(4).trim() };
		const matter = runningMatter({ ...document, imprint }, SHEETS.screen);
		expect(matter.findings).toEqual([]);
		expect(matter.standing).toContain(imprint.digest);
	});

	it("promise nothing of the water while a verdict on it is open", () => {
		const text = starterText("horizontal").replace("base: 984 ft below ground", "base: 1300 ft below ground");
		const { findings } = understandText(text);
		if (findings === undefined) throw new Error("no findings");
		for (const paper of ["slides", "notes"] as const)
			for (const language of ["en", "es"] as const) {
				const [made] = composePapers(findings, [{ paper, language, units: "field" }]).documents;
				const said = renderText(made?.paper as PaperDocument);
				expect(said).toMatch(
					/does not yet show that your water is protected|todavía no muestra que su agua/u,
				);
				expect(said).not.toMatch(/stand between the well and your water|acero y cemento entre el pozo/u);
				expect(said).not.toMatch(/deeper than the protected water|más abajo que el agua protegida/u);
			}
	});

	it("show nothing that the packet may not: an entry for the regulator alone is in neither slides nor notes", () => {
		const text = starterText("horizontal")
			.replace("name: Windmill well,", "name: Zanthor well, papers: [regulator],")
			.replace("name: Sorrel 1\n", "name: Zanthor hole\n      papers: [regulator]\n")
			.replace("name: Friction reducer FR-1 (fictional)", "name: Zanthor reducer\n      papers: [regulator]")
			.replace(
				"{ role: Community line, name: Quillback Operating, phone: 555-0100, papers: [landowner, handout, crew] }",
				"{ role: Community line, name: Zanthor, phone: 555-0199, papers: [crew] }",
			);
		const { findings, diagnostics } = understandText(text);
		expect(diagnostics.filter(({ severity }) => severity === "error")).toEqual([]);
		if (findings === undefined) throw new Error("no findings");
		for (const paper of ["slides", "notes"] as const) {
			const [made] = composePapers(findings, [{ paper, language: "en", units: "field" }]).documents;
			const all = JSON.stringify(made?.paper);
			expect(all).not.toContain("Zanthor");
			expect(all).not.toContain("555-0199");
		}
	});

	it("name the one to call where the packet does", () => {
		expect(renderText(paperOf("horizontal", "slides"))).toContain("555-0100");
	});
});

describe("the words of steps and slides", () => {
	it("are of the same entries in both languages, with the same needs, pictures and owners", () => {
		for (const list of ["frames", "slides"] as const) {
			const shape = (language: "en" | "es") =>
				loadWords(language)
					[list]()
					.map(({ id, needs, words, plain: { ask, ...names } }) => ({
						id,
						needs,
						names,
						asks: ask !== undefined,
						words: Object.keys(words),
					}));
			expect(shape("es").length).toBeGreaterThan(15);
			expect(shape("es")).toEqual(shape("en"));
		}
	});
});

const quantities = (node: unknown): readonly QuantityText[] => {
	if (typeof node !== "object" || node === null) return [];
	const inline = node as Partial<Inline>;
	if (inline.kind === "quantity") return [inline as QuantityText];
	return Object.values(node).flatMap(quantities);
};

describe.each(STARTERS)("the notes of %s", (starter) => {
	const slides = paperOf(starter, "slides");
	const notes = paperOf(starter, "notes");

	it("have the same slides in the same order, each with a question and something to answer", () => {
		expect(notes.sections.map(({ id }) => id)).toEqual(slides.sections.map(({ id }) => id));
		for (const section of notes.sections) {
			const asked = section.blocks.find((block) => block.kind === "callout");
			expect(asked?.kind === "callout" ? asked.title : "", section.id).toContain("?");
			expect(JSON.stringify(asked), section.id).toMatch(/"text":"[^"]{8}|"kind":"quantity"/u);
		}
	});

	it("give every number that a slide says, as said and exactly, with how it was worked", () => {
		let numbers = 0;
		for (const slide of slides.sections) {
			const said = quantities(slide.blocks.map((block) => (block.kind === "figure" ? block.caption : block)));
			const note = notes.sections.find(({ id }) => id === slide.id) as Section;
			const table = note.blocks.find((block) => block.kind === "table");
			const exact = quantities(table?.kind === "table" ? table.rows.map(({ cells }) => cells["exact"]) : []);
			for (const { key, value } of said) {
				if (key === undefined) continue;
				numbers += 1;
				expect(exact.find((each) => each.key === key)?.value, `${slide.id}: ${key}`).toBe(value);
			}
			if (table?.kind === "table")
				for (const { cells } of table.rows) {
					const how = cells["how"];
					expect(how?.kind === "text" ? how.text.length : 0, slide.id).toBeGreaterThan(2);
				}
		}
		expect(numbers).toBeGreaterThan(25);
	});

	it("say the digits that the packet says, where both say a number in one unit", () => {
		const packet = quantities(paperOf(starter, "landowner").sections);
		let compared = 0;
		for (const said of quantities(slides.sections)) {
			const other = packet.find(
				({ key, style }) =>
					key === said.key &&
					key !== undefined &&
					style?.unit === said.style?.unit &&
					style?.significant === said.style?.significant,
			);
			if (other === undefined) continue;
			compared += 1;
			expect(formatQuantity(said, "field").number, said.key).toBe(formatQuantity(other, "field").number);
		}
		expect(compared).toBeGreaterThan(5);
	});
});
