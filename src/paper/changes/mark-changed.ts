import type { Block, Cell, Column, Row } from "../../document/blocks.ts";
import type { PaperDocument } from "../../document/document.ts";
import type { Inline } from "../../document/inline.ts";
import { keysOfCell } from "../places.ts";

/** Stands before the head of a row: a sign that is read aloud, is copied and needs no color. */
const MARK = "Δ ";

/** A paper with a mark at each row of a table, and each pair, that holds a value of one of these keys. */
export const markChanged = (document: PaperDocument, keys: ReadonlySet<string>): PaperDocument => ({
	...document,
	sections: document.sections.map((section) => ({ ...section, blocks: marked(section.blocks, keys) })),
});

const marked = (blocks: readonly Block[], keys: ReadonlySet<string>): readonly Block[] =>
	blocks.map((block): Block => {
		switch (block.kind) {
			case "table":
				return { ...block, rows: block.rows.map((row) => markedRow(row, block.columns, keys)) };
			case "facts":
				return {
					...block,
					items: block.items.map((item) =>
						holds(item.value, keys) ? { ...item, label: `${MARK}${item.label}` } : item,
					),
				};
			case "callout":
				return { ...block, blocks: marked(block.blocks, keys) };
			default:
				return block;
		}
	});

const holds = (cell: Cell, keys: ReadonlySet<string>): boolean =>
	keysOfCell(cell).some((key) => keys.has(key));

const markedRow = (row: Row, columns: readonly Column[], keys: ReadonlySet<string>): Row => {
	const head = columns.find(({ rowHead }) => rowHead === true) ?? columns[0];
	const cell = head === undefined ? undefined : row.cells[head.id];
	if (head === undefined || cell === undefined || !Object.values(row.cells).some((each) => holds(each, keys)))
		return row;
	return { ...row, cells: { ...row.cells, [head.id]: withMark(cell, head) } };
};

const withMark = (cell: Cell, column: Column): Cell => {
	const mark: Inline = { kind: "text", text: MARK };
	switch (cell.kind) {
		case "text":
			return { kind: "text", text: `${MARK}${cell.text}` };
		case "rich":
			return { kind: "rich", children: [mark, ...cell.children] };
		case "quantity": {
			// A column that names the unit in its head prints its numbers bare.
			const bare = cell.dimension === column.dimension ? { bare: true } : {};
			return {
				kind: "rich",
				children: [mark, { ...cell, style: { ...column.style, ...cell.style, ...bare } }],
			};
		}
		case "none":
			return { kind: "text", text: MARK.trim() };
		default:
			return cell;
	}
};
