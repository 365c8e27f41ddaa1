import type { Block } from "../../src/document/blocks.ts";
import type { Shape } from "../../src/document/shapes.ts";
import { columnUnit, type Printing, printCell, printInline } from "../../src/render/print/print-text.ts";

const FIELD: Printing = { units: "field", language: "en" };

const labels = (shapes: readonly Shape[]): readonly string[] =>
	shapes.flatMap((shape) =>
		shape.kind === "group" ? labels(shape.children) : shape.kind === "text" ? [shape.text] : [],
	);

/** Every string that blocks are to print, one by one. */
export const stringsOf = (blocks: readonly Block[], printing: Printing = FIELD): readonly string[] =>
	blocks.flatMap((block): readonly string[] => {
		switch (block.kind) {
			case "heading":
				return [block.text];
			case "paragraph":
				return [printInline(block.children, printing)];
			case "list":
				return block.items.flatMap((item) => stringsOf(item, printing));
			case "facts":
			case "figures":
				return block.items.flatMap((item) => [item.label, printCell(item.value, printing), item.note ?? ""]);
			case "table":
				return [
					block.caption,
					...block.columns.flatMap((column) => [column.head, columnUnit(column, printing) ?? ""]),
					...block.rows.flatMap((row) =>
						block.columns.flatMap((column) => {
							const cell = row.cells[column.id];
							return cell === undefined ? [] : [printCell(cell, printing, column)];
						}),
					),
					printInline(block.note ?? [], printing),
				];
			case "figure":
				return [printInline(block.caption, printing), block.drawing.scale, ...labels(block.drawing.shapes)];
			case "callout":
				return [block.title, ...stringsOf(block.blocks, printing)];
			case "columns":
				return stringsOf(block.blocks, printing);
			case "sign-in":
				return block.columns.map((column) => column.head);
			case "beside":
				return stringsOf([...block.left, ...block.right], printing);
			case "list-of":
				return [block.caption];
			case "contents":
			case "page-break":
				return [];
			default:
				return block satisfies never;
		}
	});
