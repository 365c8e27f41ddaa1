import type { Known } from "../../cite/known.ts";

type Depth = Known<"measured-depth">;

/** Places closer than this are one place [ft]: less than a tally's rounding, more than arithmetic's. */
const SAME_PLACE = 1e-6;

/**
 * Cuts a stretch of hole at every depth where something changes, so that each piece has one cross-section.
 *
 * @param top      shallower end
 * @param bottom   deeper end; no pieces where it is not below the top
 * @param changes  depths of change, in any order, inside or outside the stretch
 * @returns        pieces from the top down, each end the very value that was given
 */
export const piecesBetween = (
	top: Depth,
	bottom: Depth,
	changes: readonly Depth[],
): readonly (readonly [Depth, Depth])[] => {
	if (!(bottom.value - top.value > SAME_PLACE)) return [];
	const inside = changes
		.filter(({ value }) => value > top.value + SAME_PLACE && value < bottom.value - SAME_PLACE)
		.sort((a, b) => a.value - b.value);
	const ends: Depth[] = [top];
	for (const change of inside) if (change.value - (ends.at(-1)?.value ?? 0) > SAME_PLACE) ends.push(change);
	ends.push(bottom);
	return ends.slice(1).map((end, i) => [ends[i] ?? top, end] as const);
};

/** A depth inside a piece, to ask what stands there. */
export const middleOf = ([top, bottom]: readonly [Depth, Depth]): number => (top.value + bottom.value) / 2;
