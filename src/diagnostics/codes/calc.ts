import type { CodeEntry } from "../codes.ts";

/** Faults that only the calculation can see. */
export const CALC_CODES = {
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
		title: "A published formula does not hold for this pipe",
		explain:
			"The rating formulas hold for pipe with a bore and for yield strengths between 24,000 and 180,000 psi. Outside that a " +
			"number would have no source, so none is given. Correct the dimensions or the grade, or state the maker's ratings " +
			"with their source.",
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
