import type { Entries } from "../entries.ts";

/** Faults in what is written of holes, the path, formations and water. */
export const WELL_HOLE = {
	"well/beyond-total-depth.what": [
		"a true vertical depth greater than the length of the well",
		"What is wrong, for well/beyond-total-depth.",
	],
	"well/beyond-total-depth.depth-below-bottom-deepest-hole": [
		"a depth below the bottom of the deepest hole",
		"What is wrong, for well/beyond-total-depth.",
	],
	"well/beyond-total-depth.expected": [
		"at most {bottom}",
		"What is expected instead, for well/beyond-total-depth. bottom: a depth.",
	],
	"well/beyond-total-depth.mend": [
		"correct the depth or its unit, or the depth that the hole is drilled to",
		"What to do about it, for well/beyond-total-depth.",
	],
	"well/beyond-total-depth.label": [
		"bottom of the deepest hole",
		"What a related place is, for well/beyond-total-depth.",
	],
	"well/stage-above-landing.what": [
		"stage {number} is opened above the landing of the planned path",
		"What is wrong, for well/stage-above-landing. number: number of a stage.",
	],
	"well/stage-above-landing.stages-to-are-opened-above": [
		"stages {number} to {number2} are opened above the landing of the planned path",
		"What is wrong, for well/stage-above-landing. number: number of a stage; number2: number of another stage.",
	],
	"well/stage-above-landing.expected": [
		"openings below {landing}, where the path is landed",
		"What is expected instead, for well/stage-above-landing. landing: a depth.",
	],
	"well/stage-above-landing.mend": [
		"use fewer or shorter stages, or correct the bottom of the first; leave it if it is intended",
		"What to do about it, for well/stage-above-landing.",
	],
	"well/stage-above-landing.label": [
		"the planned path",
		"What a related place is, for well/stage-above-landing.",
	],
	"well/formation-order.what": [
		"the top of {each} lies above the top of {written}, which is listed before it",
		"What is wrong, for well/formation-order. each: a name, as typed; written: as typed.",
	],
	"well/formation-order.top-lies-below-top-which": [
		"the top of {each} lies below the top of {written}, which is listed after it",
		"What is wrong, for well/formation-order. each: a name, as typed; written: as typed.",
	],
	"well/formation-order.expected": [
		"formations from the surface down",
		"What is expected instead, for well/formation-order.",
	],
	"well/formation-order.mend": [
		"put the formations in order of depth, or correct the top",
		"What to do about it, for well/formation-order.",
	],
	"well/formation-order.label": ["listed before it", "What a related place is, for well/formation-order."],
	"well/formation-order.listed-after-it": [
		"listed after it",
		"What a related place is, for well/formation-order.",
	],
	"well/top-below-bottom.base-is-not-below-its": [
		"the base of {each} is not below its top",
		"What is wrong, for well/top-below-bottom. each: a name, as typed.",
	],
	"well/top-below-bottom.base-deeper-than-top": [
		"a base deeper than the top",
		"What is expected instead, for well/top-below-bottom.",
	],
	"well/formation-base.what": [
		"the base of {each} lies below the top of the next formation",
		"What is wrong, for well/formation-base. each: a name, as typed.",
	],
	"well/formation-base.expected": [
		"a base at or above the top of the next formation",
		"What is expected instead, for well/formation-base.",
	],
	"well/formation-base.mend": [
		"omit the base if it is the top of the next, or correct it",
		"What to do about it, for well/formation-base.",
	],
	"well/formation-base.label": [
		"top of the next formation",
		"What a related place is, for well/formation-base.",
	],
	"well/caliper.what": [
		"the caliper of the {id} hole has fewer than two rows",
		"What is wrong, for well/caliper. id: short name of a string or a hole, as typed.",
	],
	"well/caliper.caliper-hole-goes-back-up": [
		"the caliper of the {id} hole goes back up at row {back}",
		"What is wrong, for well/caliper. id: short name of a string or a hole, as typed; back: number of a row.",
	],
	"well/caliper.caliper-hole-has-diameter-nothing": [
		"the caliper of the {id} hole has a diameter of zero",
		"What is wrong, for well/caliper. id: short name of a string or a hole, as typed.",
	],
	"well/caliper.expected": [
		"rows from the top down, each deeper than the one before, each with a diameter",
		"What is expected instead, for well/caliper.",
	],
	"well/caliper.mend": [
		"sort the rows, and omit those where the tool was closed",
		"What to do about it, for well/caliper.",
	],
	"well/hole-order.what": [
		"the {each} hole does not go deeper than the {above} hole above it",
		"What is wrong, for well/hole-order. each: a name, as typed; above: short name of the section above.",
	],
	"well/hole-order.expected": [
		"more than {bottomAbove}",
		"What is expected instead, for well/hole-order. bottomAbove: a depth.",
	],
	"well/hole-order.mend": [
		"list the holes from the surface down, or correct the depth",
		"What to do about it, for well/hole-order.",
	],
	"well/hole-order.label": [
		"bottom of the {above} hole",
		"What a related place is, for well/hole-order. above: short name of the section above.",
	],
	"well/hole-diameter.what": [
		"the {each} hole is wider than the {above} hole above it",
		"What is wrong, for well/hole-diameter. each: a name, as typed; above: short name of the section above.",
	],
	"well/hole-diameter.expected": [
		"at most {diameter}",
		"What is expected instead, for well/hole-diameter. diameter: a diameter.",
	],
	"well/hole-diameter.mend": [
		"list the holes from the surface down, or correct the diameter",
		"What to do about it, for well/hole-diameter.",
	],
	"well/hole-diameter.label": [
		"the {above} hole",
		"What a related place is, for well/hole-diameter. above: short name of the section above.",
	],
	"well/no-path.what": ["the path of the hole is not given", "What is wrong, for well/no-path."],
	"well/no-path.expected": ["a `plan`, or an `actual` survey", "What is expected instead, for well/no-path."],
	"well/no-path.mend": [
		"add a plan; for a straight hole, `plan: '{' vertical: true, to: … '}'`",
		"What to do about it, for well/no-path.",
	],
	"well/path-short.what": [
		"the planned path ends at {end}, above the bottom of the deepest hole",
		"What is wrong, for well/path-short. end: a depth.",
	],
	"well/path-short.expected": [
		"a path to {totalDepth} or beyond",
		"What is expected instead, for well/path-short. totalDepth: a depth.",
	],
	"well/path-short.mend": [
		"lengthen the path, or correct the depth that the hole is drilled to",
		"What to do about it, for well/path-short.",
	],
	"well/beyond-total-depth.survey-goes-below-bottom-deepest": [
		"the survey goes below the bottom of the deepest hole",
		"What is wrong, for well/beyond-total-depth.",
	],
	"well/beyond-total-depth.at-most": [
		"at most {totalDepth}",
		"What is expected instead, for well/beyond-total-depth. totalDepth: a depth.",
	],
	"well/beyond-total-depth.correct-depth-station-or-depth": [
		"correct the depth of the station, or the depth that the hole is drilled to",
		"What to do about it, for well/beyond-total-depth.",
	],
	"well/survey-angle.what": [
		"the inclination is not between 0 and 180 degrees",
		"What is wrong, for well/survey-angle.",
	],
	"well/survey-angle.expected": [
		"0 straight down, 90 level",
		"What is expected instead, for well/survey-angle.",
	],
	"well/survey-angle.mend": [
		"correct the inclination, or swap the columns if they are mixed up",
		"What to do about it, for well/survey-angle.",
	],
	"well/survey-angle.azimuth-is-not-between-0": [
		"the azimuth is not between 0 and 360 degrees",
		"What is wrong, for well/survey-angle.",
	],
	"well/survey-angle.degrees-clockwise-from-north": [
		"degrees clockwise from north",
		"What is expected instead, for well/survey-angle.",
	],
	"well/survey-angle.correct-azimuth": ["correct the azimuth", "What to do about it, for well/survey-angle."],
	"well/survey-order.what": [
		"the station is not deeper than the one before it",
		"What is wrong, for well/survey-order.",
	],
	"well/survey-order.expected": [
		"more than {md}",
		"What is expected instead, for well/survey-order. md: a depth.",
	],
	"well/survey-order.mend": [
		"put the stations in order of depth, or correct the depth",
		"What to do about it, for well/survey-order.",
	],
	"well/target-above-water.what": [
		"the base of protected water is below the top of {target}, which is to be treated",
		"What is wrong, for well/target-above-water. target: name of a formation.",
	],
	"well/target-above-water.expected": [
		"a depth above {top} TVD",
		"What is expected instead, for well/target-above-water. top: a depth.",
	],
	"well/target-above-water.mend": [
		"correct the depth and its unit, or the top of the target; leave it if shallower rock is treated",
		"What to do about it, for well/target-above-water.",
	],
	"well/target-above-water.label": [
		"top of {target}",
		"What a related place is, for well/target-above-water. target: name of a formation.",
	],
	"well/water-below-well.what": [
		"the base of protected water is below the bottom of the well",
		"What is wrong, for well/water-below-well.",
	],
	"well/water-below-well.expected": [
		"a depth above {bottom}",
		"What is expected instead, for well/water-below-well. bottom: a depth.",
	],
	"well/water-below-well.mend": [
		"correct the depth and its unit",
		"What to do about it, for well/water-below-well.",
	],
} as const satisfies Entries;
