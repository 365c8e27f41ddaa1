import type { Shape, Stroke } from "../../document/shapes.ts";
import { boxPath } from "../lithology.ts";
import type { Area } from "../tags.ts";
import { closedPath, openPath, type Point } from "../well-axis.ts";

const clipOf = (box: Area): string =>
	boxPath({ x: box.left, y: box.top, width: box.right - box.left, height: box.bottom - box.top });

/** A line through values, seen within its box. */
export const curve = (points: readonly Point[], stroke: Stroke, box: Area): Shape[] =>
	points.length < 2
		? []
		: [
				{
					kind: "path",
					d: openPath(points),
					stroke: { join: "round", ...stroke },
					clip: clipOf(box),
				},
			];

/** The ground between two lines. */
export const between = (one: readonly Point[], other: readonly Point[], fill: string, box: Area): Shape[] =>
	one.length < 2 || other.length < 2
		? []
		: [{ kind: "path", d: closedPath([...one, ...[...other].reverse()]), fill, clip: clipOf(box) }];
