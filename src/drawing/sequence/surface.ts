import type { Shape } from "../../document/shapes.ts";
import { n } from "../lithology.ts";
import { arrow } from "../marks/arrow.ts";
import { INK, PAPER, SECOND_INK } from "../palette.ts";
import { closedPath, openPath } from "../well-axis.ts";
import type { Scene } from "./scene.ts";
import type { StepKind, WellStep } from "./steps.ts";

/*
 * What stands on the ground while a step is done, in outline: shapes say what kind of thing it is, and nothing about whose
 * or how large. Heights and widths are not to scale, as the drawing says.
 */

const RIG: ReadonlySet<StepKind> = new Set([
	"hole",
	"pipe",
	"cement",
	"returns",
	"test",
	"preventers",
	"string",
]);
const PUMPED: ReadonlySet<StepKind> = new Set(["stage", "plug", "stages"]);

export const surfaceShapes = (scene: Scene, step: WellStep): Shape[] => {
	const { kind } = step;
	if (kind === "pad") return pad(scene);
	if (RIG.has(kind))
		return [
			...rig(scene),
			...(kind === "cement" || kind === "returns" ? truck(scene, -7.4) : []),
			...(kind === "returns" ? overflow(scene) : []),
		];
	if (kind === "plugged") return [];
	const tree = treeAt(scene);
	if (kind === "perforate") return [...tree, ...mast(scene)];
	if (PUMPED.has(kind)) return [...tree, ...pumps(scene)];
	if (kind === "drill-out") return [...tree, ...mast(scene)];
	if (kind === "flowback" || kind === "producing") return [...tree, ...tanks(scene)];
	return tree;
};

const outline = (width: number) => ({ color: INK, width: Math.max(0.7, width), join: "round" }) as const;

/** A level place: a bar over the ground line, wider than everything that stands on it. */
const pad = ({ middle, ground, mark, left, right }: Scene): Shape[] => {
	const from = Math.max(left + 2, middle - 110 * mark);
	const to = Math.min(right - 2, middle + 130 * mark);
	return [
		{
			kind: "path",
			d: `M${n(from)} ${n(ground)}V${n(ground - 5 * mark)}H${n(to)}V${n(ground)}Z`,
			fill: SECOND_INK,
		},
	];
};

/** A tall frame that narrows, braced. */
const rig = ({ middle, ground, mark }: Scene): Shape[] => {
	const [foot, head, tall] = [20 * mark, 6 * mark, 52 * mark];
	const at = (side: number, share: number): readonly [number, number] => [
		middle + side * (foot + (head - foot) * share),
		ground - 2 - tall * share,
	];
	const steps = [0, 0.25, 0.5, 0.75];
	return [
		{
			kind: "path",
			d:
				openPath([at(-1, 0), at(-1, 1), at(1, 1), at(1, 0)]) +
				steps
					.map((s, i) => openPath([at(i % 2 === 0 ? -1 : 1, s), at(i % 2 === 0 ? 1 : -1, s + 0.25)]))
					.join(""),
			stroke: outline(1.8 * mark),
		},
		{
			kind: "path",
			d: closedPath([
				[middle - foot - 6 * mark, ground - 1],
				[middle - foot - 6 * mark, ground - 8 * mark],
				[middle + foot + 6 * mark, ground - 8 * mark],
				[middle + foot + 6 * mark, ground - 1],
			]),
			fill: INK,
		},
	];
};

/** A box on two wheels, `away` marks left (negative) or right of the well. */
const truck = ({ middle, ground, mark, nest, left }: Scene, away: number): Shape[] => {
	const unit = 10 * mark;
	const x = Math.max(middle + away * unit, left + unit * 0.4);
	const wheel = (cx: number): string => {
		const r = 0.42 * unit;
		return `M${n(cx - r)} ${n(ground - r)}a${n(r)} ${n(r)} 0 1 0 ${n(2 * r)} 0a${n(r)} ${n(r)} 0 1 0 ${n(-2 * r)} 0Z`;
	};
	const box = (from: number, to: number, top: number, bottom: number): string =>
		closedPath([
			[x + from * unit, ground - bottom * unit],
			[x + from * unit, ground - top * unit],
			[x + to * unit, ground - top * unit],
			[x + to * unit, ground - bottom * unit],
		]);
	const line: Shape[] =
		away < 0
			? [
					{
						kind: "path",
						d: openPath([
							[x + 4 * unit, ground - 0.9 * unit],
							[middle - nest.widest - 2, ground - 0.9 * unit],
						]),
						stroke: outline(2 * mark),
					},
				]
			: [];
	return [
		{ kind: "path", d: box(0, 2.9, 2.1, 0.6), fill: PAPER, stroke: outline(1.6 * mark) },
		{ kind: "path", d: box(3.05, 4, 1.6, 0.6), fill: INK },
		{ kind: "path", d: wheel(x + 0.8 * unit) + wheel(x + 3.2 * unit), fill: INK },
		...line,
	];
};

/** Trucks side by side that share one line to the well: as many as there is room for, four at most. */
const pumps = (scene: Scene): Shape[] => {
	const { middle, ground, mark, right } = scene;
	const unit = 10 * mark;
	const start = 4.5;
	const count = Math.max(1, Math.min(4, Math.floor((right - middle - start * unit) / (5 * unit))));
	const trucks = Array.from({ length: count }, (_, i) => start + i * 5);
	const line = { color: INK, width: Math.max(0.7, 2.2 * mark), join: "round" } as const;
	return [
		...trucks.flatMap((away) => truck(scene, away)),
		{
			kind: "path",
			d: openPath([
				[middle, ground - 2.9 * unit],
				[middle + ((trucks.at(-1) ?? start) + 1.4) * unit, ground - 2.9 * unit],
			]),
			stroke: line,
		},
		...trucks.map(
			(away): Shape => ({
				kind: "path",
				d: openPath([
					[middle + (away + 1.4) * unit, ground - 2.9 * unit],
					[middle + (away + 1.4) * unit, ground - 2.1 * unit],
				]),
				stroke: line,
			}),
		),
	];
};

/** A crane that holds a cable, or thin pipe, over the well; the truck that it comes from stands beside it. */
const mast = (scene: Scene): Shape[] => {
	const { middle, ground, mark } = scene;
	const top = ground - 52 * mark;
	return [
		...truck(scene, 5.5),
		{
			kind: "path",
			d:
				openPath([
					[middle + 56 * mark, ground - 21 * mark],
					[middle + 2 * mark, top],
				]) +
				openPath([
					[middle, top],
					[middle, ground],
				]),
			stroke: outline(2 * mark),
		},
	];
};

/** Valves on the finished well: two blocks on a stem, a wheel each, arms to both sides. */
const treeAt = ({ middle, ground, mark }: Scene): Shape[] => {
	const unit = 10 * mark;
	const block = (y: number, half: number): string =>
		closedPath([
			[middle - half, ground - y],
			[middle - half, ground - y - 0.8 * unit],
			[middle + half, ground - y - 0.8 * unit],
			[middle + half, ground - y],
		]);
	const wheel = (y: number, side: number): string => {
		const r = 0.42 * unit;
		return `M${n(middle + side * 1.25 * unit - r)} ${n(ground - y)}a${n(r)} ${n(r)} 0 1 0 ${n(2 * r)} 0a${n(r)} ${n(r)} 0 1 0 ${n(-2 * r)} 0Z`;
	};
	return [
		{
			kind: "path",
			d: openPath([
				[middle, ground],
				[middle, ground - 4.2 * unit],
			]),
			stroke: outline(3 * mark),
		},
		{
			kind: "path",
			d: openPath([
				[middle - 1.9 * unit, ground - 2.9 * unit],
				[middle + 1.9 * unit, ground - 2.9 * unit],
			]),
			stroke: outline(2.4 * mark),
		},
		{
			kind: "path",
			d: block(0, unit) + block(1.1 * unit, 0.7 * unit) + block(3.4 * unit, 0.7 * unit),
			fill: INK,
		},
		{
			kind: "path",
			d: wheel(1.5 * unit, 1) + wheel(3.8 * unit, 1),
			fill: PAPER,
			stroke: outline(1.4 * mark),
		},
	];
};

/** Two standing tanks and the line to them. */
const tanks = ({ middle, ground, mark, right }: Scene): Shape[] => {
	const unit = 10 * mark;
	const first = Math.min(7 * unit, right - middle - 7.5 * unit);
	const tank = (x: number): string =>
		`M${n(x)} ${n(ground)}V${n(ground - 2.8 * unit)}Q${n(x + 1.5 * unit)} ${n(ground - 3.6 * unit)} ${n(x + 3 * unit)} ${n(ground - 2.8 * unit)}V${n(ground)}Z`;
	return [
		{
			kind: "path",
			d: openPath([
				[middle + unit, ground - 1.5 * unit],
				[middle + first, ground - 1.5 * unit],
			]),
			stroke: outline(2.2 * mark),
		},
		{
			kind: "path",
			d: tank(middle + first) + tank(middle + first + 4 * unit),
			fill: PAPER,
			stroke: outline(1.8 * mark),
		},
	];
};

/** Cement that comes out of the gap at the top and runs off to one side. */
const overflow = ({ middle, ground, mark, nest }: Scene): Shape[] =>
	arrow(
		[middle + nest.widest + 2, ground - 5 * mark],
		[middle + nest.widest + 46 * mark, ground - 5 * mark],
		4.5 * mark,
	);
