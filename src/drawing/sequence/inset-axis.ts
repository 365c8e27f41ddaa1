import type { Box } from "../lithology.ts";
import type { AxisPoint, Point } from "../well-axis.ts";

/** A straight piece of hole in a close-up: across it, and along it from 0 at the near end to 1 at the far one. */
export interface InsetAxis {
	readonly at: (share: number) => AxisPoint;
	readonly between: (from: number, to: number) => AxisPoint[];
	/** From a share along the hole and a distance across it [pt]. */
	readonly place: (share: number, across: number) => Point;
	/** Half of the room across the hole [pt]. */
	readonly half: number;
	/** Length along the hole [pt]. */
	readonly length: number;
}

/** Points along a straight hole, so that marks which pace along it have places. */
const PIECES = 8;

/** A hole that goes down the box, or through it from left to right. */
export const insetAxis = (box: Box, goes: "down" | "right"): InsetAxis => {
	const down = goes === "down";
	const length = down ? box.height : box.width;
	const half = (down ? box.width : box.height) / 2;
	const at = (share: number): AxisPoint =>
		down
			? { md: share, x: box.x + half, y: box.y + share * length, normal: [1, 0] }
			: { md: share, x: box.x + share * length, y: box.y + half, normal: [0, -1] };
	return {
		at,
		between: (from, to) =>
			Array.from({ length: PIECES + 1 }, (_, i) => at(from + ((to - from) * i) / PIECES)),
		place: (share, across) => {
			const { x, y, normal } = at(share);
			return [x + normal[0] * across, y + normal[1] * across];
		},
		half,
		length,
	};
};
