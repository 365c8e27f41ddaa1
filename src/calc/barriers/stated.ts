import type { Well } from "../../well/well.ts";
import { maybe } from "../gaps.ts";
import type { BarrierElementResults, BarrierPhase } from "../results.ts";

interface Phase {
	readonly phase: BarrierPhase;
	readonly of?: string;
	readonly primary: readonly BarrierElementResults[];
	readonly secondary: readonly BarrierElementResults[];
}

type Stated = Well["barriers"][number];

/**
 * A phase with what `well_barriers` states of it: an element that is already there takes on depth, test, date and who
 * verified it; another is added. What is stated of producing holds shut in as well, until it is stated for that.
 */
export const withStated = <P extends Phase>(well: Well, derived: P): P => {
	const own = well.barriers.filter(
		({ phase, of }) => phase === derived.phase && (of === undefined || of === derived.of),
	);
	const lent = derived.phase === "shut in" ? well.barriers.filter(({ phase }) => phase === "producing") : [];
	const of = (barrier: Stated["barrier"]): readonly BarrierElementResults[] =>
		[...lent, ...own]
			.filter((stated) => stated.barrier === barrier)
			.reduce<readonly BarrierElementResults[]>(taken, derived[barrier]);
	return { ...derived, primary: of("primary"), secondary: of("secondary") };
};

const taken = (
	elements: readonly BarrierElementResults[],
	stated: Stated,
): readonly BarrierElementResults[] => {
	const there = elements.findIndex(({ element }) => element === stated.element);
	const [before] = there < 0 ? [] : [elements[there]];
	const after: BarrierElementResults = {
		element: stated.element,
		...before,
		...maybe("depth", stated.depth ?? before?.depth),
		...maybe("test", stated.test ?? before?.test),
		tested: (before?.tested ?? false) || stated.date !== undefined,
		...maybe("date", stated.date ?? before?.date),
		...maybe("verified_by", stated.verified_by ?? before?.verified_by),
		state:
			stated.counted === false
				? "taken out"
				: before === undefined || before.state === "not stated"
					? "holds"
					: before.state,
	};
	return there < 0 ? [...elements, after] : elements.with(there, after);
};
