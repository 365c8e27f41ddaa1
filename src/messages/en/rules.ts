import type { Entries } from "../entries.ts";

/** Why a limit came out as it did. Sentences end with a full stop; clauses do not. */
export const RULES = {
	"rules/not-given": [
		"{what} {count, plural, one {is not} other {are not}} given.",
		"Inputs that a check needs. what: a list of noun phrases with their articles; count: how many.",
	],
	"rules/many-not-given": [
		"{count} inputs are not given, among them {first}.",
		"More inputs than can be named; first: a noun phrase with its article.",
	],
	"rules/missing-of-string": [
		"the {what} of the {string} string",
		"An input that is missing. what: a noun phrase without its article; string: a string's short name, as typed.",
	],
	"rules/missing": ["the {what}", "An input that is missing. what: a noun phrase without its article."],
	"rules/lies-below": [
		"{subject} is {size} below {place}",
		"Clause on a depth. subject and place: noun phrases with their articles; size: a length.",
	],
	"rules/lies-above": [
		"{subject} is {size} above {place}",
		"Clause on a depth. subject and place: noun phrases with their articles; size: a length.",
	],
	"rules/multiple": [
		"{factor} × {value}, the {noun}",
		"How a limit came about: a factor on a value. noun: what the value is, without its article.",
	],
	"rules/need-not-given": ["its inputs are not given.", "A check lacks inputs that have no names."],
} as const satisfies Entries;
