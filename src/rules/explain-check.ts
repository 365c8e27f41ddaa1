import { wrongSide } from "../catalog/limits/protective-side.ts";
import { exampleAmount } from "../catalog/limits/read-amount.ts";
import {
	CHECK_LIMITS,
	type CheckId,
	FACTS,
	MEASURES,
	type MeasureEntry,
	STRING_FACTS,
	type SubjectKind,
} from "../catalog/limits/vocabulary.ts";

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
	judgement: "{ question: A geologist has to say whether the bed is competent. }",
};

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

/** What a check is made on, its measures with their kinds of value, the forms it takes, and a row to begin from. */
export const limitsOfCheck = (id: CheckId): readonly string[] => {
	const { subject, forms, measures } = CHECK_LIMITS[id];
	const applies = APPLIES[subject];
	const example = thresholdOf(id) ?? FORM_EXAMPLES[forms[0] ?? ""] ?? "{ question: … }";
	return [
		`made on   the ${subject}${applies === undefined ? "" : `; the row says which: applies_to: ${applies}`}`,
		...(measures.length === 0
			? []
			: [
					"measures",
					...measures.map((name) => {
						const { dimension, needs = [], may = [] }: MeasureEntry = MEASURES[name];
						const also = [...needs, ...may.map((each) => `${each} (may be left out)`)];
						return `  ${name}: ${dimension.replaceAll("-", " ")}, such as ${exampleAmount(dimension)}${also.length === 0 ? "" : `; with ${also.join(", ")}`}`;
					}),
				]),
		`forms     ${forms.map((form) => FORM_EXAMPLES[form] ?? "{ measure, at_least | more_than | at_most | less_than, about }").join(" · ")}`,
		"          and joined: { all_of: [ … ] }, { any_of: [ … ] }, { if: …, require: … }",
		...(measures.length === 0
			? []
			: [
					"amounts   a quantity, { of }, { times, of }, { greatest_of }, { least_of }, { sum_of }, { clamp, from, to }, { by, steps }, { by_method }",
				]),
		`when, if  ${factsOf(subject).join(", ")};`,
		"          { measure, at_least … }, { county }, { field }, { event, from | before }, { not }, { all }, { any }",
		"a row to begin from",
		`  - id: us-tx.mine.${id}`,
		`    check: ${id}`,
		...(applies === undefined ? [] : [`    applies_to: ${applies}`]),
		`    limit: ${example}`,
		"    requirement: One sentence in your own words.",
		"    citation: The section and its paragraph",
		"    standing: not compared",
		"    how_known: { way: read in part, of: what was read }",
		"    text_as_of: unknown",
		"    in_force: { from: unknown }",
	];
};
