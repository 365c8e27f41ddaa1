import type { Entries } from "../entries.ts";

/** What `explain` prints around a code, a check, a formula or a value. */
export const EXPLAIN = {
	"explain/unknown": [
		"nothing here is called “{what}”",
		"Clause after the name of the tool: what was asked for is not known. what: as typed.",
	],
	"explain/did-you-mean": [
		"nothing here is called “{what}”; did you mean “{near}”?",
		"As explain/unknown, with the nearest name. what: as typed; near: a name that is known.",
	],
	"explain/error": ["error", "In brackets after the name of a code: how grave the fault is."],
	"explain/warning": ["warning", "In brackets after the name of a code: how grave the fault is."],
	"explain/check": ["check", "In brackets after the name of a check."],
	"explain/formula": ["formula", "In brackets after the name of a formula."],
	"explain/source": [
		"source: {source}",
		"A line beneath a formula. source: who published it, and where in it.",
	],
	"explain/holds": [
		"holds: {range}",
		"A line beneath a formula: for which inputs it holds. range: a clause.",
	],
	"explain/rows": [
		"{count, plural, one {a table of # row} other {a table of # rows}}",
		"What a value is that is no single number.",
	],
	"explain/worked-above": ["worked above", "In brackets after a value whose inputs were listed before."],
	"explain/written": ["written at {place}", "Where a value comes from. place: a path in the definition."],
	"explain/written-in": [
		"written at {place} in {file}",
		"Where a value comes from. place: a path in the definition; file: the name of the file it is in.",
	],
	"explain/from-table": [
		"table {table}, {row}; {source}",
		"Where a value comes from. table, row: names in the shipped data; source: who published it.",
	],
	"explain/assumed": ["assumed: {id}", "Where a value comes from. id: the name of the assumption."],
	"explain/constant": [
		"constant: {what}; {source}",
		"Where a value comes from. what: what the constant is; source: who published it.",
	],
	"explain/by": [
		"by {formula}; {source}",
		"Where a value comes from. formula: its id; source: who published it.",
	],
	"explain/by-branch": [
		"by {formula} ({branch}); {source}",
		"As explain/by. branch: which of the formula's cases gave the value.",
	],
	"explain/made-on": [
		"made on   {subject, select, string {a string} hole {a hole} annulus {an annulus} neighbor {a neighbor} other {the well}}",
		"A line beneath a check, its words at the eleventh column: of what the check is made.",
	],
	"explain/row-says-which": [
		"{madeOn}; the row says which: {sample}",
		"After made-on. sample: as a row writes it.",
	],
	"explain/measures": ["measures", "Head of the list of what a check can measure."],
	"explain/measure": [
		"  {name}: {kind}, such as {amount}",
		"A measure of a check. name, kind: words of a rules file; amount: an example.",
	],
	"explain/measure-with": [
		"  {name}: {kind}, such as {amount}; with {more}",
		"As explain/measure. more: what a row has to say beside it.",
	],
	"explain/may-be-left-out": ["{name} (may be left out)", "A word of a rules file that a row need not have."],
	"explain/forms": ["forms     {forms}", "A line beneath a check: how a row writes its limit."],
	"explain/joined": [
		"          and joined: {forms}",
		"A line under the forms: limits put together from several; begins at the eleventh column.",
	],
	"explain/amounts": [
		"amounts   a quantity, {forms}",
		"A line beneath a check: how a row writes the number of its limit. forms: as written.",
	],
	"explain/when": ["when, if  {facts};", "A line beneath a check: facts that a row's condition may name."],
	"explain/events": [
		"events    {events}",
		"A line beneath a check: events that a row's condition or deadline may name.",
	],
	"explain/begin-from": ["a row to begin from", "Head of a row of a rules file to copy."],
	"explain/own-words": [
		"One sentence in your own words.",
		"In the row to copy: what stands as its requirement.",
	],
	"explain/own-citation": [
		"The section and its paragraph",
		"In the row to copy: what stands as its citation.",
	],
	"explain/own-reading": ["what was read", "In the row to copy: of what text it is known."],
	"explain/own-question": [
		"A geologist has to say whether the bed is competent.",
		"In the row to copy: a question that a person answers.",
	],
} as const satisfies Entries;
