import type { Results } from "../../calc/results.ts";
import type { OffsetPlaceResults, PlaceResults } from "../../calc/results-of-isolation.ts";
import type { Known } from "../../cite/known.ts";
import type { Shape, Undrawn } from "../../document/shapes.ts";
import type { Well } from "../../well/well.ts";
import { compose, type Line, run } from "../line-of-text.ts";
import { INK } from "../palette.ts";
import type { Print } from "../print.ts";
import type { Point } from "../well-axis.ts";
import { entryOf } from "./entry-of.ts";
import type { MarkerKind } from "./markers.ts";
import { notDrawn, reachOf } from "./reach.ts";

/** A place near the well, numbered for the list under the map. */
export interface Place {
	readonly number: number;
	readonly name: string;
	readonly kind: MarkerKind;
	readonly north: number;
	readonly east: number;
	readonly words: Line;
	/** Of another well: its hole from above, where it is known. */
	readonly path: readonly { readonly north: number; readonly east: number }[];
}

const BUILDINGS = new Set(["dwelling", "school", "hospital", "place of worship", "public building"]);
const WATERS = new Set(["water well", "public water supply", "spring"]);

const kindOf = (kind: string): MarkerKind =>
	WATERS.has(kind) ? "water" : BUILDINGS.has(kind) ? "building" : "other";

/**
 * Neighbors and offset wells whose place is known: those drawn, numbered in the definition's order, and those left out,
 * which lie too far for one scale or, where the map has room for few, farther than `most` others.
 */
export const placesNear = (
	well: Well,
	results: Results,
	print: Print,
	most = Number.POSITIVE_INFINITY,
): { readonly places: readonly Place[]; readonly left: readonly Undrawn[] } => {
	const { site, trajectory } = results;
	const radius = trajectory?.uncertainty_radius;
	const isInReach = reachOf(results);
	const found = [
		...(site?.neighbors ?? []).flatMap((place) => {
			const neighbor = entryOf(well.neighbors, place);
			return neighbor === undefined ? [] : [{ place, kind: kindOf(neighbor.kind) }];
		}),
		...(site?.offset_wells ?? []).flatMap((place) =>
			entryOf(well.offsetWells, place) === undefined ? [] : [{ place, kind: "offset" as const }],
		),
	];
	const known = found.flatMap(({ place, kind }) =>
		place.north === undefined || place.east === undefined
			? []
			: [{ place, kind, north: place.north.value, east: place.east.value }],
	);
	const distanceOf = ({ place, north, east }: (typeof known)[number]) =>
		place.from_path?.value ?? Math.hypot(north, east);
	const nearest = known
		.filter(isInReach)
		.sort((a, b) => distanceOf(a) - distanceOf(b))
		.slice(0, most);
	const drawn = new Set(nearest);
	return {
		places: known
			.filter((each) => drawn.has(each))
			.map(({ place, ...at }, i) => ({
				...at,
				number: i + 1,
				name: place.name,
				words: at.kind === "offset" ? offsetWords(place, results, print) : placeWords(place, radius, print),
				path: pathOf(place),
			})),
		left: known.filter((each) => !drawn.has(each)).map(({ place }) => notDrawn(place, print)),
	};
};

/** Letters of a name that a list has room for; the distance behind it is never what is cut. */
const NAME = 80;

const clipped = (name: string): string =>
	name.length <= NAME ? name : `${name.slice(0, NAME - 1).trimEnd()}…`;

/** A distance to the path is no better than the survey, so the stated radius stands behind it. */
export const placeWords = (
	place: PlaceResults,
	radius: Known<"distance"> | undefined,
	print: Print,
): Line => {
	const name = [run(clipped(place.name), { weight: "semibold" })];
	if (place.from_path === undefined) return name;
	const far = compose(print.words.fromPath, { distance: print.value(place.from_path) });
	const give = radius === undefined ? [] : [run(" ± "), print.value(radius)];
	return [...name, run("  "), ...far, ...give];
};

/** How near another well's hole comes, or that nobody knows: its wellhead alone tells nothing of that. */
const offsetWords = (place: PlaceResults, results: Results, print: Print): Line => {
	const name = [run(clipped(place.name), { weight: "semibold" }), run("  ")];
	const near = results.isolation.offset_wells.find(({ id }) => id === place.id)?.in_space;
	return near === undefined
		? [...name, run(print.words.notEvaluated)]
		: [...name, ...compose(print.words.nearestApproach, { distance: print.value(near) })];
};

const pathOf = (place: OffsetPlaceResults): Place["path"] =>
	(place.path?.rows ?? []).map((row) => ({
		north: row["north"] ?? Number.NaN,
		east: row["east"] ?? Number.NaN,
	}));

/** The place's number, as it stands in the list beside its mark. */
export const numberText = (number: number, [x, y]: Point, size: number): Shape => ({
	kind: "text",
	x,
	y,
	text: String(number),
	size: size * 0.92,
	color: INK,
	weight: "semibold",
	anchor: "middle",
});
