import type { Entries } from "../entries.ts";

/** Pressure tests, preventers and open hole, as findings say them. */
export const RULES_PRESSURE = {
	"rules/this-is-not-annulus": [
		"this is not an annulus.",
		"Sentence: why a limit came out as it did (pressure).",
	],
	"rules/no-stimulation-is-planned": [
		"no stimulation is planned.",
		"Sentence: why a limit came out as it did (pressure).",
	],
	"rules/hole-is-drilled-and-cased": [
		"the {hole} hole is drilled and cased",
		"Clause without a full stop: why a limit came out as it did (open hole). hole: a hole's short name, as typed.",
	],
	"rules/hole-is-drilled-with-air": [
		"the {hole} hole is drilled with air",
		"Clause without a full stop: why a limit came out as it did (open hole). hole: a hole's short name, as typed.",
	],
	"rules/density-drilling-fluid-hole": [
		"density of the drilling fluid of the {hole} hole",
		"Noun phrase without its article: what is measured or is missing (open hole). hole: a hole's short name, as typed.",
	],
	"rules/pore-pressure-rock-open-to-hole": [
		"pore pressure of the rock open to the {hole} hole",
		"Noun phrase without its article: what is measured or is missing (open hole). hole: a hole's short name, as typed.",
	],
	"rules/mud-density-over-highest-pore-pressure": [
		"mud weight over the highest pore pressure",
		"Noun phrase without its article: what is measured or is missing (open hole).",
	],
	"rules/mud-hole-is": [
		"the mud of the {hole} hole is {size} {detail}{detail2}",
		"Clause without a full stop: why a limit came out as it did (open hole). hole: a hole's short name, as typed; size: the value without its sign; detail: a further part of the clause, or nothing; detail2: a further part of the clause, or nothing.",
	],
	"rules/strength-weakest-place-over-mud-density": [
		"strength of the weakest point over the mud weight",
		"Noun phrase without its article: what is measured or is missing (open hole).",
	],
	"rules/strength-shoe-above-hole": [
		"strength of the shoe above the {hole} hole",
		"Noun phrase without its article: what is measured or is missing (open hole). hole: a hole's short name, as typed.",
	],
	"rules/no-shoe-is-above-hole": [
		"no shoe is above the {hole} hole",
		"Clause without a full stop: why a limit came out as it did (open hole). hole: a hole's short name, as typed.",
	],
	"rules/kick-tolerance": [
		"kick tolerance",
		"Noun phrase without its article: what is measured or is missing (open hole).",
	],
	"rules/no-preventers-are-closed-on-kick-hole": [
		"no BOP would be closed on a kick in the {hole} hole",
		"Clause without a full stop: why a limit came out as it did (open hole). hole: a hole's short name, as typed.",
	],
	"rules/design-kick-and-its-gas-gradient": [
		"design kick and its gas gradient",
		"Noun phrase without its article: what is measured or is missing (open hole).",
	],
	"rules/drill-string": [
		"drill string",
		"Noun phrase without its article: what is measured or is missing (open hole).",
	],
	"rules/holds-kick-while-hole-is-drilled": [
		"the {detail} can take a kick of {part} while the {hole} hole is drilled{detail2}",
		"Clause without a full stop: why a limit came out as it did (open hole). detail: a further part of the clause, or nothing; part: the value; hole: a hole's short name, as typed; detail2: a further part of the clause, or nothing.",
	],
	"rules/holds-kick-while-hole-is-drilled.shoe": [
		"{shoe} shoe",
		"Noun phrase without its article: what is measured or is missing (open hole).",
	],
	"rules/design-kick": [
		"design kick",
		"Noun phrase without its article: what is measured or is missing (open hole).",
	],
	"rules/design-kick-volume-hole": [
		"design kick volume of the {hole} hole",
		"Noun phrase without its article: what is measured or is missing (open hole). hole: a hole's short name, as typed.",
	],
	"rules/design-kick-is": [
		"the design kick is {part}",
		"Clause without a full stop: why a limit came out as it did (open hole). part: the value.",
	],
	"rules/rated-working-pressure-preventers": [
		"rated working pressure of the BOP",
		"Noun phrase without its article: what is measured or is missing (open hole).",
	],
	"rules/preventers-on-casing-are-rated-for": [
		"the BOP on the {over} casing is rated for {part}",
		"Clause without a full stop: why a limit came out as it did (open hole). over: a string's short name, as typed; part: the value.",
	],
	"rules/anticipated-surface-pressure": [
		"anticipated surface pressure",
		"Noun phrase without its article: what is measured or is missing (open hole).",
	],
	"rules/pore-pressure-and-shoe-strength-below": [
		"pore pressure and shoe strength below the {over} shoe",
		"Noun phrase without its article: what is measured or is missing (open hole). over: a string's short name, as typed.",
	],
	"rules/gas-may-bring-to-surface": [
		"the anticipated surface pressure is {part}",
		"Clause without a full stop: why a limit came out as it did (open hole). part: the value.",
	],
	"rules/low-pressure-test-preventers": [
		"low-pressure BOP test",
		"Noun phrase without its article: what is measured or is missing (open hole).",
	],
	"rules/hole-beneath-is-drilled-and-cased": [
		"the hole beneath is drilled and cased",
		"Clause without a full stop: why a limit came out as it did (open hole).",
	],
	"rules/low-pressure-test-preventers-on": [
		"low-pressure BOP test on the {over} string",
		"Noun phrase without its article: what is measured or is missing (open hole). over: a string's short name, as typed.",
	],
	"rules/low-pressure-test-preventers-on-is-to": [
		"the low-pressure BOP test on the {over} string is {part}",
		"Clause without a full stop: why a limit came out as it did (open hole). over: a string's short name, as typed; part: the value.",
	],
	"rules/high-pressure-test-preventers": [
		"high-pressure BOP test",
		"Noun phrase without its article: what is measured or is missing (open hole).",
	],
	"rules/test-plug-keeps-test-preventers-off-casing": [
		"a test plug keeps the BOP test off the casing",
		"Noun phrase with its article (open hole).",
	],
	"rules/high-pressure-test-preventers-on": [
		"high-pressure BOP test on the {over} string",
		"Noun phrase without its article: what is measured or is missing (open hole). over: a string's short name, as typed.",
	],
	"rules/preventers-on-casing-are-to-be-tested": [
		"the BOP on the {over} casing is to be tested to {part} and no test plug is stated",
		"Clause without a full stop: why a limit came out as it did (open hole). over: a string's short name, as typed; part: the value.",
	],
	"rules/internal-yield-casing-beneath": [
		"internal yield of the casing beneath",
		"Noun phrase without its article: what is measured or is missing (open hole).",
	],
	"rules/string-called": [
		'string called "{over}"',
		"Noun phrase without its article: what is measured or is missing (open hole). over: a string's short name, as typed.",
	],
	"rules/open-hole-measures.what": [
		"the pipe of the {string} string",
		"Noun phrase with its article (open hole). string: a string's short name, as typed.",
	],
	"rules/internal-yield-casing-beneath-is": [
		"the internal yield of the casing beneath is {part}",
		"Clause without a full stop: why a limit came out as it did (open hole). part: the value.",
	],
	"rules/no-stimulation-is-planned-2": [
		"no stimulation is planned",
		"Clause without a full stop: why a limit came out as it did (pressure).",
	],
	"rules/is": [
		"the {noun} is {part}",
		"Clause without a full stop: why a limit came out as it did (pressure). noun: what is measured; part: the value.",
	],
	"rules/density-drilling-fluid-below-shoe": [
		"density of the drilling fluid below the shoe",
		"Noun phrase without its article: what is measured or is missing (pressure).",
	],
	"rules/test-pressure": [
		"test pressure",
		"Noun phrase without its article: what is measured or is missing (pressure).",
	],
	"rules/hold-test": [
		"hold time of the test",
		"Noun phrase without its article: what is measured or is missing (pressure).",
	],
	"rules/hold-pressure-test": [
		"hold time of the pressure test",
		"Noun phrase without its article: what is measured or is missing (pressure).",
	],
	"rules/fall-in-test": [
		"pressure loss in the test",
		"Noun phrase without its article: what is measured or is missing (pressure).",
	],
	"rules/fall-pressure-test": [
		"pressure loss of the pressure test",
		"Noun phrase without its article: what is measured or is missing (pressure).",
	],
	"rules/least-internal-yield-pressure-string": [
		"lowest internal yield pressure of the string",
		"Noun phrase without its article: what is measured or is missing (pressure).",
	],
	"rules/internal-yield-pressure": [
		"internal yield pressure",
		"Noun phrase without its article: what is measured or is missing (pressure).",
	],
	"rules/least-internal-yield-pressure-string-is": [
		"the lowest internal yield pressure of the string is {part}",
		"Clause without a full stop: why a limit came out as it did (pressure). part: the value.",
	],
	"rules/relief-valves-setting": [
		"relief valve setting",
		"Noun phrase without its article: what is measured or is missing (pressure).",
	],
	"rules/working-pressure-preventers": [
		"working pressure of the BOP",
		"Noun phrase without its article: what is measured or is missing (pressure).",
	],
	"rules/preventers-on-string": [
		"BOP on the {string} string",
		"Noun phrase without its article: what is measured or is missing (pressure). string: a string's short name, as typed.",
	],
	"rules/preventers-on-string-are-rated-at": [
		"the BOP on the string is rated at {part}",
		"Clause without a full stop: why a limit came out as it did (pressure). part: the value.",
	],
	"rules/new-hole-drilled-before-shoe-test": [
		"new hole drilled before the shoe test",
		"Noun phrase without its article: what is measured or is missing (pressure).",
	],
	"rules/new-hole-before-shoe-test": [
		"new hole before the shoe test",
		"Noun phrase without its article: what is measured or is missing (pressure).",
	],
	"rules/shoe-is-tested-after-new-hole": [
		"the shoe is tested after {part} of new hole",
		"Clause without a full stop: why a limit came out as it did (pressure). part: the value.",
	],
	"rules/equivalent-density-shoe-test": [
		"equivalent density of the shoe test",
		"Noun phrase without its article: what is measured or is missing (pressure).",
	],
	"rules/shoe-test": [
		"shoe test",
		"Noun phrase without its article: what is measured or is missing (pressure).",
	],
	"rules/heaviest-fluid-planned-below-shoe": [
		"heaviest fluid planned below the shoe",
		"Noun phrase without its article: what is measured or is missing (pressure).",
	],
	"rules/fluid-planned-below-shoe-weighs": [
		"the fluid planned below the shoe weighs {part}",
		"Clause without a full stop: why a limit came out as it did (pressure). part: the value.",
	],
	"rules/pressure-at-which-job-stops": [
		"shutdown pressure of the annulus",
		"Noun phrase without its article: what is measured or is missing (pressure).",
	],
	"rules/stop-pressure": [
		"stop pressure",
		"Noun phrase without its article: what is measured or is missing (pressure).",
	],
	"rules/job-stops-when-annulus-reaches": [
		"the job shuts down when the annulus reaches {part}",
		"Clause without a full stop: why a limit came out as it did (pressure). part: the value.",
	],
	"rules/predicted-rise-annulus-pressure": [
		"predicted rise of the annulus pressure",
		"Noun phrase without its article: what is measured or is missing (pressure).",
	],
	"rules/predicted-rise": [
		"predicted rise",
		"Noun phrase without its article: what is measured or is missing (pressure).",
	],
	"rules/annulus-pressure-is-predicted-to-rise-by": [
		"the annulus pressure is predicted to rise by {part}",
		"Clause without a full stop: why a limit came out as it did (pressure). part: the value.",
	],
	"rules/over-pore-pressure": [
		", at {intensity} over pore pressure",
		"Further part of a clause (open hole).",
	],
	"rules/strength-weakest-place-over-ecd": [
		"strength of the weakest point over the ECD",
		"Noun phrase without its article: what is measured or is missing (open hole).",
	],
	"rules/strength-weakest-place-over-surge": [
		"strength of the weakest point over the mud weight with surge",
		"Noun phrase without its article: what is measured or is missing (open hole).",
	],
	"rules/swabbed-mud-over-pore": [
		"mud weight with swab over the highest pore pressure",
		"Noun phrase without its article: what is measured or is missing (open hole).",
	],
	"rules/rate-of-hole": [
		"maximum flow rate while drilling the {hole} hole",
		"Noun phrase without its article: what is measured or is missing (open hole).",
	],
	"rules/speed-of-pipe-in-hole": [
		"maximum pipe speed in the {hole} hole",
		"Noun phrase without its article: what is measured or is missing (open hole).",
	],
	"rules/readings-of-mud": [
		"viscometer readings of the mud of the {hole} hole",
		"Noun phrase without its article: what is measured or is missing (open hole).",
	],
	"rules/bears-more-than-ecd": [
		"the {place} holds {size} more than the ECD of the {hole} hole ({density} there)",
		"Clause without a full stop: why a limit came out as it did (open hole). place: a shoe or a formation; density: an equivalent density.",
	],
	"rules/bears-less-than-ecd": [
		"the {place} holds {size} less than the ECD of the {hole} hole ({density} there)",
		"Clause without a full stop: why a limit came out as it did (open hole). place: a shoe or a formation; density: an equivalent density.",
	],
	"rules/bears-more-than-surge": [
		"with {pipe} run at {speed}, the {place} holds {size} more than the mud weight with surge in the {hole} hole ({density} there)",
		"Clause without a full stop: why a limit came out as it did (open hole). pipe: a string; place: a shoe or a formation; density: an equivalent density.",
	],
	"rules/bears-less-than-surge": [
		"with {pipe} run at {speed}, the {place} holds {size} less than the mud weight with surge in the {hole} hole ({density} there)",
		"Clause without a full stop: why a limit came out as it did (open hole). pipe: a string; place: a shoe or a formation; density: an equivalent density.",
	],
	"rules/the-drill-string": ["the drill string", "Part of a clause: which pipe moves (open hole)."],
	"rules/the-string-called": ["the {string} string", "Part of a clause: which pipe moves (open hole)."],
	"rules/swabbed-above-pore": [
		"with the drill string pulled, the mud weight with swab in the {hole} hole stays {size} over the pore pressure of the {formation}{detail}",
		"Clause without a full stop: why a limit came out as it did (open hole). formation: a name; detail: the equivalent density in brackets, or nothing.",
	],
	"rules/swabbed-below-pore": [
		"with the drill string pulled, the mud weight with swab in the {hole} hole falls {size} below the pore pressure of the {formation}{detail}",
		"Clause without a full stop: why a limit came out as it did (open hole). formation: a name; detail: the equivalent density in brackets, or nothing.",
	],
} as const satisfies Entries;
