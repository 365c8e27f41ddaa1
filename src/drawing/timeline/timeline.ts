import { dayOf, daysOf, type Phase, type PhaseTimes, timetable } from "../../calc/logistics/phase-times.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import type { Well } from "../../well/well.ts";
import type { ChartOptions } from "../charts/chart-options.ts";
import { type LegendEntry, legendHeight, legendShapes, SWATCH } from "../legend.ts";
import { compose, type Line, lineText, run, sentence, setLine, wrap } from "../line-of-text.ts";
import { boxPath } from "../lithology.ts";
import { named } from "../named.ts";
import { noteOf, noteShapes } from "../note.ts";
import { GROUND, INK, PAPER, SECOND_INK } from "../palette.ts";
import { type Print, printer } from "../print.ts";
import { heading } from "../schematic/string-labels.ts";
import { type DayAxis, dayAxis, longDate } from "./date-axis.ts";

interface TimelineOptions extends ChartOptions {
	/** `plain`: larger type, and what a neighbor sees and hears. */
	readonly detail: "full" | "plain";
}

const SIZES = { full: 8.5, plain: 10.5 } as const;
/** Share of the width that the words take. */
const WORDS = { full: 0.36, plain: 0.42 } as const;
const LEADING = 1.22;
/** Space at the right end, for half of a date [pt]. */
const MARGIN = 6;
/** Heights of the bars as planned and as it went [pt]. */
const PLANNED = 9;
const ACTUAL = 5;

/** The phases of the work one under another: the likely time as an open bar, how early or late it may end, and how it went. */
export const timeline = (well: Well, options: TimelineOptions): Drawing | undefined => {
	const { width, units, words, detail, keyOf } = options;
	const { phases, firstDay } = timetable(well.schedule);
	if (phases.length === 0) return undefined;
	const print = printer(units, words, keyOf);
	const size = SIZES[detail];
	const left = width * WORDS[detail];
	const rows = phases.map((times) => ({
		times,
		lines: rowLines(times.phase, detail, print).flatMap((line) => wrap(line, size, left - 10, 3)),
	}));
	const edge = size * 2.6 + 8;
	let y = edge + 4;
	const placed = rows.map((row) => {
		const top = y;
		const tall = Math.max(row.lines.length * size * LEADING, PLANNED + ACTUAL + 4) + size * 0.7;
		y += tall;
		return { ...row, top, tall };
	});
	const bottom = y;
	const ends = phases.flatMap(({ latest, actual }) => [latest, actual?.end ?? actual?.start ?? 0]);
	const starts = phases.flatMap(({ start, actual }) => [start, actual?.start ?? start]);
	const range = [Math.min(0, ...starts), Math.max(...ends, 1)] as const;
	const axis = dayAxis(words, firstDay, range, [left, width - MARGIN], { edge, bottom, size });
	const said = [words.timelineScale, ...(detail === "plain" ? [words.phaseSeenNote] : [])];
	const note = noteOf(said, size * 0.95, width);
	const legend = legendOf(phases, print);
	const legendBox = { x: 0, width, size: size * 0.95 };
	return {
		id: detail === "plain" ? "timeline-plain" : "timeline",
		width,
		height: bottom + note.tall + 9 + legendHeight(legend, legendBox),
		title:
			detail === "plain"
				? phases.every(({ phase }) => phase.actual?.ended !== undefined)
					? words.timelineDone
					: words.timelinePlain
				: sentence(words.timelineOf, { well: well.identity.name }),
		alternative: alternativeOf(phases, print),
		scale: words.timelineScale,
		shapes: [
			...placed.flatMap(({ top, tall }, i): Shape[] =>
				i % 2 === 0
					? [{ kind: "path", d: boxPath({ x: 0, y: top - 1, width, height: tall }), fill: GROUND }]
					: [],
			),
			...axis.shapes,
			...placed.flatMap(({ times, lines, top, tall }, i): Shape[] => [
				named(
					`label phase ${i + 1}`,
					lines.flatMap((line, row) => setLine(line, { x: 3, y: top + size * (0.95 + row * LEADING), size })),
				),
				named(`phase ${i + 1}`, barShapes(times, axis, top + (tall - size * 0.7) / 2)),
			]),
			noteShapes(note, bottom + 2),
			...legendShapes(legend, { ...legendBox, y: bottom + note.tall + 7 }),
		],
	};
};

const phaseName = ({ phase }: Phase, { words }: Print): string => words.phases[phase];

const days = (phase: Phase, print: Print): Line => {
	const [low, base, high] = daysOf(phase);
	const number = (known: typeof base) =>
		print.number(known, { unit: "d", decimals: Number.isInteger(known.value / 1440) ? 0 : 1 });
	return phase.days.length === 1
		? compose(base.value === 1440 ? print.words.oneDay : print.words.daysOnly, { base: number(base) })
		: compose(print.words.daysRange, { low: number(low), base: number(base), high: number(high) });
};

const rowLines = (phase: Phase, detail: "full" | "plain", print: Print): Line[] => {
	const { words } = print;
	const second = [
		...(phase.starts === undefined
			? []
			: [sentence(words.fromDate, { date: longDate(words, dayOf(phase.starts)) })]),
		...(phase.hours === undefined ? [] : [words.hoursGiven[phase.hours] ?? phase.hours]),
	].join("; ");
	return [
		heading(phaseName(phase, print)),
		days(phase, print),
		...(second === "" ? [] : [[run(second)]]),
		...(detail === "plain" ? [[run(words.phaseSeen[phase.phase], { color: SECOND_INK, italic: true })]] : []),
		...recorded(phase, words).map((said) => [run(said)]),
	];
};

/** When the work was, where it is on record. */
const recorded = ({ actual }: Phase, words: Print["words"]): readonly string[] => {
	if (actual === undefined) return [];
	const from = longDate(words, dayOf(actual.started));
	return [
		actual.ended === undefined
			? sentence(words.begun, { from })
			: sentence(words.done, { from, to: longDate(words, dayOf(actual.ended)) }),
	];
};

const whisker = (from: number, to: number, y: number): Shape => ({
	kind: "path",
	d: `M${from} ${y}H${to}M${from} ${y - 3}V${y + 3}M${to} ${y - 3}V${y + 3}`,
	stroke: { color: INK, width: 0.9 },
});

const barShapes = (
	{ start, end, earliest, latest, actual, phase }: PhaseTimes,
	{ at }: DayAxis,
	middle: number,
): Shape[] => {
	const y = actual === undefined ? middle - PLANNED / 2 : middle - (PLANNED + ACTUAL + 2) / 2;
	const [from, to] = [at(start), Math.max(at(end), at(start) + 1.5)];
	return [
		{
			kind: "path",
			d: boxPath({ x: from, y, width: to - from, height: PLANNED }),
			fill: PAPER,
			stroke: { color: INK, width: 1 },
		},
		...(phase.days.length === 1 && latest - earliest < 0.01
			? []
			: [whisker(at(earliest), at(latest), y + PLANNED / 2)]),
		...(actual === undefined
			? []
			: [
					{
						kind: "path",
						d: boxPath({
							x: at(actual.start),
							y: y + PLANNED + 2,
							width: Math.max(actual.end === undefined ? 3 : at(actual.end) - at(actual.start), 1.5),
							height: ACTUAL,
						}),
						fill: INK,
					} as const,
				]),
	];
};

const legendOf = (phases: readonly PhaseTimes[], { words }: Print): LegendEntry[] => [
	{
		text: words.legendLikely,
		swatch: [
			{
				kind: "path",
				d: boxPath({ x: 1, y: 0.5, width: 14, height: 8 }),
				fill: PAPER,
				stroke: { color: INK, width: 1 },
			},
		],
	},
	...(phases.some(({ phase }) => phase.days.length === 3)
		? [{ text: words.legendEnds, swatch: [whisker(1, 15, SWATCH.height / 2)] }]
		: []),
	...(phases.some(({ actual }) => actual !== undefined)
		? [
				{
					text: words.legendWent,
					swatch: [
						{ kind: "path", d: boxPath({ x: 1, y: 2, width: 14, height: ACTUAL }), fill: INK } as const,
					],
				},
			]
		: []),
];

const alternativeOf = (phases: readonly PhaseTimes[], print: Print): string =>
	sentence(print.words.altTimeline, {
		list: phases
			.map(({ phase }) => {
				const { words } = print;
				const told = [
					lineText(days(phase, print)),
					...(phase.hours === undefined ? [] : [words.hoursGiven[phase.hours] ?? phase.hours]),
					...recorded(phase, words),
				];
				return `${phaseName(phase, print)}: ${told.join(", ")}`;
			})
			.join("; "),
	});
