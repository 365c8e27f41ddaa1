import type { Code } from "../diagnostics/codes.ts";
import { diagnose, type Telling } from "../diagnostics/diagnose.ts";
import { type Checked, type Diagnostic, MOST_FAULTS, type Place } from "../diagnostics/diagnostic.ts";
import { toCanonical } from "../units/convert.ts";
import type { Dimension } from "../units/dimensions.ts";
import { plainText, readNumber } from "../units/parse-number.ts";
import { definitionOf } from "../units/units-of.ts";
import type { Cell, CsvTable } from "./csv.ts";
import { findColumns } from "./csv-heads.ts";
import { badCell, type CellReason, type StatedColumn, unreadColumns } from "./csv-words.ts";

/** A column as it is asked for. `dimension: "text"` takes the cell as it stands. */
export interface Column {
	readonly dimension: Dimension | "text";
	/** A table without it is still read. */
	readonly optional?: boolean;
	/** Further heads in use for it. */
	readonly aliases?: readonly string[];
}

export type StatedColumns<C extends string> = Readonly<Partial<Record<C, StatedColumn>>>;

export interface CsvRow<C extends string = string> {
	/** Numbers in the dimension's canonical unit; empty cells of optional columns are absent. */
	readonly numbers: Readonly<Partial<Record<C, number>>>;
	readonly texts: Readonly<Partial<Record<C, string>>>;
	readonly at: Readonly<Partial<Record<C, Place>>>;
}

export interface CsvColumns<C extends string = string> {
	readonly rows: readonly CsvRow<C>[];
	/** Columns that the table has. */
	readonly present: readonly C[];
	/** How the table heads each of them. */
	readonly heads: Readonly<Partial<Record<C, string>>>;
}

type CellRead =
	| { readonly value: number }
	/** `number` is the part that is one. */
	| { readonly reason: CellReason; readonly number: string };

const cellNumber = (text: string, dimension: Dimension): CellRead => {
	if (text === "") return { reason: "empty", number: "" };
	const plain = plainText(text);
	const read = readNumber(plain);
	if (!read.ok) return { reason: read.reason === "comma" ? "comma" : "wordy", number: "" };
	const number = plain.slice(0, plain.length - read.rest.length).trim();
	// Digits after a letter were one number (`2O5`): what stands before it is none.
	if (/^\S*\d/.test(read.rest)) return { reason: "wordy", number };
	if (read.rest !== "") return { reason: "more", number };
	if (read.value < 0 && !definitionOf(dimension).signed) return { reason: "negative", number };
	return { value: read.value };
};

/**
 * The columns asked for, by name and in any order, converted to canonical units. Every bad cell is reported; a row
 * with one is left out, and the diagnostics say so by being errors.
 *
 * @param stated how the file heads columns in a way of its own
 */
export const readColumns = <C extends string>(
	table: CsvTable,
	columns: Readonly<Record<C, Column>>,
	stated?: StatedColumns<C>,
): Checked<CsvColumns<C>> => {
	const diagnostics: Diagnostic[] = [];
	const tell = (code: Code, at: Place, telling: Telling): void => {
		if (diagnostics.length < MOST_FAULTS) diagnostics.push(diagnose(code, at, telling));
	};
	const report = (code: Code, { range }: Cell, telling: Telling): void =>
		tell(code, { file: table.file, path: [], range }, telling);
	const { found, unread, rows: lines } = findColumns(table, columns, stated, tell);
	const [stranger] = unread;
	if (stranger !== undefined)
		report("csv/unknown-column", stranger, unreadColumns(unread, Object.keys(columns)));
	if (diagnostics.some(({ severity }) => severity === "error")) return { diagnostics };
	const rows: CsvRow<C>[] = [];
	for (const cells of lines) {
		const numbers: Partial<Record<C, number>> = {};
		const texts: Partial<Record<C, string>> = {};
		const at: Partial<Record<C, Place>> = {};
		let good = true;
		for (const [name, { index, unit }] of found) {
			const cell = cells[index];
			const { dimension, optional = false } = columns[name];
			if (cell === undefined || (cell.text === "" && optional)) continue;
			at[name] = { file: table.file, path: [], range: cell.range };
			if (unit === undefined || dimension === "text") {
				texts[name] = cell.text;
				continue;
			}
			const read = cellNumber(cell.text, dimension);
			if ("value" in read) {
				numbers[name] = toCanonical(read.value, dimension, unit.symbol);
				continue;
			}
			good = false;
			report("csv/cell", cell, badCell(cell, name, read.reason, read.number));
		}
		if (good) rows.push({ numbers, texts, at });
	}
	const heads: Partial<Record<C, string>> = {};
	for (const [name, { index }] of found) heads[name] = table.header[index]?.text ?? name;
	return { value: { rows, present: [...found.keys()], heads }, diagnostics };
};
