import type { Code } from "../diagnostics/codes.ts";
import { diagnose, type Telling } from "../diagnostics/diagnose.ts";
import { type Checked, type Diagnostic, MOST_FAULTS } from "../diagnostics/diagnostic.ts";
import type { Range } from "../diagnostics/source-text.ts";
import { message, type Said } from "../messages/message.ts";
import { LARGEST_TABLE, textFault } from "./decode-text.ts";

/** One cell: its text without quotes and outer blanks, and where it stands. */
export interface Cell {
	readonly text: string;
	readonly range: Range;
}

export interface CsvTable {
	readonly file: string;
	/** The text that ranges count in: without a byte order mark. */
	readonly text: string;
	readonly header: readonly Cell[];
	/** As many cells in each row as in the header; blank lines are left out. */
	readonly rows: readonly (readonly Cell[])[];
}

interface Scan {
	readonly rows: readonly (readonly Cell[])[];
	/** First place where a quoted cell breaks the rules. */
	readonly badQuote?: Range;
}

/** A cell in quotes with doubled quotes inside, or anything up to the next comma or line end. */
const CELL = /[ \t]*"((?:[^"]|"")*)"[ \t]*(?=[,\r\n]|$)|([^,\r\n]*)/y;

const scan = (text: string): Scan => {
	const rows: Cell[][] = [];
	let row: Cell[] = [];
	let offset = 0;
	const endRow = (): void => {
		if (row.length > 1 || row.some((cell) => cell.text !== "")) rows.push(row);
		row = [];
	};
	while (offset <= text.length) {
		CELL.lastIndex = offset;
		const [whole = "", quoted, bare = ""] = CELL.exec(text) ?? [];
		const start = offset + (/^\s*/.exec(whole)?.[0].length ?? 0);
		const end = Math.max(start, offset + whole.trimEnd().length);
		if (quoted === undefined && bare.trimStart().startsWith('"')) return { rows, badQuote: [start, end] };
		row.push({
			text: quoted === undefined ? bare.trim() : quoted.replaceAll('""', '"'),
			range: [start, end],
		});
		offset += whole.length;
		if (text.startsWith(",", offset)) {
			offset += 1;
			continue;
		}
		endRow();
		if (offset >= text.length) break;
		offset += text.startsWith("\r\n", offset) ? 2 : 1;
	}
	return { rows };
};

const QUOTE: Telling = {
	what: message("csv/quote.what"),
	expected: message("csv/quote.expected"),
	mend: message("csv/quote.mend"),
};

const SEPARATOR: Telling = {
	what: message("csv/separator.what"),
	expected: message("csv/separator.expected"),
	mend: message("csv/separator.mend"),
};

const EMPTY: Telling = {
	what: message("csv/empty.what"),
	expected: message("csv/empty.expected"),
	mend: message("csv/empty.mend"),
};

const NUMBER = /^[-+]?\d+(?:\.\d+)?$/;

const headFault = (header: readonly Cell[]): { cell: Cell; telling: Telling } | undefined => {
	const [head] = header;
	if (head !== undefined && header.every(({ text }) => NUMBER.test(text)))
		return {
			cell: head,
			telling: {
				what: message("csv/header.numbers"),
				expected: message("csv/header.numbers-expected"),
				found: header.map(({ text }) => text).join(", "),
				mend: message("csv/header.numbers-mend"),
			},
		};
	const seen = new Set<string>();
	for (const cell of header) {
		const name = cell.text.toLowerCase();
		if (name !== "" && !seen.has(name)) {
			seen.add(name);
			continue;
		}
		const what: Said =
			name === "" ? message("csv/header.none") : message("csv/header.twice", { head: cell.text });
		return {
			cell,
			telling: {
				what,
				expected: message("csv/header.expected"),
				mend: message("csv/header.mend"),
			},
		};
	}
	return undefined;
};

const rowLength = (row: readonly Cell[], columns: number): Telling => ({
	what: message("csv/row-length.what", { cells: row.length, columns: columns }),
	expected: message("csv/row-length.expected", { columns: columns }),
	mend: row.length > columns ? message("csv/row-length.too-many") : message("csv/row-length.too-few"),
});

/** Lines above the heads that start with `#` are remarks, but for one with as many cells as the line below: the heads. */
const withoutRemarks = (rows: Scan["rows"]): Scan["rows"] => {
	const first = rows.findIndex((row) => !row[0]?.text.startsWith("#"));
	if (first <= 0) return rows;
	const headed = rows[first - 1]?.length === rows[first]?.length;
	return rows.slice(headed ? first - 1 : first);
};

/** Some programs end every line with a comma; a last column without a head and without a value is none. */
const withoutEmptyColumn = (rows: Scan["rows"]): Scan["rows"] => {
	const width = rows[0]?.length ?? 0;
	const empty =
		width > 1 && rows.every((row) => row.length < width || (row.length === width && row.at(-1)?.text === ""));
	return empty && rows[0]?.at(-1)?.text === "" ? rows.map((row) => row.slice(0, width - 1)) : rows;
};

/**
 * Reads a table of comma-separated values with a line of heads. Every cell knows its place. Rows of the wrong length
 * are reported and left out; the value is absent where the table as a whole cannot be read.
 *
 * @source rfc-4180, § 2 (blanks around cells are dropped besides, and lines may end in any way)
 * @param file as the user named it; it goes into the place of every fault
 */
export const readCsv = (text: string, file: string): Checked<CsvTable> => {
	const body = text.replace(/^\ufeff/, "");
	const at = (code: Code, range: Range, telling: Telling): Diagnostic =>
		diagnose(code, { file, path: [], range }, telling);
	const unreadable = textFault(body, file, LARGEST_TABLE);
	if (unreadable !== undefined) return { diagnostics: [unreadable] };
	const { rows, badQuote } = scan(body);
	if (badQuote !== undefined) return { diagnostics: [at("csv/quote", badQuote, QUOTE)] };
	const [header = [], ...lines] = withoutEmptyColumn(withoutRemarks(rows));
	const [only] = header;
	if (header.length === 1 && only !== undefined && /[;\t]/.test(only.text))
		return { diagnostics: [at("csv/separator", only.range, SEPARATOR)] };
	const bad = headFault(header);
	if (bad !== undefined) return { diagnostics: [at("csv/header", bad.cell.range, bad.telling)] };
	if (lines.length === 0) return { diagnostics: [at("csv/empty", only?.range ?? [0, 0], EMPTY)] };
	const diagnostics: Diagnostic[] = [];
	const kept = lines.filter((row) => {
		if (row.length === header.length) return true;
		const range: Range = [row[0]?.range[0] ?? 0, row.at(-1)?.range[1] ?? 0];
		if (diagnostics.length < MOST_FAULTS)
			diagnostics.push(at("csv/row-length", range, rowLength(row, header.length)));
		return false;
	});
	return { value: { file, text: body, header, rows: kept }, diagnostics };
};
