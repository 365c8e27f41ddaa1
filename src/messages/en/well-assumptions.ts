import type { Entries } from "../entries.ts";

/** What is assumed where the definition says nothing, and why. */
export const WELL_ASSUMPTIONS = {
	"well/casing-hanger.what": [
		"Strings run to surface hang at ground level.",
		"An assumption, printed as a sentence in the papers.",
	],
	"well/casing-hanger.why": [
		"The depth of the casing hanger is not given; on land it is within a few feet of ground level.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
	"well/cement-job.what": [
		"Cement volumes of the {string} string fill the washed-out hole, with the excess added once.",
		"An assumption, printed as a sentence in the papers. string: short name of a string, as typed.",
	],
	"well/cement-job.cement-volumes-string-fill-gauge": [
		"Cement volumes of the {string} string fill the gauge hole, with the excess added once.",
		"An assumption, printed as a sentence in the papers. string: short name of a string, as typed.",
	],
	"well/cement-job.why": [
		"The basis of the volumes is not given.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
	"well/cement-job.top-cement-behind-string-is": [
		"The top of cement behind the {string} string is calculated.",
		"An assumption, printed as a sentence in the papers. string: short name of a string, as typed.",
	],
	"well/cement-job.how-it-will-be-found": [
		"The method of finding it is not given; calculation is the weakest evidence.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
	"well/design-basis.what": [
		"In burst, the backup outside the pipe is fresh water ({freshWater}).",
		"An assumption, printed as a sentence in the papers. freshWater: a pressure gradient.",
	],
	"well/design-basis.why": [
		"No gradient is given; fresh water is the lightest backup fluid that can be relied on, so it is the conservative choice.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
	"well/design-basis.pipe-keeps-its-whole-wall": [
		"Pipe keeps its full wall: no wear.",
		"An assumption, printed as a sentence in the papers.",
	],
	"well/design-basis.no-wear-is-given-drilling": [
		"No wear is given. Drilling through a string thins it; where that is expected it must be stated.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
	"well/design-basis.steel-loses-yield-strength-at": [
		"Steel loses yield strength at {derating} above {room}.",
		"An assumption, printed as a sentence in the papers. derating: a share for each degree; room: a temperature.",
	],
	"well/design-basis.no-rate-is-given-this": [
		"No rate is given; this is the usual one for carbon steel.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
	"well/design-basis.pipe-must-stand-pull-above": [
		"Pipe must withstand {overpull} of pull beyond its weight.",
		"An assumption, printed as a sentence in the papers. overpull: a force.",
	],
	"well/design-basis.no-overpull-is-given-this": [
		"No overpull is given; this is the usual minimum.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
	"well/design-basis.pipe-moves-at-at-most": [
		"Casing is run at {runningSpeed} at most.",
		"An assumption, printed as a sentence in the papers. runningSpeed: a speed.",
	],
	"well/design-basis.no-speed-is-given-joint": [
		"No running speed is given; a {value} joint lowered in 12 seconds averages {value2}, with a peak half as high again.",
		"Why something is assumed, printed as a sentence in the papers. value: a length; value2: a speed.",
	],
	"well/friction.why": [
		"No range is given; this is the usual one. Calibrate it to hook loads of nearby wells.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
	"well/pipe-condition.what": ["The pipe is new.", "An assumption, printed as a sentence in the papers."],
	"well/pipe-condition.why": [
		"Its condition is not given, and ratings hold for new pipe only.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
	"well/tensile-strength.what": [
		"The tensile strength of {grade} is no more than its yield strength.",
		"An assumption, printed as a sentence in the papers. grade: grade of steel.",
	],
	"well/tensile-strength.why": [
		"It is not given. Tensile strength is never below yield strength, so this is conservative.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
	"well/washout.what": [
		"The {each} hole is in gauge.",
		"An assumption, printed as a sentence in the papers. each: a name, as typed.",
	],
	"well/washout.why": [
		"No washout is given; cement volumes then depend on the excess alone.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
	"well/offset-datum.what": [
		"Depths of {open} are taken from the elevation of this well's depth datum.",
		"An assumption, printed as a sentence in the papers. open: a list of wells.",
	],
	"well/offset-datum.why": [
		"The elevation of their own depth datum is not given; any difference shifts them by as much.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
	"well/uncertainty-growth.what": [
		"The stated radius of uncertainty applies at total depth and grows in proportion to measured depth from zero at the wellhead.",
		"An assumption, printed as a sentence in the papers.",
	],
	"well/uncertainty-growth.why": [
		"Only its value at total depth is stated. Directional errors accumulate along the hole, so the radius is largest there.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
	"well/uncertainty-confidence.what": [
		"A radius of uncertainty stated without a confidence level is taken at 95 %.",
		"An assumption, printed as a sentence in the papers.",
	],
	"well/uncertainty-confidence.why": [
		"Most survey reports state it at 95 %; a radius at a lower confidence would reduce the separation factor.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
	"well/plug-midway.what": [
		"Each plug is set midway between its stage's bottom cluster and the uppermost cluster of the stage below.",
		"An assumption, printed as a sentence in the papers.",
	],
	"well/plug-midway.why": [
		"Where the plugs are set is not given.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
	"well/treating-loss.what": [
		"No pressure is lost between the perforations and the fracture.",
		"An assumption, printed as a sentence in the papers.",
	],
	"well/treating-loss.why": [
		"The near-wellbore loss is not given; a real loss raises the expected treating pressure by as much.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
	"well/treating-loss.fluid-flows-in-pipe-as": [
		"Pipe friction is taken without friction reducer.",
		"An assumption, printed as a sentence in the papers.",
	],
	"well/treating-loss.friction-reduction-is-not-given": [
		"The friction reduction is not given; a real reduction lowers the expected treating pressure.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
	"well/trucks.what": ["All water is trucked.", "An assumption, printed as a sentence in the papers."],
	"well/trucks.why": [
		"No pipeline share is given; one would reduce loads and trips.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
	"well/neighbor-ground.what": [
		"The ground elevation at each neighbor's water well equals that at this well.",
		"An assumption, printed as a sentence in the papers.",
	],
	"well/neighbor-ground.why": [
		"Its elevation is not an input; any difference shifts the bottom of that well by as much.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
} as const satisfies Entries;
