import type { CodeEntry } from "../codes.ts";

/** Faults of what the definition says, one topic at a time. */
export const DEFINITION_CODES = {
	"definition/api-number": {
		severity: "error",
		title: "The API well number is not one",
		explain:
			"The API well number joins every paper to the public record of the well. It has 10 digits (state, " +
			"county, well), 12 with the sidetrack or 14 with the event sequence, with or without hyphens. One " +
			"wrong digit files the well under somebody else's. Copy it from the permit.",
	},
	"definition/cas-number": {
		severity: "error",
		title: "The CAS number does not close",
		explain:
			"A chemical has many names and one CAS number. Its last digit is a check on the others: each digit " +
			"before it, from the right, times its position, summed, ends in that digit. A number that does not " +
			"close names no chemical, and a disclosure that carries it is wrong. Copy it from the safety data " +
			"sheet.",
	},
	"definition/emergency-number": {
		severity: "error",
		title: "An emergency number that nobody can dial",
		explain:
			"An emergency number has three digits, such as 911, or it is a whole telephone number of seven or more. Anything " +
			"between has lost a digit or has one too many, and a crew would find that out when it matters most.",
	},
	"definition/date": {
		severity: "error",
		title: "Not a date of the calendar",
		explain:
			"Dates are written year-month-day, such as 2026-05-04, because 05/04 is read two ways. The day must " +
			"exist.",
	},
	"definition/dates-out-of-order": {
		severity: "error",
		title: "Dates out of order",
		explain:
			"One of two dates must come after the other for the record to make sense: a validity after its issue, " +
			"revisions in sequence, an end after a start. A reviewer who finds them crossed will doubt the rest.",
	},
	"definition/duplicate-id": {
		severity: "error",
		title: "Two entries have the same name",
		explain:
			"Other entries, file names and results refer to an entry by this name; with two of them nobody can " +
			"say which is meant. " +
			"Rename one, and every entry that refers to it.",
	},
	"definition/empty": {
		severity: "error",
		title: "An entry without a value",
		explain:
			"The name is there and nothing stands after it. The tool does not guess what was meant: give a value, " +
			"or take the line out and the entry counts as not given.",
	},
	"definition/low-above-high": {
		severity: "error",
		title: "A range turned round",
		explain:
			"A range is written low first. Turned round it would make every figure drawn from it wrong at both " +
			"ends.",
	},
	"definition/method-and-stages": {
		severity: "error",
		title: "The method and the stages do not go together",
		explain:
			"A single interval is described by `interval`; a job in stages by `layout` or `rows`. One of the two " +
			"entries was changed and the other forgotten.",
	},
	"definition/missing": {
		severity: "error",
		title: "A required entry is missing",
		explain:
			"Nothing of this kind can be computed without it, and the tool never guesses. Add it; the message " +
			"says what it is for.",
	},
	"definition/not-one-of": {
		severity: "error",
		title: "Not one of the words understood",
		explain:
			"Here the definition takes one of a closed list of words, because calculations and rules depend on " +
			"which it is. " +
			"The message lists the words; a near one is offered where a slip of the pen is likely.",
	},
	"definition/one-of-keys": {
		severity: "error",
		title: "Exactly one of several entries is due",
		explain:
			"These entries say the same thing in different ways. With none of them nothing is said; with two they " +
			"could disagree.",
	},
	"definition/out-of-range": {
		severity: "error",
		title: "A number outside what has a meaning",
		explain:
			"The number cannot be what it claims to be: a latitude beyond the pole, a count below one. " +
			"Look for a sign, a point or a digit that slipped.",
	},
	"definition/over-whole": {
		severity: "error",
		title: "A part greater than the whole",
		explain:
			"A share of more than 100 % of something that can only be had once. " +
			"A washout or an excess may pass 100 %; a share of the water or an allowed fall may not. Correct the share.",
	},
	"definition/papers-widened": {
		severity: "error",
		title: "An entry shown where it may not be",
		explain:
			"Some entries are persons, telephone numbers or private records. `papers:` can keep an entry out of a " +
			"paper; it cannot bring one into a paper that entries of its kind are kept out of.",
	},
	"definition/date-implausible": {
		severity: "warning",
		title: "A date far from the others",
		explain:
			"A plan is issued some months before the work, seldom years. A date before 1900, or work that begins more than two years after the " +
			"day of issue, is mostly a slip in the year; rules and deadlines are counted from it. Correct the year, or leave it if it is meant.",
	},
	"definition/spud-and-schedule": {
		severity: "error",
		title: "Two dates of spud",
		explain:
			"The drilling phase begins with spud. With another date under `well`, the drawings would say one day and the timeline " +
			"another, and deadlines would count from one of them. Write the day once; a drilling phase without a start takes it from `spud`.",
	},
	"definition/shares-of-whole": {
		severity: "error",
		title: "Shares that do not add up",
		explain:
			"Shares of one whole must add up to 100 %. If they do not, one is wrong or one is missing, and " +
			"volumes and truck counts would be wrong by as much.",
	},
	"definition/unknown-key": {
		severity: "error",
		title: "A name that has no meaning here",
		explain:
			"A misspelled name would silently lose its value, so every name must be one that is known at its " +
			"place. The message lists them.",
	},
	"definition/version": {
		severity: "error",
		title: "Another version of the format",
		explain:
			"The first line, `definition: 1`, says which version of the format the file is written in. This " +
			"version of the tool reads version 1.",
	},
	"definition/wrong-count": {
		severity: "error",
		title: "A list of another length",
		explain:
			"Here the list has a fixed length, such as a low and a high value. " +
			"With fewer or more it is not known which value is which. Give exactly as many as the message says.",
	},
	"definition/wrong-form": {
		severity: "error",
		title: "Not in the form understood",
		explain:
			"The text must have a certain form here, which the message names, so that it can be referred to or " +
			"counted. " +
			"Write it as in the example.",
	},
	"definition/wrong-kind": {
		severity: "error",
		title: "Another kind of value",
		explain:
			"A text stands where a block or a list is due, a number where a text is, or the other way round. Text " +
			"that looks like a number, such as a telephone number, goes in quotes.",
	},
} as const satisfies Record<string, CodeEntry>;
