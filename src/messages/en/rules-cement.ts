import type { Entries } from "../entries.ts";

/** Cement tops, zones and strengths, as findings say them. */
export const RULES_CEMENT = {
	"rules/cement-top": [
		"cement top",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/measured-depth": [
		"measured depth of {place}",
		"Noun phrase without its article: what is measured or is missing (cement). place: a noun phrase.",
	],
	"rules/no-formation-open-between-shoe-and-shoe": [
		"no formation open between the {string} shoe and the previous shoe is marked as a flow zone or as the target",
		"Clause without a full stop: why a limit came out as it did (cement).",
	],
	"rules/there-is-no-string-outside-this-one": [
		"there is no string outside this one",
		"Clause without a full stop: why a limit came out as it did (cement).",
	],
	"rules/no-interval-is-to-be-perforated": [
		"no interval is to be perforated",
		"Clause without a full stop: why a limit came out as it did (cement).",
	],
	"rules/uppermost-perforation": [
		"uppermost perforation",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/hole-has-no-kickoff": [
		"the hole has no kickoff",
		"Clause without a full stop: why a limit came out as it did (cement).",
	],
	"rules/height-cement-above-shoe": [
		"height of cement above the shoe",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/height-cement-above-shallowest-flow-zone": [
		"height of cement above the shallowest flow zone",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/top-shallowest-flow-zone-or-target": [
		"the top of the shallowest flow zone or target open above the shoe",
		"Noun phrase with its article (cement).",
	],
	"rules/height-cement-above-previous-shoe": [
		"height of cement above the previous shoe",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/previous-shoe": ["the previous shoe", "Noun phrase with its article (cement)."],
	"rules/height-cement-above-uppermost-perforation": [
		"height of cement above the uppermost perforation",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/uppermost-perforation-2": ["the uppermost perforation", "Noun phrase with its article (cement)."],
	"rules/height-cement-above-kickoff": [
		"height of cement above the kickoff",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/kickoff": ["the kickoff", "Noun phrase with its article (cement)."],
	"rules/height-cement-above-base-protected-water": [
		"height of cement above the base of protected water",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/height-cement-above-formations-top": [
		"height of cement above the formation's top",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/height-cement-above-formations-base": [
		"height of cement above the formation's base",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/sacks-of-cement": [
		"number of sacks of cement",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/sacks-planned": [
		"the job takes {part} sacks of cement",
		"Clause without a full stop: why a limit came out as it did (cement). part: a number.",
	],
	"rules/outside-diameter-of-pipe": [
		"outside diameter of the pipe",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/outside-diameter-is": [
		"the outside diameter of the pipe is {part}",
		"Clause without a full stop: why a limit came out as it did (sizes). part: a value.",
	],
	"rules/cement-pumped-to-cement-calculated": [
		"cement pumped to cement calculated",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/slurry-planned-for-annulus-is-times-its": [
		"the planned annular slurry is {part} times the calculated volume",
		"Clause without a full stop: why a limit came out as it did (cement). part: the value.",
	],
	"rules/length-cement-placed-at-shoe": [
		"length of the cement placed at the shoe",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/slurry-covers-above-shoe": [
		"the {detail} slurry covers {part} above the shoe{axis}",
		"Clause without a full stop: why a limit came out as it did (cement). detail: a further part of the clause, or nothing; part: the value; axis: along the hole, or vertically.",
	],
	"rules/cement-leaves-annulus-without-any-from-to": [
		"the {basis} cement leaves the annulus uncemented from {md} to {md2}.",
		"Sentence: why a limit came out as it did (cement). basis: planned, recorded or calculated.",
	],
	"rules/cement-top-is-at-not-at-surface": [
		"the {basis} cement top is at {md}, not at surface.",
		"Sentence: why a limit came out as it did (cement). basis: planned, recorded or calculated.",
	],
	"rules/record-shows-that-no-cement-returned-to": [
		"the record shows no cement returns at surface.",
		"Sentence: why a limit came out as it did (cement).",
	],
	"rules/record-shows-cement-returned-to-surface": [
		"the record shows {returnsToSurface} of cement returns at surface.",
		"Sentence: why a limit came out as it did (cement).",
	],
	"rules/cement-column-reaches-ground-level": [
		"the {basis} cement column reaches ground level.",
		"Sentence: why a limit came out as it did (cement). basis: planned, recorded or calculated.",
	],
	"rules/class-slurry": [
		"class of the {id} slurry",
		"Noun phrase without its article: what is measured or is missing (cement). id: a short name, as typed.",
	],
	"rules/slurries-are-class": [
		"the slurries are of class {named}.",
		"Sentence: why a limit came out as it did (cement). named: what the rule names.",
	],
	"rules/cementing-plugs": [
		"cementing plugs",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/plug-is-among-them": [
		"a {words} plug is listed ({listedPlugs}).",
		"Sentence: why a limit came out as it did (cement). listedPlugs: the plugs named; words: words of the rule.",
	],
	"rules/no-plug-is-among-them": [
		"no {orListed} plug is listed ({listedPlugs}).",
		"Sentence: why a limit came out as it did (cement). listedPlugs: the plugs named; orListed: words of the rule, joined by or.",
	],
	"rules/well-does-not-reach": [
		"the well does not reach the {name}.",
		"Sentence: why a limit came out as it did (cement). name: a name, as typed.",
	],
	"rules/no-single-cement-column-covers-from-top": [
		"no single cement column covers the {name} from top to bottom.",
		"Sentence: why a limit came out as it did (cement). name: a name, as typed.",
	],
	"rules/protected-water": [
		"protected water",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/no-formation-is-marked-as-flow-zone": [
		"no formation is marked as a flow zone.",
		"Sentence: why a limit came out as it did (cement).",
	],
	"rules/extent": [
		"extent of the {name}",
		"Noun phrase without its article: what is measured or is missing (cement). name: a name, as typed.",
	],
	"rules/at-shoe": [
		"at the shoe",
		"Noun phrase without its article: what is measured or is missing (strength).",
	],
	"rules/above-slurry-at-shoe": [
		"above the slurry at the shoe",
		"Noun phrase without its article: what is measured or is missing (strength).",
	],
	"rules/in-critical-zone": [
		"in the critical zone",
		"Noun phrase without its article: what is measured or is missing (strength).",
	],
	"rules/above-critical-zone": [
		"above the critical zone",
		"Noun phrase without its article: what is measured or is missing (strength).",
	],
	"rules/over-whole-column": [
		"over the whole column",
		"Noun phrase without its article: what is measured or is missing (strength).",
	],
	"rules/no-slurry-string-lies": [
		"the {string} string has no slurry {zoneName}",
		"Noun phrase without its article: what is measured or is missing (strength). string: a string's short name, as typed; zoneName: where along the string.",
	],
	"rules/free-fluid-slurry": [
		"free fluid of the {id} slurry",
		"Noun phrase without its article: what is measured or is missing (strength). id: a short name, as typed.",
	],
	"rules/wait-on-cement": [
		"wait on cement",
		"Noun phrase without its article: what is measured or is missing (strength).",
	],
	"rules/wait-on-cement-is": [
		"the wait on cement is {part}",
		"Clause without a full stop: why a limit came out as it did (strength). part: the value.",
	],
	"rules/strength-when-wait-on-cement-ends": [
		"strength when the wait on cement ends",
		"Noun phrase without its article: what is measured or is missing (strength).",
	],
	"rules/strength-is": [
		"the strength {slurryName} is {part}{detail}",
		"Clause without a full stop: why a limit came out as it did (strength). slurryName: of which slurry and where; part: the value; detail: a further part of the clause, or nothing.",
	],
	"rules/compressive-strength": [
		"compressive strength",
		"Noun phrase without its article: what is measured or is missing (strength).",
	],
	"rules/time-strength": [
		"time of the strength",
		"Noun phrase without its article: what is measured or is missing (strength).",
	],
	"rules/strength-is-2": [
		"the strength {slurryName} is {part}{detail}{detail2}",
		"Clause without a full stop: why a limit came out as it did (strength). slurryName: of which slurry and where; part: the value; detail: a further part of the clause, or nothing; detail2: a further part of the clause, or nothing.",
	],
	"rules/free-fluid": [
		"free fluid",
		"Noun phrase without its article: what is measured or is missing (strength).",
	],
	"rules/free-fluid-is": [
		"the free fluid {slurryName} is {part}",
		"Clause without a full stop: why a limit came out as it did (strength). slurryName: of which slurry and where; part: the value.",
	],
	"rules/when-wait-on-cement-ends": [
		" when the wait on cement of {wait} ends",
		"Clause without a full stop: why a limit came out as it did (strength).",
	],
	"rules/after": [
		" after {after}",
		"Noun phrase without its article: what is measured or is missing (strength).",
	],
	"rules/cured-at": [", cured at {curedAt}", "Further part of a clause (strength)."],
} as const satisfies Entries;
