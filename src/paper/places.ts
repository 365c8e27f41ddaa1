import type { Block, Cell, Section } from "../document/blocks.ts";
import type { PaperDocument } from "../document/document.ts";
import type { Inline } from "../document/inline.ts";
import type { Shape } from "../document/shapes.ts";

/** Every key printed in blocks, in order; figures' labels included. */
export const keysIn = (blocks: readonly Block[]): string[] => blocks.flatMap(keysOfBlock);

const keysOfBlock = (block: Block): string[] => {
	switch (block.kind) {
		case "paragraph":
			return block.children.flatMap(keysOfInline);
		case "list":
			return block.items.flatMap(keysIn);
		case "facts":
		case "figures":
			return block.items.flatMap((item) => keysOfCell(item.value));
		case "table":
			return [
				...(block.constants ?? []).flatMap(keysOfInline),
				...block.rows.flatMap((row) => Object.values(row.cells).flatMap(keysOfCell)),
			];
		case "figure":
			return [...block.caption.flatMap(keysOfInline), ...block.drawing.shapes.flatMap(keysOfShape)];
		case "callout":
		case "columns":
			return keysIn(block.blocks);
		case "beside":
			return keysIn([...block.left, ...block.right]);
		case "list-of":
		case "heading":
		case "sign-in":
		case "contents":
		case "page-break":
			return [];
	}
};

const keysOfInline = (inline: Inline): string[] => {
	switch (inline.kind) {
		case "quantity":
			return inline.key === undefined ? [] : [inline.key];
		case "strong":
		case "emphasis":
		case "link":
			return inline.children.flatMap(keysOfInline);
		case "text":
		case "verdict":
			return [];
	}
};

/** Every key printed in a cell. */
export const keysOfCell = (cell: Cell): string[] => {
	if (cell.kind === "quantity") return cell.key === undefined ? [] : [cell.key];
	return cell.kind === "rich" ? cell.children.flatMap(keysOfInline) : [];
};

const keysOfShape = (shape: Shape): string[] => {
	if (shape.kind === "group") return shape.children.flatMap(keysOfShape);
	return shape.kind === "text" && shape.key !== undefined ? [shape.key] : [];
};

/** `6 Hole and casing`. */
export const placeOf = ({ number, title }: Section): string =>
	number === undefined ? title : `${number} ${title}`;

/** Where a paper, or the papers that are bound with it, in order, first prints a value: number and title of the section. */
export const placesIn = (...documents: readonly PaperDocument[]): ((key: string) => string | undefined) => {
	const places = new Map<string, string>();
	for (const section of documents.flatMap(({ sections }) => sections))
		for (const key of keysIn(section.blocks)) if (!places.has(key)) places.set(key, placeOf(section));
	return (key) => places.get(key);
};
