import type { Known } from "../../cite/known.ts";
import type { CasingResults, PlacementResults } from "../results.ts";
import type { JobContext } from "./cement-results.ts";
import { factoredYield, leastLimit } from "./placement.ts";

/** What is rated, as rated: pipe, couplings and the wellhead. Plugs, floats and cementing heads have no rating here. */
export const bumpWeakest = ({ well }: JobContext, casing: CasingResults): Known<"pressure"> =>
	leastLimit.of({
		p_i: [
			casing.least_internal_yield,
			...(well.wellhead?.drilling === undefined ? [] : [well.wellhead.drilling]),
		],
	});

/** What the string, its test and the wellhead are good for when the plug is bumped. */
export const bumpLimit = (
	{ well, string }: JobContext,
	casing: CasingResults,
): PlacementResults["bump_limit"] => {
	const limits = [
		{
			element: "casing",
			allowed: factoredYield.of({
				p_yield: casing.least_internal_yield,
				DF: string.designFactors.burst,
			}),
		},
		...(string.pressureTest === undefined
			? []
			: [{ element: "casing test", allowed: string.pressureTest.pressure }]),
		...(well.wellhead?.drilling === undefined
			? []
			: [{ element: "wellhead", allowed: well.wellhead.drilling }]),
	];
	const allowed = leastLimit.of({ p_i: limits.map((limit) => limit.allowed) });
	const governs = limits.find((limit) => limit.allowed.value === allowed.value);
	return governs && { element: governs.element, allowed };
};
