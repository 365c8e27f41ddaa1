import type { Entries } from "../entries.ts";

/** What a job is done with and beside: other work on the pad, heads, spacers, proppant. */
export const RULES_ON_THE_JOB = {
	"rules/simultaneous-work-not-agreed": [
		"work at other wells of the pad that is not agreed",
		"Noun phrase without its article.",
	],
	"rules/no-work-on-the-pad-at-the-same-time": [
		"no other well of the pad is stated to be worked on at the same time",
		"Clause without a full stop: why a rule does not apply.",
	],
	"rules/work-at-the-same-time-is-agreed": [
		"work goes on at the same time at {wells}, agreed with {who}",
		"Clause. wells: names with what is done there; who: persons or companies, as typed.",
	],
	"rules/work-at-the-same-time-is-not-agreed": [
		"work goes on at the same time at {wells}, and it is not stated who is told and holds the plan for both",
		"Clause. wells: names with what is done there, as typed.",
	],
	"rules/treatment-before-drilling-ends": [
		"treatment before drilling ends",
		"Noun phrase without its article.",
	],
	"rules/no-dates-to-hold-together": [
		"no dates of both drilling and treatment are given",
		"Clause without a full stop: why a rule does not apply.",
	],
	"rules/treatment-starts-before-drilling-ends": [
		"the treatment starts on {starts}, before drilling ends on {over}",
		"Clause. starts, over: dates.",
	],
	"rules/treatment-starts-after-drilling-ends": [
		"the treatment starts on {starts}, drilling ends on {over}",
		"Clause. starts, over: dates.",
	],
	"rules/greatest-proppant-concentration": [
		"highest proppant concentration",
		"Noun phrase without its article.",
	],
	"rules/fluid-is-not-slickwater": [
		"the treatment is not pumped with slickwater",
		"Clause without a full stop: why a rule does not apply.",
	],
	"rules/no-proppant-is-pumped": [
		"no proppant is pumped",
		"Clause without a full stop: why a rule does not apply.",
	],
	"rules/slickwater-carries": [
		"the slickwater is to carry up to {part} of proppant",
		"Clause. part: the value.",
	],
	"rules/wellhead-rating-at-casing-test": [
		"rating of the wellhead that is on in the casing test",
		"Noun phrase without its article.",
	],
	"rules/no-casing-test-is-planned": [
		"no casing test of the {string} string is planned",
		"Clause without a full stop: why a rule does not apply. string: a name.",
	],
	"rules/wellhead-at-casing-test-is-rated": [
		"the wellhead that is on in the casing test is rated for {part}",
		"Clause. part: the value.",
	],
	"rules/lead-slurry-above-treated-interval": [
		"height of the lead slurry above the treated interval",
		"Noun phrase without its article.",
	],
	"rules/no-lead-slurry-over-treated-interval": [
		"the {string} string has no lead slurry over a treated interval",
		"Clause without a full stop: why a rule does not apply. string: a name.",
	],
	"rules/foot-of-slurry": [
		"the foot of the {slurry} slurry",
		"Noun phrase. slurry: the part it plays, as typed.",
	],
	"rules/spacer-plastic-viscosity": ["plastic viscosity of the spacer", "Noun phrase without its article."],
	"rules/no-spacer-is-pumped": [
		"no spacer is pumped for the {string} string",
		"Clause without a full stop: why a rule does not apply. string: a name.",
	],
	"rules/plastic-viscosity-and-yield-point-of-spacer": [
		"plastic viscosity and yield point of the spacer of the {string} string",
		"An input that is missing, without its article. string: a name.",
	],
	"rules/spacer-has-viscosity": [
		"the spacer of the {string} string has a plastic viscosity of {part}",
		"Clause. string: a name; part: the value.",
	],
	"rules/noise-at-the-nearest-dwelling": [
		"noise at the nearest dwelling",
		"Noun phrase without its article: what is measured or is missing (noise).",
	],
	"rules/no-limit-on-noise-is-stated": [
		"no limit on noise at a dwelling is stated",
		"Clause without a full stop: why a limit has nothing to judge (noise).",
	],
	"rules/distance-to-a-dwelling": ["a dwelling with its distance", "Noun phrase: what is missing (noise)."],
	"rules/noise-at-dwelling-is": [
		"the noise at {name} while pumps run is {part}",
		"Clause without a full stop: why a limit came out as it did. name: the house, as typed; part: the value.",
	],
	"rules/stated-limit-on-noise": [
		"stated limit on noise",
		"Noun phrase without its article: what is measured or is missing (noise).",
	],
	"rules/limit-on-noise-is": [
		"the limit on noise at a dwelling is {part}",
		"Clause without a full stop: why a limit came out as it did. part: the value.",
	],
} as const satisfies Entries;
