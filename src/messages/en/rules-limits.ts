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
	"rules/factor-on": ["{factor} × {noun}", "A number of a rule. noun: a noun phrase with its article."],
	"rules/limit-on": [
		"{noun}: {operator} {amount}",
		"A limit before any well. noun: what is measured, without its article; operator: at least, at most, …",
	],
	"rules/limit-about": [" (the rule says about; taken within {about})", "After a limit. about: an amount."],
	"rules/step-in-words": [
		"{amount} where the {noun} is {operator} {end}",
		"A line of a rule's table. noun: what the table goes by, without its article; end: where the line ends.",
	],
	"rules/step-beyond": ["{amount} beyond that", "The last line of a rule's table."],
	"rules/of-the-bottom": ["in the bottom {height} of the string", "Part of a limit. height: a length."],
	"rules/above-the-bottom": ["above the bottom {height} of the string", "Part of a limit. height: a length."],
	"rules/within-radius": ["within {radius}", "Part of a limit. radius: a distance."],
	"rules/so-long-after-placing": ["{after} after placing", "Part of a limit on cement. after: a time."],
	"rules/earliest-of": ["the earliest of {among}", "A deadline. among: a list of spans with their events."],
	"rules/no-sooner-than": [", no sooner than {span} it", "After a deadline. span: `180 days before`."],
	"rules/pattern-bottom": [
		"{joints, plural, one {a centralizer on the lowest joint} other {centralizers on the lowest # joints}}",
		"Where centralizers are asked for.",
	],
	"rules/pattern-every": [
		"{joints, plural, one {a centralizer on every joint} other {a centralizer every # joints}}",
		"Where centralizers are asked for.",
	],
	"rules/pattern-first": [
		"the first centralizer within {first}, then one every {every}",
		"Where centralizers are asked for. first, every: lengths.",
	],
	"rules/where-dated": [
		"{event} from {from}, before {before}",
		"A condition of a rule. event: a noun phrase; from, before: dates, or … where it names none.",
	],
	"rules/within-of": [
		"within {radius} of the {place}",
		"A radius of a rule. place: wellhead, pad edge, …, without its article.",
	],
	"rules/where-so": ["{what}, where {where}", "A limit with the condition it hangs on; both are lists."],
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
		"{words}, as far as the data given show; {requirement}.",
		"Sentence: why a limit came out as it did (compare). words: words of the rule; requirement: what the limit asks.",
	],
	"rules/rule-says-about-shortfall-not-more-than": [
		'{said}. The rule says "about"; a shortfall of no more than {about} is left to engineering judgment.',
		"Sentence: why a limit came out as it did (compare). said: the clause before; about: a value.",
	],
} as const satisfies Entries;
