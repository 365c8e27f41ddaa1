import { curveLinear, curveLinearClosed, line } from "d3-shape";
import simplify from "simplify-js";
import type { TrajectoryResults } from "../calc/results.ts";
import { placeAt } from "../calc/trajectory/at-depth.ts";
import { pathStationsOf } from "../calc/trajectory/path.ts";
import type { DepthScale } from "./depth-scale.ts";

export type Point = readonly [x: number, y: number];

/** A place on the hole's axis as drawn; the normal points right of a hole going down, up from a hole going right. */
export interface AxisPoint {
	readonly md: number;
	readonly x: number;
	readonly y: number;
	readonly normal: Point;
}

/** The hole's axis on the page: true in depth, schematic sideways. */
export interface WellAxis {
	readonly at: (md: number) => AxisPoint;
	/** Places from one depth to another, both ends included. */
	readonly between: (from: number, to: number) => AxisPoint[];
	readonly points: readonly AxisPoint[];
	/** Measured depth where the hole has turned level, if it does. */
	readonly level?: number;
}

/** Horizontal room for the parts of a hole that leaves the vertical [pt]. */
interface Sideways {
	/** x of the vertical part. */
	readonly x: number;
	/** From the vertical to the landing. */
	readonly curve: number;
	/** From the landing to total depth. */
	readonly lateral: number;
	/** From the vertical to the bottom of a slanted hole that never turns level. */
	readonly slant: number;
}

/** Inclination from which a hole is drawn as a lateral [°]. */
const LEVEL = 80;
const SAMPLES = 360;
/** Inclination up to which a hole that will turn level is drawn as upright [°], and how far it may drift on the page [pt]. */
const UPRIGHT = 3;
const DRIFT = 4;
/** Sideways travel below this share of depth is drawn as none. */
const STRAIGHT = 0.01;

/** Measured depth where the hole turns level: the landing, or where the path first passes the limit. */
export const levelFrom = (trajectory: TrajectoryResults): number | undefined => {
	if (trajectory.maximum_inclination.value < LEVEL) return undefined;
	return trajectory.landing?.md.value ?? trajectory.path.rows.find((row) => row.inclination >= LEVEL)?.md;
};

const sampled = new WeakMap<TrajectoryResults, readonly Place[]>();

/** Places down the hole, with what it has traveled sideways: those of a well are asked for by every picture of it. */
const placesOf = (trajectory: TrajectoryResults): readonly Place[] => {
	const known = sampled.get(trajectory);
	if (known !== undefined) return known;
	const stations = pathStationsOf(trajectory.path);
	const total = trajectory.total_depth.md.value;
	const depths = new Set([
		0,
		total,
		...trajectory.path.rows.map((row) => row.md).filter((md) => md <= total),
	]);
	for (let i = 1; i < SAMPLES; i += 1) depths.add((total * i) / SAMPLES);
	const level = levelFrom(trajectory);
	if (level !== undefined && level < total) depths.add(level);
	let [traveled, north, east] = [0, 0, 0];
	const places = [...depths]
		.sort((a, b) => a - b)
		.map((md) => {
			const place = placeAt(stations, md);
			if (place !== undefined) {
				traveled += Math.hypot(place.north - north, place.east - east);
				[north, east] = [place.north, place.east];
			}
			return { md, tvd: place?.tvd ?? md, traveled };
		});
	sampled.set(trajectory, places);
	return places;
};

export const wellAxis = (trajectory: TrajectoryResults, scale: DepthScale, room: Sideways): WellAxis => {
	const total = trajectory.total_depth.md.value;
	const level = levelFrom(trajectory);
	const places = placesOf(trajectory);
	const traveled = places.at(-1)?.traveled ?? 0;
	const atLevel = level === undefined ? undefined : places.find((place) => place.md >= level)?.traveled;
	const deepest = Math.max(...places.map((place) => place.tvd), 1);
	const turns =
		trajectory.path.rows.findLast((row) => row.inclination < UPRIGHT && row.md <= (level ?? 0))?.md ?? 0;
	const atTurn = places.findLast((place) => place.md <= turns)?.traveled ?? 0;
	const sideways = (distance: number): number => {
		if (atLevel === undefined) return traveled < STRAIGHT * deepest ? 0 : (distance / traveled) * room.slant;
		const drift = Math.min(DRIFT, (atTurn / atLevel) * room.curve);
		if (distance <= atTurn) return atTurn === 0 ? 0 : (distance / atTurn) * drift;
		if (distance <= atLevel) return drift + ((distance - atTurn) / (atLevel - atTurn)) * (room.curve - drift);
		return room.curve + ((distance - atLevel) / Math.max(traveled - atLevel, 1)) * room.lateral;
	};
	const withBreaks = scale.breaks.flatMap((each) => crossings(places, each.tvd));
	const drawn = [...places, ...withBreaks]
		.sort((a, b) => a.md - b.md || a.tvd - b.tvd)
		.map((place) => ({
			md: place.md,
			x: room.x + sideways(place.traveled),
			y: scale.y(place.tvd),
		}));
	const points = drawn.map((point, i): AxisPoint => {
		const before = drawn[Math.max(i - 1, 0)] ?? point;
		const after = drawn[Math.min(i + 1, drawn.length - 1)] ?? point;
		const [dx, dy] = [after.x - before.x, after.y - before.y];
		const length = Math.hypot(dx, dy);
		// A slanted hole is sheared, not turned: what is at one depth stays level across it.
		return {
			...point,
			normal: level === undefined || length === 0 ? [1, 0] : [dy / length, -dx / length],
		};
	});
	const at = (md: number): AxisPoint => {
		const i = firstAtOrBelow(points, md);
		const after = points[Math.min(i, points.length - 1)];
		const before = points[Math.max(i - 1, 0)];
		if (before === undefined || after === undefined) return { md, x: room.x, y: scale.y(md), normal: [1, 0] };
		const span = after.md - before.md;
		const share = span === 0 ? 1 : Math.min(1, Math.max(0, (md - before.md) / span));
		const mix = (a: number, b: number) => a + (b - a) * share;
		const [nx, ny] = [mix(before.normal[0], after.normal[0]), mix(before.normal[1], after.normal[1])];
		const length = Math.hypot(nx, ny) || 1;
		return {
			md,
			x: mix(before.x, after.x),
			y: mix(before.y, after.y),
			normal: [nx / length, ny / length],
		};
	};
	const between = (from: number, to: number) => [
		at(from),
		...points.filter((point) => point.md > from && point.md < to),
		at(to),
	];
	return {
		at,
		between,
		points,
		...(level === undefined || level >= total ? {} : { level }),
	};
};

/** Index of the first point at or below a measured depth; past the last where there is none. */
const firstAtOrBelow = (points: readonly AxisPoint[], md: number): number => {
	let [low, high] = [0, points.length];
	while (low < high) {
		const middle = (low + high) >> 1;
		if ((points[middle]?.md ?? Number.POSITIVE_INFINITY) >= md) high = middle;
		else low = middle + 1;
	}
	return low;
};

interface Place {
	readonly md: number;
	readonly tvd: number;
	readonly traveled: number;
}

/** Just above and just below each place where the hole crosses a depth, so that a break's gap is crossed straight. */
const crossings = (places: readonly Place[], tvd: number): Place[] =>
	places.slice(1).flatMap((after, i): Place[] => {
		const before = places[i];
		if (before === undefined || before.tvd >= tvd === after.tvd >= tvd) return [];
		const share = (tvd - before.tvd) / (after.tvd - before.tvd);
		const md = before.md + share * (after.md - before.md);
		const traveled = before.traveled + share * (after.traveled - before.traveled);
		const [upper, lower] = [tvd, tvd + 1e-6];
		return after.tvd > before.tvd
			? [
					{ md, tvd: upper, traveled },
					{ md: md + 1e-6, tvd: lower, traveled },
				]
			: [
					{ md, tvd: lower, traveled },
					{ md: md + 1e-6, tvd: upper, traveled },
				];
	});

const shift = (point: AxisPoint, by: number): Point => [
	point.x + point.normal[0] * by,
	point.y + point.normal[1] * by,
];

/** The axis moved sideways. */
export const offset = (points: readonly AxisPoint[], by: number): Point[] =>
	points.map((point) => shift(point, by));

/** No line is moved farther than this by leaving out what cannot be seen [pt]: a fifteenth of a dot at 200 dots to the inch. */
const UNSEEN = 0.025;

const open = line<Point>().curve(curveLinear).digits(2);
const closed = line<Point>().curve(curveLinearClosed).digits(2);

/** Without the points that lie on the straight between others, as near as can be seen; a leader keeps its bend. */
const seen = (points: readonly Point[]): Point[] =>
	points.length <= 3
		? [...points]
		: simplify(
				points.map(([x, y]) => ({ x, y })),
				UNSEEN,
				true,
			).map(({ x, y }): Point => [x, y]);

export const openPath = (points: readonly Point[]): string => open(seen(points)) ?? "";
export const closedPath = (points: readonly Point[]): string => closed(seen(points)) ?? "";

/** The area between two distances from the axis, on one side (+1 right or up, -1 left or down). */
export const strip = (points: readonly AxisPoint[], side: 1 | -1, near: number, far: number): string =>
	closedPath([...offset(points, side * far), ...offset(points, side * near).reverse()]);
