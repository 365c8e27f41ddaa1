import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { degrees, radians } from "./tangent.ts";

/**
 * Angle between the hole's directions at two stations, in radians.
 *
 * The half-angle form is used because the arccosine of the usual one loses its digits below about 0.01°.
 *
 * @source taylor-mason-1972, dogleg angle; sawaryn-thorogood-2005 for the half-angle form
 */
export const doglegAngle = (I1: number, A1: number, I2: number, A2: number): number => {
	const [i1, i2] = [radians(I1), radians(I2)];
	const square =
		Math.sin((i2 - i1) / 2) ** 2 + Math.sin(i1) * Math.sin(i2) * Math.sin(radians(A2 - A1) / 2) ** 2;
	return 2 * Math.asin(Math.sqrt(Math.min(1, Math.max(0, square))));
};

/** Dogleg β [°] between two stations. */
export const dogleg = formula({
	id: "trajectory/dogleg",
	name: "Dogleg angle",
	expression: "sin²(β/2) = sin²((I2 − I1)/2) + sin I1 · sin I2 · sin²((A2 − A1)/2)",
	source: cite("sawaryn-thorogood-2005", "dogleg, half-angle form"),
	inputs: { I1: "angle", A1: "angle", I2: "angle", A2: "angle" },
	gives: "angle",
	compute: ({ I1, A1, I2, A2 }) => degrees(doglegAngle(I1, A1, I2, A2)),
});

/** Where the hole turns back on itself the arc between two stations is no longer one arc. */
const TURNED_BACK = Math.PI - 1e-6;

/**
 * (2/β) tan(β/2), with its series where β is small.
 *
 * @param β  dogleg [rad], below π; else NaN
 * @source taylor-mason-1972, ratio factor
 */
export const ratioFactorOf = (β: number): number =>
	β >= TURNED_BACK ? Number.NaN : β < 1e-3 ? 1 + β ** 2 / 12 + β ** 4 / 120 : (2 / β) * Math.tan(β / 2);

export const ratioFactor = formula({
	id: "trajectory/ratio-factor",
	name: "Ratio factor",
	expression: "RF = (2/β) tan(β/2), β in radians",
	source: cite("taylor-mason-1972", "ratio factor"),
	inputs: { β: "angle" },
	gives: "ratio",
	validity: "0 ≤ β < 180°",
	compute: ({ β }) => (β < 0 ? Number.NaN : ratioFactorOf(radians(β))),
});

export const doglegSeverity = formula({
	id: "trajectory/dogleg-severity",
	name: "Dogleg severity",
	expression: "DLS = 100 β / (MD2 − MD1)",
	source: cite("lapeyrouse", "Dogleg severity, radius of curvature method"),
	inputs: {
		MD1: "measured-depth",
		I1: "angle",
		A1: "angle",
		MD2: "measured-depth",
		I2: "angle",
		A2: "angle",
	},
	gives: "dogleg",
	validity: "MD2 > MD1",
	compute: ({ MD1, I1, A1, MD2, I2, A2 }) =>
		MD2 > MD1 ? (100 * degrees(doglegAngle(I1, A1, I2, A2))) / (MD2 - MD1) : Number.NaN,
});

/** Change of inclination in a hundred feet [°/100 ft], over a length that is above none. */
export const buildBetween = (MD1: number, I1: number, MD2: number, I2: number): number =>
	(I2 - I1) * (100 / (MD2 - MD1));

export const buildRate = formula({
	id: "trajectory/build-rate",
	name: "Build rate",
	expression: "(I2 − I1) · 100 / (MD2 − MD1)",
	source: cite("api-d20", "build rate"),
	inputs: {
		MD1: "measured-depth",
		I1: "angle",
		MD2: "measured-depth",
		I2: "angle",
	},
	gives: "dogleg",
	validity: "MD2 > MD1",
	compute: ({ MD1, I1, MD2, I2 }) => (MD2 > MD1 ? buildBetween(MD1, I1, MD2, I2) : Number.NaN),
});

export const turnRate = formula({
	id: "trajectory/turn-rate",
	name: "Turn rate",
	expression: "(A2 − A1) · 100 / (MD2 − MD1), by the shorter way round",
	source: cite("api-d20", "turn rate"),
	inputs: {
		MD1: "measured-depth",
		A1: "angle",
		MD2: "measured-depth",
		A2: "angle",
	},
	gives: "dogleg",
	validity: "MD2 > MD1",
	compute: ({ MD1, A1, MD2, A2 }) => {
		if (!(MD2 > MD1)) return Number.NaN;
		return (shorterTurn(A1, A2) * 100) / (MD2 - MD1);
	},
});

/** From one azimuth to another by the shorter way round, clockwise positive [°]. */
export const shorterTurn = (A1: number, A2: number): number => ((((A2 - A1 + 180) % 360) + 360) % 360) - 180;
