import type { Cell, Column } from "../../document/blocks.ts";
import type { Language, PaperDocument } from "../../document/document.ts";
import type { Inline, QuantityText } from "../../document/inline.ts";
import { printedUnit, quantityString, type UnitSystem } from "../../units/format.ts";
import { PRINT_WORDS } from "./print-words.ts";

/** What printing a number or a verdict depends on. */
export interface Printing {
	readonly units: UnitSystem;
	readonly language: Language;
}

export const printingOf = (document: PaperDocument): Printing => ({
	units: document.units,
	language: document.language,
});

/** A dash, for a cell that holds nothing because nothing belongs there. */
export const NOTHING = "–";

export const printQuantity = (quantity: QuantityText, { units, language }: Printing): string =>
	quantityString(quantity, units, language);

/** The words of running text, without its emphasis and links. */
export const printInline = (children: readonly Inline[], printing: Printing): string =>
	children
		.map((inline) => {
			switch (inline.kind) {
				case "text":
					return inline.text;
				case "strong":
				case "emphasis":
				case "link":
					return printInline(inline.children, printing);
				case "verdict":
					return PRINT_WORDS[printing.language].verdicts[inline.verdict];
				case "quantity":
					return printQuantity(inline, printing);
				default:
					return inline satisfies never;
			}
		})
		.join("");

/** A cell's words. With its column: a number of the column's dimension is set the column's way, without unit. */
export const printCell = (cell: Cell | undefined, printing: Printing, column?: Column): string => {
	if (cell === undefined) return NOTHING;
	switch (cell.kind) {
		case "quantity":
			return printQuantity(column === undefined ? cell : inColumn(cell, column), printing);
		case "text":
		case "unset":
			return cell.text;
		case "rich":
			return printInline(cell.children, printing);
		case "verdict":
			return PRINT_WORDS[printing.language].verdicts[cell.verdict];
		case "blank":
			return "";
		case "none":
			return NOTHING;
		default:
			return cell satisfies never;
	}
};

/** One style for the whole column, so that its decimals align; a number of another dimension keeps its own and its unit. */
const inColumn = (cell: QuantityText, column: Column): QuantityText =>
	column.dimension === cell.dimension
		? { ...cell, style: { ...cell.style, ...column.style, bare: true } }
		: cell;

/** The unit under a column's head; absent where the column has none. */
export const columnUnit = (column: Column, { units, language }: Printing): string | undefined => {
	if (column.dimension === undefined) return undefined;
	const unit = printedUnit(column.dimension, units, column.style);
	return unit === "" ? undefined : (PRINT_WORDS[language].units[unit] ?? unit);
};
