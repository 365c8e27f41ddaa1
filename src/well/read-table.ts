import type { Known } from "../cite/known.ts";
import type { ForeignHead } from "../definition/columns-field.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { type CsvTable, readCsv } from "../source/csv.ts";
import {
	type Column,
	type CsvColumns,
	type CsvRow,
	readColumns,
	type StatedColumns,
} from "../source/csv-columns.ts";
import type { StatedColumn } from "../source/csv-words.ts";
import { decodeText, LARGEST_TABLE } from "../source/decode-text.ts";
import { type ForeignTable, foreignTable } from "../source/foreign/table-text.ts";
import type { Dimension } from "../units/dimensions.ts";
import { quantity } from "../units/quantity.ts";
import { definitionOf } from "../units/units-of.ts";
import { type Desk, fault } from "./desk.ts";
import type { ReadFile } from "./read-file.ts";

/** A table that the definition names, read. */
export interface NamedTable<C extends string> {
	readonly table: CsvTable;
	readonly columns: CsvColumns<C>;
}

/** Heads that a file has of its own, as the definition states them beside the file's name. */
export type Foreign<C extends string> = Readonly<Partial<Record<C, ForeignHead>>> | undefined;

const placed = <C extends string>(stated: Foreign<C>, at: Path): StatedColumns<C> =>
	Object.fromEntries(
		Object.entries<ForeignHead | undefined>(stated ?? {}).flatMap(([name, column]) => {
			if (column === undefined) return [];
			return [[name, { ...column, at: [...at, name, ...(column.unit === undefined ? [] : ["unit"])] }]];
		}),
	) as Readonly<Record<string, StatedColumn>> as StatedColumns<C>;

/** Reads a table that the definition names, as CSV or in a format that others send; every fault in it is told at its own place in the file. */
export const readNamedTable = <C extends string>(
	name: string,
	at: Path,
	columns: Readonly<Record<C, Column>>,
	files: ReadFile,
	desk: Desk,
	stated?: Foreign<C>,
): NamedTable<C> | undefined => {
	const file = files(name);
	if ("refused" in file)
		return fault(desk, file.code, at, {
			what: message("file/refused", { why: file.refused }),
			expected: message("well/table-file.expected"),
			found: name,
			mend: message("well/table-file.mend"),
		});
	const foreign = foreignTable(file.bytes);
	if (foreign !== undefined && "refused" in foreign)
		return fault(desk, "file/not-found", at, {
			what: message("file/refused", { why: foreign.refused }),
			expected: message("well/table-file.expected"),
			found: name,
			mend: message("well/table-file.mend"),
		});
	const text =
		foreign === undefined
			? decodeText(file.bytes, file.file, LARGEST_TABLE)
			: { value: foreign.text, diagnostics: [] };
	desk.faults.push(...text.diagnostics);
	if (text.value === undefined) return undefined;
	const table = readCsv(text.value, file.file);
	desk.faults.push(...table.diagnostics);
	if (table.value === undefined) return undefined;
	const read = readColumns(table.value, columns, placed(stated, [...at.slice(0, -1), "columns"]));
	desk.faults.push(...read.diagnostics);
	if (foreign !== undefined && read.value !== undefined) tellReading(name, at, foreign, read.value, desk);
	return read.value === undefined ? undefined : { table: table.value, columns: read.value };
};

/** Which column of a file in another format was taken for what stands among the assumptions, so that it can be checked. */
const tellReading = (
	name: string,
	at: Path,
	{ format, north }: ForeignTable,
	{ heads }: CsvColumns,
	desk: Desk,
): void => {
	const columns = Object.entries(heads).flatMap(([column, head]) =>
		head === undefined ? [] : [message("foreign/read-as.column", { name: column, head })],
	);
	desk.assumptions.push({
		id: `table-${name}`,
		at,
		what: message("foreign/read-as.what", {
			file: name,
			format,
			columns: {
				list: [...columns, ...(north === undefined ? [] : [message("foreign/read-as.north", { north })])],
				joined: "and",
			},
		}),
		why: message("foreign/read-as.why"),
	});
};

/** A number of a row as a value that knows its file; nothing where the cell is empty or not there. */
export const cellValue = <C extends string, D extends Dimension>(
	row: CsvRow<C>,
	column: C,
	dimension: D,
	at: Path,
	file: string,
): Known<D> | undefined => {
	const number = row.numbers[column];
	if (number === undefined) return undefined;
	const { canonical } = definitionOf(dimension);
	const range = row.at[column]?.range;
	return {
		dimension,
		value: quantity(dimension, number),
		from: {
			kind: "definition",
			at,
			text: canonical === "1" ? String(number) : `${number} ${canonical}`,
			file,
			...(range === undefined ? {} : { range }),
		},
	};
};
