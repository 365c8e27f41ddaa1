import type { CodeEntry } from "../codes.ts";

/** Faults that only the calculation can see. */
export const CALC_CODES = {
	"calc/annulus-stop": {
		severity: "warning",
		title: "An annulus may pass its stop value without a leak",
		explain:
			"A string under treating pressure swells and presses what is outside it. In a closed annulus full of water that rise is " +
			"worked from the pipe alone, with the outer wall free and with it held by cement and rock; the greater of the two is compared. A stop below it " +
			"ends a sound job, and a crew that learns to pass it will pass a leak. Leave the annulus open through a relief valve set " +
			"below the stop and state it as `relief`, or set the stop higher, no higher than both strings may see.",
	},
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
	"calc/expected-pressure": {
		severity: "warning",
		title: "The job as designed needs more pressure than a limit allows",
		explain:
			"The expected treating pressure is the greatest of any stage, worked from closure, net pressure, the fluid column and " +
			"friction. It must lie below every pump kickout, the relief valve, the maximum and what each element is allowed, or the " +
			"pumps stop before the design rate is reached. The figure moves with roughness and friction reduction: look at its " +
			"sensitivity before trusting the margin.",
	},
	"calc/line-test": {
		severity: "warning",
		title: "The line is tested to less than it is to see",
		explain:
			"Before pumping, the treating line is tested with nobody near it, at no less than the maximum treating pressure. A test " +
			"below that proves nothing for the pressures that may follow.",
	},
	"calc/pressure-boundary": {
		severity: "warning",
		title: "A pressure limit passes what an element of the pressure boundary is allowed",
		explain:
			"Each element that sees treating pressure is allowed its rating times a factor; the casing's is the weakest pipe or " +
			"connection, and the casing test's the pressure it was tested to. Kickouts, the relief valve and the maximum must all lie " +
			"at or below the least of these. Every pair that stands the wrong way round is named in the papers.",
	},
	"calc/pressure-ladder": {
		severity: "warning",
		title: "Pressure limits are out of order",
		explain:
			"From the lowest up: expected pressure, pump kickouts, relief valve, maximum treating pressure. If a kickout stands at or " +
			"above the relief valve, the valve opens with the pumps still running; if the relief stands above the maximum, nothing " +
			"holds the maximum. Set each below the next.",
	},
	"calc/toe-valve": {
		severity: "warning",
		title: "The initiation valve cannot be opened as planned, or opens too soon",
		explain:
			"An initiation valve gives the first way into the rock, since guns cannot be pumped down before fluid can go anywhere. Its " +
			"opening pressure, at the surface, must lie above the pressure that the casing is tested to, or the test opens it, and no " +
			"higher than the maximum treating pressure, or nothing can open it. A valve rated at its own depth opens at that pressure less " +
			"the fluid column above it. Valves that open only after the test pressure is bled off are a maker's matter: say so in the summary.",
	},
	"calc/unusable-survey": {
		severity: "error",
		title: "The survey does not describe a hole",
		explain:
			"Stations must go down the hole, each deeper along it than the one before. Nothing is calculated from a survey out of " +
			"order, because every depth in the papers would be wrong. Put the stations in order, each once.",
	},
} as const satisfies Record<string, CodeEntry>;
