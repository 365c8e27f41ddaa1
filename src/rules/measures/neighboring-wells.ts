import type { Case } from "../case.ts";
import { missingAt } from "../case.ts";
import type { MissingInput } from "../finding.ts";
import { absent, known, lacking, type Measure } from "./reading.ts";

/** The other well a rule is asked of, with what was worked out of it, and where it is written. */
export const offsetOf = ({ subject, well, results }: Case) => {
	if (subject.kind !== "offset well") throw new TypeError("the rule is not asked of an offset well");
	const { offset } = subject;
	return {
		entry: offset,
		found: results.isolation.offset_wells.find(({ id }) => id === offset.id),
		placed: results.site.offset_wells.find(({ id }) => id === offset.id),
		at: ["site", "offset_wells", well.offsetWells.indexOf(offset)] as const,
	};
};

/** What keeps a pair from being judged in space, first things first; nothing where both paths are known. */
export const pathMissing = (the: Case): MissingInput | undefined => {
	const { entry, placed, at } = offsetOf(the);
	if (placed?.path !== undefined) return undefined;
	if (the.well.site.surface_location === undefined)
		return missingAt("surface location of this well", "site", "surface_location");
	if (entry.latitude === undefined || entry.longitude === undefined)
		return missingAt(`place of ${entry.name}`, ...at);
	return missingAt(`path of ${entry.name}`, ...at, "path");
};

export const neighboringWellMeasures = {
	"separation factor": {
		noun: "separation factor",
		read: (the) => {
			const { entry, found, at } = offsetOf(the);
			const path = pathMissing(the);
			if (path !== undefined) return lacking(path);
			const missing =
				the.well.trajectory.uncertainty === undefined
					? missingAt("survey uncertainty of this well", "trajectory", "uncertainty")
					: missingAt(`survey uncertainty of ${entry.name}`, ...at, "path", "uncertainty");
			return known(found?.separation_factor, missing);
		},
		say: ({ part }, the) => {
			const { entry, found } = offsetOf(the);
			return [
				`the separation factor to ${entry.name} is `,
				part,
				...(found?.separation_at === undefined || found.separation_distance === undefined
					? []
					: [
							", least at ",
							found.separation_at.md,
							" where the two are ",
							found.separation_distance,
							" apart",
						]),
			];
		},
	},
	"survey interval in build and lateral": {
		noun: "longest survey interval in the build and the lateral",
		read: ({ results }) =>
			results.trajectory.longest_interval === undefined
				? absent("the hole is not surveyed through a build or a lateral")
				: known(results.trajectory.longest_interval, missingAt("survey", "trajectory", "actual", "survey")),
		say: ({ part }) => ["the longest interval between stations of the build and the lateral is ", part],
	},
} as const satisfies Readonly<Record<string, Measure>>;
