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
		"A part of the annulus is too wide for the friction formula.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/slurry-not-designed.what": [
		"the {slurry} slurry of the {string} string cannot be worked from its components",
		"What is wrong, for calc/slurry-not-designed. slurry: role of a slurry; string: short name of a string.",
	],
	"calc/slurry-not-designed.expected": [
		"mix water, or a density between water's and the dry mix's",
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
		"ask the laboratory which is right; the stated figures are used",
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
	"calc/margin-fault.expected": [
		"at most {rock} there",
		"What is expected instead, for calc/margin-fault. rock: a value.",
	],
	"calc/margin-fault.at-least-there": [
		"at least {rock} there",
		"What is expected instead, for calc/margin-fault. rock: a value.",
	],
	"calc/margin-fault.mend": [
		"pump slower, lighten the slurry, shorten the column, or set a stage tool above it",
		"What to do about it, for calc/margin-fault.",
	],
	"calc/margin-fault.shorten-or-weight-spacer-or": [
		"shorten or weight the spacer, or hold pressure on the annulus",
		"What to do about it, for calc/margin-fault.",
	],
	"calc/lifts-casing.what": [
		"the cement job lifts the {string} string with {least} more than holds it down",
		"What is wrong, for calc/lifts-casing. string: short name of a string; least: a value.",
	],
	"calc/lifts-casing.expected": [
		"more weight in and of the pipe than push on its end",
		"What is expected instead, for calc/lifts-casing.",
	],
	"calc/lifts-casing.found": [
		"{least} upward, after {atpumped}",
		"What was found, for calc/lifts-casing. least: a value; atpumped: a value.",
	],
	"calc/lifts-casing.upward-when-plug-lands": [
		"{least} upward when the plug lands",
		"What was found, for calc/lifts-casing. least: a value.",
	],
	"calc/lifts-casing.mend": [
		"displace with a heavier fluid, chain the string down, or lighten the slurry",
		"What to do about it, for calc/lifts-casing.",
	],
	"calc/bump-above-limit.what": [
		"bumping {plug} of the {string} string takes {bumppressure}, {bumppressure2} more than the {element} is good for",
		"What is wrong, for calc/bump-above-limit. plug: a plug with its article; string: short name of a string; bumppressure: a value; bumppressure2: a value; element: what holds pressure.",
	],
	"calc/bump-above-limit.expected": [
		"at most {allowed}",
		"What is expected instead, for calc/bump-above-limit. allowed: a value.",
	],
	"calc/bump-above-limit.mend": [
		"slow down before the plug lands, or bump with less",
		"What to do about it, for calc/bump-above-limit.",
	],
	"calc/sets-before-placed.what": [
		"the {id} slurry of the {string} string thickens {inuse} before the plug lands",
		"What is wrong, for calc/sets-before-placed. id: a short name; string: short name of a string; inuse: a value.",
	],
	"calc/sets-before-placed.expected": [
		"a thickening time of more than {inuse}",
		"What is expected instead, for calc/sets-before-placed. inuse: a value.",
	],
	"calc/sets-before-placed.mend": [
		"retard the slurry, or pump faster",
		"What to do about it, for calc/sets-before-placed.",
	],
	"calc/drill-out-before-strength.what": [
		"the shoe of the {string} string is to be drilled after {when}, when its cement has {strength}",
		"What is wrong, for calc/drill-out-before-strength. string: short name of a string; when: a value; strength: a pressure.",
	],
	"calc/drill-out-before-strength.found": [
		"{strength} by the laboratory's tests",
		"What was found, for calc/drill-out-before-strength. strength: a pressure.",
	],
	"calc/drill-out-before-strength.mend": [
		"wait for a test that shows the strength",
		"What to do about it, for calc/drill-out-before-strength.",
	],
	"calc/drill-out-before-strength.wait-or-have-laboratory-show": [
		"wait {reached}, or have the laboratory show the strength earlier",
		"What to do about it, for calc/drill-out-before-strength. reached: a value.",
	],
	"calc/no-returns.what": [
		"{over} of the calculated cement of the {string} string was pumped and none came back",
		"What is wrong, for calc/no-returns. over: a value; string: short name of a string.",
	],
	"calc/no-returns.expected": ["cement at the surface", "What is expected instead, for calc/no-returns."],
	"calc/no-returns.mend": [
		"find the top by a survey or a log, and record it under `top`",
		"What to do about it, for calc/no-returns.",
	],
	"calc/cement-short-of-water.what": [
		"cement behind the {string} string stops {short} below the top of the {name}",
		"What is wrong, for calc/cement-short-of-water. string: short name of a string; short: a value; name: a name, as typed.",
	],
	"calc/cement-short-of-water.expected": [
		"cement from {top} TVD or above",
		"What is expected instead, for calc/cement-short-of-water. top: a value.",
	],
	"calc/cement-short-of-water.found": [
		"top at {tvd} TVD, by returns",
		"What was found, for calc/cement-short-of-water. tvd: a value.",
	],
	"calc/cement-short-of-water.top-at-tvd-by": [
		"top at {tvd} TVD, by the {topmethod}",
		"What was found, for calc/cement-short-of-water. tvd: a value; topmethod: a word of the data.",
	],
	"calc/cement-short-of-water.mend": [
		"tell the agency, and place what is missing before drilling on",
		"What to do about it, for calc/cement-short-of-water.",
	],
	"calc/no-returns.found": [
		"{back} of {pumped}",
		"What was found, for calc/no-returns. back and pumped: volumes.",
	],
} as const satisfies Entries;
