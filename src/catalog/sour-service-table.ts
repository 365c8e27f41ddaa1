import * as z from "zod";
import type { Known } from "../cite/known.ts";
import type { SourceRef } from "../cite/source.ts";
import { message } from "../messages/message.ts";
import { columnsSchema, type KnownOverride, tableCells } from "./columns.ts";
import { contradiction } from "./contradiction.ts";

const DIMENSIONS = {
	partial_pressure: "pressure",
	lowest_temperature: "temperature",
} as const;

const grade = z
	.strictObject({
		grade: z.string().min(1),
		at: z.literal("any temperature").optional(),
		lowest_temperature: z.number().optional(),
		also_written: z.array(z.string()).optional(),
	})
	.refine((row) => (row.at === undefined) !== (row.lowest_temperature === undefined), {
		...contradiction(message("seed/sour.temperature")),
	});

/** Form of `seeds/pipe/sour-service.yaml`. */
export const sourServiceSchema = z.strictObject({
	columns: columnsSchema(DIMENSIONS),
	threshold: z.strictObject({ partial_pressure: z.number().positive() }),
	grades: z.array(grade).min(1),
});

/** A grade that the standard takes in sour service. */
export interface SourServiceRow {
	/** `P110`. */
	readonly id: string;
	readonly alsoWritten: readonly string[];
	/** Absent where it is taken at any temperature. */
	readonly lowestTemperature?: Known<"temperature">;
	readonly source: SourceRef;
	readonly known: KnownOverride;
}

export interface SourService {
	/** Partial pressure of hydrogen sulfide from which service counts as sour. */
	readonly threshold: Known<"pressure">;
	readonly grades: readonly SourServiceRow[];
}

export const SOUR_SERVICE_TABLE = "sour service";

export const sourService = (seed: z.infer<typeof sourServiceSchema>): SourService => {
	const cells = tableCells(SOUR_SERVICE_TABLE, DIMENSIONS, seed.columns);
	const known = Object.fromEntries(
		Object.entries(seed.columns).map(([name, column]) => [name, column.known]),
	);
	return {
		threshold: cells.value("threshold", "partial_pressure", seed.threshold.partial_pressure),
		grades: seed.grades.map((row) => ({
			id: row.grade,
			alsoWritten: row.also_written ?? [],
			...(row.lowest_temperature === undefined
				? {}
				: {
						lowestTemperature: cells.value(row.grade, "lowest_temperature", row.lowest_temperature),
					}),
			source: cells.sourceOf("lowest_temperature"),
			known,
		})),
	};
};
