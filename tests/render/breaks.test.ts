import { describe, expect, it } from "vitest";
import type { Block } from "../../src/document/blocks.ts";
import type { PaperDocument } from "../../src/document/document.ts";
import { text } from "../../src/document/inline.ts";
import { faceFor } from "../../src/measure/faces.ts";
import { typefaceOf } from "../../src/measure/typeface.ts";
import { setPaper } from "../../src/render/pdf/set-paper.ts";
import type { Tag } from "../../src/render/pdf/tags.ts";
import { composeOnce } from "../run/compose-once.ts";
import { sampleOf, WHOLE } from "../run/sample.ts";
import { findingsOf, STARTERS } from "../starters.ts";
import { tagsOf } from "./laid-places.ts";
import { drawing, p, samplePaper, surveyTable } from "./sample-paper.ts";

type TableBlock = Extract<Block, { kind: "table" }>;

const tablesIn = (blocks: readonly Block[]): readonly TableBlock[] =>
	blocks.flatMap((block) =>
		block.kind === "table"
			? [block]
			: block.kind === "callout" || block.kind === "columns"
				? tablesIn(block.blocks)
				: [],
	);

/** Tables as the papers print them: each table of a starter's regulator paper that is long enough to be broken. */
const REAL: readonly TableBlock[] = STARTERS.flatMap((starter) =>
	composeOnce(findingsOf(starter), [
		{ paper: "regulator", language: "en", units: "field" },
	]).documents.flatMap(({ paper }) => paper.sections.flatMap((section) => tablesIn(section.blocks))),
).filter(({ rows }) => rows.length >= 4);

/** Long ones are cut, so that a sweep crosses their first and last pages. */
const MOST_ROWS = 24;
const NOTE = [text("A selection of stations is printed.")];

const startingAt = (height: number, table: TableBlock): PaperDocument => {
	const filler: Block = { kind: "figure", drawing: { ...drawing, height, shapes: [] }, caption: [] };
	return {
		...samplePaper(),
		sections: [
			{
				id: "s",
				title: "Sweep",
				blocks: [
					filler,
					{ kind: "heading", level: 2, text: "Heading" },
					p("One line before it."),
					{ ...table, rows: table.rows.slice(0, MOST_ROWS), note: NOTE },
				],
			},
		],
	};
};

/** Everything wrong with how the heading, caption, head and rows fell on pages. */
const defectsOf = async (
	height: number,
	table: TableBlock,
): Promise<{ readonly pages: number; readonly defects: readonly string[] }> => {
	const { pages, findings } = await setPaper(startingAt(height, table));
	const places = tagsOf(pages);
	const pagesOf = (role: Tag["role"], once?: true): readonly number[] =>
		places.filter(({ tag }) => tag.role === role && tag.once === once).map(({ page }) => page);
	const [heading = -1] = pagesOf("H3");
	const following = places.find(({ tag, text }) => tag.role === "P" && text === "One line before it.");
	const note = places.find(({ text }) => text === "A selection of stations is printed.");
	const [caption = -1] = pagesOf("Caption");
	const heads = pagesOf("TR", true);
	const rows = pagesOf("TR");
	const wanted = Math.min(MOST_ROWS, table.rows.length);
	const defects = [
		...findings.map((f) => `${f.kind}: ${f.text}`),
		...(following?.page === heading ? [] : ["heading parted from its text"]),
		...(rows[0] === caption && heads[0] === caption ? [] : ["caption parted from head or first row"]),
		...(rows.length === wanted ? [] : [`${rows.length} rows of ${wanted}, some split or lost`]),
		...(new Set(rows).size === heads.length && rows.every((page) => heads.includes(page))
			? []
			: ["a page of rows without its head"]),
		...(rows.filter((page) => page === rows[0]).length >= 2 ? [] : ["a single row beneath the caption"]),
		...(note?.page === rows.at(-1) ? [] : ["note parted from the last row"]),
	];
	return {
		pages: new Set(rows).size,
		defects: defects.map((defect) => `${table.caption} at ${height}: ${defect}`),
	};
};

/** Start positions down a page [pt]: 3 pt apart, a different table at each. */
const POSITIONS = sampleOf(
	"start positions",
	Array.from({ length: 210 }, (_, i) => ({ i, height: 8 + i * 2.6 })),
	30,
);

describe("page breaks", () => {
	it("never part a heading from its text, a caption from its rows, a row from itself, a page of rows from its head", async () => {
		expect(REAL.length).toBeGreaterThan(20);
		const defects: string[] = [];
		let divided = 0;
		for (const { i, height } of POSITIONS) {
			const table = i % 2 === 0 ? surveyTable(12) : REAL[(i * 7) % REAL.length];
			if (table === undefined) continue;
			const set = await defectsOf(height, table);
			defects.push(...set.defects);
			if (set.pages > 1) divided += 1;
		}
		expect(defects).toEqual([]);
		if (WHOLE) expect(divided).toBeGreaterThan(40);
	});
});

describe("space at the foot of a page", () => {
	it("is never laid in full where only a part of it was counted, which would press the next page together", async () => {
		const callout: Block = {
			kind: "callout",
			tone: "note",
			title: "A note",
			blocks: [p("One line."), p("Another.")],
		};
		const facts: Block = { kind: "facts", items: [{ label: "A", value: { kind: "text", text: "b" } }] };
		const full = Array.from({ length: 45 }, (_, i) => p(`A page filled to its foot, line ${i}.`));
		const findings: string[] = [];
		const heights = Array.from({ length: 59 }, (_, i) => 500 + i * 1.7);
		for (const height of sampleOf("heights of a filler", heights, 10)) {
			const { sections, ...paper } = startingAt(height, surveyTable(3));
			const filler = sections[0]?.blocks.slice(0, 1) ?? [];
			const set = await setPaper({
				...paper,
				sections: [{ id: "s", title: "Sweep", blocks: [...filler, facts, callout, ...full] }],
			});
			findings.push(...set.findings.map((f) => `${height}: ${f.kind} on ${f.page}: ${f.text} ${f.detail}`));
		}
		expect(findings).toEqual([]);
	});
});

/** Texts measured while something is done: the bulk of what setting does. */
const measurings = (work: () => unknown): number => {
	const typeface = typefaceOf(faceFor());
	const { widthOf } = typeface;
	let count = 0;
	const spied = typeface as { widthOf: typeof widthOf };
	spied.widthOf = (text) => {
		count += 1;
		return widthOf(text);
	};
	try {
		work();
	} finally {
		spied.widthOf = widthOf;
	}
	return count;
};

describe("a table of many rows", () => {
	const setRows = async (rows: number) => {
		const { pages, findings } = await setPaper({
			...samplePaper(),
			sections: [{ id: "s", title: "Survey", blocks: [surveyTable(rows)] }],
		});
		const places = tagsOf(pages);
		return {
			pages: pages.length,
			findings,
			rows: places.filter(({ tag }) => tag.role === "TR" && tag.once === undefined).length,
			heads: places.filter(({ tag }) => tag.role === "TR" && tag.once === true).length,
		};
	};

	it("takes as much work a row at four thousand rows as at two hundred and fifty", () => {
		const perRow = [250, 1000, 4000].map((rows) => measurings(() => setRows(rows)) / rows);
		const [least, most] = [Math.min(...perRow), Math.max(...perRow)];
		// Each cell is measured a few times; a second look at earlier rows on each page would multiply that by the pages.
		expect(least).toBeGreaterThan(1);
		expect(most / least).toBeLessThan(1.05);
	});

	it("prints each row once, its head on every page, and pages in proportion, to 5,000 rows", async () => {
		const sets: (Awaited<ReturnType<typeof setRows>> & { readonly asked: number })[] = [];
		for (const asked of WHOLE ? [100, 1000, 5000] : [100, 1000])
			sets.push({ asked, ...(await setRows(asked)) });
		const thousand = sets[1];
		const perPage = (thousand?.rows ?? 0) / (thousand?.pages ?? 1);
		for (const { asked, findings, rows, heads, pages } of sets) {
			expect(findings.map((f) => `${f.kind} on ${f.page}: ${f.text} ${f.detail}`).slice(0, 5)).toEqual([]);
			expect(rows).toBe(asked);
			expect(heads).toBe(pages);
			expect(pages).toBeLessThanOrEqual(Math.ceil(asked / perPage) + 1);
		}
	});
});
