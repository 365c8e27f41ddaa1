import type PDFDocument from "pdfkit";
import type { StructureElement } from "pdfkit";
import { textWidth } from "../../measure/text-width.ts";
import { INK } from "./design.ts";
import {
	isDecorated,
	type LayoutNode,
	type PageNode,
	sourceText,
	type TextLine,
	type TextRun,
} from "./layout-node.ts";
import { paintNode, runningFont } from "./pins.ts";
import type { Tag } from "./tags.ts";

/** An entry of the document outline, at its place. */
export interface OutlineEntry {
	readonly title: string;
	readonly level: 1 | 2;
	/** From 0. */
	readonly page: number;
	readonly top: number;
}

/** A node's frame and ground, without what is inside. */
const decorationOf = (node: LayoutNode): LayoutNode => ({ ...node, type: "VIEW", children: [], props: {} });

const bare = (node: LayoutNode): LayoutNode => {
	const { backgroundColor: _, ...style } = node.style ?? {};
	return {
		...node,
		style,
		props: {},
		...(node.box === undefined
			? {}
			: {
					box: {
						...node.box,
						borderTopWidth: 0,
						borderRightWidth: 0,
						borderBottomWidth: 0,
						borderLeftWidth: 0,
					},
				}),
	};
};

const isInside = (src: string): boolean => src.startsWith("#");

/** Page (from 1) on which each id stands. */
export const pagesOfIds = (pages: readonly PageNode[]): ReadonlyMap<string, number> => {
	const found = new Map<string, number>();
	const look = (node: LayoutNode, page: number): void => {
		const id = node.props?.id;
		if (id !== undefined && !found.has(id)) found.set(id, page);
		for (const child of node.children ?? []) look(child, page);
	};
	for (const [i, page] of pages.entries()) for (const node of page.children) look(node, i + 1);
	return found;
};

export interface Painting {
	readonly context: PDFDocument;
	readonly pages: readonly PageNode[];
	/** Draws head and foot of a page (from 1). */
	readonly running: (page: number) => void;
	/** Text alternative of a link. */
	readonly goTo: string;
}

/**
 * Paints laid-out pages and tells what each piece means: every text and drawing lies in marked content of its structure
 * element; frames, grounds, repeated table heads, head and foot are artifacts. Gives the outline.
 *
 * @source iso-32000-1, 14.7 (structure) and 14.8 (tagged PDF)
 */
export const paintPages = ({ context, pages, running, goTo }: Painting): readonly OutlineEntry[] => {
	const outline: OutlineEntry[] = [];
	const root = context.struct("Document");
	context.addStructure(root);
	const elements = new Map<Tag, StructureElement>();
	const read = new Set<Tag>();
	const destinations = new Set<string>();
	const where = pagesOfIds(pages);

	const elementOf = (tag: Tag, parent: StructureElement, place?: Place): StructureElement => {
		const known = elements.get(tag);
		if (known !== undefined) return known;
		const element = context.struct(tag.role, {
			...(tag.alt === undefined ? {} : { alt: tag.alt }),
			...(tag.scope === undefined ? {} : { scope: tag.scope }),
			...(place === undefined
				? {}
				: { bbox: [place.left, place.top, place.left + place.width, place.top + place.height] }),
		});
		if (tag.role === "L") element.dictionary.data.A = { O: "List", ListNumbering: tag.numbering ?? "None" };
		(tag.within === undefined ? parent : elementOf(tag.within, root)).add(element);
		elements.set(tag, element);
		return element;
	};

	interface Place {
		readonly left: number;
		readonly top: number;
		readonly width: number;
		readonly height: number;
	}

	const asArtifact = (type: "Pagination" | "Layout", paint: () => void): void => {
		context.markContent("Artifact", { type });
		paint();
		context.endMarkedContent();
	};

	const asContent = (element: StructureElement, paint: () => void): void => {
		const content = context.markStructureContent(element.dictionary.data.S);
		paint();
		context.endMarkedContent();
		element.add(content);
	};

	const annotate = (src: string, place: Place, text: string, element: StructureElement): void => {
		// pdfkit writes a String object as a text string, a plain string as a name.
		const options = { structParent: element, Contents: new String(`${goTo} ${text}`) };
		if (isInside(src)) context.goTo(place.left, place.top, place.width, place.height, src.slice(1), options);
		else context.link(place.left, place.top, place.width, place.height, src, options);
	};

	/** Paints words that hold links run by run, so that each link's words belong to its own element. */
	const paintLinked = (node: LayoutNode, element: StructureElement): void => {
		const { box, lines = [] } = node;
		const firstY = lines[0]?.box?.y ?? 0;
		if (box === undefined) return;
		const links = new Map<string, StructureElement>();
		for (const line of lines) {
			let x = 0;
			for (const [i, run] of line.runs.entries()) {
				const { link, ...attributes } = run.attributes;
				const piece = pieceOf(node, line, { ...run, attributes }, x, firstY, i === 0);
				const width = run.xAdvance ?? 0;
				if (link === undefined || link === null) asContent(element, () => paintNode(context, piece));
				else {
					const link_ = links.get(link) ?? context.struct("Link");
					if (!links.has(link)) element.add(link_);
					links.set(link, link_);
					asContent(link_, () => paintNode(context, piece));
					const place = {
						left: box.left + (box.paddingLeft ?? 0) + (line.box?.x ?? 0) + x,
						top: box.top + (box.paddingTop ?? 0) + (line.box?.y ?? 0) - firstY,
						width,
						height: line.box?.height ?? 0,
					};
					annotate(link, place, line.string.slice(run.start, run.end).trim(), link_);
				}
				x += width;
			}
		}
		for (const link of links.values()) link.end();
	};

	const paintPageNumber = (node: LayoutNode, number: number | undefined): void => {
		const { box, lines } = node;
		const line = lines?.[0];
		const size = node.style?.["fontSize"];
		if (box === undefined || line === undefined || typeof size !== "number") return;
		const text = number === undefined ? "–" : String(number);
		const x = box.left + box.width - textWidth(text, { size });
		context
			.font(runningFont(400), size)
			.fillColor(INK.text)
			.text(text, x, box.top + (line.ascent ?? size), { lineBreak: false, baseline: "alphabetic" });
	};

	const paintLeaf = (node: LayoutNode, element: StructureElement): void => {
		const pageOf = node.props?.pageOf;
		if (pageOf !== undefined) asContent(element, () => paintPageNumber(node, where.get(pageOf)));
		else if (
			node.lines?.some((line) =>
				line.runs.some((run) => (run.attributes.link ?? undefined) !== undefined),
			) === true
		) {
			paintLinked(bare(node), element);
		} else asContent(element, () => paintNode(context, bare(node)));
	};

	const mark = (node: LayoutNode, page: number, top: number): void => {
		const { id, tag } = node.props ?? {};
		if (id !== undefined && !destinations.has(id)) {
			destinations.add(id);
			context.addNamedDestination(id, "XYZ", 0, Math.max(0, top - 6), null);
		}
		if (tag?.outline !== undefined && !read.has(tag))
			outline.push({ ...tag.outline, page, top: Math.max(0, top - 6) });
	};

	const walk = (
		node: LayoutNode,
		page: number,
		x: number,
		y: number,
		parent: StructureElement,
		artifact: boolean,
	): void => {
		const { box, props = {}, type } = node;
		if (box === undefined) return;
		const left = x + box.left;
		const top = y + box.top;
		const { tag, src } = props;
		mark(node, page, top);
		const repeated = tag?.once === true && read.has(tag);
		if (tag !== undefined) read.add(tag);
		const running = artifact || repeated;
		const place = { left, top, width: box.width, height: box.height };
		const element =
			tag === undefined || running ? parent : elementOf(tag, parent, type === "SVG" ? place : undefined);
		if (isDecorated(node))
			asArtifact(running ? "Pagination" : "Layout", () => paintNode(context, decorationOf(node)));
		if (type === "TEXT" || type === "SVG") {
			if (running) asArtifact("Pagination", () => paintNode(context, bare(node)));
			else paintLeaf(node, element === root ? elementOf({ role: "P" }, root) : element);
			return;
		}
		const link = type === "LINK" && src !== undefined && !running ? context.struct("Link") : undefined;
		if (link !== undefined && src !== undefined) {
			const entry = tag?.role === "TOCI" ? context.struct("Reference") : undefined;
			if (entry !== undefined) element.add(entry);
			(entry ?? element).add(link);
			annotate(src, box, sourceOfLink(node), link);
		}
		context.save().translate(box.left, box.top);
		for (const child of node.children ?? []) walk(child, page, left, top, link ?? element, running);
		context.restore();
		// The page of a link's annotation is taken when its element ends, so it ends here, on its own page.
		link?.end();
	};

	for (const [i, page] of pages.entries()) {
		context.addPage({ size: [page.box.width, page.box.height], margin: 0 });
		asArtifact("Pagination", () => running(i + 1));
		for (const node of page.children) walk(node, i, 0, 0, root, false);
	}
	root.end();
	return outline;
};

const sourceOfLink = (node: LayoutNode): string => {
	const words = (n: LayoutNode): readonly string[] =>
		n.props?.pageOf !== undefined
			? []
			: n.type === "TEXT"
				? [sourceText(n)]
				: (n.children ?? []).flatMap(words);
	return words(node)
		.filter((text) => text !== "")
		.join(" ");
};

/** One run of one line, as a text node of its own at the same place. */
const pieceOf = (
	node: LayoutNode,
	line: TextLine,
	run: TextRun,
	x: number,
	firstY: number,
	withRules: boolean,
): LayoutNode => {
	const { box } = node;
	if (box === undefined || line.box === undefined) return node;
	const { decorationLines, ...rest } = line;
	return {
		...node,
		box: { ...box, top: box.top + line.box.y - firstY, left: box.left + (withRules ? 0 : x) },
		lines: [
			{ ...rest, runs: [run], ...(withRules && decorationLines !== undefined ? { decorationLines } : {}) },
		],
	};
};
