import { CHECK } from "./check.ts";
import { RULES } from "./rules.ts";

/** Every message in English, with its note for translators. */
export const ENGLISH = { ...CHECK, ...RULES } as const;

export type EnglishEntries = typeof ENGLISH;
