import type { LoadCaseResults, Results } from "../calc/results.ts";
import type { Known } from "../cite/known.ts";

/*
 * What governs, for the first page and for the sentences that sections open with.
 */

/** Load cases that have a factor, the nearest to the factor required first; of several strings or of one. */
export const nearestToFactor = <T>(
	cases: readonly T[],
	loadOf: (each: T) => LoadCaseResults,
): readonly T[] => {
	const ratio = (each: T): number => {
		const { least_factor, required } = loadOf(each);
		return (least_factor?.value ?? Number.POSITIVE_INFINITY) / required.value;
	};
	return cases
		.filter((each) => loadOf(each).least_factor !== undefined)
		.toSorted((a, b) => ratio(a) - ratio(b));
};

/** Two decimals, or three for a factor such as 1.125. */
export const factorStyle = ({ value }: Pick<Known, "value">): { readonly decimals: number } => ({
	decimals: Math.abs(value * 100 - Math.round(value * 100)) < 1e-9 ? 2 : 3,
});

/** The other well that comes nearest, hole to hole; none where no path is known. */
export const nearestOffsetWell = ({
	isolation,
}: Results): Results["isolation"]["offset_wells"][number] | undefined =>
	isolation.offset_wells
		.filter(({ in_space }) => in_space !== undefined)
		.toSorted((a, b) => (a.in_space?.value ?? 0) - (b.in_space?.value ?? 0))[0];
