import type { Results } from "../../calc/results.ts";
import type { Shape } from "../../document/shapes.ts";
import type { Well } from "../../well/well.ts";
import { type LegendEntry, SWATCH } from "../legend.ts";
import { type Box, boxPath, rockPattern } from "../lithology.ts";
import { cementFill, cementTopMark } from "../marks/cement.ts";
import { plannedShoeMark, stageToolMark } from "../marks/completion.ts";
import { bedMarks, clusterMarks, valveMarks } from "../marks/perforations.ts";
import { floatCollarMark, plugMark, sealMark, shoeMark, steelWall } from "../marks/steel.ts";
import { targetBar } from "../marks/target.ts";
import { waterBand, waterWellMark } from "../marks/water.ts";
import { hangerMark, wellheadMark } from "../marks/wellhead.ts";
import { BLUE, INK, PAPER, TARGET_TINT } from "../palette.ts";
import { type AxisPoint, levelFrom } from "../well-axis.ts";
import type { DrawingWords } from "../words/words.ts";
import { packersOf, treatingFoot } from "./completion-part.ts";
import { illustrativeBand } from "./illustrative-part.ts";
import { stageRail } from "./lateral-part.ts";
import { type Bed, bedsOf, type Detail, isLast } from "./view.ts";
import { plannedTopOf } from "./well-part.ts";
import { hungAtSurface } from "./wellhead-part.ts";

const box: Box = { x: 0, y: 0, width: SWATCH.width, height: SWATCH.height };
const framed = (shapes: readonly Shape[]): Shape[] => [
	{ kind: "path", d: boxPath(box), fill: PAPER },
	...shapes,
	{ kind: "path", d: boxPath(box), stroke: { color: INK, width: 0.5 } },
];
const upright = (y: number): AxisPoint => ({ md: 0, x: SWATCH.width / 2, y, normal: [1, 0] });
const hole = [upright(0), upright(SWATCH.height)];
const width = { outer: 4.6, inner: 3 };
const pipe = steelWall(hole, width);

/** What the drawing shows down to a depth, so that its legend explains that and nothing else. */
export const legendOf = (
	well: Well,
	results: Results,
	detail: Detail,
	deepest: number,
	words: DrawingWords,
	/** Whether packers, stage tools and a treating string are drawn. */
	completion = detail !== "plain",
): LegendEntry[] => {
	const shown = (tvd: number | undefined) => tvd !== undefined && tvd <= deepest;
	const ground = detail !== "numbers";
	const marks = detail !== "plain";
	const beds = ground ? bedsOf(well, deepest) : [];
	const cements = Object.values(results.cement).filter((cement) => shown(cement.top.tvd.value));
	const casing = Object.values(results.casing);
	const perforated = shown(results.stimulation?.top_perforation.tvd.value);
	const sleeves = well.stimulation?.method === "sliding sleeve";
	const last = well.strings.find((string) => isLast(well, string));
	const collar = last?.shoeTrack !== undefined && shown(results.casing[last.id]?.shoe.tvd.value);
	const hung = well.strings.some(
		(string) => string.kind === "liner" && shown(results.casing[string.id]?.top.tvd.value),
	);
	const packers = completion && packersOf(well).length > 0;
	const replanned = well.strings.some((string) => {
		const [cement, planned] = [results.cement[string.id], plannedTopOf(string)];
		return (
			cement?.top_basis === "recorded" &&
			planned !== undefined &&
			shown(planned) &&
			Math.abs(planned - cement.top.md.value) > 1
		);
	});
	const entry = (when: boolean, text: string, swatch: readonly Shape[]): LegendEntry[] =>
		when ? [{ text, swatch }] : [];
	return [
		...entry(true, words.legendSteel, pipe),
		...entry(
			cements.some((cement) => cement.top_basis !== "recorded"),
			words.legendCementPlanned,
			framed(cementFill(hole, 0, 8, "planned")),
		),
		...entry(
			cements.some((cement) => cement.top_basis === "recorded"),
			words.legendCementBuilt,
			framed(cementFill(hole, 0, 8, "recorded")),
		),
		...entry(replanned, words.legendPlannedTop, cementTopMark(upright(4.5), 0, 8, "planned")),
		...entry(
			casing.some((each) => shown(each.shoe.tvd.value)),
			marks ? words.legendShoe : words.legendShoePlain,
			[...steelWall([upright(0), upright(7)], width), ...shoeMark(upright(7), 4.6, 3)],
		),
		...entry(completion && hungAtSurface(well).length > 0, words.legendWellhead, [
			...wellheadMark(8, 4.6, [8]).slice(0, 2),
			...steelWall([upright(4.6), upright(9)], { outer: 8, inner: 6.8 }),
			...steelWall([upright(5), upright(9)], { outer: 3.4, inner: 2.2 }),
			...hangerMark(upright(5), 3.4, 6.8),
		]),
		...entry(marks && collar, words.legendFloat, [...pipe, ...floatCollarMark(upright(3.5), 3)]),
		...entry(
			hung || packers,
			hung ? (packers ? words.legendLinerPacker : words.legendLinerTop) : words.legendPacker,
			[...pipe, ...sealMark(upright(2), 4.6, 8)],
		),
		...entry(
			completion && well.strings.some((string) => string.cement?.stageTool !== undefined),
			words.legendStageTool,
			[...pipe, ...stageToolMark(upright(4.5), 4.6)],
		),
		...entry(completion && treatingFoot(well) !== undefined, words.legendTreatingString, [
			...steelWall(hole, { outer: 7.4, inner: 6 }),
			...steelWall(hole, { outer: 3.4, inner: 2.2 }),
		]),
		...entry(
			perforated && !sleeves,
			words.legendPerforations,
			detail === "plain" && levelFrom(results.trajectory) !== undefined
				? bedMarks(
						[5, 8, 11].map((x) => ({ x, top: 1.5, bottom: 7.5 })),
						1,
					)
				: [...pipe, ...clusterMarks([upright(2.5), upright(6.5)], 3, 8, 1)],
		),
		...entry(
			perforated && (sleeves || well.stimulation?.toe?.kind.includes("valve") === true),
			words.legendValve,
			[...pipe, ...valveMarks([upright(4.5)], 4.6)],
		),
		...entry(ground && results.geology.water.length > 0, words.legendWater, waterBand(box)),
		...entry(results.geology.protected_water_base !== undefined, words.legendWaterBase, [
			{ kind: "line", x1: 0, y1: 2.5, x2: SWATCH.width, y2: 2.5, stroke: { color: BLUE, width: 1.4 } },
			{ kind: "path", d: "M5.2 2.5h5.6l-2.8 4.2Z", fill: BLUE },
		]),
		...entry(
			ground && results.isolation.neighbor_wells.some((each) => each.bottom !== undefined),
			words.legendWaterWell,
			waterWellMark(8, 3.2, 11, 2),
		),
		...entry(
			beds.some((bed) => bed.formation.confining),
			words.legendConfining,
			[{ kind: "path", d: "M9 0.5h-3v8h3", stroke: { color: INK, width: 1.6 } }],
		),
		...rockEntries(beds, words),
	];
};

/** The target, and every rock of a column. */
export const rockEntries = (beds: readonly Bed[], words: DrawingWords): LegendEntry[] => [
	...(beds.some((bed) => bed.formation.target)
		? [
				{
					text: words.legendTarget,
					swatch: [
						{ kind: "path", d: boxPath({ ...box, x: 5, width: box.width - 5 }), fill: TARGET_TINT } as const,
						...targetBar(5, box.y, box.height),
					],
				},
			]
		: []),
	...[...new Set(beds.map((bed) => bed.formation.lithology))].map((rock) => ({
		text: words.rocks[rock],
		swatch: framed(rockPattern(rock, box)),
	})),
];

/** A plug's swatch, for drawings whose plugs stand far enough apart. */
const plugEntry = (words: DrawingWords): LegendEntry => ({
	text: words.legendPlug,
	swatch: [...pipe, ...plugMark(upright(4.5), 3)],
});

/** Swatches of what depends on how the page came out. */
export const pageEntries = (
	words: DrawingWords,
	shown: {
		readonly plug: boolean;
		readonly plannedShoe: boolean;
		readonly illustration: boolean;
		/** Stages of the rail under the lateral. */
		readonly rail: number;
	},
): LegendEntry[] => [
	...(shown.rail === 0
		? []
		: [
				{
					text: shown.rail === 1 ? words.legendStageOne : words.legendStage,
					swatch: stageRail(
						[
							{ x: 0, width: SWATCH.width / 2 },
							{ x: SWATCH.width / 2, width: SWATCH.width / 2 },
						],
						2,
					),
				},
			]),
	...(shown.plug ? [plugEntry(words)] : []),
	...(shown.plannedShoe
		? [
				{
					text: words.legendPlannedShoe,
					swatch: [...steelWall([upright(0), upright(7)], width), ...plannedShoeMark(upright(7), 4.6, 3)],
				},
			]
		: []),
	...(shown.illustration ? [{ text: words.legendIllustrative, swatch: illustrativeBand(box) }] : []),
];
