import type { MeasuredFrom } from "../catalog/limits/vocabulary.ts";
import type { Known } from "../cite/known.ts";
import type { Neighbor } from "../definition/definition.ts";
import { message, type Said } from "../messages/message.ts";
import { type Case, missingAt } from "./case.ts";
import { computedDistance } from "./computed-distance.ts";
import type { MissingInput } from "./finding.ts";

const PLACES: Readonly<Record<MeasuredFrom, Said>> = {
	wellhead: message("rules/place.wellhead"),
	"pad edge": message("rules/place.pad-edge"),
	"nearest equipment": message("rules/place.nearest-equipment"),
	wellbore: message("rules/place.wellbore"),
};

/** The place that a distance is measured from, without its article. */
export const placeWords = (from: MeasuredFrom): Said => PLACES[from];

/** A distance, and whether somebody measured it. */
export type Distance =
	| { readonly value: Known<"distance">; readonly surveyedBy?: string }
	| { readonly missing: MissingInput };

/** What is missing where nothing of a kind is listed and nobody has said that the search was complete. */
export const SEARCHED: MissingInput = {
	what: message("rules/searched.what"),
	at: ["site", "neighbors_complete"],
};

/**
 * Distance from the place a rule names to a neighbor. A surveyed distance stands before one computed from coordinates;
 * a distance surveyed from another place is not used.
 */
export const distanceTo = (
	the: Pick<Case, "well" | "results">,
	neighbor: Neighbor,
	from: MeasuredFrom,
): Distance => {
	const surveyed = neighbor.surveyed?.find((each) => each.from === from);
	if (surveyed !== undefined) return { value: surveyed.distance, surveyedBy: surveyed.by ?? "survey" };
	const computed = computedDistance(the, neighbor, from);
	if (computed !== undefined) return { value: computed };
	const at = ["site", "neighbors", the.well.neighbors.indexOf(neighbor), "surveyed"] as const;
	return {
		missing: missingAt(
			message("rules/distance-from-to", { placeWords: placeWords(from), neighbor: neighbor.name }),
			...at,
		),
	};
};

/** Neighbors of some kinds within a radius [ft], those whose distance is not known, and whether the search was complete. */
export const neighborsWithin = (
	the: Pick<Case, "well" | "results">,
	kinds: readonly string[],
	from: MeasuredFrom,
	radius: number,
) => {
	const candidates = the.well.neighbors.filter(({ kind }) => kinds.includes(kind));
	const placed = candidates.map((neighbor) => ({ neighbor, distance: distanceTo(the, neighbor, from) }));
	return {
		inside: placed.flatMap(({ neighbor, distance }) =>
			"value" in distance && distance.value.value <= radius ? [neighbor] : [],
		),
		unplaced: placed.flatMap(({ distance }) => ("missing" in distance ? [distance.missing] : [])),
		listed: candidates.length,
		complete: the.well.site.neighbors_complete === true,
	};
};
