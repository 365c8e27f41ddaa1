import { PAGE } from "./design.ts";
import { isDecorated, type LayoutNode, type PageNode } from "./layout-node.ts";

/** Nothing of it prints: space, or what the engine carried over of a box that ended on the page before. */
const isBlank = (node: LayoutNode): boolean =>
	node.type !== "TEXT" && node.type !== "SVG" && !isDecorated(node) && (node.children ?? []).every(isBlank);

/** Moves content up where space alone heads the page: there it parts nothing from nothing. */
const raise = (page: PageNode): PageNode => {
	const first = page.children.findIndex((node) => !isBlank(node));
	const children = page.children.slice(first);
	const above = (children[0]?.box?.top ?? PAGE.top) - PAGE.top;
	if (above <= 0) return { ...page, children };
	return {
		...page,
		children: children.map((node) =>
			node.box === undefined ? node : { ...node, box: { ...node.box, top: node.box.top - above } },
		),
	};
};

/** Takes away space that has come to head a page, and pages that hold nothing else. */
export const tidyPages = (pages: readonly PageNode[]): readonly PageNode[] => {
	const printed = pages.filter((page) => !page.children.every(isBlank));
	return (printed.length === 0 ? pages.slice(0, 1) : printed).map(raise);
};
