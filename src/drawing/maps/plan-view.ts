import type { PlaceOnMap, Results } from "../../calc/results.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import type { Well } from "../../well/well.ts";
import { type LegendEntry, legendHeight, legendShapes, strokeSwatch } from "../legend.ts";
import { type Line, lineText, run, sentence, setLine } from "../line-of-text.ts";
import { boxPath } from "../lithology.ts";
import { named } from "../named.ts";
import { GROUND, INK, PAPER, SECOND_INK, VERMILLION } from "../palette.ts";
import { placesAlong } from "../path-line.ts";
import { type Print, printer } from "../print.ts";
import { type Area, type Tag, tagShapes } from "../tags.ts";
import { openPath, type Point } from "../well-axis.ts";
import { equalScale, STRAIGHT_DOWN, scaleBar } from "./equal-scale.ts";
import {
	groundLineAreas,
	groundLineLegend,
	groundLineShapes,
	groundLines,
	groundLineTags,
} from "./ground-lines.ts";
import type { MapOptions } from "./map-options.ts";
import { marker, northArrow } from "./markers.ts";
import { numberText, type Place, placesNear } from "./plan-places.ts";
import { OTHER_WELL } from "./section-shapes.ts";

/** Type size at each level of detail [pt]. */
const SIZES = { full: 8.5, plain: 10 } as const;
/** Least distance across the map [ft]. */
const LEAST_ACROSS = 600;
/** A path shorter than this on the page is not seen, and is not explained [pt]. */
const SEEN = 5;
/** Share of the drawing's height that its map has at least: a long list of places leaves the farthest out. */
const LEAST_MAP = 0.45;
/** Clear space around what the map shows [pt]. */
const MARGIN = 22;
/** Six decimals of a degree are some inches on the ground. */
const COORDINATE = { decimals: 6 } as const;

/**
 * The well from above: north up, its path and stages, and what is near it, at one scale. Places carry numbers, and a list
 * under the map says what each is and how far it is from the well path.
 */
export const planView = (well: Well, results: Results, options: MapOptions): Drawing => {
	const { width, height, words, detail = "full" } = options;
	const size = SIZES[detail];
	const print = printer(options.units, words, options.keyOf);
	const lines = groundLines(well, results, print);
	const listBox = { x: 0, width, size };
	const tall = (entries: readonly LegendEntry[]) => legendHeight(entries, listBox);
	const mapOf = (most?: number, linesBy: "line" | "kind" = "line") => {
		const near = placesNear(well, results, print, most);
		const whole = [
			...listOf(near.places, size),
			...legendOf(results, print, detail, true),
			...otherLegend(near.places, print),
			...groundLineLegend(lines, print, linesBy),
		];
		return { ...near, linesBy, foot: height - tall(whole) - size * 2.6 };
	};
	const least = height * LEAST_MAP;
	// One place beside them is the least that a list is cut to.
	const by = mapOf(1).foot >= least ? "line" : "kind";
	const { places, left, linesBy, foot } = withRoom((most) => mapOf(most, by), least);
	const box: Area = { left: 0, top: 0, right: width, bottom: foot - size * 1.2 };
	const { trajectory } = results;
	const path = placesAlong(trajectory.path, 0, trajectory.total_depth.md.value);
	const planned =
		trajectory.planned === undefined
			? []
			: placesAlong(trajectory.planned, 0, trajectory.planned.rows.at(-1)?.md ?? 0);
	const all = [
		...path,
		...planned,
		...places,
		...places.flatMap((place) => place.path),
		...lines.filter(({ bounds }) => bounds).flatMap(({ corners }) => corners),
	];
	const scale = equalScale(
		spread(all.map((each) => each.east)),
		spread(all.map((each) => each.north)),
		{ left: MARGIN, top: MARGIN, right: width - MARGIN, bottom: box.bottom - MARGIN },
		"up",
	);
	const at = (place: { readonly north: number; readonly east: number }): Point => [
		scale.x(place.east),
		scale.y(place.north),
	];
	const line = path.map(at);
	const home: Point = line[0] ?? [0, 0];
	const toe: Point = line.at(-1) ?? home;
	const seen = Math.max(...line.map(([x, y]) => Math.hypot(x - home[0], y - home[1]))) > SEEN;
	const landingMd = trajectory.landing?.md.value;
	const [landing] = landingMd === undefined ? [] : placesAlong(trajectory.path, landingMd, landingMd);
	const coordinates = (place: PlaceOnMap | undefined): Line =>
		place === undefined || detail === "plain"
			? []
			: [
					run("  "),
					print.value(place.latitude, COORDINATE),
					run(", "),
					print.value(place.longitude, COORDINATE),
				];
	const scaleText =
		detail === "plain"
			? words.planScalePlain
			: sentence(words.planScale, { north: words.norths[well.site.north?.reference ?? "true"] });
	/** Places stand with their names on the plain map; a number is enough where a name has no room. */
	const tagsOf = (numbered: (place: Place) => boolean) =>
		tagShapes(
			[
				{
					name: "wellhead",
					at: home,
					line: [run(words.wellhead, { weight: "semibold" }), ...coordinates(well.site.surface_location)],
				},
				...(Math.hypot(toe[0] - home[0], toe[1] - home[1]) > 30
					? [
							{
								name: "total depth",
								at: toe,
								line: [
									run(detail === "plain" ? words.plainEnd : words.totalDepth, { weight: "semibold" }),
									...(detail === "plain" ? [] : [run("  "), ...print.mark(trajectory.total_depth)]),
									...coordinates(results.site?.total_depth),
								],
							} satisfies Tag,
						]
					: []),
				...(landing === undefined || detail === "plain"
					? []
					: [
							{
								name: "landing",
								at: at(landing),
								line: [run(words.landing, { weight: "semibold" }), ...coordinates(results.site?.landing)],
							} satisfies Tag,
						]),
				...groundLineTags(lines, at, box, [...line, ...places.map(at)]),
				...places.map((place) =>
					tagOf(tagName(place), numbered(place) ? String(place.number) : place.name, at(place)),
				),
			],
			[
				{ left: box.right - 30, right: box.right, top: 0, bottom: 50 },
				...places.map((place) => around(at(place), 4.5)),
				...[...line, ...places.flatMap((place) => place.path.map(at))].map((point) => around(point, 2)),
				...groundLineAreas(lines, at, box),
			],
			box,
			size,
		);
	const unnamed = detail === "plain" ? tagsOf(() => false).dropped : places.map(tagName);
	const isNumbered = (place: Place): boolean => unnamed.includes(tagName(place));
	const tags = tagsOf(isNumbered);
	const list = [
		...listOf(places, size, isNumbered),
		...legendOf(results, print, detail, seen),
		...otherLegend(places, print),
		...groundLineLegend(lines, print, linesBy),
	];
	return {
		id: detail === "plain" ? "plan-plain" : "plan",
		width,
		height,
		title: sentence(words.planOf, { well: well.identity.name }),
		alternative: alternativeOf(results, print, [...places, ...lines]),
		scale: scaleText,
		undrawn: left,
		shapes: [
			{
				kind: "path",
				d: boxPath({ x: 0.4, y: 0.4, width: width - 0.8, height: box.bottom - 0.8 }),
				fill: GROUND,
				stroke: { color: SECOND_INK, width: 0.6 },
			},
			...groundLineShapes(lines, at, box),
			...pathShapes(results, planned.map(at), line, at),
			...places.flatMap((place): Shape[] =>
				place.path.length < 2 ? [] : [{ kind: "path", d: openPath(place.path.map(at)), stroke: OTHER_WELL }],
			),
			...places.flatMap((place) => marker(place.kind, at(place))),
			{
				kind: "path",
				d: boxPath({ x: home[0] - 2.8, y: home[1] - 2.8, width: 5.6, height: 5.6 }),
				fill: INK,
			},
			...(landing === undefined || detail === "plain" ? [] : landingMark(at(landing))),
			...tags.shapes,
			...northArrow([width - 16, 10], 26),
			named(
				"label north",
				setLine([run(words.north, { weight: "bold" })], {
					x: width - 16,
					y: 46,
					size: size * 1.1,
					anchor: "middle",
				}),
			),
			...scaleBar(print, scale, { x: 2, y: foot, near: 100, size }),
			named(
				"label scale",
				setLine([run(scaleText, { italic: true, color: SECOND_INK })], {
					x: width,
					y: foot + size * 0.5,
					size,
					anchor: "end",
				}),
			),
			...legendShapes(list, { ...listBox, y: height - tall(list) }),
		],
	};
};

/** With as many places as leave the map its room, the nearest first. */
const withRoom = <T extends { readonly places: readonly Place[]; readonly foot: number }>(
	mapOf: (most?: number) => T,
	least: number,
): T => {
	const whole = mapOf();
	if (whole.foot >= least) return whole;
	let [few, many] = [1, whole.places.length];
	while (many - few > 1) {
		const middle = Math.floor((few + many) / 2);
		if (mapOf(middle).foot >= least) few = middle;
		else many = middle;
	}
	return mapOf(few);
};

const spread = (values: readonly number[]): [number, number] => {
	const [low, high] = [Math.min(...values, 0), Math.max(...values, 0)];
	const spare = Math.max(0, LEAST_ACROSS - (high - low)) / 2;
	return [low - spare, high + spare];
};

/** Where the hole comes to its final inclination: a ring on the path. */
const landingMark = ([x, y]: Point): Shape[] => [
	{
		kind: "path",
		d: `M${x - 3} ${y}a3 3 0 1 0 6 0a3 3 0 1 0 -6 0Z`,
		fill: PAPER,
		stroke: { color: INK, width: 1.2 },
	},
];

const around = ([x, y]: Point, reach: number): Area => ({
	left: x - reach,
	right: x + reach,
	top: y - reach,
	bottom: y + reach,
});

const tagOf = (name: string, text: string, at: Point): Tag => ({
	name,
	line: [run(text, { weight: "semibold" })],
	at,
});

/** The planned path beside the surveyed one, the stages, and the path over them. */
const pathShapes = (
	{ trajectory, stimulation }: Results,
	planned: readonly Point[],
	line: readonly Point[],
	at: (place: { readonly north: number; readonly east: number }) => Point,
): Shape[] => [
	...(planned.length === 0
		? []
		: [
				{
					kind: "path",
					d: openPath(planned),
					stroke: { color: SECOND_INK, width: 0.9, dash: [3, 2] },
				} as const,
			]),
	...(stimulation?.stages ?? []).flatMap((stage, i): Shape[] =>
		i % 2 === 1
			? []
			: [
					{
						kind: "path",
						d: openPath(placesAlong(trajectory.path, stage.top.md.value, stage.bottom.md.value).map(at)),
						stroke: { color: VERMILLION, width: 5 },
					},
				],
	),
	{ kind: "path", d: openPath(line), stroke: { color: INK, width: 1.5, join: "round" } },
];

/** Holes of other wells, where one is drawn. */
const otherLegend = (places: readonly Place[], { words }: Print): LegendEntry[] =>
	places.some(({ path }) => path.length > 1)
		? [
				{
					text: words.legendOffset,
					swatch: [strokeSwatch(OTHER_WELL.color, OTHER_WELL.width, OTHER_WELL.dash)],
				},
			]
		: [];

const tagName = ({ number }: Place): string => `place-${number}`;

const listOf = (
	places: readonly Place[],
	size: number,
	isNumbered: (place: Place) => boolean = () => true,
): LegendEntry[] =>
	places.map((place) => ({
		text: place.words,
		swatch: [
			...marker(place.kind, [5, 4.5]),
			...(isNumbered(place) ? [numberText(place.number, [13.5, 4.5 + size * 0.34], size)] : []),
		],
	}));

/** What the lines of the map are; none where the hole goes straight down and its path is not seen. */
const legendOf = (
	{ trajectory, stimulation }: Results,
	{ words }: Print,
	detail: "full" | "plain",
	seen: boolean,
): LegendEntry[] =>
	seen
		? [
				{
					text: trajectory.basis === "surveyed" ? words.pathSurveyed : words.pathPlanned,
					swatch: [strokeSwatch(INK, 1.5)],
				},
				...(trajectory.planned === undefined
					? []
					: [{ text: words.plannedPath, swatch: [strokeSwatch(SECOND_INK, 0.9, [3, 2])] }]),
				...(stimulation === undefined
					? []
					: [
							{
								text:
									detail === "plain"
										? words.plainStages
										: stimulation.stages.length === 1
											? words.legendStageOne
											: words.legendStage,
								swatch: [strokeSwatch(VERMILLION, 5), strokeSwatch(INK, 1.5)],
							},
						]),
			]
		: [];

const alternativeOf = (
	results: Results,
	print: Print,
	places: readonly { readonly words: Line }[],
): string => {
	const { words } = print;
	const { closure, closure_azimuth: azimuth } = results.trajectory;
	const values = { distance: print.value(closure), azimuth: print.value(azimuth) };
	const list = places.map((place) => lineText(place.words).replace(/\s{2,}/gu, ", ")).join("; ");
	if (closure.value < STRAIGHT_DOWN)
		return places.length === 0 ? words.altPlanDownNone : sentence(words.altPlanDown, { list });
	return places.length === 0
		? sentence(words.altPlanNone, values)
		: sentence(words.altPlan, { ...values, list });
};
