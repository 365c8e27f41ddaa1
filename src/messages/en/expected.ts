import type { Entries } from "../entries.ts";

/** What may be written in a field of the definition. */
export const EXPECTED = {
	"definition/expected.block": [
		"a block of named entries",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.flag": ["true or false", "What is expected instead, for definition/expected."],
	"definition/expected.date": [
		"a date written year-month-day, such as `2026-05-04`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.identifier": [
		"a short name of lower-case letters, digits and hyphens, such as `surface` or `ww-1`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.file": [
		"the name of a file beside this one, such as `{example}`",
		"What is expected instead, for definition/expected. example: a file name.",
	],
	"definition/expected.ratio": [
		"a number, without a unit",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.fraction": [
		"a number above 0, and no more than 1",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.count": [
		"a whole number, 1 or more",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.tally": [
		"a number above 0, without a unit",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.grid": [
		"the EPSG code of a UTM zone or of a state plane zone on NAD83 on which the place lies, as `EPSG:2277`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.coordinate": [
		"decimal degrees between -{limit} and {limit}, without a unit",
		"What is expected instead, for definition/expected. limit: 90 or 180.",
	],
	"definition/expected.east-west": [
		"an angle, east or west, such as `3.9 deg east`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.part-span": [
		"a low and a high share, such as `[10 %, 30 %]`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.cement-log": [
		"`none`, or the log, its date and what it showed",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.column": [
		"the head as it stands in the file, or `'{' head: DEPT, unit: ft '}'`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.own-limit": [
		"a limit in the form of the rule's own, such as `'{' measure: liner lap, at_least: 200 ft '}'`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.friction": [
		"a least and a greatest coefficient, such as `[0.20, 0.30]`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.centralizers": [
		"a number of joints, such as `1 joint` or `4 joints`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.evacuation": [
		"`full`, or `'{' fluid_level: 600 ft TVD, fluid: 8.8 ppg '}'`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.api-number": [
		"an API well number of 10, 12 or 14 digits, such as `42-000-00000-00-00`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.days": [
		"a number of days, or low, base and high, such as `[12, 16, 22]`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.whole": [
		"a whole number, 0 or more",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.gas-alarm": [
		"an alarm: `'{' gas: hydrogen sulfide, low: 10 ppm, high: 15 ppm, source: … '}'`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.north": [
		"one of: grid, true, magnetic",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.plan": [
		"one of the four plans: `vertical` with `to`; `kickoff` to `lateral`; `kickoff` with a `target`; or `segments`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.two-dates": [
		"two dates, such as `[2026-07-02, 2026-07-19]`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.limit": [
		"a limit in the form of a jurisdiction's row, such as `'{' at: surface '}'`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.cas-number": [
		"a CAS number whose check digit closes, such as `7732-18-5`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.flush": [
		"a volume with its unit, such as `700 bbl`, or `to top cluster`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.discharge": [
		"a fresh and a worn coefficient, such as `[0.65, 0.85]`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.annulus": [
		"two short names, such as `[production, intermediate]`",
		"What is expected instead, for definition/expected.",
	],
	"definition/expected.list": ["a list", "What may be written in a field."],
	"definition/expected.text": [
		"text, or '{ en: …, es: … }'",
		"What may be written in a field; what stands in braces is written so.",
	],
	"definition/expected.value": ["a value", "What may be written in a field, where no more is known."],
	"definition/expected.quantity": [
		"a {quantity} with its unit, such as `{example}`",
		"What may be written in a field. quantity: an English noun, such as pressure; example: a value with its unit.",
	],
	"definition/expected.vowel": [
		"an {quantity} with its unit, such as `{example}`",
		"The same, of a noun that begins with a vowel in English.",
	],
	"definition/expected.depth": [
		"a depth, such as {forms}",
		"What may be written in a field. forms: depths as they may be written, in backticks.",
	],
} as const satisfies Entries;
