import type { BondLogResults, Results } from "../../calc/results.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import type { CasingString, Well } from "../../well/well.ts";
import { axisOf } from "../charts/axis.ts";
import { uprightAxis } from "../charts/chart-frame.ts";
import type { ChartOptions } from "../charts/chart-options.ts";
import { type LegendEntry, legendHeight, legendShapes } from "../legend.ts";
import { run, sentence, setLine } from "../line-of-text.ts";
import { boxPath } from "../lithology.ts";
import { named } from "../named.ts";
import { BLUE, CEMENT_BUILT, INK, ORANGE, PAPER, VERMILLION } from "../palette.ts";
import { stringName, withinSentence } from "../print.ts";

const SIZE = 8;
const RULER = 40;
const WIDEST = 110;
/** Right of the bars, for the name of the dashed line. */
const NAMED = 100;

type Interval = BondLogResults["intervals"][number];
interface Bar {
	readonly x: number;
	readonly width: number;
	readonly y: (md: number) => number;
}

const box = ({ x, width, y }: Bar, from: number, to: number): string =>
	boxPath({ x, y: y(from), width, height: Math.max(1, y(to) - y(from)) });

/** Where the log shows bond the bar is filled; where it does not, it is open with a slanted stroke. */
const bonded = (bar: Bar, from: number, to: number): Shape => ({
	kind: "path",
	d: box(bar, from, to),
	fill: BLUE,
	stroke: { color: INK, width: 0.5 },
});
const unbonded = (bar: Bar, from: number, to: number): Shape[] => [
	{ kind: "path", d: box(bar, from, to), fill: PAPER, stroke: { color: INK, width: 0.6 } },
	{
		kind: "line",
		x1: bar.x,
		y1: bar.y(to),
		x2: bar.x + bar.width,
		y2: bar.y(from),
		stroke: { color: VERMILLION, width: 1 },
	},
];
const squeezed = (bar: Bar, from: number, to: number): Shape => ({
	kind: "path",
	d: box({ ...bar, x: bar.x - 3, width: 3 }, from, to),
	fill: ORANGE,
	stroke: { color: INK, width: 0.5 },
});

/** A triangle on the right edge: pressure was put on the cement there, and it held. */
const heldMark = ({ x, width }: Bar, y: number): Shape => ({
	kind: "path",
	d: `M${x + width + 1} ${y}L${x + width + 7} ${y - 3.5}V${y + 3.5}Z`,
	fill: INK,
});

const swatchOf = (shapes: (bar: Bar) => readonly Shape[]): readonly Shape[] =>
	shapes({ x: 4, width: 9, y: (md) => md });

const intervalShapes = (bar: Bar, { top, bottom, bonded: isBonded }: Interval): readonly Shape[] =>
	isBonded ? [bonded(bar, top.md.value, bottom.md.value)] : unbonded(bar, top.md.value, bottom.md.value);

/**
 * Beside a scale of measured depth a bar for each string with a record of its cement: the column, what the bond log shows
 * of it stretch by stretch, squeezes, and tests that held. Nothing where no bond log, survey, test or squeeze is on record.
 */
export const evidenceChart = (
	well: Well,
	results: Results,
	{ width, height, units, words }: ChartOptions,
): Drawing | undefined => {
	const strings = well.strings.filter(
		({ id, cement }) => cement?.actual !== undefined && results.cement[id] !== undefined,
	);
	if (strings.every(({ cement }) => cement?.actual?.seal === undefined)) return undefined;
	const legend: readonly LegendEntry[] = [
		{ text: words.evidenceCement, swatch: swatchOf((bar) => [cementShape(bar, 0, 9)]) },
		{ text: words.evidenceBonded, swatch: swatchOf((bar) => [bonded(bar, 0, 9)]) },
		{ text: words.evidenceUnbonded, swatch: swatchOf((bar) => unbonded(bar, 0, 9)) },
		{ text: words.evidenceSqueeze, swatch: swatchOf((bar) => [squeezed(bar, 0, 9)]) },
		{ text: words.evidenceHeld, swatch: swatchOf((bar) => [heldMark({ ...bar, width: 1 }, 4.5)]) },
	];
	const legendBox = { x: 0, width, size: SIZE };
	const [top, bottom] = [SIZE * 4.2, height - legendHeight(legend, legendBox) - 8];
	const deepest = Math.max(...strings.map(({ shoe }) => shoe.value));
	const depth = axisOf("measured-depth", units, [0, deepest], [top, bottom], 22);
	const lane = Math.min((width - RULER - NAMED) / strings.length, WIDEST);
	const base = results.geology.protected_water_base;
	const right = RULER + lane * strings.length;
	return {
		id: "isolation-evidence",
		width,
		height,
		title: sentence(words.evidenceOf, { well: well.identity.name }),
		alternative: alternativeOf(well, results, words),
		scale: words.evidenceScale,
		shapes: [
			...uprightAxis(depth, { edge: RULER, size: SIZE, title: words.rulerMeasured, name: "depth" }),
			...strings.flatMap((string, i) =>
				stringShapes(string, results, {
					x: RULER + lane * (i + 0.5) - 8,
					width: 16,
					y: depth.at,
				}).concat(
					named(
						`label ${string.id}`,
						setLine([run(stringName(words, string), { weight: "semibold" })], {
							x: RULER + lane * (i + 0.5),
							// Neighbors take turns, one above the other: Spanish names are long.
							y: top - 4 - (i % 2) * SIZE * 1.2,
							size: SIZE,
							anchor: "middle",
						}),
					),
				),
			),
			...(base?.md === undefined
				? []
				: [
						{
							kind: "line" as const,
							x1: RULER,
							y1: depth.at(base.md.value),
							x2: right,
							y2: depth.at(base.md.value),
							stroke: { color: BLUE, width: 0.8, dash: [4, 2] },
						},
						named(
							"label base of protected water",
							setLine([run(words.evidenceWater)], {
								x: right + 3,
								y: depth.at(base.md.value) + SIZE * 0.34,
								size: SIZE,
							}),
						),
					]),
			...legendShapes(legend, { ...legendBox, y: bottom + 10 }),
		],
	};
};

const cementShape = (bar: Bar, from: number, to: number): Shape => ({
	kind: "path",
	d: box(bar, from, to),
	fill: CEMENT_BUILT,
	stroke: { color: INK, width: 0.5 },
});

const stringShapes = (string: CasingString, results: Results, bar: Bar): Shape[] => {
	const seal = string.cement?.actual?.seal;
	const log = results.isolation.bond_logs.find((each) => each.string === string.id);
	const held = /^held\b/iu.test(string.shoeTest?.actual?.outcome ?? "");
	return [
		...(results.cement[string.id]?.columns ?? []).map((column) =>
			cementShape(bar, column.top.md.value, column.bottom.md.value),
		),
		...(log?.intervals ?? []).flatMap((interval) =>
			intervalShapes({ ...bar, x: bar.x + 4, width: bar.width - 8 }, interval),
		),
		...(seal?.squeezes ?? []).map(({ top, bottom }) => squeezed(bar, top.value, bottom.value)),
		...(seal?.tests ?? [])
			.filter((test) => test.held)
			.map(({ top, bottom }) => heldMark(bar, bar.y((top.value + bottom.value) / 2))),
		...(held ? [heldMark(bar, bar.y(string.shoe.value))] : []),
	];
};

const alternativeOf = (well: Well, results: Results, words: ChartOptions["words"]): string =>
	sentence(words.altEvidence, {
		list: results.isolation.bond_logs
			.map(({ string, intervals }) => {
				const found = well.strings.find(({ id }) => id === string);
				return sentence(words.altEvidenceString, {
					string: found === undefined ? string : withinSentence(stringName(words, found)),
					bonded: String(intervals.filter((each) => each.bonded).length),
					count: String(intervals.length),
				});
			})
			.join("; "),
	});
