import { CHECK } from "./check.ts";
import { CSV } from "./csv.ts";
import { DIAGNOSTICS } from "./diagnostics.ts";
import { FILE } from "./file.ts";
import { RULES } from "./rules.ts";
import { YAML_LINES } from "./yaml-lines.ts";
import { YAML_VALUES } from "./yaml-values.ts";

/** Every message in English, with its note for translators. */
export const ENGLISH = {
	...CHECK,
	...DIAGNOSTICS,
	...FILE,
	...CSV,
	...YAML_LINES,
	...YAML_VALUES,
	...RULES,
} as const;

export type EnglishEntries = typeof ENGLISH;
