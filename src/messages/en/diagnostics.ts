import type { Entries } from "../entries.ts";

/** What is printed around faults on the terminal. */
export const DIAGNOSTICS = {
	"diagnostics/item": [
		"item {number}",
		"A step on the way to a place in the definition: an entry of a list that has no name. number: counted from 1.",
	],
	"diagnostics/errors": [
		"{count, plural, one {# error} other {# errors}}",
		"How many faults there are, under the last of them.",
	],
	"diagnostics/warnings": [
		"{count, plural, one {# warning} other {# warnings}}",
		"How many doubts there are, under the last fault.",
	],
	"diagnostics/notes": [
		"{count, plural, one {# note} other {# notes}}",
		"How many notes there are, under the last fault.",
	],
	"diagnostics/not-shown": [
		"{counted}; {count, number} of them not shown",
		"Of very many faults only some are printed. counted: how many there are, such as 300 errors; count: how many are not printed.",
	],
} as const satisfies Entries;
