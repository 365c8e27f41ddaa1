import type { CodeEntry } from "../codes.ts";

/** Faults that only the calculation can see. */
export const CALC_CODES = {
	"calc/perforations-outside-target": {
		severity: "warning",
		title: "The pipe is opened outside the target",
		explain:
			"A formation is marked as the target, and an opening lies above or below it, where the path reaches it. Openings in " +
			"a confining bed lead the treatment out of the rock that it is meant for, and every separation is counted from " +
			"them. Stages typed from another well, a path that lands wrong, or a formation top with a wrong digit are the usual slips.",
	},
	"calc/impossible-plan": {
		severity: "error",
		title: "No hole can follow the plan",
		explain:
			"The planned path is a list of exact arcs and straights, and these do not join to a hole: the target lies inside the " +
			"arc, above the kickoff, or can only be reached past level. Every depth depends on the path, so nothing is " +
			"calculated. The message says what build or kickoff would fit.",
	},
	"calc/outside-validity": {
		severity: "error",
		title: "A published formula does not hold for what is given",
		explain:
			"Every formula holds within bounds: the rating formulas for pipe with a bore and for yield strengths between 24,000 " +
			"and 180,000 psi, the friction formulas for a wall far smoother than the bore is wide. Outside them a number would have " +
			"no source, so none is given. Correct the values; of a pipe, state the maker's ratings with their source instead.",
	},
	"calc/past-the-path": {
		severity: "warning",
		title: "The hole goes well past the end of its path",
		explain:
			"Below the last station the hole is carried straight on at the last inclination and azimuth. Over a short way to the " +
			"bit that is the usual practice; over hundreds of feet the depths are a guess. Carry the plan or the survey to the " +
			"bottom of the hole.",
	},
	"calc/unusable-survey": {
		severity: "error",
		title: "The survey does not describe a hole",
		explain:
			"Stations must go down the hole, each deeper along it than the one before. Nothing is calculated from a survey out of " +
			"order, because every depth in the papers would be wrong. Put the stations in order, each once.",
	},
} as const satisfies Record<string, CodeEntry>;
