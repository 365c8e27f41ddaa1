import type { StageResults } from "../../calc/results.ts";
import type { Shape } from "../../document/shapes.ts";
import type { CasingString, Well } from "../../well/well.ts";
import { type Axis, axisOf } from "../charts/axis.ts";
import { levelAxis } from "../charts/chart-frame.ts";
import { run, runWidth, setLine } from "../line-of-text.ts";
import { boxPath } from "../lithology.ts";
import { clusterMarks, valveMarks } from "../marks/perforations.ts";
import { plugMark, shoeMark, steelWall } from "../marks/steel.ts";
import { named } from "../named.ts";
import { GROUND, INK, PAPER, VERMILLION, WALL } from "../palette.ts";
import type { Print } from "../print.ts";
import type { AxisPoint } from "../well-axis.ts";
import type { StageRow } from "./stage-rows.ts";

/** Type size [pt]. */
export const SIZE = 8;
/** Half-widths of pipe and hole [pt]. */
const PIPE = { outer: 7, inner: 5.2 } as const;
const HOLE = 10;
const REACH = 14;
/** Height of a stage's cell, and what a row takes in all [pt]. */
const CELL = 6;
export const ROW = { axis: SIZE * 2.6 + 6, bore: 2 * REACH + 4, rail: CELL + SIZE * 1.5 } as const;
export const rowTall = (first: boolean): number =>
	(first ? ROW.axis : ROW.axis - SIZE * 1.25) + ROW.bore + ROW.rail + 6;
/** Clusters closer than this are drawn one for a stage [pt]. */
const CLUSTERS_APART = 1.6;
const PACE = 2.6;

/** What one row is drawn from. */
interface RowPlace {
	readonly row: StageRow;
	readonly first: boolean;
	/** Of all rows the longest, at whose scale every row is drawn [ft]. */
	readonly longest: number;
	readonly left: number;
	readonly right: number;
	readonly top: number;
}

/** A hole laid flat: the normal points up. */
const flat = (axis: Axis, md: number, y: number): AxisPoint => ({ md, x: axis.at(md), y, normal: [0, -1] });

/** Whether the clusters of a plan can be told apart. */
export const clustersDrawn = (rows: readonly StageRow[], perFoot: number): boolean =>
	rows.every(({ stages }) =>
		stages.every(({ clusters }) => {
			const depths = clusters.map((cluster) => cluster.md.value).sort((a, b) => a - b);
			return depths.slice(1).every((md, i) => (md - (depths[i] ?? md)) * perFoot >= CLUSTERS_APART);
		}),
	);

export const rowShapes = (
	well: Well,
	plan: readonly StageResults[],
	place: RowPlace,
	print: Print,
	each: boolean,
): Shape[] => {
	const { row, first, longest, left, right, top } = place;
	const end = left + ((row.to - row.from) / longest) * (right - left);
	const axis = axisOf("measured-depth", print.units, [row.from, row.to], [left, end], 52);
	const edge = top + (first ? ROW.axis : ROW.axis - SIZE * 1.25);
	const y = edge + 4 + REACH;
	const rail = y + REACH + 3;
	const through =
		well.strings.find((string) => string.id === well.stimulation?.treatedThrough) ?? well.strings.at(-1);
	const title = levelAxis(axis, {
		edge,
		size: SIZE,
		title: print.words.rulerMeasured,
		name: `row ${row.from} depth`,
	});
	return [
		...title.filter(
			(shape) => first || !(shape.kind === "group" && shape.name === `label row ${row.from} depth`),
		),
		{ kind: "line", x1: left, y1: edge, x2: end, y2: edge, stroke: { color: INK, width: 0.6 } },
		{
			kind: "path",
			d: boxPath({ x: left, y: y - REACH - 2, width: end - left, height: 2 * REACH + 4 }),
			fill: GROUND,
		},
		...holeOf(well, row, axis, y),
		...(through === undefined ? [] : pipeOf(through, row, axis, y)),
		...row.stages.flatMap((stage) => openings(well, stage, axis, y, each)),
		...plugs(plan, row, axis, y),
		...toeValve(well, row, axis, y),
		...cells(row, axis, rail, recordedStages(well)),
	];
};

const holeOf = (well: Well, row: StageRow, axis: Axis, y: number): Shape[] => {
	const bottom = Math.max(...well.holes.map((hole) => hole.bottom.value));
	const [from, to] = [axis.at(row.from), axis.at(Math.min(row.to, bottom))];
	return to <= from
		? []
		: [
				{
					kind: "path",
					d: boxPath({ x: from, y: y - HOLE, width: to - from, height: 2 * HOLE }),
					fill: PAPER,
				},
				{
					kind: "path",
					d: `M${from} ${y - HOLE}H${to}${bottom <= row.to ? `V${y + HOLE}` : `M${to} ${y + HOLE}`}H${from}`,
					stroke: { color: WALL, width: 0.6 },
				},
			];
};

const pipeOf = (string: CasingString, row: StageRow, axis: Axis, y: number): Shape[] => {
	const [from, to] = [Math.max(row.from, string.top.value), Math.min(row.to, string.shoe.value)];
	if (to <= from) return [];
	return [
		...steelWall([flat(axis, from, y), flat(axis, to, y)], PIPE),
		...(string.shoe.value <= row.to ? shoeMark(flat(axis, to, y), PIPE.outer, 3) : []),
	];
};

const openings = (well: Well, stage: StageResults, axis: Axis, y: number, each: boolean): Shape[] => {
	const marks = stage.clusters.map((cluster) => flat(axis, cluster.md.value, y));
	const middle = flat(axis, (stage.top.md.value + stage.bottom.md.value) / 2, y);
	const [top, bottom] = [axis.at(stage.top.md.value), axis.at(stage.bottom.md.value)];
	const along = Math.max(1, Math.round((bottom - top) / PACE));
	const all = Array.from(
		{ length: along + 1 },
		(_, i): AxisPoint => ({
			...middle,
			x: top + ((bottom - top) * i) / along,
		}),
	);
	const places = marks.length === 0 ? all : each ? marks : [middle];
	return well.stimulation?.method === "sliding sleeve"
		? valveMarks(places, PIPE.outer)
		: clusterMarks(places, PIPE.inner, REACH, 1.1);
};

/** Plugs by the row they lie in: that of one stage is set at the top of the next. */
const plugs = (plan: readonly StageResults[], row: StageRow, axis: Axis, y: number): Shape[] =>
	plan.flatMap(({ plug }) =>
		plug === undefined || plug.md.value < row.from || plug.md.value >= row.to
			? []
			: plugMark(flat(axis, plug.md.value, y), PIPE.inner),
	);

const toeValve = (well: Well, row: StageRow, axis: Axis, y: number): Shape[] => {
	const toe = well.stimulation?.toe;
	const here = toe !== undefined && toe.depth.value >= row.from && toe.depth.value <= row.to;
	return here && toe.kind.includes("valve") ? valveMarks([flat(axis, toe.depth.value, y)], PIPE.outer) : [];
};

/** Stages that have a record of how they were pumped. */
export const recordedStages = (well: Well): ReadonlySet<number> =>
	new Set(
		(well.stimulation?.stages ?? [])
			.filter((stage) => stage.actual !== undefined)
			.map((stage) => stage.number),
	);

/** Filled where there is a record, open where there is a plan. */
export const cellStyle = (recorded: boolean) =>
	recorded
		? { fill: VERMILLION, stroke: { color: PAPER, width: 1 } }
		: { fill: PAPER, stroke: { color: VERMILLION, width: 1 } };

/** A cell for each stage, open as planned and filled where it has a record, with its number where there is room. */
const cells = (row: StageRow, axis: Axis, y: number, recorded: ReadonlySet<number>): Shape[] => {
	let free = Number.NEGATIVE_INFINITY;
	const ordered = [...row.stages].sort((a, b) => a.top.md.value - b.top.md.value);
	return ordered.flatMap((stage): Shape[] => {
		const [from, to] = [axis.at(stage.top.md.value), axis.at(stage.bottom.md.value)];
		const width = Math.max(to - from, 0.6);
		const text = run(String(stage.number), { weight: "semibold" });
		const wide = runWidth(text, SIZE);
		const middle = (from + to) / 2;
		const fits = middle - wide / 2 >= free;
		if (fits) free = middle + wide / 2 + 3;
		return [
			{
				kind: "path",
				d: boxPath({ x: from, y, width, height: CELL }),
				...cellStyle(recorded.has(stage.number)),
			},
			...(fits
				? [
						named(
							`label stage ${stage.number}`,
							setLine([text], { x: middle, y: y + CELL + SIZE * 1.05, size: SIZE, anchor: "middle" }),
						),
					]
				: []),
		];
	});
};
