import type { Entries } from "../entries.ts";

/** What is said of a pad file, and of the wells of one pad together. */
export const PAD = {
	"pad/well-twice.what": [
		"the same well is named twice",
		"What is wrong: a pad file lists one definition two times.",
	],
	"pad/well-twice.mend": [
		"name the other well's file, or delete the line",
		"What to do about it: a pad file lists one definition two times.",
	],
	"pad/one-name.what": [
		"two wells of the pad have one name",
		"What is wrong: two definitions of a pad give the same well name.",
	],
	"pad/one-name.mend": [
		"give each well the name on its own permit",
		"What to do about it: two definitions of a pad give the same well name.",
	],
	"pad/one-name.expected": [
		"a name that no other well of the pad has",
		"What is expected instead: two definitions of a pad give the same well name.",
	],
	"pad/well-file.expected": [
		"the definition of a well, beside the pad file or below it",
		"What is expected: the file of a well that a pad names.",
	],
	"pad/well-file.mend": [
		"check the name, or put the file there",
		"What to do about it: the file of a well that a pad names cannot be had.",
	],
	"pad/approach": [
		"{well} and {other}: nearest {distance} at {md}{detail}",
		"Of two wells of a pad, after the findings of each. md: along the first. detail: the separation factor, if there is one.",
	],
	"pad/approach-factor": [
		", separation factor {factor} at {at}",
		"Part of a message, for pad/approach. factor: the least; at: where along the first well.",
	],
	"pad/approach-unknown": [
		"{well} and {other}: how near they come is not evaluated",
		"Of two wells of a pad, where a path, a place or a north is not known.",
	],
	"pad/heading": [
		"{name} ({count, plural, one {# well} other {# wells}}): how near each two of them come, by {file}",
		"Heads the list of pairs. name: of the pad.",
	],
} as const satisfies Entries;
