import type { Telling } from "../diagnostics/diagnose.ts";
import type { Path } from "../diagnostics/path.ts";
import type { Dimension } from "../units/dimensions.ts";
import { acceptedUnits, definitionOf, isUnitless } from "../units/units-of.ts";
import type { Cell } from "./csv.ts";

/** A column that a file heads in a way of its own, as the definition states it. */
export interface StatedColumn {
	readonly head: string;
	/** Where the head does not say it. */
	readonly unit?: string;
	/** Where it is stated. */
	readonly at: Path;
}

/** `md_ft`: a head as it may be written, with the canonical unit. */
const headOf = (name: string, dimension: Dimension | "text"): string => {
	if (dimension === "text" || isUnitless(dimension)) return name;
	return `${name}_${definitionOf(dimension).canonical.replace(/^°/, "deg")}`;
};

const oneOf = (dimension: Dimension): string => `one of: ${acceptedUnits(dimension).join(", ")}`;

/** @param inHead what the head says besides the name */
export const noUnit = (cell: Cell, name: string, dimension: Dimension, inHead: string): Telling => ({
	what:
		inHead === ""
			? `the head of the column \`${name}\` does not say its unit`
			: `the unit in the head of the column \`${name}\` does not measure it`,
	expected: oneOf(dimension),
	found: cell.text,
	mend: `write \`${headOf(name, dimension)}\`, or the unit it is in`,
});

export const unknownUnit = (written: string, name: string, dimension: Dimension): Telling => ({
	what: `the unit stated for the column \`${name}\` does not measure it`,
	expected: oneOf(dimension),
	found: written,
	mend: "correct the unit",
});

export const noStatedUnit = ({ head }: StatedColumn, name: string, dimension: Dimension): Telling => ({
	what: `the head that is stated for \`${name}\` does not say its unit`,
	expected: oneOf(dimension),
	found: head,
	mend: `state it in the definition, as in \`${name}: { head: "${head}", unit: ${acceptedUnits(dimension)[0] ?? ""} }\``,
});

export const noSuchHead = ({ head, at }: StatedColumn, name: string, header: readonly Cell[]): Telling => ({
	what: `the table has no column headed \`${head}\`, which is stated for \`${name}\``,
	expected: `one of its heads: ${header.map((cell) => cell.text).join(", ")}`,
	mend: "correct the head where it is stated",
	related: [{ at: { path: at }, label: "stated here" }],
});

/** Columns that a table lacks: of several, told at once, for it may be another table. */
export const missing = (
	columns: readonly { readonly name: string; readonly dimension: Dimension | "text" }[],
	header: readonly Cell[],
): Telling => {
	const [{ name } = { name: "" }] = columns;
	const several = columns.length > 1;
	return {
		what: several
			? `the table lacks the columns ${columns.map((each) => `\`${each.name}\``).join(", ")}`
			: `the table has no column \`${name}\``,
		expected: `${several ? "columns" : "a column"} headed ${columns.map((each) => `\`${headOf(each.name, each.dimension)}\``).join(", ")}`,
		found: header.map((cell) => cell.text).join(", "),
		mend: several
			? `look whether this is the right file; if it is, state how they are headed: \`columns: { ${name}: … }\``
			: `correct its head, add the column, or state how it is headed: \`columns: { ${name}: … }\``,
	};
};

/** Heads that nothing asked for, all at once: exports carry columns that the tool works out by itself. */
export const unreadColumns = (unread: readonly Cell[], names: readonly string[]): Telling => ({
	what: unread.length === 1 ? "nothing reads this column" : `nothing reads ${unread.length} of the columns`,
	expected: `one of: ${names.join(", ")}`,
	found: unread.map((cell) => cell.text).join(", "),
	mend: "leave them, or correct the head if one of those was meant",
});

/** What is wrong with the text of a cell that should hold a number. */
export type CellReason = "empty" | "comma" | "negative" | "more" | "no number";

export const badCell = (cell: Cell, name: string, reason: CellReason, number: string): Telling => ({
	what: {
		empty: `\`${name}\` is empty in this row`,
		comma: `\`${name}\` has a comma in it`,
		negative: `\`${name}\` is below zero, which means nothing here`,
		more: `\`${name}\` has more than a number in it`,
		"no number": `\`${name}\` is not a number`,
	}[reason],
	expected: "a number in the unit of the column's head, without commas or words",
	found: cell.text === "" ? "nothing" : cell.text,
	mend:
		reason === "comma"
			? "take the commas out"
			: reason === "more"
				? `write \`${number}\`; the unit stands in the head`
				: "write the number, or take the row out if it was not measured",
});
