import type { Shape } from "../../document/shapes.ts";
import { n } from "../lithology.ts";
import { INK, PAPER } from "../palette.ts";
import type { Area } from "../tags.ts";
import type { Point } from "../well-axis.ts";

/** Radius of a ring with a number [pt]. */
export const RING = 5;
const SIZE = 7.6;

/** A number in a ring; white on ink where what it numbers wants attention. */
export const ring = ([x, y]: Point, number: number, loud = false): Shape[] => [
	{
		kind: "path",
		d: `M${n(x - RING)} ${n(y)}a${RING} ${RING} 0 1 0 ${2 * RING} 0a${RING} ${RING} 0 1 0 ${-2 * RING} 0Z`,
		fill: loud ? INK : PAPER,
		stroke: { color: INK, width: 0.7 },
	},
	{
		kind: "text",
		x,
		y: y + 2.7,
		text: String(number),
		size: SIZE,
		color: loud ? PAPER : INK,
		weight: "semibold",
		anchor: "middle",
	},
];

/** Places along a line that are tried. */
const TRIED = 28;
/** Farther than this from a ring, and from another line, is far enough [pt]. */
const CLEAR = { ring: 30, line: 9 };

const xAt = (line: readonly Point[], y: number): number | undefined => {
	for (let i = 1; i < line.length; i += 1) {
		const [a, b] = [line[i - 1], line[i]];
		if (a === undefined || b === undefined || (a[1] - y) * (b[1] - y) > 0) continue;
		return a[1] === b[1] ? a[0] : a[0] + ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]);
	}
	return undefined;
};

/** Where a ring may stand on each of several lines down a chart: clear of the other rings, and of other lines as far as may be. */
export const ringSpots = (lines: readonly (readonly Point[])[], box: Area): (Point | undefined)[] => {
	const taken: Point[] = [];
	const [low, high] = [box.top + RING + 1, box.bottom - RING - 1];
	return lines.map((line, i) => {
		let best: { readonly at: Point; readonly score: number } | undefined;
		for (let step = 0; step <= TRIED; step += 1) {
			const y = low + ((high - low) * step) / TRIED;
			const x = xAt(line, y);
			if (x === undefined || x < box.left + RING || x > box.right - RING) continue;
			const apart = Math.min(CLEAR.ring, ...taken.map(([a, b]) => Math.hypot(a - x, b - y)));
			if (apart < 2 * RING + 0.8) continue;
			const others = lines.flatMap((other, k) => (k === i ? [] : [xAt(other, y)]));
			const clear = Math.min(
				CLEAR.line,
				...others.flatMap((other) => (other === undefined ? [] : [Math.abs(other - x)])),
			);
			const score = apart + 2 * clear;
			if (best === undefined || score > best.score + 1e-9) best = { at: [x, y], score };
		}
		if (best !== undefined) taken.push(best.at);
		return best?.at;
	});
};
