import type { Shape } from "../../document/shapes.ts";
import { compose, type Line, lineWidth, setLine, wrap } from "../line-of-text.ts";
import { boxPath } from "../lithology.ts";
import { dimensionLine } from "../marks/lines.ts";
import { INK, PAPER, VERMILLION } from "../palette.ts";
import { MEASURED_ROOM, measuredScale } from "./measured-scale.ts";
import { stagesLine } from "./place-labels.ts";
import { type Detail, halfWidthAt, type View } from "./view.ts";

/** Height of the rail of stages [pt]. */
const RAIL = 5;

/** The lateral as drawn: its ends, and how far up and down it reaches with its walls. */
const lateralBox = (view: View) => {
	const { axis, results } = view;
	if (axis.level === undefined) return undefined;
	const points = axis.between(axis.level, results.trajectory.total_depth.md.value);
	const half = Math.max(...points.map((point) => halfWidthAt(view, point.md)));
	const ys = points.map((point) => point.y);
	return {
		from: Math.min(...points.map((point) => point.x)),
		to: Math.max(...points.map((point) => point.x)),
		top: Math.min(...ys) - half,
		bottom: Math.max(...ys) + half,
	};
};

/** Distance between the lines of words over a lateral, as a share of the type size. */
export const LINE = 1.35;

/** What is said of the stages over a lateral that begins at `from`, clear of the curve. */
const stagesOver = (view: View, from: number): Line[] => {
	if (view.detail === "plain") return [];
	const line = stagesLine(view).map((part) => ({ ...part, weight: "semibold" as const }));
	return line.length === 0 ? [] : wrap(line, view.frame.size, view.frame.width - from - 4, 3);
};

/** How many lines of words stand over the lateral. */
export const linesOver = (view: View): number => {
	const box = lateralBox(view);
	const length = view.results.trajectory.lateral_length === undefined ? 0 : 1;
	return box === undefined ? 0 : length + stagesOver(view, box.from).length;
};

/** Over the lateral its length and its stages in words; under it the rail of stages, and the measured depths. */
export const lateralPart = (view: View): Shape[] => {
	const box = lateralBox(view);
	return box === undefined
		? []
		: [
				...wordsOver(view, box),
				...railUnder(view, box),
				...measuredScale(view, box, box.bottom + railTop(view.results.stimulation?.stages.length ?? 0)),
			];
};

type LateralBox = NonNullable<ReturnType<typeof lateralBox>>;

const wordsOver = (view: View, box: LateralBox): Shape[] => {
	const { results, print, frame, detail } = view;
	const { size } = frame;
	const length = results.trajectory.lateral_length;
	const phrase = detail === "plain" ? print.words.plainLateral : print.words.lateral;
	const over = box.top - 9;
	const set = (line: Line, y: number, name: string): Shape[] => {
		const wide = lineWidth(line, size);
		const middle = Math.min((box.from + box.to) / 2, frame.width - wide / 2 - 4);
		return [
			{
				kind: "path",
				d: boxPath({
					x: middle - wide / 2 - 3,
					y: y - size * 0.62,
					width: wide + 6,
					height: size * 1.24,
				}),
				fill: PAPER,
			},
			{
				kind: "group",
				dx: 0,
				dy: 0,
				name: `label ${name}`,
				children: setLine(line, {
					x: middle,
					y: y + size * 0.34,
					size,
					anchor: "middle",
				}),
			},
		];
	};
	const stages = stagesOver(view, box.from);
	const first = over - (length === undefined ? 0 : size * LINE);
	return [
		...(length === undefined
			? []
			: [
					...dimensionLine([box.from, over], [box.to, over]),
					...set(compose(phrase, { length: print.value(length) }), over, "lateral"),
				]),
		...stages.flatMap((line, i) =>
			set(line, first - (stages.length - 1 - i) * size * LINE, i === 0 ? "stages" : `stages-${i + 1}`),
		),
	];
};

const railUnder = (view: View, box: LateralBox): Shape[] => {
	const { results, axis } = view;
	const stages = results.stimulation?.stages ?? [];
	if (stages.length === 0) return [];
	const cells = stages.map((stage) => {
		const [a, b] = [axis.at(stage.top.md.value).x, axis.at(stage.bottom.md.value).x];
		return { x: Math.min(a, b), width: Math.abs(b - a) };
	});
	return stageRail(cells, box.bottom + 6);
};

/** A bar with every other stage filled. */
export const stageRail = (
	cells: readonly { readonly x: number; readonly width: number }[],
	y: number,
): Shape[] => {
	const filled = cells.filter((_, i) => i % 2 === 0).map((cell) => boxPath({ ...cell, y, height: RAIL }));
	const from = Math.min(...cells.map((cell) => cell.x));
	const rail = boxPath({
		x: from,
		y,
		width: Math.max(...cells.map((cell) => cell.x + cell.width)) - from,
		height: RAIL,
	});
	return [
		{ kind: "path", d: rail, fill: PAPER },
		{ kind: "path", d: filled.join(""), fill: VERMILLION },
		{ kind: "path", d: rail, stroke: { color: INK, width: 0.6 } },
	];
};

/** From the lateral's wall to the foot of the rail [pt]. */
const railTop = (stages: number): number => (stages === 0 ? 3 : RAIL + 6);

/** Height that rail and measured depths take under the lateral's wall [pt]. */
export const railRoom = (stages: number, detail: Detail, size: number): number =>
	railTop(stages) + 5 + (detail === "plain" ? 0 : size * MEASURED_ROOM);
