import type { Entries } from "../entries.ts";

/** What `compare` prints, and the paper of changes. */
export const COMPARE = {
	"compare/earlier": ["earlier", "Label of the earlier state of a well, on the terminal."],
	"compare/later": ["later", "Label of the later state of a well, on the terminal."],
	"compare/state": [
		"{file}, revision {revision}, document ID {digest}",
		"One of the two states that are compared. revision: mark such as B, or a dash; digest: eight characters.",
	],
	"compare/other-well": [
		"The two definitions name different wells: {before} and {after}.",
		"Before the list of changes. before, after: names of wells.",
	],
	"compare/nothing": [
		"No input, result, finding or deadline differs.",
		"In place of the list of changes, where there is none.",
	],
	"compare/inputs": ["Inputs changed ({count})", "Head of a list; in capitals on the terminal."],
	"compare/added": ["added", "Beside an input that was not in the earlier definition."],
	"compare/removed": ["removed", "Beside an input that is not in the later definition."],
	"compare/same-amount": [
		"same amount, written differently",
		"Beside an input whose text changed and whose value did not.",
	],
	"compare/file-rows": [
		"{rows, plural, one {# row differs} other {# rows differ}}",
		"Of a table in a file beside the definition, such as a survey. rows: how many rows are new, gone or changed.",
	],
	"compare/file-values": [
		"{values, plural, one {# value differs} other {# values differ}}",
		"Of a file beside the definition. values: how many of its values changed.",
	],
	"compare/assumed": [
		"assumed, no input given",
		"Beside what the tool assumes where the definition is silent.",
	],
	"compare/verdicts": [
		"Findings that changed ({count}), worst first",
		"Head of a list; in capitals on the terminal.",
	],
	"compare/new-finding": ["new", "In place of the earlier verdict of a finding that was not made before."],
	"compare/no-longer": [
		"no longer made",
		"In place of the later verdict of a finding that is not made any more.",
	],
	"compare/margins": [
		"Margins that moved, same verdict ({count})",
		"Head of a list of findings whose verdict stays and whose room to the limit changed.",
	],
	"compare/gaps": ["Missing information ({count})", "Head of a list of inputs now missing or now given."],
	"compare/now-missing": ["{what}: now missing", "what: noun phrase for an input that a rule asks for."],
	"compare/now-given": [
		"{what}: no longer missing",
		"what: noun phrase for an input that a rule asks for, and that is given now or no longer asked for.",
	],
	"compare/days": ["Deadlines that moved ({count})", "Head of a list; in capitals on the terminal."],
	"compare/results": [
		"Results that moved ({moved} of {compared})",
		"Head of a list. moved: how many results moved; compared: how many both states have.",
	],
	"compare/from": [
		"from {inputs}",
		"After a result: numbers of the changed inputs that it rests on, such as “from 1 and 3”.",
	],
	"compare/from-choice": [
		"from {inputs}, by choice",
		"After a result that rests on a changed input that is a word and no number, such as a grade. inputs: numbers joined with “or”.",
	],
	"compare/row": [
		"table {row}",
		"A row of a shipped table behind a result, such as “table grades: K55, minimum_yield”.",
	],
	"compare/rows-of-table": [
		"{rows, plural, one {# row} other {# rows}}",
		"In place of a value that is a table. rows: how many.",
	],
	"compare/smaller": [
		"{count, plural, one {# more result moved} other {# more results moved}} by less than the last printed digit.",
		"After the list of results.",
	],
	"compare/further": [
		"{count, plural, one {# more result} other {# more results}} moved that the regulator's paper does not print: add --all.",
		"After the list of results on the terminal.",
	],
	"compare/further-paper": [
		"{count, plural, one {# intermediate result} other {# intermediate results}} moved as well; the regulator's paper does not print {count, plural, one {this value} other {these values}}.",
		"Under the table of results in the paper of changes.",
	],
	"compare/since": [
		"Changed since revision {revision} (document ID {digest})",
		"Head of the list of changes on page 1. revision: mark such as A; digest: eight characters.",
	],
	"compare/marked": [
		"Δ marks each table row with a value that moved. {worse, plural, =0 {No finding got worse} one {# finding got worse} other {# findings got worse}}.",
		"Under the list of changes on page 1.",
	],
	"compare/since-nothing": ["No input changed.", "In place of the list of changes on page 1."],
	"compare/input": ["Input", "Head of a column: which entry of the definition changed."],
	"compare/number": ["No.", "Head of a column: numbers of the changed inputs."],
	"compare/what": ["What it is", "Head of a column: the title of an input."],
	"compare/was": ["Before", "Head of a column: the earlier value or verdict."],
	"compare/is": ["Now", "Head of a column: the later value or verdict."],
	"compare/change": ["Change", "Head of a column: by how much a value moved."],
	"compare/follows-from": [
		"From input",
		"Head of a column: numbers of the changed inputs that a result rests on.",
	],
	"compare/result": ["Result", "Head of a column: what was calculated."],
	"compare/requirement": ["Requirement", "Head of a column: citation of a rule, and what it applies to."],
	"compare/because": ["Finding now", "Head of a column: the sentence of a finding."],
	"compare/margin-was": ["Margin before", "Head of a column: room to the limit before."],
	"compare/margin-is": ["Margin now", "Head of a column: room to the limit now."],
	"compare/deadline": ["Notice or report", "Head of a column."],
	"compare/revision": ["Revision", "Label: marks of the two revisions, such as A → B."],
	"compare/ids": ["Document IDs", "Label: the two document IDs."],
	"compare/issued": ["Issued", "Label: the two dates of issue."],
	"compare/why": [
		"Reason for revision",
		"Label: the reason that the definition gives for its last revision.",
	],
	"compare/tally": ["Changed", "Label: how many inputs, findings and results changed."],
	"compare/tally-of": [
		"{inputs, plural, one {# input} other {# inputs}}, {verdicts, plural, one {# finding} other {# findings}}, {results, plural, one {# printed result} other {# printed results}}",
		"How much changed between two revisions.",
	],
	"compare/worse": [
		"{count, plural, one {# finding is worse than before} other {# findings are worse than before}}",
		"Title of a caution on page 1 of the paper of changes.",
	],
} as const satisfies Entries;
