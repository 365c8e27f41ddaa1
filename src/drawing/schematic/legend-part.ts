import type { Results } from "../../calc/results.ts";
import type { Shape } from "../../document/shapes.ts";
import type { Lithology, Well } from "../../well/well.ts";
import { type LegendEntry, SWATCH } from "../legend.ts";
import { type Box, boxPath, rockPattern } from "../lithology.ts";
import { cementFill, cementTopMark } from "../marks/cement.ts";
import { clusterMarks, valveMarks } from "../marks/perforations.ts";
import {
	floatCollarMark,
	plugMark,
	sealMark,
	shoeMark,
	steelWall,
} from "../marks/steel.ts";
import { waterBand, waterWellMark } from "../marks/water.ts";
import { BLUE, INK, PAPER, TARGET_TINT } from "../palette.ts";
import type { AxisPoint } from "../well-axis.ts";
import type { DrawingWords } from "../words.ts";
import type { Detail } from "./view.ts";
import { bedsOf, isLast } from "./view.ts";
import { plannedTopOf } from "./well-part.ts";

const box: Box = { x: 0, y: 0, width: SWATCH.width, height: SWATCH.height };
const framed = (shapes: readonly Shape[]): Shape[] => [
	{ kind: "path", d: boxPath(box), fill: PAPER },
	...shapes,
	{ kind: "path", d: boxPath(box), stroke: { color: INK, width: 0.5 } },
];
const upright = (y: number): AxisPoint => ({
	md: 0,
	x: SWATCH.width / 2,
	y,
	normal: [1, 0],
});
const hole = [upright(0), upright(SWATCH.height)];
const width = { outer: 4.6, inner: 3 };

/** What the schematic of this well shows, so that its legend explains that and nothing else. */
export const legendOf = (
	well: Well,
	results: Results,
	detail: Detail,
	deepest: number,
	words: DrawingWords,
): LegendEntry[] => {
	const rocks =
		detail === "numbers"
			? []
			: [
					...new Set(
						bedsOf(well, deepest).map((bed) => bed.formation.lithology),
					),
				];
	const cements = Object.values(results.cement);
	const ground = detail !== "numbers";
	const stages = results.stimulation?.stages ?? [];
	const sleeves = well.stimulation?.method === "sliding sleeve";
	const valve =
		sleeves || well.stimulation?.toe?.kind.includes("valve") === true;
	const last = well.strings.find((string) => isLast(well, string));
	const replanned = well.strings.some((string) => {
		const [cement, planned] = [results.cement[string.id], plannedTopOf(string)];
		return (
			cement?.top_basis === "recorded" &&
			planned !== undefined &&
			Math.abs(planned - cement.top.md.value) > 1
		);
	});
	const entries: (LegendEntry | false)[] = [
		{ text: words.legendSteel, swatch: steelWall(hole, width) },
		cements.some((cement) => cement.top_basis === "planned") && {
			text: words.legendCementPlanned,
			swatch: framed(cementFill(hole, 0, 8, "planned")),
		},
		cements.some((cement) => cement.top_basis === "recorded") && {
			text: words.legendCementBuilt,
			swatch: framed(cementFill(hole, 0, 8, "recorded")),
		},
		replanned && {
			text: words.legendPlannedTop,
			swatch: cementTopMark(upright(4.5), 0, 8, "planned"),
		},
		detail !== "plain" && {
			text: words.legendShoe,
			swatch: [
				...steelWall([upright(0), upright(7)], width),
				...shoeMark(upright(7), 4.6, 3),
			],
		},
		detail !== "plain" &&
			last?.shoeTrack !== undefined && {
				text: words.legendFloat,
				swatch: [
					...steelWall(hole, width),
					...floatCollarMark(upright(3.5), 3),
				],
			},
		well.strings.some((string) => string.kind === "liner") && {
			text: words.legendLinerTop,
			swatch: [...steelWall(hole, width), ...sealMark(upright(2), 4.6, 8)],
		},
		stages.length > 0 &&
			!sleeves && {
				text: words.legendPerforations,
				swatch: [
					...steelWall(hole, width),
					...clusterMarks([upright(2.5), upright(6.5)], 3, 8, 1),
				],
			},
		valve && {
			text: words.legendValve,
			swatch: [...steelWall(hole, width), ...valveMarks([upright(4.5)], 4.6)],
		},
		ground &&
			results.geology.water.length > 0 && {
				text: words.legendWater,
				swatch: waterBand(box),
			},
		results.geology.protected_water_base !== undefined && {
			text: words.legendWaterBase,
			swatch: [
				{
					kind: "line",
					x1: 0,
					y1: 2.5,
					x2: SWATCH.width,
					y2: 2.5,
					stroke: { color: BLUE, width: 1.4 },
				},
				{ kind: "path", d: "M5.2 2.5h5.6l-2.8 4.2Z", fill: BLUE },
			],
		},
		ground &&
			results.isolation.neighbor_wells.some(
				(each) => each.bottom !== undefined,
			) && {
				text: words.legendWaterWell,
				swatch: waterWellMark(8, 3.2, 11, 2),
			},
		ground &&
			well.geology.formations.some((bed) => bed.confining) && {
				text: words.legendConfining,
				swatch: [
					{
						kind: "path",
						d: "M9 0.5h-3v8h3",
						stroke: { color: INK, width: 1.6 },
					},
				],
			},
		ground &&
			well.geology.formations.some((bed) => bed.target) && {
				text: words.legendTarget,
				swatch: framed([{ kind: "path", d: boxPath(box), fill: TARGET_TINT }]),
			},
		...rocks.map((rock: Lithology) => ({
			text: words.rocks[rock],
			swatch: framed(rockPattern(rock, box)),
		})),
	];
	return entries.filter((entry) => entry !== false);
};

/** A plug's swatch, for drawings whose plugs stand far enough apart. */
export const plugEntry = (words: DrawingWords): LegendEntry => ({
	text: words.legendPlug,
	swatch: [...steelWall(hole, width), ...plugMark(upright(4.5), 3)],
});
