import { XMLParser } from "fast-xml-parser";
import { strFromU8, unzipSync } from "fflate";
import { message } from "../../messages/message.ts";
import { cellText, ForeignFault, type ForeignTable } from "./foreign-table.ts";

/** No sheet of a survey comes near it; a small file can unpack to far more [bytes]. */
const LARGEST_PART = 64 * 2 ** 20;

const parser = new XMLParser({
	ignoreAttributes: false,
	attributeNamePrefix: "@",
	removeNSPrefix: true,
	parseTagValue: false,
	trimValues: false,
	isArray: (name) => ["sheet", "row", "c", "si", "r", "Relationship"].includes(name),
});

type Node = Readonly<Record<string, unknown>>;

const isNode = (value: unknown): value is Node =>
	typeof value === "object" && value !== null && !Array.isArray(value);
const child = (node: unknown, ...names: readonly string[]): unknown =>
	names.reduce<unknown>((at, name) => (isNode(at) ? at[name] : undefined), node);
const list = (node: unknown): readonly Node[] => (Array.isArray(node) ? node.filter(isNode) : []);
const textOf = (node: unknown): string =>
	isNode(node) ? String(node["#text"] ?? "") : typeof node === "string" ? node : "";
/** Text of a cell, in one piece or in runs of different type. */
const richText = (node: unknown): string =>
	textOf(child(node, "t")) +
	list(child(node, "r"))
		.map((run) => textOf(run["t"]))
		.join("");

const columnOf = (reference: string): number =>
	[...(/^[A-Z]+/u.exec(reference)?.[0] ?? "")].reduce(
		(sum, letter) => sum * 26 + letter.charCodeAt(0) - 64,
		0,
	) - 1;

const NUMBER = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?$/iu;
const isNumber = (text: string | undefined): boolean => text !== undefined && NUMBER.test(text.trim());
const filled = (row: readonly string[]): readonly string[] => row.filter((cell) => cell.trim() !== "");

/** The row of heads: the last row of words alone before the first row that begins with a number, if one does. */
const headRow = (rows: readonly (readonly string[])[]): number => {
	const first = rows.findIndex((row) => filled(row).length > 1 && isNumber(filled(row)[0]));
	// A table whose rows begin with a name: its heads are the first row of several cells that has another below it.
	if (first < 0)
		return rows.findIndex((row, i) => filled(row).length > 1 && filled(rows[i + 1] ?? []).length > 1);
	const above = rows.slice(0, Math.max(0, first));
	const isHeads = (row: readonly string[]): boolean =>
		filled(row).length > 1 && filled(row).every((cell) => !isNumber(cell));
	// A row of units below the heads is words as well: the first of the two that stand together are the heads.
	const last = above.findLastIndex(isHeads);
	return last > 0 &&
		isHeads(above[last - 1] ?? []) &&
		filled(above[last] ?? []).length === filled(above[last - 1] ?? []).length
		? last - 1
		: last;
};

/**
 * The first sheet of a workbook that holds a table, as CSV: each row on the line of its number, what stands above the
 * heads as remarks. Formulas give the values that the workbook has stored.
 *
 * The parts are those of ECMA-376, part 1: workbook, shared strings, worksheet; from memory.
 * @throws ForeignFault
 */
export const workbookText = (bytes: Uint8Array): ForeignTable => {
	const parts = unzipSync(bytes, {
		filter: ({ name, originalSize }) => {
			if (originalSize > LARGEST_PART) throw new ForeignFault(message("foreign/workbook-large"));
			return /^xl\/(?:workbook\.xml|sharedStrings\.xml|_rels\/workbook\.xml\.rels|worksheets\/[^/]+\.xml)$/u.test(
				name,
			);
		},
	});
	const part = (name: string): unknown => {
		const found = parts[name];
		return found === undefined ? undefined : parser.parse(strFromU8(found));
	};
	const workbook = part("xl/workbook.xml");
	if (workbook === undefined) throw new ForeignFault(message("foreign/no-workbook"));
	const strings = list(child(part("xl/sharedStrings.xml"), "sst", "si")).map(richText);
	const targets = new Map(
		list(child(part("xl/_rels/workbook.xml.rels"), "Relationships", "Relationship")).map((each) => [
			String(each["@Id"]),
			String(each["@Target"]).replace(/^\/?(?:xl\/)?/u, "xl/"),
		]),
	);
	for (const sheet of list(child(workbook, "workbook", "sheets", "sheet"))) {
		const rows = rowsOf(part(targets.get(String(sheet["@id"])) ?? ""), strings);
		const head = headRow(rows);
		if (head >= 0) return { format: "XLSX", text: asCsv(rows, head) };
	}
	throw new ForeignFault(message("foreign/workbook-no-table"));
};

const rowsOf = (sheet: unknown, strings: readonly string[]): readonly (readonly string[])[] => {
	const rows: string[][] = [];
	for (const [i, row] of list(child(sheet, "worksheet", "sheetData", "row")).entries()) {
		const cells: string[] = [];
		for (const [j, cell] of list(row["c"]).entries()) {
			const value = textOf(cell["v"]);
			const type = cell["@t"];
			const at = cell["@r"] === undefined ? j : columnOf(String(cell["@r"]));
			cells[at] =
				type === "s" ? (strings[Number(value)] ?? "") : type === "inlineStr" ? richText(cell["is"]) : value;
		}
		rows[row["@r"] === undefined ? i : Number(row["@r"]) - 1] = Array.from(cells, (cell) => cell ?? "");
	}
	return Array.from(rows, (row) => row ?? []);
};

/** Columns from the first head to the last: what stands beside the table is not of it. */
const asCsv = (rows: readonly (readonly string[])[], head: number): string => {
	const heads = rows[head] ?? [];
	const used = heads.flatMap((cell, i) => (cell.trim() === "" ? [] : [i]));
	return rows
		.map((row, i) => {
			if (filled(row).length === 0) return "";
			if (i < head)
				return `# ${filled(row)
					.join(" ")
					.replaceAll(/[\s,"]+/gu, " ")}`;
			const cells = used.map((at) => row[at]?.trim() ?? "");
			return cells.every((cell) => cell === "") ? "" : cells.map((cell) => cellText(cell)).join(",");
		})
		.join("\n");
};
