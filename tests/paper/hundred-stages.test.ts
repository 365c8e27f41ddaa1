import { describe, expect, test } from "vitest";
import type { PaperDocument } from "../../src/document/document.ts";
import { composePapers } from "../../src/pipeline.ts";
import { setPaper } from "../../src/render/pdf/set-paper.ts";
import { blocksOf, textsOf } from "../render/laid-places.ts";
import { understandWell } from "../wells.ts";

const paperOf = (...edits: Parameters<typeof understandWell> extends [string, ...infer E] ? E : never) => {
	const { findings, diagnostics } = understandWell("hundred-stages", ...edits);
	if (findings === undefined) throw new Error(diagnostics.map(({ what }) => what).join("; "));
	const [document] = composePapers(findings, [
		{ paper: "regulator-appendix", language: "en", units: "field" },
	]).documents;
	if (document === undefined) throw new Error("no paper");
	return document.paper;
};

/** A section with only the tables of these captions. */
const only = (paper: PaperDocument, ...captions: readonly string[]): PaperDocument => ({
	...paper,
	sections: paper.sections.flatMap((section) => {
		const blocks = section.blocks.filter(
			(block) => block.kind === "table" && captions.some((caption) => block.caption.startsWith(caption)),
		);
		return blocks.length === 0 ? [] : [{ ...section, blocks }];
	}),
});

describe("a hundred stages", () => {
	const paper = paperOf();

	test.each([
		["Stages, deepest first", "Plug"],
		["Expected pressure of each stage", "Stage"],
		["Clusters of each stage", "Stage"],
	])(
		"%s: each stage once, in order down each column, the head on every page, nothing cut",
		async (caption, head) => {
			const document = only(paper, caption);
			expect(document.sections).toHaveLength(1);
			const { pages, findings } = await setPaper(document);
			expect(findings).toEqual([]);
			expect(pages.length).toBeGreaterThan(1);
			const withRows = pages.filter((page) =>
				textsOf([page]).some(({ source }) => /^\d{1,3}$/u.test(source.trim())),
			);
			expect(withRows.length).toBeGreaterThan(1);
			for (const page of withRows)
				expect(textsOf([page]).some(({ source }) => source.trim().startsWith(head))).toBe(true);
			// The numbers, page by page and down each column before the next: a long narrow table stands two abreast.
			const numbers = pages.flatMap((page) =>
				blocksOf([page])
					.flatMap(({ item, x }) => (item.kind === "text" ? [{ x, text: item.source.trim() }] : []))
					.filter(({ text }) => /^\d{1,3}$/u.test(text))
					.toSorted((a, b) => a.x - b.x)
					.map(({ text }) => text),
			);
			const stages = Array.from({ length: 100 }, (_, i) => String(i + 1));
			let at = 0;
			for (const stage of stages) {
				const found = numbers.indexOf(stage, at);
				expect(found, `stage ${stage}`).toBeGreaterThanOrEqual(at);
				at = found + 1;
			}
		},
	);
});

describe("a well that is treated down its own pipe", () => {
	const PIPE =
		"treating_string: { pipe: [{ od: 2 7/8 in, weight: 6.5 lb/ft, wall: 0.217 in, grade: L80, connection: EUE, coupling_od: 3.668 in, condition: new, ratings: { internal_yield: 10570 psi, collapse: 11170 psi, tension: 144960 lbf, source: data sheet (fictional) }, from: surface, to: 9000 ft }], packer: { depth: 8900 ft, rating: 10000 psi } }\n  base_fluid: { kind";

	test("names it and its packer among the elements, and watches the annulus around it", () => {
		const paper = paperOf(
			["base_fluid: { kind", PIPE],
			[
				"    - { element: casing, factor: 0.85 }",
				"    - { element: treating string, factor: 0.8 }\n    - { element: packer, factor: 0.9 }\n    - { element: casing, factor: 0.85 }",
			],
			[
				"    - { between: [production, intermediate]",
				"    - { between: [treating-string, production], predicted_rise: 300 psi, relief: 500 psi, stop_above: 800 psi }\n    - { between: [production, intermediate]",
			],
		);
		const cells = paper.sections
			.flatMap(({ blocks }) => blocks)
			.flatMap((block) => (block.kind === "beside" ? [...block.left, ...block.right] : [block]))
			.flatMap((block) =>
				block.kind === "table" && /Elements exposed|Annulus pressure/u.test(block.caption)
					? block.rows.flatMap((row) => Object.values(row.cells))
					: [],
			);
		const texts = cells.flatMap((cell) => (cell.kind === "text" ? [cell.text] : []));
		expect(texts).toEqual(
			expect.arrayContaining(["Treating string", "Packer", "Treating string – Production"]),
		);
		expect(texts).toContain("limits the job");
	});
});

describe("a well that is opened by sleeves", () => {
	test("prints each seat and ball with its bearing and the room on its way", () => {
		const paper = paperOf(
			["method: plug and perforate", "method: sliding sleeve"],
			[
				"    treatment:\n",
				"    sleeves: [{ stage: 1, seat: 2.000 in }, { stage: 2, seat: 2.250 in, ball: 2.375 in }, { stage: 3, seat: 2.500 in, ball: 2.625 in }]\n    treatment:\n",
			],
		);
		const [sleeves] = only(paper, "Sleeves and their balls").sections.flatMap(({ blocks }) => blocks);
		if (sleeves?.kind !== "table") throw new Error("no table of sleeves");
		const printed = sleeves.rows.map(({ cells }) =>
			["seat", "ball", "ball_bearing", "ball_room"].map((id) => {
				const cell = cells[id];
				return cell?.kind === "quantity" ? Number(cell.value.toFixed(4)) : undefined;
			}),
		);
		expect(printed).toEqual([
			[2, undefined, undefined, undefined],
			[2.25, 2.375, 0.125, 0.125],
			[2.5, 2.625, 0.125, undefined],
		]);
	});
});
