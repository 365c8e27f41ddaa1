import type { Block, Cell, Column, Row } from "../../document/blocks.ts";
import type { PaperDocument } from "../../document/document.ts";
import type { QuantityText } from "../../document/inline.ts";
import { formatQuantity } from "../../units/format.ts";
import { columnUnit, type Printing, printCell, printingOf } from "../print/print-text.ts";
import { PRINT_WORDS } from "../print/print-words.ts";

interface TableColumn {
	readonly id: string;
	readonly head: string;
	readonly unit?: string;
}

/** A number as it is printed, with a point and without thousands separators; a cell of words; or nothing. */
export type TableValue = number | string | null;

export interface PlainTable {
	readonly section: string;
	readonly caption: string;
	readonly columns: readonly TableColumn[];
	readonly rows: readonly Readonly<Record<string, TableValue>>[];
}

/**
 * The tables of a paper and its pairs of label and value, in reading order, as values for another program: what the
 * paper prints, rounded as it prints it, and nothing that it does not.
 */
export const tablesOf = (document: PaperDocument): readonly PlainTable[] => {
	const printing = printingOf(document);
	return document.sections.flatMap((section) => tablesIn(section.blocks, section.title, printing));
};

const tablesIn = (blocks: readonly Block[], section: string, printing: Printing): PlainTable[] =>
	blocks.flatMap((block): PlainTable[] => {
		switch (block.kind) {
			case "table":
				return [
					{
						section,
						caption: block.caption,
						columns: block.columns.map((column) => columnOf(column, printing)),
						rows: block.rows.map((row) => rowOf(row, block.columns, printing)),
					},
				];
			case "facts":
				return [
					{
						section,
						caption: block.caption ?? section,
						columns: PRINT_WORDS[printing.language].pairs.map((head, i) => ({
							id: i === 0 ? "label" : "value",
							head,
						})),
						rows: block.items.map(({ label, value }) => ({ label, value: tableValue(value, printing) })),
					},
				];
			case "callout":
			case "columns":
				return tablesIn(block.blocks, section, printing);
			case "beside":
				return tablesIn([...block.left, ...block.right], section, printing);
			default:
				return [];
		}
	});

const columnOf = (column: Column, printing: Printing): TableColumn => {
	const unit = columnUnit(column, printing);
	return { id: column.id, head: column.head, ...(unit === undefined ? {} : { unit }) };
};

/** A subhead has one cell, which stands in the first column. */
const rowOf = (
	row: Row,
	columns: readonly Column[],
	printing: Printing,
): Readonly<Record<string, TableValue>> =>
	Object.fromEntries(
		columns.map((column) => [column.id, tableValue(row.cells[column.id], printing, column)]),
	);

const tableValue = (cell: Cell | undefined, printing: Printing, column?: Column): TableValue => {
	if (cell === undefined || cell.kind === "none" || cell.kind === "blank") return null;
	if (cell.kind === "quantity" && column !== undefined && cell.dimension === column.dimension)
		return numberOf(cell, column, printing);
	return printCell(cell, printing, column).replaceAll("\u00a0", " ");
};

const numberOf = ({ dimension, value, style }: QuantityText, column: Column, { units }: Printing): number => {
	const printed = formatQuantity(
		{ dimension, value, style: { ...style, ...column.style, bare: true, pipeSize: false } },
		units,
	);
	return Number(printed.number.replaceAll(",", "").replace("\u2212", "-").replace("+", ""));
};
