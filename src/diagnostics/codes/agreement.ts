import type { CodeEntry } from "../codes.ts";

/** Values that read well one by one and do not go together: with the place, the record, the depth, the recipe. */
export const AGREEMENT_CODES = {
	"definition/same-name": {
		severity: "warning",
		title: "Two entries of a list have the same name",
		explain:
			"Papers call formations, waters, neighbors and materials by their names. With two alike a reader cannot tell which " +
			"one a figure belongs to. Often a line was copied and not finished. Give each its own name, or leave it if the two " +
			"are really called the same.",
	},
	"well/annulus-strings": {
		severity: "error",
		title: "The strings of an annulus are not named from the inside out",
		explain:
			"An annulus lies between two strings; the inner one is named first, as in `[production, intermediate]`. Turned round, its " +
			"limit would be watched on the wrong gauge. Exchange the two.",
	},
	"well/pipe-above-hanger": {
		severity: "warning",
		title: "Pipe begins above its hanger",
		explain:
			"Depths are counted from the datum, which is up on the rig floor; pipe that comes to surface begins at the hanger, some " +
			"feet below it. `from: surface` says that. A depth above the hanger counts pipe that is not there.",
	},
	"well/api-state": {
		severity: "warning",
		title: "The API well number is of another state",
		explain:
			"An API well number begins with the code of its state: 42 is Texas, 05 Colorado. Here it is not that of any state " +
			"whose rules the well names. The number files the well under somebody else's, or the jurisdiction is the wrong one. " +
			"Correct whichever is wrong.",
	},
	"well/coordinates-astray": {
		severity: "warning",
		title: "A place lies outside its state, or far from the well",
		explain:
			"Coordinates are compared with the box that the state lies in, and with the wellhead. A lost minus sign, latitude and " +
			"longitude exchanged, or a wrong digit puts a place in another state or another country, and every distance with it. " +
			"Near a state line, or of a place that is really so far, leave it.",
	},
	"well/distance-astray": {
		severity: "warning",
		title: "A surveyed distance does not fit the coordinates",
		explain:
			"A neighbor has a surveyed distance and coordinates, and the two are of different places: a digit is wrong in one of them. " +
			"The size of the pad and the looseness of both are allowed for. Setbacks use the surveyed distance and maps the " +
			"coordinates, so correct whichever is wrong.",
	},
	"well/record-before-spud": {
		severity: "warning",
		title: "A record is older than the hole it was made in",
		explain:
			"What stands under `actual` is a record of work done in this hole, and the hole was begun on the date of `spud`. Only " +
			"the conductor may have been set before. Either one of the dates is wrong, or what stands there is the plan and does " +
			"not belong under `actual`.",
	},
	"well/beyond-total-depth": {
		severity: "error",
		title: "A depth lies below the bottom of the well",
		explain:
			"No depth in the well is greater than the depth its deepest hole is drilled to, and no true vertical depth is greater " +
			"than the measured depth of its point. A digit, or the unit, has usually slipped. Correct the depth, or drill the hole " +
			"deeper.",
	},
	"well/shoe-too-shallow": {
		severity: "error",
		title: "A shoe lies above what is attached to its string",
		explain:
			"The cement column, the centralizers and the stages of a string all reach below its shoe. It would be strange if all of " +
			"them were wrong, so the shoe probably is: often a digit is missing. Correct it; if it is right, correct the places that " +
			"the message names.",
	},
	"well/tieback-join": {
		severity: "error",
		title: "A tieback does not end in the liner it joins",
		explain:
			"A tieback runs from the hanger down to a liner and seals in the liner's top. It is listed after that liner, and its " +
			"lowest pipe ends at the liner's top, or within a few feet below. Elsewhere there would be a gap that holds no pressure.",
	},
	"well/stage-tool": {
		severity: "error",
		title: "A stage tool does not fit its string or its cement",
		explain:
			"A stage tool is a part of the string, above the float collar, and cement above it is pumped through it as a second " +
			"stage. So no slurry reaches across it: the first stage ends at the tool or below it, and the second begins at the tool.",
	},
	"well/seal-evidence": {
		severity: "error",
		title: "A bond log, survey, test or squeeze does not fit its string",
		explain:
			"What shows whether cement seals is written stretch by stretch: each runs downward, ends at the shoe of its string or " +
			"above it, and the intervals of a bond log follow one another from the top down. Amplitude in full bond is below the one " +
			"in free pipe, or the index that is worked from the two would stand on its head.",
	},
	"well/sacks-volume": {
		severity: "error",
		title: "Sacks, yield and volume of a slurry do not agree",
		explain:
			"Where both are stated, the sacks times the yield are the volume, within one part in a hundred. If they are not, one of " +
			"the three belongs to another blend or another well, and the job would come out short or over. Correct the one that is " +
			"wrong, or state only one of sacks and volume.",
	},
	"well/neat-slurry": {
		severity: "warning",
		title: "A slurry is not what its class makes when mixed neat",
		explain:
			"Of cement mixed with water alone, class, water, density and yield follow from each other. Here two of the figures are " +
			"those of the class mixed neat and the third is not, so it has probably been mistyped. A slurry that is extended, " +
			"weighted or made up of components is not judged so.",
	},
	"well/no-caliper": {
		severity: "warning",
		title: "Volumes are said to be by caliper, and no caliper is given",
		explain:
			"`volume_basis: caliper` says that the cement volumes rest on a measured hole. Without the log, or the enlargement read " +
			"from it, they rest on the plan, and a reader would trust them more than they deserve. Name the log, record the " +
			"enlargement, or write the basis that is true.",
	},
	"well/tally": {
		severity: "error",
		title: "The tally does not agree with the string",
		explain:
			"A tally lists every joint in the string. Its joints are as many as were run, and their lengths together reach from the " +
			"top of the string to the shoe, within a joint. Otherwise the shoe is not where the papers say, or a row is missing.",
	},
	"well/treating-string": {
		severity: "error",
		title: "A treating string does not fit the well",
		explain:
			"Pipe that the treatment is pumped down passes the drift of the casing it hangs in, and its packer is set in that casing, " +
			"above every opening and above the float collar, at the end of the pipe or above it. Otherwise it cannot be run, or the " +
			"pressure it is to keep from the casing reaches it all the same.",
	},
	"well/stage-above-landing": {
		severity: "warning",
		title: "A stage lies above the lateral",
		explain:
			"By the planned path the hole is still turning where this stage is opened. That may be meant; more often there is a stage " +
			"too many, or its length or bottom is wrong. Check the count, the length and the bottom of the stages.",
	},
} as const satisfies Record<string, CodeEntry>;
