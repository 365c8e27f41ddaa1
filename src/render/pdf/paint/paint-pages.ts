import type PDFDocument from "pdfkit";
import { placesIn } from "../layout/arrange.ts";
import { isDecorated, type Laid, type LaidPage, lineText } from "../layout/laid.ts";
import type { Tag } from "../tags.ts";
import { paintFrame } from "./frame.ts";
import { type Marked, makeMarks } from "./marks.ts";
import { hasParts, paintLines, paintPageNumber, paintParts } from "./paint-text.ts";
import { makePen, type Pen } from "./pen.ts";
import { paintShapes } from "./shapes.ts";

/** An entry of the document outline, at its place. */
export interface OutlineEntry {
	readonly title: string;
	readonly level: 1 | 2;
	/** From 0. */
	readonly page: number;
	readonly top: number;
}

/** Page (from 1) on which each id stands. */
const pagesOfIds = (pages: readonly LaidPage[]): ReadonlyMap<string, number> => {
	const found = new Map<string, number>();
	const look = (item: Laid, page: number): void => {
		const { id } = item.props;
		if (id !== undefined && !found.has(id)) found.set(id, page);
		if (item.kind === "box") for (const child of item.flow) look(child, page);
	};
	for (const [i, { children }] of pages.entries()) for (const { item } of children) look(item, i + 1);
	return found;
};

/** Words inside a link, for its text alternative; not the page number that it ends in. */
const wordsIn = (item: Laid): string => {
	if (item.props.pageOf !== undefined || item.kind === "drawing") return "";
	const texts = item.kind === "text" ? item.lines.map(lineText) : item.flow.map(wordsIn);
	return texts
		.map((text) => text.trim())
		.filter((text) => text !== "")
		.join(" ");
};

/** A link target is shown with a little of what stands above it [pt]. */
const ABOVE = 6;

export interface Painting {
	readonly context: PDFDocument;
	readonly pages: readonly LaidPage[];
	/** Draws head and foot of a page (from 1). */
	readonly running: (pen: Pen, page: number) => void;
	/** Text alternative of a link begins with it. */
	readonly goTo: string;
}

/**
 * Paints laid-out pages and tells what each piece means: every text and drawing lies in marked content of its structure
 * element; frames, grounds, repeated table heads, head and foot are artifacts. Gives the outline.
 */
export const paintPages = ({ context, pages, running, goTo }: Painting): readonly OutlineEntry[] => {
	const outline: OutlineEntry[] = [];
	const pen = makePen(context);
	const marks = makeMarks(context);
	const read = new Set<Tag>();
	const destinations = new Set<string>();
	const where = pagesOfIds(pages);

	/** Where links and the outline lead. */
	const note = ({ props: { id, tag } }: Laid, page: number, y: number): void => {
		const top = Math.max(0, y - ABOVE);
		if (id !== undefined && !destinations.has(id)) {
			destinations.add(id);
			context.addNamedDestination(id, "XYZ", 0, top, null);
		}
		if (tag?.outline !== undefined && !read.has(tag)) outline.push({ ...tag.outline, page, top });
	};

	const walk = (item: Laid, page: number, x: number, y: number, parent: Marked, artifact: boolean): void => {
		const { tag, src, pageOf, onlyAgain } = item.props;
		note(item, page, y);
		const art = artifact || onlyAgain === true || (tag?.once === true && read.has(tag));
		if (tag !== undefined) read.add(tag);
		const place = { x, y, width: item.width, height: item.height };
		const marked =
			tag === undefined || art
				? parent
				: marks.elementOf(tag, parent, item.kind === "drawing" ? place : undefined);
		if (isDecorated(item))
			marks.asArtifact(art ? "Pagination" : "Layout", () => paintFrame(context, pen, item, x, y));
		if (item.kind === "box") {
			const entry = (): Marked => (tag?.role === "TOCI" ? marks.within(marked, "Reference") : marked);
			const link = src === undefined || art ? undefined : marks.within(entry(), "Link");
			if (link !== undefined && src !== undefined)
				marks.annotate(link, src, place, `${goTo} ${wordsIn(item)}`);
			for (const child of placesIn(item))
				walk(child.item, page, x + child.x, y + child.y, link ?? marked, art);
			if (link !== undefined) marks.end(link);
			return;
		}
		const paint = (): void => {
			if (item.kind === "text") paintLines(pen, item, place);
			else
				pen.apart(() => {
					context.translate(x, y);
					paintShapes(context, pen, item.drawing.shapes);
				});
		};
		if (art) {
			marks.asArtifact("Pagination", paint);
			return;
		}
		const of = marked === marks.root ? marks.within(marks.root, "P") : marked;
		if (item.kind === "drawing") marks.asContent(of, paint);
		else if (pageOf !== undefined)
			marks.asContent(of, () => paintPageNumber(pen, item, place, where.get(pageOf)));
		else if (hasParts(item)) paintParts(pen, marks, of, item, place, goTo);
		else if (item.lines.length > 0) marks.asContent(of, paint);
	};

	for (const [i, { sheet, children }] of pages.entries()) {
		pen.newPage(sheet.width, sheet.height);
		marks.asArtifact("Pagination", () => running(pen, i + 1));
		for (const { x, y, item } of children) walk(item, i, x, y, marks.root, false);
	}
	marks.end(marks.root);
	return outline;
};
