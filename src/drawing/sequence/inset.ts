import type { Shape } from "../../document/shapes.ts";
import { run, setLine } from "../line-of-text.ts";
import { type Box, boxPath } from "../lithology.ts";
import { cementPlug } from "../marks/cement.ts";
import { named } from "../named.ts";
import { GROUND, INK, PAPER, SECOND_INK, TARGET_TINT } from "../palette.ts";
import { insetAxis } from "./inset-axis.ts";
import {
	BORE,
	bitOf,
	boreFilled,
	cracksOf,
	flowOf,
	gapFilled,
	gunOf,
	holeOf,
	holesOf,
	pipeOf,
	plugOf,
	STEEL,
	sandOf,
	WALL_AT,
} from "./inset-marks.ts";
import type { Scene } from "./scene.ts";
import { stackShapes } from "./stack.ts";
import type { StepKind } from "./steps.ts";

type Sketch = (box: Box, scene: Scene) => Shape[];

/** Inside the pipe while cement goes down it, out at its foot and up the gap. */
const cementing: Sketch = (box, { mark }) => {
	const axis = insetAxis(box, "down");
	const [foot, level, wiper] = [0.8, 0.42, 0.3];
	const gap = (axis.half * (STEEL + WALL_AT)) / 2;
	const wide = Math.max(1.4, 4 * mark);
	return [
		...holeOf(axis, 0, 0.94),
		...gapFilled(axis, level, foot),
		...boreFilled(axis, wiper, foot),
		...floor(axis, foot),
		...pipeOf(axis, 0, foot),
		...plugOf(axis, wiper, Math.max(3, 8 * mark)),
		...flowOf(axis, 0.04, wiper - 0.07, 0, wide * 1.3),
		...flowOf(axis, wiper + 0.12, foot - 0.04, 0, wide * 1.3),
		...([1, -1] as const).flatMap((side) => flowOf(axis, foot - 0.06, level + 0.02, side * gap, wide)),
		...([1, -1] as const).flatMap((side) => flowOf(axis, level - 0.1, 0.06, side * gap, wide * 0.7)),
	];
};

/** Under the foot of the pipe the hole is full of cement too. */
const floor = (axis: ReturnType<typeof insetAxis>, foot: number): Shape[] =>
	cementPlug(axis.between(foot, 0.94), axis.half * WALL_AT, "planned");

/** Set cement outside; the bit goes through what was left inside. */
const drilledOut: Sketch = (box) => {
	const axis = insetAxis(box, "down");
	return [
		...holeOf(axis, 0, 0.78),
		...gapFilled(axis, 0, 0.78),
		...boreFilled(axis, 0.5, 0.78),
		...pipeOf(axis, 0, 0.78),
		...holeOf(axis, 0.78, 0.98, BORE * 0.9),
		...holeOf(axis, 0.48, 0.8, BORE * 0.9),
		...bitOf(axis, 0.93),
	];
};

const CLUSTERS = [0.5, 0.62, 0.74] as const;
const BEYOND = [0.72, 0.82, 0.92] as const;

const lined = (axis: ReturnType<typeof insetAxis>): Shape[] => [
	...holeOf(axis, 0, 1),
	...gapFilled(axis, 0, 1),
	...pipeOf(axis, 0, 1),
];

const goes = ({ axis }: Scene): "down" | "right" => (axis.level === undefined ? "down" : "right");

/** Clusters that are open, with their cracks and, where it is in place, the sand. */
const openClusters = (
	axis: ReturnType<typeof insetAxis>,
	at: readonly number[],
	{ mark }: Scene,
	sanded: boolean,
): Shape[] => {
	const width = Math.max(1, 3 * mark);
	return [
		...holesOf(axis, at, WALL_AT + 0.1, width),
		...cracksOf(axis, at, width * 0.8),
		...(sanded ? sandOf(axis, at, Math.max(0.8, 2.4 * mark)) : []),
	];
};

const perforating: Sketch = (box, scene) => {
	const axis = insetAxis(box, goes(scene));
	return [
		...lined(axis),
		...gunOf(axis, 0.42, 0.82, Math.max(0.8, 2 * scene.mark)),
		...holesOf(axis, CLUSTERS, WALL_AT + 0.12, Math.max(1, 3 * scene.mark)),
	];
};

const stage: Sketch = (box, scene) => {
	const axis = insetAxis(box, goes(scene));
	return [
		...lined(axis),
		...openClusters(axis, CLUSTERS, scene, true),
		...flowOf(axis, 0.05, 0.42, 0, Math.max(1.6, 6 * scene.mark)),
	];
};

const plugSet: Sketch = (box, scene) => {
	const axis = insetAxis(box, goes(scene));
	return [
		...lined(axis),
		...openClusters(axis, BEYOND, scene, true),
		...plugOf(axis, 0.5, Math.max(3, 10 * scene.mark)),
	];
};

const milling: Sketch = (box, scene) => {
	const axis = insetAxis(box, goes(scene));
	return [
		...lined(axis),
		...openClusters(axis, BEYOND, scene, false),
		...plugOf(axis, 0.56, Math.max(3, 10 * scene.mark)),
		...bitOf(axis, 0.48),
	];
};

const flowing: Sketch = (box, scene) => {
	const axis = insetAxis(box, goes(scene));
	return [
		...lined(axis),
		...openClusters(axis, CLUSTERS, scene, true),
		...flowOf(axis, 0.42, 0.05, 0, Math.max(1.6, 6 * scene.mark)),
	];
};

const sealed: Sketch = (box) => {
	const axis = insetAxis(box, "down");
	return [...lined(axis), ...boreFilled(axis, 0.25, 0.86)];
};

const SKETCHES: Readonly<Partial<Record<StepKind, Sketch>>> = {
	cement: cementing,
	test: drilledOut,
	preventers: (box, scene) => stackShapes(box, scene.mark, "preventers"),
	wellhead: (box, scene) => stackShapes(box, scene.mark, "tree"),
	perforate: perforating,
	stage,
	plug: plugSet,
	"drill-out": milling,
	flowback: flowing,
	plugged: sealed,
};

/** Steps whose close-up lies in the rock that is treated. */
const IN_TARGET: ReadonlySet<StepKind> = new Set(["perforate", "stage", "plug", "drill-out", "flowback"]);

export const hasInset = (kind: StepKind): boolean => SKETCHES[kind] !== undefined;

/** The close-up of a step in its frame, with the words that it is one; nothing for a step without. */
export const insetShapes = (scene: Scene, kind: StepKind, box: Box, worded: boolean): Shape[] => {
	const sketch = SKETCHES[kind];
	if (sketch === undefined) return [];
	const { size, mark, print } = scene;
	const words = worded ? size * 1.35 : 0;
	const inner: Box = { ...box, height: box.height - words };
	const sky = kind === "preventers" || kind === "wellhead";
	return [
		{ kind: "path", d: boxPath(box), fill: PAPER },
		{ kind: "path", d: boxPath(inner), fill: sky ? PAPER : IN_TARGET.has(kind) ? TARGET_TINT : GROUND },
		...sketch(inner, scene).map(
			(shape): Shape => (shape.kind === "path" ? { ...shape, clip: boxPath(inner) } : shape),
		),
		{ kind: "path", d: boxPath(box), stroke: { color: INK, width: Math.max(0.7, 1.6 * mark) } },
		...(worded
			? [
					named(
						"label inset",
						setLine([run(print.words.frameInset, { color: SECOND_INK })], {
							x: box.x + box.width / 2,
							y: box.y + box.height - size * 0.38,
							size,
							anchor: "middle",
						}),
					),
				]
			: []),
	];
};
