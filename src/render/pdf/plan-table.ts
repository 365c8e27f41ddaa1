import type { Block, Cell, Column, Row } from "../../document/blocks.ts";
import { textWidth, type Weight } from "../../measure/text-width.ts";
import { columnUnit, printCell } from "../print/print-text.ts";
import { type ColumnWish, fitColumns } from "./fit-columns.ts";
import { piecesOf } from "./pieces.ts";
import type { Scene } from "./scene.ts";

export type TableBlock = Extract<Block, { kind: "table" }>;

/** A table as it is about to be set. Lengths are points. */
export interface TablePlan {
	readonly block: TableBlock;
	readonly scene: Scene;
	readonly size: number;
	readonly widths: readonly number[];
	readonly pad: { readonly x: number; readonly y: number };
	/** Space left of each column's text: more where text begins beside other text or beside numbers that end. */
	readonly lead: readonly number[];
}

/** Leading of table type. */
export const TABLE_LEADING = 1.24;

/** Room for a verdict's box beside its word. */
const BOX = 11;
/** Widths of the page's text that tables may take: a narrow table wants its columns near each other. */
const GRID = [1 / 2, 2 / 3, 1] as const;

export const alignOf = (column: Column): "left" | "right" | "center" => {
	const align = column.align ?? (column.kind === "quantity" ? "end" : "start");
	return align === "end" ? "right" : align === "middle" ? "center" : "left";
};

export const weightOf = (row: Row): Weight => (row.emphasis === undefined ? "regular" : "semibold");

/** A subhead over the rows below it: its one cell is as wide as the table. */
export const isGroup = (row: Row): boolean => row.emphasis === "group" && Object.keys(row.cells).length === 1;

const isBoxed = (cell: Cell | undefined): boolean => cell?.kind === "verdict" || cell?.kind === "unset";

interface Need {
	/** Width of the widest piece that may not be broken. */
	readonly least: number;
	/** Width on one line. */
	readonly whole: number;
}

/** A word as wide as this share of the page's text is rather broken at its joints than given a column to itself. */
const WIDE_WORD = 1 / 4;

const needOf = (text: string, size: number, weight: Weight, scene: Scene): Need => {
	const width = (piece: string): number => textWidth(piece, { size, weight });
	const least = (word: string): number => {
		const whole = width(word);
		return whole > WIDE_WORD * scene.width ? Math.max(...piecesOf(word).map(width)) : whole;
	};
	const lines = text.split("\n").map(width);
	return { least: Math.max(0, ...text.split(/[ \n]/).map(least)), whole: Math.max(0, ...lines) };
};

/** A boxed word keeps to one line where that takes no more than a quarter of the width. */
const cellNeed = (
	cell: Cell | undefined,
	column: Column,
	weight: Weight,
	size: number,
	scene: Scene,
): Need => {
	const text = printCell(cell, scene.printing, column);
	if (!isBoxed(cell)) return needOf(text, size, weight, scene);
	const { least, whole } = needOf(text, size, "bold", scene);
	return { least: (whole + BOX < scene.width / 4 ? whole : least) + BOX, whole: whole + BOX };
};

const columnNeed = (column: Column, block: TableBlock, size: number, scene: Scene): Need => {
	const heads = [
		needOf(column.head, size, "semibold", scene),
		needOf(columnUnit(column, scene.printing) ?? "", size, "regular", scene),
	];
	const cells = block.rows
		.filter((row) => !isGroup(row))
		.map((row) => {
			const weight = column.rowHead === true ? "semibold" : weightOf(row);
			return cellNeed(row.cells[column.id], column, weight, size, scene);
		});
	return {
		least: Math.max(...[...heads, ...cells].map((need) => need.least)),
		whole: Math.max(...[...heads, ...cells].map((need) => need.whole)),
	};
};

const leads = (columns: readonly Column[], x: number, size: number): readonly number[] =>
	columns.map((column, i) => {
		const before = columns[i - 1];
		if (before === undefined || alignOf(column) !== "left") return x;
		return x + (alignOf(before) === "right" ? size : size * 0.6);
	});

const isForWriting = (block: TableBlock): boolean =>
	block.rows.some((row) => Object.values(row.cells).some((cell) => cell.kind === "blank"));

/** The narrowest of the grid's widths in which every cell keeps to one line; else the whole. */
const tableWidth = (wholes: readonly number[], block: TableBlock, scene: Scene): number => {
	const whole = wholes.reduce((sum, width) => sum + width, 0);
	const spread = scene.design.setting === "field" || isForWriting(block);
	const part = spread ? 1 : (GRID.find((share) => whole <= share * scene.width) ?? 1);
	return part * scene.width;
};

/** A table is measured once, however often it is set. */
const planned = new WeakMap<TableBlock, TablePlan>();

/** Measures a table's cells and gives every column its width. */
export const planTable = (block: TableBlock, scene: Scene): TablePlan => {
	const known = planned.get(block);
	const same = (key: "width" | "printing" | "design"): boolean => known?.scene[key] === scene[key];
	if (known !== undefined && same("width") && same("printing") && same("design")) return { ...known, scene };
	const plan = measured(block, scene);
	planned.set(block, plan);
	return plan;
};

/** Leading of a head's lines, which stand closer. */
export const HEAD_LEADING = TABLE_LEADING * 0.94;

/** Least type of a table whose words do not fit beside each other in the type it should have [pt]. */
const LEAST_SIZE = 7;

const measured = (
	block: TableBlock,
	scene: Scene,
	size = block.dense === true ? scene.design.dense : scene.design.table,
): TablePlan => {
	const { design } = scene;
	// A sheet read at arm's length is loose; a table of it that must go on one page closes up.
	const close = block.dense === true && design.setting === "field" ? 0.6 : 1;
	const pad = { x: block.dense === true ? design.cellX * 0.75 : design.cellX, y: design.cellY * close };
	const lead = leads(block.columns, pad.x, size);
	const needs = block.columns.map((column) => columnNeed(column, block, size, scene));
	const around = (i: number): number => (lead[i] ?? pad.x) + pad.x;
	const needed = needs.reduce((sum, { least }, i) => sum + least + around(i), 0);
	if (needed > scene.width && size > LEAST_SIZE)
		return measured(block, scene, Math.max(LEAST_SIZE, size - 0.25));
	const width = tableWidth(
		needs.map(({ whole }, i) => whole + around(i) + size),
		block,
		scene,
	);
	const wishes = needs.map(({ least, whole }, i): ColumnWish => {
		const narrow = width < scene.width;
		return { share: block.columns[i]?.width ?? 1, least: (narrow ? whole : least) + around(i) };
	});
	return { block, scene, size, widths: fitColumns(wishes, width), pad, lead };
};
