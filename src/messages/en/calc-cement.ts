import type { Entries } from "../entries.ts";

/** What the calculation says of cement jobs. */
export const CALC_CEMENT = {
	"calc/density-mud-is-not-given": [
		"The density of the mud is not given.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/pump-rate-or-density-spacer-or": [
		"A pump rate, or the density of the spacer or of the displacement, is not given.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/plastic-viscosity-or-yield-point-is": [
		"The plastic viscosity or yield point of {stiff} is not given; the pressures outside are those at rest, and no pump or bump pressure is given.",
		"Why a result is not given, printed as a sentence in the papers. stiff: a list of fluids with their articles.",
	],
	"calc/tests-slurry-end-below-that-strength": [
		"The tests of the {slurry} slurry end below that strength.",
		"Why a result is not given, printed as a sentence in the papers. slurry: role of a slurry.",
	],
	"calc/strength-slurry-is-not-given": [
		"The strength of the {slurry} slurry is not given.",
		"Why a result is not given, printed as a sentence in the papers. slurry: role of a slurry.",
	],
	"calc/length-joint-is-not-given": [
		"The length of a joint is not given.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/no-centralizers-stand-there": [
		"No centralizers are placed there.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/length-joint-or-density-mud-is": [
		"The length of a joint or the density of the mud is not given.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/diameter-over-blades-rigid-centralizers-is": [
		"The diameter over the blades of the rigid centralizers is not given.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/restoring-force-bow-springs-is-not": [
		"The restoring force of the bow springs is not known for this size.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/blades-are-smaller-than-pipe-or": [
		"The blades are smaller than the pipe or larger than the hole.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/no-slurry-reaches-shoe": [
		"No slurry reaches the shoe.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/density-above-cement-is-not-given": [
		"The density of the {unknown} above the cement is not given.",
		"Why a result is not given, printed as a sentence in the papers. unknown: a fluid.",
	],
	"calc/density-displacement-is-not-given": [
		"The density of the displacement is not given.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/plastic-viscosity-and-yield-point-are": [
		"The plastic viscosity and yield point of the {fluid} are not given.",
		"Why a result is not given, printed as a sentence in the papers. fluid: a fluid.",
	],
	"calc/part-annulus-is-too-wide-for": [
		"Part of the annulus is too wide for the friction formula.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/slurry-not-designed.what": [
		"the {slurry} slurry of the {string} string cannot be worked from its components",
		"What is wrong, for calc/slurry-not-designed. slurry: role of a slurry; string: short name of a string.",
	],
	"calc/slurry-not-designed.expected": [
		"mix water, or a density between those of water and of the dry blend",
		"What is expected instead, for calc/slurry-not-designed.",
	],
	"calc/slurry-not-designed.mend": [
		"correct the amounts, or state density, yield and water",
		"What to do about it, for calc/slurry-not-designed.",
	],
	"calc/slurry-design.what": [
		"the components of the {slurry} slurry of the {string} string give {differs}",
		"What is wrong, for calc/slurry-design. slurry: role of a slurry; string: short name of a string; differs: a value.",
	],
	"calc/slurry-design.expected": [
		"figures and components of one blend",
		"What is expected instead, for calc/slurry-design.",
	],
	"calc/slurry-design.mend": [
		"ask the laboratory which is right; the stated figures are used here",
		"What to do about it, for calc/slurry-design.",
	],
	"calc/calculated-volume-is-zero": [
		"The calculated volume is zero.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/shoe-track-is-longer-than-string": [
		"The shoe track is longer than the string.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/liner-is-displaced-through-its-running": [
		"A liner is displaced through its running string, whose bore is not given.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/no-shoe-track-is-given-so": [
		"No shoe track is given, so there is no float collar to displace to.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
} as const satisfies Entries;
