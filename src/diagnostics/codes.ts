import { CSV_CODES } from "./codes/csv.ts";
import { FILE_CODES } from "./codes/file.ts";
import { SYNTAX_CODES } from "./codes/syntax.ts";
import type { Severity } from "./diagnostic.ts";
import { SEED_CODES } from "./seed-codes.ts";
import { WELL_CODES } from "./well-codes.ts";

/** What `explain` prints for a code. Codes are permanent: never renamed, never reused. */
export interface CodeEntry {
	readonly severity: Severity;
	readonly title: string;
	/** What it means, why it matters to the job, and how it is usually mended. */
	readonly explain: string;
}

/** The catalogue of everything the tool can find fault with, an area a file. A conventions test keeps it complete. */
export const CODES = {
	"definition/api-number": {
		severity: "error",
		title: "The API well number is not one",
		explain:
			"The API well number joins every paper to the public record of the well. It has 10 digits (state, " +
			"county, well), 12 with the sidetrack or 14 with the event sequence, with or without hyphens. One " +
			"wrong digit files the well under somebody else's. Copy it from the permit.",
	},
	"definition/cas-number": {
		severity: "error",
		title: "The CAS number does not close",
		explain:
			"A chemical has many names and one CAS number. Its last digit is a check on the others: each digit " +
			"before it, from the right, times its position, summed, ends in that digit. A number that does not " +
			"close names no chemical, and a disclosure that carries it is wrong. Copy it from the safety data " +
			"sheet.",
	},
	"definition/date": {
		severity: "error",
		title: "Not a date of the calendar",
		explain:
			"Dates are written year-month-day, such as 2026-05-04, because 05/04 is read two ways. The day must " +
			"exist.",
	},
	"definition/dates-out-of-order": {
		severity: "error",
		title: "Dates out of order",
		explain:
			"One of two dates must come after the other for the record to make sense: a validity after its issue, " +
			"revisions in sequence, an end after a start. A reviewer who finds them crossed will doubt the rest.",
	},
	"definition/duplicate-id": {
		severity: "error",
		title: "Two entries have the same name",
		explain:
			"Other entries, file names and results refer to an entry by this name; with two of them nobody can " +
			"say which is meant.",
	},
	"definition/empty": {
		severity: "error",
		title: "An entry without a value",
		explain:
			"The name is there and nothing stands after it. The tool does not guess what was meant: give a value, " +
			"or take the line out and the entry counts as not given.",
	},
	"definition/low-above-high": {
		severity: "error",
		title: "A range turned round",
		explain:
			"A range is written low first. Turned round it would make every figure drawn from it wrong at both " +
			"ends.",
	},
	"definition/method-and-stages": {
		severity: "error",
		title: "The method and the stages do not go together",
		explain:
			"A single interval is described by `interval`; a job in stages by `layout` or `rows`. One of the two " +
			"entries was changed and the other forgotten.",
	},
	"definition/missing": {
		severity: "error",
		title: "A required entry is missing",
		explain:
			"Nothing of this kind can be computed without it, and the tool never guesses. Add it; the message " +
			"says what it is for.",
	},
	"definition/not-one-of": {
		severity: "error",
		title: "Not one of the words understood",
		explain:
			"Here the definition takes one of a closed list of words, because calculations and rules depend on " +
			"which it is.",
	},
	"definition/one-of-keys": {
		severity: "error",
		title: "Exactly one of several entries is due",
		explain:
			"These entries say the same thing in different ways. With none of them nothing is said; with two they " +
			"could disagree.",
	},
	"definition/out-of-range": {
		severity: "error",
		title: "A number outside what has a meaning",
		explain:
			"The number cannot be what it claims to be: a latitude beyond the pole, a count below one.",
	},
	"definition/over-whole": {
		severity: "error",
		title: "A part greater than the whole",
		explain:
			"A share of more than 100 % of something that can only be had once.",
	},
	"definition/papers-widened": {
		severity: "error",
		title: "An entry shown where it may not be",
		explain:
			"Some entries are persons, telephone numbers or private records. `papers:` can keep an entry out of a " +
			"paper; it cannot bring one into a paper that entries of its kind are kept out of.",
	},
	"definition/shares-of-whole": {
		severity: "error",
		title: "Shares that do not add up",
		explain:
			"Shares of one whole must add up to 100 %. If they do not, one is wrong or one is missing, and " +
			"volumes and truck counts would be wrong by as much.",
	},
	"definition/unknown-key": {
		severity: "error",
		title: "A name that has no meaning here",
		explain:
			"A misspelled name would silently lose its value, so every name must be one that is known at its " +
			"place. The message lists them.",
	},
	"definition/version": {
		severity: "error",
		title: "Another version of the format",
		explain:
			"The first line, `definition: 1`, says which version of the format the file is written in. This " +
			"version of the tool reads version 1.",
	},
	"definition/wrong-count": {
		severity: "error",
		title: "A list of another length",
		explain:
			"Here the list has a fixed length, such as a low and a high value.",
	},
	"definition/wrong-form": {
		severity: "error",
		title: "Not in the form understood",
		explain:
			"The text must have a certain form here, which the message names, so that it can be referred to or " +
			"counted.",
	},
	"definition/wrong-kind": {
		severity: "error",
		title: "Another kind of value",
		explain:
			"A text stands where a block or a list is due, a number where a text is, or the other way round. Text " +
			"that looks like a number, such as a telephone number, goes in quotes.",
	},
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
	"quantity/comma": {
		severity: "error",
		title: "A comma in a number",
		explain:
			"To one reader a comma marks thousands and to another decimals; inside { } and [ ] YAML even cuts the " +
			"number in two there. Write 3250 ft, not 3,250 ft.",
	},
	"quantity/depth-reference": {
		severity: "error",
		title: "A depth counted from the wrong place",
		explain:
			"Depth along the hole, depth straight down from the datum (TVD) and depth below ground differ, in a " +
			"horizontal well by thousands of feet. Each field takes only those that make sense for it; the value " +
			"says which it is.",
	},
	"quantity/digit-space": {
		severity: "error",
		title: "A space inside a number",
		explain:
			"1 200 ft may be 1200 ft or a slip of the finger. Write the digits together.",
	},
	"quantity/improper-fraction": {
		severity: "error",
		title: "A fraction of one or more",
		explain:
			"95/8 in is nearly always 9 5/8 in with its space lost. Write the whole number, a space and the " +
			"fraction.",
	},
	"quantity/letter-case": {
		severity: "error",
		title: "A unit in letters of another case",
		explain:
			"mPa is a thousandth of a pascal and MPa a million of them. Where the case changes the meaning, it " +
			"must be right.",
	},
	"quantity/negative": {
		severity: "error",
		title: "A value below zero",
		explain: "This quantity has no meaning below zero.",
	},
	"quantity/no-unit": {
		severity: "error",
		title: "A number without its unit",
		explain:
			"Numbers without units are how feet become meters. Every quantity carries its unit; the message lists " +
			"those it may have.",
	},
	"quantity/not-a-number": {
		severity: "error",
		title: "Not a quantity",
		explain:
			"A quantity begins with a number and goes on with its unit: 54.5 lb/ft, 9 5/8 in, 10 deg/100 ft.",
	},
	"quantity/not-finite": {
		severity: "error",
		title: "Not a finite number",
		explain: "The number is too large to be one, or is written as infinity.",
	},
	"quantity/unknown-unit": {
		severity: "error",
		title: "A unit that does not measure this",
		explain:
			"The unit is not known, or it measures something else: bbl is no pressure. The message lists those " +
			"that fit.",
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
		title:
			"A row claims to be compared with the official text and does not carry it",
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
		title:
			"A row claims to be compared with the official text and does not carry it",
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
	"syntax/yaml": {
		severity: "error",
		title: "The file is not well-formed YAML",
		explain:
			"The text could not be read as YAML 1.2. Nothing after the fault can be trusted, so nothing is calculated. " +
			"Mend the place named, then run again.",
	},
} as const satisfies Record<string, CodeEntry>;

export type Code = keyof typeof CODES;
