import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { type Path, pathKey } from "../diagnostics/path.ts";
import type { Positions, Range, SourceText } from "../diagnostics/source-text.ts";
import type { Said } from "../messages/message.ts";
import { type Cell, type CsvTable, readCsv } from "./csv.ts";
import { decodeText, LARGEST_TABLE } from "./decode-text.ts";
import { foreignTable } from "./foreign/table-text.ts";
import type { FileBeside } from "./locate-files.ts";
import { plainScalar } from "./plain-scalar.ts";
import { trailOf } from "./position-index.ts";

/** A tree in which every list that a table stands for is written out, and where its entries stand. */
export interface WithTables {
	readonly value: unknown;
	/** Of the tables themselves, each in its own file. */
	readonly diagnostics: readonly Diagnostic[];
	/** Tables that cannot be had: where each is named, and why. */
	readonly refused: readonly { readonly at: Path; readonly name: string; readonly why: Said }[];
	/** Texts of the tables, in which a path of the tree leads to a cell. */
	readonly texts: ReadonlyMap<string, SourceText>;
	/** The table that an entry at a path comes from; none where the definition itself says it. */
	readonly fileOf: (path: Path) => string | undefined;
}

type Block = Readonly<Record<string, unknown>>;
type ReadTable = (name: string) => FileBeside;

const isBlock = (node: unknown): node is Block =>
	typeof node === "object" && node !== null && !Array.isArray(node);

/** `{ table: pipe.csv }` in the place of a list: a block with that entry alone. */
const tableNamed = (node: unknown): string | undefined => {
	if (!isBlock(node) || Object.keys(node).length !== 1) return undefined;
	const { table } = node;
	return typeof table === "string" && /\.(?:csv|xlsx)$/iu.test(table.trim()) ? table.trim() : undefined;
};

/** A figure to which the unit of the head belongs: `54.5`, `13 3/8`, `5/8`. What says more than a figure stands as it is. */
const FIGURE = /^[-+]?(?:\d+(?:\.\d+)?(?: \d+\/\d+)?|\d+\/\d+)$/u;

interface Head {
	/** `od`; of `ingredients.cas` the list and the name in its items. */
	readonly list?: string;
	readonly name: string;
	readonly unit: string;
}

/** `weight (lb/ft)`, `Weight [lb/ft]`, `ingredients.max share (%)`. */
const headOf = ({ text }: Cell): Head => {
	const [, name = text, unit = ""] = /^(.*?)\s*(?:[([]([^)\]]*)[)\]])?$/u.exec(text.trim()) ?? [];
	const [first = "", second] = name
		.toLowerCase()
		.replaceAll(/\s+/gu, "_")
		.split(/\.(.*)/u);
	return second === undefined ? { name: first, unit } : { list: first, name: second, unit };
};

const cellValue = (text: string, unit: string): unknown =>
	unit !== "" && FIGURE.test(text) ? `${text} ${unit}` : plainScalar(text);

/**
 * Writes out the lists that a definition takes from tables beside it: `pipe: { table: pipe.csv }`. A row is an entry, and
 * its heads name what it says, with the unit that its figures are in. A head with a dot is of a list inside the entry; a
 * row that says nothing else goes on with the entry above it.
 *
 * @param readFile gives a file beside the definition
 */
export const withTables = (tree: unknown, readFile: ReadTable): WithTables => {
	const diagnostics: Diagnostic[] = [];
	const refused: { at: Path; name: string; why: Said }[] = [];
	const tables = new Map<string, { text: string; places: Map<string, Range> }>();
	const lists = new Map<string, string>();

	const tableOf = (name: string, at: Path): CsvTable | undefined => {
		const file = readFile(name);
		if ("refused" in file) {
			refused.push({ at, name, why: file.refused });
			return undefined;
		}
		const foreign = foreignTable(file.bytes);
		if (foreign !== undefined && "refused" in foreign) {
			refused.push({ at, name, why: foreign.refused });
			return undefined;
		}
		const text =
			foreign === undefined
				? decodeText(file.bytes, file.file, LARGEST_TABLE)
				: { value: foreign.text, diagnostics: [] };
		const table = text.value === undefined ? undefined : readCsv(text.value, file.file);
		diagnostics.push(...text.diagnostics, ...(table?.diagnostics ?? []));
		if (table?.value !== undefined && !tables.has(file.file))
			tables.set(file.file, { text: table.value.text, places: new Map() });
		return table?.value;
	};

	const entriesOf = (table: CsvTable, at: Path): unknown[] => {
		lists.set(pathKey(at), table.file);
		const heads = table.header.map(headOf);
		const place = (path: Path, range: Range): void =>
			void tables.get(table.file)?.places.set(JSON.stringify(path), range);
		const entries: Record<string, unknown>[] = [];
		for (const row of table.rows) {
			const own = heads.some(({ list }, i) => list === undefined && row[i]?.text !== "");
			if (own || entries.length === 0) {
				entries.push(Object.create(null));
				place([...at, entries.length - 1], spanOf(row));
			}
			const entry = entries.at(-1);
			if (entry === undefined) continue;
			const items = new Map<string, Record<string, unknown>>();
			for (const [i, { list, name, unit }] of heads.entries()) {
				const cell = row[i];
				if (cell === undefined || cell.text === "") continue;
				const here: Path = [...at, entries.length - 1];
				if (list === undefined) {
					entry[name] = cellValue(cell.text, unit);
					place([...here, name], cell.range);
					continue;
				}
				entry[list] ??= [];
				const inside = entry[list] as Record<string, unknown>[];
				const item = items.get(list) ?? Object.create(null);
				if (!items.has(list)) {
					items.set(list, item);
					inside.push(item);
					place([...here, list], cell.range);
					place([...here, list, inside.length - 1], spanOf(row));
				}
				item[name] = cellValue(cell.text, unit);
				place([...here, list, inside.length - 1, name], cell.range);
			}
		}
		return entries;
	};

	const visit = (node: unknown, path: Path): unknown => {
		const name = tableNamed(node);
		if (name !== undefined) {
			const table = tableOf(name, [...path, "table"]);
			return table === undefined ? node : entriesOf(table, path);
		}
		if (Array.isArray(node)) return node.map((item, i) => visit(item, [...path, i]));
		if (!isBlock(node)) return node;
		const block: Record<string, unknown> = Object.create(null);
		for (const [key, child] of Object.entries(node)) block[key] = visit(child, [...path, key]);
		return block;
	};

	const value = visit(tree, []);
	const texts = new Map(
		[...tables].map(([file, { text, places }]) => [file, { text, positions: positionsOf(places, value) }]),
	);
	const fileOf = (path: Path): string | undefined => {
		for (let length = path.length - 1; length > 0; length--) {
			const file = lists.get(pathKey(path.slice(0, length)));
			if (file !== undefined) return file;
		}
		return undefined;
	};
	return { value, diagnostics, refused, texts, fileOf };
};

const spanOf = (row: readonly Cell[]): Range => [row[0]?.range[0] ?? 0, row.at(-1)?.range[1] ?? 0];

const positionsOf = (places: ReadonlyMap<string, Range>, tree: unknown): Positions => {
	const nearest = (path: Path): { readonly range: Range; readonly exact: boolean } => {
		for (let length = path.length; length > 0; length--) {
			const range = places.get(JSON.stringify(path.slice(0, length)));
			if (range !== undefined) return { range, exact: length === path.length };
		}
		return { range: [0, 0], exact: false };
	};
	return { valueRange: nearest, keyRange: nearest, trail: (path) => trailOf(tree, path) };
};
