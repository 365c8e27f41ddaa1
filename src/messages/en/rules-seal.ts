import type { Entries } from "../entries.ts";

const WHY = "Sentence: why a limit came out as it did (seal).";
const CLAUSE = "Clause without a full stop: why a limit came out as it did (seal).";
const NOUN = "Noun phrase without its article: what is measured or is missing (seal).";

/** Bond logs, annulus readings, squeezes and seals across protected water, as findings say them. */
export const RULES_SEAL = {
	"rules/longest-bonded-interval": ["longest bonded interval against rock", NOUN],
	"rules/no-bond-log-is-recorded-of": [
		"no bond log of the {string} string is given by interval",
		`${CLAUSE} string: a string's short name, as typed.`,
	],
	"rules/intervals-of-bond-log": ["intervals of the bond log", NOUN],
	"rules/bond-log-shows-bonded-against-rock": [
		"the bond log of {date} shows {part} bonded without a break against rock",
		`${CLAUSE} date: a date; part: a length.`,
	],
	"rules/annulus-pressure-that-came-back": ["annulus pressure that came back after a bleed", NOUN],
	"rules/no-reading-is-recorded-of": [
		"no reading of {name} is recorded",
		`${CLAUSE} name: an annulus with its article.`,
	],
	"rules/pressure-after-the-bleed": [
		"pressure in {name} some time after the bleed",
		`${NOUN} name: an annulus with its article.`,
	],
	"rules/annulus-pressure-came-back-after-bleed": [
		"{part} came back after the annulus was bled",
		`${CLAUSE} part: a pressure.`,
	],
	"rules/annulus-pressure-did-not-come-back": ["no pressure came back after the annulus was bled", CLAUSE],
	"rules/protected-water-without-shown-seal": ["depths of protected water without a seal shown", NOUN],
	"rules/zones-without-a-plug": ["zones without a plug", NOUN],
	"rules/no-plan-of-abandonment-is-given": ["no plan of abandonment is given", CLAUSE],
	"rules/zones-that-no-plug-closes": [
		"zones that no planned plug closes: {part}",
		`${CLAUSE} part: a count.`,
	],
	"rules/no-cement-job-is-recorded-yet": ["no cement job is recorded yet", CLAUSE],
	"rules/depths-of-protected-water-without-seal": [
		"depths of protected water at which no cement is shown by record: {part}",
		`${CLAUSE} part: a count.`,
	],
	"rules/no-squeeze-is-recorded-of": [
		"no squeeze of the {string} string is recorded.",
		`${WHY} string: a string's short name, as typed.`,
	],
	"rules/squeeze-did-not-hold-its-test": [
		"the squeeze of {date} did not hold its test.",
		`${WHY} date: a date.`,
	],
	"rules/test-after-squeeze-of": ["test after the squeeze of {date}", `${NOUN} date: a date.`],
	"rules/squeeze-held-its-test": ["the squeeze of {date} held its test.", `${WHY} date: a date.`],
	"rules/strings.bond-log-recorded": ["bond log recorded", "Which strings a rule picks."],
	"rules/strings.squeeze-recorded": ["squeeze recorded", "Which strings a rule picks."],
	"rules/no-bond-log-is-recorded": ["no bond log is given by interval.", WHY],
	"rules/no-squeeze-is-recorded": ["no squeeze is recorded.", WHY],
} as const satisfies Entries;
