import type { Results } from "../../calc/results.ts";
import type { Drawing } from "../../document/shapes.ts";
import type { CasingString, Well } from "../../well/well.ts";
import { axisOf } from "../charts/axis.ts";
import { levelAxisTall, uprightAxis } from "../charts/chart-frame.ts";
import type { ChartOptions } from "../charts/chart-options.ts";
import { type LegendEntry, legendHeight, legendShapes, SWATCH } from "../legend.ts";
import { lineText, sentence } from "../line-of-text.ts";
import { noteOf, noteShapes } from "../note.ts";
import { type Print, printer, stringName, withinSentence } from "../print.ts";
import type { DrawingWords } from "../words/words.ts";
import { type BorneCase, casesOf, LOAD_CHARTS } from "./load-cases.ts";
import { caseLine, DASHES, LIMIT, LOAD, listTall, loadChart, RATING, ratingsDiffer } from "./load-chart.ts";

const SIZE = 8;
/** Right edge of the depth ruler, and the space between charts [pt]. */
const RULER = 38;
const APART = 18;
/** Room for half of a number at the right end [pt]. */
const MARGIN = 12;

/** Loads of one string against what it is rated for, over depth along the hole: a chart a way of loading, each load numbered. */
const stringLoads = (
	string: CasingString,
	well: Well,
	results: Results,
	{ width, height, units, words, keyOf }: ChartOptions,
): Drawing | undefined => {
	const print = printer(units, words, keyOf);
	const loads = results.casing[string.id]?.loads ?? [];
	const charts = LOAD_CHARTS.map((kind) => ({ kind, cases: casesOf(loads, kind) })).filter(
		({ cases }) => cases.length > 0,
	);
	if (charts.length === 0) return undefined;
	const wide = (width - RULER - MARGIN - APART * (charts.length - 1)) / charts.length;
	const lists = Math.max(...charts.map(({ cases }) => listTall(cases, wide, print)));
	const legend = legendOf(
		charts.map(({ cases }) => cases),
		words,
	);
	const legendBox = { x: 0, width, size: SIZE };
	const legendTall = legendHeight(legend, legendBox);
	const top = levelAxisTall(SIZE) + 2;
	const note = noteOf([words.loadsScale], SIZE, width);
	const under = 9 + lists + note.tall + 5 + legendTall;
	const bottom = Math.max(height - under, top + 98);
	const depth = axisOf("measured-depth", units, [string.top.value, string.shoe.value], [top, bottom], 26);
	const name = withinSentence(stringName(words, string));
	const foot = bottom + 9 + lists;
	return {
		id: `load-lines-${string.id}`,
		width,
		height: bottom + under,
		title: sentence(words.loadsOf, { string: name, well: well.identity.name }),
		alternative: alternativeOf(
			string,
			charts.flatMap(({ cases }) => cases),
			print,
		),
		scale: words.loadsScale,
		shapes: [
			...uprightAxis(depth, { edge: RULER, size: SIZE, title: words.rulerMeasured, name: "depth" }),
			...charts.flatMap(({ kind, cases }, i) => {
				const left = RULER + i * (wide + APART);
				const box = { left, right: left + wide, top, bottom };
				return loadChart(kind, cases, { box, depth, size: SIZE, print });
			}),
			noteShapes(note, foot),
			...legendShapes(legend, { ...legendBox, y: foot + note.tall + 5 }),
		],
	};
};

/** One drawing for each string whose loads are worked. */
export const loadLines = (well: Well, results: Results, options: ChartOptions): Drawing[] =>
	well.strings.flatMap((string) => stringLoads(string, well, results, options) ?? []);

const legendOf = (charts: readonly (readonly BorneCase[])[], words: DrawingWords): LegendEntry[] =>
	(
		[
			[charts.some(ratingsDiffer) ? words.legendRatings : words.legendRating, RATING],
			[words.legendLimit, LIMIT],
			[words.legendLoadFirst, { ...LOAD, width: 1.7 }],
			...(charts.some((cases) => cases.length > 1)
				? [[words.legendLoads, { ...LOAD, dash: DASHES[1] ?? [] }] as const]
				: []),
		] as const
	).map(([text, stroke]) => ({
		text,
		swatch: [{ kind: "line", x1: 0, y1: SWATCH.height / 2, x2: SWATCH.width, y2: SWATCH.height / 2, stroke }],
	}));

const alternativeOf = (string: CasingString, cases: readonly BorneCase[], print: Print): string => {
	const { words } = print;
	const told = cases.map((each) => {
		const at = each.at === undefined ? "" : `, ${lineText(print.mark(each.at))}`;
		return `${words.loadKinds[each.kind]}: ${lineText(caseLine(each, print)).replace(/\s{2,}/gu, " ")}${at}`;
	});
	return sentence(words.altLoads, {
		string: withinSentence(stringName(words, string)),
		list: told.join("; "),
	});
};
