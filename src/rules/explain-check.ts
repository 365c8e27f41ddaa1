import { CHECK_LIMITS, type CheckId } from "../catalog/limits/checks.ts";
import {
	MEASURES,
	type MeasureEntry,
	type MeasureName,
	type SubjectKind,
} from "../catalog/limits/measures.ts";
import { wrongSide } from "../catalog/limits/protective-side.ts";
import { exampleAmount } from "../catalog/limits/read-amount.ts";
import { EVENTS, FACTS, type LimitForm, STRING_EVENTS, STRING_FACTS } from "../catalog/limits/vocabulary.ts";
import { message } from "../messages/message.ts";
import { type Reader, tellPhrase } from "../messages/print.ts";

/** What a row has to name beside its limit, by what the check is made on. */
const APPLIES: Readonly<Partial<Record<SubjectKind, string>>> = {
	string: "{ string: surface }",
	annulus: "{ annulus: { inside: production, outside: intermediate } }",
	neighbor: "{ neighbor: [dwelling, school] }",
};

/** One limit of each form, as a row writes it. */
const FORM_EXAMPLES: Readonly<Record<string, string>> = {
	"at surface": "{ at: surface }",
	"one of": "{ one_of: [air, fresh water] }",
	"none of": "{ none_of: [68334-30-5] }",
	includes: "{ includes: [top, bottom] }",
	present: "{ present: [formation tops, hole sizes] }",
	covers: "{ covers: [protected water, flow zones, formation Dakota] }",
	pattern: "{ pattern: { bottom_joints: 3 } }",
	deadline: "{ deadline: { before: { spud: 2 days }, days: business } }",
	"evidence within": "{ evidence_within: { radius: 1000 ft, of: wellbore } }",
	"samples within": "{ samples_within: { radius: 0.5 mi, of: wellhead, before: spud, months: 12 } }",
	"evidence beside": "{ evidence_beside: fractures }",
	consent: "{ consent: written }",
};

const THRESHOLD = "{ measure, at_least | more_than | at_most | less_than, about }";
const JOINED = "{ all_of: [ … ] }, { any_of: [ … ] }, { if: …, require: … }";
const AMOUNTS =
	"{ of }, { times, of }, { greatest_of }, { least_of }, { sum_of }, { clamp, from, to }, { by, steps }, { by_method }";
const CONDITIONS =
	"{ measure, at_least … }, { county }, { field }, { event }, { event, from | before }, { not }, { all }, { any }";

const PARAMETERS: Readonly<Record<string, string>> = {
	along: "along: hole",
	zone: "zone: { bottom: 300 ft }",
	after: "after: 72 hr",
	cured_at: "cured_at: 80 degF",
	formation: "formation: Fox Hills",
	within: "within: 1320 ft",
	from: "from: wellhead",
};

const thresholdOf = (id: CheckId): string | undefined => {
	const [measure] = CHECK_LIMITS[id].measures;
	if (measure === undefined) return undefined;
	const { dimension, needs = [] }: MeasureEntry = MEASURES[measure];
	const side = wrongSide(measure, "at least") ?? "at_least";
	const more = needs.map((each) => PARAMETERS[each] ?? each);
	return `{ ${[`measure: ${measure}`, ...more, `${side}: ${exampleAmount(dimension)}`].join(", ")} }`;
};

/** Facts that a condition of a row on such a subject may name. */
const factsOf = (subject: SubjectKind): readonly string[] =>
	FACTS.filter((fact) => subject === "string" || !STRING_FACTS.includes(fact));

/** Events that a condition or a deadline of such a row may name. */
const eventsOf = (subject: SubjectKind): readonly string[] =>
	EVENTS.filter((event) => subject === "string" || !STRING_EVENTS.includes(event));

/** What a check is made on, its measures with their kinds of value, the forms it takes, and a row to begin from. */
export const limitsOfCheck = (id: CheckId, reader: Reader): readonly string[] => {
	const { subject, forms, measures } = CHECK_LIMITS[id];
	const applies = APPLIES[subject];
	const own = ownOf(reader);
	const sample = (form: LimitForm) =>
		form === "judgement" ? `{ question: ${own.question} }` : FORM_EXAMPLES[form];
	const example = thresholdOf(id) ?? sample(forms[0] ?? "judgement") ?? "{ question: … }";
	const madeOn = message("explain/made-on", { subject });
	return [
		tellPhrase(
			applies === undefined
				? madeOn
				: message("explain/row-says-which", { madeOn, sample: `applies_to: ${applies}` }),
			reader,
		),
		...(measures.length === 0
			? []
			: [
					tellPhrase(message("explain/measures"), reader),
					...measures.map((name) => measureLine(name, reader)),
				]),
		tellPhrase(
			message("explain/forms", { forms: forms.map((form) => sample(form) ?? THRESHOLD).join(" · ") }),
			reader,
		),
		tellPhrase(message("explain/joined", { forms: JOINED }), reader),
		...(measures.length === 0 ? [] : [tellPhrase(message("explain/amounts", { forms: AMOUNTS }), reader)]),
		tellPhrase(message("explain/when", { facts: factsOf(subject).join(", ") }), reader),
		`          ${CONDITIONS}`,
		tellPhrase(message("explain/events", { events: eventsOf(subject).join(", ") }), reader),
		tellPhrase(message("explain/begin-from"), reader),
		`  - id: us-tx.mine.${id}`,
		`    check: ${id}`,
		...(applies === undefined ? [] : [`    applies_to: ${applies}`]),
		`    limit: ${example}`,
		`    requirement: ${own.words}`,
		`    citation: ${own.citation}`,
		"    standing: not compared",
		`    how_known: { way: read in part, of: ${own.reading} }`,
		"    text_as_of: unknown",
		"    in_force: { from: unknown }",
	];
};

/** What a person puts into the row in words of their own. */
const ownOf = (reader: Reader) => ({
	words: tellPhrase(message("explain/own-words"), reader),
	citation: tellPhrase(message("explain/own-citation"), reader),
	reading: tellPhrase(message("explain/own-reading"), reader),
	question: tellPhrase(message("explain/own-question"), reader),
});

const measureLine = (name: MeasureName, reader: Reader): string => {
	const { dimension, needs = [], may = [] }: MeasureEntry = MEASURES[name];
	const facts = {
		name,
		kind: { declared: dimension.replaceAll("-", " ") },
		amount: exampleAmount(dimension),
	};
	const more = [
		...needs,
		...may.map((each) => tellPhrase(message("explain/may-be-left-out", { name: each }), reader)),
	];
	return tellPhrase(
		more.length === 0
			? message("explain/measure", facts)
			: message("explain/measure-with", { ...facts, more: more.join(", ") }),
		reader,
	);
};
