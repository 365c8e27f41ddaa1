import type { Known } from "../cite/known.ts";
import type { Verdict } from "../document/verdict.ts";
import { message, type Said } from "../messages/message.ts";
import { ENGLISH_READER, tellSaid } from "../messages/print.ts";
import type { Comparison, MissingInput } from "./finding.ts";
import { joined, type Reason, say } from "./reason.ts";

/** What one limit comes to on one thing, before its citation is put beside it. */
export interface Outcome {
	readonly verdict: Verdict;
	readonly reason: Reason;
	readonly required?: Known;
	readonly measured?: Known;
	readonly comparison?: Comparison;
	/** What was held against the limit, a noun. */
	readonly quantity?: Said;
	readonly missing: readonly MissingInput[];
}

export const met = (...reason: Reason): Outcome => ({ verdict: "met", reason, missing: [] });
export const notMet = (...reason: Reason): Outcome => ({ verdict: "not met", reason, missing: [] });
export const doesNotApply = (...reason: Reason): Outcome => ({
	verdict: "does not apply",
	reason,
	missing: [],
});
export const needsJudgement = (...reason: Reason): Outcome => ({
	verdict: "needs judgement",
	reason,
	missing: [],
});

/** Names every missing input; `because` replaces the sentence made from them. */
export const cannotTell = (missing: readonly MissingInput[], ...because: Reason): Outcome => ({
	verdict: "cannot tell",
	reason: because.length > 0 ? because : notGiven(missing),
	missing,
});

const MOST_NAMED = 3;

/** `The wait on cement is not given.` A long list is counted: the finding carries it beside. */
export const notGiven = (missing: readonly MissingInput[]): Reason => {
	const told = new Map(missing.map(({ what }) => [tellSaid(what, ENGLISH_READER), what]));
	const [first, ...rest] = told.values();
	if (first === undefined) return [message("rules/need-not-given")];
	const count = rest.length + 1;
	if (count > MOST_NAMED) return [message("rules/many-not-given", { count, first })];
	return [message("rules/not-given", { count, what: { list: [first, ...rest], joined: "and" } })];
};

type Rank = Readonly<Record<Verdict, number>>;
/** Which part decides: the lowest rank. A part that does not apply decides only where no other does. */
const ALL: Rank = rank("not met", "cannot tell", "needs judgement", "met", "does not apply");
const ANY: Rank = rank("met", "needs judgement", "cannot tell", "not met", "does not apply");

function rank(...verdicts: readonly Verdict[]): Rank {
	return Object.fromEntries(verdicts.map((verdict, i) => [verdict, i])) as Rank;
}

const distinct = (missing: readonly MissingInput[]): readonly MissingInput[] => [
	...new Map(missing.map((each) => [JSON.stringify(each), each])).values(),
];

/** Parts that only lack inputs are said in one sentence. */
const reasonOf = (parts: readonly Outcome[]): Reason => {
	const lacking = parts.every(
		({ missing, reason }) => missing.length > 0 && say(reason) === say(notGiven(missing)),
	);
	return lacking
		? notGiven(parts.flatMap(({ missing }) => missing))
		: joined(parts.map(({ reason }) => reason));
};

const combine = (parts: readonly Outcome[], order: Rank): Outcome => {
	const [first, ...rest] = parts;
	if (first === undefined) return doesNotApply(message("rules/nothing-is-asked"));
	const verdict = rest.reduce(
		(best, part) => (order[part.verdict] < order[best] ? part.verdict : best),
		first.verdict,
	);
	const deciding = parts.filter((part) => part.verdict === verdict);
	const shown = deciding.find((part) => part.required !== undefined);
	return {
		verdict,
		reason: reasonOf(deciding),
		missing: distinct(deciding.flatMap((part) => part.missing)),
		...(shown?.required === undefined ? {} : { required: shown.required }),
		...(shown?.measured === undefined ? {} : { measured: shown.measured }),
		...(shown?.comparison === undefined ? {} : { comparison: shown.comparison }),
		...(shown?.quantity === undefined ? {} : { quantity: shown.quantity }),
	};
};

/** Every part is asked: one that fails fails the whole, and one that cannot be told keeps the whole from being told. */
export const allOf = (parts: readonly Outcome[]): Outcome => combine(parts, ALL);

/** One part is enough. */
export const anyOf = (parts: readonly Outcome[]): Outcome => {
	const whole = combine(parts, ANY);
	// One way that holds is enough to name.
	const way = whole.verdict === "met" ? parts.find((part) => part.verdict === "met") : undefined;
	return way ?? whole;
};
