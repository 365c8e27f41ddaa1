import type { Entries } from "../entries.ts";

/** What is printed around faults on the terminal. */
export const DIAGNOSTICS = {
	"diagnostics/item": [
		"item {number}",
		"A step on the way to a place in the definition: an entry of a list that has no name. number: counted from 1.",
	],
} as const satisfies Entries;
