import type { Check } from "./check.ts";

export const openHoleChecks = {
	"mud-over-pore": {
		title: "Mud weight against pore pressure",
		looksAt: "mud density of each hole against the highest pore pressure open to it",
		explain:
			"Mud lighter than the rock lets the well flow as soon as the pumps stop. The margin over the highest pore pressure of the open hole has to cover what is lost when pipe is pulled (the trip margin).",
	},
	"rock-over-mud": {
		title: "Mud weight against the weakest rock",
		looksAt: "mud density at rest against the lesser of shoe test and fracture gradients of the open hole",
		explain:
			"Circulating adds to the mud what friction takes, and running pipe adds surge. The margin at rest has to leave room for both.",
	},
	"circulating-density": {
		title: "Circulating density against the weakest rock",
		looksAt:
			"mud with cuttings and annular friction, along the open hole, against shoe test and fracture gradients",
		explain:
			"Friction by the API's recommended practice on hydraulics for Herschel–Bulkley mud where the viscometer readings are stated, else Bingham. Gauge hole, pipe in the middle and not turning, bit at the bottom of the hole. Mud is taken as cold and not compressed; cuttings are as stated.",
	},
	surge: {
		title: "Surge while pipe is run",
		looksAt:
			"mud and the friction that closed pipe drags up at its greatest speed, along the open hole, against shoe test and fracture gradients",
		explain:
			"Steady speed with the clinging constant of Burkhardt's chart, pipe closed at its foot; drill string at its trip speed and casing at its running speed, whichever leaves less. Starting and stopping jerks and gels are not counted.",
	},
	swab: {
		title: "Swab while pipe is pulled",
		looksAt:
			"mud less the friction that the drill string drags up at its trip speed, along the open hole, against pore pressures",
		explain:
			"What is swabbed has to stay within the trip margin, or the rock flows while pipe is pulled. Steady speed, pipe closed at its foot; a balled bit and gels swab more.",
	},
	"kick-tolerance": {
		title: "Kick tolerance",
		looksAt: "largest influx that shoe and open rock hold, against the design kick",
		explain:
			"The kick is one bubble of gas at the highest pore pressure of the open hole plus the kick intensity, held by the weakest of shoe test and rock. Mud above pore pressure raises it; mud below pore pressure lowers it.",
	},
	"preventer-rating": {
		title: "Rating of preventers",
		looksAt: "rated working pressure against what gas may bring to surface",
		explain:
			"Preventers have to hold what the next hole can bring to surface: gas to surface, or what the shoe holds, whichever is the lesser.",
	},
	"preventer-test": {
		title: "Test of preventers",
		looksAt: "high-pressure test against the casing beneath, and the low-pressure test",
		explain:
			"A test without a plug presses on the casing beneath. Stating a test plug cures it. The low-pressure test finds leaks that a high pressure seals.",
	},
} as const satisfies Readonly<Record<string, Check>>;
