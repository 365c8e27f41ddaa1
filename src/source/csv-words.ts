import type { Telling } from "../diagnostics/diagnose.ts";
import type { Path } from "../diagnostics/path.ts";
import { message, type Said } from "../messages/message.ts";
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

const oneOf = (dimension: Dimension): Said =>
	message("source/one-of", { names: acceptedUnits(dimension).join(", ") });

/** @param inHead what the head says besides the name */
export const noUnit = (cell: Cell, name: string, dimension: Dimension, inHead: string): Telling => ({
	what:
		inHead === "" ? message("csv/column-unit.none", { name }) : message("csv/column-unit.wrong", { name }),
	expected: oneOf(dimension),
	found: cell.text,
	mend: message("csv/column-unit.mend", { head: headOf(name, dimension) }),
});

export const unknownUnit = (written: string, name: string, dimension: Dimension): Telling => ({
	what: message("csv/column-unit.stated-wrong", { name }),
	expected: oneOf(dimension),
	found: written,
	mend: message("csv/column-unit.correct"),
});

export const noStatedUnit = ({ head }: StatedColumn, name: string, dimension: Dimension): Telling => ({
	what: message("csv/column-unit.stated-none", { name }),
	expected: oneOf(dimension),
	found: head,
	mend: message("csv/column-unit.state", { name, head, unit: acceptedUnits(dimension)[0] ?? "" }),
});

export const noSuchHead = ({ head, at }: StatedColumn, name: string, header: readonly Cell[]): Telling => ({
	what: message("csv/missing-column.stated", { head, name }),
	expected: message("csv/missing-column.stated-expected", {
		heads: header.map((cell) => cell.text).join(", "),
	}),
	mend: message("csv/missing-column.stated-mend"),
	related: [{ at: { path: at }, label: message("csv/missing-column.stated-here") }],
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
			? message("csv/missing-column.several", {
					columns: columns.map((each) => `\`${each.name}\``).join(", "),
				})
			: message("csv/missing-column.what", { name }),
		expected: message("csv/missing-column.expected", {
			count: columns.length,
			columns: columns.map((each) => `\`${headOf(each.name, each.dimension)}\``).join(", "),
		}),
		found: header.map((cell) => cell.text).join(", "),
		mend: several
			? message("csv/missing-column.several-mend", { name })
			: message("csv/missing-column.mend", { name }),
	};
};

/** Heads that nothing asked for, all at once: exports carry columns that the tool works out by itself. */
export const unreadColumns = (unread: readonly Cell[], names: readonly string[]): Telling => ({
	what: message("csv/unknown-column.what", { count: unread.length }),
	expected: message("source/one-of", { names: names.join(", ") }),
	found: unread.map((cell) => cell.text).join(", "),
	mend: message("csv/unknown-column.mend"),
});

/** What is wrong with the text of a cell that should hold a number. */
export type CellReason = "empty" | "comma" | "negative" | "more" | "wordy";

const wrongCell = (name: string): Readonly<Record<CellReason, Said>> => ({
	empty: message("csv/cell.empty", { name }),
	comma: message("csv/cell.comma", { name }),
	negative: message("csv/cell.negative", { name }),
	more: message("csv/cell.more", { name }),
	wordy: message("csv/cell.wordy", { name }),
});

export const badCell = (cell: Cell, name: string, reason: CellReason, number: string): Telling => ({
	what: wrongCell(name)[reason],
	expected: message("csv/cell.expected"),
	found: cell.text === "" ? message("source/nothing") : cell.text,
	mend:
		reason === "comma"
			? message("csv/cell.without-comma")
			: reason === "more"
				? message("csv/cell.only-number", { number })
				: message("csv/cell.mend"),
});
