import type { Entries } from "../entries.ts";

/** What is said of dates, names and choices of a definition that contradict each other. */
export const DATES = {
	"definition/date.what": [
		"not a date of the calendar, written year-month-day",
		"What is wrong: not a date of the calendar.",
	],
	"definition/date.mend": [
		"write four digits of year, two of month and two of day",
		"What to do about it: not a date of the calendar.",
	],
	"definition/date-implausible.late": [
		"a date more than {latest} years after the day of issue",
		"What is wrong: A date far from the others. latest: a count.",
	],
	"definition/date-implausible.early": ["a date before 1900", "What is wrong: A date far from the others."],
	"definition/date-implausible.up-to": [
		"a date up to {latest}",
		"What is expected instead: A date far from the others. latest: a date.",
	],
	"definition/date-implausible.from": [
		"a date from {earliest} on",
		"What is expected instead: A date far from the others. earliest: a date.",
	],
	"definition/date-implausible.mend": [
		"correct the year; leave it if it is right",
		"What to do about it: A date far from the others.",
	],
	"definition/date-implausible.label": [
		"the day of issue",
		"What a related place is: A date far from the others.",
	],
	"definition/dates.landed": [
		"a string landed on or after the day its hole was drilled",
		"Part of a message, for definition/dates.",
	],
	"definition/dates.cemented": [
		"cement on or after the day the string was landed",
		"Part of a message, for definition/dates.",
	],
	"definition/dates.pressure-test": [
		"a pressure test on or after the day of the cement",
		"Part of a message, for definition/dates.",
	],
	"definition/dates.shoe-test": [
		"a shoe test on or after the day of the cement",
		"Part of a message, for definition/dates.",
	],
	"definition/dates.valid-until": [
		"a last day on or after the day of issue",
		"Part of a message, for definition/dates.",
	],
	"definition/dates.revisions": [
		"revisions in the order they were made",
		"Part of a message, for definition/dates.",
	],
	"definition/dates.issued": [
		"the day of issue on or after that of the last revision",
		"Part of a message, for definition/dates.",
	],
	"definition/dates.phases": ["phases in the order they begin", "Part of a message, for definition/dates."],
	"definition/dates.survey": [
		"the first day of the survey, then the last",
		"Part of a message, for definition/dates.",
	],
	"definition/dates.holes": ["holes drilled one after the other", "Part of a message, for definition/dates."],
	"definition/dates.strings": [
		"strings landed one after the other",
		"Part of a message, for definition/dates.",
	],
	"definition/dates.ended": [
		"an end on or after the start",
		"What is expected instead: the two dates of a phase.",
	],
	"definition/dates-out-of-order.after": [
		"a date after {to}, which it must not follow",
		"What is wrong: dates out of order. to: a date.",
	],
	"definition/dates-out-of-order.before": [
		"a date before {from}, which it must not precede",
		"What is wrong: dates out of order. from: a date.",
	],
	"definition/dates-out-of-order.mend": [
		"correct whichever of the two dates is wrong",
		"What to do about it: dates out of order.",
	],
	"definition/dates-out-of-order.label": ["the other date", "What a related place is: dates out of order."],
	"definition/duplicate-id.what": [
		"a name that another entry of the list already has",
		"What is wrong: two entries have the same name.",
	],
	"definition/duplicate-id.expected": [
		"a name of its own for each entry, because other entries, files and results go by it",
		"What is expected instead: two entries have the same name.",
	],
	"definition/duplicate-id.mend": [
		"rename one of the two",
		"What to do about it: two entries have the same name.",
	],
	"definition/duplicate-id.label": [
		"first used here",
		"What a related place is: two entries have the same name.",
	],
	"definition/emergency-number.expected": [
		"{short} digits, such as `911`, or a telephone number of at least {whole}",
		"What is expected instead: an emergency number that nobody can dial. short and whole: counts of digits.",
	],
	"definition/emergency-number.mend": [
		"write the number that is dialed from the site",
		"What to do about it: an emergency number that nobody can dial.",
	],
	"definition/emergency-number.what": [
		"an emergency number of {count, plural, one {# digit} other {# digits}}",
		"What is wrong. count: of the digits that were written.",
	],
	"definition/low-above-high.what": [
		"a low value above the high one",
		"What is wrong: A range turned round.",
	],
	"definition/low-above-high.expected": [
		"the low value first, then the high one",
		"What is expected instead: A range turned round.",
	],
	"definition/low-above-high.mend": ["put them in order", "What to do about it: A range turned round."],
	"definition/method-and-stages.sleeves": [
		"sleeves are listed, and the method is another",
		"What is wrong: the method and the stages do not go together.",
	],
	"definition/method-and-stages.sleeves-mend": [
		"correct the method, or remove `sleeves`",
		"What to do about it: the method and the stages do not go together.",
	],
	"definition/method-and-stages.sleeves-label": [
		"the sleeves",
		"What a related place is: the method and the stages do not go together.",
	],
	"definition/method-and-stages.what": [
		"the method does not go with `{given}` under `stages`",
		"What is wrong: the method and the stages do not go together. given: name of an entry.",
	],
	"definition/method-and-stages.several": [
		"`plug and perforate` or `sliding sleeve`",
		"What is expected instead: the method and the stages do not go together.",
	],
	"definition/method-and-stages.mend": [
		"correct the method, or describe the stages in the form that goes with it",
		"What to do about it: the method and the stages do not go together.",
	],
	"definition/method-and-stages.label": [
		"the stages as described",
		"What a related place is: the method and the stages do not go together.",
	],
	"definition/one-of-keys.none": [
		"none of {keys} is given",
		"What is wrong: exactly one of several entries is due. keys: names of entries.",
	],
	"definition/one-of-keys.twice": [
		"the same thing is said twice",
		"What is wrong: exactly one of several entries is due.",
	],
	"definition/one-of-keys.expected": [
		"exactly one of: {keys}",
		"What is expected instead: exactly one of several entries is due. keys: names of entries.",
	],
	"definition/one-of-keys.add": [
		"add one of them",
		"What to do about it: exactly one of several entries is due.",
	],
	"definition/one-of-keys.keep": [
		"keep one of them and delete the others",
		"What to do about it: exactly one of several entries is due.",
	],
	"definition/one-of-keys.given": [
		"{given}",
		"What was found: several entries that say the same thing. given: a list of their names.",
	],
	"definition/papers-widened.what": [
		"a paper that this entry is kept out of",
		"What is wrong: an entry shown where it may not be.",
	],
	"definition/papers-widened.expected": [
		"only: {allowed}",
		"What is expected instead: an entry shown where it may not be. allowed: names of papers.",
	],
	"definition/papers-widened.why": [
		"persons and private records stay out of papers they do not belong in",
		"Why it matters: an entry shown where it may not be.",
	],
	"definition/papers-widened.mend": [
		"remove that paper",
		"What to do about it: an entry shown where it may not be.",
	],
	"definition/same-name.what": [
		"another entry of the list has this name already",
		"What is wrong: two entries of a list have the same name.",
	],
	"definition/same-name.expected": [
		"a name of its own, by which readers can tell it from the others",
		"What is expected instead: two entries of a list have the same name.",
	],
	"definition/same-name.mend": [
		"rename one of the two, or delete one if it was copied",
		"What to do about it: two entries of a list have the same name.",
	],
	"definition/same-name.label": [
		"the other one",
		"What a related place is: two entries of a list have the same name.",
	],
	"definition/shares-of-whole.what": [
		"shares that do not add up to the whole",
		"What is wrong: shares that do not add up.",
	],
	"definition/shares-of-whole.mend": [
		"correct the shares, or add the missing source",
		"What to do about it: shares that do not add up.",
	],
	"definition/spud-and-schedule.what": [
		"spud on another day than the drilling phase begins, {begun}",
		"What is wrong: two dates of spud. begun: a date.",
	],
	"definition/spud-and-schedule.expected": [
		"one day for both",
		"What is expected instead: two dates of spud.",
	],
	"definition/spud-and-schedule.mend": [
		"correct one of the two, or delete the start of the phase, which then begins with spud",
		"What to do about it: two dates of spud.",
	],
	"definition/spud-and-schedule.label": [
		"the drilling phase begins",
		"What a related place is: two dates of spud.",
	],
	"definition/dates.spud-within-validity": [
		"an issue is valid at least until spud",
		"Clause: which date comes first.",
	],
	"definition/date-implausible.past": [
		"a spud more than {years} years before the day of issue, of which nothing is on record",
		"Sentence without its full stop. years: a number.",
	],
	"definition/date-implausible.not-before": [
		"{earliest} or later, or the records of what was done",
		"What is expected. earliest: a date.",
	],
} as const satisfies Entries;
