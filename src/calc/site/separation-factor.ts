import { formula, tableFormula } from "../../cite/formula.ts";
import type { KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { FOOT } from "../../units/factors.ts";
import { nearestOf, type PointOfHole, pointsOf } from "../trajectory/approach.ts";
import type { Vector } from "../trajectory/tangent.ts";

/*
 * The separation factor of the collision avoidance rule of the industry's survey committee, with its constants. The rule
 * takes standard deviations from an error model; where the definition names none, they come from the radii that it
 * states, as circles that grow in proportion to measured depth.
 */

const source = cite("iscwsa-collision-rule", "separation factor");

/** Combined standard deviation is multiplied by this. */
const K = 3.5;
/** Standard deviation of the projection ahead of the bit: 0.5 m [ft]. */
const PROJECT_AHEAD = 0.5 / FOOT;
/** Surface margin: 0.3 m [ft]. */
const SURFACE_MARGIN = 0.3 / FOOT;

const factorOf = (D: number, R_r: number, R_o: number, σ_s: number): number =>
	(D - R_r - R_o - SURFACE_MARGIN) / (K * Math.hypot(σ_s, PROJECT_AHEAD));

/** Above 1 the rule lets the hole go on; at or below 0 the two holes touch at their stated places [-]. */
export const separationFactor = formula({
	id: "site/separation-factor",
	name: "Separation factor",
	expression: "SF = (D − R_r − R_o − S_m) / (k √(σ_s² + σ_pa²)), k = 3.5, σ_pa = 0.5 m, S_m = 0.3 m",
	source,
	inputs: { D: "distance", R_r: "length", R_o: "length", σ_s: "distance" },
	gives: "ratio",
	validity: "D center to center; σ_s the combined standard deviation of both places along D",
	compute: ({ D, R_r, R_o, σ_s }) => (σ_s >= 0 && D >= 0 ? factorOf(D, R_r, R_o, σ_s) : Number.NaN),
});

/** Standard deviation, along any one direction, of a place that lies so often within a circle [ft]. */
export const oneSigma = formula({
	id: "site/one-sigma",
	name: "Standard deviation of a place within a circle",
	expression: "σ = r / √(−2 ln(1 − p))",
	source: cite("definition", "circular normal distribution in a plane: share within r is 1 − exp(−r²/2σ²)"),
	inputs: { r: "distance", p: "share" },
	gives: "distance",
	validity: "0 < p < 1; the same in every direction",
	compute: ({ r, p }) => (p > 0 && p < 1 ? r / Math.sqrt(-2 * Math.log(1 - p)) : Number.NaN),
});

/** Radius of a round hole [ft]. */
export const holeRadius = formula({
	id: "site/hole-radius",
	name: "Radius of a hole",
	expression: "R = d/2",
	source: cite("geometry"),
	inputs: { d: "diameter" },
	gives: "length",
	compute: ({ d }) => d / 24,
});

const inputs = {
	path: { table: "path" },
	other: { table: "path" },
	R_r: "length",
	R_o: "length",
	σ_r: "distance",
	σ_o: "distance",
	σ_w: "distance",
} as const;

/** Standard deviation of both wells together, where a place of this hole lies across from one of the other [ft]. */
type SigmaBetween = (md: number, otherMd: number) => number;

/** A row for each place of this hole that is looked at, and one where the holes come nearest. */
const rowsOf = (
	own: readonly PointOfHole[],
	theirs: readonly PointOfHole[],
	{ R_r, R_o }: { readonly R_r: number; readonly R_o: number },
	sigmaBetween: SigmaBetween,
) => {
	const row = (md: number, { other, distance }: { readonly other: number; readonly distance: number }) => {
		const sigma = sigmaBetween(md, other);
		return {
			md,
			other_md: other,
			distance,
			standard_deviation: sigma,
			factor: factorOf(distance, R_r, R_o, sigma),
		};
	};
	const nearest = nearestOf(own, theirs);
	return [
		...own.map((point) => row(point.md, nearestOf([point], theirs))),
		row(nearest.md, nearest),
	].toSorted((a, b) => a.md - b.md);
};

const COLUMNS = {
	md: "measured-depth",
	other_md: "measured-depth",
	distance: "distance",
	standard_deviation: "distance",
	factor: "ratio",
} as const;

/** Standard deviation of a place along a direction: the pedal curve of its ellipsoid [ft]. */
const sigmaToward = (covariance: KnownTable, md: number, [N, E, V]: Vector): number => {
	const rows = covariance.rows;
	const after = rows.findIndex((row) => (row["md"] ?? Number.NaN) >= md);
	const high = rows[after < 0 ? rows.length - 1 : after];
	const low = rows[Math.max(0, (after < 0 ? rows.length : after) - 1)];
	const [from, to] = [low?.["md"] ?? 0, high?.["md"] ?? 0];
	const share = to > from ? Math.min(1, Math.max(0, (md - from) / (to - from))) : 1;
	const of = (name: string): number => {
		const [a, b] = [low?.[name] ?? Number.NaN, high?.[name] ?? Number.NaN];
		return a + share * (b - a);
	};
	const squared =
		N * N * of("nn") +
		E * E * of("ee") +
		V * V * of("vv") +
		2 * (N * E * of("ne") + N * V * of("nv") + E * V * of("ev"));
	return Math.sqrt(Math.max(0, squared));
};

const placeOf = (points: readonly PointOfHole[], md: number): Vector => {
	const after = points.findIndex((point) => point.md >= md);
	const [low, high] = [points[after - 1], points[after] ?? points.at(-1)];
	if (low === undefined || high === undefined || high.md === low.md) return high?.at ?? [0, 0, 0];
	const s = (md - low.md) / (high.md - low.md);
	return [
		low.at[0] + s * (high.at[0] - low.at[0]),
		low.at[1] + s * (high.at[1] - low.at[1]),
		low.at[2] + s * (high.at[2] - low.at[2]),
	];
};

/** Unit vector of a horizontal frame turned to true north; straight down where the two places are one. */
const towards = (a: Vector, b: Vector, turn: number): Vector => {
	const [n, e, v] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
	const length = Math.hypot(n, e, v);
	if (length === 0) return [0, 0, 1];
	const [c, s] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
	return [(c * n - s * e) / length, (s * n + c * e) / length, v / length];
};

/** The same with this hole's covariance by the error model of its survey tool, along the line between the holes. */
export const separationByModel = tableFormula({
	id: "site/separation-by-model",
	name: "Separation along the well, by the survey tool's error model",
	expression:
		"SF at each MD, σ_s = √(eᵀ C e + (σ_o·MD_o/MD_o,end)² + σ_w²), e from this hole to the nearest place of the other (pedal curve)",
	source,
	inputs: {
		path: { table: "path" },
		other: { table: "path" },
		covariance: { table: "md, nn, ee, vv, ne, nv, ev" },
		/** What takes the path's azimuths to true north. */
		turn: "angle",
		R_r: "length",
		R_o: "length",
		σ_o: "distance",
		σ_w: "distance",
	},
	gives: COLUMNS,
	validity:
		"errors of the two wells independent; the other well's alike in every direction, growing in proportion to measured depth",
	compute: ({ path, other, covariance, turn, R_r, R_o, σ_o, σ_w }) => {
		const [own, theirs] = [pointsOf(path), pointsOf(other)];
		const otherEnd = theirs.at(-1)?.md ?? 0;
		return rowsOf(own, theirs, { R_r, R_o }, (md, otherMd) => {
			const e = towards(placeOf(own, md), placeOf(theirs, otherMd), turn);
			return Math.hypot(sigmaToward(covariance, md, e), σ_o * share(otherMd, otherEnd), σ_w);
		});
	},
});

/** The same where the other hole's covariance is known as well, as of two wells of one pad. */
export const separationByTwoModels = tableFormula({
	id: "site/separation-by-two-models",
	name: "Separation along the well, by the error models of both survey tools",
	expression:
		"SF at each MD, σ_s = √(eᵀ (C + C_o) e + σ_w²), e from this hole to the nearest place of the other (pedal curves)",
	source,
	inputs: {
		path: { table: "path" },
		other: { table: "path" },
		covariance: { table: "md, nn, ee, vv, ne, nv, ev" },
		other_covariance: { table: "md, nn, ee, vv, ne, nv, ev" },
		/** What takes the path's azimuths to true north. */
		turn: "angle",
		R_r: "length",
		R_o: "length",
		σ_w: "distance",
	},
	gives: COLUMNS,
	validity: "errors of the two wells independent, each by its own model",
	compute: ({ path, other, covariance, other_covariance, turn, R_r, R_o, σ_w }) => {
		const [own, theirs] = [pointsOf(path), pointsOf(other)];
		return rowsOf(own, theirs, { R_r, R_o }, (md, otherMd) => {
			const e = towards(placeOf(own, md), placeOf(theirs, otherMd), turn);
			return Math.hypot(sigmaToward(covariance, md, e), sigmaToward(other_covariance, otherMd, e), σ_w);
		});
	},
});

const share = (md: number, end: number): number => (end > 0 ? Math.min(1, Math.max(0, md / end)) : 0);

/** The factor along this hole: distance, combined standard deviation and factor from each of its places to the other hole. */
export const separationAlong = tableFormula({
	id: "site/separation-along",
	name: "Separation along the well",
	expression: "SF at each MD, σ_s = √((σ_r·MD/MD_end)² + (σ_o·MD_o/MD_o,end)² + σ_w²)",
	source,
	inputs,
	gives: COLUMNS,
	validity:
		"errors of the two wells independent and alike in every direction; a survey's error grows in proportion to measured depth",
	compute: ({ path, other, R_r, R_o, σ_r, σ_o, σ_w }) => {
		const [own, theirs] = [pointsOf(path), pointsOf(other)];
		const [end, otherEnd] = [own.at(-1)?.md ?? 0, theirs.at(-1)?.md ?? 0];
		return rowsOf(own, theirs, { R_r, R_o }, (md, otherMd) =>
			Math.hypot(σ_r * share(md, end), σ_o * share(otherMd, otherEnd), σ_w),
		);
	},
});

const least = ({ rows }: KnownTable) =>
	rows.reduce<Readonly<Record<string, number>> | undefined>(
		(best, row) => (best === undefined || (row["factor"] ?? 0) < (best["factor"] ?? 0) ? row : best),
		undefined,
	);

/** [-] */
export const leastSeparationFactor = formula({
	id: "site/least-separation-factor",
	name: "Least separation factor",
	expression: "min over MD of SF",
	source,
	inputs: { separation: { table: "md, factor" } },
	gives: "ratio",
	compute: ({ separation }) => least(separation)?.["factor"] ?? Number.NaN,
});

/** Where along this hole [ft]. */
export const leastSeparationDepth = formula({
	id: "site/least-separation-depth",
	name: "Measured depth at the least separation factor",
	expression: "MD at min SF",
	source,
	inputs: { separation: { table: "md, factor" } },
	gives: "measured-depth",
	compute: ({ separation }) => least(separation)?.["md"] ?? Number.NaN,
});

/** How far apart the holes are there [ft]. */
export const leastSeparationDistance = formula({
	id: "site/least-separation-distance",
	name: "Distance at the least separation factor",
	expression: "D at min SF",
	source,
	inputs: { separation: { table: "md, distance, factor" } },
	gives: "distance",
	compute: ({ separation }) => least(separation)?.["distance"] ?? Number.NaN,
});
