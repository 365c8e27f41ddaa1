import type { Shape } from "../../document/shapes.ts";
import { n } from "../lithology.ts";
import { INK, PAPER } from "../palette.ts";
import { type AxisPoint, closedPath } from "../well-axis.ts";
import { local } from "./local.ts";

/** How far a hanger reaches down the gap it sits in [pt]. */
const WEDGE = 3.4;

/** What a string hangs by: a solid wedge in the gap to the string outside it, on each side, its flat side up. */
export const hangerMark = (at: AxisPoint, near: number, far: number): Shape[] => {
	const place = local(at);
	return ([1, -1] as const).map((side) => ({
		kind: "path",
		d: closedPath([place(side * near, 0), place(side * far, 0), place(side * near, WEDGE)]),
		fill: INK,
	}));
};

/** Height of one head of the stack, and of the valve on it [pt]. */
const HEAD = 3.6;
const VALVE = 5.2;
/** How far a flange stands out of its head [pt]. */
const FLANGE = 1.4;

/**
 * A head for each string that hangs at the surface, narrower upward, between flanges; on the uppermost a closed valve
 * under a cap.
 *
 * @param x      middle of the hole
 * @param foot   ground level on the page
 * @param halves half-width of each head, from the bottom up; none is wider than the one below it
 */
export const wellheadMark = (x: number, foot: number, halves: readonly number[]): Shape[] => {
	const flange = (half: number, y: number): Shape => ({
		kind: "line",
		x1: x - half - FLANGE,
		y1: y,
		x2: x + half + FLANGE,
		y2: y,
		stroke: { color: INK, width: 1.1 },
	});
	const heads = halves.flatMap((half, i): Shape[] => {
		const top = foot - (i + 1) * HEAD;
		return [
			{
				kind: "path",
				d: `M${n(x - half)} ${n(top)}h${n(2 * half)}v${n(HEAD)}h${n(-2 * half)}Z`,
				fill: PAPER,
				stroke: { color: INK, width: 0.8 },
			},
			flange(half, top),
		];
	});
	const base = foot - halves.length * HEAD;
	const half = Math.min(3, halves.at(-1) ?? 3);
	const top = base - VALVE;
	return [
		...heads,
		{
			kind: "path",
			d: `M${n(x - half)} ${n(base)}L${n(x + half)} ${n(top)}H${n(x - half)}L${n(x + half)} ${n(base)}Z`,
			fill: PAPER,
			stroke: { color: INK, width: 0.8, join: "round" },
		},
		{
			kind: "line",
			x1: x - half - 0.6,
			y1: top - 0.8,
			x2: x + half + 0.6,
			y2: top - 0.8,
			stroke: { color: INK, width: 1.4 },
		},
	];
};
