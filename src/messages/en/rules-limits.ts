import type { Entries } from "../entries.ts";

/** How a limit came about, and bounds, as findings say them. */
export const RULES_LIMITS = {
	"rules/nothing-is-asked": ["Nothing is required.", "Sentence: why a limit came out as it did (outcome)."],
	"rules/top-known-by-returns": ["a top known by returns", "Noun phrase with its article (amount)."],
	"rules/calculated-top": ["a calculated top", "Noun phrase with its article (amount)."],
	"rules/top-by-temperature-survey": [
		"a top by temperature survey",
		"Noun phrase with its article (amount).",
	],
	"rules/top-by-bond-log": ["a top by bond log", "Noun phrase with its article (amount)."],
	"rules/tagged-top": ["a tagged top", "Noun phrase with its article (amount)."],
	"rules/held-between-and": [
		"{inside}, but not less than {from} or more than {to}",
		"Noun phrase without its article: what is measured or is missing (amount).",
	],
	"rules/way-cement-top-is-found": [
		"method of finding the cement top",
		"Noun phrase without its article: what is measured or is missing (amount).",
	],
	"rules/way-cement-top-is-found-as": [
		"method of finding the cement top, as one that the rule names",
		"Noun phrase without its article: what is measured or is missing (amount).",
	],
	"rules/rule-gives-no-distance-for": [
		"the rule gives no distance for {topBy}",
		"Clause without a full stop: why a limit came out as it did (amount). topBy: how the cement top is known.",
	],
	"rules/for": [
		"for {topBy}",
		"Noun phrase without its article: what is measured or is missing (amount). topBy: how the cement top is known.",
	],
	"rules/none-is-allowed": [
		"none is allowed",
		"Clause without a full stop: why a limit came out as it did (compare).",
	],
	"rules/as-far-as-tests-given-show": [
		"{words}, as far as the tests given show; {requirement}.",
		"Sentence: why a limit came out as it did (compare). words: words of the rule; requirement: what the limit asks.",
	],
	"rules/rule-says-about-shortfall-not-more-than": [
		'{said}. The rule says "about"; a shortfall of no more than {about} is left to engineering judgment.',
		"Sentence: why a limit came out as it did (compare). said: the clause before; about: a value.",
	],
} as const satisfies Entries;
