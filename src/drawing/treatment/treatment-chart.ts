import type { Results, StageChartResults } from "../../calc/results.ts";
import type { Known } from "../../cite/known.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import type { Dimension } from "../../units/dimensions.ts";
import type { ChartReading } from "../../well/stage-chart.ts";
import type { Stage, Well } from "../../well/well.ts";
import { axisOf } from "../charts/axis.ts";
import { chartBox, levelAxis, levelAxisTall, uprightAxis } from "../charts/chart-frame.ts";
import type { ChartOptions } from "../charts/chart-options.ts";
import { curve } from "../charts/curve.ts";
import { thinned } from "../charts/thinned.ts";
import { labelColumn } from "../label.ts";
import { run, sentence } from "../line-of-text.ts";
import { noteOf, noteShapes } from "../note.ts";
import { BLUE, INK, VERMILLION } from "../palette.ts";
import { printer } from "../print.ts";
import { heading } from "../schematic/string-labels.ts";

const SIZE = 8;
const RULER = 44;
const LABELS = 122;
/** Above each chart there is its axis title. */
const APART = SIZE * 3.4;
/** Stretches of time that a line is thinned to: finer than print can show. */
const STRETCHES = 360;

type TrackId = "pressure" | "rate" | "concentration" | "annulus";

const TRACKS: readonly {
	readonly id: TrackId;
	readonly dimension: Dimension;
	readonly share: number;
	readonly color: string;
}[] = [
	{ id: "pressure", dimension: "pressure", share: 1.9, color: INK },
	{ id: "rate", dimension: "flow-rate", share: 1, color: BLUE },
	{ id: "concentration", dimension: "proppant-concentration", share: 1, color: INK },
	{ id: "annulus", dimension: "pressure", share: 0.8, color: VERMILLION },
];

/** Each stage whose chart is on file, a drawing each: pressure, rate, proppant and annulus over time as they were read. */
export const treatmentCharts = (well: Well, results: Results, options: ChartOptions): readonly Drawing[] =>
	(well.stimulation?.stages ?? []).flatMap((stage): Drawing[] => {
		const found = results.stimulation?.stages.find(({ number }) => number === stage.number)?.chart;
		const readings = stage.actual?.chart?.readings;
		return found === undefined || readings === undefined
			? []
			: [chartOf(well, stage, readings, found, options)];
	});

const chartOf = (
	well: Well,
	stage: Stage,
	readings: readonly ChartReading[],
	found: StageChartResults,
	{ width, height, units, words, keyOf }: ChartOptions,
): Drawing => {
	const print = printer(units, words, keyOf);
	const [left, right] = [RULER, width - LABELS];
	const note = noteOf([words.treatmentChartThinned], SIZE, width);
	const bottom = height - levelAxisTall(SIZE) - note.tall - 3;
	const shown = TRACKS.filter(({ id }) => readings.some((reading) => reading[id] !== undefined));
	const whole = shown.reduce((sum, { share }) => sum + share, 0);
	const room = bottom - APART * shown.length;
	const [first, last] = [readings[0]?.time.value ?? 0, readings.at(-1)?.time.value ?? 1];
	const time = axisOf("duration", units, [first, last], [left, right], 40);
	let y = APART;
	const most: Readonly<Partial<Record<TrackId, Known>>> = {
		pressure: found.highest_pressure,
		...(found.highest_annulus === undefined ? {} : { annulus: found.highest_annulus }),
	};
	const charts = shown.flatMap(({ id, dimension, share, color }): Shape[] => {
		const box = { left, right, top: y, bottom: y + (room * share) / whole };
		y = box.bottom + APART;
		const points = readings.flatMap((reading) => {
			const value = reading[id]?.value;
			return value === undefined ? [] : [[reading.time.value, value as number] as const];
		});
		const top = points.reduce((best, point) => (point[1] > best[1] ? point : best), points[0] ?? [0, 0]);
		const up = axisOf(dimension, units, [0, top[1] > 0 ? top[1] * 1.12 : 1], [box.bottom, box.top], 12);
		const greatest = most[id];
		const labels =
			greatest === undefined
				? []
				: labelColumn(
						[
							{
								id,
								anchor: [right, up.at(top[1])],
								lines: [heading(words.recordedMaximum), [print.value(greatest)]],
								weight: 5,
								keep: true,
								dot: false,
							},
						],
						{
							side: "right",
							x: right + 12,
							width: LABELS - 12,
							edge: right + 2,
							low: box.top - SIZE,
							high: box.bottom + SIZE,
							size: SIZE,
						},
					).shapes;
		return [
			...chartBox(box, time, up),
			...curve(
				thinned(points, STRETCHES).map(([t, value]) => [time.at(t), up.at(value)]),
				{ color, width: 1 },
				box,
			),
			...uprightAxis(up, { edge: left, size: SIZE, title: words.chartAxes[id], name: id }),
			...labels,
		];
	});
	return {
		id: `treatment-chart-${stage.number}`,
		width,
		height,
		title: sentence(words.treatmentChart, { stage: String(stage.number), well: well.identity.name }),
		alternative: sentence(words.altTreatmentChart, {
			stage: String(stage.number),
			list: shown.map(({ id }) => words.chartAxes[id]).join("; "),
			most: [run(""), print.value(found.highest_pressure)].map((part) => part.text).join(""),
		}),
		scale: words.treatmentScale,
		shapes: [
			...charts,
			...levelAxis(time, { edge: bottom, size: SIZE, title: words.axisTime, name: "time", under: true }),
			noteShapes(note, height - note.tall - 1),
		],
	};
};
