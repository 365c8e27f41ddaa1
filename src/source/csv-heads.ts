import type { Code } from "../diagnostics/codes.ts";
import type { Telling } from "../diagnostics/diagnose.ts";
import type { Place } from "../diagnostics/diagnostic.ts";
import type { Dimension, Unit } from "../units/dimensions.ts";
import { isUnitless, matchUnit, unitOf } from "../units/units-of.ts";
import type { Cell, CsvTable } from "./csv.ts";
import type { Column, StatedColumns } from "./csv-columns.ts";
import { missing, noStatedUnit, noSuchHead, noUnit, unknownUnit } from "./csv-words.ts";

/** A column that was asked for, found. */
interface FoundColumn {
	readonly index: number;
	/** None of a column of text. */
	readonly unit: Unit | undefined;
}

export interface Heads<C extends string> {
	readonly found: ReadonlyMap<C, FoundColumn>;
	/** Heads that nothing asked for. */
	readonly unread: readonly Cell[];
	/** Rows of values: without a row of units below the heads. */
	readonly rows: CsvTable["rows"];
}

type Tell = (code: Code, at: Place, telling: Telling) => void;

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

/** Finds the columns asked for by their heads, each with its unit; what is not to be found is told. */
export const findColumns = <C extends string>(
	table: CsvTable,
	columns: Readonly<Record<C, Column>>,
	stated: StatedColumns<C> | undefined,
	tell: Tell,
): Heads<C> => {
	const { header, file } = table;
	const at = ({ range }: Cell): Place => ({ file, path: [], range });
	const names = Object.keys(columns) as C[];
	const places = new Map<C, number>();
	const lacking: C[] = [];
	const used = new Set<number>();
	for (const name of names) {
		const foreign = stated?.[name];
		const { aliases = [], optional = false } = columns[name];
		const index = header.findIndex(
			({ text }, i) =>
				!used.has(i) &&
				(foreign === undefined
					? unitPart(text, [name, ...aliases]) !== undefined
					: simplified(text) === simplified(foreign.head)),
		);
		const [first] = header;
		if (index >= 0) {
			places.set(name, index);
			used.add(index);
		} else if (first !== undefined && foreign !== undefined)
			tell("csv/missing-column", at(first), noSuchHead(foreign, name, header));
		else if (!optional) lacking.push(name);
	}
	const [first] = header;
	if (first !== undefined && lacking.length > 0) {
		const asked = lacking.map((name) => ({ name, dimension: columns[name].dimension }));
		tell("csv/missing-column", at(first), missing(asked, header));
	}

	const unitRow = rowOfUnits(
		table,
		[...places].map(([name, index]) => ({ index, ...columns[name] })),
	);
	const found = new Map<C, FoundColumn>();
	for (const [name, index] of places) {
		const { dimension, aliases = [] } = columns[name];
		const cell = header[index];
		const foreign = stated?.[name];
		if (cell === undefined) continue;
		if (dimension === "text" || isUnitless(dimension)) {
			found.set(name, { index, unit: dimension === "text" ? undefined : unitOf(dimension, "1") });
			continue;
		}
		const inHead = foreign === undefined ? unitPart(cell.text, [name, ...aliases]) : unitAtEnd(cell.text);
		const unit =
			headUnit(foreign?.unit ?? inHead ?? "", dimension) ??
			(foreign?.unit === undefined ? headUnit(unbracketed(unitRow?.[index]?.text), dimension) : undefined);
		if (unit !== undefined) found.set(name, { index, unit });
		else if (foreign?.unit !== undefined)
			tell("csv/column-unit", { path: foreign.at }, unknownUnit(foreign.unit, name, dimension));
		else
			tell(
				"csv/column-unit",
				at(cell),
				foreign === undefined
					? noUnit(cell, name, dimension, inHead ?? "")
					: noStatedUnit(foreign, name, dimension),
			);
	}
	// Where a column is missing, one that nothing reads is most likely the same slip.
	const complete =
		lacking.length === 0 && names.every((name) => places.has(name) || stated?.[name] === undefined);
	return {
		found,
		unread: complete ? header.filter((_, i) => !used.has(i)) : [],
		rows: unitRow === undefined ? table.rows : table.rows.slice(1),
	};
};

const unbracketed = (text = ""): string => text.replace(/^[([]|[)\]]$/g, "");

/** Some programs write the units in a line of their own below the heads: every measured column has its unit there. */
const rowOfUnits = (
	{ rows: [first] }: CsvTable,
	columns: readonly (Column & { readonly index: number })[],
): CsvTable["rows"][number] | undefined => {
	const measured = columns.filter(({ dimension }) => dimension !== "text" && !isUnitless(dimension));
	if (first === undefined || measured.length === 0) return undefined;
	const units = measured.every(
		({ dimension, index }) =>
			dimension !== "text" && headUnit(unbracketed(first[index]?.text), dimension) !== undefined,
	);
	return units ? first : undefined;
};
