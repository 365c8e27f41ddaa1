import type { Block, Cell, Column } from "../../document/blocks.ts";
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

/** The caption of a table as it is printed: its number, where it has one, before its words. */
export const tableCaption = (
	{ number, caption, constants = [] }: Extract<Block, { kind: "table" }>,
	printing: Printing,
): string => {
	const whole = constants.length === 0 ? caption : `${caption}. ${printInline(constants, printing)}`;
	return number === undefined ? whole : `${number}  ${whole}`;
};

export const figureCaption = (
	{ number, caption }: Extract<Block, { kind: "figure" }>,
	printing: Printing,
): string =>
	number === undefined ? printInline(caption, printing) : `${number}  ${printInline(caption, printing)}`;

/** A table or figure of a list of them; `to` is where it leads, an id of this paper or of another. */
export interface Listed {
	readonly to: string;
	readonly number: string;
	readonly title: string;
}

/** What a list of tables or figures lists, in order. */
export const entriesOf = (
	{ of, elsewhere }: Extract<Block, { kind: "list-of" }>,
	blocks: readonly Block[],
	printing: Printing,
): readonly Listed[] => elsewhere ?? listedIn(blocks, of, printing);

/** The numbered tables or figures of a paper, in order. */
const listedIn = (
	blocks: readonly Block[],
	of: "tables" | "figures",
	printing: Printing,
): readonly Listed[] =>
	blocks.flatMap((block): readonly Listed[] => {
		switch (block.kind) {
			case "callout":
				return listedIn(block.blocks, of, printing);
			case "beside":
				return listedIn([...block.left, ...block.right], of, printing);
			case "table":
				return of === "tables" && block.number !== undefined && block.id !== undefined
					? [{ to: block.id, number: block.number, title: block.caption }]
					: [];
			case "figure":
				return of === "figures" && block.number !== undefined && block.id !== undefined
					? [
							{
								to: block.id,
								number: block.number,
								title: printInline(block.caption, printing),
							},
						]
					: [];
			default:
				return [];
		}
	});
