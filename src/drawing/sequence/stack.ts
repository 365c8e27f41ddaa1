import type { Shape } from "../../document/shapes.ts";
import { type Box, boxPath, n } from "../lithology.ts";
import { GROUND, INK, PAPER } from "../palette.ts";
import { openPath } from "../well-axis.ts";

/**
 * What stands on top of the pipe, larger: valves that close around drill pipe or over the hole, or the valves of a finished
 * well. Kinds of valve, not makes: how many there are and in which order is in no picture.
 */
export const stackShapes = (box: Box, mark: number, what: "preventers" | "tree"): Shape[] => {
	const unit = Math.min(box.width / 7, box.height / 6.2);
	const middle = box.x + box.width / 2;
	const ground = box.y + box.height - unit * 0.9;
	const line = { color: INK, width: Math.max(0.8, 2.2 * mark), join: "round" } as const;
	const part = (y: number, half: number, height: number): Shape => ({
		kind: "path",
		d: boxPath({
			x: middle - half * unit,
			y: ground - (y + height) * unit,
			width: 2 * half * unit,
			height: height * unit,
		}),
		fill: PAPER,
		stroke: line,
	});
	const earth: Shape[] = [
		{
			kind: "path",
			d: boxPath({ x: box.x, y: ground, width: box.width, height: box.y + box.height - ground }),
			fill: GROUND,
		},
		{
			kind: "path",
			d: openPath([
				[box.x, ground],
				[box.x + box.width, ground],
			]),
			stroke: line,
		},
		{
			kind: "path",
			d: [-0.5, 0.32]
				.map((x) => boxPath({ x: middle + x * unit, y: ground, width: 0.18 * unit, height: unit }))
				.join(""),
			fill: INK,
		},
	];
	return [
		...earth,
		...(what === "preventers"
			? preventers(part, middle, ground, unit, line)
			: valves(part, middle, ground, unit, line)),
	];
};

type Part = (y: number, half: number, height: number) => Shape;
type Line = { readonly color: string; readonly width: number; readonly join: "round" };

const preventers = (part: Part, middle: number, ground: number, unit: number, line: Line): Shape[] => {
	// Rams: a body with a cylinder on each side. On top the one that closes on anything, rounded.
	const ram = (y: number): Shape[] => [part(y + 0.15, 2.1, 0.5), part(y, 0.9, 0.8)];
	const y = ground - 3.1 * unit;
	return [
		part(0, 0.7, 0.5),
		...ram(0.6),
		...ram(1.6),
		part(2.5, 0.7, 0.5),
		{
			kind: "path",
			d: `M${n(middle - 1.2 * unit)} ${n(y)}V${n(y - 0.8 * unit)}Q${n(middle)} ${n(y - 1.9 * unit)} ${n(middle + 1.2 * unit)} ${n(y - 0.8 * unit)}V${n(y)}Z`,
			fill: PAPER,
			stroke: line,
		},
		// Drill pipe through all of them.
		{
			kind: "path",
			d: boxPath({ x: middle - 0.16 * unit, y: ground - 5.3 * unit, width: 0.32 * unit, height: 5.3 * unit }),
			fill: INK,
		},
	];
};

const valves = (part: Part, middle: number, ground: number, unit: number, line: Line): Shape[] => {
	const wheel = (y: number): Shape[] => {
		const r = 0.34 * unit;
		const x = middle + 1.3 * unit;
		return [
			{
				kind: "path",
				d: openPath([
					[middle + 0.6 * unit, ground - y * unit],
					[x, ground - y * unit],
				]),
				stroke: line,
			},
			{
				kind: "path",
				d: `M${n(x - r)} ${n(ground - y * unit)}a${n(r)} ${n(r)} 0 1 0 ${n(2 * r)} 0a${n(r)} ${n(r)} 0 1 0 ${n(-2 * r)} 0Z`,
				fill: PAPER,
				stroke: line,
			},
		];
	};
	return [
		part(0, 1.3, 0.5),
		part(0.5, 0.9, 0.5),
		part(1.15, 0.6, 0.7),
		...wheel(1.5),
		part(2, 0.6, 0.7),
		...wheel(2.35),
		part(2.85, 2.2, 0.45),
		part(2.85, 0.6, 0.6),
		part(3.6, 0.6, 0.7),
		...wheel(3.95),
		part(4.4, 0.35, 0.4),
	];
};
