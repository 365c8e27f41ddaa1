import type { Shape } from "../../document/shapes.ts";
import { tickString } from "../../units/format.ts";
import { depthScale, graduations } from "../depth-scale.ts";
import { run, setLine } from "../line-of-text.ts";
import { boxPath, n, rockPattern } from "../lithology.ts";
import { groundLine } from "../marks/lines.ts";
import { targetBar } from "../marks/target.ts";
import { protectedBase, waterBand } from "../marks/water.ts";
import { named } from "../named.ts";
import { BLUE, GROUND, INK, PAPER, SECOND_INK, TARGET_TINT, VERMILLION } from "../palette.ts";
import { placesAlong } from "../path-line.ts";
import { bedsOf } from "../schematic/view.ts";
import { openPath } from "../well-axis.ts";
import { RULER, type Section, SIZE } from "./section.ts";

/** Rock, water and ground level, across the section. */
export const groundShapes = ({ well, results, scale, box, deepest }: Section): Shape[] => {
	const ground = scale.y(well.datum.groundLevel.value);
	const base = results.geology.protected_water_base;
	const beds = bedsOf(well, deepest);
	// Where water lies right under the ground, the strokes beneath its line would hide it.
	const crowded = results.geology.water.some((zone) => scale.y(zone.top.tvd.value) < ground + 5);
	const wide = { x: box.left, width: box.right - box.left };
	return [
		{ kind: "path", d: boxPath({ ...wide, y: ground, height: box.bottom - ground }), fill: GROUND },
		...beds
			.filter((bed) => bed.formation.target)
			.map(
				(bed): Shape => ({
					kind: "path",
					d: boxPath({ ...wide, y: scale.y(bed.top), height: scale.y(bed.base) - scale.y(bed.top) }),
					fill: TARGET_TINT,
				}),
			),
		...results.geology.water.flatMap((zone) =>
			waterBand({
				...wide,
				y: scale.y(zone.top.tvd.value),
				height: scale.y(zone.base.tvd.value) - scale.y(zone.top.tvd.value),
			}),
		),
		...beds.flatMap((bed): Shape[] => {
			const column = {
				x: box.left,
				y: scale.y(bed.top),
				width: 16,
				height: scale.y(bed.base) - scale.y(bed.top),
			};
			return [
				{ kind: "path", d: boxPath(column), fill: PAPER },
				...rockPattern(bed.formation.lithology, column),
				{ kind: "path", d: boxPath(column), stroke: { color: INK, width: 0.5 } },
				...(bed.formation.target ? targetBar(column.x, column.y, column.height) : []),
				{
					kind: "line",
					x1: box.left,
					y1: column.y,
					x2: box.right,
					y2: column.y,
					stroke: { color: SECOND_INK, width: 0.5, dash: [1, 1.6] },
				},
			];
		}),
		...groundLine(box.left, box.right, ground, crowded ? [box.left - 3, box.right + 3] : undefined),
		...(base === undefined ? [] : protectedBase(box.left - 4, box.right, scale.y(base.tvd.value))),
	];
};

/** Unlike a planned path, which is dashed too. */
export const OTHER_WELL = { color: SECOND_INK, width: 1.2, dash: [6, 1.6, 1.4, 1.6] } as const;

/** Other wells: upright open tubes for water, a dashed line along its path for each of the rest. */
export const nearbyShapes = ({ nearby, scale }: Section): Shape[] =>
	nearby.map(({ kind, departure, bottom, top, path }): Shape => {
		const [x, from, to] = [scale.x(departure), scale.y(top), scale.y(bottom.value)];
		return kind === "water"
			? {
					kind: "path",
					d: `M${n(x - 1.6)} ${n(from)}V${n(to)}h3.2V${n(from)}`,
					fill: PAPER,
					stroke: { color: BLUE, width: 0.8 },
				}
			: {
					kind: "path",
					d: openPath(path.map((point) => [scale.x(point.departure), scale.y(Math.max(top, point.tvd))])),
					stroke: OTHER_WELL,
				};
	});

/** The well: its path, each string a bar as wide as there are strings inside it, shoes as ticks, stages as blocks. */
export const wellShapes = ({ well, results, at }: Section): Shape[] => {
	const { trajectory, stimulation } = results;
	const path = placesAlong(trajectory.path, 0, trajectory.total_depth.md.value);
	const planned = trajectory.planned;
	const strings = well.strings.filter((string) => string.kind !== "tieback");
	const stages = stimulation?.stages ?? [];
	return [
		...(planned === undefined
			? []
			: [
					{
						kind: "path",
						d: openPath(placesAlong(planned, 0, planned.rows.at(-1)?.md ?? 0).map(at)),
						stroke: { color: SECOND_INK, width: 0.9, dash: [3, 2] },
					} as const,
				]),
		...strings.flatMap((string, i): Shape[] => {
			const d = openPath(placesAlong(trajectory.path, string.top.value, string.shoe.value).map(at));
			const inside = strings.length - 1 - i;
			const bore =
				inside === 0 ? [] : [{ kind: "path", d, stroke: { color: PAPER, width: 1.6 * inside } } as const];
			return [{ kind: "path", d, stroke: { color: INK, width: 1.4 + 1.6 * inside, join: "round" } }, ...bore];
		}),
		...(strings.length === 0
			? []
			: [
					{
						kind: "path",
						d: openPath(path.map(at)),
						stroke: { color: INK, width: 1.1, join: "round" },
					} as const,
				]),
		...stages.flatMap((stage, i): Shape[] =>
			i % 2 === 1
				? []
				: [
						{
							kind: "path",
							d: openPath(placesAlong(trajectory.path, stage.top.md.value, stage.bottom.md.value).map(at)),
							stroke: { color: VERMILLION, width: 4.2 },
						},
					],
		),
		...(stages.length === 0
			? []
			: [
					{
						kind: "path",
						d: openPath(path.map(at)),
						stroke: { color: INK, width: 1.1, join: "round" },
					} as const,
				]),
	];
};

/** Round depths at the left edge. */
export const rulerShapes = ({ print, box, deepest }: Section): Shape[] => {
	const scale = depthScale([0, deepest], [box.top, box.bottom]);
	const ticks = graduations(scale, print.perFoot, 0, 30);
	return [
		{ kind: "line", x1: RULER, y1: box.top, x2: RULER, y2: box.bottom, stroke: { color: INK, width: 0.8 } },
		named(
			"label ruler",
			setLine(
				[run(`${print.words.rulerVertical}, ${print.depthUnit}`, { weight: "semibold", color: SECOND_INK })],
				{ x: 0, y: box.top - 7, size: SIZE },
			),
		),
		...ticks.flatMap(({ value, y, numbered }): Shape[] => [
			{
				kind: "line",
				x1: RULER - (numbered ? 5 : 2.5),
				y1: y,
				x2: RULER,
				y2: y,
				stroke: { color: INK, width: numbered ? 0.8 : 0.5 },
			},
			...(numbered
				? [
						named(
							`label depth ${value}`,
							setLine([run(tickString(value))], {
								x: RULER - 7,
								y: y + SIZE * 0.34,
								size: SIZE,
								anchor: "end",
							}),
						),
					]
				: []),
		]),
	];
};
