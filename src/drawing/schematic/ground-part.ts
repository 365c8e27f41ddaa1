import type { Shape } from "../../document/shapes.ts";
import { tickString } from "../../units/format.ts";
import { graduations } from "../depth-scale.ts";
import { run, setLine } from "../line-of-text.ts";
import { boxPath, rockPattern } from "../lithology.ts";
import { breakMark, dimensionLine, groundLine } from "../marks/lines.ts";
import { targetBar } from "../marks/target.ts";
import { protectedBase, waterBand, waterWellMark } from "../marks/water.ts";
import { BLUE, GROUND, INK, PAPER, SECOND_INK, TARGET_TINT } from "../palette.ts";
import type { Point } from "../well-axis.ts";
import { LINE, linesOver } from "./lateral-part.ts";
import { bedsOf, halfWidthAt, stretches, type View } from "./view.ts";

/** Wells drawn beside the hole at most; the labels count the rest. */
const WELLS_DRAWN = 3;

/** Where the ground ends on the right: beside the hole, and across the page where a lateral lies. */
const groundBoxes = (view: View, y: number, height: number) => {
	const { frame, axis } = view;
	const left = frame.column.x + frame.column.width;
	const turn = turnTop(view);
	const boxes = [];
	const upper = Math.min(y + height, turn) - y;
	if (upper > 0) boxes.push({ x: left, y, width: frame.lane - left, height: upper });
	const lower = y + height - Math.max(y, turn);
	const right = axis.level === undefined ? frame.lane : frame.width;
	if (lower > 0)
		boxes.push({
			x: left,
			y: Math.max(y, turn),
			width: right - left,
			height: lower,
		});
	return boxes;
};

/** y from which the ground takes the whole width, because the hole does. */
export const turnTop = (view: View): number => {
	const { axis, frame } = view;
	if (axis.level === undefined) return frame.bottom;
	const beyond = axis.points.filter((point) => point.x + halfWidthAt(view, point.md) > frame.lane - 4);
	const upper = Math.min(...beyond.map((point) => point.y - halfWidthAt(view, point.md)), frame.bottom);
	return upper - 10 - linesOver(view) * frame.size * LINE;
};

/** Everything nature made, behind the well. */
export const groundPart = (view: View): Shape[] => {
	const { well, results, frame, scale, deepest, detail } = view;
	const ground = well.datum.groundLevel.value;
	const fill = stretches(scale, ground, deepest).flatMap(({ y, height }) => groundBoxes(view, y, height));
	const beds = bedsOf(well, deepest);
	const rock = frame.column.width > 0;
	const shown = detail === "numbers" ? [] : beds;
	return [
		...fill.map((box): Shape => ({ kind: "path", d: boxPath(box), fill: GROUND })),
		...shown
			.filter((bed) => bed.formation.target)
			.flatMap((bed) =>
				stretches(scale, bed.top, bed.base).flatMap(({ y, height }) => groundBoxes(view, y, height)),
			)
			.map((box): Shape => ({ kind: "path", d: boxPath(box), fill: TARGET_TINT })),
		...(detail === "numbers" ? [] : water(view)),
		...(rock ? shown.flatMap((bed) => rockColumn(view, bed)) : []),
		...shown.slice(1).flatMap((bed) => topLine(view, bed.top)),
		...(detail === "numbers"
			? []
			: drawnWells(results).flatMap((each, i) => {
					return waterWellMark(wellX(frame, i), scale.y(ground), scale.y(each.bottom));
				})),
	];
};

const rockColumn = (
	{ frame, scale }: View,
	{ formation, top, base }: ReturnType<typeof bedsOf>[number],
): Shape[] =>
	stretches(scale, top, base).flatMap(({ y, height }): Shape[] => {
		const box = { x: frame.column.x, y, width: frame.column.width, height };
		return [
			{
				kind: "path",
				d: boxPath(box),
				fill: formation.target ? TARGET_TINT : PAPER,
			},
			...rockPattern(formation.lithology, box),
			{ kind: "path", d: boxPath(box), stroke: { color: INK, width: 0.5 } },
			...(formation.target ? targetBar(box.x, box.y, height) : []),
			...(formation.confining
				? [
						{
							kind: "path",
							d: `M${box.x - 1} ${box.y + 0.8}h-3v${Math.max(0, height - 1.6)}h3`,
							stroke: { color: INK, width: 1.6 },
						} as const,
					]
				: []),
		];
	});

const topLine = (view: View, tvd: number): Shape[] => {
	const y = view.scale.y(tvd);
	return groundBoxes(view, y, 0.01).map((box) => ({
		kind: "line",
		x1: box.x,
		y1: y,
		x2: box.x + box.width,
		y2: y,
		stroke: { color: SECOND_INK, width: 0.5, dash: [1, 1.6] },
	}));
};

const water = (view: View): Shape[] => {
	const { results, scale, frame } = view;
	return results.geology.water.flatMap((zone) =>
		stretches(scale, zone.top.tvd.value, zone.base.tvd.value).flatMap(({ y, height }): Shape[] => [
			...groundBoxes(view, y, height).flatMap(waterBand),
			...(frame.column.width > 0
				? [
						{
							kind: "path",
							d: boxPath({ x: frame.column.x - 7.5, y, width: 2.5, height }),
							fill: BLUE,
						} as const,
					]
				: []),
		]),
	);
};

/** Neighbors' water wells whose depth is known, deepest first. */
export const wellsByDepth = (results: View["results"]) =>
	results.isolation.neighbor_wells
		.flatMap((each) =>
			each.bottom === undefined ? [] : [{ ...each, bottom: each.bottom.value, known: each.bottom }],
		)
		.sort((a, b) => b.bottom - a.bottom);

/** The deepest few, shallowest first: from left to right, so that no leader crosses a tube. */
export const drawnWells = (results: View["results"]) => wellsByDepth(results).slice(0, WELLS_DRAWN).reverse();

/** x of a neighbor's well, counted from the left. */
export const wellX = (frame: View["frame"], i: number): number =>
	frame.column.x + frame.column.width + 9 + i * 11;

/** Of the plain drawing: from the base of protected water to the shallowest perforation, left of the hole. */
export const gapArrow = (view: View): readonly [Point, Point] | undefined => {
	const { results, frame, scale, nest, detail } = view;
	const base = results.geology.protected_water_base?.tvd.value;
	const top = results.stimulation?.top_perforation.tvd.value;
	if (detail !== "plain" || base === undefined || top === undefined || top <= base || top > view.deepest)
		return undefined;
	const x = (frame.column.x + frame.column.width + frame.middle - nest.widest) / 2;
	return [
		[x, scale.y(base) + 1],
		[x, scale.y(top)],
	];
};

/**
 * Ground level, the base of protected water and the breaks: lines that lie over the well. No triangle hangs where
 * something else is drawn, from the well as far as `clearTo`.
 */
export const linesPart = (view: View, clearTo = 0): Shape[] => {
	const { well, results, frame, scale, nest } = view;
	const ground = scale.y(well.datum.groundLevel.value);
	const left = frame.column.x;
	const clear = [frame.middle - nest.widest - 1, frame.middle + nest.widest + 1] as const;
	const bare = [clear[0], Math.max(clear[1], clearTo)] as const;
	const base = results.geology.protected_water_base;
	const arrow = gapArrow(view);
	const right = view.axis.level === undefined ? frame.lane : frame.width;
	return [
		...groundLine(left, clear[0], ground),
		...groundLine(clear[1], frame.lane, ground),
		...(base === undefined ? [] : protectedBase(left - 8, frame.lane, scale.y(base.tvd.value), bare)),
		...(arrow === undefined ? [] : dimensionLine(...arrow)),
		...scale.breaks.flatMap(({ y }) => [
			...breakMark(2, frame.ruler + 4, y),
			...breakMark(left - 9, clear[0] + 3, y),
			...breakMark(clear[1] - 3, y > turnTop(view) ? right : frame.lane, y),
		]),
	];
};

/** Round depths at the left edge. */
export const rulerPart = (view: View): Shape[] => {
	const { frame, scale, print, detail, well } = view;
	const zero = detail === "plain" ? well.datum.groundLevel.value : 0;
	const size = frame.size * 0.92;
	const unit = print.depthUnit;
	const head = detail === "plain" ? print.words.rulerGround : print.words.rulerVertical;
	const ticks = graduations(scale, print.perFoot, zero, detail === "full" ? 26 : 34);
	return [
		{
			kind: "group",
			dx: 0,
			dy: 0,
			name: "label ruler",
			children: setLine([run(`${head}, ${unit}`, { weight: "semibold", color: SECOND_INK })], {
				x: 0,
				y: frame.top - 7,
				size,
			}),
		},
		...scale.pieces.map(
			(piece): Shape => ({
				kind: "line",
				x1: frame.ruler,
				y1: piece.top,
				x2: frame.ruler,
				y2: piece.bottom,
				stroke: { color: INK, width: 0.8 },
			}),
		),
		...ticks.flatMap(({ value, y, numbered }): Shape[] => [
			{
				kind: "line",
				x1: frame.ruler - (numbered ? 5 : 2.5),
				y1: y,
				x2: frame.ruler,
				y2: y,
				stroke: { color: INK, width: numbered ? 0.8 : 0.5 },
			},
			...(numbered
				? [
						{
							kind: "group",
							dx: 0,
							dy: 0,
							name: `label depth ${value}`,
							children: setLine([run(tickString(value))], {
								x: frame.ruler - 7,
								y: y + size * 0.34,
								size,
								anchor: "end",
							}),
						} as const,
					]
				: []),
		]),
	];
};
