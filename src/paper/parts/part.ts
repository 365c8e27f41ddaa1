import type { Block, Cell, Column, Row } from "../../document/blocks.ts";
import type { Inline, QuantityStyle } from "../../document/inline.ts";
import type { Dimension } from "../../units/dimensions.ts";
import type { PaperContext } from "../context.ts";

/** A piece of a paper made from the findings; empty where the well has nothing to show there. */
export type Part = (context: PaperContext) => readonly Block[];

interface ColumnOptions {
	readonly width?: number;
	readonly style?: QuantityStyle;
	readonly rowHead?: boolean;
}

/** A column of numbers: the unit goes into its head. `label` is a key of `labels.yaml` under `columns`. */
export const quantityColumn = (
	context: PaperContext,
	id: string,
	dimension: Dimension,
	options: ColumnOptions & { readonly label?: string } = {},
): Column => ({
	id,
	head: context.words.label(`columns.${options.label ?? id}`),
	kind: "quantity",
	dimension,
	width: options.width ?? 1,
	align: "end",
	...(options.style === undefined ? {} : { style: options.style }),
	...(options.rowHead === true ? { rowHead: true } : {}),
});

export const textColumn = (
	context: PaperContext,
	id: string,
	options: ColumnOptions & { readonly label?: string } = {},
): Column => ({
	id,
	head: context.words.label(`columns.${options.label ?? id}`),
	kind: "text",
	width: options.width ?? 1.5,
	...(options.rowHead === true ? { rowHead: true } : {}),
});

export const verdictColumn = (context: PaperContext, id: string, width: number): Column => ({
	id,
	head: context.words.label(`columns.${id}`),
	kind: "verdict",
	width,
});

const isAttachment = ({ paper }: PaperContext): boolean =>
	paper === "regulator" || paper === "regulator-appendix";

/** From so many rows a column in which nothing changes says it once. */
const ALIKE_FROM = 3;

/** Columns that say one thing in every row, with what they say; none of a table that would have no other column left. */
const constantsOf = (
	columns: readonly Column[],
	rows: readonly Row[],
): readonly { readonly column: Column; readonly cell: Cell }[] => {
	if (rows.some(({ emphasis }) => emphasis === "group")) return [];
	const body = rows.filter(({ emphasis }) => emphasis !== "total");
	const totals = rows.filter(({ emphasis }) => emphasis === "total");
	if (body.length < ALIKE_FROM) return [];
	const found = columns.flatMap((column) => {
		const cell = body[0]?.cells[column.id];
		if (column.rowHead === true || column.kind === "verdict" || cell === undefined) return [];
		if (cell.kind !== "text" && cell.kind !== "rich" && cell.kind !== "quantity") return [];
		if (totals.some(({ cells }) => (cells[column.id]?.kind ?? "none") !== "none")) return [];
		const alike = body.every((row) => sameCell(row.cells[column.id], cell));
		return alike ? [{ column, cell }] : [];
	});
	return columns.length - found.length < 2 ? [] : found;
};

/** Whether two cells print alike, whatever the keys of their values are. */
const sameCell = (a: Cell | undefined, b: Cell): boolean => plainCell(a) === plainCell(b);
const plainCell = (cell: Cell | undefined): string =>
	JSON.stringify(cell, (name, value: unknown) => (name === "key" ? undefined : value)) ?? "";

/** A table; nothing at all where it would have no rows. Columns that no row fills are left out. */
export const table = (
	context: PaperContext,
	label: string,
	columns: readonly Column[],
	rows: readonly Row[],
	options: {
		readonly dense?: boolean;
		readonly note?: string;
		readonly id?: string;
		readonly suffix?: string;
		readonly abreast?: number;
	} = {},
): Block[] => {
	if (rows.length === 0) return [];
	const used = columns.filter((column) =>
		rows.some((row) => {
			const found: Cell | undefined = row.cells[column.id];
			return found !== undefined && found.kind !== "none";
		}),
	);
	const constants = isAttachment(context) ? constantsOf(used, rows) : [];
	const note = options.note === undefined ? undefined : context.words.label(`notes.${options.note}`);
	return [
		{
			kind: "table",
			caption:
				context.words.label(`captions.${label}`) +
				(options.suffix === undefined ? "" : `: ${options.suffix}`),
			ref: `table.${label}`,
			...(constants.length === 0
				? {}
				: {
						constants: constants.flatMap(({ column: { head, style }, cell }, i): Inline[] => [
							{ kind: "text", text: `${i === 0 ? "" : "; "}${head}: ` },
							...(cell.kind === "rich"
								? cell.children
								: cell.kind === "quantity"
									? [style === undefined ? cell : { ...cell, style: { ...cell.style, ...style } }]
									: [
											{
												kind: "text" as const,
												text: cell.kind === "text" ? cell.text : "",
											},
										]),
						]),
					}),
			columns: used.filter((column) => constants.every((each) => each.column !== column)),
			rows,
			...(options.abreast === undefined ? {} : { abreast: options.abreast }),
			...(options.dense === true ? { dense: true } : {}),
			...(note === undefined ? {} : { note: [{ kind: "text", text: note }] }),
			...(options.id === undefined ? {} : { id: options.id }),
		},
	];
};

/** A row from cells, leaving out those that are absent. */
export const row = (cells: Readonly<Record<string, Cell>>, emphasis?: Row["emphasis"]): Row =>
	emphasis === undefined ? { cells } : { cells, emphasis };

/** Label and value pairs; pairs without a value are left out, and no pairs give no block. */
export const facts = (
	context: PaperContext,
	items: readonly (readonly [label: string, value: Cell, note?: string])[],
	options: { readonly columns?: 1 | 2 | 3; readonly caption?: string } = {},
): Block[] => {
	const filled = items.filter(([, value]) => value.kind !== "none");
	if (filled.length === 0) return [];
	return [
		{
			kind: "facts",
			columns: options.columns ?? 2,
			...(options.caption === undefined
				? {}
				: { caption: context.words.label(`captions.${options.caption}`) }),
			items: filled.map(([label, value, note]) => ({
				label: context.words.label(`facts.${label}`),
				value,
				...(note === undefined ? {} : { note }),
			})),
		},
	];
};

/** `surface` → `Surface`: ids of strings and holes as a table prints them. */
export const titled = (id: string): string => {
	const words = id.replaceAll(/[-_]/gu, " ");
	return words.charAt(0).toUpperCase() + words.slice(1);
};

/** A word that the trade names strings, holes, slurries and elements by, in the paper's language; another id as `titled` has it. */
export const named = (context: PaperContext, id: string): string =>
	context.words.findLabel(`names.${id}`) ?? titled(id);

/** As `named`, for the middle of a sentence: a string as the language names it there. */
export const namedInWords = (context: PaperContext, id: string): string =>
	context.words.findLabel(`names_in_words.${id}`) ??
	context.words.label("names_in_words.other").replace("{name}", titled(id).toLowerCase());

/** Words that definitions often give, such as `around the clock`, in the paper's language; any other as it was written. */
export const asGiven = (context: PaperContext, words: string | undefined): string | undefined =>
	words === undefined ? undefined : (context.words.findLabel(`given.${words}`) ?? words);
