import type { Shape } from "../../document/shapes.ts";
import { BREAK_GAP } from "../depth-scale.ts";
import { n } from "../lithology.ts";
import { INK, LEADER, PAPER } from "../palette.ts";
import { openPath, type Point } from "../well-axis.ts";

const wave = (from: number, to: number, y: number): string => {
	let d = `M${n(from)} ${n(y)}`;
	let x = from;
	for (; x + 8 <= to; x += 8) d += "q2 -2 4 0t4 0";
	return x < to ? `${d}L${n(to)} ${n(y)}` : d;
};

/** Two wave lines with a white gap: the depth scale changes here. `y` is the middle of the gap. */
export const breakMark = (from: number, to: number, y: number): Shape[] => {
	const half = BREAK_GAP / 2 - 0.8;
	return [
		{
			kind: "path",
			d: `M${n(from)} ${n(y - half)}H${n(to)}V${n(y + half)}H${n(from)}Z`,
			fill: PAPER,
		},
		{
			kind: "path",
			d: wave(from, to, y - half) + wave(from, to, y + half),
			stroke: { color: INK, width: 0.7, join: "round" },
		},
	];
};

/** Ground level: a heavy line with strokes slanting beneath it. */
export const groundLine = (
	from: number,
	to: number,
	y: number,
	clear?: readonly [number, number],
): Shape[] => {
	let strokes = "";
	for (let x = from + 3; x <= to; x += 6) {
		if (clear !== undefined && x > clear[0] && x - 3 < clear[1]) continue;
		strokes += `M${n(x)} ${n(y)}l-3 3`;
	}
	return [
		{
			kind: "line",
			x1: from,
			y1: y,
			x2: to,
			y2: y,
			stroke: { color: INK, width: 1.2 },
		},
		...(strokes === "" ? [] : [{ kind: "path", d: strokes, stroke: { color: INK, width: 0.5 } } as const]),
	];
};

/** From a place to a label: level as far as the edge of the well, then one slope. A dot marks the place. */
export const leader = (from: Point, edge: Point | undefined, to: Point, dot = true): Shape[] => [
	{
		kind: "path",
		d: openPath(edge === undefined ? [from, to] : [from, edge, to]),
		stroke: { color: LEADER, width: 0.5, join: "round" },
	},
	...(dot
		? [
				{
					kind: "path",
					d: `M${n(from[0] - 1.1)} ${n(from[1])}a1.1 1.1 0 1 0 2.2 0a1.1 1.1 0 1 0 -2.2 0Z`,
					fill: INK,
				} as const,
			]
		: []),
];

const arrowhead = ([x, y]: Point, dx: number, dy: number): string => {
	const [length, half] = [4.6, 1.7];
	return `M${n(x)} ${n(y)}L${n(x - dx * length - dy * half)} ${n(y - dy * length + dx * half)}L${n(x - dx * length + dy * half)} ${n(y - dy * length - dx * half)}Z`;
};

/** A measured distance: arrowheads at both ends, between two short bars. */
export const dimensionLine = (from: Point, to: Point): Shape[] => {
	const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
	const length = Math.hypot(dx, dy);
	if (length === 0) return [];
	const [ux, uy] = [dx / length, dy / length];
	const bar = ([x, y]: Point) =>
		openPath([
			[x - uy * 3, y + ux * 3],
			[x + uy * 3, y - ux * 3],
		]);
	const heads = length > 10 ? arrowhead(to, ux, uy) + arrowhead(from, -ux, -uy) : "";
	return [
		{
			kind: "path",
			d: openPath([from, to]) + bar(from) + bar(to),
			stroke: { color: INK, width: 0.7 },
		},
		...(heads === "" ? [] : [{ kind: "path", d: heads, fill: INK } as const]),
	];
};
