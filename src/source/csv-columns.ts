import type { Code } from "../diagnostics/codes.ts";
import { diagnose, type Telling } from "../diagnostics/diagnose.ts";
import { type Checked, type Diagnostic, MOST_FAULTS, type Place } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import { toCanonical } from "../units/convert.ts";
import type { Dimension, Unit } from "../units/dimensions.ts";
import { plainText, readNumber } from "../units/parse-number.ts";
import { acceptedUnits, definitionOf, isUnitless, matchUnit, unitOf } from "../units/units-of.ts";
import type { Cell, CsvTable } from "./csv.ts";

/** A column as it is asked for. `dimension: "text"` takes the cell as it stands. */
export interface Column {
	readonly dimension: Dimension | "text";
	/** A table without it is still read. */
	readonly optional?: boolean;
	/** Further heads in use for it. */
	readonly aliases?: readonly string[];
}

/** A column that a file heads in a way of its own, as the definition states it. */
export interface StatedColumn {
	readonly head: string;
	/** Where the head does not say it. */
	readonly unit?: string;
	/** Where it is stated. */
	readonly at: Path;
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
}

interface Found {
	readonly index: number;
	readonly cell: Cell;
	readonly unit: Unit | undefined;
}

const simplified = (text: string): string => text.toLowerCase().replace(/[\s_-]+/g, "_");

/** The part of a head after the column's name: `ft` of `md_ft`, `md (ft)`, `md [ft]`; empty where it is only the name. */
const unitPart = (head: string, names: readonly string[]): string | undefined => {
	const [, bracketed, inside] = /^(.*?)\s*[([]([^)\]]*)[)\]]$/.exec(head.trim()) ?? [];
	for (const name of names) {
		const wanted = simplified(name);
		if (bracketed !== undefined && simplified(bracketed) === wanted) return inside ?? "";
		const plain = simplified(head);
		if (plain === wanted) return "";
		if (plain.startsWith(`${wanted}_`)) return head.trim().slice(wanted.length + 1);
	}
	return undefined;
};

/** The unit at the end of a foreign head: `ft` of `DEPT (ft)`, `DEPT [ft]`, `Depth_ft`, `Depth ft`. */
export const unitAtEnd = (head: string): string => {
	const text = head.trim();
	return /[([]([^)\]]*)[)\]]$/.exec(text)?.[1] ?? /[\s_]([^\s_]+)$/.exec(text)?.[1] ?? "";
};

/** A head cannot well hold `/` or blanks, so `_` may stand for either: `rate_bbl_min`, `dogleg_deg_100ft`. */
const headUnit = (written: string, dimension: Dimension): Unit | undefined => {
	for (const word of [written, written.replaceAll("_", "/"), written.replaceAll("_", " ")]) {
		const match = matchUnit(word, dimension);
		if (match !== undefined && "unit" in match) return match.unit;
	}
	return undefined;
};

/** `md_ft`: a head as it may be written, with the canonical unit. */
const headOf = (name: string, dimension: Dimension | "text"): string => {
	if (dimension === "text" || isUnitless(dimension)) return name;
	return `${name}_${definitionOf(dimension).canonical.replace(/^°/, "deg")}`;
};

const noUnit = (cell: Cell, name: string, dimension: Dimension): Telling => ({
	what: `the head of the column \`${name}\` does not say its unit`,
	expected: `one of: ${acceptedUnits(dimension).join(", ")}`,
	found: cell.text,
	mend: `write \`${headOf(name, dimension)}\`, or the unit it is in`,
});

const unknownUnit = (written: string, name: string, dimension: Dimension): Telling => ({
	what: `the unit stated for the column \`${name}\` does not measure it`,
	expected: `one of: ${acceptedUnits(dimension).join(", ")}`,
	found: written,
	mend: "correct the unit",
});

const noStatedUnit = ({ head }: StatedColumn, name: string, dimension: Dimension): Telling => ({
	what: `the head that is stated for \`${name}\` does not say its unit`,
	expected: `one of: ${acceptedUnits(dimension).join(", ")}`,
	found: head,
	mend: `state it in the definition, as in \`${name}: { head: "${head}", unit: ${acceptedUnits(dimension)[0] ?? ""} }\``,
});

const noSuchHead = ({ head, at }: StatedColumn, name: string, header: readonly Cell[]): Telling => ({
	what: `the table has no column headed \`${head}\`, which is stated for \`${name}\``,
	expected: `one of its heads: ${header.map((cell) => cell.text).join(", ")}`,
	mend: "correct the head where it is stated",
	related: [{ at: { path: at }, label: "stated here" }],
});

const missing = (name: string, dimension: Dimension | "text", header: readonly Cell[]): Telling => ({
	what: `the table has no column \`${name}\``,
	expected: `a column headed \`${headOf(name, dimension)}\``,
	found: header.map((cell) => cell.text).join(", "),
	mend: `correct its head, add the column, or state how it is headed: \`columns: { ${name}: … }\``,
});

const badCell = (cell: Cell, name: string, reason: string): Telling => ({
	what: cell.text === "" ? `\`${name}\` is empty in this row` : `\`${name}\` is not a plain number`,
	expected: "a number in the unit of the column's head, without commas or words",
	found: cell.text === "" ? "nothing" : cell.text,
	mend:
		reason === "comma"
			? "take the commas out"
			: "write the number, or take the row out if it was not measured",
});

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
	const names = Object.keys(columns) as C[];
	const found = new Map<C, Found>();
	const used = new Set<number>();
	for (const name of names) {
		const { dimension, optional = false, aliases = [] } = columns[name];
		const foreign = stated?.[name];
		const index = table.header.findIndex(
			(cell, at) =>
				!used.has(at) &&
				(foreign === undefined
					? unitPart(cell.text, [name, ...aliases]) !== undefined
					: simplified(cell.text) === simplified(foreign.head)),
		);
		const cell = table.header[index];
		if (cell === undefined) {
			const [first] = table.header;
			if (first !== undefined && foreign !== undefined)
				report("csv/missing-column", first, noSuchHead(foreign, name, table.header));
			else if (!optional && first !== undefined)
				report("csv/missing-column", first, missing(name, dimension, table.header));
			continue;
		}
		used.add(index);
		if (dimension === "text") {
			found.set(name, { index, cell, unit: undefined });
			continue;
		}
		const written =
			foreign === undefined
				? (unitPart(cell.text, [name, ...aliases]) ?? "")
				: (foreign.unit ?? unitAtEnd(cell.text));
		const unit = isUnitless(dimension) ? unitOf(dimension, "1") : headUnit(written, dimension);
		if (unit !== undefined) found.set(name, { index, cell, unit });
		else if (foreign?.unit !== undefined)
			tell("csv/column-unit", { path: foreign.at }, unknownUnit(foreign.unit, name, dimension));
		else
			report(
				"csv/column-unit",
				cell,
				foreign === undefined ? noUnit(cell, name, dimension) : noStatedUnit(foreign, name, dimension),
			);
	}
	// Where a column is missing, one that nothing reads is most likely the same slip.
	const complete = !diagnostics.some(({ code }) => code === "csv/missing-column");
	table.header.forEach((cell, index) => {
		if (used.has(index) || !complete) return;
		const telling = {
			what: "nothing reads this column",
			expected: `one of: ${names.join(", ")}`,
			mend: "leave it, or correct its head if one of those was meant",
		};
		report("csv/unknown-column", cell, telling);
	});
	if (diagnostics.some(({ severity }) => severity === "error")) return { diagnostics };
	const rows: CsvRow<C>[] = [];
	for (const cells of table.rows) {
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
			const number = readNumber(plainText(cell.text));
			if (number.ok && number.rest === "" && !(number.value < 0 && !definitionOf(dimension).signed)) {
				numbers[name] = toCanonical(number.value, dimension, unit.symbol);
				continue;
			}
			good = false;
			report("csv/cell", cell, badCell(cell, name, number.ok ? "text" : number.reason));
		}
		if (good) rows.push({ numbers, texts, at });
	}
	return { value: { rows, present: [...found.keys()] }, diagnostics };
};
