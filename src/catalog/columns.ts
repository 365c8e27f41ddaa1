import * as z from "zod";
import type { Known } from "../cite/known.ts";
import { cite, type SourceRef } from "../cite/source.ts";
import { SOURCE_KEYS } from "../cite/source-keys.ts";
import { message } from "../messages/message.ts";
import { toCanonical } from "../units/convert.ts";
import type { Dimension } from "../units/dimensions.ts";
import { quantity } from "../units/quantity.ts";
import { definitionOf } from "../units/units-of.ts";
import { unfit } from "./contradiction.ts";

/** What a seed says of one column: unit, source, and how the figures were known when they were written in. */
const columnSchema = z.strictObject({
	unit: z.string().optional(),
	source: z.enum(SOURCE_KEYS),
	at: z.string().optional(),
	known: z.string().min(1),
});

/** The `columns` block of a seed whose columns measure these dimensions; a column of words has none. */
export const columnsSchema = <const C extends Readonly<Record<string, Dimension | undefined>>>(
	dimensions: C,
) => {
	const withUnit = (dimension: Dimension) =>
		columnSchema.refine(({ unit }) => definitionOf(dimension).units.some(({ symbol }) => symbol === unit), {
			path: ["unit"],
			...unfit(
				message("source/one-of", {
					names: definitionOf(dimension)
						.units.map(({ symbol }) => symbol)
						.join(", "),
				}),
			),
		});
	const shape = Object.fromEntries(
		Object.entries(dimensions).map(([name, dimension]) => [
			name,
			dimension === undefined ? columnSchema : withUnit(dimension),
		]),
	) as { [N in keyof C]: typeof columnSchema };
	return z.strictObject(shape);
};

export type Columns<C> = Readonly<Record<keyof C, z.infer<typeof columnSchema>>>;
/** A row's or size's own word on how a column was known, where it differs from the column's. */
export type KnownOverride = Readonly<Record<string, string>>;

/** Figures of one shipped table, as values that know their row, column and source. */
interface TableCells<C extends Readonly<Record<string, Dimension | undefined>>> {
	readonly value: <N extends keyof C & string>(
		row: string,
		column: N,
		written: number,
	) => Known<Exclude<C[N], undefined>>;
	readonly sourceOf: (column: keyof C & string) => SourceRef;
}

/** Turns a table's written figures into values in canonical units. */
export const tableCells = <const C extends Readonly<Record<string, Dimension | undefined>>>(
	table: string,
	dimensions: C,
	columns: Columns<C>,
): TableCells<C> => {
	const sourceOf = (column: keyof C & string): SourceRef => cite(columns[column].source, columns[column].at);
	return {
		sourceOf,
		value: (row, column, written) => {
			const dimension = dimensions[column] as Exclude<C[typeof column], undefined>;
			const value = toCanonical(written, dimension, columns[column].unit ?? "1");
			return {
				dimension,
				value: quantity(dimension, value),
				from: { kind: "catalogue", table, row, column, source: sourceOf(column) },
			};
		},
	};
};
