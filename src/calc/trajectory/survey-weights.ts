/*
 * Weighting functions of the survey committee's error model for magnetic tools: what one unit of an error source does to
 * depth, inclination and azimuth at a station. Angles in radians, lengths in metres, fields in nanotesla and m/s².
 *
 * @source iscwsa-mwd-examples, sheet Model and the sheets of the terms
 */

export interface Station {
	readonly md: number;
	readonly tvd: number;
	readonly I: number;
	/** From true north. */
	readonly A: number;
	/** From magnetic north. */
	readonly A_m: number;
	/** From the station above [m]; of the first, to the one below. */
	readonly course: number;
}

export interface Field {
	/** [m/s²] */
	readonly G: number;
	/** [nT] */
	readonly B: number;
	/** Dip [rad]. */
	readonly Θ: number;
}

/** Depth, inclination, azimuth. */
export type Weights = readonly [D: number, I: number, A: number];

const { sin, cos, tan, abs, sqrt, max } = Math;

const depth = (D: number): Weights => [D, 0, 0];
const angles = (I: number, A: number): Weights => [0, I, A];
const azimuth = (A: number): Weights => [0, 0, A];
const horizontal = ({ B, Θ }: Field): number => B * cos(Θ);
/** Short courses average less of a random misalignment out. */
const course = (s: Station): number => max(1, sqrt(10 / s.course));

/** By the names of the model; a term without a function here is worked on its own. */
export const WEIGHTS = {
	DREF: () => depth(1),
	DSF: (s) => depth(s.md),
	DST: (s) => depth(s.md * s.tvd),
	"ABXY-TI1": (s, { G, Θ }) => angles(-cos(s.I) / G, (tan(Θ) * cos(s.I) * sin(s.A_m)) / G),
	"ABXY-TI2": (s, { G, Θ }) => azimuth((1 / tan(s.I) - tan(Θ) * cos(s.A_m)) / G),
	ABZ: (s, { G, Θ }) => angles(-sin(s.I) / G, (tan(Θ) * sin(s.I) * sin(s.A_m)) / G),
	"ASXY-TI1": (s, { Θ }) =>
		angles((sin(s.I) * cos(s.I)) / Math.SQRT2, (-tan(Θ) * sin(s.I) * cos(s.I) * sin(s.A_m)) / Math.SQRT2),
	"ASXY-TI2": (s, { Θ }) =>
		angles((sin(s.I) * cos(s.I)) / 2, (-tan(Θ) * sin(s.I) * cos(s.I) * sin(s.A_m)) / 2),
	"ASXY-TI3": (s, { Θ }) => azimuth((tan(Θ) * sin(s.I) * cos(s.A_m) - cos(s.I)) / 2),
	ASZ: (s, { Θ }) => angles(-sin(s.I) * cos(s.I), tan(Θ) * sin(s.I) * cos(s.I) * sin(s.A_m)),
	"MBXY-TI1": (s, field) => azimuth((-cos(s.I) * sin(s.A_m)) / horizontal(field)),
	"MBXY-TI2": (s, field) => azimuth(cos(s.A_m) / horizontal(field)),
	MBZ: (s, field) => azimuth((-sin(s.I) * sin(s.A_m)) / horizontal(field)),
	"MSXY-TI1": (s, { Θ }) =>
		azimuth((sin(s.I) * sin(s.A_m) * (tan(Θ) * cos(s.I) + sin(s.I) * cos(s.A_m))) / Math.SQRT2),
	"MSXY-TI2": (s, { Θ }) =>
		azimuth((sin(s.A_m) * (tan(Θ) * sin(s.I) * cos(s.I) - cos(s.I) ** 2 * cos(s.A_m) - cos(s.A_m))) / 2),
	"MSXY-TI3": (s, { Θ }) =>
		azimuth((cos(s.I) * cos(s.A_m) ** 2 - cos(s.I) * sin(s.A_m) ** 2 - tan(Θ) * sin(s.I) * cos(s.A_m)) / 2),
	MSZ: (s, { Θ }) => azimuth(-(sin(s.I) * cos(s.A_m) + tan(Θ) * cos(s.I)) * sin(s.I) * sin(s.A_m)),
	AZ: () => azimuth(1),
	DBH: (_, field) => azimuth(1 / horizontal(field)),
	AMIL: (s, field) => azimuth((sin(s.I) * sin(s.A_m)) / horizontal(field)),
	SAGE: (s) => angles(sin(s.I) ** 0.25, 0),
	XYM1: (s) => angles(abs(sin(s.I)), 0),
	XYM2: () => azimuth(-1),
	XYM3: (s) =>
		angles(abs(cos(s.I)) * cos(s.A) * course(s), (-abs(cos(s.I)) * sin(s.A) * course(s)) / sin(s.I)),
	XYM4: (s) =>
		angles(abs(cos(s.I)) * sin(s.A) * course(s), (abs(cos(s.I)) * cos(s.A) * course(s)) / sin(s.I)),
} as const satisfies Readonly<Record<string, (s: Station, field: Field) => Weights>>;

/** North and east of a unit error of terms that have no azimuth to err in where the hole is vertical, per metre of course. */
export const VERTICAL: Readonly<
	Record<string, (s: Station, field: Field) => readonly [N: number, E: number]>
> = {
	"ABXY-TI2": (s, { G }) => [-sin(s.A) / G, cos(s.A) / G],
	XYM3: () => [1, 0],
	XYM4: () => [0, 1],
};
