import type { DepthMark, Results } from "../../calc/results.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import type { Well } from "../../well/well.ts";
import { axisOf } from "../charts/axis.ts";
import type { ChartOptions } from "../charts/chart-options.ts";
import { type Label, labelColumn } from "../label.ts";
import { compose, run, sentence, setLine } from "../line-of-text.ts";
import { boxPath } from "../lithology.ts";
import { equalScale, STRAIGHT_DOWN, scaleBar } from "../maps/equal-scale.ts";
import { named } from "../named.ts";
import { BLUE, INK, PAPER, ROCK_LINE, SECOND_INK, TARGET_TINT, VERMILLION, WATER_TINT } from "../palette.ts";
import { along, type PathPlace, placesAlong } from "../path-line.ts";
import { type Print, printer, stringName } from "../print.ts";
import { openPath, type Point } from "../well-axis.ts";

const SIZE = 7.4;
const RULER = 30;
/** Left edge of the labels beside a hole that goes straight down, from the hole [pt]. */
const BESIDE = 12;

/**
 * The whole well in a small space, at one scale both ways: how deep the water, the shoes and the treated rock are beside
 * each other. Names and depths stand beside the vertical hole, which leaves the well itself bare.
 */
export const wellToScale = (
	well: Well,
	results: Results,
	{ width, height, units, words, keyOf }: ChartOptions,
): Drawing => {
	const print = printer(units, words, keyOf);
	const { trajectory } = results;
	const azimuth = trajectory.vertical_section_azimuth.value;
	const path = placesAlong(trajectory.path, 0, trajectory.total_depth.md.value);
	const across = (place: PathPlace): number => along(azimuth, place);
	const deepest = Math.max(...path.map(({ tvd }) => tvd), ...targetOf(well).map(([, base]) => base));
	const [least, most] = [Math.min(0, ...path.map(across)), Math.max(0, ...path.map(across))];
	const box = {
		left: RULER + 8,
		top: SIZE * 2,
		right: width - 4,
		bottom: height - SIZE * 2.6,
	};
	const scale = equalScale([least, Math.max(most, least + 1)], [0, deepest], box, "down");
	// The hole stands at the left of its room, so that labels have the rest.
	const shift = box.left + BESIDE - scale.x(least);
	const x = (value: number): number => scale.x(value) + shift;
	const y = (value: number): number => scale.y(value) - scale.y(0) + box.top;
	const at = (place: PathPlace): Point => [x(across(place)), y(place.tvd)];
	const bottom = y(deepest);
	const axis = axisOf("true-vertical-depth", units, [0, deepest], [box.top, bottom], 24);
	const wellhead = x(0);
	const column = {
		side: "right" as const,
		x: wellhead + BESIDE,
		width: width - wellhead - BESIDE - 2,
		edge: wellhead + 4,
		low: box.top - 4,
		high: freeAbove(path.map(at), wellhead, bottom),
		size: SIZE,
		backing: PAPER,
	};
	const beside = labelColumn(labelsOf(well, results, print, y, wellhead), column);
	return {
		id: "to-scale",
		width,
		height: bottom + SIZE * 3.7,
		title: sentence(words.toScaleOf, { well: well.identity.name }),
		alternative: alternativeOf(results, print),
		scale: words.sectionScale,
		undrawn: [...beside.lost],
		shapes: [
			named("ground", groundOf(well, results, { y, left: RULER, right: width, bottom })),
			named("well", wellOf(well, results, at)),
			named("depths", [
				{
					kind: "line",
					x1: RULER,
					y1: box.top,
					x2: RULER,
					y2: bottom,
					stroke: { color: INK, width: 0.8 },
				},
				named(
					"label ruler",
					setLine(
						[
							run(`${words.rulerVertical}, ${print.depthUnit}`, {
								color: SECOND_INK,
							}),
						],
						{
							x: 0,
							y: SIZE,
							size: SIZE,
						},
					),
				),
				...axis.ticks.flatMap(({ text, at: level }): Shape[] => [
					{
						kind: "line",
						x1: RULER - 3,
						y1: level,
						x2: RULER,
						y2: level,
						stroke: { color: INK, width: 0.6 },
					},
					named(
						`label depth ${text}`,
						setLine([run(text)], {
							x: RULER - 5,
							y: level + SIZE * 0.34,
							size: SIZE,
							anchor: "end",
						}),
					),
				]),
			]),
			...beside.shapes,
			...scaleBar(print, scale, {
				x: RULER,
				y: bottom + SIZE * 1.3,
				near: 60,
				size: SIZE,
			}),
			named(
				"label scale",
				setLine([run(words.sectionScale, { italic: true, color: SECOND_INK })], {
					// Under the bar, whose length is the well's.
					x: width,
					y: bottom + SIZE * 3.2,
					size: SIZE,
					anchor: "end",
				}),
			),
		],
	};
};

const targetOf = ({ geology }: Well): readonly (readonly [number, number])[] =>
	geology.formations.flatMap(({ target, top, base }) =>
		target === true && base !== undefined ? [[top.value, base.value] as const] : [],
	);

/** y above which the room right of the vertical hole is free of the well. */
const freeAbove = (path: readonly Point[], wellhead: number, bottom: number): number =>
	Math.min(bottom + 4, ...path.filter(([x]) => x > wellhead + BESIDE / 2).map(([, y]) => y - 3));

const groundOf = (
	well: Well,
	results: Results,
	{
		y,
		left,
		right,
		bottom,
	}: {
		y: (tvd: number) => number;
		left: number;
		right: number;
		bottom: number;
	},
): Shape[] => {
	const ground = y(well.datum.groundLevel.value);
	const base = results.geology.protected_water_base?.tvd.value;
	const band = (from: number, to: number, fill: string): Shape => ({
		kind: "path",
		d: boxPath({
			x: left,
			y: from,
			width: right - left,
			height: Math.max(to - from, 0.5),
		}),
		fill,
	});
	const level = (at: number, color: string, dash?: readonly number[]): Shape => ({
		kind: "line",
		x1: left,
		y1: at,
		x2: right,
		y2: at,
		stroke: { color, width: 0.8, ...(dash === undefined ? {} : { dash }) },
	});
	return [
		...(base === undefined ? [] : [band(ground, y(base), WATER_TINT), level(y(base), BLUE, [4, 2])]),
		...targetOf(well).flatMap(([from, to]): Shape[] => [
			band(y(from), Math.min(y(to), bottom), TARGET_TINT),
			// Lines hold the band where its tint is lost in gray.
			level(y(from), ROCK_LINE, [1, 1.5]),
			level(Math.min(y(to), bottom), ROCK_LINE, [1, 1.5]),
		]),
		level(ground, INK),
	];
};

/** Each string down to its shoe, the outer ones wider, with a foot at the shoe; stages across the treated stretch. */
const wellOf = (well: Well, results: Results, at: (place: PathPlace) => Point): Shape[] => {
	const { path } = results.trajectory;
	const line = (from: number, to: number): string => openPath(placesAlong(path, from, to).map(at));
	const strings = well.strings.toSorted((a, b) => a.shoe.value - b.shoe.value);
	const { top_perforation: top, bottom_perforation: bottom } = results.stimulation ?? {};
	return [
		{
			kind: "path",
			d: line(0, results.trajectory.total_depth.md.value),
			stroke: { color: INK, width: 0.8, join: "round" },
		},
		...strings.map(
			(string, i): Shape => ({
				kind: "path",
				d: line(string.top.value, string.shoe.value),
				stroke: {
					color: INK,
					width: 1.2 + 1.5 * (strings.length - 1 - i),
					join: "round",
				},
			}),
		),
		...strings.map((string, i): Shape => {
			const [shoe] = placesAlong(path, string.shoe.value, string.shoe.value).map(at);
			const half = 2.4 + 0.9 * (strings.length - 1 - i);
			const [px, py] = shoe ?? [0, 0];
			return {
				kind: "path",
				d: `M${px - half} ${py + 2.4}L${px} ${py - 1.6}L${px + half} ${py + 2.4}Z`,
				fill: INK,
			};
		}),
		...(top === undefined || bottom === undefined
			? []
			: [
					{
						kind: "path",
						d: line(top.md.value, Math.max(bottom.md.value, top.md.value + 1)),
						stroke: { color: VERMILLION, width: 4, dash: [2.4, 1.6] },
					} as const,
				]),
	];
};

const labelsOf = (
	well: Well,
	results: Results,
	print: Print,
	y: (tvd: number) => number,
	wellhead: number,
): readonly Label[] => {
	const { words } = print;
	const label = (id: string, name: string, mark: DepthMark, weight: number, keep: boolean): Label => ({
		id,
		anchor: [wellhead, y(mark.tvd.value)],
		lines: [
			[
				run(`${name} `, { weight: "semibold" }),
				...compose(words.depthVertical, { tvd: print.value(mark.tvd) }),
			],
		],
		weight,
		dot: false,
		...(keep ? { keep: true, least: 1 } : {}),
	});
	const { geology, casing, trajectory, stimulation } = results;
	const down = trajectory.closure.value < STRAIGHT_DOWN;
	// What ends above the water, and what goes on along the lateral, is told by the full schematic.
	const water = geology.protected_water_base?.tvd.value ?? 0;
	const kickoff = down ? undefined : trajectory.kickoff?.md.value;
	const upper = well.strings.filter(
		({ shoe }) => shoe.value > water && (kickoff === undefined || shoe.value <= kickoff),
	);
	return [
		...(geology.protected_water_base === undefined
			? []
			: [label("water-base", words.waterBase, geology.protected_water_base, 9, true)]),
		...upper.flatMap((string) => {
			const shoe = casing[string.id]?.shoe;
			return shoe === undefined
				? []
				: [label(`shoe-${string.id}`, stringName(words, string), shoe, 6, string.id === "surface")];
		}),
		...(stimulation === undefined
			? []
			: [label("perforation", words.topPerforation, stimulation.top_perforation, 8, down)]),
		...(trajectory.kickoff === undefined
			? []
			: [label("kickoff", words.kickoff, trajectory.kickoff, 3, false)]),
	];
};

const alternativeOf = (results: Results, print: Print): string => {
	const { words } = print;
	const { trajectory, geology, isolation } = results;
	const gap = isolation.protected_water_to_top_perforation;
	return [
		sentence(trajectory.closure.value < STRAIGHT_DOWN ? words.altPathDown : words.altPath, {
			azimuth: print.value(trajectory.closure_azimuth),
			departure: print.value(trajectory.closure),
			tvd: print.value(trajectory.total_depth.tvd),
		}),
		...(geology.protected_water_base === undefined
			? []
			: [
					sentence(words.altWaterBase, {
						depth: print.value(geology.protected_water_base.tvd),
					}),
				]),
		...(gap === undefined || gap.value < 0 ? [] : [sentence(words.altGap, { distance: print.value(gap) })]),
		words.altTable,
	].join(" ");
};
