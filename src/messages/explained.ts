import type { Explained } from "./es/explained.ts";
import { CHECKS_OF_LAW } from "./es/explained-checks-of-law.ts";
import { CHECKS_OF_PRACTICE } from "./es/explained-checks-of-practice.ts";
import { CODES_OF_RESULTS } from "./es/explained-results.ts";
import { CODES_OF_THE_WELL } from "./es/explained-well.ts";
import { CODES_OF_WRITING } from "./es/explained-writing.ts";
import type { Reader } from "./print.ts";

export const EXPLAINED_CODES: Readonly<Record<string, Explained>> = {
	...CODES_OF_WRITING,
	...CODES_OF_THE_WELL,
	...CODES_OF_RESULTS,
};

export const EXPLAINED_CHECKS: Readonly<Record<string, Explained>> = {
	...CHECKS_OF_LAW,
	...CHECKS_OF_PRACTICE,
};

interface Declared {
	readonly title: string;
	readonly explain: string;
}

/** What a code or a check says of itself, in the reader's language; English is declared with it. */
export const explainedIn = (
	{ title, explain }: Declared,
	spanish: Explained | undefined,
	{ language }: Pick<Reader, "language">,
): Declared =>
	language === "es" && spanish !== undefined
		? { title: spanish[0], explain: spanish[1] }
		: { title, explain };
