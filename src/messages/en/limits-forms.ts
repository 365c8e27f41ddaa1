import type { Entries } from "../entries.ts";

/** What is said of a limit that is not in one of the forms that its check takes. */
export const LIMITS_FORMS = {
	"limits/key.what": [
		'"{key}" has no meaning here',
		"What is wrong, of a rules file or a limit. key: as written.",
	],
	"limits/key.mend": [
		'remove "{key}", or spell it as one of these',
		"What to do about it, of a rules file or a limit. key: as written.",
	],
	"limits/word.what": [
		"this is not {thing} that is known",
		"What is wrong, of a rules file or a limit. thing: with its article, such as a measure.",
	],
	"limits/word.mend": ["use one of the words listed", "What to do about it, of a rules file or a limit. "],
	"limits/near.mend": [
		'did you mean "{near}"?',
		"What to do about it, of a rules file or a limit. near: the word probably meant.",
	],
	"limits/nothing": ["nothing", "What was found: no value at all."],
	"limits/place.what": [
		'"{word}" has no meaning for a check made on the {subject}',
		"What is wrong, of a rules file or a limit. word: a measure or fact; subject: what a check is made on.",
	],
	"limits/place.expected": [
		"a measure or fact of the well, or of what the check is made on",
		"What is expected instead, of a rules file or a limit. ",
	],
	"limits/place.mend": [
		"use another measure, or a check made on the string",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/subject.string": ["string", "What a check is made on; Spanish has the article."],
	"limits/subject.annulus": ["annulus", "What a check is made on; Spanish has the article."],
	"limits/subject.neighbor": ["neighbor", "What a check is made on; Spanish has the article."],
	"limits/subject.well": ["well", "What a check is made on; Spanish has the article."],
	"limits/subject.hole": ["hole section", "What a check is made on; Spanish has the article."],
	"limits/subject.stack": ["preventer stack", "What a check is made on; Spanish has the article."],
	"limits/subject.offset-well": ["offset well", "What a check is made on; Spanish has the article."],
	"limits/thing.measure": [
		"a measure",
		'A kind of word, with its article, in "this is not … that is known".',
	],
	"limits/thing.measure-of-check": [
		"a measure of this check",
		'A kind of word, with its article, in "this is not … that is known".',
	],
	"limits/thing.direction": [
		"a direction",
		'A kind of word, with its article, in "this is not … that is known".',
	],
	"limits/thing.measured-from": [
		"a place to measure from",
		'A kind of word, with its article, in "this is not … that is known".',
	],
	"limits/thing.event": ["an event", 'A kind of word, with its article, in "this is not … that is known".'],
	"limits/thing.day": [
		"a kind of day",
		'A kind of word, with its article, in "this is not … that is known".',
	],
	"limits/thing.surface": ["a place", 'A kind of word, with its article, in "this is not … that is known".'],
	"limits/thing.field": ["a field", 'A kind of word, with its article, in "this is not … that is known".'],
	"limits/thing.zone": ["a zone", 'A kind of word, with its article, in "this is not … that is known".'],
	"limits/thing.shut-off": [
		"a thing to be shut off from",
		'A kind of word, with its article, in "this is not … that is known".',
	],
	"limits/thing.consent": [
		"a kind of consent",
		'A kind of word, with its article, in "this is not … that is known".',
	],
	"limits/thing.fact": ["a fact", 'A kind of word, with its article, in "this is not … that is known".'],
	"limits/thing.string-kind": [
		"a kind of string",
		'A kind of word, with its article, in "this is not … that is known".',
	],
	"limits/thing.neighbor-kind": [
		"a kind of neighbor",
		'A kind of word, with its article, in "this is not … that is known".',
	],
	"limits/quantity.what": ["this is not the kind of value that is needed here", "What is wrong, of a limit."],
	"limits/quantity.expected": [
		"a value such as {example}",
		"What is expected instead, of a limit. example: a value as it may be written.",
	],
	"limits/quantity.mend": [
		"write the number with a unit of that kind",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/amount.forms": [
		"a quantity, or one of: '{ of }', '{ times, of }', '{ greatest_of }', '{ least_of }', '{ sum_of }' (a part '{ minus }' is subtracted), '{ clamp, from, to }', '{ by, steps }', '{ by_method }'",
		"What is expected instead, of a rules file or a limit. ",
	],
	"limits/amount.mend": [
		"write the limit in one of these forms",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/amount.not-of-kind": [
		'"{of}" is another kind of value than is needed here, such as {example}',
		"What is wrong, of a limit. of: a measure; example: a value as it may be written.",
	],
	"limits/amount.no-multiple": [
		'no multiple of "{of}" gives the kind of value that is needed here, such as {example}',
		"What is wrong, of a limit. of: a measure; example: a value as it may be written.",
	],
	"limits/amount.not-computed": [
		"a value such as {example} has to be written out here; it cannot be calculated from others",
		"What is wrong, of a limit. example: a value as it may be written.",
	],
	"limits/amount.two": [
		"at least two amounts are needed here",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/clamp.what": [
		"the lower end of the clamp is above its upper end, so no amount fits between them",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/clamp.expected": [
		"from: the lesser, to: the greater",
		"What is expected instead, of a rules file or a limit. ",
	],
	"limits/clamp.found": ["from {from} to {to}", "What was found. from, to: as written."],
	"limits/clamp.mend": [
		"swap the two, if that is what you mean",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/method.what": ["amounts by method are needed here", "What is wrong, of a rules file or a limit. "],
	"limits/amount.unknown": [
		"this is not a known form of amount",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/zone.what": [
		"this is not a known part of a cement column",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/zone.expected": [
		"shoe, filler, whole, '{ bottom: … }' or '{ above_bottom: … }'",
		"What is expected instead, of a rules file or a limit. ",
	],
	"limits/use-one": ["use one of these", "What to do about it, of a rules file or a limit. "],
	"limits/threshold.lacks": [
		'a limit on "{measure}" must also state {missing}',
		"What is wrong, of a rules file or a limit. measure: of the limit; missing: keys, as a list.",
	],
	"limits/threshold.one": [
		"a limit takes exactly one boundary",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/threshold.add": [
		"add {missing}",
		"What to do about it, of a rules file or a limit. missing: keys, as a list.",
	],
	"limits/threshold.one-mend": [
		"write one boundary, in the words of the rule; for a least and a most, list two limits under all_of",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/side.what": [
		'a limit of "{operator}" on "{measure}" protects nothing',
		"What is wrong, of a rules file or a limit. operator: such as at least; measure: of the limit.",
	],
	"limits/side.expected": [
		"{protects}, or {other}",
		"What is expected instead, of a rules file or a limit. protects, other: keys as they are written.",
	],
	"limits/side.mend": [
		"write {protects}, if that is what the rule says",
		"What to do about it, of a rules file or a limit. protects: a key as it is written.",
	],
	"limits/words.what": ["a list of words is needed here", "What is wrong, of a rules file or a limit. "],
	"limits/words.expected": ["a list of words", "What is expected instead, of a rules file or a limit. "],
	"limits/words.mend": ["list the words", "What to do about it, of a rules file or a limit. "],
	"limits/pattern.what": [
		"this is not a known pattern of centralizers",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/pattern.expected": [
		"'{ bottom_joints }', '{ every_joints }', '{ first_within, then_every }' or '{ through: protected water }'",
		"What is expected instead, of a rules file or a limit. ",
	],
	"limits/event.what": [
		'"{event}" is an event of one string, and the check is made on the {subject}',
		"What is wrong, of a rules file or a limit. event: as written; subject: what the check is made on.",
	],
	"limits/event.expected": [
		"a check made on the string: string-notice or string-report",
		"What is expected instead, of a rules file or a limit. ",
	],
	"limits/event.mend": [
		"name one of those checks, and the string in applies_to",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/deadline.what": [
		"a deadline must state the event it comes before or after",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/deadline.mend": [
		"add before or after, with the event and the days",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/span.what": [
		"this is not a number of hours, days, weeks, months or years",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/span.expected": [
		"a whole number with its unit, such as 30 days, 48 hours or 6 months",
		"What is expected instead, of a rules file or a limit. ",
	],
	"limits/span.mend": ["write the number and its unit", "What to do about it, of a rules file or a limit. "],
	"limits/within.what": [
		"a radius and a place are needed here",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/within.mend": ["write both", "What to do about it, of a rules file or a limit. "],
	"limits/form.what": ["this is not a known form of limit", "What is wrong, of a rules file or a limit. "],
	"limits/form.expected": [
		"a comparison '{ measure, at_least … }', or one of: {names}",
		"What is expected instead, of a rules file or a limit. names: of forms, separated by commas.",
	],
	"limits/step.what": ["a step has to say where it ends", "What is wrong, of a rules file or a limit."],
	"limits/step.expected": [
		"'{ up_to: '{example}, is: … '}', or under in place of up_to",
		"What is expected instead, of a rules file or a limit.",
	],
	"limits/step.mend": [
		"write up_to where the value itself belongs to the step, and under where it does not",
		"What to do about it, of a rules file or a limit.",
	],
	"limits/steps.what": [
		"a table takes one step or more, and a last line that says what holds beyond them",
		"What is wrong, of a rules file or a limit.",
	],
	"limits/steps.expected": [
		"steps: ['{ up_to: 2500 ft, is: 100 ft }', '{ beyond: 300 ft }']",
		"What is expected instead, of a rules file or a limit.",
	],
	"limits/steps.mend": [
		"add '{ beyond: … }' as the last line",
		"What to do about it, of a rules file or a limit.",
	],
	"limits/steps-order.what": [
		"the step ends no later than the one before it, so nothing falls in it",
		"What is wrong, of a rules file or a limit.",
	],
	"limits/steps-order.expected": [
		"steps from the least to the greatest",
		"What is expected instead, of a rules file or a limit.",
	],
	"limits/steps-order.mend": ["put the steps in order", "What to do about it, of a rules file or a limit."],
	"limits/span-business.what": [
		"business days are not counted in {unit}",
		"What is wrong, of a rules file or a limit.",
	],
	"limits/span-business.expected": [
		"a number of days or hours, or calendar days",
		"What is expected instead, of a rules file or a limit.",
	],
	"limits/span-business.mend": [
		"write the span in days, or remove days: business",
		"What to do about it, of a rules file or a limit.",
	],
	"limits/counted.what": [
		"what {side} counts from is not written as a block",
		"What is wrong, of a rules file or a limit.",
	],
	"limits/counted.expected": [
		"'{ '{side}: '{ spud: 30 days } }'",
		"What is expected instead, of a rules file or a limit.",
	],
	"limits/counted.mend": [
		"name the event, and give it its days",
		"What to do about it, of a rules file or a limit.",
	],
	"limits/no-sooner.what": [
		"the earliest day is counted from one event, and several are named",
		"What is wrong, of a rules file or a limit.",
	],
	"limits/no-sooner.expected": [
		"one event with no_sooner",
		"What is expected instead, of a rules file or a limit.",
	],
	"limits/no-sooner.mend": [
		"name one event, or write a row for each",
		"What to do about it, of a rules file or a limit.",
	],
	"limits/named-place.what": [
		"the name of a {of}, or a list of names, is due here",
		"What is wrong, of a rules file or a limit.",
	],
	"limits/named-place.expected": [
		"'{' {of}: [first name, second name] '}'",
		"What is expected instead, of a rules file or a limit.",
	],
	"limits/named-place.mend": ["write the names as words", "What to do about it, of a rules file or a limit."],
	"limits/dated.what": [
		"a condition on a day has to say from which day, or before which",
		"What is wrong, of a rules file or a limit.",
	],
	"limits/dated.expected": [
		"'{ event: spud, from: 2014-01-01 }', or before: year-month-day",
		"What is expected instead, of a rules file or a limit.",
	],
	"limits/dated.mend": [
		"write the day as year-month-day",
		"What to do about it, of a rules file or a limit.",
	],
	"limits/several.what": [
		"a list of two conditions or more is due here",
		"What is wrong, of a rules file or a limit.",
	],
	"limits/several.expected": [
		"'{' {kind}: [exploratory well, horizontal well] '}'",
		"What is expected instead, of a rules file or a limit.",
	],
	"limits/several.mend": [
		"list the conditions, or write the one without this word",
		"What to do about it, of a rules file or a limit.",
	],
	"limits/condition-form.what": [
		"this is not a condition that can be true or false",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/condition-form.expected": [
		"a comparison '{ measure, at_least … }', '{ county }', '{ field }', '{ event }', '{ event, from | before }', '{ not }', '{ all }', '{ any }', or a fact, one of: {names}",
		"What is expected instead, of a rules file or a limit. names: of facts, separated by commas.",
	],
	"limits/condition-form.mend": [
		"write the condition in one of these forms",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/parts.what": [
		"a list of at least two limits is needed here",
		"What is wrong, of a rules file or a limit. ",
	],
	"limits/parts.expected": ["a list of limits", "What is expected instead, of a rules file or a limit. "],
	"limits/parts.mend": [
		"list the limits, or write the one limit without this word",
		"What to do about it, of a rules file or a limit. ",
	],
	"limits/limit.what": ["a limit is needed here", "What is wrong, of a rules file or a limit. "],
	"limits/limit.expected": [
		"a block, one of the forms: {names}, all_of, any_of",
		"What is expected instead, of a rules file or a limit. names: of forms, separated by commas.",
	],
	"limits/limit.mend": ["write the limit as a block", "What to do about it, of a rules file or a limit. "],
	"limits/leaf.what": [
		'the check {check} does not take a limit of the form "{form}"',
		"What is wrong, of a rules file or a limit. check: its id; form: of the limit.",
	],
	"limits/leaf.expected": [
		"one of the forms: {names}",
		"What is expected instead, of a rules file or a limit. names: of forms, separated by commas.",
	],
	"limits/leaf.mend": [
		"write the limit in a form that the check takes, or name the check that takes this form",
		"What to do about it, of a rules file or a limit. ",
	],
} as const satisfies Entries;
