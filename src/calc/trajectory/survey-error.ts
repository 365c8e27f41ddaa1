import { formula, tableFormula } from "../../cite/formula.ts";
import type { KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { WEIGHTING_FUNCTIONS } from "../../cite/weighting-functions.ts";
import { FOOT } from "../../units/factors.ts";
import { pathStationsOf } from "./path.ts";
import { type Field, type Station, VERTICAL, WEIGHTS, type Weights } from "./survey-weights.ts";

/*
 * How far from its stated place the hole may be, by the error model of the survey tool. Each error source moves the stations
 * by what it does to depth, inclination and azimuth there; what a station's error does to the place of the next ones follows
 * from balanced-tangential steps. Errors that are the same at every station add up as they are, random ones by their squares.
 */

const source = cite(
	"iscwsa-mwd-examples",
	"sheets drdp, TOTALS and those of the terms; after Williamson, SPE 67616",
);

/** Standard gravity [m/s²]. */
const GRAVITY = 9.80665;
/** Below this the hole counts as vertical: azimuth says nothing there [°]. */
const VERTICAL_BELOW = 1e-4;
/** Least turn that a long course hides [rad/m]. */
const TORTUOSITY = 0.000572615;

const RANDOM = 0;

type Vector = readonly [N: number, E: number, V: number];
const ZERO: Vector = [0, 0, 0];
const add = (a: Vector, b: Vector): Vector => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const scaled = (a: Vector, k: number): Vector => [k * a[0], k * a[1], k * a[2]];

/** Of a symmetric matrix: NN, EE, VV, NE, NV, EV. */
type Covariance = readonly [number, number, number, number, number, number];
const NONE: Covariance = [0, 0, 0, 0, 0, 0];
const squared = ([N, E, V]: Vector): Covariance => [N * N, E * E, V * V, N * E, N * V, E * V];
const plus = (a: Covariance, b: Covariance): Covariance =>
	a.map((x, i) => x + (b[i] ?? 0)) as unknown as Covariance;

/** What depth, inclination and azimuth of a station do to its own place, and to the step to the next. */
interface Moves {
	readonly own: readonly [Vector, Vector, Vector];
	readonly next: readonly [Vector, Vector, Vector];
}

const along = (a: Station, b: Station): Vector => [
	(Math.sin(a.I) * Math.cos(a.A) + Math.sin(b.I) * Math.cos(b.A)) / 2,
	(Math.sin(a.I) * Math.sin(a.A) + Math.sin(b.I) * Math.sin(b.A)) / 2,
	(Math.cos(a.I) + Math.cos(b.I)) / 2,
];

const tilt = ({ I, A }: Station, half: number): Vector => [
	half * Math.cos(I) * Math.cos(A),
	half * Math.cos(I) * Math.sin(A),
	-half * Math.sin(I),
];

const swing = ({ I, A }: Station, half: number): Vector => [
	-half * Math.sin(I) * Math.sin(A),
	half * Math.sin(I) * Math.cos(A),
	0,
];

const movesOf = (stations: readonly Station[]): readonly Moves[] =>
	stations.map((s, k) => {
		const [above, below] = [stations[k - 1], stations[k + 1]];
		const before = above === undefined ? 0 : (s.md - above.md) / 2;
		// The tie-on is as the first station is: it errs over the whole first course.
		const half = k === 1 ? 2 * before : before;
		const after = below === undefined ? 0 : (below.md - s.md) / 2;
		return {
			own: [above === undefined ? ZERO : along(above, s), tilt(s, half), swing(s, half)],
			next: [below === undefined ? ZERO : scaled(along(s, below), -1), tilt(s, after), swing(s, after)],
		};
	});

/** Where an error of a station takes its own place, and the place of every station below. */
interface Shift {
	readonly here: Vector;
	readonly below: Vector;
}

const shifted = ([D, I, A]: Weights, { own, next }: Moves): Shift => {
	const by = (m: readonly [Vector, Vector, Vector]): Vector =>
		add(add(scaled(m[0], D), scaled(m[1], I)), scaled(m[2], A));
	const here = by(own);
	return { here, below: add(here, by(next)) };
};

/** In vertical hole, where azimuth says nothing: straight to north and east. */
const shiftedVertical = (
	[N, E]: readonly [number, number],
	stations: readonly Station[],
	k: number,
	coefficient: number,
): Shift => {
	const [above, s, below] = [stations[k - 1], stations[k], stations[k + 1]];
	if (above === undefined || s === undefined) return { here: ZERO, below: ZERO };
	const before = (s.md - above.md) / (k === 1 ? 1 : 2);
	const after = below === undefined ? 0 : (below.md - s.md) / 2;
	const at = (length: number): Vector => [N * length, E * length, 0];
	return { here: at(before), below: scaled(at(before + after), coefficient) };
};

/** The turn that a long course may hide, across the hole or up and down; a random error of its own. */
const courseShift = (name: "XCLA" | "XCLH", stations: readonly Station[], k: number): Shift => {
	const [above, s] = [stations[k - 1], stations[k]];
	if (above === undefined || s === undefined) return { here: ZERO, below: ZERO };
	const L = s.md - above.md;
	const wound = Math.atan2(Math.sin(s.A - above.A), Math.cos(s.A - above.A));
	const turn =
		name === "XCLH" ? Math.abs(s.I - above.I) : isVertical(above) ? 0 : Math.abs(Math.sin(s.I) * wound);
	const most = L * Math.max(turn, TORTUOSITY * L);
	const here: Vector =
		name === "XCLH"
			? [most * Math.cos(s.I) * Math.cos(s.A), most * Math.cos(s.I) * Math.sin(s.A), -most * Math.sin(s.I)]
			: [-most * Math.sin(s.A), most * Math.cos(s.A), 0];
	return { here, below: here };
};

const isVertical = ({ I }: Station): boolean => Math.abs(I) < (VERTICAL_BELOW * Math.PI) / 180;

const shiftsOf = (name: string, stations: readonly Station[], moves: readonly Moves[], field: Field) =>
	stations.map((s, k): Shift => {
		if (name === "XCLA" || name === "XCLH") return courseShift(name, stations, k);
		const straight = VERTICAL[name];
		if (straight !== undefined && isVertical(s)) {
			const misaligned = name === "XYM3" || name === "XYM4";
			const coefficient = misaligned ? Math.max(1, Math.sqrt(10 / s.course)) : 1;
			return shiftedVertical(straight(s, field), stations, k, coefficient);
		}
		const weigh = (WEIGHTS as Readonly<Record<string, (s: Station, field: Field) => Weights>>)[name];
		const found = moves[k];
		return weigh === undefined || found === undefined || k === 0
			? { here: ZERO, below: ZERO }
			: shifted(weigh(s, field), found);
	});

/** One term's covariance at each station [m²]. */
const ofTerm = (shifts: readonly Shift[], magnitude: number, random: boolean): readonly Covariance[] => {
	let sum: Vector = ZERO;
	let squares: Covariance = NONE;
	return shifts.map(({ here, below }) => {
		const found = random
			? plus(squares, squared(scaled(here, magnitude)))
			: squared(scaled(add(sum, here), magnitude));
		sum = add(sum, below);
		squares = plus(squares, squared(scaled(below, magnitude)));
		return found;
	});
};

const COVARIANCE = {
	md: "measured-depth",
	nn: "covariance",
	ee: "covariance",
	vv: "covariance",
	ne: "covariance",
	nv: "covariance",
	ev: "covariance",
} as const;

/** m² to ft². */
const SQUARE_FEET = 1 / FOOT ** 2;

const stationsOf = (path: KnownTable, turn: number, declination: number): readonly Station[] => {
	const rows = pathStationsOf(path);
	const metres = rows.map(({ md }) => md * FOOT);
	return rows.map(({ md, tvd, inclination, azimuth }, k) => ({
		md: md * FOOT,
		tvd: tvd * FOOT,
		I: (inclination * Math.PI) / 180,
		A: ((azimuth + turn) * Math.PI) / 180,
		A_m: ((azimuth + turn - declination) * Math.PI) / 180,
		course: k === 0 ? (metres[1] ?? 0) - (metres[0] ?? 0) : (metres[k] ?? 0) - (metres[k - 1] ?? 0),
	}));
};

/** Covariance of the place of every station, north, east and down; one standard deviation squared. */
export const surveyCovariance = tableFormula({
	id: "trajectory/survey-covariance",
	name: "Covariance of the stations by the survey tool's error model",
	expression:
		"C = Σ_sources Σ (∂r/∂p · w σ)(∂r/∂p · w σ)ᵀ; systematic and global sources summed along the hole, random ones by squares",
	source,
	inputs: {
		path: { table: "md, inclination, azimuth, tvd" },
		/** Rows of weighting function, standard deviation in metres, radians, nanotesla and m/s², and propagation. */
		model: { table: "weight, magnitude, propagation" },
		B: "magnetic-field",
		Θ: "angle",
		/** Declination, magnetic north east of true. */
		δ: "angle",
		/** What takes the path's azimuths to true north. */
		turn: "angle",
	},
	gives: COVARIANCE,
	validity:
		"inclination below 180°; a field that is not vertical; revision 5 of the model, axes along true north",
	compute: ({ path, model, B, Θ, δ, turn }) => {
		if (!(B > 0) || !(Math.abs(Θ) < 90)) return [];
		const stations = stationsOf(path, turn, δ);
		const moves = movesOf(stations);
		const field = { G: GRAVITY, B, Θ: (Θ * Math.PI) / 180 };
		const total: Covariance[] = stations.map(() => NONE);
		for (const { weight, magnitude, propagation } of model.rows) {
			const name = WEIGHTING_FUNCTIONS[weight ?? -1];
			if (name === undefined || magnitude === undefined) return [];
			const found = ofTerm(shiftsOf(name, stations, moves, field), magnitude, propagation === RANDOM);
			for (const [k, covariance] of found.entries()) total[k] = plus(total[k] ?? NONE, covariance);
		}
		return stations.map(({ md }, k) => {
			const [nn, ee, vv, ne, nv, ev] = (total[k] ?? NONE).map(
				(x) => x * SQUARE_FEET,
			) as unknown as Covariance;
			return { md: md / FOOT, nn, ee, vv, ne, nv, ev };
		});
	},
});

const last = { covariance: { table: "md, nn, ee, vv, ne, nv, ev" } } as const;
const at = (covariance: KnownTable, name: string): number => covariance.rows.at(-1)?.[name] ?? Number.NaN;

/** Half axes of the horizontal ellipse of one standard deviation [ft]. */
const axes = (covariance: KnownTable): readonly [major: number, minor: number, azimuth: number] => {
	const [nn, ee, ne] = [at(covariance, "nn"), at(covariance, "ee"), at(covariance, "ne")];
	const [middle, half] = [(nn + ee) / 2, Math.hypot((nn - ee) / 2, ne)];
	const azimuth = ((Math.atan2(2 * ne, nn - ee) / 2) * 180) / Math.PI;
	return [Math.sqrt(middle + half), Math.sqrt(Math.max(0, middle - half)), ((azimuth % 180) + 180) % 180];
};

const ellipseSource = cite("definition", "principal axes of the horizontal part of the covariance");

export const ellipseMajor = formula({
	id: "trajectory/ellipse-major",
	name: "Half of the long axis of the horizontal ellipse at the end of the hole, one standard deviation",
	expression: "√[(NN + EE)/2 + √(((NN − EE)/2)² + NE²)]",
	source: ellipseSource,
	inputs: last,
	gives: "distance",
	compute: ({ covariance }) => axes(covariance)[0],
});

export const ellipseMinor = formula({
	id: "trajectory/ellipse-minor",
	name: "Half of the short axis of the horizontal ellipse at the end of the hole, one standard deviation",
	expression: "√[(NN + EE)/2 − √(((NN − EE)/2)² + NE²)]",
	source: ellipseSource,
	inputs: last,
	gives: "distance",
	compute: ({ covariance }) => axes(covariance)[1],
});

/** From true north [°]. */
export const ellipseAzimuth = formula({
	id: "trajectory/ellipse-azimuth",
	name: "Azimuth of the long axis of that ellipse, from true north",
	expression: "½ atan2(2 NE, NN − EE)",
	source: ellipseSource,
	inputs: last,
	gives: "angle",
	compute: ({ covariance }) => axes(covariance)[2],
});

export const verticalSigma = formula({
	id: "trajectory/vertical-sigma",
	name: "Vertical uncertainty at the end of the hole, one standard deviation",
	expression: "√VV",
	source: ellipseSource,
	inputs: last,
	gives: "distance",
	compute: ({ covariance }) => Math.sqrt(at(covariance, "vv")),
});

/** How many standard deviations a share of a normal distribution in a plane lies within, along its axes. */
export const planarFactor = formula({
	id: "trajectory/planar-factor",
	name: "Standard deviations within which a place in a plane lies so often",
	expression: "k = √(−2 ln(1 − p))",
	source: cite("definition", "normal distribution in a plane: share within k is 1 − exp(−k²/2)"),
	inputs: { p: "share" },
	gives: "ratio",
	validity: "0 < p < 1",
	compute: ({ p }) => (p > 0 && p < 1 ? Math.sqrt(-2 * Math.log(1 - p)) : Number.NaN),
});

/** [ft] */
export const radiusAtConfidence = formula({
	id: "trajectory/radius-at-confidence",
	name: "Half of the long axis of the ellipse at the end of the hole, at the stated confidence",
	expression: "k a",
	source: cite("definition"),
	inputs: { k: "ratio", a: "distance" },
	gives: "distance",
	compute: ({ k, a }) => k * a,
});
