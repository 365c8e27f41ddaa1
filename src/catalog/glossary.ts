import * as z from "zod";
import type { Language } from "../document/document.ts";

const words = z.strictObject({
	term: z.string().min(1),
	plain: z.string().min(1),
});

/** Form of `seeds/glossary.yaml`. */
export const glossarySchema = z.strictObject({
	terms: z.record(z.string().regex(/^[a-z][a-z-]*$/), z.strictObject({ en: words, es: words.optional() })),
});

/** A word of the trade in plain ones. */
export interface GlossaryTerm {
	readonly id: string;
	/** By language; English is always there. */
	readonly words: {
		readonly [L in Language]?: {
			readonly term: string;
			readonly plain: string;
		};
	};
}

export const glossaryTerms = (seed: z.infer<typeof glossarySchema>): readonly GlossaryTerm[] =>
	Object.entries(seed.terms).map(([id, { en, es }]) => ({
		id,
		words: es === undefined ? { en } : { en, es },
	}));
