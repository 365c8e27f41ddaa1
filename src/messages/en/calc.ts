import type { Entries } from "../entries.ts";

/** Parts and sentences of the calculation that several places share. */
export const CALC = {
	"calc/load.running": [
		"while it is run and pulled back",
		"Clause that names a load case, after “does not reach its factor of …”.",
	],
	"calc/load.bending": [
		"pulled back while bent in the curve",
		"Clause that names a load case, after “does not reach its factor of …”.",
	],
	"calc/load.shock": [
		"stopped while it is run",
		"Clause that names a load case, after “does not reach its factor of …”.",
	],
	"calc/load.overpull": [
		"stuck and pulled",
		"Clause that names a load case, after “does not reach its factor of …”.",
	],
	"calc/load.cementing": [
		"with wet cement outside",
		"Clause that names a load case, after “does not reach its factor of …”.",
	],
	"calc/load.bumped-plug": [
		"when the plug is bumped",
		"Clause that names a load case, after “does not reach its factor of …”.",
	],
	"calc/load.pressure-test": [
		"in its pressure test",
		"Clause that names a load case, after “does not reach its factor of …”.",
	],
	"calc/load.gas-kick": [
		"with a gas kick shut in",
		"Clause that names a load case, after “does not reach its factor of …”.",
	],
	"calc/load.evacuation": [
		"emptied of fluid",
		"Clause that names a load case, after “does not reach its factor of …”.",
	],
	"calc/load.stimulation": [
		"in the stimulation",
		"Clause that names a load case, after “does not reach its factor of …”.",
	],
	"calc/load.shut-in-gas": [
		"shut in full of gas",
		"Clause that names a load case, after “does not reach its factor of …”.",
	],
	"calc/load.tubing-leak": [
		"with a tubing leak near the surface",
		"Clause that names a load case, after “does not reach its factor of …”.",
	],
	"calc/load.drawdown": [
		"with the rock drawn down",
		"Clause that names a load case, after “does not reach its factor of …”.",
	],
	"calc/load.mobile-salt": [
		"where salt creeps onto it",
		"Clause that names a load case, after “does not reach its factor of …”.",
	],
	"calc/kind.burst": ["burst", "Kind of load on pipe, after “factor of”."],
	"calc/kind.collapse": ["collapse", "Kind of load on pipe, after “factor of”."],
	"calc/kind.tension": ["tension", "Kind of load on pipe, after “factor of”."],
	"calc/kind.triaxial": ["triaxial stress", "Kind of load on pipe, after “factor of”."],
	"calc/factor-not-reached.what": [
		"the {string} string does not reach its factor of {kind} {situation}",
		"What is wrong, for calc/factor-not-reached. string: short name of a string; kind: of load; situation: a clause that names the load case.",
	],
	"calc/factor-not-reached.expected": [
		"a factor of {required} or more",
		"What is expected instead, for calc/factor-not-reached. required: a plain number.",
	],
	"calc/factor-not-reached.found": [
		"{factor} at {depth}, by its {weakness}",
		"What was found, for calc/factor-not-reached. factor: a plain number; depth: a length along the hole; weakness: what fails first, a word of the data.",
	],
	"calc/factor-not-reached.why": [
		"{others, plural, one {# more load case falls} other {# more load cases fall}} short; the results have each",
		"Why it matters, for calc/factor-not-reached. others: how many more load cases.",
	],
	"calc/margin.breaks-down": [
		"as the {fluid} passes, {job} of the {string} string breaks down the {formation} at {depth}, from {from} on and by {by} at worst",
		"What is wrong, for calc/breaks-rock-while-placing. fluid: as typed; job: the cement job or its second stage; string: short name; formation: as typed; depth: along the hole; from: a volume pumped; by: a pressure.",
	],
	"calc/margin.lets-flow": [
		"as the {fluid} passes, {job} of the {string} string lets flow the {formation} at {depth}, from {from} on and by {by} at worst",
		"What is wrong, for calc/flows-while-placing. fluid: as typed; job: the cement job or its second stage; string: short name; formation: as typed; depth: along the hole; from: a volume pumped; by: a pressure.",
	],
	"calc/margin.moving": [
		"{pressure}, moving",
		"What was found, for a margin while cementing: the pressure with friction.",
	],
	"calc/margin.at-rest": [
		"{pressure}, at rest",
		"What was found, for a margin while cementing: the pressure without friction.",
	],
	"calc/the-cement-job": ["the cement job", "What is told of, as the subject of a sentence."],
	"calc/the-second-stage": [
		"the second stage of the cement job",
		"What is told of, as the subject of a sentence.",
	],
	"calc/the-plug": ["the plug", "What is bumped at the end of a cement job."],
	"calc/the-closing-plug": ["the closing plug", "What is bumped at the end of the second stage."],
	"calc/ladder.not-below": [
		"{over} {count, plural, one {is not below} other {are not below}} {upper}",
		"What is wrong, for the ladder of pressures. over: a list of limits with their articles; count: how many; upper: a limit with its article.",
	],
	"calc/ladder.above": [
		"{count, plural, one {{over} is} other {{over} are}} above {upper}",
		"What is wrong, for the ladder of pressures. over: a list of limits with their articles; count: how many; upper: a limit with its article.",
	],
	"calc/ladder.expected-below": [
		"below {pressure}",
		"What is expected instead, for the ladder of pressures.",
	],
	"calc/ladder.expected-at-most": [
		"at most {pressure}",
		"What is expected instead, for the ladder of pressures.",
	],
	"calc/the-survey": ["the survey", "The directional survey, inside a sentence."],
	"calc/the-plan": ["the plan", "The planned path, inside a sentence."],
	"calc/north.of-azimuths": ["the north that azimuths are counted from", "An input that is not given."],
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
} as const satisfies Entries;
