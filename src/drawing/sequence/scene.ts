import type { Results } from "../../calc/results.ts";
import type { Well } from "../../well/well.ts";
import { type DepthScale, depthScale } from "../depth-scale.ts";
import type { Box } from "../lithology.ts";
import { type Nesting, nesting } from "../nesting.ts";
import type { Print } from "../print.ts";
import { levelFrom, type WellAxis, wellAxis } from "../well-axis.ts";

/** Everything that a picture of one step is drawn from; the same for every step of a well. */
export interface Scene {
	readonly well: Well;
	readonly results: Results;
	readonly print: Print;
	/** Where the picture stands on the page. */
	readonly box: Box;
	/** Type size [pt]. */
	readonly size: number;
	/** Factor of the marks: 1 for a screen seen from ten meters, less in a strip. */
	readonly mark: number;
	readonly scale: DepthScale;
	readonly axis: WellAxis;
	readonly nest: Nesting;
	/** Left edge of the ground: right of the ruler. */
	readonly left: number;
	readonly right: number;
	/** y of ground level. */
	readonly ground: number;
	/** Middle of the upright hole. */
	readonly middle: number;
	/** Greatest true vertical depth drawn [ft]. */
	readonly deepest: number;
}

/** Type size at which the marks have their full size [pt]. */
const FULL = 20;

/**
 * One depth scale for the whole well, and so for every step of it: a foot is as many points deep in the first picture as
 * in the last.
 */
export const sceneOf = (well: Well, results: Results, box: Box, size: number, print: Print): Scene => {
	const mark = Math.min(1, Math.max(0.42, size / FULL));
	const { trajectory } = results;
	const sky = Math.max(58 * mark, box.height * 0.17);
	const [top, bottom] = [box.y + sky, box.y + box.height];
	const nest = nesting(well, {
		bore: 3.8 * mark,
		steel: Math.max(0.9, 2.1 * mark),
		clearance: 1.1 * mark,
		step: 8 * mark,
		most: 36 * mark,
	});
	const level = levelFrom(trajectory);
	const reached = Math.max(
		...trajectory.path.rows.map((row) => row.tvd),
		trajectory.total_depth.tvd.value,
		results.geology.protected_water_base?.tvd.value ?? 0,
	);
	const from = well.datum.groundLevel.value;
	const under = (level === undefined ? 10 : 18) * mark;
	const deepest = reached + (under * (reached - from)) / Math.max(bottom - top - under, 1);
	const scale = depthScale([from, deepest], [top, bottom]);
	const left = box.x + size * 3.1;
	const right = box.x + box.width;
	const middle = left + Math.max((right - left) * 0.17, size * 4.6) + nest.widest;
	const room = right - middle - 10 * mark;
	const curve = Math.min(room * 0.3, Math.max(40 * mark, (bottom - top) * 0.34));
	const axis = wellAxis(trajectory, scale, {
		x: middle,
		curve,
		lateral: room - curve,
		slant: Math.min(60, room * 0.25),
	});
	return {
		well,
		results,
		print,
		box,
		size,
		mark,
		scale,
		axis,
		nest,
		left,
		right,
		ground: top,
		middle,
		deepest,
	};
};
