import { formula, tableFormula } from "../../cite/formula.ts";
import type { KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { placeAt } from "./at-depth.ts";
import { doglegAngle } from "./dogleg.ts";
import { type PathStation, pathStationsOf } from "./path.ts";
import { radians, type Vector } from "./tangent.ts";

/*
 * How near two holes come to each other. Each hole is walked in straight pieces between points on its arcs; both ends of
 * the least distance are found on the pieces themselves, not at stations.
 */

/** A piece turns by no more than this: its middle then lies within 0.04 ft of an arc of 10°/100 ft [rad]. */
const TURN = radians(1);
/** A piece is no longer than this [ft]. */
const PIECE = 100;

/** A place of a hole: how far along it, and where. */
export interface PointOfHole {
	readonly md: number;
	readonly at: Vector;
}

/** Two places of two holes, and how far apart they are [ft]. */
interface Approach {
	readonly md: number;
	readonly other: number;
	readonly distance: number;
}

/**
 * Points of a hole near enough to each other that straight pieces between them are the hole.
 *
 * @param path  with inclination and azimuth: arcs between stations; without: straight pieces
 * @param from  the stretch of it wanted [ft]
 */
export const pointsOf = (
	path: KnownTable,
	[from, to]: readonly [number, number] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY],
): readonly PointOfHole[] => {
	const curved = "inclination" in path.columns;
	const stations = pathStationsOf(path);
	const points: PointOfHole[] = [];
	for (const [i, upper] of stations.entries()) {
		const lower = stations[i + 1] ?? upper;
		const [begin, end] = [Math.max(upper.md, from), Math.min(lower.md, to)];
		if (begin > end) continue;
		const angle = curved
			? doglegAngle(upper.inclination, upper.azimuth, lower.inclination, lower.azimuth)
			: 0;
		const pieces = Math.max(1, Math.ceil(angle / TURN), Math.ceil((end - begin) / PIECE));
		for (let k = points.at(-1)?.md === begin ? 1 : 0; k <= pieces; k++)
			points.push(pointBetween(stations, i, curved, begin + ((end - begin) * k) / pieces));
	}
	return points;
};

const pointBetween = (
	stations: readonly PathStation[],
	i: number,
	curved: boolean,
	md: number,
): PointOfHole => {
	const [upper, lower] = [stations[i], stations[i + 1] ?? stations[i]];
	if (upper === undefined || lower === undefined) return { md, at: [Number.NaN, Number.NaN, Number.NaN] };
	if (md === upper.md) return { md, at: placeOf(upper) };
	if (md === lower.md) return { md, at: placeOf(lower) };
	if (!curved)
		return { md, at: mix(placeOf(upper), placeOf(lower), (md - upper.md) / (lower.md - upper.md)) };
	const place = placeAt([upper, lower], md);
	return { md, at: place === undefined ? placeOf(upper) : [place.north, place.east, place.tvd] };
};

const placeOf = ({ north, east, tvd }: Pick<PathStation, "north" | "east" | "tvd">): Vector => [
	north,
	east,
	tvd,
];
const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const held = (x: number): number => Math.min(1, Math.max(0, x));
const mix = (a: Vector, b: Vector, s: number): Vector => [
	a[0] + s * (b[0] - a[0]),
	a[1] + s * (b[1] - a[1]),
	a[2] + s * (b[2] - a[2]),
];

/** The nearest points of two pieces, as shares of the way along each, and how far apart they are. */
const betweenPieces = (p: Vector, p2: Vector, q: Vector, q2: Vector) => {
	const [u, v, w] = [minus(p2, p), minus(q2, q), minus(p, q)];
	const [a, b, c, d, e] = [dot(u, u), dot(u, v), dot(v, v), dot(u, w), dot(v, w)];
	const determinant = a * c - b * b;
	const first = a === 0 || determinant <= 1e-12 * a * c ? 0 : held((b * e - c * d) / determinant);
	const t = c === 0 ? 0 : held((b * first + e) / c);
	const s = a === 0 ? 0 : held((b * t - d) / a);
	const gap: Vector = [w[0] + s * u[0] - t * v[0], w[1] + s * u[1] - t * v[1], w[2] + s * u[2] - t * v[2]];
	return { s, t, distance: Math.sqrt(dot(gap, gap)) };
};

/** Nearest places of two holes; of equally near ones, as beside two upright holes, the shallowest. */
export const nearestOf = (own: readonly PointOfHole[], other: readonly PointOfHole[]): Approach => {
	let best: Approach = { md: Number.NaN, other: Number.NaN, distance: Number.POSITIVE_INFINITY };
	for (const [i, p] of own.entries()) {
		const p2 = own[i + 1] ?? p;
		if (p2 === p && own.length > 1) continue;
		for (const [j, q] of other.entries()) {
			const q2 = other[j + 1] ?? q;
			if (q2 === q && other.length > 1) continue;
			// Pieces whose beginnings lie further apart than this cannot come nearer than the best so far.
			const apart = Math.sqrt(dot(minus(p.at, q.at), minus(p.at, q.at)));
			if (apart - (p2.md - p.md) - (q2.md - q.md) > best.distance) continue;
			const { s, t, distance } = betweenPieces(p.at, p2.at, q.at, q2.at);
			if (distance < best.distance - 1e-9)
				best = { md: p.md + s * (p2.md - p.md), other: q.md + t * (q2.md - q.md), distance };
		}
	}
	return best;
};

/** Stretches of a hole at or below a depth [ft]; a hole that comes up again has several. */
const below = (points: readonly PointOfHole[], tvd: number): readonly (readonly PointOfHole[])[] => {
	const runs: PointOfHole[][] = [];
	for (const [i, upper] of points.entries()) {
		const lower = points[i + 1];
		if (lower === undefined) break;
		const [high, low] = [upper.at[2], lower.at[2]];
		if (Math.max(high, low) < tvd) continue;
		const crossing = (): PointOfHole => {
			const s = (tvd - high) / (low - high);
			return { md: upper.md + s * (lower.md - upper.md), at: mix(upper.at, lower.at, s) };
		};
		const from = high < tvd ? crossing() : upper;
		const to = low < tvd ? crossing() : lower;
		const run = runs.at(-1);
		if (run?.at(-1)?.md === from.md) run.push(to);
		else runs.push([from, to]);
	}
	return runs;
};

const flat = (points: readonly PointOfHole[]): readonly PointOfHole[] =>
	points.map(({ md, at }) => ({ md, at: [at[0], at[1], 0] }));

const inputs = { path: { table: "path" }, other: { table: "path" } } as const;
const stretch = { ...inputs, MD_top: "measured-depth", MD_bottom: "measured-depth" } as const;
const source = cite("geometry", "least distance between two lines in space");
const validity = "both paths from one wellhead and one datum; center to center, no uncertainty deducted";
const both = "min over both paths of √(ΔN² + ΔE² + ΔTVD²)";

/** Least distance in space between two holes, center to center [ft]. */
export const nearestApproach = formula({
	id: "trajectory/nearest-approach",
	name: "Nearest approach to the other well",
	expression: both,
	source,
	inputs,
	gives: "distance",
	validity,
	compute: ({ path, other }) => nearestOf(pointsOf(path), pointsOf(other)).distance,
});

/** Where along this hole the two come nearest [ft]. */
export const nearestApproachDepth = formula({
	id: "trajectory/nearest-approach-depth",
	name: "Measured depth at the nearest approach",
	expression: `MD at the ${both}`,
	source,
	inputs,
	gives: "measured-depth",
	validity,
	compute: ({ path, other }) => nearestOf(pointsOf(path), pointsOf(other)).md,
});

/** Where along the other hole, by its own measured depth [ft]. */
export const nearestApproachOtherDepth = formula({
	id: "trajectory/nearest-approach-other-depth",
	name: "Measured depth in the other well at the nearest approach",
	expression: `MD of the other path at the ${both}`,
	source,
	inputs,
	gives: "measured-depth",
	validity,
	compute: ({ path, other }) => nearestOf(pointsOf(path), pointsOf(other)).other,
});

/** The same, to a stretch of this hole alone, such as the treated one [ft]. */
export const stretchApproach = formula({
	id: "trajectory/stretch-approach",
	name: "Nearest approach of the other well to a stretch of this one",
	expression: "min over the other path and MD_top ≤ MD ≤ MD_bottom of √(ΔN² + ΔE² + ΔTVD²)",
	source,
	inputs: stretch,
	gives: "distance",
	validity,
	compute: ({ path, other, MD_top, MD_bottom }) =>
		nearestOf(pointsOf(path, [MD_top, MD_bottom]), pointsOf(other)).distance,
});

/** The same as seen on the map, whatever the depths [ft]. */
export const stretchApproachInPlan = formula({
	id: "trajectory/stretch-approach-in-plan",
	name: "Horizontal distance of the other well from a stretch of this one",
	expression: "min over the other path and MD_top ≤ MD ≤ MD_bottom of √(ΔN² + ΔE²)",
	source,
	inputs: stretch,
	gives: "distance",
	validity,
	compute: ({ path, other, MD_top, MD_bottom }) =>
		nearestOf(flat(pointsOf(path, [MD_top, MD_bottom])), flat(pointsOf(other))).distance,
});

/** The same to that part of the other hole alone that lies at or below a depth; none where it does not go so deep [ft]. */
export const deepStretchApproachInPlan = formula({
	id: "trajectory/deep-stretch-approach-in-plan",
	name: "Horizontal distance of the other well, at or below a depth, from a stretch of this one",
	expression: "min over the other path where TVD ≥ TVD_top and MD_top ≤ MD ≤ MD_bottom of √(ΔN² + ΔE²)",
	source,
	inputs: { ...stretch, TVD_top: "true-vertical-depth" },
	gives: "distance",
	validity: `${validity}; the other path reaches TVD_top`,
	compute: ({ path, other, MD_top, MD_bottom, TVD_top }) => {
		const own = flat(pointsOf(path, [MD_top, MD_bottom]));
		const found = below(pointsOf(other), TVD_top).map((run) => nearestOf(own, flat(run)).distance);
		return found.length === 0 ? Number.NaN : Math.min(...found);
	},
});

/** Least horizontal distance between two holes, whatever the depths [ft]. */
export const approachInPlan = formula({
	id: "trajectory/approach-in-plan",
	name: "Least horizontal distance to the other well",
	expression: "min over both paths of √(ΔN² + ΔE²)",
	source,
	inputs,
	gives: "distance",
	validity,
	compute: ({ path, other }) => nearestOf(flat(pointsOf(path)), flat(pointsOf(other))).distance,
});

/** Deepest place of a path [ft]. */
export const deepestOfPath = formula({
	id: "trajectory/deepest-of-path",
	name: "Greatest true vertical depth of a path",
	expression: "max TVD",
	source: cite("geometry"),
	inputs: { path: { table: "path" } },
	gives: "true-vertical-depth",
	compute: ({ path }) => Math.max(...pointsOf(path).map(({ at }) => at[2])),
});

/** Columns of a hole that is not this well's, in this well's frame. */
const OTHER_PATH_COLUMNS = {
	md: "measured-depth",
	inclination: "angle",
	azimuth: "angle",
	tvd: "true-vertical-depth",
	north: "offset",
	east: "offset",
} as const;

/** Another well's path, moved to where its wellhead lies from this one and to this well's datum. */
export const movedPath = tableFormula({
	id: "trajectory/moved-path",
	name: "Path of the other well from this wellhead",
	expression: "N + N_w, E + E_w, TVD + ΔE_d",
	source: cite("geometry", "shift of origin"),
	inputs: { path: { table: "path" }, N_w: "offset", E_w: "offset", ΔE_d: "offset" },
	gives: OTHER_PATH_COLUMNS,
	validity: "azimuths of both paths from one north",
	compute: ({ path, N_w, E_w, ΔE_d }) =>
		pathStationsOf(path).map(({ md, inclination, azimuth, tvd, north, east }) => ({
			md,
			inclination,
			azimuth,
			tvd: tvd + ΔE_d,
			north: north + N_w,
			east: east + E_w,
		})),
});

const STRAIGHT_COLUMNS = {
	md: "measured-depth",
	tvd: "true-vertical-depth",
	north: "offset",
	east: "offset",
} as const;

/** A hole of which only both ends are known, taken straight from one to the other. */
export const straightPath = tableFormula({
	id: "trajectory/straight-path",
	name: "Path of the other well, straight from its wellhead to its bottom",
	expression: "from (N_w, E_w, ΔE_d) to (N_b, E_b, TVD_b + ΔE_d)",
	source: cite("geometry"),
	inputs: {
		N_w: "offset",
		E_w: "offset",
		N_b: "offset",
		E_b: "offset",
		TVD_b: "true-vertical-depth",
		ΔE_d: "offset",
	},
	gives: STRAIGHT_COLUMNS,
	validity: "TVD_b > 0; the real hole may lie anywhere between",
	compute: ({ N_w, E_w, N_b, E_b, TVD_b, ΔE_d }) =>
		TVD_b > 0
			? [
					{ md: 0, tvd: ΔE_d, north: N_w, east: E_w },
					{ md: Math.hypot(N_b - N_w, E_b - E_w, TVD_b), tvd: TVD_b + ΔE_d, north: N_b, east: E_b },
				]
			: [],
});
