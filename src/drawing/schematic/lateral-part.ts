import type { Shape } from "../../document/shapes.ts";
import { compose, lineWidth, run, setLine } from "../line-of-text.ts";
import { boxPath } from "../lithology.ts";
import { dimensionLine } from "../marks/lines.ts";
import { INK, PAPER, VERMILLION } from "../palette.ts";
import { stagesLine } from "./place-labels.ts";
import { halfWidthAt, type View } from "./view.ts";

/** Height of the rail of stages [pt]. */
const RAIL = 5;

/** The lateral as drawn: its ends, and how far up and down it reaches with its walls. */
export const lateralBox = (view: View) => {
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

/** Over the lateral its length; under it the rail of stages. */
export const lateralPart = (view: View): Shape[] => {
	const box = lateralBox(view);
	return box === undefined ? [] : [...lengthOver(view, box), ...railUnder(view, box)];
};

type LateralBox = NonNullable<ReturnType<typeof lateralBox>>;

const lengthOver = (view: View, box: LateralBox): Shape[] => {
	const { results, print, frame } = view;
	const length = results.trajectory.lateral_length;
	if (length === undefined) return [];
	const y = box.top - 9;
	const { size } = frame;
	const text = compose(view.detail === "plain" ? print.words.plainLateral : print.words.lateral, { length: print.value(length) });
	const wide = lineWidth(text, size);
	const middle = Math.min((box.from + box.to) / 2, frame.width - wide / 2 - 4);
	return [
		...dimensionLine([box.from, y], [box.to, y]),
		{ kind: "path", d: boxPath({ x: middle - wide / 2 - 3, y: y - size * 0.62, width: wide + 6, height: size * 1.24 }), fill: PAPER },
		{ kind: "group", dx: 0, dy: 0, name: "label lateral", children: setLine(text, { x: middle, y: y + size * 0.34, size, anchor: "middle" }) },
	];
};

const railUnder = (view: View, box: LateralBox): Shape[] => {
	const { results, axis, frame, print } = view;
	const stages = results.stimulation?.stages ?? [];
	if (stages.length === 0) return [];
	const y = box.bottom + 6;
	const cells = stages.map((stage) => {
		const [a, b] = [axis.at(stage.top.md.value).x, axis.at(stage.bottom.md.value).x];
		return { number: stage.number, x: Math.min(a, b), width: Math.abs(b - a) };
	});
	const filled = cells.filter((_, i) => i % 2 === 0).map((cell) => boxPath({ ...cell, y, height: RAIL })).join("");
	const from = Math.min(...cells.map((cell) => cell.x));
	const to = Math.max(...cells.map((cell) => cell.x + cell.width));
	const { size } = frame;
	const line = stagesLine(view);
	const wide = lineWidth(line, size);
	const middle = Math.min(Math.max((from + to) / 2, frame.column.x + wide / 2), frame.width - wide / 2 - 4);
	const plain = view.detail === "plain";
	const ends =
		plain || cells.length === 1
			? []
			: [cells[0], cells.at(-1)].flatMap((cell, i) => {
					if (cell === undefined) return [];
					const text = compose(print.words.stageNumber, { number: String(cell.number) });
					const at = cell.x + cell.width / 2;
					const own = lineWidth(text, size * 0.92);
					const clear = i === 0 ? at - own / 2 > middle + wide / 2 + 6 : at + own / 2 < middle - wide / 2 - 6;
					return clear && at + own / 2 < frame.width - 2 ? [{ text, at }] : [];
				});
	return [
		{ kind: "path", d: boxPath({ x: from, y, width: to - from, height: RAIL }), fill: PAPER },
		{ kind: "path", d: filled, fill: VERMILLION },
		{ kind: "path", d: boxPath({ x: from, y, width: to - from, height: RAIL }), stroke: { color: INK, width: 0.6 } },
		...(plain
			? []
			: [
					{ kind: "path", d: boxPath({ x: middle - wide / 2 - 3, y: y + RAIL + 2, width: wide + 6, height: size * 1.25 }), fill: PAPER } as const,
					{
						kind: "group",
						dx: 0,
						dy: 0,
						name: "label stages",
						children: setLine(line.map((part) => ({ ...part, weight: "semibold" as const })), { x: middle, y: y + RAIL + 2 + size * 0.95, size, anchor: "middle" }),
					} as const,
				]),
		...ends.flatMap(({ text, at }): Shape[] => {
			const small = size * 0.92;
			const own = lineWidth(text, small);
			return [
				{ kind: "path", d: boxPath({ x: at - own / 2 - 2, y: y + RAIL + 2, width: own + 4, height: size * 1.25 }), fill: PAPER },
				{ kind: "group", dx: 0, dy: 0, name: "label stage end", children: setLine(text.map((part) => run(part.text)), { x: at, y: y + RAIL + 2 + size * 0.95, size: small, anchor: "middle" }) },
			];
		}),
	];
};

/** Height that the rail and its words take under the lateral's wall [pt]. */
export const railRoom = (stages: number, size: number): number => (stages === 0 ? 8 : RAIL + 10 + size * 1.3);
