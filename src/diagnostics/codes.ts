import { CSV_CODES } from "./codes/csv.ts";
import { DEFINITION_CODES } from "./codes/definition.ts";
import { FILE_CODES } from "./codes/file.ts";
import { QUANTITY_CODES } from "./codes/quantity.ts";
import { SEED_CODES } from "./codes/seed.ts";
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
	...QUANTITY_CODES,
	...DEFINITION_CODES,
	...SEED_CODES,
	...WELL_CODES,
	"calc/impossible-plan": {
		severity: "error",
		title: "No hole can follow the plan",
		explain:
			"The planned path is a list of exact arcs and straights, and these do not join to a hole: the target lies inside the " +
			"arc, above the kickoff, or can only be reached past level. Every depth depends on the path, so nothing is " +
			"calculated. The message says what build or kickoff would fit.",
	},
	"calc/unusable-survey": {
		severity: "error",
		title: "The survey does not describe a hole",
		explain:
			"Stations must go down the hole, each deeper along it than the one before. Nothing is calculated from a survey out of " +
			"order, because every depth in the papers would be wrong. Put the stations in order, each once.",
	},
	"calc/past-the-path": {
		severity: "warning",
		title: "The hole goes well past the end of its path",
		explain:
			"Below the last station the hole is carried straight on at the last inclination and azimuth. Over a short way to the " +
			"bit that is the usual practice; over hundreds of feet the depths are a guess. Carry the plan or the survey to the " +
			"bottom of the hole.",
	},
	"calc/outside-validity": {
		severity: "error",
		title: "A published formula does not hold for this pipe",
		explain:
			"The rating formulas hold for pipe with a bore and for yield strengths between 24,000 and 180,000 psi. Outside that a " +
			"number would have no source, so none is given. Correct the dimensions or the grade, or state the maker's ratings " +
			"with their source.",
	},
	"internal/fault": {
		severity: "error",
		title: "A fault of the tool itself",
		explain:
			"This is a defect in Casebound, not in the definition. Please report it with the definition that showed it.",
	},
	"rules/file-shape": {
		severity: "error",
		title: "A rules file is not laid out as it must be",
		explain:
			"A file of limits has a fixed layout: who the authority is, and rows that each carry an id, a check, a limit, the " +
			"requirement in one sentence, a citation, a standing, how the text was known, and two dates (which may be unknown). " +
			"A row without one of these is not judged. Add what is missing; never invent a date.",
	},
	"rules/id": {
		severity: "error",
		title: "The id of a rule is taken or out of place",
		explain:
			"Variances and printed verdicts refer to rules by id, so each id stands once and begins with the code of its " +
			"jurisdiction. Give the row an id of its own.",
	},
	"rules/limit-form": {
		severity: "error",
		title: "A limit is not written in a form that its check takes",
		explain:
			"Limits come in a closed set of forms (a comparison, one of a list, a pattern, a deadline, all of, any of, and so " +
			"on), and each check takes some of them. `casebound explain` with the check's name lists its forms and measures.",
	},
	"rules/limit-unit": {
		severity: "error",
		title: "The number of a limit cannot be read",
		explain:
			"A limit carries its unit, of the kind that the measure has: a depth in ft or m, a strength in psi or MPa, a share in %. " +
			"A number without its unit, or with one of another kind, is refused rather than guessed at.",
	},
	"rules/standing": {
		severity: "error",
		title: "A row claims to be compared with the official text and does not carry it",
		explain:
			"Only a row that quotes the whole official paragraph with its date may say compared; papers print that standing beside " +
			"the verdict, and somebody will rely on it. Add the paragraph and its date, or write not compared.",
	},
	"rules/unknown-check": {
		severity: "error",
		title: "A limit names a check that does not exist",
		explain:
			"A limit is data and a check is code; a limit on something that no check looks at would be silently ignored. " +
			"`casebound list checks` names the checks. A new kind of limit needs a check written for it.",
	},
	"rules/unknown-jurisdiction": {
		severity: "warning",
		title: "No limits are known for a jurisdiction that the well names",
		explain:
			"The definition names a jurisdiction for which no file of limits exists, so none of its rules are judged. " +
			"Every paper says so. `casebound list jurisdictions` names those that are known.",
	},
	...CSV_CODES,
	...FILE_CODES,
	...SYNTAX_CODES,
} as const satisfies Record<string, CodeEntry>;

export type Code = keyof typeof CODES;
