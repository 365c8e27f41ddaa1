import type { Entries } from "../entries.ts";

/** Faults in what is written of stages and their records. */
export const WELL_STAGES = {
	"well/top-below-bottom.what": [
		"the bottom of stage {number} is at or above its top",
		"What is wrong, for well/top-below-bottom. number: number of a stage.",
	],
	"well/top-below-bottom.expected": [
		"deeper than {top}",
		"What is expected instead, for well/top-below-bottom. top: a depth.",
	],
	"well/top-below-bottom.mend": [
		"swap the two depths, or correct one",
		"What to do about it, for well/top-below-bottom.",
	],
	"well/stage-clusters.what": [
		"a cluster of stage {number} lies outside the stage",
		"What is wrong, for well/stage-clusters. number: number of a stage.",
	],
	"well/stage-clusters.expected": [
		"between {top} and {bottom}",
		"What is expected instead, for well/stage-clusters. top: a depth; bottom: a depth.",
	],
	"well/stage-clusters.mend": [
		"correct the depth, or the ends of the stage",
		"What to do about it, for well/stage-clusters.",
	],
	"well/stage-overlap.what": [
		"stage {number} reaches down into stage {number2}",
		"What is wrong, for well/stage-overlap. number: number of a stage; number2: number of another stage.",
	],
	"well/stage-overlap.expected": [
		"a bottom above {stated}",
		"What is expected instead, for well/stage-overlap. stated: a depth.",
	],
	"well/stage-overlap.mend": [
		"move one of the two stages, or correct its depths",
		"What to do about it, for well/stage-overlap.",
	],
	"well/stage-overlap.label": [
		"stage {number} ends here",
		"What a related place is, for well/stage-overlap. number: number of a stage.",
	],
	"well/plug-place.what": [
		"stage {number} is the deepest and has a plug below it",
		"What is wrong, for well/plug-place. number: number of a stage.",
	],
	"well/plug-place.plug-stage-is-not-between": [
		"the plug of stage {number} is not between its bottom cluster and stage {number2}",
		"What is wrong, for well/plug-place. number: number of a stage; number2: number of another stage.",
	],
	"well/plug-place.expected": [
		"no plug below the first stage",
		"What is expected instead, for well/plug-place.",
	],
	"well/plug-place.between-and": [
		"between {lowest} and {topBelow}",
		"What is expected instead, for well/plug-place. lowest: a depth; topBelow: a depth.",
	],
	"well/plug-place.mend": ["remove the plug", "What to do about it, for well/plug-place."],
	"well/plug-place.set-it-between-two-stages": [
		"set it between the two stages",
		"What to do about it, for well/plug-place.",
	],
	"well/stage-outside.shoe": [
		"shoe of the {treated} string",
		"What a related place is, for well/stage-outside. treated: short name of the string that is treated through.",
	],
	"well/stage-outside.what": [
		"stage {number} reaches below the float collar of the {treated} string",
		"What is wrong, for well/stage-outside. number: number of a stage; treated: short name of the string that is treated through.",
	],
	"well/stage-outside.expected": [
		"at most {collar}",
		"What is expected instead, for well/stage-outside. collar: a depth.",
	],
	"well/stage-outside.mend": [
		"move the stages up, or correct the shoe track",
		"What to do about it, for well/stage-outside.",
	],
	"well/stage-outside.stage-reaches-above-top-string": [
		"stage {number} reaches above the top of the {treated} string",
		"What is wrong, for well/stage-outside. number: number of a stage; treated: short name of the string that is treated through.",
	],
	"well/stage-outside.at-least": [
		"at least {top}",
		"What is expected instead, for well/stage-outside. top: a depth.",
	],
	"well/stage-outside.fewer-or-shorter-stages-or": [
		"use fewer or shorter stages, or correct the treated string",
		"What to do about it, for well/stage-outside.",
	],
	"well/toe-depth.what": ["the toe opening is not at the toe", "What is wrong, for well/toe-depth."],
	"well/toe-depth.expected": [
		"between the bottom of stage {number} at {bottom} and {floor}",
		"What is expected instead, for well/toe-depth. number: number of a stage; bottom: a depth; floor: a depth.",
	],
	"well/toe-depth.mend": [
		"correct the depth of the toe, or the bottom of the first stage",
		"What to do about it, for well/toe-depth.",
	],
	"well/toe-depth.label": [
		"bottom of stage {number}",
		"What a related place is, for well/toe-depth. number: number of a stage.",
	],
	"well/unknown-stage.what": [
		"a sleeve is assigned to stage {stage}, which does not exist",
		"What is wrong, for well/unknown-stage. stage: number of a stage.",
	],
	"well/unknown-stage.expected": [
		"a stage from 1 to {count}",
		"What is expected instead, for well/unknown-stage. count: how many.",
	],
	"well/unknown-stage.mend": [
		"correct the number, or the count of stages",
		"What to do about it, for well/unknown-stage.",
	],
	"well/sleeve-balls.what": [
		"the seat of stage {stage} is no larger than the seat of stage {stage2} below it",
		"What is wrong, for well/sleeve-balls. stage: number of a stage; stage2: number of another stage.",
	],
	"well/sleeve-balls.expected": [
		"more than {seat}",
		"What is expected instead, for well/sleeve-balls. seat: a diameter.",
	],
	"well/sleeve-balls.mend": [
		"make the seats larger from the toe up",
		"What to do about it, for well/sleeve-balls.",
	],
	"well/sleeve-balls.label": [
		"seat of stage {stage}",
		"What a related place is, for well/sleeve-balls. stage: number of a stage.",
	],
	"well/sleeve-balls.ball-stage-does-not-land": [
		"the ball of stage {stage} does not land on its seat",
		"What is wrong, for well/sleeve-balls. stage: number of a stage.",
	],
	"well/sleeve-balls.choose-larger-ball-or-smaller": [
		"choose a larger ball, or a smaller seat",
		"What to do about it, for well/sleeve-balls.",
	],
	"well/sleeve-balls.its-seat": ["its seat", "What a related place is, for well/sleeve-balls."],
	"well/sleeve-balls.ball-stage-does-not-pass": [
		"the ball of stage {stage} does not pass the seat of stage {stage2} above it",
		"What is wrong, for well/sleeve-balls. stage: number of a stage; stage2: number of another stage.",
	],
	"well/sleeve-balls.less-than": [
		"less than {seat}",
		"What is expected instead, for well/sleeve-balls. seat: a diameter.",
	],
	"well/sleeve-balls.choose-smaller-ball-or-larger": [
		"choose a smaller ball, or larger seats above",
		"What to do about it, for well/sleeve-balls.",
	],
	"well/sleeve-balls.ball-stage-does-not-pass-2": [
		"the ball of stage {stage} does not pass the drift of the pipe it is pumped down",
		"What is wrong, for well/sleeve-balls. stage: number of a stage.",
	],
	"well/sleeve-balls.less-than-2": [
		"less than {drift}",
		"What is expected instead, for well/sleeve-balls. drift: a diameter.",
	],
	"well/sleeve-balls.choose-smaller-ball-and-seat": [
		"choose a smaller ball and seat, or larger pipe",
		"What to do about it, for well/sleeve-balls.",
	],
	"well/stage-outside.stages-do-not-fit-above": [
		"{count} stages of {length} do not fit above {bottom}",
		"What is wrong, for well/stage-outside. count: how many; length: a length; bottom: a depth.",
	],
	"well/stage-outside.at-most-them": [
		"at most {max} of them",
		"What is expected instead, for well/stage-outside. max: how many.",
	],
	"well/stage-outside.correct-number-stages-their-length": [
		"correct the number of stages, their length or the bottom",
		"What to do about it, for well/stage-outside.",
	],
	"well/stage-outside.label": ["length of a stage", "What a related place is, for well/stage-outside."],
	"well/stage-clusters.clusters-apart-reach-into-next": [
		"{clusters} clusters {spacing} apart reach into the next stage",
		"What is wrong, for well/stage-clusters. clusters: how many; spacing: a length.",
	],
	"well/stage-clusters.clusters-over-less-than": [
		"clusters over less than {length}",
		"What is expected instead, for well/stage-clusters. length: a length.",
	],
	"well/stage-clusters.fewer-clusters-closer-spacing-or": [
		"fewer clusters, a closer spacing, or longer stages",
		"What to do about it, for well/stage-clusters.",
	],
	"well/stage-clusters.label": ["cluster spacing", "What a related place is, for well/stage-clusters."],
	"well/stage-row.what": [
		"the head of the cluster depths does not say their unit",
		"What is wrong, for well/stage-row.",
	],
	"well/stage-row.expected": [
		"`clusters_ft` or `clusters_m`",
		"What is expected instead, for well/stage-row.",
	],
	"well/stage-row.mend": [
		"write the unit into the head of the column, or state it in the definition",
		"What to do about it, for well/stage-row.",
	],
	"well/stage-row.stages-are-not-numbered-from": [
		"stages are not numbered from 1 without a gap or a repetition",
		"What is wrong, for well/stage-row.",
	],
	"well/stage-row.stage-next": [
		"stage {wrong} next",
		"What is expected instead, for well/stage-row. wrong: number of a stage.",
	],
	"well/stage-row.number-stages-from-1-deepest": [
		"number the stages from 1, the deepest, upward",
		"What to do about it, for well/stage-row.",
	],
	"well/stage-row.stage-has-no-clusters": ["the stage has no clusters", "What is wrong, for well/stage-row."],
	"well/stage-row.cluster-depth-is-not-plain": [
		"a cluster depth is not a plain number",
		"What is wrong, for well/stage-row.",
	],
	"well/stage-row.depths-parted-by-blanks-such": [
		"depths separated by spaces, such as `17110 17078 17046`",
		"What is expected instead, for well/stage-row.",
	],
	"well/stage-row.time-runs-backward": [
		"time runs backward in the chart",
		"What is wrong, for well/stage-row.",
	],
	"well/stage-row.time-from-the-first-pump": [
		"time since the first pump, later in each row",
		"What was expected, for well/stage-row.",
	],
	"well/stage-row.sort-by-time": ["sort the rows by time", "What to do about it, for well/stage-row."],
	"well/stage-row.end-unknown": ["`ended_by` is not one of its words", "What is wrong, for well/stage-row."],
	"well/stage-row.write-one-of-the-ends": [
		"write one of the words, and the rest under `problem`",
		"What to do about it, for well/stage-row.",
	],
	"well/stage-row.write-depth-each-cluster": [
		"write the depth of each cluster",
		"What to do about it, for well/stage-row.",
	],
	"well/unknown-stage.there-are-records-stages-that": [
		"there are records of {strange} stages that do not exist",
		"What is wrong, for well/unknown-stage. strange: how many.",
	],
	"well/unknown-stage.stages-from-1-to": [
		"stages from 1 to {count}",
		"What is expected instead, for well/unknown-stage. count: how many.",
	],
	"well/unknown-stage.correct-count-stages-or-numbers": [
		"correct the count of stages, or the numbers of the records",
		"What to do about it, for well/unknown-stage.",
	],
	"well/stage-row.date-such-as-2026-08": [
		"a date such as `2026-08-14`",
		"What is expected instead, for well/stage-row.",
	],
	"well/stage-row.write-it-so": ["write it that way", "What to do about it, for well/stage-row."],
	"well/stage-row.write-dates-so-all-them": [
		"write every date that way",
		"What to do about it, for well/stage-row.",
	],
	"well/stage-row.there-is-second-record-stage": [
		"there is a second record of stage {number}",
		"What is wrong, for well/stage-row. number: number of a stage.",
	],
	"well/stage-row.one-record-for-stage": [
		"one record for a stage",
		"What is expected instead, for well/stage-row.",
	],
	"well/stage-row.correct-number-stage-or-take": [
		"correct the stage number, or delete one of the two",
		"What to do about it, for well/stage-row.",
	],
	"well/stage-row.label": ["the first one is here", "What a related place is, for well/stage-row."],
	"well/stage-row.average-pressure-stage-is-above": [
		"the average pressure of stage {number} is above its maximum",
		"What is wrong, for well/stage-row. number: number of a stage.",
	],
	"well/stage-row.at-most": [
		"at most {greatest}",
		"What is expected instead, for well/stage-row. greatest: a pressure.",
	],
	"well/stage-row.correct-whichever-two-is-wrong": [
		"correct the one that is wrong",
		"What to do about it, for well/stage-row.",
	],
	"well/unknown-stage.there-is-no-stage": [
		"there is no stage {number}",
		"What is wrong, for well/unknown-stage. number: number of a stage.",
	],
	"well/step-material.what": [
		"a concentration is given, and no proppant",
		"What is wrong, for well/step-material.",
	],
	"well/step-material.proppant-is-given-and-no": [
		"a proppant is given, and no concentration",
		"What is wrong, for well/step-material.",
	],
	"well/step-material.expected": ["both or neither", "What is expected instead, for well/step-material."],
	"well/step-material.mend": ["name the proppant", "What to do about it, for well/step-material."],
	"well/step-material.state-its-concentration": [
		"state its concentration",
		"What to do about it, for well/step-material.",
	],
	"well/annulus-strings.what": [
		"an annulus between a string and itself",
		"What is wrong, for well/annulus-strings.",
	],
	"well/annulus-strings.outer-string-annulus-is-named": [
		"the outer string of the annulus is named first",
		"What is wrong, for well/annulus-strings.",
	],
	"well/annulus-strings.expected": [
		"two strings, the inner one first",
		"What is expected instead, for well/annulus-strings.",
	],
	"well/annulus-strings.mend": [
		"name the string inside it first",
		"What to do about it, for well/annulus-strings.",
	],
	"well/annulus-strings.write": [
		"write `[{reverse}]`",
		"What to do about it, for well/annulus-strings. reverse: two names in the other order.",
	],
	"well/plug-stage": [
		"the plug of stage {number}",
		"What is wrong, for well/plug-stage. number: number of a stage.",
	],
	"well/cluster-stage": [
		"a cluster of stage {number}",
		"What is wrong, for well/cluster-stage. number: number of a stage.",
	],
	"well/coupling-near.expected": [
		"at least {clearance} from each coupling",
		"What is expected instead, for well/coupling-near. clearance: a length.",
	],
	"well/coupling-near.found": [
		"{depth} beside the coupling at {coupling}",
		"Part of a sentence, for well/coupling-near. depth: a depth; coupling: a depth.",
	],
	"well/coupling-near.mend": [
		"move it by an override of its stage",
		"What to do about it, for well/coupling-near.",
	],
} as const satisfies Entries;
