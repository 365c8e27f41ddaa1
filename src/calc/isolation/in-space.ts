import { formula } from "../../cite/formula.ts";
import type { KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";

const inputs = {
	path: { table: "path" },
	N: "offset",
	E: "offset",
	TVD: "true-vertical-depth",
} as const;
const source = cite("geometry", "least distance between two straight pieces in space");
const validity =
	"the other bore taken vertical below its wellhead, from the depth datum to its total depth; the path taken straight between its stations";

/** Least distance in space between the well path and a vertical bore [ft]. */
export const distanceInSpace = formula({
	id: "isolation/distance-in-space",
	name: "Least distance in space to the well path",
	expression: "min over both bores of √(ΔN² + ΔE² + ΔTVD²)",
	source,
	inputs,
	gives: "distance",
	validity,
	compute: ({ path, N, E, TVD }) => nearest(path, [N, E, TVD]).distance,
});

/** The same, to a stretch of this well's path alone, such as the treated one [ft]. */
export const stretchInSpace = formula({
	id: "isolation/stretch-in-space",
	name: "Least distance in space to a stretch of the well path",
	expression: "min over the other bore and MD_top ≤ MD ≤ MD_bottom of √(ΔN² + ΔE² + ΔTVD²)",
	source,
	inputs: { ...inputs, MD_top: "measured-depth", MD_bottom: "measured-depth" },
	gives: "distance",
	validity,
	compute: ({ path, N, E, TVD, MD_top, MD_bottom }) =>
		nearest(path, [N, E, TVD], [MD_top, MD_bottom]).distance,
});

/** Where along this hole the two come nearest [ft]. */
export const nearestDepthInSpace = formula({
	id: "isolation/nearest-depth-in-space",
	name: "Measured depth where the bores come nearest",
	expression: "MD at the least of √(ΔN² + ΔE² + ΔTVD²)",
	source,
	inputs,
	gives: "measured-depth",
	validity,
	compute: ({ path, N, E, TVD }) => nearest(path, [N, E, TVD]).md,
});

/** What is left of a distance in space when both bores may be so much nearer [ft]. */
export const inSpaceAtLeast = formula({
	id: "isolation/in-space-at-least",
	name: "Distance in space less the uncertainties stated",
	expression: "s − Σ u, no less than zero",
	source: cite("definition", "each uncertainty as stated, all of them taken the near way"),
	inputs: { s: "distance", u: { many: "distance" } },
	gives: "distance",
	compute: ({ s, u }) =>
		Math.max(
			0,
			u.reduce<number>((left, each) => left - each, s),
		),
});

type Point = readonly [north: number, east: number, down: number];

const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const held = (x: number): number => Math.min(1, Math.max(0, x));

/** The nearest points of two pieces, as shares of the way along each, and how far apart they are. */
const betweenPieces = (p: Point, p2: Point, q: Point, q2: Point) => {
	const [u, v, w] = [minus(p2, p), minus(q2, q), minus(p, q)];
	const [a, b, c, d, e] = [dot(u, u), dot(u, v), dot(v, v), dot(u, w), dot(v, w)];
	const determinant = a * c - b * b;
	const first = a === 0 || determinant <= 1e-12 * a * c ? 0 : held((b * e - c * d) / determinant);
	const t = c === 0 ? 0 : held((b * first + e) / c);
	const s = a === 0 ? 0 : held((b * t - d) / a);
	const gap: Point = [w[0] + s * u[0] - t * v[0], w[1] + s * u[1] - t * v[1], w[2] + s * u[2] - t * v[2]];
	return { s, distance: Math.sqrt(dot(gap, gap)) };
};

const mix = (a: Point, b: Point, s: number): Point => [
	a[0] + s * (b[0] - a[0]),
	a[1] + s * (b[1] - a[1]),
	a[2] + s * (b[2] - a[2]),
];

const WHOLE: readonly [number, number] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];

/** The nearest place of a path, or of a stretch of it; of equally near ones, as beside a vertical bore, the shallowest. */
const nearest = (
	{ rows }: KnownTable,
	[N, E, TVD]: Point,
	[from, to]: readonly [number, number] = WHOLE,
): { readonly distance: number; readonly md: number } => {
	const point = (row: Readonly<Record<string, number>> | undefined): Point => [
		row?.["north"] ?? Number.NaN,
		row?.["east"] ?? Number.NaN,
		row?.["tvd"] ?? Number.NaN,
	];
	let best = { distance: Number.POSITIVE_INFINITY, md: Number.NaN };
	for (const [i, row] of rows.entries()) {
		const next = rows[i + 1] ?? row;
		const [md, below] = [row["md"] ?? Number.NaN, next["md"] ?? Number.NaN];
		const [upper, lower] = [Math.max(md, from), Math.min(below, to)];
		if (upper > lower) continue;
		const along = (at: number): number => (below > md ? (at - md) / (below - md) : 0);
		const ends = [along(upper), along(lower)].map((s) => mix(point(row), point(next), s)) as [Point, Point];
		const { s, distance } = betweenPieces(...ends, [N, E, 0], [N, E, TVD]);
		if (distance < best.distance - 1e-9) best = { distance, md: upper + s * (lower - upper) };
	}
	return best;
};
