import type { Known } from "../../cite/known.ts";
import type { Verdict } from "../../document/verdict.ts";
import { isOpen } from "../../rules/finding.ts";
import type { PaperContext } from "../context.ts";
import { listAt } from "../findings-for.ts";
import { ownWords } from "../own-words.ts";
import { asGiven } from "../parts/part.ts";
import { about, say } from "./say.ts";

/** Words about the other wells near this one: how near each comes, and what the verdicts say of it. */
export const otherWellWords = (context: PaperContext): Record<string, unknown> => {
	const { well, results, judgement, pad } = context;
	const own = new Set(pad?.wells.map((each) => each.well.identity.name));
	const verdict = (check: string, name: string): Verdict | undefined =>
		judgement.findings.find((each) => each.check === check && each.subject === name)?.verdict;
	const bores = well.offsetWells
		.filter(({ name }) => !own.has(name))
		.map(({ id, name, status }) => {
			const found = results.isolation.offset_wells.find((each) => each.id === id);
			const [apart, reach] = [verdict("separation-factor", name), verdict("fracture-reach", name)];
			const unknown = found?.in_space === undefined;
			return {
				name,
				status: asGiven(context, status),
				unknown,
				distance: about(context, found?.in_space),
				distance_exact: say(context, found?.in_space),
				at_depth: about(context, below(found?.nearest_in_space?.below_ground)),
				ends_above: about(context, positive(found?.above_top_perforation)),
				factor: say(context, found?.separation_factor),
				too_near: apart === "not met" || apart === "needs judgement",
				vague: !unknown && apart === "cannot tell",
				reached: reach === "not met" || reach === "needs judgement",
				clear: reach === "met",
				reach_unknown: !unknown && reach === "cannot tell",
				warns: [apart, reach].some(
					(each) => each === "needs judgement" || (each !== undefined && isOpen(each)),
				),
			};
		});
	const searched = hasNoOtherWells(context);
	return {
		no_other_wells: searched,
		other_wells_told: searched || bores.length > 0,
		faults_answered: ownWords(context, "faults") !== undefined,
		other_bores: bores,
		other_bores_warn: bores.filter(({ warns }) => warns),
		old_wells_told: searched || well.offsetWells.some((entry) => evidenceOf(entry) !== ""),
		evidence_of_bores: well.offsetWells.flatMap((entry) => {
			const evidence = evidenceOf(entry);
			return evidence === "" ? [] : [{ name: entry.name, status: asGiven(context, entry.status), evidence }];
		}),
	};
};

/**
 * Whether the area was searched for neighbors and no other well found; an empty list alone says nothing. Counted in the
 * definition as written: a well that is kept from these readers is still there.
 */
export const hasNoOtherWells = ({ well, written }: PaperContext): boolean =>
	well.site.neighbors_complete === true && listAt(written, ["site", "offset_wells"]).length === 0;

/** What the state of another well rests on: its record, and each barrier with what shows it. */
export const evidenceOf = ({
	evidence,
	barriers,
}: {
	readonly evidence?: string | undefined;
	readonly barriers?: readonly { readonly what: string; readonly shown_by?: string }[] | undefined;
}): string =>
	[
		evidence,
		...(barriers ?? []).map(({ what, shown_by }) =>
			// What shows it may be kept from these readers.
			shown_by === undefined ? what : `${what} (${shown_by})`,
		),
	]
		.filter((part) => part !== undefined)
		.join("; ");

/** A well that ends above the openings; one as deep as they are has nothing to tell here. */
const positive = (above: Known<"offset"> | undefined): Known<"offset"> | undefined =>
	above !== undefined && above.value > ABOVE ? above : undefined;

/** Below this a well counts as deep as the openings [ft]. */
const ABOVE = 100;

/** At the very top there is no depth worth telling. */
const below = (depth: Known<"depth-below-ground"> | undefined): Known<"depth-below-ground"> | undefined =>
	depth !== undefined && depth.value > 0 ? depth : undefined;
