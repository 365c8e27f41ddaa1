import type { Results } from "../../calc/results.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import type { Well } from "../../well/well.ts";
import type { ChartOptions } from "../charts/chart-options.ts";
import { type LegendEntry, legendHeight, legendShapes, SWATCH } from "../legend.ts";
import { sentence } from "../line-of-text.ts";
import { boxPath } from "../lithology.ts";
import { clusterMarks, valveMarks } from "../marks/perforations.ts";
import { plugMark, steelWall } from "../marks/steel.ts";
import { named } from "../named.ts";
import { noteOf, noteShapes } from "../note.ts";
import { type Print, printer } from "../print.ts";
import type { AxisPoint } from "../well-axis.ts";
import { cellStyle, clustersDrawn, recordedStages, rowShapes, rowTall, SIZE } from "./stage-row-shapes.ts";
import { stageRows } from "./stage-rows.ts";

/** Room for half of a number at either end [pt]. */
const MARGIN = 12;

/**
 * The treated hole laid flat, in as many rows as its stages need, the heel at the top left and the toe at the bottom
 * right: pipe, openings, plugs, and a cell for each stage. All rows are at one scale along the hole.
 */
export const stagePlan = (
	well: Well,
	results: Results,
	{ width, units, words, keyOf }: ChartOptions,
): Drawing | undefined => {
	const stages = results.stimulation?.stages ?? [];
	if (stages.length === 0) return undefined;
	const print = printer(units, words, keyOf);
	const rows = stageRows(stages, results.trajectory.total_depth.md.value);
	const longest = Math.max(...rows.map((row) => row.to - row.from));
	const each = clustersDrawn(rows, (width - 2 * MARGIN) / longest);
	let top = 0;
	const shapes = rows.flatMap((row, i): Shape[] => {
		const first = i === 0;
		const here = top;
		top += rowTall(first);
		const place = { row, first, longest, left: MARGIN, right: width - MARGIN, top: here };
		return [named(`row ${i + 1}`, rowShapes(well, stages, place, print, each))];
	});
	const legend = legendOf(well, results, print, each);
	const legendBox = { x: 0, width, size: SIZE };
	const note = noteOf([words.stagePlanScale, ...(each ? [] : [words.stagePlanOne])], SIZE, width);
	return {
		id: "stage-plan",
		width,
		height: top + note.tall + 5 + legendHeight(legend, legendBox),
		title: sentence(words.stagePlanOf, { well: well.identity.name }),
		alternative: alternativeOf(results, print),
		scale: words.stagePlanScale,
		shapes: [
			...shapes,
			noteShapes(note, top),
			...legendShapes(legend, { ...legendBox, y: top + note.tall + 5 }),
		],
	};
};

const level = (x: number): AxisPoint => ({ md: 0, x, y: SWATCH.height / 2, normal: [0, -1] });
const pipe = steelWall([level(0), level(SWATCH.width)], { outer: 4, inner: 2.6 });

const legendOf = (well: Well, { stimulation }: Results, { words }: Print, each: boolean): LegendEntry[] => {
	const stages = stimulation?.stages ?? [];
	const clusters = stages.some((stage) => stage.clusters.length > 0);
	const sleeves = well.stimulation?.method === "sliding sleeve";
	const valve = sleeves || well.stimulation?.toe?.kind.includes("valve") === true;
	const recorded = recordedStages(well);
	const cell = (filled: boolean): Shape[] => [
		{ kind: "path", d: boxPath({ x: 1, y: 2, width: 14, height: 5 }), ...cellStyle(filled) },
	];
	const entry = (when: boolean, text: string, swatch: readonly Shape[]): LegendEntry[] =>
		when ? [{ text, swatch }] : [];
	return [
		...entry(true, words.legendSteel, pipe),
		...entry(!sleeves, clusters && each ? words.legendCluster : words.legendPerforations, [
			...pipe,
			...clusterMarks([level(5), level(11)], 2.6, 6, 1.1),
		]),
		...entry(valve, words.legendValve, [...pipe, ...valveMarks([level(8)], 4)]),
		...entry(
			stages.some((stage) => stage.plug !== undefined),
			words.legendPlug,
			[...pipe, ...plugMark(level(8), 2.6)],
		),
		...entry(
			stages.some((stage) => !recorded.has(stage.number)),
			words.legendStageCell,
			cell(false),
		),
		...entry(
			stages.some((stage) => recorded.has(stage.number)),
			words.legendStagePumped,
			cell(true),
		),
	];
};

const alternativeOf = ({ stimulation }: Results, print: Print): string => {
	const { words } = print;
	if (stimulation === undefined) return words.altTable;
	const clusters = stimulation.stages.reduce((sum, stage) => sum + stage.clusters.length, 0);
	const plugs = stimulation.stages.filter((stage) => stage.plug !== undefined).length;
	return [
		sentence(stimulation.stage_count.value === 1 ? words.altPerforationsOne : words.altPerforations, {
			count: print.value(stimulation.stage_count),
			top: print.mark(stimulation.top_perforation),
			bottom: print.mark(stimulation.bottom_perforation),
		}),
		...(clusters === 0 ? [] : [sentence(words.altClusters, { clusters: String(clusters) })]),
		...(plugs === 0 ? [] : [sentence(words.altPlugs, { plugs: String(plugs) })]),
		words.altTable,
	].join(" ");
};
