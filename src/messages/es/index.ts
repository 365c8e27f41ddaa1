import type { EnglishEntries } from "../en/index.ts";
import type { Translation } from "../entries.ts";
import { CHECK } from "./check.ts";
import { RULES } from "./rules.ts";

/** Every message in Spanish. */
export const SPANISH: Translation<EnglishEntries> = { ...CHECK, ...RULES };
