import type { Entries } from "../entries.ts";

/** Neighbors, offset wells and water, as findings say them. */
export const RULES_SITE = {
	"rules/surface-location-this-well": [
		"surface location of this well",
		"Noun phrase without its article: what is measured or is missing (neighboring wells).",
	],
	"rules/place": [
		"position of {entry}",
		"Noun phrase without its article: what is measured or is missing (neighboring wells). entry: an offset well's name, as typed.",
	],
	"rules/path": [
		"path of {entry}",
		"Noun phrase without its article: what is measured or is missing (neighboring wells). entry: an offset well's name, as typed.",
	],
	"rules/separation-factor": [
		"separation factor",
		"Noun phrase without its article: what is measured or is missing (neighboring wells).",
	],
	"rules/survey-uncertainty-this-well": [
		"survey uncertainty of this well",
		"Noun phrase without its article: what is measured or is missing (neighboring wells).",
	],
	"rules/survey-uncertainty": [
		"survey uncertainty of {entry}",
		"Noun phrase without its article: what is measured or is missing (neighboring wells). entry: an offset well's name, as typed.",
	],
	"rules/separation-factor-to-is": [
		"the separation factor to {entry} is {part}{detail}",
		"Clause without a full stop: why a limit came out as it did (neighboring wells). entry: an offset well's name, as typed; part: the value; detail: a further part of the clause, or nothing.",
	],
	"rules/longest-survey-interval-in-build-and": [
		"longest survey interval in the build and lateral",
		"Noun phrase without its article: what is measured or is missing (neighboring wells).",
	],
	"rules/hole-is-not-surveyed-through-build-or": [
		"the hole is not surveyed through a build or a lateral",
		"Clause without a full stop: why a limit came out as it did (neighboring wells).",
	],
	"rules/longest-interval-between-stations-build-and-lateral": [
		"the longest survey interval in the build and lateral is {part}",
		"Clause without a full stop: why a limit came out as it did (neighboring wells). part: the value.",
	],
	"rules/ends-above-highest-modeled-top-fractures": [
		"{name} ends {above} above the highest modeled fracture top",
		"Clause without a full stop: why a limit came out as it did (neighboring wells). name: a name, as typed.",
	],
	"rules/and-is-from-treated-interval-horizontally": [
		"{where} and is {plan} horizontally from the treated interval.",
		"Sentence: why a limit came out as it did (neighboring wells). where: the clause before.",
	],
	"rules/its-condition-rests-on": [
		"{where}; evidence of its condition: {evidence}.",
		"Sentence: why a limit came out as it did (neighboring wells). where: the clause before; evidence: as typed.",
	],
	"rules/and-is-from-treated-interval-horizontally-within": [
		"{where} and is {plan} horizontally from the treated interval, within the reach of {reach}; there is no evidence of its condition.",
		"Sentence: why a limit came out as it did (neighboring wells). where: the clause before.",
	],
	"rules/path-2": [
		"path of {name}",
		"Noun phrase without its article: what is measured or is missing (neighboring wells). name: a name, as typed.",
	],
	"rules/goes-as-deep-as-fractures-from-treated": [
		"{name} is as deep as the fractures and {near} horizontally from the treated interval; fractures and uncertainties reach {reach}",
		"Clause without a full stop: why a limit came out as it did (neighboring wells). name: a name, as typed.",
	],
	"rules/and-it-is-shut-off-there-by": [
		"{where}. It is isolated there by {barriers}.",
		"Sentence: why a limit came out as it did (neighboring wells). where: the clause before.",
	],
	"rules/and-nothing-shows-that-it-is-shut": [
		"{where}. There is no evidence that it is isolated across and above them.",
		"Sentence: why a limit came out as it did (neighboring wells). where: the clause before.",
	],
	"rules/no-neighbor-is-asked": [
		"no neighbor is concerned.",
		"Sentence: why a limit came out as it did (site).",
	],
	"rules/no-written-consent-is-recorded-for": [
		"no written consent is recorded for {name}.",
		"Sentence: why a limit came out as it did (site). name: a name, as typed.",
	],
	"rules/written-consent-for-was-given-on": [
		"written consent for {name} was given on {given} ({cite}).",
		"Sentence: why a limit came out as it did (site). name: a name, as typed; cite: as typed.",
	],
	"rules/no-offset-well-is-listed-and-search": [
		"no offset well is listed, and the search is stated to be complete.",
		"Sentence: why a limit came out as it did (site).",
	],
	"rules/no-offset-well-is-listed-and-nobody": [
		"no offset well is listed, and the search is not stated to be complete.",
		"Sentence: why a limit came out as it did (site).",
	],
	"rules/offset-wells-nearby": [
		"offset wells nearby",
		"Noun phrase without its article: what is measured or is missing (site).",
	],
	"rules/place-near-enough-to-measure-from": [
		"position of {well}, to measure from the {placeWords}",
		"Noun phrase without its article: what is measured or is missing (site). well: a well's name, as typed; placeWords: the place measured from.",
	],
	"rules/is-from-outside-radius": [
		"{well} is {distance} from the {placeWords}, outside the radius.",
		"Sentence: why a limit came out as it did (site). well: a well's name, as typed; distance: a distance; placeWords: the place measured from.",
	],
	"rules/evidence-condition": [
		"evidence of the condition of {well}",
		"Noun phrase without its article: what is measured or is missing (site). well: a well's name, as typed.",
	],
	"rules/is-from-its-condition-rests-on": [
		"{well} is {distance} from the {placeWords}; evidence of its condition: {evidence}.",
		"Sentence: why a limit came out as it did (site). well: a well's name, as typed; distance: a distance; placeWords: the place measured from; evidence: as typed.",
	],
	"rules/additives-treatment": [
		"additives of the treatment",
		"Noun phrase without its article: what is measured or is missing (site).",
	],
	"rules/ingredients": [
		"ingredients of {name}",
		"Noun phrase without its article: what is measured or is missing (site). name: a name, as typed.",
	],
	"rules/cas-number-in": [
		"CAS number of {ingredient} in {name}",
		"Noun phrase without its article: what is measured or is missing (site). name: a name, as typed.",
	],
	"rules/none-ingredients-additives-has-cas-number-on": [
		"none of the {count} ingredients of the {additives} additives has a CAS number on the rule's list.",
		"Sentence: why a limit came out as it did (site). count: a count; additives: a count.",
	],
	"rules/vertical-depth-well-below-ground": [
		"total depth below ground, TVD",
		"Noun phrase without its article: what is measured or is missing (site).",
	],
	"rules/total-depth": [
		"total depth",
		"Noun phrase without its article: what is measured or is missing (site).",
	],
	"rules/well-is-deep-below-ground-vertically": [
		"the total depth is {part} TVD below ground level",
		"Clause without a full stop: why a limit came out as it did (site). part: the value.",
	],
	"rules/vertical-distance-from-protected-water-to": [
		"vertical distance from protected water to the uppermost perforation",
		"Noun phrase without its article: what is measured or is missing (site).",
	],
	"rules/no-interval-is-to-be-treated": [
		"no interval is to be treated",
		"Clause without a full stop: why a limit came out as it did (site).",
	],
	"rules/computed-from-coordinates": [", computed from coordinates", "Further part of a clause (site)."],
	"rules/by": [", by {surveyedBy}", "Further part of a clause (site)."],
	"rules/hydrogen-sulfide-in-gas": [
		"hydrogen sulfide in the gas",
		"Noun phrase without its article: what is measured or is missing (site).",
	],
	"rules/gas-is-stated-to-carry-hydrogen-sulfide": [
		"the gas contains {part} of hydrogen sulfide{detail}",
		"Clause without a full stop: why a limit came out as it did (site). part: the value; detail: a further part of the clause, or nothing.",
	],
	"rules/volume-treatment": [
		"volume of the treatment",
		"Noun phrase without its article: what is measured or is missing (site).",
	],
	"rules/volumes-stages": [
		"volumes of the stages",
		"Noun phrase without its article: what is measured or is missing (site).",
	],
	"rules/treatment-takes-clean-fluid-in-all": [
		"the treatment uses {part} of clean fluid",
		"Clause without a full stop: why a limit came out as it did (site). part: the value.",
	],
	"rules/volume-greatest-stage": [
		"volume of the largest stage",
		"Noun phrase without its article: what is measured or is missing (site).",
	],
	"rules/greatest-stage-takes-clean-fluid": [
		"the largest stage uses {part} of clean fluid",
		"Clause without a full stop: why a limit came out as it did (site). part: the value.",
	],
	"rules/dissolved-solids": [
		"dissolved solids",
		"Noun phrase without its article: what is measured or is missing (site).",
	],
	"rules/dissolved-solids-are-judged-zone-by-zone": [
		"dissolved solids are checked zone by zone",
		"Clause without a full stop: why a limit came out as it did (site).",
	],
	"rules/water-carries": [
		"the water has {part}",
		"Clause without a full stop: why a limit came out as it did (site). part: the value.",
	],
	"rules/water-zones": [
		"water zones",
		"Noun phrase without its article: what is measured or is missing (water).",
	],
	"rules/carries-dissolved-solids-and-reaches-to-tvd": [
		"the {zone} has {detail} of dissolved solids and extends to {base} TVD, below the base of protected water at {base2} TVD; the rule protects water of {operatorWords} {limit}.",
		"Sentence: why a limit came out as it did (water). detail: a further part of the clause, or nothing; operatorWords: at least, more than, …; limit: a value.",
	],
	"rules/dissolved-solids-2": [
		"dissolved solids of the {zone}",
		"Noun phrase without its article: what is measured or is missing (water).",
	],
	"rules/water-zones-listed-none-dissolved-solids-lies": [
		"of the water zones listed ({water}), none with {operatorWords} {limit} of dissolved solids is below the base of protected water at {base} TVD.",
		"Sentence: why a limit came out as it did (water). operatorWords: at least, more than, …; limit: a value.",
	],
	"rules/date-on-which-was-sampled": [
		"date on which {neighbor} was sampled",
		"Clause without a full stop: why a limit came out as it did (water). neighbor: a neighbor's name, as typed.",
	],
	"rules/after-planned-for": [
		"{said}, after {eventWords}, planned for {date}.",
		"Sentence: why a limit came out as it did (water). said: the clause before; eventWords: an event, a noun phrase with its article; date: a date.",
	],
	"rules/after-recorded": [
		"{said}, after {eventWords}, which was on {date}.",
		"Sentence: why a limit came out as it did (water). said: the clause before; eventWords: an event, a noun phrase with its article; date: a date.",
	],
	"rules/before-recorded": [
		"{said}, before {eventWords}, which was on {date}.",
		"Sentence: why a limit came out as it did (water). said: the clause before; eventWords: an event, a noun phrase with its article; date: a date.",
	],
	"rules/before-planned-for": [
		"{said}, before {eventWords}, planned for {date}.",
		"Sentence: why a limit came out as it did (water). said: the clause before; eventWords: an event, a noun phrase with its article; date: a date.",
	],
	"rules/no-water-source-is-listed-within-and": [
		"no water source is listed within {radius}, and the list of neighbors is stated to be complete.",
		"Sentence: why a limit came out as it did (water).",
	],
	"rules/no-water-source-is-listed-within-and-2": [
		"no water source is listed within {radius}, and the list is not stated to be complete.",
		"Sentence: why a limit came out as it did (water).",
	],
	"rules/least-at-where-two-are-apart": [
		", lowest at {md} where the two are {separation} apart",
		"Clause without a full stop: why a limit came out as it did (neighboring wells).",
	],
	"rules/stated-by": [" (stated by {by})", "Further part of a clause (site)."],
	"rules/survey-radius-stated": [
		"survey uncertainty stated",
		"Noun phrase without its article: what is measured or is missing (survey).",
	],
	"rules/survey-ellipse-by-model": [
		"long half axis of the ellipse by the survey tool's error model",
		"Noun phrase without its article: what is measured or is missing (survey).",
	],
	"rules/no-radius-and-model-to-compare": [
		"a survey uncertainty and the survey tool's error model are not both stated",
		"Clause without a full stop: why a measure has no meaning (survey).",
	],
	"rules/survey-radius-is-stated-as": [
		"the survey uncertainty at the end of the hole is stated as {part}",
		"Clause without a full stop: why a limit came out as it did (survey). part: a distance.",
	],
	"rules/survey-ellipse-is": [
		"by the survey tool's error model the long half axis of the ellipse is {part}",
		"Clause without a full stop: why a limit came out as it did (survey). part: a distance.",
	],
} as const satisfies Entries;
