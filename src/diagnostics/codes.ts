import type { Severity } from "./diagnostic.ts";

/** What `explain` prints for a code. Codes are permanent: never renamed, never reused. */
export interface CodeEntry {
	readonly severity: Severity;
	readonly title: string;
	/** What it means, why it matters to the job, and how it is usually mended. */
	readonly explain: string;
}

/** The catalogue of everything the tool can find fault with. A conventions test keeps it complete. */
export const CODES = {
	"syntax/yaml": {
		severity: "error",
		title: "The file is not well-formed YAML",
		explain:
			"The text could not be read as YAML 1.2. Nothing after the fault can be trusted, so nothing is calculated. " +
			"Mend the place named, then run again.",
	},
	"internal/fault": {
		severity: "error",
		title: "A fault of the tool itself",
		explain: "This is a defect in Casebound, not in the definition. Please report it with the definition that showed it.",
	},
} as const satisfies Record<string, CodeEntry>;

export type Code = keyof typeof CODES;
