import type { Shape } from "../../document/shapes.ts";
import { INK } from "../palette.ts";
import { closedPath, type Point } from "../well-axis.ts";

/** A solid arrow: what moves, and which way. Nothing where the two ends are one place. */
export const arrow = (from: Point, to: Point, width: number, color: string = INK): Shape[] => {
	const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
	const length = Math.hypot(dx, dy);
	if (length === 0) return [];
	const [ux, uy] = [dx / length, dy / length];
	const head = Math.min(length * 0.6, width * 3.2);
	const at = (along: number, across: number): Point => [
		from[0] + ux * along - uy * across,
		from[1] + uy * along + ux * across,
	];
	const neck = length - head;
	return [
		{
			kind: "path",
			d: closedPath([
				at(0, -width / 2),
				at(neck, -width / 2),
				at(neck, -width * 1.5),
				at(length, 0),
				at(neck, width * 1.5),
				at(neck, width / 2),
				at(0, width / 2),
			]),
			fill: color,
		},
	];
};
