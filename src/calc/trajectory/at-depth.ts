import { formula } from "../../cite/formula.ts";
import type { Known, KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { type ArcPoint, arcPoint } from "./arc.ts";
import { type PathStation, pathStationsOf } from "./path.ts";

const source = cite("sawaryn-thorogood-2005", "interpolation on the minimum-curvature arc");
const inputs = { path: { table: "path" }, MD: "measured-depth" } as const;
const validity = "MD at or below the path's first station; past the last station the hole is taken straight";

/** Where the hole is at a measured depth. */
interface PlaceOnPath extends ArcPoint {
	readonly tvd: number;
	readonly north: number;
	readonly east: number;
	/** Dogleg severity of the interval [°/100 ft]. */
	readonly dogleg: number;
	/** At a station, that of the interval above it; elsewhere the same [°/100 ft]. */
	readonly dogleg_above: number;
}

/**
 * The hole at a measured depth: on the arc between its stations, straight past the last one.
 *
 * @returns undefined above the path's first station, or where the path has no stations
 * @source  sawaryn-thorogood-2005
 */
export const placeAt = (path: readonly PathStation[], md: number): PlaceOnPath | undefined => {
	const of = known.get(path) ?? new Map<number, PlaceOnPath | undefined>();
	known.set(path, of);
	if (of.has(md)) return of.get(md);
	const place = placeOn(path, md);
	of.set(md, place);
	return place;
};

/** Every load case, fluid and drawing of a well asks for the same depths. */
const known = new WeakMap<readonly PathStation[], Map<number, PlaceOnPath | undefined>>();

const placeOn = (path: readonly PathStation[], md: number): PlaceOnPath | undefined => {
	const [first] = path;
	const last = path.at(-1);
	if (first === undefined || last === undefined || !(md >= first.md)) return undefined;
	const i = stationAbove(path, md);
	const upper = path[i] ?? first;
	const lower = path[i + 1] ?? {
		...last,
		md: Math.max(md, last.md) + 1,
		dogleg: 0,
	};
	const point = arcPoint(upper, lower, md - upper.md);
	return {
		...point,
		tvd: upper.tvd + point.step[2],
		north: upper.north + point.step[0],
		east: upper.east + point.step[1],
		dogleg: lower.dogleg,
		dogleg_above: md === upper.md ? upper.dogleg : lower.dogleg,
	};
};

/** Index of the last station at or above `md`. */
const stationAbove = (path: readonly PathStation[], md: number): number => {
	let [low, high] = [0, path.length];
	while (high - low > 1) {
		const middle = (low + high) >> 1;
		if ((path[middle]?.md ?? Number.POSITIVE_INFINITY) <= md) low = middle;
		else high = middle;
	}
	return low;
};

const read = (path: KnownTable, md: number, what: keyof PlaceOnPath): number => {
	const value = placeAt(pathStationsOf(path), md)?.[what];
	return typeof value === "number" ? value : Number.NaN;
};

export const tvdAtMd = formula({
	id: "trajectory/tvd-at-md",
	name: "True vertical depth at a measured depth",
	expression: "TVD1 + (s/2) · RF(fβ) · (cos I1 + cos I*), s = MD − MD1, f = s/ΔMD",
	source,
	inputs,
	gives: "true-vertical-depth",
	validity,
	compute: ({ path, MD }) => read(path, MD, "tvd"),
});

export const inclinationAtMd = formula({
	id: "trajectory/inclination-at-md",
	name: "Inclination at a measured depth",
	expression: "I* of t* = [sin((1−f)β) t1 + sin(fβ) t2] / sin β",
	source,
	inputs,
	gives: "angle",
	validity,
	compute: ({ path, MD }) => read(path, MD, "inclination"),
});

export const azimuthAtMd = formula({
	id: "trajectory/azimuth-at-md",
	name: "Azimuth at a measured depth",
	expression: "A* of t* = [sin((1−f)β) t1 + sin(fβ) t2] / sin β",
	source,
	inputs,
	gives: "angle",
	validity,
	compute: ({ path, MD }) => read(path, MD, "azimuth"),
});

export const northAtMd = formula({
	id: "trajectory/north-at-md",
	name: "Northing at a measured depth",
	expression: "N1 + (s/2) · RF(fβ) · (tN1 + tN*)",
	source,
	inputs,
	gives: "offset",
	validity,
	compute: ({ path, MD }) => read(path, MD, "north"),
});

export const eastAtMd = formula({
	id: "trajectory/east-at-md",
	name: "Easting at a measured depth",
	expression: "E1 + (s/2) · RF(fβ) · (tE1 + tE*)",
	source,
	inputs,
	gives: "offset",
	validity,
	compute: ({ path, MD }) => read(path, MD, "east"),
});

/** @returns NaN above the path's first station. */
export const tvdAt = (path: KnownTable, md: Known<"measured-depth">): Known<"true-vertical-depth"> =>
	tvdAtMd.of({ path, MD: md });

export const inclinationAt = (path: KnownTable, md: Known<"measured-depth">): Known<"angle"> =>
	inclinationAtMd.of({ path, MD: md });

export const azimuthAt = (path: KnownTable, md: Known<"measured-depth">): Known<"angle"> =>
	azimuthAtMd.of({ path, MD: md });
