import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { FOOT, INCH, PSI } from "../../units/factors.ts";
import { INJECTION, inSi } from "./plane-strain.ts";

/*
 * Two published solutions, whose constants must not be mixed: the rate constant along the wing, or falling along it.
 * Each is given whole.
 */
const PKN = {
	"constant rate": {
		slug: "constant-rate",
		width: 3.57,
		mean: 0.628,
		length: 0.524,
		growth: 3.04,
		pressure: 1.52,
	},
	"falling rate": {
		slug: "falling-rate",
		width: 3.27,
		mean: 0.589,
		length: 0.592,
		growth: 2.87,
		pressure: 1.43,
	},
} as const;
type Solution = keyof typeof PKN;

const source = (solution: Solution) => cite("valko-economides-1995", `PKN, ${solution} along the wing`);
const timed = { ...INJECTION, h: "length", t: "duration" } as const;
const noLeakoff = "no leakoff; half-length well above the height; one-wing rate; Newtonian fluid";

const meanWidth = (solution: Solution) =>
	formula({
		id: `stimulation/pkn-width-${PKN[solution].slug}`,
		name: `PKN mean width at a half-length, ${solution} along the wing`,
		expression: `w = ${PKN[solution].mean} · ${PKN[solution].width} (μ q x_f / E')^¼`,
		source: source(solution),
		inputs: { ...INJECTION, x_f: "length" },
		gives: "diameter",
		validity: "half-length well above the height; one-wing rate; Newtonian fluid",
		compute: (given) => {
			const { q, μ, E } = inSi(given);
			return (PKN[solution].mean * PKN[solution].width * ((μ * q * given.x_f * FOOT) / E) ** 0.25) / INCH;
		},
	});

const halfLength = (solution: Solution) =>
	formula({
		id: `stimulation/pkn-length-${PKN[solution].slug}`,
		name: `PKN half-length without leakoff, ${solution} along the wing`,
		expression: `x_f = ${PKN[solution].length} (q³ E' / (μ h⁴))^⅕ t^⅘`,
		source: source(solution),
		inputs: timed,
		gives: "length",
		validity: noLeakoff,
		compute: (given) => {
			const { q, μ, E } = inSi(given);
			const h = given.h * FOOT;
			return (PKN[solution].length * ((q ** 3 * E) / (μ * h ** 4)) ** 0.2 * (given.t * 60) ** 0.8) / FOOT;
		},
	});

const greatestWidth = (solution: Solution) =>
	formula({
		id: `stimulation/pkn-growth-${PKN[solution].slug}`,
		name: `PKN greatest width at the well without leakoff, ${solution} along the wing`,
		expression: `w_0 = ${PKN[solution].growth} (q² μ / (E' h))^⅕ t^⅕`,
		source: source(solution),
		inputs: timed,
		gives: "diameter",
		validity: noLeakoff,
		compute: (given) => {
			const { q, μ, E } = inSi(given);
			return (
				(PKN[solution].growth * ((q ** 2 * μ) / (E * given.h * FOOT)) ** 0.2 * (given.t * 60) ** 0.2) / INCH
			);
		},
	});

const netPressure = (solution: Solution) =>
	formula({
		id: `stimulation/pkn-pressure-${PKN[solution].slug}`,
		name: `PKN net pressure at the well without leakoff, ${solution} along the wing`,
		expression: `p = ${PKN[solution].pressure} (E'⁴ μ q² / h⁶)^⅕ t^⅕`,
		source: source(solution),
		inputs: timed,
		gives: "pressure",
		validity: noLeakoff,
		compute: (given) => {
			const { q, μ, E } = inSi(given);
			const h = given.h * FOOT;
			return (PKN[solution].pressure * ((E ** 4 * μ * q ** 2) / h ** 6) ** 0.2 * (given.t * 60) ** 0.2) / PSI;
		},
	});

/** [in] */
export const pknWidthConstantRate = meanWidth("constant rate");
/** [in] */
export const pknWidthFallingRate = meanWidth("falling rate");
/** [ft] */
export const pknLengthConstantRate = halfLength("constant rate");
/** [ft] */
export const pknLengthFallingRate = halfLength("falling rate");
/** [in] */
export const pknGrowthConstantRate = greatestWidth("constant rate");
/** [in] */
export const pknGrowthFallingRate = greatestWidth("falling rate");
/** [psi] */
export const pknPressureConstantRate = netPressure("constant rate");
/** [psi] */
export const pknPressureFallingRate = netPressure("falling rate");
