import { createElement } from "react";
import { describe, expect, it } from "vitest";
import type { Block, Cell } from "../../src/document/blocks.ts";
import type { Imprint, PaperDocument } from "../../src/document/document.ts";
import { FAMILY } from "../../src/measure/faces.ts";
import { textWidth } from "../../src/measure/text-width.ts";
import { auditPages, type LayoutFinding } from "../../src/render/pdf/audit.ts";
import { Pages, Root, type, type WordStyle, Words } from "../../src/render/pdf/components/primitives.tsx";
import { DESIGNS, MEASURE } from "../../src/render/pdf/design.ts";
import { expanded } from "../../src/render/pdf/expand.ts";
import { setPaper } from "../../src/render/pdf/layout.ts";
import type { LayoutNode } from "../../src/render/pdf/layout-node.ts";
import { layoutPages, prepareEngine } from "../../src/render/pdf/pins.ts";
import { runningMatter } from "../../src/render/pdf/running.ts";
import { drawing, p, samplePaper } from "./sample-paper.ts";

const withBlocks = (...blocks: readonly Block[]): PaperDocument => ({
	...samplePaper(),
	sections: [{ id: "s", title: "Faults", blocks }],
});

const findingsOf = async (...blocks: readonly Block[]): Promise<readonly LayoutFinding[]> =>
	(await setPaper(withBlocks(...blocks))).findings;

const table = (...cells: readonly Cell[]): Block => ({
	kind: "table",
	caption: "Planted",
	columns: cells.map((_, i) => ({ id: `c${i}`, head: "Head", width: 1, kind: "text" })),
	rows: [{ cells: Object.fromEntries(cells.map((cell, i) => [`c${i}`, cell])) }],
});

const linesIn = (node: LayoutNode): readonly string[] => [
	...(node.lines ?? []).map((line) => line.string),
	...(node.children ?? []).flatMap(linesIn),
];

describe("the audit of the set page", () => {
	it("passes the sample in every setting and language", async () => {
		for (const setting of ["office", "public", "field"] as const) {
			for (const language of ["en", "es"] as const) {
				const { findings } = await setPaper(samplePaper(setting, language));
				expect(findings).toEqual([]);
			}
		}
	});

	it("catches a sign that the family lacks", async () => {
		const findings = await findingsOf(p("Checked ☒ and signed."));
		expect(findings).toEqual([
			expect.objectContaining({ kind: "missing-glyph", page: 1, detail: expect.stringContaining("☒") }),
		]);
	});

	it("catches a sign that falls back to a typeface of the viewer's, where ≥ prints as something else", async () => {
		// The library sets what a face lacks in one of the viewer's fourteen, cut to eight bits: ≥ prints as "e".
		const words = (fontFamily: string) =>
			createElement(Words, { style: { ...type(10, 1.2), fontFamily } as WordStyle }, "Burst 5750 ≥ load");
		const findingsIn = async (fontFamily: string) => {
			await prepareEngine();
			const paper = createElement(Root, null, Pages({ fontSize: 10, children: words(fontFamily) }));
			return auditPages(await layoutPages(expanded(paper)));
		};
		expect(await findingsIn("Helvetica")).toContainEqual(
			expect.objectContaining({ kind: "missing-glyph", page: 1, text: expect.stringContaining("≥") }),
		);
		expect(await findingsIn(FAMILY)).toEqual([]);
	});

	it("paints the letters of words that other typefaces join, wherever the line ends", async () => {
		// ff, fi, ft and tt are one glyph in many a typeface; cut into lines by the engine, such a word lost a letter to the next line.
		const words = Array.from({ length: 40 }, (_, i) =>
			p(
				`${"n ".repeat(i)}Tell the district office and the staff, and do not drill out until the office has answered. Run a survey within twelve hours after that.`,
			),
		);
		expect(await findingsOf(...words)).toEqual([]);
	});

	it("catches a line painted with other letters than its words have", async () => {
		const { pages } = await setPaper(withBlocks(p("Do not drill out until it has answered.")));
		const shifted = (node: LayoutNode): LayoutNode => ({
			...node,
			...(node.lines === undefined
				? {}
				: {
						lines: node.lines.map((line) => ({
							...line,
							runs: line.runs.map((run) => ({ ...run, glyphs: (run.glyphs ?? []).slice(1) })),
						})),
					}),
			...(node.children === undefined ? {} : { children: node.children.map(shifted) }),
		});
		const planted = pages.map((page) => ({ ...page, children: page.children.map(shifted) }));
		expect(auditPages(planted)).toContainEqual(
			expect.objectContaining({ kind: "lost-text", text: expect.stringContaining("drill out until") }),
		);
	});

	it("catches a line that ends inside a word", async () => {
		const { pages } = await setPaper(
			withBlocks(p(`${"Slow down and follow the plan below. ".repeat(5)}End.`)),
		);
		const parted = (node: LayoutNode): LayoutNode => {
			const [first, second, ...rest] = node.lines ?? [];
			return {
				...node,
				...(first === undefined || second === undefined
					? {}
					: {
							lines: [
								{ ...first, string: `${first.string}${second.string.slice(0, 2)}` },
								{ ...second, string: second.string.slice(2) },
								...rest,
							],
						}),
				...(node.children === undefined ? {} : { children: node.children.map(parted) }),
			};
		};
		const planted = pages.map((page) => ({ ...page, children: page.children.map(parted) }));
		expect(auditPages(planted)).toContainEqual(expect.objectContaining({ kind: "broken-word" }));
	});

	it("prints a number with its unit whole, wherever the line ends, or says that it did not", async () => {
		let [whole, told] = [0, 0];
		for (let letters = 1; letters <= 100; letters += 3) {
			const lead = "i"
				.repeat(15)
				.concat(" ")
				.repeat(12)
				.slice(0, 100 + letters);
			const block = p(`${lead} 2500psi and so on.`);
			const { pages, findings } = await setPaper(withBlocks(block));
			const lines = pages.flatMap((page) => page.children.flatMap(linesIn));
			if (lines.some((line) => line.includes("2500psi"))) whole += 1;
			else if (findings.some(({ kind }) => kind === "inserted-hyphen" || kind === "lost-text")) told += 1;
		}
		expect(whole + told).toBe(34);
		expect(whole).toBeGreaterThan(0);
	});

	it("catches a table whose words need more than the page's width", async () => {
		const findings = await findingsOf(
			table({ kind: "text", text: "x".repeat(100) }, { kind: "text", text: "y".repeat(100) }),
		);
		expect(findings.map((f) => f.kind)).toEqual(["off-page"]);
	});

	it("catches a word wider than the page", async () => {
		const findings = await findingsOf(p("x".repeat(200)));
		expect(findings).toEqual([expect.objectContaining({ kind: "too-wide", page: 1 })]);
	});

	it("catches a row taller than a page", async () => {
		const long = "Water stands behind the pipe. ".repeat(500);
		const findings = await findingsOf(table({ kind: "text", text: long }, { kind: "text", text: "short" }));
		expect(findings.map((f) => f.kind)).toEqual(["squeezed", "library-warning"]);
	});

	it("catches a drawing wider than the page's text, and one higher", async () => {
		const wide = await findingsOf({
			kind: "figure",
			drawing: { ...drawing, width: MEASURE + 40 },
			caption: [],
		});
		expect(wide.map((f) => f.kind)).toContain("off-page");
		const high = await findingsOf({ kind: "figure", drawing: { ...drawing, height: 700 }, caption: [] });
		expect(high.map((f) => f.kind)).toEqual(["squeezed", "library-warning"]);
	});

	it("catches a label that its drawing cuts off", async () => {
		const shapes = [
			{ kind: "text" as const, x: 400, y: 20, text: "surface casing", size: 9, color: "#111111" },
		];
		const findings = await findingsOf({ kind: "figure", drawing: { ...drawing, shapes }, caption: [] });
		expect(findings).toEqual([expect.objectContaining({ kind: "clipped-label", text: "surface casing" })]);
	});

	it("catches a hyphen that the engine puts into a number with its unit", async () => {
		// The engine parts digits from letters, and then writes a hyphen: "2500-psi" reads as a range.
		const wide = `2500psi${"ft".repeat(30)}`;
		expect(textWidth(wide, { size: DESIGNS.office.table, weight: "semibold" })).toBeGreaterThan(MEASURE / 4);
		const findings = await findingsOf({
			kind: "facts",
			columns: 2,
			items: [{ label: "Pressure", value: { kind: "text", text: wide } }],
		});
		expect(findings).toContainEqual(
			expect.objectContaining({ kind: "inserted-hyphen", detail: expect.stringContaining("2500-psi") }),
		);
	});
});

describe("a number that cannot be printed", () => {
	it("stops the paper, and is not swallowed on the way", async () => {
		const nothing = { kind: "quantity", dimension: "length", value: Number.NaN } as const;
		await expect(findingsOf(p("Depth ", nothing))).rejects.toThrow("cannot be printed");
		expect(await findingsOf(p("Depth"))).toEqual([]);
	});
});

describe("the audit of the running head and foot", () => {
	const matter = (imprint: Partial<Imprint>) => {
		const paper = samplePaper();
		return runningMatter({ ...paper, imprint: { ...paper.imprint, ...imprint } });
	};
	it("passes the sample", () => {
		expect(matter({}).findings).toEqual([]);
	});
	it("catches a caution longer than the foot holds", () => {
		expect(matter({ caution: "Local rules govern. ".repeat(40) }).findings.map((f) => f.kind)).toEqual([
			"too-wide",
		]);
	});
	it("catches a sign that the family lacks", () => {
		expect(matter({ operator: "☒ Operating" }).findings.map((f) => f.kind)).toEqual(["missing-glyph"]);
	});
	it("gives a long title a line of its own", () => {
		expect(matter({}).stacked).toBe(false);
		const long = matter({ title: "Well construction and stimulation plan for the production interval" });
		expect(long.stacked).toBe(true);
		expect(long.findings).toEqual([]);
	});
});
