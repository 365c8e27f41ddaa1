import type { PlaceResults } from "../../calc/results.ts";

/**
 * The definition's entry for a place, by its id, or by its name where the paper may not show ids. A place without one is
 * kept from the paper's readers, and is not drawn.
 */
export const entryOf = <E extends { readonly id?: string; readonly name: string }>(
	entries: readonly E[],
	place: Pick<PlaceResults, "id" | "name">,
): E | undefined =>
	entries.find((entry) => (entry.id === undefined ? entry.name === place.name : entry.id === place.id));
