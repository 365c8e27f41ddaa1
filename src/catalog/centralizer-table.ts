import * as z from "zod";
import type { Known } from "../cite/known.ts";
import { cite } from "../cite/source.ts";
import { quantity } from "../units/quantity.ts";

/** Form of `seeds/cement/centralizers.yaml`. */
export const centralizerSchema = z.strictObject({
	bow_springs: z
		.array(
			z.strictObject({
				size: z.number().positive(),
				restoring_force: z.number().positive(),
			}),
		)
		.min(1),
});

/** The standard's least restoring force of a bow spring for a size of casing, at 67 % standoff. */
export interface BowSpringRow {
	/** Of the casing [in]. */
	readonly size: number;
	readonly restoringForce: Known<"force">;
}

export const bowSpringRows = (seed: z.infer<typeof centralizerSchema>): readonly BowSpringRow[] =>
	seed.bow_springs.map(({ size, restoring_force }) => ({
		size,
		restoringForce: {
			dimension: "force",
			value: quantity("force", restoring_force),
			from: {
				kind: "catalogue",
				table: "bow springs",
				row: String(size),
				column: "restoring_force",
				source: cite("api-10d", "least restoring force at 67 % standoff, from memory"),
			},
		},
	}));
