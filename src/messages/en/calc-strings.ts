import type { Entries } from "../entries.ts";

/** What the calculation says of strings. */
export const CALC_STRINGS = {
	"calc/it-is-not-stated-whether-salt": [
		"It is not stated whether the salt of {formation} creeps onto pipe.",
		"Why a result is not given, printed as a sentence in the papers. formation: name of a formation.",
	],
	"calc/rating-under-this-load-lies-outside": [
		"A rating under this load is outside the range of its formula.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/no-packer-is-given-so-leak": [
		"No packer is given, so a tubing leak and a drawdown are not evaluated.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/no-producing-temperature-is-given": [
		"No flowing wellhead temperature is given, so the hot case is not evaluated.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/no-shut-in-pressure-is-known-so-hot": [
		"No shut-in tubing pressure is given or calculated, so the hot case is not evaluated.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/no-rock-temperature-is-given-so-hot": [
		"No formation temperature is given, so the hot case is not evaluated.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/strength-joint-is-not-known": [
		"The strength of a joint is not known.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/hole-is-drilled-with-air-no": [
		"The {id} hole is drilled with air, so there is no mud load on the string.",
		"Why a result is not given, printed as a sentence in the papers. id: a short name.",
	],
	"calc/no-mud-density-is-given-for": [
		"No mud density is given for the {id} hole.",
		"Why a result is not given, printed as a sentence in the papers. id: a short name.",
	],
	"calc/internal-pressure-rating-coupling-is-not": [
		"The internal pressure rating of a coupling is not known.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/outside-validity.what": [
		"no published formula covers the {what} of this pipe",
		"What is wrong, for calc/outside-validity. what: a noun.",
	],
	"calc/outside-validity.expected": [
		"a wall that leaves a bore, and a yield strength of {value} to {value2}",
		"What is expected instead, for calc/outside-validity. value: a value or a count; value2: a value.",
	],
	"calc/outside-validity.found": [
		"{outsideDiameter}, wall {wall}, yield {minimumYield}",
		"What was found, for calc/outside-validity. outsideDiameter: a value; wall: a value; minimumYield: a value.",
	],
	"calc/outside-validity.mend": [
		"correct the pipe, or state its ratings with their source",
		"What to do about it, for calc/outside-validity.",
	],
	"calc/connections-are-not-in-catalogue-and": [
		"{connection} connections are not in the catalogue and no rating is stated for them.",
		"Why a result is not given, printed as a sentence in the papers. connection: as typed.",
	],
	"calc/coupling-is-no-larger-than-its": [
		"The coupling is no larger than its thread.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/plain-end-pipe-is-as-strong": [
		"Plain-end pipe is as strong as its welds, which are not rated here.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/connections-are-not-in-catalogue-and.connections-are-not-in-catalogue": [
		"{connection} connections are not in the catalogue and no tension rating is stated for them.",
		"Why a result is not given, printed as a sentence in the papers. connection: as typed.",
	],
	"calc/joints-dimensions-leave-no-strength": [
		"The joint's dimensions leave no strength.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/whether-hydrogen-sulfide-is-expected-is": [
		"Whether hydrogen sulfide is expected is not given.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/no-formation-is-given-at-shoe": [
		"No formation is given at the shoe.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/no-fracture-gradient-is-given-for": [
		"No fracture gradient is given for {formation}.",
		"Why a result is not given, printed as a sentence in the papers. formation: name of a formation.",
	],
	"calc/no-mud-density-for-shoe-test": [
		"No mud density is given for the shoe test.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/mud-is-heavier-than-shoe-test": [
		"The mud is heavier than the required shoe test.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
} as const satisfies Entries;
