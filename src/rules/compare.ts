import type { Operator, Threshold } from "../catalog/limits/limit.ts";
import { MEASURES } from "../catalog/limits/measures.ts";
import type { Known } from "../cite/known.ts";
import { message, type Said } from "../messages/message.ts";
import { practicallyEqual } from "../units/practically-equal.ts";
import { worth } from "./amount.ts";
import type { Case } from "./case.ts";
import { holds } from "./holds.ts";
import { MEASURE_CODE } from "./measures/index.ts";
import type { Parameters, Reading } from "./measures/reading.ts";
import { cannotTell, doesNotApply, notGiven, type Outcome } from "./outcome.ts";
import type { Reason } from "./reason.ts";

const REQUIRED = {
	"at least": "rules/at-least-required",
	"more than": "rules/more-than-required",
	"at most": "rules/at-most-allowed",
	"less than": "rules/less-than-required",
} as const satisfies Readonly<Record<Operator, string>>;

const OPERATORS: Readonly<Record<Operator, Said>> = {
	"at least": message("rules/operator-at-least"),
	"more than": message("rules/operator-more-than"),
	"at most": message("rules/operator-at-most"),
	"less than": message("rules/operator-less-than"),
};

export const operatorWords = (operator: Operator): Said => OPERATORS[operator];

/** Below or above nothing: the clause says on which side a value lies, so that a limit of zero needs no number. */
const isNone = (operator: Operator, required: Known): boolean =>
	(operator === "at most" || operator === "at least") &&
	required.dimension !== "temperature" &&
	required.value === 0;

/** At least one of what is either there or not: the clause says which. */
const isOne = (operator: Operator, required: Known): boolean =>
	operator === "at least" && required.dimension === "count" && required.value === 1;

/** Of what lies on the wrong side of its place: "at least 0 ft" would read as met. */
const onTheOtherSide = {
	above: { none: "rules/has-to-be-at-or-above", some: "rules/at-least-above-required" },
	below: { none: "rules/has-to-be-at-or-below", some: "rules/at-least-below-required" },
} as const;

const requirementOf = (
	operator: Operator,
	required: Known,
	how: Reason,
	measured: Known,
	side: "above" | "below" | undefined,
): Reason => {
	if (side !== undefined && measured.value < 0 && operator === "at least" && how.length === 0) {
		const { none, some } = onTheOtherSide[side];
		return [
			required.value === 0 ? message(none) : message(some, { limit: { told: required, from: measured } }),
		];
	}
	// What is known only to lie within bounds has no side to name: the limit of nothing is told by its side alone.
	if (side !== undefined && operator === "at least" && required.value === 0)
		return [message(onTheOtherSide[side].none)];
	if (isNone(operator, required)) return [message("rules/none-is-allowed")];
	const limit = message(REQUIRED[operator], { limit: { told: required, from: measured } });
	return [limit, ...(how.length === 0 ? [] : [": ", ...how])];
};

/** A zone of cement with its height worked out for the string. */
const withHeight = (the: Case, threshold: Threshold): Parameters | Outcome => {
	const { zone } = threshold;
	if (zone === undefined || !("height" in zone)) return threshold;
	const height = worth(the, zone.height, "offset");
	if ("value" in height) return { ...threshold, height: height.value };
	return "absent" in height ? doesNotApply(...height.absent, ".") : cannotTell(height.missing);
};

const atLeastOf = (bound: Known): Reason => [message("rules/at-least", { bound })];
const atMostOf = (bound: Known): Reason => [message("rules/at-most", { bound })];

/** Bounds decide where they can; a bound that does not reach the limit leaves the question open. */
const fromBounds = (
	reading: Extract<Reading, { state: "bounded" }>,
	operator: Operator,
	limit: Known,
): { readonly verdict: "met" | "not met"; readonly bound: Known; readonly words: Reason } | undefined => {
	const { atLeast, atMost } = reading;
	const upward = operator === "at least" || operator === "more than";
	const proves = upward ? atLeast : atMost;
	const refutes = upward ? atMost : atLeast;
	if (proves && holds(proves.value, operator, limit.value))
		return { verdict: "met", bound: proves, words: upward ? atLeastOf(proves) : atMostOf(proves) };
	if (refutes && !holds(refutes.value, operator, limit.value))
		return { verdict: "not met", bound: refutes, words: upward ? atMostOf(refutes) : atLeastOf(refutes) };
	return undefined;
};

const undecided = (
	reading: Extract<Reading, { state: "bounded" }>,
	clause: (value: Known, words: Reason) => Reason,
	requirement: Reason,
): Reason => {
	const { atLeast, atMost } = reading;
	const bound = atLeast ?? atMost;
	if (bound === undefined) return notGiven(reading.missing);
	const words = clause(
		bound,
		atLeast && atMost
			? [message("rules/between", { low: atLeast, high: atMost })]
			: atLeast
				? atLeastOf(bound)
				: atMostOf(bound),
	);
	return [
		message("rules/as-far-as-tests-given-show", {
			words: { parts: words },
			requirement: { parts: requirement },
		}),
	];
};

/** Whether a value that fails does so by no more than the band that the row states for the rule's "about". */
const inBand = ({ about, operator }: Threshold, value: Known, limit: Known): boolean => {
	if (about === undefined || holds(value.value, operator, limit.value)) return false;
	const short = Math.abs(value.value - limit.value);
	return short < about.value || practicallyEqual(short, about.value);
};

/**
 * One comparison. The sentence carries both numbers and how the required one came about.
 *
 * @returns `cannot tell` where the measure or the limit lacks an input, `does not apply` where it has no meaning here
 */
export const compare = (the: Case, threshold: Threshold): Outcome => {
	const { measure, operator, amount } = threshold;
	const code = MEASURE_CODE[measure];
	const parameters = withHeight(the, threshold);
	if ("verdict" in parameters) return parameters;
	const reading = code.read(the, parameters);
	if (reading.state === "absent") return doesNotApply(...reading.because, ".");
	const limit = worth(the, amount, MEASURES[measure].dimension);
	if ("absent" in limit) return doesNotApply(...limit.absent, ".");
	if ("missing" in limit) {
		const missing = [...limit.missing, ...(reading.state === "missing" ? reading.missing : [])];
		return cannotTell(missing, ...(limit.because === undefined ? [] : [...limit.because, "."]));
	}
	if (reading.state === "missing")
		return {
			...cannotTell(reading.missing, ...(reading.because ?? [])),
			required: limit.value,
			comparison: operator,
		};
	const clause = (value: Known, instead?: Reason): Reason => {
		const told = { told: value, from: limit.value };
		const part = instead === undefined ? told : { parts: instead };
		return code.say({ value, part, size: { ...told, magnitude: true } }, the, parameters);
	};
	const common = { required: limit.value, comparison: operator, quantity: code.noun };
	if (reading.state === "bounded") {
		const decided = fromBounds(reading, operator, limit.value);
		if (decided === undefined) {
			const open = undecided(
				reading,
				clause,
				requirementOf(operator, limit.value, limit.how, limit.value, code.side),
			);
			return { ...cannotTell(reading.missing, ...open), ...common };
		}
		const requirement = requirementOf(operator, limit.value, limit.how, decided.bound, code.side);
		return {
			...common,
			verdict: decided.verdict,
			measured: decided.bound,
			reason: [...clause(decided.bound, decided.words), "; ", ...requirement, "."],
			missing: [],
		};
	}
	const { value, note = [] } = reading;
	const isMet = holds(value.value, operator, limit.value.value);
	const selfEvident = isNone(operator, limit.value) || isOne(operator, limit.value);
	const said: Reason = [
		...clause(value),
		...note,
		...(isMet && selfEvident
			? []
			: ["; ", ...requirementOf(operator, limit.value, limit.how, value, code.side)]),
	];
	const within = inBand(threshold, value, limit.value);
	return {
		...common,
		verdict: isMet ? "met" : within ? "needs judgement" : "not met",
		measured: value,
		reason:
			within && threshold.about
				? [
						message("rules/rule-says-about-shortfall-not-more-than", {
							said: { parts: said },
							about: threshold.about,
						}),
					]
				: [...said, "."],
		missing: [],
	};
};
