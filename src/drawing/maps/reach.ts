import type { PlaceResults, Results } from "../../calc/results.ts";
import type { Undrawn } from "../../document/shapes.ts";
import { compose, lineText } from "../line-of-text.ts";
import { placesAlong } from "../path-line.ts";
import type { Print } from "../print.ts";

/** How many times as far as the well reaches a place may lie: a farther one would shrink the well to a point. */
const REACH = 6;
/** Least that a well counts as reaching [ft]. */
const LEAST = 1000;

/** Whether a place near the wellhead can be drawn with the well, at one scale. */
export const reachOf = ({
	trajectory,
}: Pick<Results, "trajectory">): ((place: { readonly north: number; readonly east: number }) => boolean) => {
	const { path, total_depth: end } = trajectory;
	const out = placesAlong(path, 0, end.md.value).map(({ north, east }) => Math.hypot(north, east));
	const most = REACH * Math.max(LEAST, end.tvd.value, ...out);
	return ({ north, east }) => Math.hypot(north, east) <= most;
};

/** A place that is not drawn, with how far it lies. */
export const notDrawn = ({ name, from_path: distance }: PlaceResults, print: Print): Undrawn => ({
	name,
	says:
		distance === undefined
			? ""
			: lineText(compose(print.words.fromPath, { distance: print.value(distance) })),
});
