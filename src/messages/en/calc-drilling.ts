import type { Entries } from "../entries.ts";

/** What the calculation says of the path, places, water, trucks, pressures and safety. */
export const CALC_DRILLING = {
	"calc/survey-uncertainty-this-well-is-not": [
		"The survey uncertainty of this well is not given.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/how-well-place-is-known-is": [
		"The position uncertainty of {entry} is not given.",
		"Why a result is not given, printed as a sentence in the papers. entry: name of a well.",
	],
	"calc/base-protected-water-is-not-given": [
		"The base of protected water is not given.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/no-string-has-both-its-shoe": [
		"No string has both its shoe below the base of protected water and cement across it.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/string-which-has-to-protect-water": [
		"The {must} string has to protect the water, but does not have both its shoe below the base of protected water and cement across it.",
		"Why a result is not given, printed as a sentence in the papers. must: short name of a string.",
	],
	"calc/load-truck-is-not-given": [
		"The load per truck is not given ({field}).",
		"Why a result is not given, printed as a sentence in the papers. field: a field of the definition.",
	],
	"calc/hole-ends-above-shoe-vertically": [
		"The hole ends above the shoe, vertically.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/mud-is-lighter-than-influx-or": [
		"The mud is lighter than the influx, or the hole ends above the shoe.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/rate-gas-that-could-escape-is": [
		"The escape rate of gas is not given.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/no-dwelling-is-listed-whose-distance": [
		"No dwelling with a known distance is listed.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/path-is-not-given-its-distance": [
		"The path of {entry} is not given. Its 3-D distance is not evaluated.",
		"Why a result is not given, printed as a sentence in the papers. entry: name of a well.",
	],
	"calc/path-cannot-be-worked-out-its": [
		"The path of {entry} cannot be calculated. Its 3-D distance is not evaluated.",
		"Why a result is not given, printed as a sentence in the papers. entry: name of a well.",
	],
	"calc/wells-surface-location-is-not-given": [
		"The well's surface location is not given.",
		"Why a result is not given, printed as a sentence in the papers.",
	],
	"calc/coordinates-are-not-given": [
		"The coordinates of {name} are not given.",
		"Why a result is not given, printed as a sentence in the papers. name: a name, as typed.",
	],
	"calc/is-placed-in-and-well-in": [
		"{name} is placed in {datum} and the well in {datum2}; the two do not mix.",
		"Why a result is not given, printed as a sentence in the papers. name: a name, as typed; datum: a geodetic datum; datum2: a geodetic datum.",
	],
	"calc/is-not-given-places-on-map": [
		"{what} is not given. It is needed for coordinates and for distances to the well path.",
		"Why a result is not given, printed as a sentence in the papers. what: a noun.",
	],
	"calc/impossible-plan.what": [
		"no hole can follow these segments: one has no length, or turns straight back on the one before",
		"What is wrong, for calc/impossible-plan.",
	],
	"calc/impossible-plan.expected": [
		"lengths above zero, and less than a half turn in each segment",
		"What is expected instead, for calc/impossible-plan.",
	],
	"calc/impossible-plan.mend": [
		"split the turn over several segments",
		"What to do about it, for calc/impossible-plan.",
	],
	"calc/impossible-plan.no-hole-follows-this-plan": [
		"no hole can follow this plan",
		"What is wrong, for calc/impossible-plan.",
	],
	"calc/impossible-plan.kickoff-below-datum-build-above": [
		"a kickoff below the datum, a build above zero, and a landing inclination between 0 and 180 degrees",
		"What is expected instead, for calc/impossible-plan.",
	],
	"calc/impossible-plan.check-kickoff-build-and-landing": [
		"check the kickoff, the build and the landing inclination",
		"What to do about it, for calc/impossible-plan.",
	],
	"calc/impossible-plan.build-zero-reaches-no-target": [
		"a build rate of zero cannot reach a target with displacement",
		"What is wrong, for calc/impossible-plan.",
	],
	"calc/impossible-plan.build-above-zero": [
		"a build rate above zero",
		"What is expected instead, for calc/impossible-plan.",
	],
	"calc/impossible-plan.state-build-rate": [
		"state the build rate",
		"What to do about it, for calc/impossible-plan.",
	],
	"calc/impossible-plan.target-lies-no-deeper-than": [
		"the target is no deeper than the kickoff, {kickoff}",
		"What is wrong, for calc/impossible-plan. kickoff: a value.",
	],
	"calc/impossible-plan.target-below-kickoff": [
		"a target below the kickoff",
		"What is expected instead, for calc/impossible-plan.",
	],
	"calc/impossible-plan.kick-off-higher": [
		"kick off higher",
		"What to do about it, for calc/impossible-plan.",
	],
	"calc/build-at-or-more": ["build at {ceil} or more", "Part of a sentence. ceil: a value."],
	"calc/kick-off-at-or-higher": ["kick off at {highest} or higher", "Part of a sentence. highest: a value."],
	"calc/impossible-plan.arc-from-cannot-reach-target": [
		"an arc of {build} from {kickoff} cannot reach the target before it is level",
		"What is wrong, for calc/impossible-plan. build: a value; kickoff: a value.",
	],
	"calc/impossible-plan.target-outside-arc-reached-at": [
		"a target that the arc can reach at 90 degrees or less",
		"What is expected instead, for calc/impossible-plan.",
	],
	"calc/impossible-plan.found": [
		"{message}, {x} away",
		"What was found, for calc/impossible-plan. message: a depth; x: a value.",
	],
	"calc/surveyed-stations.what": [
		"the survey is referenced to {north} north, and the north reference of the plan is not given",
		"What is wrong, for calc/surveyed-stations. north: true, grid or magnetic.",
	],
	"calc/surveyed-stations.expected": [
		"the north reference of the well's azimuths",
		"What is expected instead, for calc/surveyed-stations.",
	],
	"calc/surveyed-stations.mend": [
		"state `reference` under site, north",
		"What to do about it, for calc/surveyed-stations.",
	],
	"calc/surveyed-stations.survey-counts-from-north-and": [
		"the survey is referenced to {north} north and the well to {own} north",
		"What is wrong, for calc/surveyed-stations. north: true, grid or magnetic; own: true, grid or magnetic.",
	],
	"calc/surveyed-stations.to-turn-one-to-other": [
		"the {wanting}, to convert one to the other",
		"What is expected instead, for calc/surveyed-stations. wanting: what is not given.",
	],
	"calc/surveyed-stations.state-under-site-north": [
		"state {wanting} under site, north",
		"What to do about it, for calc/surveyed-stations. wanting: what is not given.",
	],
	"calc/survey-start.what": [
		"the survey begins at {md}, where the hole is already inclined {inclination}",
		"What is wrong, for calc/survey-start. md: a value; inclination: a value.",
	],
	"calc/survey-start.expected": [
		"stations from the datum down, including the hole above a sidetrack",
		"What is expected instead, for calc/survey-start.",
	],
	"calc/survey-start.found": [
		"a first station at {md}",
		"What was found, for calc/survey-start. md: a value.",
	],
	"calc/survey-start.why": [
		"the hole above is assumed to be one arc from vertical at the datum, so every position below is only as good as that",
		"Why it matters, for calc/survey-start.",
	],
	"calc/survey-start.mend": [
		"add the stations above it; for a sidetrack, those of the parent hole",
		"What to do about it, for calc/survey-start.",
	],
	"calc/unusable-survey.what": [
		"survey station {i} is no deeper than the one before it",
		"What is wrong, for calc/unusable-survey. i: number of a station.",
	],
	"calc/unusable-survey.expected": [
		"a measured depth below {md}",
		"What is expected instead, for calc/unusable-survey. md: a value.",
	],
	"calc/unusable-survey.mend": [
		"put the stations in order of depth, each once",
		"What to do about it, for calc/unusable-survey.",
	],
	"calc/unusable-survey.hole-turns-right-back-on": [
		"the hole turns straight back on itself at survey station {i}",
		"What is wrong, for calc/unusable-survey. i: number of a station.",
	],
	"calc/unusable-survey.less-than-half-turn-between": [
		"less than a half turn between stations",
		"What is expected instead, for calc/unusable-survey.",
	],
	"calc/unusable-survey.found": [
		"{inclination}° at {azimuth}°, then {inclination2}° at {azimuth2}°",
		"What was found, for calc/unusable-survey. inclination: a value; azimuth: a value; inclination2: a value; azimuth2: a value.",
	],
	"calc/unusable-survey.correct-inclination-or-azimuth-station": [
		"correct the inclination or the azimuth of the station",
		"What to do about it, for calc/unusable-survey.",
	],
	"calc/told.expected": ["a hole that stays below the datum", "What is expected instead, for calc/told."],
	"calc/told.found": [
		"{tvd} above the datum at {md} along the hole",
		"What was found, for calc/told. tvd: a value; md: a value.",
	],
	"calc/told.why": [
		"the hole climbs where the inclination is above 90 degrees",
		"Why it matters, for calc/told.",
	],
	"calc/impossible-plan.planned-path-comes-out-ground": [
		"the planned path comes out of the ground",
		"What is wrong, for calc/impossible-plan.",
	],
	"calc/impossible-plan.correct-its-angles-or-its": [
		"correct its angles or its lengths",
		"What to do about it, for calc/impossible-plan.",
	],
	"calc/unusable-survey.hole-comes-out-ground-by": [
		"the hole is out of the ground at survey station {i}",
		"What is wrong, for calc/unusable-survey. i: number of a station.",
	],
	"calc/unusable-survey.correct-inclination-this-station-or": [
		"correct the inclination of this station or of those before it",
		"What to do about it, for calc/unusable-survey.",
	],
	"calc/past-the-path.what": [
		"the hole continues {to} past the end of {ofWord}",
		"What is wrong, for calc/past-the-path. to: a value; ofWord: the survey or the plan.",
	],
	"calc/past-the-path.expected": [
		"{ofWord} to the bottom of the hole",
		"What is expected instead, for calc/past-the-path. ofWord: the survey or the plan.",
	],
	"calc/past-the-path.found": [
		"last station at {reached}, hole to {to}",
		"What was found, for calc/past-the-path. reached: a value; to: a value.",
	],
	"calc/past-the-path.why": [
		"below the last station the hole is assumed to continue straight, so depths there are only as good as that",
		"Why it matters, for calc/past-the-path.",
	],
	"calc/past-the-path.mend": [
		"carry {ofWord} to the bottom of the hole",
		"What to do about it, for calc/past-the-path. ofWord: the survey or the plan.",
	],
	"calc/outside-validity.no-number-comes-out-for": [
		"no result: {name}",
		"What is wrong, for calc/outside-validity. name: a name, as typed.",
	],
	"calc/outside-validity.values-that-formula-has-result": [
		"inputs within the range of the formula",
		"What is expected instead, for calc/outside-validity.",
	],
	"calc/outside-validity.correct-what-it-is-worked": [
		"correct its inputs",
		"What to do about it, for calc/outside-validity.",
	],
	"calc/fracture-correlation.what": [
		"the {method} gradient of {name} lacks {missing}",
		"What is wrong, for calc/fracture-correlation. method: name of a method; name: a name, as typed; missing: fields of the definition.",
	],
	"calc/fracture-correlation.inputs-gradient-lie-outside-what": [
		"the inputs of the {method} gradient of {name} are outside the range of the method",
		"What is wrong, for calc/fracture-correlation. method: name of a method; name: a name, as typed.",
	],
	"calc/fracture-correlation.expected": [
		"every input of the method, within its range",
		"What is expected instead, for calc/fracture-correlation.",
	],
	"calc/fracture-correlation.mend": [
		"add what is missing, or state the gradient itself",
		"What to do about it, for calc/fracture-correlation.",
	],
} as const satisfies Entries;
