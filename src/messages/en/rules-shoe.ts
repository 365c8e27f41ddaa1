import type { Entries } from "../entries.ts";

/** Shoes and where they are set, as findings say them. */
export const RULES_SHOE = {
	"rules/shoe-depth": [
		"shoe depth",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/shoe": ["the shoe", "Noun phrase with its article (shoe)."],
	"rules/no-water-well-is-listed-within-distance": [
		"no water well is listed within the distance, and the list of neighbors is stated to be complete",
		"Clause without a full stop: why a limit came out as it did (shoe).",
	],
	"rules/depth": [
		"depth of {neighbor}",
		"Noun phrase without its article: what is measured or is missing (shoe). neighbor: a neighbor's name, as typed.",
	],
	"rules/depth-each-water-well-nearby": [
		"depth of each water well nearby",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/string-is-not-liner": [
		"the {string} string is not a liner",
		"Clause without a full stop: why a limit came out as it did (shoe). string: a string's short name, as typed.",
	],
	"rules/liner-top-and-shoe-before-it": [
		"liner top and the previous shoe",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/liner-top": ["liner top", "Noun phrase without its article: what is measured or is missing (shoe)."],
	"rules/length-string": [
		"length of the string",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/string-is-long": [
		"the string is {part} long",
		"Clause without a full stop: why a limit came out as it did (shoe). part: the value.",
	],
	"rules/length-joint": [
		"length of a joint",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/joint-length": [
		"joint length",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/joint-is-long": [
		"a joint is {part} long",
		"Clause without a full stop: why a limit came out as it did (shoe). part: the value.",
	],
	"rules/vertical-depth-shoe-below-ground": [
		"vertical depth of the shoe below ground",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/shoe-is-below-ground-vertically": [
		"the shoe is at {part} TVD below ground level",
		"Clause without a full stop: why a limit came out as it did (shoe). part: the value.",
	],
	"rules/vertical-depth-shoe": [
		"vertical depth of the shoe",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/shoe-is-at-vertical-depth-from-datum": [
		"the shoe is at {part} TVD from the datum",
		"Clause without a full stop: why a limit came out as it did (shoe). part: the value.",
	],
	"rules/measured-depth-shoe": [
		"measured depth of the shoe",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/shoe-is-at-measured-depth": [
		"the shoe is at a measured depth of {part}",
		"Clause without a full stop: why a limit came out as it did (shoe). part: the value.",
	],
	"rules/depth-shoe-below-protected-water": [
		"depth of the shoe below protected water",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/base-protected-water": [
		"base of protected water",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/base-protected-water-2": ["the base of protected water", "Noun phrase with its article (shoe)."],
	"rules/depth-shoe-below-formations-top": [
		"depth of the shoe below the formation's top",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/top": [
		"the top of the {formation}",
		"Noun phrase with its article (shoe). formation: a formation's name.",
	],
	"rules/depth-shoe-below-formations-base": [
		"depth of the shoe below the formation's base",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/base": [
		"the base of the {formation}",
		"Noun phrase with its article (shoe). formation: a formation's name.",
	],
	"rules/depth-shoe-below-top-competent-rock": [
		"depth of the shoe below the top of competent rock",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/shallowest-formation-stated-to-be-competent": [
		"shallowest formation stated to be competent",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/top-shallowest-formation-stated-to-be": [
		"the top of the shallowest formation stated to be competent",
		"Noun phrase with its article (shoe).",
	],
	"rules/depth-shoe-below-nearby-water-wells": [
		"depth of the shoe below nearby water wells",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/deepest-water-well-listed": [
		"the deepest water well listed",
		"Noun phrase with its article (shoe).",
	],
	"rules/fracture-pressure-at-shoe": [
		"fracture pressure at the shoe",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/fracture-gradient-formation-at-shoe": [
		"fracture gradient of the formation at the {string} shoe",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/rock-at-shoe-breaks-down-at": [
		"the formation at the shoe breaks down at {part}",
		"Clause without a full stop: why a limit came out as it did (shoe). part: the value.",
	],
	"rules/lap-liner": ["liner lap", "Noun phrase without its article: what is measured or is missing (shoe)."],
	"rules/liner-laps-into-string-before-it": [
		"the liner lap is {part}",
		"Clause without a full stop: why a limit came out as it did (shoe). part: the value.",
	],
	"rules/formation-at-shoe": [
		"formation at the shoe",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/shoe-stands-in-geologist-has-to-say": [
		"the {string} shoe is set in the {rock} ({lithology}); {stated}{detail}{detail2}. A geologist must state whether the formation is competent.",
		"Sentence: why a limit came out as it did (shoe). string: a string's short name, as typed; detail: a further part of the clause, or nothing; detail2: a further part of the clause, or nothing.",
	],
	"rules/rock-at-shoe-is-taken-to-break": [
		"; the formation at the shoe is assumed to break down at {fracture}",
		"Clause without a full stop: why a limit came out as it did (shoe).",
	],
	"rules/drilling-fluids-column-to-shoe-weighs": [
		"; the mud column at the shoe is {mud}",
		"Clause without a full stop: why a limit came out as it did (shoe).",
	],
	"rules/preventers-over-hole": [
		"preventers over the hole",
		"Noun phrase without its article: what is measured or is missing (well control).",
	],
	"rules/hole-is-drilled-without-preventers": [
		"the {hole} hole is drilled above the first casing that preventers stand on, and no gas is marked in it",
		"Clause without a full stop: why a limit came out as it did. part, size: the value; other facts: names, as typed.",
	],
	"rules/no-preventers-stand-over-hole": [
		"no preventers or diverter are stated over the {string} string while the {hole} hole is drilled{detail}",
		"Clause. string, hole: names, as typed; detail: empty, or the gas it meets.",
	],
	"rules/preventers-stand-over-hole": [
		"a BOP is installed on the {string} string while the {hole} hole is drilled{detail}",
		"Clause. string, hole: names, as typed; detail: empty, or the gas it meets.",
	],
	"rules/and-hole-meets-gas": [
		", which meets gas in the {gas}",
		"Ending of a clause. gas: a formation, as typed.",
	],
	"rules/shoe-test-is-on-record": [
		"the test of the {string} shoe is on record",
		"Clause without a full stop: why a limit came out as it did. part, size: the value; other facts: names, as typed.",
	],
	"rules/planned-shoe-test-over-fluid": [
		"planned shoe test over the fluid that the next hole is drilled with",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/planned-shoe-test-below-fluid": [
		"the planned shoe test is {size} below the fluid of the next hole",
		"Clause without a full stop: why a limit came out as it did. part, size: the value; other facts: names, as typed.",
	],
	"rules/planned-shoe-test-above-fluid": [
		"the planned shoe test is {size} above the fluid of the next hole",
		"Clause without a full stop: why a limit came out as it did. part, size: the value; other facts: names, as typed.",
	],
	"rules/planned-formation-integrity-test": [
		"planned formation integrity test",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/shoe-is-tested-to-leak-off": [
		"the {string} shoe is tested until the rock takes fluid",
		"Clause without a full stop: why a limit came out as it did. part, size: the value; other facts: names, as typed.",
	],
	"rules/shoe-is-to-be-tested-to": [
		"the {string} shoe is to be tested to {part}",
		"Clause without a full stop: why a limit came out as it did. part, size: the value; other facts: names, as typed.",
	],
	"rules/fracture-gradient-at-shoe": [
		"fracture gradient of the rock at the shoe",
		"Noun phrase without its article: what is measured or is missing (shoe).",
	],
	"rules/rock-at-shoe-bears": [
		"the rock at the shoe bears {part}",
		"Clause without a full stop: why a limit came out as it did. part, size: the value; other facts: names, as typed.",
	],
	"rules/pore-pressure-of": [
		"pore pressure of the {formation}",
		"Noun phrase without its article: what is measured or is missing (rock).",
	],
	"rules/fracture-gradient-of": [
		"fracture gradient of the {formation}",
		"Noun phrase without its article: what is measured or is missing (rock).",
	],
} as const satisfies Entries;
