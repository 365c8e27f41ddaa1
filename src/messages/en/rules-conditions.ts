import type { Entries } from "../entries.ts";

/** What a rule asks of a well before it binds, and what the well lacks where it does not. */
export const RULES_CONDITIONS = {
	"rules/definition-carries": ["given: {asked}.", "Sentence: why a limit came out as it did (paperwork)."],
	"rules/maximum-treating-pressure": ["maximum treating pressure", "What is measured, without its article."],
	"rules/purpose-of-well": [
		"purpose of the well",
		"Noun phrase without its article: what is measured or is missing (condition).",
	],
	"rules/well-produces": [
		"the well is to produce {what}",
		"Clause without a full stop: why a limit came out as it did (condition). what: gas or oil.",
	],
	"rules/well-is-for": [
		"the well is for {purpose}",
		"Clause without a full stop: why a limit came out as it did (condition). purpose: a word of the definition.",
	],
	"rules/county-of-well": [
		"county of the well",
		"Noun phrase without its article: what is measured or is missing (condition).",
	],
	"rules/field-of-well": [
		"field of the well",
		"Noun phrase without its article: what is measured or is missing (condition).",
	],
	"rules/well-lies-in": [
		"the well lies in {name}",
		"Clause without a full stop: why a limit came out as it did (condition). name: of a county or field.",
	],
	"rules/well-lies-in-no-place-listed": [
		"the well lies in {name}, which the rule does not list",
		"Clause without a full stop: why a limit came out as it did (condition). name: of a county or field.",
	],
	"rules/step-of-a-table": [
		"by the rule’s table, for a {noun} of {value}",
		"How a limit came about. noun: what the table goes by, without its article.",
	],
	"rules/class-well": [
		"class of the well",
		"Noun phrase without its article: what is measured or is missing (condition).",
	],
	"rules/record-has-floats-that-did-not-hold": [
		"the record says that the floats did not hold",
		"Clause without a full stop: why a limit came out as it did (condition).",
	],
	"rules/no-record-of-floats-that-did-not-hold": [
		"applies only where the floats do not hold; no record says that they did not",
		"Clause without a full stop, after the verdict 'Not applicable' (condition).",
	],
	"rules/string-has-plain-end-pipe": [
		"the {string} string has plain-end pipe",
		"Clause without a full stop: why a limit came out as it did (condition). string: its id.",
	],
	"rules/string-has-no-plain-end-pipe": [
		"applies only to plain-end welded pipe; the {string} string has none",
		"Clause without a full stop, after the verdict 'Not applicable' (condition). string: its id.",
	],
	"rules/well-is-exploratory": [
		"the well is exploratory",
		"Clause without a full stop: why a limit came out as it did (condition).",
	],
	"rules/well-is-class": [
		'the well is of the class "{class}"',
		"Clause without a full stop: why a limit came out as it did (condition).",
	],
	"rules/stimulation-is-planned": [
		"a stimulation is planned",
		"Clause without a full stop: why a limit came out as it did (condition).",
	],
	"rules/string-reaches-below-kickoff": [
		"the {string} string reaches below the kickoff",
		"Clause without a full stop: why a limit came out as it did (condition). string: a string's short name, as typed.",
	],
	"rules/string-ends-above-kickoff": [
		"the {string} string ends above the kickoff",
		"Clause without a full stop: why a limit came out as it did (condition). string: a string's short name, as typed.",
	],
	"rules/well-has-lateral": [
		"the well has a lateral",
		"Clause without a full stop: why a limit came out as it did (condition).",
	],
	"rules/well-has-no-lateral": [
		"the well has no lateral",
		"Clause without a full stop: why a limit came out as it did (condition).",
	],
	"rules/well-has-second-surface-string": [
		"the well has a second surface string",
		"Clause without a full stop: why a limit came out as it did (condition).",
	],
	"rules/well-has-one-surface-string": [
		"the well has one surface string",
		"Clause without a full stop: why a limit came out as it did (condition).",
	],
	"rules/no-formation-open-above-shoe-is": [
		"no formation open above the {string} shoe is marked as a flow zone or as the target",
		"Clause without a full stop: why a limit came out as it did (condition). string: a string's short name, as typed.",
	],
	"rules/hole-has-been-surveyed": [
		"the hole has been surveyed",
		"Clause without a full stop: why a limit came out as it did (condition).",
	],
	"rules/path-is-still-planned-one": [
		"the well path is still the plan",
		"Clause without a full stop: why a limit came out as it did (condition).",
	],
	"rules/string-is-treated-through": [
		"the treatment is pumped through this string",
		"Clause without a full stop: why a limit came out as it did (condition).",
	],
	"rules/string-is-not-treated-through": [
		"the treatment is not pumped through this string",
		"Clause without a full stop: why a limit came out as it did (condition).",
	],
	"rules/no-string-is-treated-through": [
		"no treatment is pumped through casing.",
		"Sentence: why a limit came out as it did (subjects of rule).",
	],
	"rules/no-cement-job-is-recorded": [
		"no cement job is recorded.",
		"Sentence: why a limit came out as it did (subjects of rule).",
	],
	"rules/no-shoe-test-is-recorded": [
		"no shoe test is recorded.",
		"Sentence: why a limit came out as it did (subjects of rule).",
	],
	"rules/no-casing-test-is-recorded": [
		"no casing test is recorded.",
		"Sentence: why a limit came out as it did (subjects of rule).",
	],
	"rules/well-has-no-string": [
		"the well has no {named} string.",
		"Sentence: why a limit came out as it did (subjects of rule). named: what the rule names.",
	],
	"rules/well-has-no-such-annulus-at-wellhead": [
		"the well has no such annulus at the wellhead.",
		"Sentence: why a limit came out as it did (subjects of rule).",
	],
	"rules/subjects-of-rule.what": ["the preventers", "Noun phrase with its article (subjects of rule)."],
	"rules/no-offset-well-is-listed": [
		"no offset well is listed.",
		"Sentence: why a limit came out as it did (subjects of rule).",
	],
	"rules/no-is-listed-every-well-has-one": [
		"no {named} is listed; every well has one.",
		"Sentence: why a limit came out as it did (subjects of rule). named: what the rule names.",
	],
	"rules/distance-to": [
		"distance to the {always}",
		"Noun phrase without its article: what is measured or is missing (subjects of rule).",
	],
	"rules/no-is-listed-and-list-neighbors-is": [
		"no {named} is listed, and the list of neighbors is stated to be complete.",
		"Sentence: why a limit came out as it did (subjects of rule). named: what the rule names.",
	],
	"rules/no-is-listed-and-nobody-has-stated": [
		"no {named} is listed, and the list of neighbors is not stated to be complete.",
		"Sentence: why a limit came out as it did (subjects of rule). named: what the rule names.",
	],
} as const satisfies Entries;
