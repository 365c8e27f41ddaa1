import type { Check } from "./check.ts";

export const casingLoadsChecks = {
	"burst-factor": {
		title: "Burst",
		looksAt: "least burst factor of pipe and coupling against the design factor",
		explain:
			"Every load case of the string, with wear and temperature taken off. The design factor stated in the definition governs; where the string has none of its own, that of the design basis.",
	},
	"collapse-factor": {
		title: "Collapse",
		looksAt: "least collapse factor against the design factor",
		explain: "Every load case of the string, with axial tension, wear and temperature taken off the rating.",
	},
	"tension-factor": {
		title: "Tension",
		looksAt: "least tension factor of pipe body and joint against the design factor",
		explain:
			"Running, pulling, pressure testing and service loads. A string held by cement and hanger shares its change of force over the length it hangs free.",
	},
	"triaxial-factor": {
		title: "Triaxial stress",
		looksAt: "least triaxial factor against the design factor",
		explain: "Von Mises stress in the wall, bending by the dogleg included. Buckling is not counted in.",
	},
	overpull: {
		title: "Overpull",
		looksAt: "lesser of pipe and joint over the overpull factor, less the greatest pick-up",
		explain:
			"What may be pulled over the pick-up weight before the weakest part reaches its factor, should the string hang up.",
	},
	reach: {
		title: "Running to bottom",
		looksAt:
			"how deep the shoe goes by the weight of the string, with the greatest friction and with the least",
		explain:
			"Pipe pressed beyond helical buckling coils, and drags the more the harder it is pressed, until it locks up. Rotation, the weight of the traveling block and stiffness before it coils are not counted.",
	},
	"slack-off": {
		title: "Weight left on the hook",
		looksAt: "hook load at bottom, let down with the greatest friction",
		explain:
			"With little weight left on the hook a ledge or a sticky stretch stops the string. The drag of coiled pipe is counted.",
	},
	"casing-test-limit": {
		title: "Pressure test against the string",
		looksAt: "test pressure against internal yield of pipe and coupling",
		explain:
			"A test well inside the rating proves the string without damaging it. The least of pipe and coupling counts.",
	},
	"gas-tightness": {
		title: "Gas behind API connections",
		looksAt: "greatest shut-in gas pressure behind API round or buttress connections",
		explain:
			"API threads seal by their compound. Above a moderate gas pressure a connection tested for gas is preferred.",
	},
	"sour-service": {
		title: "Sour service of pipe",
		looksAt: "grade and connection of each section against hydrogen sulfide at its coldest",
		explain:
			"Sulfide cracks strong steel when it is cool. A section is judged at the temperature of the rock at its top; pipe cooled by pumping is not looked at.",
	},
	"exposure-radius": {
		title: "Radius of exposure",
		looksAt: "public places within the radius of exposure to hydrogen sulfide",
		explain:
			"The rule form of the radius depends on the fraction and on the rate of gas that could escape. It is no safe distance, and knows neither ground nor weather.",
	},
} as const satisfies Readonly<Record<string, Check>>;
