import { type CausesOf, followed } from "./causes.ts";
import { type ChangedInput, changedInputs } from "./changed-inputs.ts";
import {
	type ChangedDay,
	type ChangedGap,
	type ChangedVerdict,
	changedDays,
	changedGaps,
	changedVerdicts,
} from "./changed-verdicts.ts";
import { type MovedResults, movedResults } from "./moved-results.ts";
import type { Sides } from "./side.ts";

/** What a revision changed, and what followed from it. */
export interface Changes extends Sides {
	readonly inputs: readonly ChangedInput[];
	readonly results: MovedResults;
	readonly verdicts: readonly ChangedVerdict[];
	readonly gaps: readonly ChangedGap[];
	readonly days: readonly ChangedDay[];
}

/**
 * Lays two states of a well side by side: two revisions, a plan and its record. Nothing is worked anew; each side is
 * what was found of it, and each value's own inputs say what moved it.
 */
export const compare = (sides: Sides): Changes => {
	const inputs = changedInputs(sides);
	const causes = { before: followed(inputs, "before"), after: followed(inputs, "after") };
	return {
		...sides,
		inputs,
		results: movedResults(sides, causes, choicesAmong(inputs, sides, causes)),
		verdicts: changedVerdicts(sides),
		gaps: changedGaps(sides),
		days: changedDays(sides),
	};
};

/** Changed inputs that no value of either side rests on: words and counts that steer what is calculated. */
const choicesAmong = (
	inputs: readonly ChangedInput[],
	{ before, after }: Sides,
	causes: { readonly before: CausesOf; readonly after: CausesOf },
): readonly number[] => {
	const reached = new Set<number>();
	for (const value of before.index.byKey.values()) for (const i of causes.before(value)) reached.add(i);
	for (const value of after.index.byKey.values()) for (const i of causes.after(value)) reached.add(i);
	return inputs.flatMap((input, i) => (reached.has(i) || isRemark(input) ? [] : [i]));
};

/** Entries that no result can rest on, and that every revision changes. */
const isRemark = (input: ChangedInput): boolean => {
	if (input.what !== "entry") return false;
	const [block, entry] = input.after ?? input.before ?? [];
	return block === "community" || block === "agency" || (block === "well" && entry !== "spud");
};
