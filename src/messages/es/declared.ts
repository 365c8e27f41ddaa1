import { EXPRESSIONS } from "./declared-expressions.ts";
import { KINDS_OF_VALUE } from "./declared-kinds.ts";
import { MARKS } from "./declared-marks.ts";
import { ORIGINS } from "./declared-origins.ts";
import { RANGES } from "./declared-ranges.ts";
import { RULE_TEXTS } from "./declared-rules.ts";

/** Texts that are declared in English where they belong, beside a formula or in a file of rules, by that English. */
export const DECLARED: ReadonlyMap<string, string> = new Map(
	[EXPRESSIONS, KINDS_OF_VALUE, ORIGINS, RANGES, MARKS, RULE_TEXTS].flatMap((texts) => Object.entries(texts)),
);
