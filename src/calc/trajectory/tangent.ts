/** Components of a direction or a place: north, east, and vertical (down is positive). */
export type Vector = readonly [north: number, east: number, vertical: number];

const RADIANS = Math.PI / 180;

export const radians = (degrees: number): number => degrees * RADIANS;
export const degrees = (angle: number): number => angle / RADIANS;

/** An azimuth brought into 0 ≤ A < 360 [°]. */
export const wholeCircle = (azimuth: number): number => ((azimuth % 360) + 360) % 360;

/**
 * Unit tangent of the hole: (sin I cos A, sin I sin A, cos I).
 *
 * @param inclination  from vertical [°]
 * @param azimuth      clockwise from the north in use [°]
 * @source taylor-mason-1972
 */
export const tangent = (inclination: number, azimuth: number): Vector => {
	const [i, a] = [radians(inclination), radians(azimuth)];
	return [Math.sin(i) * Math.cos(a), Math.sin(i) * Math.sin(a), Math.cos(i)];
};

/** Inclination of a direction [°]. The two-argument arctangent keeps its digits near vertical, where the arccosine does not. */
export const inclinationOf = ([north, east, vertical]: Vector): number =>
	degrees(Math.atan2(Math.hypot(north, east), vertical));

/** Azimuth of a direction [°]; `straightDown` where the direction is vertical and has none. */
export const azimuthOf = ([north, east]: Vector, straightDown: number): number =>
	Math.hypot(north, east) < 1e-12 ? wholeCircle(straightDown) : wholeCircle(degrees(Math.atan2(east, north)));
