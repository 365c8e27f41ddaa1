import type { CentralizerPattern, LimitLeaf } from "../../catalog/limits/limit.ts";
import type { Known } from "../../cite/known.ts";
import { message } from "../../messages/message.ts";
import { practicallyEqual } from "../../units/practically-equal.ts";
import type { CentralizerRun } from "../../well/well.ts";
import { type Case, missingAt, missingOf } from "../case.ts";
import { jointsLength } from "../formulas.ts";
import { jointOf, stringOf } from "../measures/shoe.ts";
import { allOf, cannotTell, doesNotApply, met, notMet, type Outcome } from "../outcome.ts";
import type { Reason } from "../reason.ts";

interface Stretch {
	readonly top: number;
	readonly bottom: number;
}

/**
 * Where runs first leave a stretch bare for longer than the slack, from the top down.
 *
 * @param slack  distance that may lie between two runs, or between a run and an end of the stretch [ft]
 * @param whole  whether a gap as long as the slack is one already
 */
const firstGap = (
	runs: readonly Stretch[],
	{ top, bottom }: Stretch,
	slack: number,
	whole = false,
): Stretch | undefined => {
	const sorted = [...runs].sort((a, b) => a.top - b.top);
	const longer = (gap: number) => (practicallyEqual(gap, slack) ? whole : gap > slack);
	let reached = top;
	for (const run of sorted) {
		if (run.bottom <= reached) continue;
		if (longer(run.top - reached)) return { top: reached, bottom: Math.min(run.top, bottom) };
		reached = Math.max(reached, run.bottom);
		if (reached >= bottom) return undefined;
	}
	return longer(bottom - reached) ? { top: reached, bottom } : undefined;
};

interface Centralized {
	readonly the: Case;
	readonly joint: Known<"length">;
	readonly runs: readonly CentralizerRun[];
	readonly shoe: Known<"measured-depth">;
	readonly top: Known<"measured-depth">;
}

const stretchOf = ({ top, bottom }: CentralizerRun): Stretch => ({ top: top.value, bottom: bottom.value });
const spacingOf = (run: CentralizerRun, joint: Known<"length">) =>
	jointsLength.of({ joints: run.everyJoints, joint });

const depth = (value: number, like: Known<"measured-depth">): Known => ({
	...like,
	value: value as typeof like.value,
});
const gapWords = (gap: Stretch, like: Known<"measured-depth">): Reason => [
	message("rules/between-and", { depth: depth(gap.top, like), depth2: depth(gap.bottom, like) }),
];

const bottomJoints = (
	{ joint, runs, shoe }: Centralized,
	{ joints }: Extract<CentralizerPattern, { kind: "bottom joints" }>,
): Outcome => {
	const height = jointsLength.of({ joints, joint });
	const every = runs.filter(({ everyJoints }) => everyJoints.value <= 1).map(stretchOf);
	// One centralizer may sit anywhere on its joint, so less than a joint's length may stay bare at either end.
	const gap = firstGap(every, { top: shoe.value - height.value, bottom: shoe.value }, joint.value, true);
	const lowest: Reason =
		joints.value > 1 ? [message("rules/each-lowest-joints", { joints })] : [message("rules/lowest-joint")];
	return gap === undefined
		? met(message("rules/carries-centralizer", { lowest: { parts: lowest } }))
		: notMet(
				message("rules/should-carry-centralizer-and-runs-with-one", {
					lowest: { parts: lowest },
					gapWords: { parts: gapWords(gap, shoe) },
				}),
			);
};

const everyJoints = (
	{ joint, runs, shoe, top }: Centralized,
	{ joints }: Extract<CentralizerPattern, { kind: "every joints" }>,
): Outcome => {
	const close = runs.filter((run) => run.everyJoints.value <= joints.value).map(stretchOf);
	const slack = jointsLength.of({ joints, joint });
	const gap = firstGap(close, { top: top.value, bottom: shoe.value }, slack.value);
	return gap === undefined
		? met(message("rules/centralizers-stand-on-every-joints-or-closer", { joints }))
		: notMet(
				message("rules/no-centralizers-stand-on-every-joints-or", {
					joints,
					gapWords: { parts: gapWords(gap, shoe) },
				}),
			);
};

const firstAndThen = (
	{ joint, runs, shoe, top }: Centralized,
	{ firstWithin, thenEvery }: Extract<CentralizerPattern, { kind: "first and then" }>,
): Outcome => {
	const lowest = Math.max(...runs.map(({ bottom }) => bottom.value));
	const distance = shoe.value - lowest;
	const near = distance <= firstWithin.value || practicallyEqual(distance, firstWithin.value);
	const close = runs.filter((run) => {
		const spacing = spacingOf(run, joint).value;
		return spacing <= thenEvery.value || practicallyEqual(spacing, thenEvery.value);
	});
	const gap = firstGap(close.map(stretchOf), { top: top.value, bottom: lowest }, thenEvery.value);
	return allOf([
		near
			? met(message("rules/lowest-centralizer-is-within-shoe", { firstWithin }))
			: notMet(message("rules/lowest-centralizer-is-not-within-shoe", { firstWithin })),
		gap === undefined
			? met(message("rules/above-it-they-are-apart-or-closer", { thenEvery }))
			: notMet(
					message("rules/above-it-they-are-further-than-apart", {
						thenEvery,
						gapWords: { parts: gapWords(gap, shoe) },
					}),
				),
	]);
};

/** Water zones within the protected water, on the hole's own axis. */
const throughWater = ({ the, runs, joint, shoe }: Centralized): Outcome => {
	const base = the.results.geology.protected_water_base?.tvd.value;
	if (base === undefined)
		return cannotTell([
			missingAt(message("rules/base-protected-water"), "geology", "protected_water", "base"),
		]);
	const zones = the.results.geology.water.filter(({ top }) => top.tvd.value < base);
	if (zones.length === 0)
		return cannotTell([missingAt(message("rules/water-zones-within-protected-water"), "geology", "water")]);
	const slack = Math.max(...runs.map((run) => spacingOf(run, joint).value));
	return allOf(
		zones.map(({ name, top, base: bottom }) => {
			if (top.md === undefined) return doesNotApply(message("rules/hole-does-not-reach", { name }));
			if (top.md.value >= shoe.value) return doesNotApply(message("rules/lies-below-shoe", { name }));
			const low = Math.min(bottom.md?.value ?? shoe.value, shoe.value);
			const gap = firstGap(runs.map(stretchOf), { top: top.md.value, bottom: low }, slack);
			return gap === undefined
				? met(message("rules/centralizers-stand-through", { name }))
				: notMet(
						message("rules/no-centralizers-stand-in", { name, gapWords: { parts: gapWords(gap, shoe) } }),
					);
		}),
	);
};

/** A pattern of centralizers against the runs of a string. */
export const centralizerPattern = (
	the: Case,
	{ pattern }: Extract<LimitLeaf, { form: "pattern" }>,
): Outcome => {
	const string = stringOf(the);
	const joint = jointOf(string);
	const missing = [
		...(string.centralizers.length === 0 ? [missingOf(the, string, "centralizers", "centralizers")] : []),
		...(joint === undefined
			? [missingOf(the, string, message("rules/joint-length"), "pipe", 0, "joint")]
			: []),
	];
	if (joint === undefined || missing.length > 0) return cannotTell(missing);
	const centralized = { the, joint, runs: string.centralizers, shoe: string.shoe, top: string.top };
	switch (pattern.kind) {
		case "bottom joints":
			return bottomJoints(centralized, pattern);
		case "every joints":
			return everyJoints(centralized, pattern);
		case "first and then":
			return firstAndThen(centralized, pattern);
		case "through protected water":
			return throughWater(centralized);
	}
};
