import type { Results } from "../../calc/results.ts";
import type { Known } from "../../cite/known.ts";
import type { Undrawn } from "../../document/shapes.ts";
import type { Well } from "../../well/well.ts";
import { along, type PathPlace, placesAlong } from "../path-line.ts";
import type { Print } from "../print.ts";
import type { Point } from "../well-axis.ts";
import { entryOf } from "./entry-of.ts";
import { type EqualScale, equalScale, type PageBox, STRAIGHT_DOWN } from "./equal-scale.ts";
import type { MapOptions } from "./map-options.ts";
import { notDrawn, reachOf } from "./reach.ts";

/** Type size of the section's labels [pt]. */
export const SIZE = 8;
/** Right edge of the depth ruler [pt]. */
export const RULER = 36;
/** Lines of the labels under the ground, and the room they take with their leaders [pt]. */
export const LINES_UNDER = 4;
const UNDER = 16 + SIZE * 1.2 * LINES_UNDER + 8;
/** The same where nothing is named under the ground. */
const CLOSE_UNDER = 16;
/** Room above the ground for the wells nearby [pt]. */
const ABOVE = 16 + SIZE * 1.2 * 3;

/** What the section is drawn from. */
export interface Section {
	readonly well: Well;
	readonly results: Results;
	readonly print: Print;
	readonly scale: EqualScale;
	/** The drawn ground, and the room under it for labels. */
	readonly box: PageBox;
	readonly under: number;
	readonly deepest: number;
	readonly azimuth: number;
	/** Wells nearby whose depth and place are known, projected onto the section, as far as they can be drawn with the well. */
	readonly nearby: readonly NearbyWell[];
	/** Those that lie too far. */
	readonly far: readonly Undrawn[];
	/** Where a place of a path lies on the page. */
	readonly at: (place: PathPlace) => Point;
}

export const sectionOf = (
	well: Well,
	results: Results,
	{ width, height }: MapOptions,
	print: Print,
	/** Height of the legend [pt]. */
	legend: number,
): Section => {
	const { trajectory } = results;
	const azimuth = trajectory.vertical_section_azimuth.value;
	const whole = placesAlong(trajectory.path, 0, trajectory.total_depth.md.value);
	const planned =
		trajectory.planned === undefined
			? []
			: placesAlong(trajectory.planned, 0, trajectory.planned.rows.at(-1)?.md ?? 0);
	const known = knownWells(well, results, azimuth);
	const nearby = known.filter(({ inReach }) => inReach);
	const departures = [
		0,
		...[...whole, ...planned].map((place) => along(azimuth, place)),
		...nearby.flatMap(({ departure, path }) => [departure, ...path.map((point) => point.departure)]),
	];
	const depths = [...whole, ...planned].map((place) => place.tvd);
	const bottom = Math.max(...depths) * 1.06;
	const [from, to] = [Math.min(...departures), Math.max(...departures)];
	const margin = Math.max(0.06 * (to - from), 0.07 * bottom);
	const top = nearby.length > 0 ? ABOVE : SIZE * 2.6;
	const straight = trajectory.closure.value < STRAIGHT_DOWN && trajectory.planned === undefined;
	const under = straight ? CLOSE_UNDER : UNDER;
	const room = { left: RULER + 136, top, right: width - 4, bottom: height - under - SIZE * 2.4 - legend };
	const fits = equalScale([from - margin, to + margin], [0, bottom], room, "down");
	// What is not needed of the height is not used: the ground hangs from the top.
	const box = { ...room, bottom: top + bottom * fits.perFoot };
	const scale = equalScale([from - margin, to + margin], [0, bottom], box, "down");
	return {
		well,
		results,
		print,
		scale,
		box,
		under,
		deepest: bottom,
		azimuth,
		nearby,
		far: known.flatMap(({ inReach, place }) => (inReach ? [] : [notDrawn(place, print)])),
		at: (place) => [scale.x(along(azimuth, place)), scale.y(place.tvd)],
	};
};

interface SectionPoint {
	readonly departure: number;
	readonly tvd: number;
}

type NearbyWell = ReturnType<typeof knownWells>[number];

/** Wells nearby whose depth, place and hole are known, projected onto the section. */
export const knownWells = (well: Well, results: Results, azimuth: number) => {
	const site = results.site;
	const isInReach = reachOf(results);
	const bottoms = new Map<
		string,
		{ readonly bottom?: Known<"true-vertical-depth">; readonly kind: "water" | "offset" }
	>();
	for (const each of results.isolation.neighbor_wells) bottoms.set(each.id, { ...each, kind: "water" });
	for (const each of results.isolation.offset_wells ?? []) bottoms.set(each.id, { ...each, kind: "offset" });
	return [...(site?.neighbors ?? []), ...(site?.offset_wells ?? [])].flatMap((place) => {
		const found = bottoms.get(place.id);
		const entries = found?.kind === "water" ? well.neighbors : well.offsetWells;
		if (entryOf<{ readonly id?: string; readonly name: string }>(entries, place) === undefined) return [];
		if (found?.bottom === undefined || place.north === undefined || place.east === undefined) return [];
		const hole = results.site.offset_wells.find(({ id }) => found.kind === "offset" && id === place.id)?.path;
		// Where another well's hole goes is drawn where it is known, and never taken to be straight down.
		if (found.kind === "offset" && hole === undefined) return [];
		const at = { north: place.north.value, east: place.east.value };
		return [
			{
				place,
				inReach: isInReach(at),
				id: place.id,
				name: place.name,
				kind: found.kind,
				bottom: found.bottom,
				departure: along(azimuth, at),
				top: well.datum.groundLevel.value,
				path: (hole?.rows ?? []).map(
					(row): SectionPoint => ({
						departure: along(azimuth, { north: row["north"] ?? Number.NaN, east: row["east"] ?? Number.NaN }),
						tvd: row["tvd"] ?? Number.NaN,
					}),
				),
			},
		];
	});
};
