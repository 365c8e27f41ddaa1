import type { Entries } from "../entries.ts";

/** What the calculation says of the treatment. */
export const CALC_TREATMENT = {
	"calc/treating-pressure-needs": [
		"Treating pressure needs {wanting}.",
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
		"The string treated through has no pipe.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/annulus-stop.what": [
		"the {between} annulus may rise above where the job stops without a leak",
		"What is wrong, for calc/annulus-stop. between: two strings.",
	],
	"calc/annulus-stop.expected": [
		"at least {pressureAsWritten}",
		"What is expected instead, for calc/annulus-stop. pressureAsWritten: a value.",
	],
	"calc/annulus-stop.mend": [
		"state the relief valve that holds the annulus below the stop, or raise the stop as far as both strings allow",
		"What to do about it, for calc/annulus-stop.",
	],
	"calc/annulus-stop.set-relief-valve-below-stop": [
		"set the relief valve below the stop",
		"What to do about it, for calc/annulus-stop.",
	],
	"calc/ladder-faults.mend": ["correct the pressures", "What to do about it, for calc/ladder-faults."],
	"calc/test-line-to-maximum-treating-pressure": [
		"test the line to the maximum treating pressure or above it",
		"Part of a sentence.",
	],
	"calc/lower-rate-or-design-for-higher": [
		"lower the rate, or design for a higher limit",
		"Part of a sentence.",
	],
	"calc/lower-limit-or-use-stronger-element": [
		"lower the limit, or use a stronger element or a higher test",
		"Part of a sentence.",
	],
	"calc/set-them-from-lowest-up-kickouts": [
		"set them from the lowest up: kickouts, relief valve, maximum",
		"Part of a sentence.",
	],
	"calc/expected-treating-pressure": ["the expected treating pressure", "Part of a sentence."],
	"calc/kickout": ["kickout {name}", "Part of a sentence. name: a name, as typed."],
	"calc/relief-valve": ["the relief valve", "Part of a sentence."],
	"calc/maximum-treating-pressure": ["the maximum treating pressure", "Part of a sentence."],
	"calc/the-line-test": ["the line test", "Part of a sentence."],
	"calc/what-is-allowed": ["what the {name} is allowed", "Part of a sentence. name: a name, as typed."],
	"calc/no-rating-is-known-for": [
		"No rating is known for {element}.",
		"Why a result is not given, printed as a sentence in the papers. element: what holds pressure.",
	],
	"calc/sees-treating-pressure-and-is-not": [
		"The {element} sees treating pressure and is not in the pressure boundary.",
		"Why a result is not given, printed as a sentence in the papers. element: what holds pressure.",
	],
	"calc/has-no-rate-and-is-pumped": [
		"{additive} has no rate and is pumped in no step, so no share by mass can be told.",
		"Why a result is not given, printed as a sentence in the papers. additive: name of an additive.",
	],
	"calc/has-no-density-so-no-share": [
		"{additive} has no density, so no share by mass can be told.",
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
		"How the first stage is opened is not stated. Guns cannot be pumped down before fluid can go into the rock.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/initiation-valve-has-no-opening-pressure": [
		"The initiation valve has no opening pressure.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/toe-valve.mend": [
		"choose another opening pressure, or another way to open the toe",
		"What to do about it, for calc/toe-valve.",
	],
	"calc/casing-test-would-open-initiation-valve": [
		"the casing test would open the initiation valve",
		"Part of a sentence.",
	],
	"calc/above-at-surface": [
		"above {pressureAsWritten} at the surface",
		"Part of a sentence. pressureAsWritten: a value.",
	],
	"calc/casing-test": ["the casing test", "Part of a sentence."],
	"calc/no-allowed-pressure-opens-initiation-valve": [
		"no allowed pressure opens the initiation valve",
		"Part of a sentence.",
	],
	"calc/at-most-at-surface": [
		"at most {pressureAsWritten} at the surface",
		"Part of a sentence. pressureAsWritten: a value.",
	],
	"calc/maximum": ["the maximum", "Part of a sentence."],
} as const satisfies Entries;
