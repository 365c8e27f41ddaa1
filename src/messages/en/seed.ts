import type { Entries } from "../entries.ts";

/** What is said of the tables that ship with the tool, and of rules that a definition names. */
export const SEED = {
	"rules/reference.none-expected": [
		"the id of a rule of a known jurisdiction",
		"What is expected instead, for rules/reference.",
	],
	"rules/reference.expected": [
		"the id of a rule, such as {named}",
		"What is expected instead, for rules/reference. named: ids of rules.",
	],
	"rules/reference.mend": [
		"copy the id from the verdicts (`casebound check --format json` shows them), or name the jurisdiction it is of",
		"What to do about it, for rules/reference.",
	],
	"rules/reference.variance": [
		"the variance names a rule that none of the jurisdictions has",
		"What is wrong: a variance of the definition names an unknown rule.",
	],
	"rules/reference.notice": [
		"the notice names a rule that none of the jurisdictions has",
		"What is wrong: a notice of the definition names an unknown rule.",
	],
	"rules/reference.comparison": [
		"the comparison names a rule that none of the jurisdictions has",
		"What is wrong: a comparison with the official text names an unknown rule.",
	],
	"seed/band.high": ["more than the low end", "What the high end of a range of likely values must be."],
	"seed/casing.wall": ["less than half of the outside diameter", "What the wall of a row of pipe must be."],
	"seed/casing.drift": [
		"at most the inside diameter, {inside}",
		"What the drift of a row of pipe must be. inside: a diameter.",
	],
	"seed/casing.alternate-drift": [
		"more than the drift and at most the inside diameter, {inside}",
		"What the special drift of a row of pipe must be. inside: a diameter.",
	],
	"seed/casing.weight": [
		"a weight that the size does not have already",
		"What the weight of a row of pipe must be.",
	],
	"seed/casing.coupling": [
		"more than the outside diameter of the pipe",
		"What the diameter of a coupling must be.",
	],
	"seed/expected.type": [
		"a {type}",
		"What a shipped table must hold there. type: of a value, such as string or number.",
	],
	"seed/expected.rows": ["a list with at least one row", "What a shipped table must hold there."],
	"seed/expected.more": ["more than {least}", "What a shipped table must hold there. least: a number."],
	"seed/expected.fields": [
		"only the fields that the head of the file describes",
		"What a shipped table must hold there.",
	],
	"seed/grade.yield": [
		"at least the minimum yield, {yield}",
		"What another strength of a grade of steel must be. yield: a pressure.",
	],
	"seed/inconsistent.what": [
		'"{name}" contradicts the rest of its row',
		"What is wrong: figures of a shipped table contradict each other. name: of a field.",
	],
	"seed/repeated.what": [
		'"{name}" is listed twice in the shipped table',
		"What is wrong: A shipped table lists the same thing twice. name: of a row.",
	],
	"seed/repeated.expected": [
		"each name once",
		"What is expected instead: A shipped table lists the same thing twice.",
	],
	"seed/repeated.mend": [
		"restore the file from the package, or delete one of the two rows",
		"What to do about it: A shipped table lists the same thing twice.",
	],
	"seed/repeated.label": [
		"first listed here",
		"What a related place is: A shipped table lists the same thing twice.",
	],
	"seed/row.mend": [
		"restore the file from the package, or correct the row",
		"What to do about it, for seed/row.",
	],
	"seed/shape.lacks": [
		'the shipped table lacks "{name}"',
		"What is wrong: A shipped table does not have its form. name: of a field.",
	],
	"seed/shape.what": [
		'"{name}" is not what the shipped table holds there',
		"What is wrong: A shipped table does not have its form. name: of a field.",
	],
	"seed/sour.temperature": [
		"either any temperature, or a lowest one",
		"What a row of grades for sour service must say.",
	],
	"seed/source.publisher": ["authors or a publisher", "What an entry of the bibliography must name."],
	"seed/state.north": ["more than the south", "What the north side of a state must be."],
	"seed/state.east": ["more than the west", "What the east side of a state must be."],
	"seed/unreadable.expected": [
		"the table as it ships",
		"What is expected instead: A shipped table cannot be read.",
	],
	"seed/unreadable.mend": [
		"restore the file from the package",
		"What to do about it: A shipped table cannot be read.",
	],
	"seed/unreadable.missing": [
		"the shipped table is missing",
		"Part of a message: A shipped table cannot be read.",
	],
	"seed/whole-file": ["the whole file", "What is at fault, where it is no single field."],
} as const satisfies Entries;
