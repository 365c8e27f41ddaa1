import type { WellPath } from "../calc/results.ts";
import { placeAt } from "../calc/trajectory/at-depth.ts";
import { pathStationsOf } from "../calc/trajectory/path.ts";

/** A place on a well path, in feet from the wellhead and below the datum. */
export interface PathPlace {
	readonly md: number;
	readonly tvd: number;
	readonly north: number;
	readonly east: number;
}

/** Places along a whole path; a stretch has its share of them. */
const SAMPLES = 240;

/** By stretch: sections, plans and every step of the sequence draw the same ones. */
const known = new WeakMap<WellPath, Map<string, readonly PathPlace[]>>();

/** A path as a list of places close enough together to draw as straights. */
export const placesAlong = (path: WellPath, from: number, to: number): readonly PathPlace[] => {
	const of = known.get(path) ?? new Map<string, readonly PathPlace[]>();
	known.set(path, of);
	const stretch = `${from} ${to}`;
	const places = of.get(stretch) ?? placesBetween(path, from, to);
	of.set(stretch, places);
	return places;
};

const placesBetween = (path: WellPath, from: number, to: number): readonly PathPlace[] => {
	const stations = pathStationsOf(path);
	const depths = new Set([from, to, ...path.rows.map((row) => row.md).filter((md) => md > from && md < to)]);
	const whole = Math.max(path.rows.at(-1)?.md ?? 0, 1);
	const count = Math.ceil((SAMPLES * Math.max(to - from, 0)) / whole);
	for (let i = 1; i < count; i += 1) depths.add(from + ((to - from) * i) / count);
	return [...depths]
		.sort((a, b) => a - b)
		.flatMap((md) => {
			const place = placeAt(stations, md);
			return place === undefined ? [] : [{ md, tvd: place.tvd, north: place.north, east: place.east }];
		});
};

/** Distance along an azimuth [°] from the wellhead [ft]. */
export const along = (
	azimuth: number,
	{ north, east }: { readonly north: number; readonly east: number },
): number => {
	const radians = (azimuth * Math.PI) / 180;
	return north * Math.cos(radians) + east * Math.sin(radians);
};
