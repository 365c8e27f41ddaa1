import type { Results } from "../../calc/results.ts";
import type { Known } from "../../cite/known.ts";
import type { Drawing, Shape, Stroke } from "../../document/shapes.ts";
import type { Dimension } from "../../units/dimensions.ts";
import type { Well } from "../../well/well.ts";
import { type Axis, axisOf } from "../charts/axis.ts";
import { chartBox, levelAxis, levelAxisTall, uprightAxis } from "../charts/chart-frame.ts";
import type { ChartOptions } from "../charts/chart-options.ts";
import { curve } from "../charts/curve.ts";
import { type Label, labelColumn, labelRow } from "../label.ts";
import { compose, type Line, run, sentence } from "../line-of-text.ts";
import { boxPath, n } from "../lithology.ts";
import { named } from "../named.ts";
import { noteOf, noteShapes } from "../note.ts";
import { BLUE, GROUND, INK, VERMILLION } from "../palette.ts";
import { type Print, printer } from "../print.ts";
import { heading } from "../schematic/string-labels.ts";
import type { Area } from "../tags.ts";
import type { Point } from "../well-axis.ts";
import { stepName } from "./step-name.ts";
import { type Treatment, treatmentOf } from "./treatment-steps.ts";

const SIZE = 8;
const RULER = 44;
const LABELS = 122;
/** Room for the names of the steps over the charts, and between the charts [pt]. */
const STEPS = SIZE * 1.2 * 2 + 30;
const APART = 24;
const FOLLOWED: Stroke = { color: INK, width: 1.8 };
const BOUND: Stroke = { color: VERMILLION, width: 1.3, dash: [6, 2] };
const RECORD: Stroke = { color: BLUE, width: 1.3, dash: [1.4, 1.4] };

/** A quantity over the time of the stage, in a chart of its own. */
interface Track {
	readonly id: "pressure" | "rate" | "concentration";
	readonly dimension: Dimension;
	/** Share of the height. */
	readonly share: number;
	readonly points: readonly (readonly [time: number, value: number])[];
	/** Level lines across the chart. */
	readonly levels: readonly { readonly value: number; readonly stroke: Stroke; readonly label: Label }[];
	/** Where the line is named. */
	readonly label: Label & { readonly time: number; readonly value: number };
}

/** What one stage is planned to see while it is pumped: pressure where it is worked, rate and proppant, one above the other. */
export const treatmentPlot = (
	well: Well,
	results: Results,
	{ width, height, units, words, keyOf }: ChartOptions,
): Drawing | undefined => {
	const treatment = treatmentOf(well, results.stimulation);
	if (treatment === undefined) return undefined;
	const print = printer(units, words, keyOf);
	const tracks = tracksOf(well, treatment, print);
	const [left, right] = [RULER, width - LABELS];
	const top = STEPS;
	const pressure = treatment.course === undefined ? words.treatmentNoPressure : words.treatmentPressure;
	const note = noteOf([words.treatmentScale, pressure], SIZE, width);
	const bottom = height - levelAxisTall(SIZE) - note.tall - 3;
	const room = bottom - top - APART * (tracks.length - 1);
	const whole = tracks.reduce((sum, track) => sum + track.share, 0);
	const time = axisOf("duration", units, [0, treatment.time], [left, right], 40);
	let y = top;
	const charts = tracks.map((track) => {
		const box: Area = { left, right, top: y, bottom: y + (room * track.share) / whole };
		y = box.bottom + APART;
		const most = Math.max(
			...track.points.map(([, value]) => value),
			...track.levels.map((each) => each.value),
			0,
		);
		const up = axisOf(track.dimension, units, [0, most > 0 ? most * 1.12 : 1], [box.bottom, box.top], 12);
		return { track, box, up };
	});
	const names = labelRow(stepLabels(treatment, time, top, print), {
		left: left - 6,
		right: width - LABELS + 30,
		top: 0,
		bottom: top - 26,
		edge: top - 22,
		above: true,
		widest: 60,
		size: SIZE,
	});
	return {
		id: "treatment-plot",
		width,
		height,
		title: sentence(treatment.hardest ? words.treatmentHardest : words.treatmentOf, {
			stage: String(treatment.stage.number),
			well: well.identity.name,
		}),
		alternative: alternativeOf(treatment, print),
		scale: words.treatmentScale,
		shapes: [
			named(
				"steps",
				stepBands(treatment, time, charts[0]?.box.top ?? top, charts.at(-1)?.box.bottom ?? bottom),
			),
			...charts.flatMap(({ track, box, up }) => chartShapes(track, box, up, time, print, width)),
			...names.shapes,
			...levelAxis(time, { edge: bottom, size: SIZE, title: words.axisTime, name: "time", under: true }),
			noteShapes(note, height - note.tall - 1),
		],
	};
};

/** Every other step stands on a tint, so that it can be followed down the charts. */
const stepBands = ({ steps }: Treatment, time: Axis, top: number, bottom: number): Shape[] =>
	steps.flatMap(({ from, to }, i): Shape[] =>
		i % 2 === 0 || to <= from
			? []
			: [
					{
						kind: "path",
						d: boxPath({
							x: time.at(from),
							y: top - 22,
							width: time.at(to) - time.at(from),
							height: bottom - top + 22,
						}),
						fill: GROUND,
					},
				],
	);

const stepLabels = ({ steps }: Treatment, time: Axis, top: number, { words }: Print): Label[] =>
	steps.map(
		({ step, from, to }, i): Label => ({
			id: `step ${i + 1}`,
			anchor: [time.at((from + to) / 2), top - 22],
			lines: [[run(stepName(step.name, (each) => words.stepsGiven[each]))]],
			weight: step.time.value,
			dot: false,
		}),
	);

const chartShapes = (track: Track, box: Area, up: Axis, time: Axis, print: Print, width: number): Shape[] => {
	const at = ([t, value]: readonly [number, number]): Point => [time.at(t), up.at(value)];
	const labels = labelColumn(
		[
			{ ...track.label, anchor: [box.right, up.at(track.label.value)], dot: false },
			...track.levels.map(
				({ value, label }): Label => ({ ...label, anchor: [box.right, up.at(value)], dot: false }),
			),
		],
		{
			side: "right",
			x: box.right + 12,
			width: width - box.right - 12,
			edge: box.right + 2,
			low: box.top - SIZE,
			high: box.bottom + SIZE,
			size: SIZE,
		},
	);
	const frame = chartBox(box, time, up).map((shape, i): Shape => {
		// The steps' tints lie behind the box and are to be seen.
		if (i > 0 || shape.kind !== "path") return shape;
		const { fill: _, ...open } = shape;
		return open;
	});
	return [
		...frame,
		...track.levels.flatMap(({ value, stroke }) =>
			curve(
				[
					[box.left, up.at(value)],
					[box.right, up.at(value)],
				],
				stroke,
				box,
			),
		),
		...curve(track.points.map(at), FOLLOWED, box),
		dot(at([track.label.time, track.label.value])),
		...uprightAxis(up, {
			edge: box.left,
			size: SIZE,
			title: print.words.treatmentAxes[track.id],
			name: track.id,
		}),
		...labels.shapes,
	];
};

/** The place that the label at the right tells of. */
const dot = ([x, y]: Point): Shape => ({
	kind: "path",
	d: `M${n(x - 2)} ${n(y)}a2 2 0 1 0 4 0a2 2 0 1 0 -4 0Z`,
	fill: INK,
});

const tracksOf = (well: Well, treatment: Treatment, print: Print): Track[] => {
	const { steps, course, given } = treatment;
	const { words } = print;
	const stepped = (of: (i: number) => number): [number, number][] =>
		steps.flatMap(({ from, to }, i): [number, number][] => [
			[from, of(i)],
			[to, of(i)],
		]);
	const greatest = <K extends Known>(values: readonly (K | undefined)[]) =>
		values.reduce<{ known: K; i: number } | undefined>(
			(best, known, i) =>
				known !== undefined && known.value > (best?.known.value ?? 0) ? { known, i } : best,
			undefined,
		);
	const label = (id: string, text: string, known: Known | undefined): Label => ({
		id,
		anchor: [0, 0],
		lines: [heading(text), ...(known === undefined ? [] : [[print.value(known)]])],
		weight: 5,
		keep: true,
	});
	const middle = (i: number) => ((steps[i]?.from ?? 0) + (steps[i]?.to ?? 0)) / 2;
	const level = (id: string, text: string, known: Known | undefined, stroke: Stroke): Track["levels"] =>
		known === undefined ? [] : [{ value: known.value, stroke, label: label(id, text, known) }];
	const rate = greatest(steps.map(({ step }) => step.rate));
	const proppant = greatest(steps.map(({ step }) => step.concentration));
	const actual = given?.actual;
	const out: Track[] = [];
	if (course !== undefined) {
		const points = course.rows.map((row) => [row.time, row.surface] as const);
		const peak = points.reduce((best, point) => (point[1] > best[1] ? point : best), points[0] ?? [0, 0]);
		out.push({
			id: "pressure",
			dimension: "pressure",
			share: 1.9,
			points,
			levels: [
				...level("maximum", words.maximumTreating, well.stimulation?.limits?.maximumTreatingPressure, BOUND),
				...level("recorded maximum", words.recordedMaximum, actual?.maximumPressure, RECORD),
				...level("recorded average", words.recordedAverage, actual?.averagePressure, RECORD),
			],
			label: {
				...label("pressure", words.greatestExpected, treatment.greatest),
				time: peak[0],
				value: peak[1],
			},
		});
	}
	if (rate !== undefined)
		out.push({
			id: "rate",
			dimension: "flow-rate",
			share: 1,
			points: stepped((i) => steps[i]?.step.rate.value ?? 0),
			levels: level("recorded rate", words.recordedAverage, actual?.averageRate, RECORD),
			label: {
				...label("rate", words.greatestRate, rate.known),
				time: middle(rate.i),
				value: rate.known.value,
			},
		});
	if (proppant !== undefined)
		out.push({
			id: "concentration",
			dimension: "proppant-concentration",
			share: 1,
			points: stepped((i) => steps[i]?.step.concentration?.value ?? 0),
			levels: [],
			label: {
				...label("concentration", words.greatestProppant, proppant.known),
				time: middle(proppant.i),
				value: proppant.known.value,
			},
		});
	return out;
};

const alternativeOf = (treatment: Treatment, print: Print): string => {
	const { words } = print;
	const steps = treatment.steps.map(
		({ step }): Line => [
			run(stepName(step.name, (each) => words.stepsGiven[each])),
			run(" "),
			print.value(step.rate),
			...(step.concentration === undefined ? [] : [run(", "), print.value(step.concentration)]),
			run(", "),
			print.value(step.time),
		],
	);
	const text = (line: Line) => line.map((part) => part.text).join("");
	return [
		sentence(words.altTreatment, { stage: String(treatment.stage.number), list: steps.map(text).join("; ") }),
		...(treatment.greatest === undefined
			? []
			: [text(compose(words.altTreatmentPressure, { pressure: print.value(treatment.greatest) }))]),
		words.altTable,
	].join(" ");
};
