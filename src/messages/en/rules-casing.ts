import type { Entries } from "../entries.ts";

/** Pipe, its loads, its clearance and its centralizers, as findings say them. */
export const RULES_CASING = {
	"rules/between-and": [
		"between {depth} and {depth2}",
		"Noun phrase without its article: what is measured or is missing (centralizer pattern).",
	],
	"rules/each-lowest-joints": [
		"each of the lowest {joints} joints",
		"Noun phrase without its article: what is measured or is missing (centralizer pattern). joints: a count.",
	],
	"rules/lowest-joint": ["the lowest joint", "Noun phrase with its article (centralizer pattern)."],
	"rules/carries-centralizer": [
		"{lowest} has a centralizer.",
		"Sentence: why a limit came out as it did (centralizer pattern). lowest: the lowest joints.",
	],
	"rules/should-carry-centralizer-and-runs-with-one": [
		"{lowest} should have a centralizer, and the intervals with one on every joint leave the pipe bare {gapWords}.",
		"Sentence: why a limit came out as it did (centralizer pattern). lowest: the lowest joints; gapWords: between two depths.",
	],
	"rules/centralizers-stand-on-every-joints-or-closer": [
		"centralizers are placed on every {joints} joints or closer, from the shoe to the top of the string.",
		"Sentence: why a limit came out as it did (centralizer pattern). joints: a count.",
	],
	"rules/no-centralizers-stand-on-every-joints-or": [
		"centralizers are not placed on every {joints} joints or closer {gapWords}.",
		"Sentence: why a limit came out as it did (centralizer pattern). joints: a count; gapWords: between two depths.",
	],
	"rules/lowest-centralizer-is-within-shoe": [
		"the lowest centralizer is within {firstWithin} of the shoe.",
		"Sentence: why a limit came out as it did (centralizer pattern).",
	],
	"rules/lowest-centralizer-is-not-within-shoe": [
		"the lowest centralizer is not within {firstWithin} of the shoe.",
		"Sentence: why a limit came out as it did (centralizer pattern).",
	],
	"rules/above-it-they-are-apart-or-closer": [
		"above it they are {thenEvery} apart or closer.",
		"Sentence: why a limit came out as it did (centralizer pattern).",
	],
	"rules/above-it-they-are-further-than-apart": [
		"above it they are further than {thenEvery} apart {gapWords}.",
		"Sentence: why a limit came out as it did (centralizer pattern). gapWords: between two depths.",
	],
	"rules/water-zones-within-protected-water": [
		"water zones within the protected water",
		"Noun phrase without its article: what is measured or is missing (centralizer pattern).",
	],
	"rules/hole-does-not-reach": [
		"the hole does not reach the {name}.",
		"Sentence: why a limit came out as it did (centralizer pattern). name: a name, as typed.",
	],
	"rules/lies-below-shoe": [
		"the {name} is below the shoe.",
		"Sentence: why a limit came out as it did (centralizer pattern). name: a name, as typed.",
	],
	"rules/centralizers-stand-through": [
		"centralizers are placed through the {name}.",
		"Sentence: why a limit came out as it did (centralizer pattern). name: a name, as typed.",
	],
	"rules/no-centralizers-stand-in": [
		"no centralizers are placed in the {name} {gapWords}.",
		"Sentence: why a limit came out as it did (centralizer pattern). name: a name, as typed; gapWords: between two depths.",
	],
	"rules/condition-pipe": [
		"condition of the pipe",
		"Noun phrase without its article: what is measured or is missing (casing).",
	],
	"rules/condition-pipe-is-not-stated": [
		"the condition of the {string} pipe is not stated.",
		"Sentence: why a limit came out as it did (casing). string: a string's short name, as typed.",
	],
	"rules/is-required": [
		"{said}; {orList} is required.",
		"Sentence: why a limit came out as it did (casing). said: the clause before; orList: words of the rule, joined by or.",
	],
	"rules/drilling-fluid-hole": [
		"drilling fluid of the {hole} hole",
		"Noun phrase without its article: what is measured or is missing (casing). id: a short name, as typed.",
	],
	"rules/plan-drills": [
		"the plan drills {said}.",
		"Sentence: why a limit came out as it did (casing). said: the clause before.",
	],
	"rules/plan-drills-rule-names": [
		"the plan drills {said}; the rule names {orList}.",
		"Sentence: why a limit came out as it did (casing). said: the clause before; orList: words of the rule, joined by or.",
	],
	"rules/evacuated": ["fully evacuated", "Clause that names a load case, after a factor."],
	"rules/while-it-is-run": [
		"while running",
		"Clause without a full stop: why a limit came out as it did (casing loads).",
	],
	"rules/pulled-back-through-curve": [
		"pulled back through the curve",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/stopped-short-while-it-is-run": [
		"with a shock load while running",
		"Clause without a full stop: why a limit came out as it did (casing loads).",
	],
	"rules/stuck-and-pulled": [
		"stuck and pulled",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/with-cement-in-place": [
		"with the cement in place",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/when-plug-is-bumped": [
		"when the plug is bumped",
		"Clause without a full stop: why a limit came out as it did (casing loads).",
	],
	"rules/in-pressure-test": [
		"in the pressure test",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/with-gas-kick-shut-in": [
		"with a gas kick shut in",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/at-maximum-treating-pressure": [
		"at the maximum treating pressure",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/shut-in-full-gas": [
		"shut in full of gas",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/with-tubing-leak-at-surface": [
		"with a tubing leak at surface",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/while-producing-hot": [
		"while producing hot",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/shut-in-hot-full-gas": [
		"shut in hot and full of gas",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/with-hot-tubing-leak-at-surface": [
		"with a tubing leak at surface, hot",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/drawn-down-below-packer": [
		"in drawdown below the packer",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/under-mobile-salt": [
		"under mobile salt",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/factor-over-its-design-factor": [
		"{kind} safety factor over its design factor",
		"Noun phrase without its article: what is measured or is missing (casing loads). kind: burst, collapse, ….",
	],
	"rules/design.what": [
		"an input of the {kind} loads of the {string} string",
		"Noun phrase without its article: what is measured or is missing (casing loads). kind: burst, collapse, …; string: a string's short name, as typed.",
	],
	"rules/string-has-factor-where-is-asked-it": [
		"the {kind} safety factor of the {string} string is {value} {situation}{weak}{place}, {of} × the design factor of {required}",
		"Clause without a full stop: why a limit came out as it did (casing loads). kind: burst, collapse, ….",
	],
	"rules/overpull-left-at-greatest-pick-up": [
		"overpull margin at maximum pick-up",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/string-is-run-on-another": [
		"the {string} string is run on another string",
		"Clause without a full stop: why a limit came out as it did (casing loads). string: a string's short name, as typed.",
	],
	"rules/string-is-on-record-as-landed": [
		"the {string} string is on record as landed",
		"Clause without a full stop: why a limit came out as it did (casing loads). string: a string's short name, as typed.",
	],
	"rules/mud-density-hole-for-hook-load": [
		"mud density of the hole, for the hook load",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/string-has-overpull-left-at-greatest-pick": [
		"the {string} string has {part} of overpull margin at maximum pick-up",
		"Clause without a full stop: why a limit came out as it did (casing loads). part: the value.",
	],
	"rules/hook-load-let-down-with-greatest": [
		"slack-off hook load at maximum friction",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/hook-carries-with-string-let-down-to": [
		"the slack-off hook load is {part} with the {string} string on bottom",
		"Clause without a full stop: why a limit came out as it did (casing loads). part: the value.",
	],
	"rules/hook-load-without-friction": [
		"hook load without friction",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/mud-density-hole": [
		"mud density of the hole",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/hook-load-without-friction-is": [
		"the hook load without friction is {part}",
		"Clause without a full stop: why a limit came out as it did (casing loads). part: the value.",
	],
	"rules/gas-pressure-on-connections": [
		"gas pressure on the connections",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/connections-string-are-not-api-threads": [
		"the connections of the {string} string are not API threads",
		"Clause without a full stop: why a limit came out as it did (casing loads). string: a string's short name, as typed.",
	],
	"rules/no-gas-is-shut-in-by-string": [
		"no gas is shut in by the {string} string",
		"Clause without a full stop: why a limit came out as it did (casing loads). string: a string's short name, as typed.",
	],
	"rules/gas-may-stand-at-behind-connections-string": [
		"gas pressure on the {names} connections of the {string} string may reach {part}",
		"Clause without a full stop: why a limit came out as it did (casing loads). part: the value.",
	],
	"rules/sections-pipe-outside-limits-for-sour": [
		"sections of pipe outside the limits for sour service",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/fitness-for-sour-service": [
		"fitness of the {detail} for sour service",
		"Noun phrase without its article: what is measured or is missing (casing loads). detail: a further part of the clause, or nothing.",
	],
	"rules/service-string-is-not-sour": [
		"the service of the {string} string is not sour",
		"Clause without a full stop: why a limit came out as it did (casing loads). string: a string's short name, as typed.",
	],
	"rules/every-section-string-is-within-limits-for": [
		"every section of the {id} string is within the limits for sour service",
		"Clause without a full stop: why a limit came out as it did (casing loads). id: a short name, as typed.",
	],
	"rules/string-is-not-fit-for-sour-service": [
		"{detail} of the {id} string is not fit for sour service{detail2}{detail3}",
		"Clause without a full stop: why a limit came out as it did (casing loads). detail: a further part of the clause, or nothing; id: a short name, as typed; detail2: a further part of the clause, or nothing; detail3: a further part of the clause, or nothing.",
	],
	"rules/public-places-within-radius-exposure": [
		"public places within the exposure radius",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/statement-on-hydrogen-sulfide": [
		"statement on hydrogen sulfide",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/fraction-hydrogen-sulfide": [
		"fraction of hydrogen sulfide",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/no-hydrogen-sulfide-is-expected": [
		"no hydrogen sulfide is expected",
		"Clause without a full stop: why a limit came out as it did (casing loads).",
	],
	"rules/rate-gas-that-could-escape": [
		"escape rate of gas",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/no-listed-public-place-is-within": [
		"no listed public place is within{where}",
		"Clause without a full stop: why a limit came out as it did (casing loads). where: the clause before.",
	],
	"rules/is-hole": [
		"the {noun} is {part} (hole {diameter}{detail})",
		"Clause without a full stop: why a limit came out as it did (size). noun: what is measured; part: the value; diameter: a diameter; detail: a further part of the clause, or nothing.",
	],
	"rules/clearance-on-each-side-coupling": [
		"clearance on each side of the coupling",
		"Noun phrase without its article: what is measured or is missing (size).",
	],
	"rules/coupling-diameter": [
		"coupling diameter",
		"Noun phrase without its article: what is measured or is missing (size).",
	],
	"rules/clearance-on-each-side-pipe": [
		"clearance on each side of the pipe",
		"Noun phrase without its article: what is measured or is missing (size).",
	],
	"rules/pipe-diameter": [
		"pipe diameter",
		"Noun phrase without its article: what is measured or is missing (size).",
	],
	"rules/clearance-on-diameter-over-coupling": [
		"diametral clearance over the coupling",
		"Noun phrase without its article: what is measured or is missing (size).",
	],
	"rules/clearance-on-diameter-over-pipe": [
		"diametral clearance over the pipe",
		"Noun phrase without its article: what is measured or is missing (size).",
	],
	"rules/at-hydrogen-sulfide-partial-pressure": [
		" at a hydrogen sulfide partial pressure of {partial}",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/it-needs-or-more-and-is-as": [
		": it requires {lowest} or more, and the lowest temperature is {coldest}",
		"Clause without a full stop: why a limit came out as it did (casing loads). lowest: the lowest joints.",
	],
	"rules/reach-greatest-friction": [
		"depth that the string reaches under its own weight at maximum friction",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/reach-least-friction": [
		"depth that the string reaches under its own weight at minimum friction",
		"Noun phrase without its article: what is measured or is missing (casing loads).",
	],
	"rules/slides-to-greatest": [
		"at maximum friction the {string} string reaches {part} under its own weight",
		"Clause without a full stop: why a limit came out as it did (casing loads). part: a measured depth.",
	],
	"rules/slides-to-least": [
		"at minimum friction the {string} string reaches {part} under its own weight",
		"Clause without a full stop: why a limit came out as it did (casing loads). part: a measured depth.",
	],
	"rules/stops-at-greatest": [
		"at maximum friction the {string} string stops at {part} under its own weight{why}",
		"Clause without a full stop: why a limit came out as it did (casing loads). part: a measured depth; why: a further part, or nothing.",
	],
	"rules/stops-at-least": [
		"even at minimum friction the {string} string stops at {part} under its own weight{why}",
		"Clause without a full stop: why a limit came out as it did (casing loads). part: a measured depth; why: a further part, or nothing.",
	],
	"rules/coiled-at": [
		", helically buckled at {md} by {compression} of compression (limit {helical})",
		"Continues a clause about a string that stops short (casing loads). md: where it is pressed most.",
	],
	"rules/string-stops-short": [
		"the {string} string stops short of its shoe depth at maximum friction",
		"Clause without a full stop: why a measure has no meaning (casing loads).",
	],
	"rules/at-measured-depth": [" at {md}", "Ending of a clause (casing). md: a measured depth."],
	"rules/stated-maximum-pull": [
		"maximum pull stated for running",
		"Noun phrase without its article: what is measured or is missing (casing).",
	],
	"rules/no-maximum-pull": [
		"no maximum pull is stated for the {string} string",
		"Clause without a full stop: why a limit came out as it did. part, size: the value; other facts: names, as typed.",
	],
	"rules/maximum-pull-is": [
		"the maximum pull of the {string} string is stated as {part}",
		"Clause without a full stop: why a limit came out as it did. part, size: the value; other facts: names, as typed.",
	],
	"rules/allowed-pull": [
		"weakest of pipe and joint over the overpull factor",
		"Noun phrase without its article: what is measured or is missing (casing).",
	],
	"rules/pull-allowed-is": [
		"the string allows a pull of {part}",
		"Clause without a full stop: why a limit came out as it did. part, size: the value; other facts: names, as typed.",
	],
} as const satisfies Entries;
