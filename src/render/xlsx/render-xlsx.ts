import { unzipSync, zipSync } from "fflate";
import writeExcelFile, { type Cell, type Sheet } from "write-excel-file/node";
import type { PaperDocument } from "../../document/document.ts";
import { type PlainTable, type TableValue, tablesOf } from "../tables/tables.ts";

/** The longest name that a sheet may have, and the signs that it may not. */
const LONGEST_NAME = 31;
const NOT_IN_NAMES = /[[\]:*?/\\']/gu;

/**
 * Every table of a paper in one workbook, a sheet a table behind a sheet of contents that says which paper of which
 * well it is. Numbers are numbers with the decimals that the paper prints, units stand in the heads, and text is text:
 * no cell is a formula. The same paper gives the same bytes.
 */
export const renderXlsx = async (document: PaperDocument): Promise<Uint8Array> => {
	const tables = tablesOf(document);
	const names = tables.map((table, i) => sheetName(table, i));
	const bytes = await writeExcelFile([
		contents(document, tables, names),
		...tables.map((table, i) => sheetOf(table, names[i] ?? "")),
	]).toBuffer();
	return timeless(new Uint8Array(bytes));
};

/** `07 Slurries`: the number keeps names apart that are cut short. */
const sheetName = ({ caption }: PlainTable, i: number): string =>
	`${String(i + 1).padStart(2, "0")} ${caption.replaceAll(NOT_IN_NAMES, " ").replaceAll(/\s+/gu, " ")}`
		.slice(0, LONGEST_NAME)
		.trim();

const WIDEST = 60;
const NARROWEST = 8;

const sheetOf = ({ columns, rows }: PlainTable, name: string): Sheet<never> => {
	const heads = columns.map(({ head, unit }) => (unit === undefined ? head : `${head}, ${unit}`));
	const columnValues = columns.map(({ id }) => rows.map((row) => row[id] ?? null));
	const formats = columnValues.map(formatOf);
	return {
		sheet: name,
		stickyRowsCount: 1,
		columns: heads.map((head, i) => ({
			width: Math.min(WIDEST, Math.max(NARROWEST, ...[head, ...(columnValues[i] ?? [])].map(lengthOf)) + 2),
		})),
		data: [
			heads.map((head): Cell => ({ value: head, type: String, fontWeight: "bold", wrap: true })),
			...rows.map((row) => columns.map(({ id }, i) => cellOf(row[id] ?? null, formats[i]))),
		],
	};
};

const lengthOf = (value: TableValue): number => (value === null ? 0 : String(value).length);

const cellOf = (value: TableValue, format: string | undefined): Cell => {
	if (value === null) return null;
	if (typeof value === "string") return { value, type: String };
	return { value, type: Number, ...(format === undefined ? {} : { format }) };
};

/** With as many decimals as the number of the column that is printed with most; nothing where it has no number. */
const formatOf = (values: readonly TableValue[]): string | undefined => {
	const decimals = values.flatMap((value) =>
		typeof value === "number" ? [String(value).split(".")[1]?.length ?? 0] : [],
	);
	if (decimals.length === 0) return undefined;
	const most = Math.max(...decimals);
	return most === 0 ? "#,##0" : `#,##0.${"0".repeat(most)}`;
};

/** Which paper it is, so that a table is never taken for another's; then the tables with the sheets that hold them. */
const contents = (
	{ imprint }: PaperDocument,
	tables: readonly PlainTable[],
	names: readonly string[],
): Sheet<never> => {
	const { operator, well, apiNumber, title, state, revision, issued, digest, caution } = imprint;
	const lines = [
		title,
		`${operator} · ${well}${apiNumber === undefined ? "" : ` · API ${apiNumber}`}`,
		`${state} · ${imprint.words.revision} ${revision} · ${issued} · ${digest}`,
		caution,
	];
	const text = (value: string): Cell => ({ value, type: String });
	return {
		sheet: imprint.words.contents.slice(0, LONGEST_NAME),
		columns: [{ width: LONGEST_NAME + 4 }, { width: WIDEST }, { width: WIDEST }],
		data: [
			...lines.map((line, i): Cell[] => [
				i === 0 ? { value: line, type: String, fontWeight: "bold" } : text(line),
			]),
			[],
			...tables.map(({ section, caption }, i): Cell[] => [
				text(names[i] ?? ""),
				text(section),
				text(caption),
			]),
		],
	};
};

/** The first day that the form knows: a workbook tells when its paper was issued, and not when it was made. */
const FIRST_DAY = new Date(1980, 0, 1);

/** The same archive without the time of its making. */
const timeless = (bytes: Uint8Array): Uint8Array => zipSync(unzipSync(bytes), { mtime: FIRST_DAY, level: 6 });
