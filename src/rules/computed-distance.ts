import type { MeasuredFrom } from "../catalog/limits/vocabulary.ts";
import type { Known } from "../cite/known.ts";
import type { Case } from "./case.ts";

/**
 * A distance computed from coordinates, of a neighbor or an offset well: from the wellhead or from the well path. There are
 * no coordinates of a pad's edge or of equipment, so from those only a survey tells.
 */
export const computedDistance = (
	{ results }: Pick<Case, "results">,
	{ id }: { readonly id: string },
	from: MeasuredFrom,
): Known<"distance"> | undefined => {
	const { neighbors, offset_wells } = results.site;
	const place = [...neighbors, ...offset_wells].find((each) => each.id === id);
	switch (from) {
		case "wellhead":
			return place?.from_wellhead;
		case "wellbore":
			// The path of a hole that is never kicked off is the point it starts from, whatever north is.
			return (
				place?.from_path ?? (results.trajectory.kickoff === undefined ? place?.from_wellhead : undefined)
			);
		default:
			return undefined;
	}
};
