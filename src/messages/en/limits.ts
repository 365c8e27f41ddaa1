import type { Entries } from "../entries.ts";

/** What is said of files of rules, of conditions of the permit and of a company’s own limits. */
export const LIMITS = {
	"limits/check.what": [
		'there is no check called "{check}"',
		"What is wrong, of a rules file or a limit. check: as written.",
	],
	"limits/check.mend": [
		"name a check of the list (`casebound list checks`)",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/check.new": [
		"name a check of the list; a new kind of limit needs a new check",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/condition.check": [
		"the check of the condition",
		"What a condition of the permit lacks, in a list of missing information.",
	],
	"limits/condition.check-why": [
		"the condition names no check that is known",
		"Why a condition of the permit cannot be judged; part of a sentence.",
	],
	"limits/condition.limit": [
		"the limit of the condition",
		"What a condition of the permit lacks, in a list of missing information.",
	],
	"limits/condition.limit-why": [
		"the limit of the condition cannot be read",
		"Why a condition of the permit cannot be judged; part of a sentence.",
	],
	"limits/condition.string": [
		"the string that the condition binds",
		"What a condition of the permit lacks, in a list of missing information.",
	],
	"limits/condition.string-why": [
		"the condition does not say which string it binds",
		"Why a condition of the permit cannot be judged; part of a sentence.",
	],
	"limits/condition.neighbors": [
		"the neighbors that the condition binds",
		"What a condition of the permit lacks, in a list of missing information.",
	],
	"limits/condition.neighbors-why": [
		"the condition does not say which neighbors it binds",
		"Why a condition of the permit cannot be judged; part of a sentence.",
	],
	"limits/condition.requirement": [
		"See the condition as written in the permit.",
		"Requirement of a permit's condition that the definition does not word.",
	],
	"limits/basis.what": [
		"the limit replaces a rule that is not an engineering practice rule",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/basis.citation": [
		"{by}’s design basis, in place of: {citation}",
		"Where a limit of the company’s own comes from. by: whose decision it is; citation: of the practice it replaces.",
	],
	"limits/basis.requirement": [
		"{why}",
		"What a limit of the company’s own is there for, in the company’s words. why: a sentence as typed.",
	],
	"limits/basis.expected": [
		"the id of a practice rule, such as {names}",
		"What is expected instead, of a rules file or a limit. names: ids, separated by commas.",
	],
	"limits/basis.mend": [
		"copy the id from the verdicts; a rule of law takes a variance (site.variances)",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/replaces.near": [
		"write `{near}`, if that is what you mean",
		"What to do about it, of a rules file or a limit. near: an id.",
	],
	"limits/id.prefix": [
		"the id does not begin with {code}.",
		"What is wrong, of a rules file or a limit. code: of the file.",
	],
	"limits/id.repeated": ["another row already has this id", "What is wrong, of a rules file or a limit. "],
	"limits/id.expected": [
		"an id of its own, beginning with {code}.",
		"What is expected instead, of a rules file or a limit. code: of the file.",
	],
	"limits/id.mend": ["give the row an id of its own", "What to do about it, of a rules file or a limit. "],
	"limits/shape.missing": [
		"{key} is missing",
		"What is wrong, of a rules file or a limit. key: of a rules file.",
	],
	"limits/shape.no-block": [
		"this is not in the form that a rules file has",
		"What is wrong, of a rules file that holds a word or a list alone.",
	],
	"limits/shape.wrong": [
		"{key} is not in the form that a rules file has",
		"What is wrong, of a rules file or a limit. key: of a rules file.",
	],
	"limits/shape.strange-mend": [
		"remove it, or spell it as in the layout of rules files",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/shape.add": ["add {key}", "What to do about it, of a rules file or a limit. key: of a rules file."],
	"limits/shape.form-mend": ["write it as expected", "What to do about it, of a rules file or a limit."],
	"limits/empty.expected": [
		"a rules file, starting with `jurisdiction: us-tx-marl`",
		"What is expected instead, of an empty rules file.",
	],
	"limits/empty.mend": [
		"write the head and a row; `casebound explain shoe-depth` prints a row to begin from",
		"What to do about it, of an empty rules file.",
	],
	"limits/shape.mend": [
		"write the day as year-month-day, or unknown where it is not known",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/due.jurisdiction": [
		"a code of lower-case words joined by hyphens, such as us-tx",
		"What is expected instead, of a rules file or a limit. By the key.",
	],
	"limits/due.id": [
		"an id of lower-case letters, digits, dots and hyphens, beginning with the code of the file",
		"What is expected instead, of a rules file or a limit. By the key.",
	],
	"limits/due.limit": [
		"a limit, such as '{ measure: …, at_least: … }'",
		"What is expected instead, of a rules file or a limit. By the key.",
	],
	"limits/due.check": [
		"the name of a check (`casebound list checks`)",
		"What is expected instead, of a rules file or a limit. By the key.",
	],
	"limits/due.requirement": [
		"one sentence in your own words",
		"What is expected instead, of a rules file or a limit. By the key.",
	],
	"limits/due.citation": [
		"the section and its paragraph, in quotes where it has a colon",
		"What is expected instead, of a rules file or a limit. By the key.",
	],
	"limits/due.official-text": [
		"'{ text: the whole paragraph, dated: year-month-day }'",
		"What is expected instead, of a rules file or a limit. By the key.",
	],
	"limits/due.public-copy": [
		"'{ at: address, dated: year-month-day, kind: …, read: which part }'",
		"What is expected instead, of a rules file or a limit. By the key.",
	],
	"limits/due.how-known": [
		"'{ way: read, of: what was read }'",
		"What is expected instead, of a rules file or a limit. By the key.",
	],
	"limits/due.in-force": [
		"'{ from: year-month-day or unknown }'",
		"What is expected instead, of a rules file or a limit. By the key.",
	],
	"limits/due.rules": ["a list of rows", "What is expected instead, of a rules file or a limit. By the key."],
	"limits/type.object": ["a block", "What is expected instead, of a rules file or a limit. "],
	"limits/type.array": ["a list", "What is expected instead, of a rules file or a limit. "],
	"limits/type.number": ["a number", "What is expected instead, of a rules file or a limit. "],
	"limits/type.boolean": ["true or false", "What is expected instead, of a rules file or a limit. "],
	"limits/type.text": ["some text", "What is expected instead, of a rules file or a limit. "],
	"limits/type.date": [
		"a date written year-month-day, or the word unknown",
		"What is expected instead, of a rules file or a limit. ",
	],
	"limits/applies.what": [
		"what the rule applies to is not a block",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/applies.expected": [
		"a block with any of: {names}",
		"What is expected instead, of a rules file or a limit. names: keys, separated by commas.",
	],
	"limits/applies.mend": [
		"write it as a block, such as '{ string: surface }'",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/applies.lacks-string": [
		"a rule for the check {check} does not say which strings it applies to",
		"What is wrong, of a rules file or a limit. check: its id.",
	],
	"limits/applies.lacks-neighbor": [
		"a rule for the check {check} does not say which neighbors it applies to",
		"What is wrong, of a rules file or a limit. check: its id.",
	],
	"limits/applies.name-strings": ["name the strings", "What to do about it, of a rules file or a limit. "],
	"limits/applies.name-neighbors": [
		"name the neighbors",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/compared.what": [
		"the row says it was compared, but has no official text with a date",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/compared.expected": [
		"official_text: '{ text: the whole paragraph, dated: year-month-day }'",
		"What is expected instead, of a rules file or a limit. ",
	],
	"limits/compared.mend": [
		"add the whole official paragraph with its date, or write not compared",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/in-force.what": [
		"the rule ends before it takes effect",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/in-force.expected": [
		"a day on or after {from}",
		"What is expected instead, of a rules file or a limit. from: a date.",
	],
	"limits/copy.unsaid": [
		"the row names a public copy, but its standing does not say that it was compared with one",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/copy.unnamed": [
		"the row says it was compared with a public copy, but names none",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/copy.expected": [
		"standing: compared with a public copy, and public_copy: '{ at, dated, kind, read }'",
		"What is expected instead, of a rules file or a limit. ",
	],
	"limits/copy.say": [
		"write the standing, or remove the copy",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/copy.name": [
		"name the copy, or write not compared",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/practice.citation": [
		"{citation}",
		"Where a limit of engineering practice is cited from. citation: its own words.",
	],
	"limits/own.id": [
		"a shipped row already has this id, and both would apply",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/own.id-expected": [
		"an id of its own, or replaces: {id}",
		"What is expected instead, of a rules file or a limit. id: of a rule.",
	],
	"limits/own.id-mend": [
		"write replaces: {id} if your row stands in for the shipped one; otherwise give it another id",
		"What to do about it, of a rules file or a limit. id: of a rule.",
	],
	"limits/own.replaces": [
		"the row replaces a rule that is in none of the sets that apply",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/own.replaces-expected": [
		"the id of a rule of a jurisdiction that the definition names",
		"What is expected instead, of a rules file or a limit. ",
	],
	"limits/own.replaces-mend": [
		"copy the id from `casebound list limits`, or name the jurisdiction in the definition",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/own.date": [
		"the text of the rule is dated after the day this was issued",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/own.date-expected": [
		"a day on or before {issued}, the date of issue",
		"What is expected instead, of a rules file or a limit. issued: a date.",
	],
	"limits/own.date-mend": [
		"correct the date of the text, or of the issue",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/jurisdiction.what": [
		'no limits are known for "{code}"',
		"What is wrong, of a rules file or a limit. code: of a jurisdiction.",
	],
	"limits/jurisdiction.mend": [
		"use the code of a known jurisdiction, or check its rules by hand",
		"What to do about it, of a rules file or a limit. ",
	],
} as const satisfies Entries;
