import type { CasingResults, Results } from "../../calc/results.ts";
import type { Drawing, Shape, Stroke } from "../../document/shapes.ts";
import type { CasingString, Well } from "../../well/well.ts";
import { axisOf } from "../charts/axis.ts";
import { chartBox, levelAxis, levelAxisTall, uprightAxis } from "../charts/chart-frame.ts";
import type { ChartOptions } from "../charts/chart-options.ts";
import { curve } from "../charts/curve.ts";
import { type LegendEntry, legendHeight, legendShapes, strokeSwatch } from "../legend.ts";
import { compose, lineText, run, sentence, setLine } from "../line-of-text.ts";
import { forceUnit } from "../load-lines/load-cases.ts";
import { named } from "../named.ts";
import { BLUE, INK } from "../palette.ts";
import { printer, stringName, withinSentence } from "../print.ts";
import type { Point } from "../well-axis.ts";

const SIZE = 8;
const RULER = 38;
const MARGIN = 14;
/** Below this share of the free hook load friction is not worth a drawing. */
const DRAG = 0.02;

const FREE: Stroke = { color: INK, width: 1, dash: [1.4, 1.4] };
const LEAST: Stroke = { color: BLUE, width: 1.2, dash: [6, 2] };
const GREATEST: Stroke = { color: BLUE, width: 1.7 };
const PULLED_LEAST: Stroke = { color: INK, width: 1.2, dash: [6, 2] };
const PULLED_GREATEST: Stroke = { color: INK, width: 1.7 };

type Dragged = CasingResults & Required<Pick<CasingResults, "hook_loads" | "slack_off" | "hook_load">>;

const isDragged = (results: CasingResults | undefined): results is Dragged =>
	results?.hook_loads !== undefined &&
	results.slack_off !== undefined &&
	results.hook_load !== undefined &&
	results.hook_load.pulled_greatest_friction.value > (1 + DRAG) * results.hook_load.free.value;

/** Hook load over the depth of the shoe while a string is run: hung free, let down and pulled, with least and greatest friction. */
const chartOf = (
	string: CasingString,
	well: Well,
	found: Dragged,
	{ width, height, units, words, keyOf }: ChartOptions,
): Drawing => {
	const print = printer(units, words, keyOf);
	const { hook_loads: pulled, slack_off: down } = found;
	const legend: readonly LegendEntry[] = (
		[
			[words.hookDownGreatest, GREATEST],
			[words.hookDownLeast, LEAST],
			[words.hookFree, FREE],
			[words.hookPulledLeast, PULLED_LEAST],
			[words.hookPulledGreatest, PULLED_GREATEST],
		] as const
	).map(([text, { color, width: wide, dash }]) => ({ text, swatch: [strokeSwatch(color, wide, dash)] }));
	const legendBox = { x: 0, width, size: SIZE };
	const top = levelAxisTall(SIZE) + 2;
	const bottom = Math.max(height - legendHeight(legend, legendBox) - 6, top + 120);
	const box = { left: RULER, right: width - MARGIN, top, bottom };
	const depth = axisOf("measured-depth", units, [string.top.value, string.shoe.value], [top, bottom], 22);
	const most = Math.max(...pulled.rows.map(({ pulled_greatest }) => pulled_greatest));
	const across = axisOf("force", units, [0, 1.05 * most], [box.left, box.right], 40, forceUnit(units));
	const line = (rows: readonly Readonly<Record<string, number>>[], column: string): Point[] =>
		rows.map((row) => [across.at(row[column] ?? Number.NaN), depth.at(row["md"] ?? Number.NaN)]);
	const { reach } = down.greatest_friction;
	const stops = reach.md.value < string.shoe.value;
	const stopped = compose(words.hookStops, { at: print.value(reach.md) });
	const name = withinSentence(stringName(words, string));
	const lines: Shape[] = [
		...curve(line(pulled.rows, "free"), FREE, box),
		...curve(line(pulled.rows, "pulled_least"), PULLED_LEAST, box),
		...curve(line(pulled.rows, "pulled_greatest"), PULLED_GREATEST, box),
		...curve(line(down.least_friction.line.rows, "hook_load"), LEAST, box),
		...curve(line(down.greatest_friction.line.rows, "hook_load"), GREATEST, box),
	];
	return {
		id: `hook-loads-${string.id}`,
		width,
		height: bottom + 6 + legendHeight(legend, legendBox),
		title: sentence(words.hookLoadsOf, { string: name, well: well.identity.name }),
		alternative: sentence(words.altHookLoads, {
			string: name,
			free: print.value(found.hook_load.free, AS_TABLED).text,
			pulled: print.value(found.hook_load.pulled_greatest_friction, AS_TABLED).text,
			slides: lineText(print.mark(reach)),
		}),
		scale: words.hookScale,
		shapes: [
			...chartBox(box, across, depth),
			...uprightAxis(depth, { edge: RULER, size: SIZE, title: words.rulerMeasured, name: "depth" }),
			...levelAxis(across, { edge: box.top, size: SIZE, title: words.hookLoad, name: "hook load" }),
			...lines,
			...(stops
				? [
						named(
							"label stops",
							setLine(
								stopped.map((part) => run(part.text, { ...part, weight: "semibold" })),
								{
									x: box.left + 8,
									y: Math.min(depth.at(reach.md.value) + SIZE + 4, bottom - 4),
									size: SIZE,
								},
							),
						),
					]
				: []),
			...legendShapes(legend, { ...legendBox, y: bottom + 8 }),
		],
	};
};

/** As the table of hook loads rounds them. */
const AS_TABLED = { nearest: 1000 } as const;

/** One drawing for each string that friction holds up on its way. */
export const hookLoadCharts = (well: Well, results: Results, options: ChartOptions): Drawing[] =>
	well.strings.flatMap((string) => {
		const found = results.casing[string.id];
		return isDragged(found) ? [chartOf(string, well, found, options)] : [];
	});
