import type { Entries } from "../entries.ts";

/** What is said of the entries of a definition. */
export const DEFINITION = {
	"definition/api-number.what": ["not an API well number", "What is wrong: the API well number is not one."],
	"definition/api-number.expected": [
		"10, 12 or 14 digits",
		"What is expected instead: the API well number is not one.",
	],
	"definition/api-number.mend": [
		"copy the number from the permit, digit by digit",
		"What to do about it: the API well number is not one.",
	],
	"definition/as-in.mend": [
		"write it as in `{example}`",
		"What to do about it, for definition/as-in. example: a value as it may be written.",
	],
	"definition/cas-number.what": [
		"not a CAS number: the form is wrong or the check digit does not close",
		"What is wrong: the CAS number does not close.",
	],
	"definition/cas-number.expected": [
		"a CAS number whose check digit closes",
		"What is expected instead: the CAS number does not close.",
	],
	"definition/cas-number.mend": [
		"copy the number from the safety data sheet, digit by digit",
		"What to do about it: the CAS number does not close.",
	],
	"definition/empty.whole": [
		"there is no definition in the file",
		"What is wrong: an entry without a value.",
	],
	"definition/empty.what": [
		"`{name}` has no value",
		"What is wrong: an entry without a value. name: of an entry.",
	],
	"definition/empty.start": [
		"write one, or start from a starter (`casebound new`)",
		"What to do about it: an entry without a value.",
	],
	"definition/empty.mend": [
		"give it a value, or delete the line",
		"What to do about it: an entry without a value.",
	],
	"definition/list-of": ["a list of {count}", "What was found: a list. count: of its items."],
	"definition/missing.what": [
		"`{name}` is missing",
		"What is wrong: A required entry is missing. name: of an entry.",
	],
	"definition/missing.expected": [
		"{title}: {expected}",
		"What is expected instead: an entry that must be given is not there. title: what the field is, in English; expected: what may be written in it.",
	],
	"definition/missing.to-entry": [
		"add `{name}:` to this entry",
		"What to do about it: an entry that must be given is not there. name: of the entry.",
	],
	"definition/missing.at-top": [
		"add `{name}:` at the top level",
		"What to do about it: an entry that must be given is not there. name: of the entry.",
	],
	"definition/near.mend": [
		"write `{near}`, if that is what you mean",
		"What to do about it, for definition/near. near: a word that is understood.",
	],
	"definition/none.what": [
		"this is not a well definition: none of its entries is a topic of one",
		"What is wrong, for definition/none.",
	],
	"definition/none.expected": [
		"`definition: 1`, and then {keys} and so on",
		"What is expected instead, for definition/none. keys: names of topics.",
	],
	"definition/none.mend": [
		"check that this is the file you meant, or start from a starter (`casebound new`)",
		"What to do about it, for definition/none.",
	],
	"definition/not-one-of.what": [
		"not one of the words allowed here",
		"What is wrong: not one of the words understood.",
	],
	"definition/not-one-of.mend": [
		"use one of the words listed",
		"What to do about it: not one of the words understood.",
	],
	"definition/out-of-range.what": [
		"a number outside the possible range",
		"What is wrong: A number outside what has a meaning.",
	],
	"definition/out-of-range.expected": [
		"another number",
		"What is expected instead: A number outside what has a meaning.",
	],
	"definition/out-of-range.mend": [
		"correct the number",
		"What to do about it: A number outside what has a meaning.",
	],
	"definition/over-whole.what": [
		"a share greater than the whole",
		"What is wrong: A part greater than the whole.",
	],
	"definition/over-whole.expected": [
		"100 % or less",
		"What is expected instead: A part greater than the whole.",
	],
	"definition/over-whole.mend": ["correct the share", "What to do about it: A part greater than the whole."],
	"definition/unknown-key.what": ["an unknown field name", "What is wrong: A name that has no meaning here."],
	"definition/unknown-key.move": [
		"move it to where that name belongs: {place}",
		"What to do about it: A name that has no meaning here. place: paths in the definition.",
	],
	"definition/unknown-key.comma": [
		"delete it; or, if it belongs to the text before a comma, put that text in quotes",
		"What to do about it: A name that has no meaning here.",
	],
	"definition/unknown-key.mend": [
		"delete it, or use one of the names listed",
		"What to do about it: A name that has no meaning here.",
	],
	"definition/unknown-key.none": [
		"no entry",
		"What is expected instead: nothing may be written in this block.",
	],
	"definition/version.what": [
		"a version of the format that this version of the tool does not read",
		"What is wrong: another version of the format.",
	],
	"definition/version.expected": [
		"`definition: {options}`",
		"What is expected instead: another version of the format. options: versions that are read.",
	],
	"definition/version.mend": [
		"write the version that this tool reads, or use the tool that reads that version",
		"What to do about it: another version of the format.",
	],
	"definition/whole": ["the definition", "A name, where the whole definition is meant."],
	"definition/wrong-count.what": ["a list of the wrong length", "What is wrong: A list of another length."],
	"definition/wrong-count.expected": [
		"another number of items",
		"What is expected instead: A list of another length.",
	],
	"definition/wrong-count.mend": [
		"give exactly that many items",
		"What to do about it: A list of another length.",
	],
	"definition/wrong-form.expected": ["another form", "What is expected instead: not in the form understood."],
	"definition/wrong-form.what": [
		"not in the form expected here",
		"What is wrong: not in the form understood.",
	],
	"definition/wrong-form.mend": ["write it in that form", "What to do about it: not in the form understood."],
	"definition/wrong-kind.block": [
		"write its entries as `name: value`, one to a line below it",
		"Part of a message: another kind of value.",
	],
	"definition/wrong-kind.list": [
		"write a list: `- ` before each item, or the items in `[ ]`",
		"Part of a message: another kind of value.",
	],
	"definition/wrong-kind.text": [
		'if it is meant as text, put it in quotes: `"{value}"`',
		"Part of a message: another kind of value. value: the value as typed.",
	],
	"definition/wrong-kind.mend": ["write what is expected", "What to do about it: another kind of value."],
	"definition/wrong-kind.what": ["the wrong kind of value", "What is wrong: another kind of value."],
	"definition/wrong-kind.expected": [
		"another kind of value",
		"What is expected instead: another kind of value.",
	],
} as const satisfies Entries;
