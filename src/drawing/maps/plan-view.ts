import type { Results } from "../../calc/results.ts";
import type { PlaceResults } from "../../calc/results-of-isolation.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import type { Well } from "../../well/well.ts";
import { type LegendEntry, legendHeight, legendShapes, SWATCH } from "../legend.ts";
import { compose, type Line, run, runWidth, sentence, setLine } from "../line-of-text.ts";
import { boxPath } from "../lithology.ts";
import { GROUND, INK, PAPER, SECOND_INK, VERMILLION } from "../palette.ts";
import { placesAlong } from "../path-line.ts";
import { type Print, printer } from "../print.ts";
import { openPath, type Point } from "../well-axis.ts";
import type { DrawingWords } from "../words.ts";
import { entryOf } from "./entry-of.ts";
import { equalScale, type PageBox, scaleBar } from "./equal-scale.ts";
import type { MapOptions } from "./map-options.ts";
import { type MarkerKind, marker, northArrow } from "./markers.ts";

/** Type size at each level of detail [pt]. */
const SIZES = { full: 8.5, plain: 10 } as const;

/** A place near the well, numbered for the list under the map. */
interface Place {
	readonly number: number;
	readonly kind: MarkerKind;
	readonly at: Point;
	readonly words: Line;
}

/**
 * The well from above: north up, its path and stages, and what is near it, at one scale. Places carry numbers, and a list
 * under the map says what each is and how far it is from the well path.
 */
export const planView = (well: Well, results: Results, options: MapOptions): Drawing => {
	const { width, height, words, detail = "full" } = options;
	const size = SIZES[detail];
	const print = printer(options.units, words, options.keyOf);
	const near = nearby(well, results, print);
	const list = (places: readonly Omit<Place, "at">[]): LegendEntry[] => [
		...places.map((place) => ({
			text: place.words,
			swatch: [...marker(place.kind, [5, 4.5]), ...numberText(place.number, [13.5, 4.5 + size * 0.34], size)],
		})),
		...legendOf(results, words, detail),
	];
	const listBox = { x: 0, width, size };
	const listTall = legendHeight(list(near.map((each) => each.place)), listBox);
	const foot = height - listTall - size * 2.6;
	const box: PageBox = { left: 0, top: 0, right: width, bottom: foot - size * 1.2 };
	const { trajectory, stimulation } = results;
	const path = placesAlong(trajectory.path, 0, trajectory.total_depth.md.value);
	const planned =
		trajectory.planned === undefined
			? []
			: placesAlong(trajectory.planned, 0, trajectory.planned.rows.at(-1)?.md ?? 0);
	const inside = { left: 14, top: 14, right: width - 14, bottom: box.bottom - 14 };
	const all = [...path, ...planned, ...near];
	const range = (values: readonly number[]): [number, number] => {
		const [low, high] = [Math.min(...values, 0), Math.max(...values, 0)];
		const least = 600;
		const spare = Math.max(0, least - (high - low)) / 2;
		return [low - spare, high + spare];
	};
	const scale = equalScale(
		range(all.map((each) => each.east)),
		range(all.map((each) => each.north)),
		inside,
		"up",
	);
	const at = (place: { readonly north: number; readonly east: number }): Point => [
		scale.x(place.east),
		scale.y(place.north),
	];
	const places = near.map(({ place, ...where }) => ({ ...place, at: at(where) }));
	const stages = stimulation?.stages ?? [];
	const line = path.map(at);
	const home: Point = line[0] ?? [0, 0];
	const toe: Point = line.at(-1) ?? home;
	const north = well.site.north?.reference ?? "true";
	const scaleText = sentence(words.planScale, { north: words.norths[north] });
	return {
		id: detail === "plain" ? "plan-plain" : "plan",
		width,
		height,
		title: sentence(words.planOf, { well: well.identity.name }),
		alternative: alternativeOf(results, print, places),
		scale: scaleText,
		shapes: [
			{
				kind: "path",
				d: boxPath({ x: 0.4, y: 0.4, width: width - 0.8, height: box.bottom - 0.8 }),
				fill: GROUND,
				stroke: { color: SECOND_INK, width: 0.6 },
			},
			...(planned.length === 0
				? []
				: [
						{
							kind: "path",
							d: openPath(planned.map(at)),
							stroke: { color: SECOND_INK, width: 0.9, dash: [3, 2] },
						} as const,
					]),
			...stages.flatMap((stage, i): Shape[] =>
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
			{
				kind: "path",
				d: boxPath({ x: home[0] - 3.4, y: home[1] - 3.4, width: 6.8, height: 6.8 }),
				fill: INK,
			},
			...places.flatMap((place) => marker(place.kind, place.at)),
			...tags(
				places,
				line,
				[
					{ name: "wellhead", text: words.wellhead, at: home },
					...(Math.hypot(toe[0] - home[0], toe[1] - home[1]) > 30
						? [
								{
									name: "total depth",
									text: detail === "plain" ? words.plainEnd : words.totalDepth,
									at: toe,
								},
							]
						: []),
				],
				box,
				size,
			),
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
			...legendShapes(list(places), { ...listBox, y: height - listTall }),
		],
	};
};

/** What the lines of the map are. */
const legendOf = (
	{ trajectory, stimulation }: Results,
	words: DrawingWords,
	detail: "full" | "plain",
): LegendEntry[] => {
	const stroke = (color: string, width: number, dash?: readonly number[]): Shape => ({
		kind: "line",
		x1: 0,
		y1: 4.5,
		x2: SWATCH.width,
		y2: 4.5,
		stroke: { color, width, ...(dash === undefined ? {} : { dash }) },
	});
	return [
		{
			text: trajectory.basis === "surveyed" ? words.pathSurveyed : words.pathPlanned,
			swatch: [stroke(INK, 1.5)],
		},
		...(trajectory.planned === undefined
			? []
			: [{ text: words.plannedPath, swatch: [stroke(SECOND_INK, 0.9, [3, 2])] }]),
		...(stimulation === undefined
			? []
			: [
					{
						text: detail === "plain" ? words.plainStages : words.legendStage,
						swatch: [stroke(VERMILLION, 5), stroke(INK, 1.5)],
					},
				]),
	];
};

const named = (name: string, children: readonly Shape[]): Shape => ({
	kind: "group",
	dx: 0,
	dy: 0,
	name,
	children,
});

const numberText = (number: number, [x, y]: Point, size: number): Shape[] => [
	{
		kind: "text",
		x,
		y,
		text: String(number),
		size: size * 0.92,
		color: INK,
		weight: "semibold",
		anchor: "middle",
	},
];

const BUILDINGS = new Set(["dwelling", "school", "hospital", "place of worship", "public building"]);
const WATERS = new Set(["water well", "public water supply", "spring"]);

const kindOf = (kind: string): MarkerKind =>
	WATERS.has(kind) ? "water" : BUILDINGS.has(kind) ? "building" : "other";

/** Neighbors and offset wells whose place is known, numbered in the definition's order. */
const nearby = (well: Well, results: Results, print: Print) => {
	const found = [
		...(results.site?.neighbors ?? []).flatMap((place) => {
			const neighbor = entryOf(well.neighbors, place);
			return neighbor === undefined ? [] : [{ place, kind: kindOf(neighbor.kind) }];
		}),
		...(results.site?.offset_wells ?? []).flatMap((place) =>
			entryOf(well.offsetWells, place) === undefined ? [] : [{ place, kind: "offset" as const }],
		),
	];
	let number = 0;
	return found.flatMap(({ place, kind }) => {
		if (place.north === undefined || place.east === undefined) return [];
		number += 1;
		return [
			{
				north: place.north.value,
				east: place.east.value,
				place: { number, kind, words: placeWords(place, print) },
			},
		];
	});
};

const placeWords = (place: PlaceResults, print: Print): Line => {
	const name = [run(place.name, { weight: "semibold" })];
	if (place.from_path === undefined) return name;
	return [...name, run("  "), ...compose(print.words.fromPath, { distance: print.value(place.from_path) })];
};

interface Tag {
	readonly name: string;
	readonly text: string;
	readonly at: Point;
}

/** Where a tag may stand about its place: nearest first. */
const ASPECTS: readonly Point[] = [7, 12, 18, 26].flatMap((far): Point[] =>
	[0, 45, -45, 90, -90, 135, -135, 180].map((turn): Point => {
		const angle = (turn * Math.PI) / 180;
		return [Math.cos(angle) * far, -Math.sin(angle) * far];
	}),
);

/** Numbers and names beside their places, each where it covers neither the path, nor a place, nor an earlier tag. */
const tags = (
	places: readonly Place[],
	path: readonly Point[],
	names: readonly Tag[],
	box: PageBox,
	size: number,
): Shape[] => {
	const all: Tag[] = [
		...names,
		...places.map((place) => ({ name: `place ${place.number}`, text: String(place.number), at: place.at })),
	];
	const taken: PageBox[] = [
		{ left: box.right - 30, right: box.right, top: 0, bottom: 50 },
		...places.map(({ at: [x, y] }) => ({ left: x - 4.5, right: x + 4.5, top: y - 4.5, bottom: y + 4.5 })),
		...path.map(([x, y]) => ({ left: x - 2, right: x + 2, top: y - 2, bottom: y + 2 })),
	];
	return all.map((tag): Shape => {
		const wide = runWidth(run(tag.text, { weight: "semibold" }), size);
		const candidates = ASPECTS.map(([dx, dy]): PageBox => {
			const middle = tag.at[0] + dx + Math.sign(Math.round(dx)) * (wide / 2);
			const y = tag.at[1] + dy;
			return {
				left: middle - wide / 2 - 1,
				right: middle + wide / 2 + 1,
				top: y - size / 2,
				bottom: y + size / 2,
			};
		});
		const cost = (one: PageBox): number =>
			(one.left < box.left + 2 ||
			one.right > box.right - 2 ||
			one.top < box.top + 2 ||
			one.bottom > box.bottom - 2
				? 1e6
				: 0) + taken.reduce((sum, other) => sum + overlap(one, other), 0);
		const best = candidates.reduce((one, other) => (cost(other) < cost(one) - 1e-9 ? other : one));
		taken.push(best);
		return named(`label ${tag.name}`, [
			{
				kind: "path",
				d: boxPath({ x: best.left, y: best.top, width: best.right - best.left, height: size }),
				fill: PAPER,
			},
			...setLine([run(tag.text, { weight: "semibold" })], {
				x: (best.left + best.right) / 2,
				y: best.bottom - size * 0.2,
				size: size,
				anchor: "middle",
			}),
		]);
	});
};

const overlap = (a: PageBox, b: PageBox): number =>
	Math.max(0, Math.min(a.right, b.right) - Math.max(a.left, b.left)) *
	Math.max(0, Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top));

const alternativeOf = (results: Results, print: Print, places: readonly Place[]): string => {
	const { words } = print;
	const { closure, closure_azimuth: azimuth } = results.trajectory;
	const values = { distance: print.value(closure), azimuth: print.value(azimuth) };
	const list = places
		.map((place) =>
			place.words
				.map((part) => part.text)
				.join("")
				.replace(/\s{2,}/gu, ", "),
		)
		.join("; ");
	return places.length === 0
		? sentence(words.altPlanNone, values)
		: sentence(words.altPlan, { ...values, list });
};
