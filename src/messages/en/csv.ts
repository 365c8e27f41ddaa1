import type { Entries } from "../entries.ts";

/** What is said of a table of comma-separated values. */
export const CSV = {
	"csv/cell.empty": [
		"`{name}` is empty in this row",
		"Part of a message: A cell of a table cannot be read. name: of the column.",
	],
	"csv/cell.comma": [
		"`{name}` has a comma in it",
		"Part of a message: A cell of a table cannot be read. name: of the column.",
	],
	"csv/cell.negative": [
		"`{name}` is below zero, which is not possible here",
		"Part of a message: A cell of a table cannot be read. name: of the column.",
	],
	"csv/cell.more": [
		"`{name}` holds more than a number",
		"Part of a message: A cell of a table cannot be read. name: of the column.",
	],
	"csv/cell.wordy": [
		"`{name}` is not a number",
		"Part of a message: A cell of a table cannot be read. name: of the column.",
	],
	"csv/cell.expected": [
		"a number in the unit of the column heading, without commas or words",
		"What is expected instead: A cell of a table cannot be read.",
	],
	"csv/cell.without-comma": ["remove the commas", "What to do about it: A cell of a table cannot be read."],
	"csv/cell.only-number": [
		"write `{number}`; the unit belongs in the heading",
		"What to do about it: A cell of a table cannot be read. number: as typed.",
	],
	"csv/cell.mend": [
		"write the number, or delete the row if it was not measured",
		"What to do about it: A cell of a table cannot be read.",
	],
	"csv/column-unit.none": [
		"the head of the column `{name}` does not say its unit",
		"What is wrong: the unit of a column is missing or unknown. name: of the column.",
	],
	"csv/column-unit.wrong": [
		"the unit in the head of the column `{name}` does not measure it",
		"What is wrong: the unit of a column is missing or unknown. name: of the column.",
	],
	"csv/column-unit.mend": [
		"write `{head}`, or the unit it is in",
		"What to do about it: the unit of a column is missing or unknown. head: a head with its unit.",
	],
	"csv/column-unit.stated-wrong": [
		"the unit stated for the column `{name}` does not measure it",
		"What is wrong: the unit of a column is missing or unknown. name: of the column.",
	],
	"csv/column-unit.correct": [
		"correct the unit",
		"What to do about it: the unit of a column is missing or unknown.",
	],
	"csv/column-unit.stated-none": [
		"the head that is stated for `{name}` does not say its unit",
		"What is wrong: the unit of a column is missing or unknown. name: of the column.",
	],
	"csv/column-unit.state": [
		"state it in the definition, as in `{name}: '{' head: \"{head}\", unit: {unit} '}'`",
		"What to do about it: the unit of a column is missing or unknown. name: of the column; head: as typed; unit: a unit.",
	],
	"csv/empty.what": ["the table has no rows below its heads", "What is wrong: A table has no rows."],
	"csv/empty.expected": [
		"a line of column heads, then a line for each row",
		"What is expected instead: A table has no rows.",
	],
	"csv/empty.mend": [
		"check that the right file is named and that it was exported whole",
		"What to do about it: A table has no rows.",
	],
	"csv/header.numbers": [
		"the first line of the table holds numbers, where the column headings should be",
		"What is wrong: the heads of a table do not name its columns.",
	],
	"csv/header.numbers-expected": [
		"a first line of headings, each with its unit, such as `md_ft`",
		"What is expected instead: the heads of a table do not name its columns.",
	],
	"csv/header.numbers-mend": [
		"add a line above that names each column and its unit",
		"What to do about it: the heads of a table do not name its columns.",
	],
	"csv/header.none": [
		"a column has no head",
		"Part of a message: the heads of a table do not name its columns.",
	],
	"csv/header.twice": [
		"two columns are headed `{head}`",
		"Part of a message: the heads of a table do not name its columns. head: the head as typed.",
	],
	"csv/header.expected": [
		"a head of its own over each column",
		"What is expected instead: the heads of a table do not name its columns.",
	],
	"csv/header.mend": [
		"name each column once",
		"What to do about it: the heads of a table do not name its columns.",
	],
	"csv/missing-column.stated": [
		"the table has no column headed `{head}`, which is stated for `{name}`",
		"What is wrong: A table lacks a column. head: as typed; name: of the column.",
	],
	"csv/missing-column.stated-expected": [
		"one of its heads: {heads}",
		"What is expected instead: A table lacks a column. heads: the heads of the table.",
	],
	"csv/missing-column.stated-mend": [
		"correct the head where it is stated",
		"What to do about it: A table lacks a column.",
	],
	"csv/missing-column.stated-here": ["stated here", "What a related place is: A table lacks a column."],
	"csv/missing-column.several": [
		"the table lacks the columns {columns}",
		"What is wrong: A table lacks a column. columns: names in backticks.",
	],
	"csv/missing-column.what": [
		"the table has no column `{name}`",
		"What is wrong: A table lacks a column. name: of the column.",
	],
	"csv/missing-column.several-mend": [
		"check that this is the right file; if it is, state the headings: `columns: '{' {name}: … '}'`",
		"What to do about it: A table lacks a column. name: of a column.",
	],
	"csv/missing-column.mend": [
		"correct its head, add the column, or state how it is headed: `columns: '{' {name}: … '}'`",
		"What to do about it: A table lacks a column. name: of the column.",
	],
	"csv/missing-column.expected": [
		"{count, plural, one {a column headed {columns}} other {columns headed {columns}}}",
		"What is expected instead. count: how many columns; columns: heads in backticks.",
	],
	"csv/quote.what": [
		"a quoted cell is not closed, or text follows its closing quote",
		"What is wrong: A quoted cell is not well formed.",
	],
	"csv/quote.expected": [
		"a quote at both ends of the cell, and quotes inside it doubled",
		"What is expected instead: A quoted cell is not well formed.",
	],
	"csv/quote.mend": [
		"remove the quotes; for inches write `in`",
		"What to do about it: A quoted cell is not well formed.",
	],
	"csv/row-length.what": [
		"the row has {cells} cells and the table {columns} columns",
		"What is wrong: A row has more or fewer cells than the table has columns. cells and columns: counts.",
	],
	"csv/row-length.expected": [
		"{columns} cells, with no comma inside a number",
		"What is expected instead: A row has more or fewer cells than the table has columns. columns: a count.",
	],
	"csv/row-length.too-many": [
		"remove the commas from its numbers, or put text with commas in double quotes",
		"What to do about it: A row has more or fewer cells than the table has columns.",
	],
	"csv/row-length.too-few": [
		"write the missing cells; a cell with nothing in it still has its comma",
		"What to do about it: A row has more or fewer cells than the table has columns.",
	],
	"csv/separator.what": [
		"the column heads are not separated by commas",
		"What is wrong: the cells are not separated by commas.",
	],
	"csv/separator.expected": [
		"cells separated by commas, and points for decimals",
		"What is expected instead: the cells are not separated by commas.",
	],
	"csv/separator.mend": [
		"export the table again as comma-separated values",
		"What to do about it: the cells are not separated by commas.",
	],
	"csv/unknown-column.mend": [
		"leave them, or correct the heading if you meant one of those",
		"What to do about it: A column of a table is not used.",
	],
	"csv/unknown-column.what": [
		"{count, plural, one {nothing reads this column} other {nothing reads # of the columns}}",
		"What is wrong: a table has columns that are not used. count: how many.",
	],
} as const satisfies Entries;
