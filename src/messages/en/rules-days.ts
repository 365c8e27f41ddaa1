import type { Entries } from "../entries.ts";

/** Events, days and deadlines, as findings say them. */
export const RULES_DAYS = {
	"rules/start-location-work": ["the start of location work", "Noun phrase with its article (events)."],
	"rules/end-drilling": ["the end of drilling", "Noun phrase with its article (events)."],
	"rules/start-stimulation": ["the start of the stimulation", "Noun phrase with its article (events)."],
	"rules/end-stimulation": ["the end of the stimulation", "Noun phrase with its article (events)."],
	"rules/completion-end-flowback": [
		"completion (the end of flowback)",
		"Noun phrase without its article: what is measured or is missing (events).",
	],
	"rules/day-permit-was-issued": [
		"the day the permit was issued",
		"Clause without a full stop: why a limit came out as it did (events).",
	],
	"rules/start-water-withdrawal": [
		"the start of the water withdrawal",
		"Noun phrase with its article (events).",
	],
	"rules/rig-release-from-last-well-pad": [
		"rig release from the last well of the pad",
		"Noun phrase without its article: what is measured or is missing (events).",
	],
	"rules/day-drilling-was-suspended": [
		"the day drilling was suspended",
		"Clause without a full stop: why a limit came out as it did (events).",
	],
	"rules/physical-change-well": ["the physical change to the well", "Noun phrase with its article (events)."],
	"rules/failed-pressure-test": ["a failed pressure test", "Noun phrase with its article (events)."],
	"rules/plugging-of-well": ["the plugging of the well", "Noun phrase with its article (events)."],
	"rules/flow-of-fresh-water": ["a flow of fresh water", "Noun phrase with its article (events)."],
	"rules/adverse-communication": [
		"an adverse communication with another well",
		"Noun phrase with its article (events).",
	],
	"rules/request-for-information": [
		"a request for the information",
		"Noun phrase with its article (events).",
	],
	"rules/long-rotation-in-casing": [
		"a long rotation of the drill string inside casing",
		"Noun phrase with its article (events).",
	],
	"rules/day-well-fell-idle": ["the day the well fell idle", "Noun phrase with its article (events)."],
	"rules/setting-string": [
		"setting the string",
		"Noun phrase without its article: what is measured or is missing (events).",
	],
	"rules/cementing-string": [
		"cementing the string",
		"Noun phrase without its article: what is measured or is missing (events).",
	],
	"rules/pressure-test-string": ["the pressure test of the string", "Noun phrase with its article (events)."],
	"rules/date-phase": [
		"date of the {phase} phase",
		"Noun phrase without its article: what is measured or is missing (events). phase: a phase of the schedule.",
	],
	"rules/dated.because": [
		"the list of holidays does not cover the year of {eventWords}",
		"Clause without a full stop: why a limit came out as it did (deadline). eventWords: an event, a noun phrase with its article.",
	],
	"rules/dated.because-2": [
		"the list of holidays does not cover the year of the due date",
		"Clause without a full stop: why a limit came out as it did (deadline).",
	],
	"rules/sent-on": [
		"{said}; sent on {sent}.",
		"Sentence: why a limit came out as it did (deadline). said: the clause before; sent: a date.",
	],
	"rules/sent-on-later-than-that": [
		"{said}; sent late, on {sent}.",
		"Sentence: why a limit came out as it did (deadline). said: the clause before; sent: a date.",
	],
	"rules/not-yet-due-when-this-was-issued": [
		"{said}: not yet due when this was issued, on {issued}.",
		"Sentence: why a limit came out as it did (deadline). said: the clause before; issued: a date.",
	],
	"rules/before-this-was-issued-on-definition-records": [
		"{said}, before this was issued on {issued}; no date sent is on record.",
		"Sentence: why a limit came out as it did (deadline). said: the clause before; issued: a date.",
	],
	"rules/date-sent-in-notice-or-report": [
		"date sent of a notice or report for {rule}",
		"Noun phrase without its article: what is measured or is missing (deadline). rule: id of a rule.",
	],
	"rules/days-before": [
		"{count, plural, one {# day} other {# days}} before",
		"Before an event: the span of a deadline.",
	],
	"rules/days-after": [
		"{count, plural, one {# day} other {# days}} after",
		"Before an event: the span of a deadline.",
	],
	"rules/hours-before": [
		"{count, plural, one {# hour} other {# hours}} before",
		"Before an event: the span of a deadline.",
	],
	"rules/hours-after": [
		"{count, plural, one {# hour} other {# hours}} after",
		"Before an event: the span of a deadline.",
	],
	"rules/weeks-before": [
		"{count, plural, one {# week} other {# weeks}} before",
		"Before an event: the span of a deadline.",
	],
	"rules/weeks-after": [
		"{count, plural, one {# week} other {# weeks}} after",
		"Before an event: the span of a deadline.",
	],
	"rules/months-before": [
		"{count, plural, one {# month} other {# months}} before",
		"Before an event: the span of a deadline.",
	],
	"rules/months-after": [
		"{count, plural, one {# month} other {# months}} after",
		"Before an event: the span of a deadline.",
	],
	"rules/years-before": [
		"{count, plural, one {# year} other {# years}} before",
		"Before an event: the span of a deadline.",
	],
	"rules/years-after": [
		"{count, plural, one {# year} other {# years}} after",
		"Before an event: the span of a deadline.",
	],
	"rules/sent-on-sooner-than-that": [
		"{said}, and not before {earliest}; sent on {sent}, sooner than that.",
		"Sentence: why a limit came out as it did (deadline). said: the clause before; sent, earliest: dates.",
	],
	"rules/event-falls-on": [
		"{event} falls on {on}",
		"Clause without a full stop: why a limit came out as it did (condition). event: a noun phrase; on: a date.",
	],
	"rules/business-days-before": [
		"{count, plural, one {# business day} other {# business days}} before",
		"Before an event: the span of a deadline.",
	],
	"rules/business-days-after": [
		"{count, plural, one {# business day} other {# business days}} after",
		"Before an event: the span of a deadline.",
	],
	"rules/business-hours-before": [
		"{count, plural, one {# business hour} other {# business hours}} before",
		"Before an event: the span of a deadline.",
	],
	"rules/business-hours-after": [
		"{count, plural, one {# business hour} other {# business hours}} after",
		"Before an event: the span of a deadline.",
	],
	"rules/date-of-event": ["date of {event}", "A day that is missing. event: a noun phrase with its article."],
	"rules/day-permit-issued": ["day the permit was issued", "A day that is missing."],
	"rules/day-drilling-suspended": ["day drilling was suspended", "A day that is missing."],
	"rules/event-not-dated": [
		"applies only after {event}; none is on record or planned",
		"Clause without its full stop, after the verdict 'Not applicable'. event: a noun phrase with its article.",
	],
	"rules/event-is-on": ["{event} is", "Before a date. event: a noun phrase with its article."],
	"rules/this-was-issued-on": ["this was issued on", "Before a date."],
	"rules/this-issue": ["this issue", "What a rule's being in force is counted by."],
	"rules/from-day": [" from {from}", 'After "in force". from: a date.'],
	"rules/until-day": [" until {to}", 'After "in force". to: a date.'],
	"rules/due-by-planned": [
		"due by {due}, {span} {event}, planned for {on}",
		'Clause on a notice or report. due, on: dates; span: such as "2 days before"; event: a noun phrase.',
	],
	"rules/due-by-recorded": [
		"due by {due}, {span} {event}, which was on {on}",
		'Clause on a notice or report. due, on: dates; span: such as "2 days before"; event: a noun phrase.',
	],
	"rules/date-string-set": [
		"date the {string} string was set",
		"A day that is missing. string: a string's short name, as typed.",
	],
	"rules/date-string-cemented": [
		"date of cementing the {string} string",
		"A day that is missing. string: a string's short name, as typed.",
	],
	"rules/date-casing-test": [
		"date of the pressure test of the {string} string",
		"A day that is missing. string: a string's short name, as typed.",
	],
} as const satisfies Entries;
