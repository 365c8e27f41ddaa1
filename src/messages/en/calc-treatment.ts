import type { Entries } from "../entries.ts";

/** What the calculation says of the treatment. */
export const CALC_TREATMENT = {
	"calc/treating-pressure-needs": [
		"Treating pressure needs {wanting}.",
		"Why a result is not given, printed as a sentence in the papers. wanting: what is not given.",
	],
	"calc/fracture-models-need": [
		"The fracture models need {wanting}.",
		"Why a result is not given, printed as a sentence in the papers. wanting: what is not given.",
	],
	"calc/step-has-no-volume": [
		'The step "{step}" has no volume.',
		"Why a result is not given, printed as a sentence in the papers. step: as typed.",
	],
	"calc/step-names-no-proppant-that-is": [
		'The step "{name}" names no proppant that is described.',
		"Why a result is not given, printed as a sentence in the papers. name: a name, as typed.",
	],
	"calc/string-treated-through-has-no-pipe": [
		"The string that the treatment is pumped through has no pipe.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/no-rating-is-known-for": [
		"No rating is known for {element}.",
		"Why a result is not given, printed as a sentence in the papers. element: what holds pressure.",
	],
	"calc/sees-treating-pressure-and-is-not": [
		"The {element} is exposed to treating pressure but is not in the list of pressure ratings.",
		"Why a result is not given, printed as a sentence in the papers. element: what holds pressure.",
	],
	"calc/has-no-rate-and-is-pumped": [
		"{additive} has no rate and is pumped in no step, so its share by mass is unknown.",
		"Why a result is not given, printed as a sentence in the papers. additive: name of an additive.",
	],
	"calc/has-no-density-so-no-share": [
		"{additive} has no density, so its share by mass is unknown.",
		"Why a result is not given, printed as a sentence in the papers. additive: name of an additive.",
	],
	"calc/stresses-are-stated-for-clusters-and": [
		"Stresses are stated for {value} clusters, and stage {number} has {clusters}.",
		"Why a result is not given, printed as a sentence in the papers. value: a value or a count; number: number of a stage; clusters: how many.",
	],
	"calc/net-pressure-reaches-stress-contrast-this": [
		"The net pressure reaches the stress contrast: this model puts no bound on the height.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/how-first-stage-is-opened-is": [
		"How the first stage is opened is not stated. Guns cannot be pumped down until there is an opening to the formation.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/initiation-valve-has-no-opening-pressure": [
		"The initiation valve has no opening pressure.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
} as const satisfies Entries;
