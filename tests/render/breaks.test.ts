import { describe, expect, it } from "vitest";
import type { Block } from "../../src/document/blocks.ts";
import type { PaperDocument } from "../../src/document/document.ts";
import { text } from "../../src/document/inline.ts";
import { setPaper } from "../../src/render/pdf/layout.ts";
import { type LayoutNode, type PageNode, sourceText } from "../../src/render/pdf/layout-node.ts";
import type { Tag } from "../../src/render/pdf/tags.ts";
import { drawing, p, samplePaper, surveyTable } from "./sample-paper.ts";

/** Where every tagged node stands: page and words. */
const placesOf = (pages: readonly PageNode[]): readonly { tag: Tag; page: number; text: string }[] =>
	pages.flatMap((page, number) => {
		const look = (node: LayoutNode): readonly { tag: Tag; page: number; text: string }[] => [
			...(node.props?.tag === undefined
				? []
				: [{ tag: node.props.tag, page: number, text: sourceText(node) }]),
			...(node.type === "TEXT" ? [] : (node.children ?? []).flatMap(look)),
		];
		return page.children.flatMap(look);
	});

const ROWS = 12;
const NOTE = [text("A selection of stations is printed.")];

const startingAt = (height: number): PaperDocument => {
	const filler: Block = { kind: "figure", drawing: { ...drawing, height, shapes: [] }, caption: [] };
	return {
		...samplePaper(),
		sections: [
			{
				id: "s",
				title: "Sweep",
				blocks: [
					filler,
					{ kind: "heading", level: 2, text: "Survey" },
					p("One line before it."),
					{ ...surveyTable(ROWS), note: NOTE },
				],
			},
		],
	};
};

/** Everything wrong with how the heading, caption, head and rows fell on pages. */
const defectsOf = async (height: number): Promise<readonly string[]> => {
	const { pages, findings } = await setPaper(startingAt(height));
	const places = placesOf(pages);
	const pagesOf = (role: Tag["role"], once?: true): readonly number[] =>
		places.filter(({ tag }) => tag.role === role && tag.once === once).map(({ page }) => page);
	const [heading = -1] = pagesOf("H3");
	const following = places.find(({ tag, text }) => tag.role === "P" && text === "One line before it.");
	const note = places.find(({ text }) => text === "A selection of stations is printed.");
	const [caption = -1] = pagesOf("Caption");
	const heads = pagesOf("TR", true);
	const rows = pagesOf("TR");
	return [
		...findings.map((f) => `${f.kind}: ${f.text}`),
		...(following?.page === heading ? [] : ["heading parted from its text"]),
		...(rows[0] === caption && heads[0] === caption ? [] : ["caption parted from head or first row"]),
		...(rows.length === ROWS ? [] : [`${rows.length} rows, some split or lost`]),
		...(new Set(rows).size === heads.length && rows.every((page) => heads.includes(page))
			? []
			: ["a page of rows without its head"]),
		...(rows.filter((page) => page === rows[0]).length >= 2 ? [] : ["a single row beneath the caption"]),
		...(note?.page === rows.at(-1) ? [] : ["note parted from the last row"]),
	].map((defect) => `${height}: ${defect}`);
};

describe("page breaks", () => {
	it("never part a heading from its text, a caption from its rows, a row from itself, a page of rows from its head", async () => {
		const heights = Array.from({ length: 105 }, (_, i) => 30 + i * 5);
		const defects: string[] = [];
		for (const height of heights) defects.push(...(await defectsOf(height)));
		expect(defects).toEqual([]);
	});
});
