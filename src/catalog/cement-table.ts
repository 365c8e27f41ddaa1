import * as z from "zod";
import type { Known } from "../cite/known.ts";
import { cite, type SourceRef } from "../cite/source.ts";
import { SOURCE_KEYS } from "../cite/source-keys.ts";
import { quantity } from "../units/quantity.ts";
import { columnsSchema, type KnownOverride, tableCells } from "./columns.ts";

const DIMENSIONS = {
	specific_gravity: "ratio",
	sack: "mass",
	water_share: "share",
	water: "water-requirement",
	density: "density",
	yield: "slurry-yield",
} as const;

const positive = z.number().positive();

const cementClass = z.strictObject({
	class: z.string().min(1),
	specific_gravity: positive,
	sack: positive,
	water_share: positive,
	water: positive,
	density: positive,
	yield: positive,
	note: z.string().optional(),
});

/** Form of `seeds/cement/classes.yaml`. */
export const cementClassSchema = z.strictObject({
	columns: columnsSchema(DIMENSIONS),
	classes: z.array(cementClass).min(1),
});

/** A class of cement mixed neat. A slurry of the definition never takes its figures from here. */
export interface CementClassRow {
	/** `C`. */
	readonly id: string;
	readonly specificGravity: Known<"ratio">;
	readonly sack: Known<"mass">;
	/** By weight of cement. */
	readonly waterShare: Known<"share">;
	readonly water: Known<"water-requirement">;
	readonly density: Known<"density">;
	readonly yield: Known<"slurry-yield">;
	readonly note?: string;
	readonly known: KnownOverride;
}

export const cementClassRows = (seed: z.infer<typeof cementClassSchema>): readonly CementClassRow[] => {
	const { value } = tableCells("cement classes", DIMENSIONS, seed.columns);
	const known = Object.fromEntries(
		Object.entries(seed.columns).map(([name, column]) => [name, column.known]),
	);
	return seed.classes.map((row) => ({
		id: row.class,
		specificGravity: value(row.class, "specific_gravity", row.specific_gravity),
		sack: value(row.class, "sack", row.sack),
		waterShare: value(row.class, "water_share", row.water_share),
		water: value(row.class, "water", row.water),
		density: value(row.class, "density", row.density),
		yield: value(row.class, "yield", row.yield),
		...(row.note === undefined ? {} : { note: row.note }),
		known,
	}));
};

const additive = z.strictObject({
	additive: z.string().min(1),
	specific_gravity: positive,
	absolute_volume: positive.optional(),
	extra_water: z.strictObject({ gallons: z.number().nonnegative(), per: z.string() }).optional(),
	source: z.enum(SOURCE_KEYS),
	at: z.string().optional(),
	known: z.string().min(1),
	note: z.string().optional(),
});

/** Form of `seeds/cement/additives.yaml`. */
export const cementAdditiveSchema = z.strictObject({ additives: z.array(additive).min(1) });

/** A material blended into cement. */
export interface CementAdditiveRow {
	readonly id: string;
	readonly specificGravity: Known<"ratio">;
	/** Where it does not follow from the specific gravity [gal/lb]. */
	readonly absoluteVolume?: number;
	readonly extraWater?: { readonly gallons: number; readonly per: string };
	readonly source: SourceRef;
	readonly howKnown: string;
	readonly note?: string;
}

export const cementAdditiveRows = (
	seed: z.infer<typeof cementAdditiveSchema>,
): readonly CementAdditiveRow[] =>
	seed.additives.map((row) => {
		const source = cite(row.source, row.at);
		return {
			id: row.additive,
			specificGravity: {
				dimension: "ratio",
				value: quantity("ratio", row.specific_gravity),
				from: {
					kind: "catalogue",
					table: "cement additives",
					row: row.additive,
					column: "specific_gravity",
					source,
				},
			},
			...(row.absolute_volume === undefined ? {} : { absoluteVolume: row.absolute_volume }),
			...(row.extra_water === undefined ? {} : { extraWater: row.extra_water }),
			source,
			howKnown: row.known,
			...(row.note === undefined ? {} : { note: row.note }),
		};
	});
