import type { CodeEntry } from "../codes.ts";

/** Faults of tables in CSV files: surveys, stage rows. */
export const CSV_CODES = {
	"csv/cell": {
		severity: "error",
		title: "A cell of a table cannot be read",
		explain:
			"Each cell of a numeric column holds one plain number in the unit its head names, without commas or words. One bad " +
			"station shifts the whole path below it, so no cell is skipped or guessed. Correct it, or take the row out.",
	},
	"csv/column-unit": {
		severity: "error",
		title: "The unit of a column is missing or unknown",
		explain:
			"The head of a numeric column carries its unit: `md_ft`, `inclination_deg`, `md (m)`. Without it feet and meters " +
			"look the same. Add the unit to the head.",
	},
	"csv/empty": {
		severity: "error",
		title: "A table has no rows",
		explain:
			"The file has at most a line of column heads. Look whether the export was complete and the right file was named.",
	},
	"csv/header": {
		severity: "error",
		title: "The heads of a table do not name its columns",
		explain:
			"The first line names each column once. Here a head is empty, or two are the same, so it is not known which column " +
			"holds the depth. Name each column once.",
	},
	"csv/missing-column": {
		severity: "error",
		title: "A table lacks a column",
		explain:
			"The table is read by the names in its first line, in any order. A column that the calculation needs is not among " +
			"them. Add it, or correct its head.",
	},
	"csv/quote": {
		severity: "error",
		title: "A quoted cell is not well formed",
		explain:
			"A cell in double quotes ends at its closing quote, and a quote inside it is doubled (RFC 4180). Here the closing " +
			"quote is missing or text follows it. An inch mark is the usual cause: write `in` instead.",
	},
	"csv/row-length": {
		severity: "error",
		title: "A row has more or fewer cells than the table has columns",
		explain:
			"Then it is not known which cell belongs to which column. A comma inside a number (`3,250.5`) splits the cell in two; " +
			"a decimal comma does the same. Write numbers without commas.",
	},
	"csv/separator": {
		severity: "error",
		title: "The cells are not separated by commas",
		explain:
			"The first line is separated by semicolons or tabs. Spreadsheets set to some languages export so, and then also " +
			"write decimal commas, which cannot be told from separators. Export it as comma-separated with decimal points.",
	},
	"csv/unknown-column": {
		severity: "warning",
		title: "A column of a table is not used",
		explain:
			"The table has a column that nothing reads. That does no harm, unless its head is misspelled and the column you meant " +
			"is taken as absent. Correct the head, or leave the column as it is.",
	},
} as const satisfies Record<string, CodeEntry>;
