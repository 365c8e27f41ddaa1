import * as z from "zod";
import { SOURCE_KEYS, type SourceKey } from "../cite/source-keys.ts";
import { message } from "../messages/message.ts";
import { unfit } from "./contradiction.ts";

const SOURCE_KINDS = [
	"standard",
	"regulation",
	"book",
	"paper",
	"report",
	"guide",
	"web page",
	"course notes",
	"copy",
	"practice",
	"principle",
] as const;

const entry = z
	.strictObject({
		authors: z.string().optional(),
		publisher: z.string().optional(),
		title: z.string().min(1),
		year: z.int().min(1800).max(2100).optional(),
		kind: z.enum(SOURCE_KINDS),
		url: z.url().optional(),
		known: z.enum(["read", "read in part", "copy", "memory", "principle"]),
		note: z.string().optional(),
	})
	.refine(({ authors, publisher }) => authors !== undefined || publisher !== undefined, {
		path: ["publisher"],
		...unfit(message("seed/source.publisher")),
	});

/** Form of `seeds/sources.yaml`: an entry for each key that the code may cite, and no other. */
export const bibliographySchema = z.strictObject({
	sources: z.strictObject(
		Object.fromEntries(SOURCE_KEYS.map((key) => [key, entry])) as Record<SourceKey, typeof entry>,
	),
});

/** A published source as a bibliography prints it. */
export interface Source {
	readonly key: SourceKey;
	readonly authors?: string;
	readonly publisher?: string;
	readonly title: string;
	/** Of the edition meant. */
	readonly year?: number;
	readonly kind: (typeof SOURCE_KINDS)[number];
	readonly url?: string;
	/** `read`, `read in part`, `copy` (a secondary copy was read), `memory`, `principle` (nothing to read). */
	readonly howKnown: "read" | "read in part" | "copy" | "memory" | "principle";
	readonly note?: string;
}

export type Bibliography = Readonly<Record<SourceKey, Source>>;

export const bibliography = (seed: z.infer<typeof bibliographySchema>): Bibliography =>
	Object.fromEntries(
		SOURCE_KEYS.map((key) => {
			const { known, ...rest } = seed.sources[key];
			return [key, { key, ...rest, howKnown: known }];
		}),
	) as unknown as Bibliography;
