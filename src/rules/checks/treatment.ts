import type { Check } from "./check.ts";

export const treatmentChecks = {
	"pressure-ladder": {
		title: "Order of treating pressures",
		looksAt: "kickouts, relief valve, maximum, ratings and line test",
		explain:
			"Each limit has to act before the next one is reached: kickouts, then the relief valve, then the maximum, below every element times its factor, with the line tested above it.",
	},
	"friction-reduction": {
		title: "Loss of friction reduction",
		looksAt: "expected pressure with half the stated friction reduction against the first kickout",
		explain:
			"Friction reducer is late, weak or used up at times. The expected pressure with half of it shows what then happens.",
	},
	"expected-pressure": {
		title: "Expected treating pressure",
		looksAt: "expected pressure of the highest-pressure stage against the first kickout",
		explain: "A job that needs more than its first kickout trips its pumps on an ordinary day.",
	},
	"toe-opening": {
		title: "Toe valve against casing test and maximum",
		looksAt:
			"surface pressure that opens the initiation valve, against the casing test and the maximum treating pressure",
		explain:
			"A valve that the casing test opens ends the test; one that no allowed pressure opens ends the job.",
	},
	"annulus-rise": {
		title: "Annulus rise against its stop",
		looksAt: "highest pressure of the annulus without a leak, against the pressure at which the job stops",
		explain:
			"A rise that needs no leak must stay below the stop, or the stop cannot tell a leak from the work.",
	},
	"annulus-stop": {
		title: "Annulus stop against allowable pressure",
		looksAt:
			"stop pressure against shares of the casing around, of the next outward and of the collapse of the string inside",
		explain: "A stop above the allowable pressure of an annulus may hurt a string before the job ends.",
	},
	"leak-into-annulus": {
		title: "Leak of the treated string",
		looksAt: "maximum treating pressure, or the relief valve of the annulus, against the casing around it",
		explain:
			"If the treated string leaks, the casing around it sees the pressure. It holds it, or a relief valve lets it out.",
	},
	"wellhead-rating": {
		title: "Wellhead rating",
		looksAt: "rating against the maximum pressure of drilling and of treating",
		explain: "The wellhead holds the greatest pressure of each phase. An isolation tool is not looked at.",
	},
	"confining-bed": {
		title: "Confining bed",
		looksAt: "thickness of the confining bed, and the highest modeled fracture top",
		explain:
			"A bed that resists growth keeps the fracture in the target. The models illustrate and promise nothing.",
	},
	"proppant-concentration": {
		title: "Proppant concentration for the fluid",
		looksAt: "highest proppant concentration of a slickwater step",
		explain: "Thin water carries little proppant; more than it carries settles in the pipe and screens out.",
	},
	"fracture-separation": {
		title: "Protected water to fractures",
		looksAt: "base of protected water to the highest modeled fracture top",
		explain: "Rock between the highest modeled fracture top and protected water, straight down.",
	},
} as const satisfies Readonly<Record<string, Check>>;
