import { stringify } from "csv-stringify/sync";
import type { PaperDocument } from "../../document/document.ts";
import { type PlainTable, tablesOf } from "./tables.ts";

export interface TableFile {
	/** Number in reading order and caption: `07-slurries`. */
	readonly name: string;
	readonly text: string;
}

const slug = (caption: string): string =>
	caption
		.normalize("NFKD")
		.toLowerCase()
		.replaceAll(/[^a-z0-9]+/gu, "-")
		.replaceAll(/^-+|-+$/gu, "")
		.slice(0, 60)
		.replace(/-$/u, "");

const headOf = ({ head, unit }: PlainTable["columns"][number]): string =>
	unit === undefined ? head : `${head}, ${unit}`;

/**
 * Each table of a paper as a CSV file: heads with their units in the first line, numbers bare, UTF-8 with a byte order
 * mark and CRLF, so that a spreadsheet reads the signs and the columns (RFC 4180).
 */
export const renderCsv = (document: PaperDocument): readonly TableFile[] =>
	tablesOf(document).map((table, i) => ({
		name: `${String(i + 1).padStart(2, "0")}-${slug(table.caption)}`,
		text: stringify([table.columns.map(headOf), ...table.rows.map((row) => cellsOf(row, table))], {
			bom: true,
			record_delimiter: "windows",
			escape_formulas: true,
		}),
	}));

/** A number stays one: a leading minus is escaped in text alone, where a spreadsheet might take it for a formula. */
const cellsOf = (row: PlainTable["rows"][number], { columns }: PlainTable): readonly (string | number)[] =>
	columns.map(({ id }) => row[id] ?? "");

/** All tables of a paper in one JSON file, with the paper's own identity, so that a table is never taken for another's. */
export const renderTablesJson = (document: PaperDocument): string => {
	const { paper, language, units, imprint } = document;
	const { operator, well, apiNumber, state, revision, issued, digest, caution } = imprint;
	return `${JSON.stringify(
		{
			paper,
			language,
			units,
			operator,
			well,
			api_number: apiNumber ?? null,
			state,
			revision,
			issued,
			digest,
			caution,
			tables: tablesOf(document),
		},
		undefined,
		"\t",
	)}\n`;
};
