import * as z from "zod";
import { cite, type SourceRef } from "../cite/source.ts";
import { SOURCE_KEYS } from "../cite/source-keys.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { DIMENSIONS, type Dimension } from "../units/dimensions.ts";
import { parseQuantity } from "../units/parse.ts";
import { contradiction, unfit } from "./contradiction.ts";

const DIMENSION_NAMES = Object.keys(DIMENSIONS) as [Dimension, ...Dimension[]];

const band = z
	.strictObject({
		at: z.string().min(1),
		dimension: z.enum(DIMENSION_NAMES),
		low: z.string(),
		high: z.string(),
		source: z.enum(SOURCE_KEYS),
		why: z.string().min(1),
	})
	.transform((written, ctx): Band => {
		const end = (side: "low" | "high"): number => {
			const read = parseQuantity(written[side], written.dimension);
			if (read.ok) return read.value;
			ctx.addIssue({
				code: "custom",
				path: [side],
				...unfit(
					message("definition/expected.quantity", {
						quantity: written.dimension,
						example: DIMENSIONS[written.dimension].example,
					}),
				),
			});
			return Number.NaN;
		};
		const low = end("low");
		const high = end("high");
		if (low >= high)
			ctx.addIssue({
				code: "custom",
				path: ["high"],
				...contradiction(message("seed/band.high")),
			});
		return {
			at: written.at.split("."),
			dimension: written.dimension,
			low,
			high,
			written: { low: written.low, high: written.high },
			why: written.why,
			source: cite(written.source),
		};
	});

/** Form of `seeds/plausibility.yaml`. */
export const plausibilitySchema = z.strictObject({ bands: z.array(band).min(1) });

/** The range in which a field's value usually lies; outside it is a warning. */
export interface Band {
	/** Definition path; `*` stands for any name or position. */
	readonly at: readonly string[];
	readonly dimension: Dimension;
	/** In the canonical unit, both ends included. */
	readonly low: number;
	readonly high: number;
	readonly written: { readonly low: string; readonly high: string };
	readonly why: string;
	readonly source: SourceRef;
}

/** The band that covers a place of the definition, if one does. */
export const bandAt = (bands: readonly Band[], path: Path): Band | undefined =>
	bands.find(
		({ at }) => at.length === path.length && at.every((step, i) => step === "*" || step === String(path[i])),
	);
