import type { Entries } from "../entries.ts";

/** The treatment and its limits, as findings say them. */
export const RULES_TREATMENT = {
	"rules/pump-kickout": [
		"pump kickout {rung}",
		"Noun phrase without its article: what is measured or is missing (treatment). rung: a name, as typed.",
	],
	"rules/relief-valve": ["the relief valve", "Noun phrase with its article (treatment)."],
	"rules/maximum-treating-pressure-2": [
		"the maximum treating pressure",
		"Noun phrase with its article (treatment).",
	],
	"rules/line-test": ["the line test", "Noun phrase with its article (treatment)."],
	"rules/what-is-allowed": [
		"the allowed pressure of the {rung}",
		"Clause without a full stop: why a limit came out as it did (treatment). rung: a name, as typed.",
	],
	"rules/expected-pressure": ["the expected pressure", "Noun phrase with its article (treatment)."],
	"rules/limits-treatment-that-stand-out-order": [
		"treating limits out of order",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/kickouts-relief-valve-maximum-ratings-and-line": [
		"pump kickouts, relief valve, maximum, ratings and line test are in order",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/expected-pressure-with-half-friction-reduction": [
		"expected pressure with half the friction reduction",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/treatment-is-on-record": [
		"the treatment is on record",
		"Clause without a full stop: why a limit came out as it did (treatment).",
	],
	"rules/pressure-model-treatment": [
		"pressure model of the treatment",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/with-half-stated-friction-reduction-treatment-is": [
		"at half the stated friction reduction the expected treating pressure is {part}",
		"Clause without a full stop: why a limit came out as it did (treatment). part: the value.",
	],
	"rules/lowest-pump-kickout": [
		"lowest pump kickout",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/pump-kickouts": [
		"pump kickouts",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/first-pump-kickout-is-set-to": [
		"the first pump kickout is set to {part}",
		"Clause without a full stop: why a limit came out as it did (treatment). part: the value.",
	],
	"rules/internal-yield-casing-around-annulus": [
		"internal yield of the casing around the annulus",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/casing-around-annulus-yields-at": [
		"the casing around the annulus yields at {part}",
		"Clause without a full stop: why a limit came out as it did (treatment). part: the value.",
	],
	"rules/vertical-depth-of-the-shoe-around-annulus": [
		"vertical depth of the shoe of the casing around the annulus",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/shoe-depth-of-casing-around-annulus": [
		"shoe depth of the casing around the annulus",
		"Noun phrase without its article: what is missing (treatment).",
	],
	"rules/shoe-around-annulus-is-at": [
		"the shoe of the casing around the annulus is at a vertical depth of {part}",
		"Clause without a full stop: why a limit came out as it did (treatment). part: the value.",
	],
	"rules/internal-yield-next-casing-outward": [
		"internal yield of the next casing outward",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/next-casing-outward-yields-at": [
		"the next casing outward yields at {part}",
		"Clause without a full stop: why a limit came out as it did (treatment). part: the value.",
	],
	"rules/collapse-string-inside-annulus": [
		"collapse of the string inside the annulus",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/collapse-rating": [
		"collapse rating",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/string-inside-annulus-collapses-at": [
		"the string inside the annulus collapses at {part}",
		"Clause without a full stop: why a limit came out as it did (treatment). part: the value.",
	],
	"rules/pressure-that-leak-treated-string-lets": [
		"annulus pressure from a leak in the treated string",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/string-does-not-hold-treating-pressure": [
		"the {inner} string is not exposed to treating pressure",
		"Clause without a full stop: why a limit came out as it did (treatment). inner: a string's short name, as typed.",
	],
	"rules/leak-treated-string-lets-into-annulus-inside": [
		"a leak in the treated string would put {part} on the annulus inside the {outer} casing, and no relief valve is stated for it",
		"Clause without a full stop: why a limit came out as it did (treatment). part: the value; outer: a string's short name, as typed.",
	],
	"rules/relief-valve-opens-annulus-at": [
		"a relief valve opens the annulus at {part}",
		"Clause without a full stop: why a limit came out as it did (treatment). part: the value.",
	],
	"rules/rating-wellhead-for-treating": [
		"rating of the wellhead for treating",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/rating-wellhead-while-treating": [
		"rating of the wellhead while treating",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/wellhead-is-rated-for-while-treating": [
		"the wellhead is rated for {part} while treating",
		"Clause without a full stop: why a limit came out as it did (treatment). part: the value.",
	],
	"rules/rating-wellhead-while-drilling": [
		"rating of the wellhead while drilling",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/wellhead-is-rated-for-while-drilling": [
		"the wellhead is rated for {part} while drilling",
		"Clause without a full stop: why a limit came out as it did (treatment). part: the value.",
	],
	"rules/highest-anticipated-surface-pressure-while-drilling": [
		"highest anticipated surface pressure while drilling",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/no-preventers-are-closed-on-gas-while": [
		"no BOP would be closed on gas while drilling",
		"Clause without a full stop: why a limit came out as it did (treatment).",
	],
	"rules/gas-may-bring-to-surface-while-drilling": [
		"the anticipated surface pressure while drilling is {part}",
		"Clause without a full stop: why a limit came out as it did (treatment). part: the value.",
	],
	"rules/thickness-confining-bed": [
		"thickness of the confining bed",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/no-confining-bed-is-stated-between-protected": [
		"no confining bed is stated between protected water and the shallowest perforation",
		"Clause without a full stop: why a limit came out as it did (treatment).",
	],
	"rules/is-thick-between-protected-water-and-shallowest": [
		"the {bed} is {part} thick between protected water and the shallowest perforation",
		"Clause without a full stop: why a limit came out as it did (treatment). part: the value.",
	],
	"rules/highest-modeled-fracture-top-below-top": [
		"highest modeled fracture top below the top of the confining bed",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/no-confining-bed-is-stated": [
		"no confining bed is stated",
		"Clause without a full stop: why a limit came out as it did (treatment).",
	],
	"rules/mechanical-properties-treated-rock-for-fracture": [
		"mechanical properties of the treated formation, for a fracture model",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/protected-water-to-highest-modeled-fracture": [
		"protected water to the highest modeled fracture top",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/expected-treating-pressure": [
		"expected treating pressure",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/treatment-is-expected-to-need": [
		"the expected treating pressure is {part} at the highest-pressure stage",
		"Clause without a full stop: why a limit came out as it did (treatment). part: the value.",
	],
	"rules/toe-valve-opening-pressure": [
		"surface pressure that opens the toe valve",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/no-toe-valve": [
		"the toe is not opened by an initiation valve",
		"Clause without a full stop: why a limit came out as it did (treatment).",
	],
	"rules/toe-valve-opens-at": [
		"the toe valve opens at {part} at surface",
		"Clause without a full stop: why a limit came out as it did (treatment). part: the value.",
	],
	"rules/casing-test-of-treated-string": [
		"casing test of the treated string",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/treated-string-is-tested-to": [
		"the treated string is tested to {part}",
		"Clause without a full stop: why a limit came out as it did (treatment). part: the value.",
	],
	"rules/annulus-pressure-without-leak": [
		"annulus pressure without a leak",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/annulus-not-watched": [
		"no pressure limit is stated for this annulus",
		"Clause without a full stop: why a limit came out as it did (treatment).",
	],
	"rules/annulus-does-not-rise": [
		"no rise of this annulus was calculated or predicted",
		"Clause without a full stop: why a limit came out as it did (treatment).",
	],
	"rules/annulus-may-rise-to": [
		"the annulus may rise to {part} without a leak",
		"Clause without a full stop: why a limit came out as it did (treatment). part: the value.",
	],
	"rules/limits-out-of-order": [
		"{count, plural, one {one treating limit is} other {# treating limits are}} out of order: {list}",
		"Clause without a full stop: why a limit came out as it did (treatment). count: how many; list: the pairs.",
	],
	"rules/pressure-boundary-elements": [
		"elements of the pressure boundary",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/boundary-has": [
		"the pressure boundary lists {elements}",
		"Clause without a full stop: why a limit came out as it did. part, size: the value; other facts: names, as typed.",
	],
	"rules/boundary-lacks": [
		"the pressure boundary lists {elements}, but not {without}",
		"Sentence without its full stop: which element is missing.",
	],
} as const satisfies Entries;
