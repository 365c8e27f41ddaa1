import { placesIn } from "../../src/render/pdf/layout/arrange.ts";
import { type Laid, type LaidPage, type LaidText, lineText } from "../../src/render/pdf/layout/laid.ts";
import type { Tag } from "../../src/render/pdf/tags.ts";

/** A block at its place on a page, from the page's top left corner [pt]. */
export interface Found {
	/** From 0. */
	readonly page: number;
	readonly x: number;
	readonly y: number;
	readonly item: Laid;
}

/** Every block of set pages, those within others too, in reading order. */
export const blocksOf = (pages: readonly LaidPage[]): readonly Found[] =>
	pages.flatMap(({ children }, page) => {
		const look = (item: Laid, x: number, y: number): readonly Found[] => [
			{ page, x, y, item },
			...(item.kind === "box"
				? placesIn(item).flatMap((child) => look(child.item, x + child.x, y + child.y))
				: []),
		];
		return children.flatMap(({ item, x, y }) => look(item, x, y));
	});

export const textsOf = (pages: readonly LaidPage[]): readonly LaidText[] =>
	blocksOf(pages).flatMap(({ item }) => (item.kind === "text" ? [item] : []));

export const linesOf = (pages: readonly LaidPage[]): readonly string[] =>
	textsOf(pages).flatMap(({ lines }) => lines.map((line) => lineText(line).trim()));

/** Words that a block was made from. */
export const wordsOf = (item: Laid): string =>
	item.kind === "text" ? item.source : item.kind === "box" ? item.flow.map(wordsOf).join("") : "";

/** Where every tagged block stands: page and words. */
export const tagsOf = (
	pages: readonly LaidPage[],
): readonly { readonly tag: Tag; readonly page: number; readonly text: string }[] =>
	blocksOf(pages).flatMap(({ item, page }) =>
		item.props.tag === undefined ? [] : [{ tag: item.props.tag, page, text: wordsOf(item) }],
	);
