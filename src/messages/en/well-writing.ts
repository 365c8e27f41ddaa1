import type { Entries } from "../entries.ts";

/** Names that refer to nothing, places, dates, and values that do not go together. */
export const WELL_WRITING = {
	"well/unknown-reference.what": [
		'there is no {thing} called "{written}"',
		"What is wrong, for well/unknown-reference. thing: a noun without its article; written: as typed.",
	],
	"well/unknown-reference.expected": [
		"a {thing} that is defined",
		"What is expected instead, for well/unknown-reference. thing: a noun without its article.",
	],
	"well/unknown-reference.one": [
		"one of: {names}",
		"What is expected instead, for well/unknown-reference. names: a list.",
	],
	"well/unknown-reference.mend": [
		"define the {thing}, or name one that is defined",
		"What to do about it, for well/unknown-reference. thing: a noun without its article.",
	],
	"well/unknown-reference.write-if-that-is-one": [
		'write "{near}" if that is the one meant',
		"What to do about it, for well/unknown-reference. near: the nearest name, or a distance in degrees.",
	],
	"well/api-state.what": [
		"the API number begins with {written}, which is no state known here",
		"What is wrong, for well/api-state. written: as typed.",
	],
	"well/api-state.api-number-begins-with-code": [
		"the API number begins with {written}, the code of {other}",
		"What is wrong, for well/api-state. written: as typed; other: a value, or a name.",
	],
	"well/api-state.mend": [
		"correct the number, or the jurisdictions",
		"What to do about it, for well/api-state.",
	],
	"well/api-state.label": ["the jurisdictions named", "What a related place is, for well/api-state."],
	"well/coordinates-astray.sign": [
		"write `{lon}`: longitudes west of Greenwich are negative",
		"What to do about it, for well/coordinates-astray. lon: degrees.",
	],
	"well/coordinates-astray.exchanged": [
		"swap latitude and longitude",
		"What to do about it, for well/coordinates-astray.",
	],
	"well/coordinates-astray.correct": [
		"correct the coordinates, or the jurisdictions; leave both if the place is really there",
		"What to do about it, for well/coordinates-astray.",
	],
	"well/coordinates-astray.what": [
		"{called} is outside {states}",
		"What is wrong, for well/coordinates-astray. called: a place with its article, or a name as typed; states: a list of states.",
	],
	"well/coordinates-astray.lies-from-wellhead-too-far": [
		"{called} is {abs} from the wellhead, too far away to matter to the well",
		"What is wrong, for well/coordinates-astray. called: a place with its article, or a name as typed; abs: degrees.",
	],
	"well/coordinates-astray.expected": [
		"within {near} of {own}",
		"What is expected instead, for well/coordinates-astray. near: the nearest name, or a distance in degrees; own: degrees.",
	],
	"well/coordinates-astray.mend": [
		"correct the figure, or delete the place",
		"What to do about it, for well/coordinates-astray.",
	],
	"well/coordinates-astray.label": ["the wellhead", "What a related place is, for well/coordinates-astray."],
	"well/improbable-value.what": [
		"the value is below the usual range",
		"What is wrong, for well/improbable-value.",
	],
	"well/improbable-value.value-is-above-usual-range": [
		"the value is above the usual range",
		"What is wrong, for well/improbable-value.",
	],
	"well/improbable-value.mend": [
		"check the figure and its unit; leave it if it is right",
		"What to do about it, for well/improbable-value.",
	],
	"well/record-after-issue.what": [
		"the record is dated after the day this paper is issued",
		"What is wrong, for well/record-after-issue.",
	],
	"well/record-after-issue.this-is-said-to-be": [
		"this is recorded as done, but dated after the day this paper is issued",
		"What is wrong, for well/record-after-issue.",
	],
	"well/record-after-issue.expected": [
		"a date no later than {issued}",
		"What is expected instead, for well/record-after-issue. issued: a date.",
	],
	"well/record-after-issue.mend": [
		"move the date of issue, or move the block out of `actual` if the work is only planned",
		"What to do about it, for well/record-after-issue.",
	],
	"well/record-after-issue.move-date-issue-or-take": [
		"move the date of issue, or delete the date until the work is done",
		"What to do about it, for well/record-after-issue.",
	],
	"well/record-after-issue.label": ["day of issue", "What a related place is, for well/record-after-issue."],
	"well/record-before-spud.what": [
		"the record is dated before spud",
		"What is wrong, for well/record-before-spud.",
	],
	"well/record-before-spud.expected": [
		"a date no earlier than {spud}",
		"What is expected instead, for well/record-before-spud. spud: a date.",
	],
	"well/record-before-spud.mend": [
		"correct whichever of the two dates is wrong",
		"What to do about it, for well/record-before-spud.",
	],
	"well/record-before-spud.label": ["spud", "What a related place is, for well/record-before-spud."],
	"well/record-before-spud.there-is-record-work-done": [
		"there is a record of work done before the well is spudded",
		"What is wrong, for well/record-before-spud.",
	],
	"well/record-before-spud.no-record-in-hole-before": [
		"no record in the hole before {spud}",
		"What is expected instead, for well/record-before-spud. spud: a date.",
	],
	"well/record-before-spud.take-block-out-actual-if": [
		"move the block out of `actual` if it is the plan, or correct the date of `spud`",
		"What to do about it, for well/record-before-spud.",
	],
	"well/record-before-spud.well-is-begun": ["spud", "What a related place is, for well/record-before-spud."],
	"well/collars-too-wide.what": [
		"the drill collars do not fit the {last} hole",
		"What is wrong, for well/collars-too-wide. last: short name of a drilled section.",
	],
	"well/collars-too-wide.mend": [
		"correct the diameter of the collars or of the hole",
		"What to do about it, for well/collars-too-wide.",
	],
	"well/collars-too-wide.label": ["the hole", "What a related place is, for well/collars-too-wide."],
	"well/section-direction.what": [
		"the well runs backward along its own vertical section",
		"What is wrong, for well/section-direction.",
	],
	"well/section-direction.expected": [
		"within 90 degrees of {along}",
		"What is expected instead, for well/section-direction. along: degrees.",
	],
	"well/section-direction.mend": [
		"one of the two is reversed, often by 180 degrees; correct it",
		"What to do about it, for well/section-direction.",
	],
	"well/section-direction.label": [
		"the azimuth of the vertical section",
		"What a related place is, for well/section-direction.",
	],
	"well/declination-of-place.what": [
		"a compass points east of true north at this longitude",
		"What is wrong, for well/declination-of-place.",
	],
	"well/declination-of-place.compass-points-west-true-north": [
		"a compass points west of true north at this longitude",
		"What is wrong, for well/declination-of-place.",
	],
	"well/declination-of-place.expected": [
		"a declination to the east",
		"What is expected instead, for well/declination-of-place.",
	],
	"well/declination-of-place.declination-to-west": [
		"a declination to the west",
		"What is expected instead, for well/declination-of-place.",
	],
	"well/declination-of-place.mend": [
		"correct the sign, or the coordinates; the line of no declination runs near 90 degrees west",
		"What to do about it, for well/declination-of-place.",
	],
	"well/declination-of-place.label": [
		"the longitude",
		"What a related place is, for well/declination-of-place.",
	],
	"well/unit-of-elevation.what": [
		"the elevation is written in another unit than the height of the datum above it",
		"What is wrong, for well/unit-of-elevation.",
	],
	"well/unit-of-elevation.expected": [
		"{other}, as the height of the datum is written",
		"What is expected instead, for well/unit-of-elevation. other: a value, or a name.",
	],
	"well/unit-of-elevation.mend": [
		"correct the unit, or convert the figure; leave it if both are right",
		"What to do about it, for well/unit-of-elevation.",
	],
	"well/unit-of-elevation.label": [
		"the datum above the ground",
		"What a related place is, for well/unit-of-elevation.",
	],
	"well/strength-of-slurries.what": [
		"a {density} slurry does not reach this strength {after} after placement",
		"What is wrong, for well/strength-of-slurries. density: a density; after: a time.",
	],
	"well/strength-of-slurries.expected": [
		"at most about {most}",
		"What is expected instead, for well/strength-of-slurries. most: a pressure.",
	],
	"well/strength-of-slurries.mend": [
		"check the figure; a digit too many lets a crew drill out of soft cement",
		"What to do about it, for well/strength-of-slurries.",
	],
	"well/strength-of-slurries.label": [
		"its density",
		"What a related place is, for well/strength-of-slurries.",
	],
	"well/rate-per-perforation.what": [
		"the rate through each perforation is {each}",
		"What is wrong, for well/rate-per-perforation. each: a name, as typed.",
	],
	"well/rate-per-perforation.mend": [
		"check the rate, the clusters and the shots; a digit is often lost",
		"What to do about it, for well/rate-per-perforation.",
	],
	"well/rate-per-perforation.label": ["the shots", "What a related place is, for well/rate-per-perforation."],
	"well/table-file.expected": [
		"the name of a file beside the definition or below it",
		"What is expected instead, for well/table-file.",
	],
	"well/table-file.mend": [
		"put the file there, or correct its name",
		"What to do about it, for well/table-file.",
	],
	"well/improbable-value.band": [
		"{low} to {high}: {why}",
		"What is expected instead, for well/improbable-value. low and high: values as the table has them; why: a clause of the table.",
	],
	"well/distance-astray.what": [
		"the distance of {name} from the {from} and its coordinates, {far} from the wellhead, cannot both be right",
		"What is wrong, for well/distance-astray. name: as typed; from: wellhead, pad edge or nearest equipment; far: a distance.",
	],
	"well/distance-astray.expected": [
		"between {least} and {most}",
		"What is expected instead, for well/distance-astray.",
	],
	"well/distance-astray.mend": [
		"correct the distance, or the coordinates of the place",
		"What to do about it, for well/distance-astray.",
	],
	"well/distance-astray.label": ["its coordinates", "What a related place is, for well/distance-astray."],
} as const satisfies Entries;
