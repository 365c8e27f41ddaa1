import { describe, expect, it } from "vitest";
import type { Block, Cell } from "../../src/document/blocks.ts";
import type { Imprint, PaperDocument } from "../../src/document/document.ts";
import { auditPages } from "../../src/render/pdf/audit.ts";
import { MEASURE } from "../../src/render/pdf/design.ts";
import type { LayoutFinding } from "../../src/render/pdf/findings.ts";
import type { Laid, LaidPage, LaidText, Line } from "../../src/render/pdf/layout/laid.ts";
import { runningMatter } from "../../src/render/pdf/running.ts";
import { setPaper } from "../../src/render/pdf/set-paper.ts";
import { linesOf } from "./laid-places.ts";
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

/** Pages with a fault planted into each text of several lines. */
const planted = (pages: readonly LaidPage[], change: (text: LaidText) => LaidText): readonly LaidPage[] => {
	const inside = (item: Laid): Laid =>
		item.kind === "text"
			? item.lines.length > 1
				? change(item)
				: item
			: item.kind === "box"
				? { ...item, flow: item.flow.map(inside) }
				: item;
	return pages.map((page) => ({
		...page,
		children: page.children.map((placed) => ({ ...placed, item: inside(placed.item) })),
	}));
};

const LONG = p(`${"Slow down and follow the plan below. ".repeat(5)}End.`);
const FAULTLESS = setPaper(withBlocks(LONG)).pages;

const withLines = (text: LaidText, lines: readonly Line[]): LaidText => ({ ...text, lines });
const retold = (line: Line, tell: (text: string) => string): Line => ({
	...line,
	runs: line.runs.map((run) => ({ ...run, text: tell(run.text) })),
});

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

	it("catches a line that was lost, and one with other letters than its words have", () => {
		expect(auditPages(FAULTLESS)).toEqual([]);
		for (const lines of [
			(all: readonly Line[]) => all.slice(1),
			(all: readonly Line[]) => all.map((line) => retold(line, (text) => text.replace("plan", "plam"))),
			(all: readonly Line[]) => [...all, ...all.slice(-1)],
		]) {
			const pages = planted(FAULTLESS, (text) => withLines(text, lines(text.lines)));
			expect(auditPages(pages)).toContainEqual(
				expect.objectContaining({ kind: "lost-text", text: expect.stringContaining("Slow down") }),
			);
		}
	});

	it("catches lines lost between the pages that a text stands on", () => {
		const { pages } = setPaper(withBlocks(p("One line of many that fill a page. ".repeat(500))));
		expect(pages.length).toBeGreaterThan(2);
		expect(auditPages(pages)).toEqual([]);
		expect(auditPages(pages.slice(1)).map(({ kind }) => kind)).toEqual(["lost-text"]);
	});

	it("catches a line that ends inside a word", () => {
		const pages = planted(FAULTLESS, (text) => {
			const [first, second, ...rest] = text.lines;
			if (first === undefined || second === undefined) return text;
			const moved = second.runs[0]?.text.slice(0, 2) ?? "";
			return withLines(text, [
				retold(first, (words) => words + moved),
				retold(second, (words) => words.slice(2)),
				...rest,
			]);
		});
		expect(auditPages(pages).map(({ kind }) => kind)).toEqual(["broken-word"]);
	});

	it("catches lines pressed together", () => {
		const pages = planted(FAULTLESS, (text) => ({ ...text, height: text.height - 1 }));
		expect(auditPages(pages).map(({ kind }) => kind)).toEqual(["squeezed"]);
	});

	it("prints a number with its unit whole, wherever the line ends", () => {
		for (let letters = 1; letters <= 100; letters += 3) {
			const lead = "i"
				.repeat(15)
				.concat(" ")
				.repeat(12)
				.slice(0, 100 + letters);
			const { pages, findings } = setPaper(
				withBlocks(
					p(`${lead} 2500psi and `, { kind: "quantity", dimension: "pressure", value: 2500 }, " so on."),
				),
			);
			expect(findings).toEqual([]);
			const lines = linesOf(pages);
			expect(lines.some((line) => line.includes("2500psi"))).toBe(true);
			expect(lines.some((line) => line.includes("2,500\u00a0psi"))).toBe(true);
		}
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

	it("finds nothing where a row taller than a page is divided, and misses none of its words", () => {
		const long = "Water stands behind the pipe. ".repeat(500);
		const { pages, findings } = setPaper(
			withBlocks(table({ kind: "text", text: long }, { kind: "text", text: "short" })),
		);
		expect(findings).toEqual([]);
		expect(pages.length).toBeGreaterThan(1);
	});

	it("catches a drawing wider than the page's text, and one higher", async () => {
		const wide = await findingsOf({
			kind: "figure",
			drawing: { ...drawing, width: MEASURE + 40 },
			caption: [],
		});
		expect(wide.map((f) => f.kind)).toContain("off-page");
		const high = await findingsOf({ kind: "figure", drawing: { ...drawing, height: 700 }, caption: [] });
		expect(high.map((f) => f.kind)).toEqual(["off-page"]);
	});

	it("catches a label that its drawing cuts off", async () => {
		const shapes = [
			{ kind: "text" as const, x: 400, y: 20, text: "surface casing", size: 9, color: "#111111" },
		];
		const findings = await findingsOf({ kind: "figure", drawing: { ...drawing, shapes }, caption: [] });
		expect(findings).toEqual([expect.objectContaining({ kind: "clipped-label", text: "surface casing" })]);
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
	it("keeps the well's name, and lets go of the operator's, where both are too long for a line", () => {
		const operator = "Quillback Operating and Exploration Company of the Greater Rushford Basin (fictional)";
		const well = "Sorrel Bench Unit Number Three, Sixteen Horizontal, Second Lateral";
		const shortened = matter({ operator, well, apiNumber: "42-000-00000-00-00" });
		expect(shortened.identity).toBe(`${well}  ·  API 42-000-00000-00-00`);
		expect(shortened.findings).toEqual([]);
		const longer = matter({ operator, well: `${well} of the ${operator}`.repeat(2) });
		expect(longer.identity).toMatch(/^Sorrel Bench Unit .*…$/u);
		expect(longer.findings).toEqual([]);
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
