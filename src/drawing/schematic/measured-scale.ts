import { scaleLinear } from "d3-scale";
import type { Shape } from "../../document/shapes.ts";
import { tickString } from "../../units/format.ts";
import { type Line, lineWidth, run, setLine } from "../line-of-text.ts";
import { boxPath } from "../lithology.ts";
import { INK, PAPER, SECOND_INK } from "../palette.ts";
import type { View } from "./view.ts";

/** Height that the measured depths take under a lateral, as a share of the type size. */
export const MEASURED_ROOM = 1.5;
/** Room of one number along the lateral [pt]. */
const APART = 46;
/** Leaders run down from the ends of the lateral: no number stands nearer to them than this [pt]. */
const CLEAR = 15;
const TICK = 3;
/** Between what the numbers are and the first of them [pt]. */
const GAP = 7;

/** Round measured depths along the lateral, where the ruler of vertical depths says nothing any more. */
export const measuredScale = (
	view: View,
	box: { readonly from: number; readonly to: number },
	y: number,
): Shape[] => {
	const { axis, results, print, frame, detail } = view;
	if (detail === "plain" || axis.level === undefined) return [];
	const size = frame.size * 0.92;
	const total = results.trajectory.total_depth.md.value;
	const count = Math.max(1, Math.floor((box.to - box.from) / APART));
	const at = y + TICK + size * 0.86;
	const every = scaleLinear()
		.domain([axis.level * print.perFoot, total * print.perFoot])
		.ticks(count)
		.map((value) => {
			const line = [run(tickString(value))];
			return { value, line, x: axis.at(value / print.perFoot).x, half: lineWidth(line, size) / 2 };
		})
		.filter(({ x, half }) => x - half > box.from + CLEAR && x + half < box.to - CLEAR);
	const head = [run(`MD, ${print.depthUnit}`, { weight: "semibold", color: SECOND_INK })];
	const wide = lineWidth(head, size);
	// What the numbers are is said before them: one that leaves no room for it gives way.
	const marks = every.filter(({ x, half }) => x - half - GAP - wide > box.from + CLEAR);
	const [first] = marks;
	if (first === undefined) return [];
	const before = first.x - first.half - GAP;
	return [
		...marks.flatMap(({ value, line, x, half }): Shape[] => [
			{ kind: "line", x1: x, y1: y, x2: x, y2: y + TICK, stroke: { color: INK, width: 0.8 } },
			label(`measured ${value}`, line, x - half, x + half, at, size),
		]),
		label("measured", head, before - wide, before, at, size),
	];
};

/** Words on white between two places, on a line. */
const label = (name: string, line: Line, from: number, to: number, y: number, size: number): Shape => ({
	kind: "group",
	dx: 0,
	dy: 0,
	name: `label ${name}`,
	children: [
		{
			kind: "path",
			d: boxPath({ x: from - 1.5, y: y - size * 0.8, width: to - from + 3, height: size }),
			fill: PAPER,
		},
		...setLine(line, { x: from, y, size }),
	],
});
