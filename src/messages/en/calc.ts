import type { Entries } from "../entries.ts";

/** Parts and sentences of the calculation that several places share. */
export const CALC = {
	"calc/the-survey": ["the survey", "The directional survey, inside a sentence."],
	"calc/the-plan": ["the plan", "The planned path, inside a sentence."],
	"calc/north.of-azimuths": ["the north reference of azimuths", "An input that is not given."],
	"calc/north.convergence": [
		"grid convergence",
		"An input that is not given: angle from true north to grid north.",
	],
	"calc/north.declination": [
		"magnetic declination",
		"An input that is not given: angle from true north to magnetic north.",
	],
	"calc/rating.internal-yield": ["internal yield", "A rating of pipe, after “the”."],
	"calc/rating.collapse": ["collapse", "A rating of pipe, after “the”."],
	"calc/rating.body-yield": ["body yield", "A rating of pipe, after “the”."],
	"calc/the-mud": ["the mud", "A fluid whose viscosity is not given."],
	"calc/the-fluid": ["the {id}", "A fluid whose viscosity is not given. id: spacer or displacement."],
	"calc/the-slurry": ["the {id} slurry", "A fluid whose viscosity is not given. id: role of a slurry."],
	"calc/needed.net": ["the net pressure", "An input that the treating pressure needs."],
	"calc/needed.roughness": ["the pipe's roughness", "An input that the treating pressure needs."],
	"calc/needed.discharge": ["the discharge coefficients", "An input that the treating pressure needs."],
	"calc/needed.viscosity": ["the base fluid's viscosity", "An input that the treating pressure needs."],
	"calc/needed.rheology": [
		"the plastic viscosity or yield point of {stiff} in the cement job of the {string} string",
		"What a check lacks. stiff: a list of fluids with their articles; string: a string's short name, as typed.",
	],
	"calc/needed.base": ["the base of the {formation}", "An input that the fracture models need."],
	"calc/needed.stiffness": [
		"the Young's modulus of the {formation}",
		"An input that the fracture models need.",
	],
	"calc/needed.poisson": [
		"the Poisson's ratio of the {formation}",
		"An input that the fracture models need.",
	],
	"calc/needed.leakoff": ["the leakoff of the {formation}", "An input that the fracture models need."],
	"calc/needed.closure": [
		"the treated formation's closure gradient",
		"An input that the treating pressure needs.",
	],
	"calc/needed.shots": ["the shots of each cluster", "An input that the treating pressure needs."],
	"calc/needed.shot": ["the shot diameter", "An input that the treating pressure needs."],
	"calc/needed.rate": ["the rate", "An input that the treating pressure needs."],
	"calc/symbol-and-value": [
		"{symbol} {value}",
		"An input of a formula. symbol: as the formula writes it; value: a quantity.",
	],
	"calc/norths-for-survey-error": [
		"the survey tool's error model needs the north reference, the convergence and the declination",
		"Sentence without capital or full stop: why a result could not be had (survey error).",
	],
} as const satisfies Entries;
