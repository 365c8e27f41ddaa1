import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { degrees, radians } from "./tangent.ts";

const source = cite(
	"geometry",
	"circular arc in a vertical plane; engineering form as in bourgoyne-1986, ch. 8",
);

/** 100 ft · 180°/π: the radius whose arc turns one degree in 100 ft [ft]. */
const RADIUS_OF_ONE_DEGREE = 18_000 / Math.PI;

export const radiusOfCurvature = formula({
	id: "trajectory/radius-of-curvature",
	name: "Radius of the build",
	expression: "R = 5729.578 / B",
	source,
	inputs: { B: "dogleg" },
	gives: "length",
	validity: "B > 0",
	compute: ({ B }) => (B > 0 ? RADIUS_OF_ONE_DEGREE / B : Number.NaN),
});

/** Measured length in which a rate [°/100 ft] turns an angle [°], in feet. */
export const lengthOfBuild = (I1: number, I2: number, B: number): number => ((I2 - I1) * 100) / B;

export const arcLength = formula({
	id: "trajectory/arc-length",
	name: "Measured length of the build",
	expression: "ΔMD = (I2 − I1) · 100 / B",
	source,
	inputs: { I1: "angle", I2: "angle", B: "dogleg" },
	gives: "length",
	validity: "B > 0, I2 ≥ I1",
	compute: ({ I1, I2, B }) => (B > 0 && I2 >= I1 ? lengthOfBuild(I1, I2, B) : Number.NaN),
});

export const arcDepth = formula({
	id: "trajectory/arc-depth",
	name: "Vertical depth made in the build",
	expression: "ΔTVD = R (sin I2 − sin I1)",
	source,
	inputs: { R: "length", I1: "angle", I2: "angle" },
	gives: "offset",
	compute: ({ R, I1, I2 }) => R * (Math.sin(radians(I2)) - Math.sin(radians(I1))),
});

export const arcDeparture = formula({
	id: "trajectory/arc-departure",
	name: "Departure made in the build",
	expression: "ΔH = R (cos I1 − cos I2)",
	source,
	inputs: { R: "length", I1: "angle", I2: "angle" },
	gives: "offset",
	compute: ({ R, I1, I2 }) => R * (Math.cos(radians(I1)) - Math.cos(radians(I2))),
});

/** Where a build-and-land plan lands. */
export const landingDepth = formula({
	id: "trajectory/planned-landing",
	name: "Landing depth",
	expression: "MD_landing = KOP + 100 · I_L / B",
	source,
	inputs: { KOP: "measured-depth", I_L: "angle", B: "dogleg" },
	gives: "measured-depth",
	validity: "B > 0, I_L > 0",
	compute: ({ KOP, I_L, B }) => (B > 0 && I_L > 0 ? KOP + (100 * I_L) / B : Number.NaN),
});

/** A target on the arc itself is within it by no more than the last bits of its arithmetic. */
const ON_THE_ARC = 1 - 1e-12;

/**
 * Hold angle of a build-and-hold plan, from a vertical start at the kickoff to a target Z below and X away.
 *
 * @param Z  target below the kickoff, vertically [ft]
 * @returns  [°]; NaN where the target lies inside the arc, not below the kickoff, or is passed before 90°
 */
export const holdInclination = formula({
	id: "trajectory/hold-inclination",
	name: "Hold inclination",
	expression: "θ = asin(R / √((R−X)² + Z²)) − atan((R−X) / Z)",
	source: cite("bourgoyne-1986", "ch. 8, build-and-hold"),
	inputs: { R: "length", Z: "offset", X: "length" },
	gives: "angle",
	validity: "Z > 0, (R−X)² + Z² ≥ R², 0 ≤ θ ≤ 90°",
	compute: ({ R, Z, X }) => {
		const toCenter = Math.hypot(R - X, Z);
		if (!(Z > 0) || toCenter < R * ON_THE_ARC) return Number.NaN;
		const θ = degrees(Math.asin(Math.min(1, R / toCenter)) - Math.atan((R - X) / Z));
		return θ < -1e-9 || θ > 90 + 1e-9 ? Number.NaN : Math.max(0, θ);
	},
});

export const holdLength = formula({
	id: "trajectory/hold-length",
	name: "Length of the hold",
	expression: "L = √((R−X)² + Z² − R²)",
	source: cite("bourgoyne-1986", "ch. 8, build-and-hold"),
	inputs: { R: "length", Z: "offset", X: "length" },
	gives: "length",
	validity: "Z > 0, (R−X)² + Z² ≥ R²",
	compute: ({ R, Z, X }) => {
		const toCenter = Math.hypot(R - X, Z);
		if (!(Z > 0) || toCenter < R * ON_THE_ARC) return Number.NaN;
		return Math.sqrt(Math.max(0, toCenter ** 2 - R ** 2));
	},
});

/** The gentlest build that still reaches a target Z below the kickoff and X away, not passing 90°. */
export const leastBuild = formula({
	id: "trajectory/least-build",
	name: "Least build that reaches the target",
	expression: "B = 5729.578 / min(Z, (X² + Z²) / 2X)",
	source,
	inputs: { Z: "offset", X: "length" },
	gives: "dogleg",
	validity: "Z > 0, X > 0",
	compute: ({ Z, X }) =>
		Z > 0 && X > 0
			? RADIUS_OF_ONE_DEGREE / Math.min(X > Z ? Z : Number.POSITIVE_INFINITY, (X ** 2 + Z ** 2) / (2 * X))
			: Number.NaN,
});

/** The deepest kickoff, as height above the target, from which a build still reaches a target X away. */
export const leastHeight = formula({
	id: "trajectory/least-height",
	name: "Least height of the kickoff above the target",
	expression: "Z = √(R² − (R−X)²) for X < R, else R",
	source,
	inputs: { R: "length", X: "length" },
	gives: "offset",
	compute: ({ R, X }) => (X < R ? Math.sqrt(R ** 2 - (R - X) ** 2) : R),
});
