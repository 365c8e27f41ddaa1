import type { CodeEntry } from "../codes.ts";

/** Faults of rules files: limits as data. */
export const RULES_CODES = {
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
	"rules/date": {
		severity: "error",
		title: "The dates of a rule cannot be right",
		explain:
			"A rule goes out of force after it came into force, and its text was not read after the paper that rests on it was issued. " +
			"Correct the date, or write unknown.",
	},
	"rules/standing": {
		severity: "error",
		title: "A row claims to be compared and does not say with what",
		explain:
			"Only a row that quotes the whole official paragraph with its date may say compared; one laid beside a public copy says so and " +
			"names the copy, its date and what of it was read. Papers print the standing beside the verdict, and somebody will rely on it. " +
			"Name the text, or write not compared.",
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
	"rules/unknown-rule": {
		severity: "error",
		title: "A variance or a notice names a rule that does not apply",
		explain:
			"A variance is printed with the rule it replaces, and a notice keeps a rule's deadline; both name the rule by its id. " +
			"No rule of the jurisdictions that the well names has this id, so the entry would have no effect and nobody would see it. " +
			"Copy the id from the verdicts.",
	},
} as const satisfies Record<string, CodeEntry>;
