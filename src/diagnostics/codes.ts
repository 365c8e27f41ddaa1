import { AGREEMENT_CODES } from "./codes/agreement.ts";
import { CALC_CODES } from "./codes/calc.ts";
import { CEMENT_CODES } from "./codes/cement.ts";
import { CSV_CODES } from "./codes/csv.ts";
import { DEFINITION_CODES } from "./codes/definition.ts";
import { FILE_CODES } from "./codes/file.ts";
import { PATH_AND_PIPE_CODES } from "./codes/path-and-pipe.ts";
import { QUANTITY_CODES } from "./codes/quantity.ts";
import { RULES_CODES } from "./codes/rules.ts";
import { SEED_CODES } from "./codes/seed.ts";
import { SLIDES_CODES } from "./codes/slides.ts";
import { SYNTAX_CODES } from "./codes/syntax.ts";
import { WELL_CODES } from "./codes/well.ts";
import type { Severity } from "./diagnostic.ts";

/** What `explain` prints for a code. Codes are permanent: never renamed, never reused. */
export interface CodeEntry {
	readonly severity: Severity;
	readonly title: string;
	/** What it means, why it matters to the job, and how it is usually mended. */
	readonly explain: string;
}

/** The catalogue of everything the tool can find fault with, an area a file. A conventions test keeps it complete. */
export const CODES = {
	...AGREEMENT_CODES,
	...CALC_CODES,
	...CEMENT_CODES,
	...CSV_CODES,
	...DEFINITION_CODES,
	...FILE_CODES,
	"internal/fault": {
		severity: "error",
		title: "A fault of the tool itself",
		explain:
			"This is a defect in Casebound, not in the definition. Please report it with the definition that showed it.",
	},
	...PATH_AND_PIPE_CODES,
	...QUANTITY_CODES,
	...RULES_CODES,
	...SEED_CODES,
	...SLIDES_CODES,
	...SYNTAX_CODES,
	...WELL_CODES,
} as const satisfies Record<string, CodeEntry>;

export type Code = keyof typeof CODES;
