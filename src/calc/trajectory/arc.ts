import { doglegAngle, ratioFactorOf } from "./dogleg.ts";
import { azimuthOf, inclinationOf, tangent, type Vector } from "./tangent.ts";

/** A survey or plan station: measured depth [ft], inclination and azimuth [°]. */
export interface Station {
	readonly md: number;
	readonly inclination: number;
	readonly azimuth: number;
}

/** A place on the arc, from the arc's upper end: direction there, and the way made good [ft]. */
export interface ArcPoint {
	readonly inclination: number;
	readonly azimuth: number;
	readonly vertical: number;
	readonly step: Vector;
}

/**
 * The point `s` ft past the upper station on the circular arc that joins two stations:
 *
 *     t* = [sin((1−f)β) t1 + sin(fβ) t2] / sin β,   step = (s/2) RF(fβ) (t1 + t*),   f = s/ΔMD
 *
 * @param s  0 ≤ s ≤ ΔMD [ft]
 * @returns  NaN throughout for a dogleg of 180°
 * @source   sawaryn-thorogood-2005, interpolation on the minimum-curvature arc
 */
export const arcPoint = (upper: Station, lower: Station, s: number): ArcPoint => {
	const t1 = tangent(upper.inclination, upper.azimuth);
	const t2 = tangent(lower.inclination, lower.azimuth);
	const β = doglegAngle(upper.inclination, upper.azimuth, lower.inclination, lower.azimuth);
	const f = s / (lower.md - upper.md);
	const direction = slerp(t1, t2, β, f);
	const half = (s / 2) * ratioFactorOf(f * β);
	const along = (i: 0 | 1 | 2): number => half * (t1[i] + direction[i]);
	const nearer = f < 0.5 ? upper : lower;
	return {
		inclination: inclinationOf(direction),
		azimuth: azimuthOf(direction, nearer.azimuth),
		vertical: direction[2],
		step: [along(0), along(1), along(2)],
	};
};

const slerp = (t1: Vector, t2: Vector, β: number, f: number): Vector => {
	// Below this angle the sines' ratio and the straight mean agree to the last digit.
	const [w1, w2] =
		β < 1e-8 ? [1 - f, f] : [Math.sin((1 - f) * β) / Math.sin(β), Math.sin(f * β) / Math.sin(β)];
	return [w1 * t1[0] + w2 * t2[0], w1 * t1[1] + w2 * t2[1], w1 * t1[2] + w2 * t2[2]];
};

/** The whole step from one station to the next. */
export const arcStep = (upper: Station, lower: Station): Vector =>
	arcPoint(upper, lower, lower.md - upper.md).step;
