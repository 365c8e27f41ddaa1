import type { Entries } from "../entries.ts";

/** What is said of a value with its unit that cannot be taken. */
export const QUANTITY = {
	"quantity/comma.what": ["a comma in a number", "What is wrong: A comma in a number."],
	"quantity/comma.or-thousands": [
		"write `{alternative}`, or `{cure}` if the comma marks thousands",
		"What to do about it: A comma in a number. alternative and cure: the two readings of the number.",
	],
	"quantity/comma.or-decimals": [
		"write `{cure}`, or `{alternative}` if the comma marks decimals",
		"What to do about it: A comma in a number. cure and alternative: the two readings of the number.",
	],
	"quantity/depth-reference.what": [
		"a depth from the wrong reference",
		"What is wrong: A depth counted from the wrong place.",
	],
	"quantity/depth-reference.why": [
		"measured depth, true vertical depth and depth below ground are different depths",
		"Why it matters: A depth counted from the wrong place.",
	],
	"quantity/depth-reference.found": [
		"{depth} (a measured depth)",
		"What was found: a depth as typed, without the word that another kind of depth would need.",
	],
	"quantity/depth-reference.work-out": [
		"convert the depth to this reference, and write it as in {forms}",
		"What to do about it. forms: depths as they may be written, in backticks.",
	],
	"quantity/depth-reference.mend": [
		"state the depth reference: {forms}",
		"What to do about it. forms: the depth with the words that it could have, in backticks.",
	],
	"quantity/digit-space.what": [
		"a space or a mark between the digits of a number",
		"What is wrong: A space or a mark inside a number.",
	],
	"quantity/improper-fraction.what": [
		"a fraction of one or more, which is usually a size with a missing space",
		"What is wrong: A fraction of one or more.",
	],
	"quantity/letter-case.what": [
		"a unit that means something else in this letter case",
		"What is wrong: A unit in letters of another case.",
	],
	"quantity/negative.what": [
		"a value below zero, which is not possible here",
		"What is wrong: A value below zero.",
	],
	"quantity/no-unit.what": ["a number without its unit", "What is wrong: A number without its unit."],
	"quantity/no-unit.expected": [
		"one of these units after the number: {units}",
		"What is expected instead. units: separated by commas.",
	],
	"quantity/no-unit.mend": [
		"write `{first}`, or `{second}`",
		"What to do about it: a number without its unit. first and second: the number with a unit.",
	],
	"quantity/no-unit.second": [
		"write the unit after the number, as in `{example}`, or `{second}`",
		"What to do about it: a number without its unit. example: a value; second: the number with a unit.",
	],
	"quantity/no-unit.example": [
		"write the unit after the number, as in `{example}`",
		"What to do about it: a number without its unit. example: a value with its unit.",
	],
	"quantity/not-a-number.what": [
		"this cannot be read as a number and a unit",
		"What is wrong: not a quantity.",
	],
	"quantity/not-a-number.or-leave-out": [
		"write it as in `{example}`, or leave it out while it is not known",
		"What to do about it: not a quantity. example: a value with its unit.",
	],
	"quantity/not-finite.what": ["not a finite number", "What is wrong: not a finite number."],
	"quantity/several-numbers.what": [
		"more than one number where one is expected",
		"What is wrong: more than one number.",
	],
	"quantity/several-numbers.mend": [
		"write one value, as in `{example}`",
		"What to do about it: more than one number. example: a value with its unit.",
	],
	"quantity/several-numbers.in-list": [
		"write one value, as in `{example}`, or a comma between two",
		"What to do about it: more than one number in an item of a list. example: a value with its unit.",
	],
	"quantity/unknown-unit.what": [
		"a unit that does not measure this",
		"What is wrong: A unit that does not measure this.",
	],
	"quantity/unknown-unit.mend": [
		"use one of these units, as in `{example}`",
		"What to do about it: A unit that does not measure this. example: a value with its unit.",
	],
	"quantity/unknown-unit.alphabet": [
		"the letter `{letter}` is of another alphabet ({number}), though it may look the same",
		"Why it matters: a unit is written with a letter that looks like one of ours. number: of the letter in the Unicode standard.",
	],
	"quantity/words-after-unit.what": [
		"there is more than a number and its unit",
		"What is wrong, for quantity/words-after-unit.",
	],
	"quantity/words-after-unit.gauge": [
		"write the gauge pressure, as in `{example}`",
		"What to do about it, for quantity/words-after-unit. example: a pressure with its unit.",
	],
	"quantity/words-after-unit.mend": [
		"write `{written}`, and the rest in a remark: a space and `# ` at the end of the line",
		"What to do about it, for quantity/words-after-unit. written: the value as it should be written.",
	],
	"quantity/write.mend": [
		"write `{written}`",
		"What to do about it, for quantity/write. written: the value as it should be written.",
	],
} as const satisfies Entries;
