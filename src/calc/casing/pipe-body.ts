import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { isPipe } from "../../well/pipe-dimensions.ts";

// A well is understood before anything is calculated, and its drifts are needed for that.
export { drift, insideDiameter, isPipe } from "../../well/pipe-dimensions.ts";

/** Mass of the pipe without its coupling [lb/ft]. */
export const plainEndMass = formula({
	id: "casing/plain-end-mass",
	name: "Plain-end mass",
	expression: "w_pe = 10.69 (D − t) t",
	source: cite("api-5ct", "plain-end mass"),
	inputs: { D: "diameter", t: "diameter" },
	gives: "linear-weight",
	validity: "0 < t < D/2",
	compute: ({ D, t }) => (isPipe(D, t) ? 10.69 * (D - t) * t : Number.NaN),
});

export const bodyArea = formula({
	id: "casing/body-area",
	name: "Steel cross-section",
	expression: "A_p = (π/4)(D² − d²)",
	source: cite("api-5c3", "pipe body area"),
	inputs: { D: "diameter", t: "diameter" },
	gives: "area",
	validity: "0 < t < D/2",
	compute: ({ D, t }) => areaOf(D, t),
});

/** (π/4)(D² − d²) [in²]; NaN for a wall that leaves no bore. */
export const areaOf = (D: number, t: number): number => (isPipe(D, t) ? Math.PI * (D - t) * t : Number.NaN);

export const bodyYield = formula({
	id: "casing/body-yield",
	name: "Pipe body yield",
	expression: "P_Y = (π/4)(D² − d²) Y_p",
	source: cite("api-5c3", "pipe body yield strength"),
	inputs: { D: "diameter", t: "diameter", Y_p: "pressure" },
	gives: "force",
	validity: "0 < t < D/2",
	compute: ({ D, t, Y_p }) => areaOf(D, t) * Y_p,
});

/** Loss of wall by wear, taken all round: a groove on one side is no stronger. */
export const wornWall = formula({
	id: "casing/worn-wall",
	name: "Wall after wear",
	expression: "t_w = t (1 − wear)",
	source: cite("common-practice", "uniform wear"),
	inputs: { t: "diameter", wear: "share" },
	gives: "diameter",
	validity: "0 ≤ wear < 1",
	compute: ({ t, wear }) => (wear >= 0 && wear < 1 ? t * (1 - wear) : Number.NaN),
});

/** Room temperature, above which strength is taken to fall [°F]. */
const ROOM = 70;

/** Yield strength where the steel is hot; no credit is taken for cold steel. */
export const yieldAtTemperature = formula({
	id: "casing/yield-at-temperature",
	name: "Yield strength at temperature",
	expression: "Y_p(T) = Y_p [1 − r (T − 70 °F)], T above 70 °F",
	source: cite("common-practice", "derating of carbon steel"),
	inputs: { Y_p: "pressure", r: "share-per-temperature", T: "temperature" },
	gives: "pressure",
	validity: "the result above zero",
	compute: ({ Y_p, r, T }) => {
		const left = 1 - r * Math.max(0, T - ROOM);
		return left > 0 && r >= 0 ? Y_p * left : Number.NaN;
	},
});
