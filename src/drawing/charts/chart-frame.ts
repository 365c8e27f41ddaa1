import type { Shape } from "../../document/shapes.ts";
import { run, setLine } from "../line-of-text.ts";
import { boxPath } from "../lithology.ts";
import { named } from "../named.ts";
import { INK, PAPER, RULING, SECOND_INK } from "../palette.ts";
import type { Area } from "../tags.ts";
import type { Axis } from "./axis.ts";

const ruling = (x1: number, y1: number, x2: number, y2: number): Shape => ({
	kind: "line",
	x1,
	y1,
	x2,
	y2,
	stroke: { color: RULING, width: 0.5, dash: [0.5, 2.5] },
});

/** A white box with a dotted line at each numbered tick of its two axes. */
export const chartBox = (box: Area, across: Axis, down: Axis): Shape[] => [
	{
		kind: "path",
		d: boxPath({ x: box.left, y: box.top, width: box.right - box.left, height: box.bottom - box.top }),
		fill: PAPER,
		stroke: { color: INK, width: 0.6 },
	},
	...across.ticks
		.filter(({ at }) => at > box.left + 1 && at < box.right - 1)
		.map(({ at }) => ruling(at, box.top, at, box.bottom)),
	...down.ticks
		.filter(({ at }) => at > box.top + 1 && at < box.bottom - 1)
		.map(({ at }) => ruling(box.left, at, box.right, at)),
];

interface AxisPlace {
	/** The edge it stands at: x of an upright axis, y of a level one. */
	readonly edge: number;
	readonly size: number;
	readonly title: string;
	readonly name: string;
}

/** Ticks, numbers and title left of a box. */
export const uprightAxis = (axis: Axis, { edge, size, title, name }: AxisPlace): Shape[] => [
	...axis.fine.map(
		(at): Shape => ({
			kind: "line",
			x1: edge - 2.5,
			y1: at,
			x2: edge,
			y2: at,
			stroke: { color: INK, width: 0.5 },
		}),
	),
	...axis.ticks.flatMap(({ text, value, at }): Shape[] => [
		{ kind: "line", x1: edge - 5, y1: at, x2: edge, y2: at, stroke: { color: INK, width: 0.8 } },
		named(
			`label ${name} ${value}`,
			setLine([run(text)], { x: edge - 7, y: at + size * 0.34, size, anchor: "end" }),
		),
	]),
	named(
		`label ${name}`,
		setLine([run(`${title}, ${axis.unit}`, { weight: "semibold", color: SECOND_INK })], {
			x: Math.max(0, edge - 38),
			y: Math.min(axis.from, axis.to) - size * 1.1,
			size,
		}),
	),
];

/** Ticks, numbers and title above a box, or beneath it. */
export const levelAxis = (
	axis: Axis,
	{ edge, size, title, name, under = false }: AxisPlace & { readonly under?: boolean },
): Shape[] => {
	const out = under ? 1 : -1;
	const base = edge + out * 5 + (under ? size * 0.95 : -size * 0.25);
	const [low, high] = [Math.min(axis.from, axis.to), Math.max(axis.from, axis.to)];
	return [
		...axis.fine.map(
			(at): Shape => ({
				kind: "line",
				x1: at,
				y1: edge + out * 2.5,
				x2: at,
				y2: edge,
				stroke: { color: INK, width: 0.5 },
			}),
		),
		...axis.ticks.flatMap(({ text, value, at }): Shape[] => [
			{ kind: "line", x1: at, y1: edge + out * 4, x2: at, y2: edge, stroke: { color: INK, width: 0.8 } },
			named(`label ${name} ${value}`, setLine([run(text)], { x: at, y: base, size, anchor: "middle" })),
		]),
		named(
			`label ${name}`,
			setLine([run(`${title}, ${axis.unit}`, { weight: "semibold", color: SECOND_INK })], {
				x: (low + high) / 2,
				y: base + out * size * 1.25,
				size,
				anchor: "middle",
			}),
		),
	];
};

/** Height of a level axis with its numbers and its title [pt]. */
export const levelAxisTall = (size: number): number => 5 + size * 2.5;
