import type { Block, Column, Row } from "../../document/blocks.ts";
import type { PaperDocument } from "../../document/document.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import {
	columnUnit,
	entriesOf,
	figureCaption,
	type Printing,
	printCell,
	printInline,
	printingOf,
	tableCaption,
} from "../print/print-text.ts";
import { PRINT_WORDS } from "../print/print-words.ts";

const BETWEEN = " | ";

/**
 * A paper as plain text, a line to each paragraph, fact and table row, for comparing and for golden tests. Every word
 * and number that the other renderers print is there, in reading order.
 */
export const renderText = (document: PaperDocument): string => {
	const printing = printingOf(document);
	const { imprint } = document;
	const head = [
		imprint.operator,
		imprint.well,
		imprint.apiNumber,
		imprint.state,
		`${imprint.words.revision} ${imprint.revision}`,
		imprint.issuedAs,
		imprint.validUntil,
		imprint.digest,
	].filter((part) => part !== undefined);
	const sections = document.sections.flatMap((section) => [
		"",
		`## ${section.number === undefined ? "" : `${section.number} `}${section.title}`,
		"",
		...setBlocks(section.blocks, document, printing),
	]);
	return [
		`# ${imprint.title}`,
		...(imprint.subtitle === undefined ? [] : [imprint.subtitle]),
		head.join(BETWEEN),
		imprint.caution,
		...sections,
		"",
	].join("\n");
};

const setBlocks = (
	blocks: readonly Block[],
	document: PaperDocument,
	printing: Printing,
): readonly string[] => blocks.flatMap((block) => setBlock(block, document, printing));

const indented = (lines: readonly string[]): readonly string[] =>
	lines.map((line) => (line === "" ? "" : `  ${line}`));

const noted = (words: string, note: string | undefined): string =>
	note === undefined ? words : `${words} (${note})`;

const setBlock = (block: Block, document: PaperDocument, printing: Printing): readonly string[] => {
	const words = PRINT_WORDS[document.language];
	switch (block.kind) {
		case "heading":
			return ["", `${"#".repeat(block.level + 1)} ${block.text}`, ""];
		case "paragraph":
			return [printInline(block.children, printing)];
		case "list":
			return block.items.flatMap((item, i) => {
				const [first = "", ...rest] = setBlocks(item, document, printing);
				return [`${block.ordered ? `${i + 1}.` : "-"} ${first}`, ...indented(rest)];
			});
		case "facts":
			return [
				...(block.caption === undefined ? [] : [`[${block.caption}]`]),
				...block.items.map((item) => noted(`${item.label}: ${printCell(item.value, printing)}`, item.note)),
			];
		case "figures":
			return block.items.map((item) => noted(`${printCell(item.value, printing)} ${item.label}`, item.note));
		case "table":
			return [
				"",
				`[${tableCaption(block, printing)}]`,
				block.columns.map((column) => columnHead(column, printing)).join(BETWEEN),
				...block.rows.map((row) => tableRow(row, block.columns, printing)),
				...(block.note === undefined ? [] : [printInline(block.note, printing)]),
				"",
			];
		case "figure":
			return [
				"",
				`[${figureCaption(block, printing)}]`,
				block.drawing.scale,
				`${block.drawing.title}: ${block.drawing.alternative}`,
				...indented(labels(block.drawing)),
				"",
			];
		case "callout":
			return [
				`! ${words.tones[block.tone]}: ${block.title}`,
				...indented(setBlocks(block.blocks, document, printing)),
			];
		case "columns":
			return setBlocks(block.blocks, document, printing);
		case "sign-in":
			return [
				`[${block.columns.map((column) => column.head).join(BETWEEN)}] × ${block.lines * (block.abreast ?? 1)}`,
			];
		case "contents":
			return [`[${document.imprint.words.contents}]`];
		case "list-of":
			return [
				`[${block.caption}]`,
				...entriesOf(
					block,
					document.sections.flatMap((section) => section.blocks),
					printing,
				).map(({ number, title }) => `${number} ${title}`),
			];
		case "beside":
			return setBlocks([...block.left, ...block.right], document, printing);
		case "page-break":
			return [];
		default:
			return block satisfies never;
	}
};

const columnHead = (column: Column, printing: Printing): string => {
	const unit = columnUnit(column, printing);
	return unit === undefined ? column.head : `${column.head}, ${unit}`;
};

const tableRow = (row: Row, columns: readonly Column[], printing: Printing): string => {
	const cells = Object.values(row.cells);
	if (row.emphasis === "group" && cells.length === 1) return `> ${printCell(cells[0], printing)}`;
	const line = columns.map((column) => printCell(row.cells[column.id], printing, column)).join(BETWEEN);
	return row.emphasis === "total" ? `= ${line}` : line;
};

const labels = (drawing: Drawing): readonly string[] => {
	const words = (shapes: readonly Shape[]): readonly string[] =>
		shapes.flatMap((shape) =>
			shape.kind === "group" ? words(shape.children) : shape.kind === "text" ? [shape.text] : [],
		);
	return words(drawing.shapes);
};
