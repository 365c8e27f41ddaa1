import type { CodeEntry } from "../codes.ts";

/** Faults of a definition that reads well, and of which two parts do not agree. */
export const WELL_CODES = {
	"well/unknown-reference": {
		severity: "error",
		title: "A name refers to nothing",
		explain:
			"Strings name their hole, the stimulation its string, treatment steps their proppant. A name that is not defined " +
			"joins nothing, and what depends on it cannot be calculated. Spell it as where it is defined.",
	},
	"well/collars-too-wide": {
		severity: "error",
		title: "Drill collars are wider than the hole",
		explain:
			"The drill string drills the last hole, so its collars are narrower than that hole. With wider ones the annulus " +
			"beside them has no volume, and the height of a kick cannot be worked. A diameter has usually a wrong digit.",
	},
	"well/top-below-bottom": {
		severity: "error",
		title: "An interval is upside down",
		explain:
			"The top of an interval lies at or below its bottom. The two depths have usually been exchanged, or one has a " +
			"digit too few.",
	},
	"well/record-after-issue": {
		severity: "error",
		title: "A record is dated after the paper that reports it",
		explain:
			"What stands under `actual` is a record of work done, and papers show it as such, above the plan. A record cannot " +
			"be younger than the paper. Either it is still a plan and does not belong under `actual`, or the date of issue was " +
			"not moved when the record came in.",
	},
	"well/hole-order": {
		severity: "error",
		title: "A hole section does not go deeper than the one above it",
		explain:
			"Hole sections are listed from the surface down, each ending below the one before. Order them so.",
	},
	"well/hole-diameter": {
		severity: "error",
		title: "A hole section is wider than the one above it",
		explain:
			"Each hole is drilled through the one above and is no wider. A wider one has usually been listed out of order, or " +
			"its diameter mistyped.",
	},
	"well/bit-drift": {
		severity: "warning",
		title: "The bit is wider than the drift of a string it passes",
		explain:
			"Drift is the diameter that is sure to pass; a bit above it may stick. Order the pipe drifted to the larger " +
			"diameter and state it with `drift`, choose a smaller bit, or open the hole with an under-reamer.",
	},
	"well/shoe-below-hole": {
		severity: "error",
		title: "A shoe is deeper than its hole",
		explain:
			"Pipe cannot be set below the bottom of the hole it is run in. The shoe is usually a few feet off bottom. Check " +
			"both depths, and that both are measured depths from the same datum.",
	},
	"well/shoe-above-hole": {
		severity: "error",
		title: "A string does not reach into its hole",
		explain:
			"The shoe lies above the top of the hole section that the string names, so the string stands in another section. " +
			"Name that one, or mend the depth.",
	},
	"well/strings-nest": {
		severity: "error",
		title: "A string does not nest in the one before it",
		explain:
			"Strings are listed from the outermost inward; each is narrower and ends deeper than the one before, and a liner " +
			"hangs inside it. Everything that counts barriers goes by this order.",
	},
	"well/liner-top": {
		severity: "error",
		title: "A liner does not hang inside the string before it",
		explain:
			"The top of a liner lies in the string it hangs in, above that string's shoe. Without a lap there is open hole " +
			"between the two.",
	},
	"well/pipe-gap": {
		severity: "error",
		title: "There is a gap between two runs of pipe",
		explain:
			"The runs of a tapered string join: each begins where the one above it ends. Mend one of the two depths.",
	},
	"well/pipe-overlap": {
		severity: "error",
		title: "Two runs of pipe overlap",
		explain:
			"The runs of a tapered string join: each begins where the one above it ends. Mend one of the two depths.",
	},
	"well/pipe-passage": {
		severity: "error",
		title: "Pipe does not pass the string it is run through",
		explain:
			"The pipe or its coupling is wider than the drift of a string outside it. Drift, not inside diameter, is what is " +
			"sure to pass. Where the catalogue knows an alternate drift that would do, the message names it: the pipe must " +
			"then be ordered and drifted to it, and the definition must say so.",
	},
	"well/pipe-hole": {
		severity: "error",
		title: "Pipe does not fit its hole",
		explain:
			"The pipe or its coupling is as wide as the hole or wider. It cannot be run, and no cement could pass it.",
	},
	"well/unknown-pipe": {
		severity: "error",
		title: "The pipe is not in the catalogue",
		explain:
			"The catalogue has no casing of this diameter and weight, so wall, drift and ratings are not known. Correct the " +
			"size or weight; for pipe that is really outside the catalogue, state its weight and wall, and its ratings.",
	},
	"well/pipe-wall": {
		severity: "error",
		title: "Weight and wall name different pipe",
		explain:
			"The catalogue's wall for this diameter and weight is another than the one stated. One of the two is wrong. State " +
			"only one of them, or mend it.",
	},
	"well/unknown-grade": {
		severity: "error",
		title: "The grade is not in the catalogue",
		explain:
			"Strength follows from the grade. For a maker's own grade state `minimum_yield`, and `minimum_tensile` if it is " +
			"known.",
	},
	"well/grade-not-listed": {
		severity: "warning",
		title: "The standard does not list this weight in this grade",
		explain:
			"The pipe may exist, but it is not a catalogue item; often weight or grade is mistyped. Confirm with the mill " +
			"certificate.",
	},
	"well/connection-size": {
		severity: "error",
		title: "This thread is not cut on this size",
		explain:
			"The standard has no long thread above 9 5/8 in, except on 20 in. Name the connection that the pipe has.",
	},
	"well/connection-unrated": {
		severity: "warning",
		title: "A connection outside the standard has no ratings",
		explain:
			"The strength of a maker's own connection is not published in the standard. Without stated ratings whatever " +
			"depends on it is reported as cannot tell. State them from the maker's data sheet under `ratings`.",
	},
	"well/slurry-gap": {
		severity: "error",
		title: "There is a gap in the cement column",
		explain:
			"Slurries of one job fill a column without gaps: each begins where the one below it ends. " +
			"Pipe in a gap stands in mud, and what lies behind it is not sealed. Correct the tops and bottoms.",
	},
	"well/slurry-overlap": {
		severity: "error",
		title: "Two slurries overlap",
		explain:
			"Slurries of one job fill a column once: each begins where the one below it ends. " +
			"Where two claim the same stretch, its volume would be counted twice. Correct the tops and bottoms.",
	},
	"well/slurry-bottom": {
		severity: "error",
		title: "The cement column does not begin at the shoe",
		explain:
			"A primary cement job fills the annulus from the shoe up. The bottom of the deepest slurry is the depth of the shoe.",
	},
	"well/slurry-top": {
		severity: "error",
		title: "Cement is planned above the string it is behind",
		explain:
			"Cement stands between a string and what is around it, so no slurry ends above the string's top, or above ground. " +
			"Correct the top of the slurry or of the string.",
	},
	"well/cement-class": {
		severity: "warning",
		title: "The cement class is not one of the standard's that are known here",
		explain: "Classes A, B, C, G and H are known. The slurry's own figures are used whatever it is called.",
	},
	"well/centralizer-range": {
		severity: "error",
		title: "Centralizers are planned off the string",
		explain:
			"A stretch of centralizers lies on its string, between the string's top and its shoe. " +
			"Centralizers elsewhere would be counted and bought for nothing, or leave a stretch without. Correct the depths.",
	},
	"well/shoe-track": {
		severity: "error",
		title: "The shoe track is longer than the string",
		explain: "The float collar lies in the string, above the shoe. Check the length.",
	},
	"well/formation-order": {
		severity: "error",
		title: "Formations are out of order",
		explain:
			"Formations are listed from the surface down, each with its top at or below the one before. " +
			"Everything read from the ground at a depth, from pore pressure to lithology, goes by this order. Correct the tops or move the lines.",
	},
	"well/formation-base": {
		severity: "error",
		title: "The base of a formation lies below the top of the next",
		explain:
			"Two formations cannot be at one depth. Leave the base out where it is simply the top of the next.",
	},
	"well/water-below-well": {
		severity: "error",
		title: "Protected water reaches below the well",
		explain:
			"The base of protected water is deeper than the well is long, so it cannot be below any shoe. Usually a digit or " +
			"the unit is wrong.",
	},
	"well/target-above-water": {
		severity: "warning",
		title: "The rock to be treated lies above the base of protected water",
		explain:
			"Treated rock lies thousands of feet below protected water in nearly every well. Where its top is above the base of that " +
			"water, a digit or the unit of one of the two has most likely slipped. If it is so, the rules of the place decide; " +
			"the papers say it plainly.",
	},
	"well/no-path": {
		severity: "error",
		title: "There is neither a planned path nor a survey",
		explain:
			"Vertical depths, distances and volumes need the path of the hole. Give a plan, `vertical: true` if it is straight " +
			"down, or a survey.",
	},
	"well/path-short": {
		severity: "error",
		title: "The planned path ends above the bottom of the hole",
		explain:
			"The plan of the path and the deepest hole section disagree on where the well ends. Whatever lies beyond the path " +
			"has no vertical depth.",
	},
	"well/survey-order": {
		severity: "error",
		title: "Survey stations are out of order",
		explain:
			"Stations are listed by measured depth, each deeper than the one before; the first is the tie-in. " +
			"The path is worked from station to station, so their order is the hole. Sort the rows or correct the depth.",
	},
	"well/survey-angle": {
		severity: "error",
		title: "An angle of the path is impossible",
		explain:
			"Inclination lies between 0 and 180 degrees and azimuth between 0 and 360. " +
			"One bad angle bends the whole path below it. Correct the plan or the station, or take out a station that was not measured.",
	},
	"well/stage-row": {
		severity: "error",
		title: "A row of a stage file cannot be used",
		explain:
			"A stage file has the columns stage, bottom, top and clusters, and may have plug, shots_per_cluster, shot_diameter, " +
			"phasing and rate; a record file has stage and any of the records. Units stand in the head of the column, as in " +
			"`bottom_ft`. Cluster depths stand in one cell, parted by blanks. Stages are numbered from 1, the deepest.",
	},
	"well/unknown-stage": {
		severity: "error",
		title: "An override or record is of a stage that does not exist",
		explain: "Stages are numbered from 1, the deepest, without gaps. Mend the number.",
	},
	"well/stage-clusters": {
		severity: "error",
		title: "The clusters do not fit in their stage",
		explain:
			"The bottom cluster lies at the stage's bottom and the others above it at the cluster spacing; the uppermost must " +
			"lie below the next stage's bottom. Fewer clusters, a closer spacing or a longer stage.",
	},
	"well/stage-outside": {
		severity: "error",
		title: "A stage lies outside the string that is treated",
		explain:
			"Stages lie between the top of the treated string and its float collar; below the collar the pipe is full of " +
			"cement. Check bottom, length and count.",
	},
	"well/stage-overlap": {
		severity: "error",
		title: "Two stages overlap",
		explain:
			"Stages follow each other up the hole; each ends at or below the next one's bottom. " +
			"Where two overlap, a plug would stand among open clusters. Correct the bottoms or the length.",
	},
	"well/plug-place": {
		severity: "error",
		title: "A plug is not between its stage and the one below",
		explain:
			"A plug isolates the stage below: it is set below the stage's bottom cluster and above the uppermost cluster of the " +
			"stage below. Stage 1, at the toe, has none.",
	},
	"well/sleeve-balls": {
		severity: "error",
		title: "A ball does not land on its seat, or does not reach it",
		explain:
			"Sliding sleeves are opened from the toe up, each by a ball that lands on its seat. A ball must pass the pipe and every " +
			"seat above its own, so seats and balls grow from the toe up, and it must be larger than its own seat. By how much is " +
			"the maker's matter; the paper prints the bearing and the room that these sizes leave.",
	},
	"well/coupling-near": {
		severity: "warning",
		title: "A plug or a cluster stands at a coupling",
		explain:
			"A plug set in a coupling may not seal, and shots through one may open the joint. The casing tally says where the couplings " +
			"are; each plug and cluster keeps at least the stated clearance from them. Move it a few feet by an override of its stage.",
	},
	"well/toe-depth": {
		severity: "error",
		title: "The toe opening is not at the toe",
		explain:
			"The toe is the first and deepest opening: at or below the bottom of stage 1, and above the float collar. " +
			"An opening elsewhere could not take fluid, or would leave the lowest stage closed. Correct its depth.",
	},
	"well/step-material": {
		severity: "error",
		title: "A treatment step names a proppant without a concentration, or the other way round",
		explain: "Proppant is carried at a concentration. A step has both or neither.",
	},
	"well/improbable-value": {
		severity: "warning",
		title: "A value lies outside the usual range",
		explain:
			"The value may be right. It may also be a slip of a decimal point or of a unit. The range is that of common " +
			"practice, or of the source named; it is not a limit of any rule.",
	},
} as const satisfies Record<string, CodeEntry>;
