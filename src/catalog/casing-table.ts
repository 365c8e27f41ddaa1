import * as z from "zod";
import type { Known } from "../cite/known.ts";
import { type Message, message } from "../messages/message.ts";
import { columnsSchema, type KnownOverride, tableCells } from "./columns.ts";
import { contradiction } from "./contradiction.ts";

const DIMENSIONS = {
	outside_diameter: "diameter",
	nominal_weight: "linear-weight",
	wall: "diameter",
	drift: "diameter",
	alternate_drift: "diameter",
	grades: undefined,
	coupling_diameter_round: "diameter",
	coupling_diameter_buttress: "diameter",
	coupling_diameter_special_clearance: "diameter",
	coupling_length_short: "diameter",
	coupling_length_long: "diameter",
	coupling_length_buttress: "diameter",
} as const;

const positive = z.number().positive();

const pipe = z.strictObject({
	weight: positive,
	wall: positive,
	drift: positive,
	alternate_drift: positive.optional(),
	grades: z.array(z.string()),
});

const size = z
	.strictObject({
		size: z.string(),
		outside_diameter: positive,
		coupling: z.strictObject({
			diameter: z.strictObject({
				round: positive,
				buttress: positive,
				special_clearance: positive.optional(),
			}),
			length: z.strictObject({ short: positive, long: positive.optional(), buttress: positive }),
		}),
		known: z.record(z.string(), z.string()).optional(),
		pipe: z.array(pipe).min(1),
	})
	.superRefine((each, ctx) => {
		const fault = (row: number, field: string, expected: Message) =>
			ctx.addIssue({ code: "custom", path: ["pipe", row, field], ...contradiction(expected) });
		for (const [i, row] of each.pipe.entries()) {
			const inside = each.outside_diameter - 2 * row.wall;
			if (inside <= 0) {
				fault(i, "wall", message("seed/casing.wall"));
				continue;
			}
			if (row.drift > inside)
				fault(i, "drift", message("seed/casing.drift", { inside: { dimension: "diameter", value: inside } }));
			const { alternate_drift: alternate } = row;
			if (alternate !== undefined && (alternate <= row.drift || alternate > inside))
				fault(
					i,
					"alternate_drift",
					message("seed/casing.alternate-drift", { inside: { dimension: "diameter", value: inside } }),
				);
			if (each.pipe.findIndex(({ weight }) => weight === row.weight) !== i)
				fault(i, "weight", message("seed/casing.weight"));
		}
		for (const [kind, diameter] of Object.entries(each.coupling.diameter))
			if (diameter !== undefined && diameter <= each.outside_diameter)
				ctx.addIssue({
					code: "custom",
					path: ["coupling", "diameter", kind],
					...contradiction(message("seed/casing.coupling")),
				});
	});

/** Form of `seeds/pipe/casing.yaml`. */
export const casingSchema = z.strictObject({
	columns: columnsSchema(DIMENSIONS),
	sizes: z.array(size).min(1),
});

/** One size and weight of casing, as the standard lists it. */
export interface CasingRow {
	/** `5 1/2 in 23 lb/ft`. */
	readonly id: string;
	/** `5 1/2 in`. */
	readonly size: string;
	readonly outsideDiameter: Known<"diameter">;
	readonly nominalWeight: Known<"linear-weight">;
	readonly wall: Known<"diameter">;
	readonly drift: Known<"diameter">;
	/** A larger drift the pipe may be ordered to. */
	readonly alternateDrift?: Known<"diameter">;
	/** Outside diameter of the coupling; `round` serves short and long thread. */
	readonly couplingDiameter: {
		readonly round: Known<"diameter">;
		readonly buttress: Known<"diameter">;
		readonly specialClearance?: Known<"diameter">;
	};
	readonly couplingLength: {
		readonly short: Known<"diameter">;
		readonly long?: Known<"diameter">;
		readonly buttress: Known<"diameter">;
	};
	/** Grades the row is listed in; empty where they are not recorded. */
	readonly grades: readonly string[];
	/** Column → how its figure was known. */
	readonly known: KnownOverride;
}

/** Table name in origins and in `list`. */
export const CASING_TABLE = "casing";

export const casingRows = (seed: z.infer<typeof casingSchema>): readonly CasingRow[] => {
	const cells = tableCells(CASING_TABLE, DIMENSIONS, seed.columns);
	const byColumn = Object.fromEntries(Object.entries(seed.columns).map(([name, { known }]) => [name, known]));
	return seed.sizes.flatMap((each) =>
		each.pipe.map((row): CasingRow => {
			const id = `${each.size} ${row.weight} lb/ft`;
			const { diameter, length } = each.coupling;
			const special = diameter.special_clearance;
			return {
				id,
				size: each.size,
				outsideDiameter: cells.value(id, "outside_diameter", each.outside_diameter),
				nominalWeight: cells.value(id, "nominal_weight", row.weight),
				wall: cells.value(id, "wall", row.wall),
				drift: cells.value(id, "drift", row.drift),
				...(row.alternate_drift === undefined
					? {}
					: { alternateDrift: cells.value(id, "alternate_drift", row.alternate_drift) }),
				couplingDiameter: {
					round: cells.value(id, "coupling_diameter_round", diameter.round),
					buttress: cells.value(id, "coupling_diameter_buttress", diameter.buttress),
					...(special === undefined
						? {}
						: { specialClearance: cells.value(id, "coupling_diameter_special_clearance", special) }),
				},
				couplingLength: {
					short: cells.value(id, "coupling_length_short", length.short),
					...(length.long === undefined
						? {}
						: { long: cells.value(id, "coupling_length_long", length.long) }),
					buttress: cells.value(id, "coupling_length_buttress", length.buttress),
				},
				grades: row.grades,
				known: { ...byColumn, ...each.known },
			};
		}),
	);
};
