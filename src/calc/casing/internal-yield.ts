import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { isPipe } from "./pipe-body.ts";

/** Pipe body, thin-walled, with the wall at the least the specification allows (87.5 % of nominal), no axial load. */
export const internalYield = formula({
	id: "casing/internal-yield",
	name: "Internal yield of the pipe body",
	expression: "P = 0.875 · 2 Y_p t / D",
	source: cite("api-5c3", "internal yield pressure of pipe (Barlow)"),
	inputs: { D: "diameter", t: "diameter", Y_p: "pressure" },
	gives: "pressure",
	validity: "0 < t < D/2; t is the nominal wall",
	compute: ({ D, t, Y_p }) => (isPipe(D, t) ? (0.875 * 2 * Y_p * t) / D : Number.NaN),
});

/** Root diameter of a round-thread coupling at the pipe's end [in]. */
const roundRoot = (E1: number, L1: number, A: number): number => E1 - (L1 + A) * 0.0625 + 0.10825 - 0.034;

/** Root diameter of a buttress coupling at the pipe's end [in]. */
export const buttressRoot = (E7: number, L7: number, I: number, T: number): number =>
	E7 - (L7 + I) * T + 0.062;

const couplingYield = (Y_c: number, W: number, root: number): number =>
	root > 0 && W > root ? (Y_c * (W - root)) / W : Number.NaN;

export const roundCouplingYield = formula({
	id: "casing/round-coupling-yield",
	name: "Internal yield of a round-thread coupling",
	expression: "P = Y_c (W − d_1) / W, d_1 = E_1 − (L_1 + A) · 0.0625 + 0.10825 − 0.034",
	source: cite("api-5c3", "internal yield pressure of couplings; thread dimensions of api-5b"),
	inputs: {
		Y_c: "pressure",
		W: "diameter",
		E_1: "diameter",
		L_1: "diameter",
		A: "diameter",
	},
	gives: "pressure",
	validity: "W > d_1",
	compute: ({ Y_c, W, E_1, L_1, A }) => couplingYield(Y_c, W, roundRoot(E_1, L_1, A)),
});

export const buttressCouplingYield = formula({
	id: "casing/buttress-coupling-yield",
	name: "Internal yield of a buttress coupling",
	expression: "P = Y_c (W − d_1) / W, d_1 = E_7 − (L_7 + I) T + 0.062",
	source: cite("api-5c3", "internal yield pressure of couplings; thread dimensions of api-5b"),
	inputs: {
		Y_c: "pressure",
		W: "diameter",
		E_7: "diameter",
		L_7: "diameter",
		I: "diameter",
		T: "ratio",
	},
	gives: "pressure",
	validity: "W > d_1",
	compute: ({ Y_c, W, E_7, L_7, I, T }) => couplingYield(Y_c, W, buttressRoot(E_7, L_7, I, T)),
});

/** Thread pitch of a buttress connection [in]. */
const BUTTRESS_PITCH = 0.2;
/** Modulus of elasticity in the seal equation [psi]. */
const E = 30e6;

/** Pressure at which contact at the E7 plane is lost. */
export const buttressLeak = formula({
	id: "casing/buttress-leak",
	name: "Leak resistance of a buttress connection",
	expression: "P = E T N p (W² − E_7²) / (2 E_7 W²), p = 0.2 in",
	source: cite("api-5c3", "internal pressure leak resistance at the E7 plane"),
	inputs: { T: "ratio", N: "ratio", W: "diameter", E_7: "diameter" },
	gives: "pressure",
	validity: "W > E_7",
	compute: ({ T, N, W, E_7 }) =>
		W > E_7 ? (E * T * N * BUTTRESS_PITCH * (W ** 2 - E_7 ** 2)) / (2 * E_7 * W ** 2) : Number.NaN,
});

/** What a buttress coupling holds: the lesser of its yield and its seal. */
export const buttressInternalPressure = formula({
	id: "casing/buttress-internal-pressure",
	name: "Internal pressure resistance of a buttress coupling",
	expression: "min(coupling yield, leak resistance at E_7)",
	source: cite("api-5c3", "internal pressure resistance, the least of the three"),
	inputs: { coupling_yield: "pressure", leak: "pressure" },
	gives: "pressure",
	compute: ({ coupling_yield, leak }) =>
		leak < coupling_yield
			? { value: leak, branch: "leak at E7" }
			: { value: coupling_yield, branch: "coupling yield" },
});

/** Pipe and coupling lose alike to wear. */
export const wornRating = formula({
	id: "casing/worn-rating",
	name: "Rating of worn pipe and coupling",
	expression: "P (1 − wear)",
	source: cite("common-practice", "uniform wear"),
	inputs: { P: "pressure", wear: "share" },
	gives: "pressure",
	validity: "0 ≤ wear < 1",
	compute: ({ P, wear }) => (wear >= 0 && wear < 1 ? P * (1 - wear) : Number.NaN),
});

/** The least of several ratings: pipe and couplings, section by section. */
export const leastInternalYield = formula({
	id: "casing/least-internal-yield",
	name: "Least internal pressure rating",
	expression: "min over pipe bodies and couplings",
	source: cite("api-5c3", "internal pressure resistance, the least of the three"),
	inputs: { ratings: { many: "pressure" } },
	gives: "pressure",
	validity: "at least one rating",
	compute: ({ ratings }) => leastOf(ratings),
});

export const leastCollapse = formula({
	id: "casing/least-collapse",
	name: "Least collapse rating",
	expression: "min over the sections",
	source: cite("api-5c3", "collapse"),
	inputs: { ratings: { many: "pressure" } },
	gives: "pressure",
	validity: "at least one rating",
	compute: ({ ratings }) => leastOf(ratings),
});

const leastOf = (values: readonly number[]): number =>
	values.length === 0 ? Number.NaN : Math.min(...values);
