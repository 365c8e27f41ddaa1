import type {
	Amount,
	CentralizerPattern,
	Condition,
	Deadline,
	Limit,
	Threshold,
} from "../catalog/limits/limit.ts";
import type { MeasureName } from "../catalog/limits/measures.ts";
import type { TopMethod } from "../catalog/limits/vocabulary.ts";
import type { Known } from "../cite/known.ts";
import { type Fact, type Message, message } from "../messages/message.ts";
import { practicallyEqual } from "../units/practically-equal.ts";
import { TOP_BY } from "./amount.ts";
import { operatorWords } from "./compare.ts";
import { spanWords } from "./deadline.ts";
import { placeWords } from "./distances.ts";
import { EVENT_WORDS } from "./events.ts";
import { MEASURE_CODE } from "./measures/index.ts";
import { listed, orListed } from "./reason.ts";

/*
 * A limit as its row has it, before any well: what a person lays beside the text of the rule. Its numbers are told as they
 * are written, in the unit of the rule, because a number that was converted cannot be found in a text.
 */

const asWritten = (known: Known): Fact =>
	(known.from.kind === "catalogue" || known.from.kind === "definition") && known.from.text
		? known.from.text
		: known;

const nounOf = (measure: MeasureName) => MEASURE_CODE[measure].noun;

const factorOn = ({ factor, of }: Extract<Amount, { kind: "times" }>): Fact => {
	const noun = message("rules/missing", { what: nounOf(of) });
	const whole = factor.dimension === "ratio" && practicallyEqual(factor.value, 1);
	return whole ? noun : message("rules/factor-on", { factor: asWritten(factor), noun });
};

/** An amount inside another, or inside words: in brackets where it is more than a number or a factor. */
const within = (amount: Amount): Fact =>
	["constant", "measure", "times"].includes(amount.kind)
		? amountInWords(amount)
		: { parts: ["(", amountInWords(amount), ")"] };

const amountInWords = (amount: Amount): Fact => {
	switch (amount.kind) {
		case "constant":
			return asWritten(amount.value);
		case "measure":
			return message("rules/missing", { what: nounOf(amount.of) });
		case "times":
			return factorOn(amount);
		case "greatest of":
		case "least of": {
			const facts = { count: amount.among.length, among: listed(amount.among.map(within)) };
			return message(amount.kind === "least of" ? "rules/least-of" : "rules/greatest-of", facts);
		}
		case "sum of":
			return {
				parts: amount.among.flatMap((each, i) => [
					...(i === 0 ? [] : [" ", message("rules/plus"), " "]),
					within(each),
				]),
			};
		case "clamp":
			return message("rules/held-between-and", {
				inside: within(amount.amount),
				from: within(amount.from),
				to: within(amount.to),
			});
		case "steps":
			return {
				parts: [
					...amount.steps.flatMap(({ end, including, amount: each }) => [
						message("rules/step-in-words", {
							amount: amountInWords(each),
							noun: nounOf(amount.by),
							operator: operatorWords(including ? "at most" : "less than"),
							end: asWritten(end),
						}),
						"; ",
					]),
					message("rules/step-beyond", { amount: amountInWords(amount.beyond) }),
				],
			};
		case "by method":
			return listed(
				(Object.entries(amount.cases) as [TopMethod, Amount][]).map(([method, each]) => ({
					parts: [amountInWords(each), " ", message("rules/for", { topBy: TOP_BY[method] })],
				})),
			);
	}
};

/** What else of a comparison is a number of the rule: the radius, the age of a sample, the part of the column. */
const besides = ({ zone, within: radius, after }: Threshold): readonly Message[] => [
	...(zone !== undefined && "height" in zone
		? [
				message(zone.kind === "bottom" ? "rules/of-the-bottom" : "rules/above-the-bottom", {
					height: within(zone.height),
				}),
			]
		: []),
	...(radius === undefined ? [] : [message("rules/within-radius", { radius: asWritten(radius) })]),
	...(after === undefined ? [] : [message("rules/so-long-after-placing", { after: asWritten(after) })]),
];

const comparison = (threshold: Threshold): Fact => {
	const { measure, operator, amount, about, curedAt } = threshold;
	return {
		parts: [
			message("rules/limit-on", {
				noun: nounOf(measure),
				operator: operatorWords(operator),
				amount: amountInWords(amount),
			}),
			...(about === undefined ? [] : [message("rules/limit-about", { about: asWritten(about) })]),
			...besides(threshold).flatMap((each) => [", ", each]),
			...(curedAt === undefined ? [] : [message("rules/cured-at", { curedAt: asWritten(curedAt) })]),
		],
	};
};

const deadlineInWords = ({ of, side, days, noSooner }: Deadline): Fact => {
	const spans = of.map(({ event, count, unit }) => ({
		parts: [spanWords({ count: count.value, unit, side, days }), " ", EVENT_WORDS[event]],
	}));
	const [only] = spans;
	return {
		parts: [
			spans.length === 1 && only !== undefined
				? only
				: message("rules/earliest-of", { among: listed(spans) }),
			...(noSooner === undefined
				? []
				: [
						message("rules/no-sooner-than", {
							span: spanWords({ count: noSooner.count.value, unit: noSooner.unit, side, days: "calendar" }),
						}),
					]),
		],
	};
};

const patternInWords = (pattern: CentralizerPattern): readonly Fact[] => {
	switch (pattern.kind) {
		case "bottom joints":
			return [message("rules/pattern-bottom", { joints: pattern.joints.value })];
		case "every joints":
			return [message("rules/pattern-every", { joints: pattern.joints.value })];
		case "first and then":
			return [
				message("rules/pattern-first", {
					first: asWritten(pattern.firstWithin),
					every: asWritten(pattern.thenEvery),
				}),
			];
		case "through protected water":
			return [];
	}
};

const conditionNumbers = (condition: Condition): readonly Fact[] => {
	switch (condition.kind) {
		case "threshold":
			return [comparison(condition.threshold)];
		case "dated":
			return [
				message("rules/where-dated", {
					event: EVENT_WORDS[condition.event],
					from: condition.from ?? "…",
					before: condition.before ?? "…",
				}),
			].filter(() => condition.from !== undefined || condition.before !== undefined);
		case "not":
			return conditionNumbers(condition.of);
		case "all":
		case "any":
			return condition.of.flatMap(conditionNumbers);
		default:
			return [];
	}
};

/**
 * The numbers of a limit, one fact each, as its row writes them: `wait on cement: at least 12 hr`.
 *
 * @returns nothing for a limit of words alone
 */
export const numbersOf = (limit: Limit): readonly Fact[] => {
	switch (limit.form) {
		case "threshold":
			return [comparison(limit)];
		case "deadline":
			return [deadlineInWords(limit)];
		case "pattern":
			return patternInWords(limit.pattern);
		case "evidence within":
			return [message("rules/within-of", { radius: asWritten(limit.radius), place: placeWords(limit.of) })];
		case "samples within": {
			const { radius, of, before, months, days } = limit;
			const unit = months === undefined ? "days" : "months";
			const count = (months ?? days)?.value;
			return [
				message("rules/within-of", { radius: asWritten(radius), place: placeWords(of) }),
				...(count === undefined
					? []
					: [
							{
								parts: [
									spanWords({ count, unit, side: "before", days: "calendar" }),
									" ",
									EVENT_WORDS[before],
								],
							},
						]),
			];
		}
		case "all of":
			return limit.parts.flatMap(numbersOf);
		case "any of": {
			const ways = limit.parts.map(numbersOf).filter((numbers) => numbers.length > 0);
			return ways.length === 0 ? [] : [orListed(ways.map(listed))];
		}
		case "if": {
			const where = conditionNumbers(limit.condition);
			const numbers = numbersOf(limit.limit);
			return where.length === 0 || numbers.length === 0
				? [...where, ...numbers]
				: [message("rules/where-so", { what: listed(numbers), where: listed(where) })];
		}
		default:
			return [];
	}
};
