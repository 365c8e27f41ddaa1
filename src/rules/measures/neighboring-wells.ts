import { message } from "../../messages/message.ts";
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
		return missingAt(message("rules/surface-location-this-well"), "site", "surface_location");
	if (entry.latitude === undefined || entry.longitude === undefined)
		return missingAt(message("rules/place", { entry: entry.name }), ...at);
	return missingAt(message("rules/path", { entry: entry.name }), ...at, "path");
};

export const neighboringWellMeasures = {
	"separation factor": {
		noun: message("rules/separation-factor"),
		read: (the) => {
			const { entry, found, at } = offsetOf(the);
			const path = pathMissing(the);
			if (path !== undefined) return lacking(path);
			const missing =
				the.well.trajectory.uncertainty === undefined
					? missingAt(message("rules/survey-uncertainty-this-well"), "trajectory", "uncertainty")
					: missingAt(
							message("rules/survey-uncertainty", { entry: entry.name }),
							...at,
							"path",
							"uncertainty",
						);
			return known(found?.separation_factor, missing);
		},
		say: ({ part }, the) => {
			const { entry, found } = offsetOf(the);
			return [
				message("rules/separation-factor-to-is", {
					entry: entry.name,
					part,
					detail: {
						parts:
							found?.separation_at === undefined || found.separation_distance === undefined
								? []
								: [
										message("rules/least-at-where-two-are-apart", {
											md: found.separation_at.md,
											separation: found.separation_distance,
										}),
									],
					},
				}),
			];
		},
	},
	"survey radius stated": {
		noun: message("rules/survey-radius-stated"),
		read: ({ results, well }) =>
			results.trajectory.survey_error === undefined || well.trajectory.uncertainty === undefined
				? absent(message("rules/no-radius-and-model-to-compare"))
				: { state: "known", value: well.trajectory.uncertainty.radius },
		say: ({ part }) => [message("rules/survey-radius-is-stated-as", { part })],
	},
	"survey ellipse by the error model": {
		noun: message("rules/survey-ellipse-by-model"),
		read: ({ results }) =>
			known(
				results.trajectory.survey_error?.semi_major,
				missingAt(message("rules/survey-uncertainty-this-well"), "trajectory", "error_model"),
			),
		say: ({ part }) => [message("rules/survey-ellipse-is", { part })],
	},
	"survey interval in build and lateral": {
		noun: message("rules/longest-survey-interval-in-build-and"),
		read: ({ results }) =>
			results.trajectory.longest_interval === undefined
				? absent(message("rules/hole-is-not-surveyed-through-build-or"))
				: known(results.trajectory.longest_interval, missingAt("survey", "trajectory", "actual", "survey")),
		say: ({ part }) => [message("rules/longest-interval-between-stations-build-and-lateral", { part })],
	},
} as const satisfies Readonly<Record<string, Measure>>;
