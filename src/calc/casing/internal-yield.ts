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

/** Strain hardening of a steel, by its minimum yield strength; [psi] in. */
const hardening = (Y_p: number): number => 0.1693 - 0.000812e-3 * Y_p;

export const hardeningIndex = formula({
	id: "casing/hardening-index",
	name: "Hardening index of the steel",
	expression: "n = 0.1693 − 8.12e-7 Y_p",
	source: cite("iso-10400", "ductile rupture, hardening index by yield strength; from memory"),
	inputs: { Y_p: "pressure" },
	gives: "ratio",
	validity: "40,000 ≤ Y_p ≤ 135,000 psi",
	compute: ({ Y_p }) => (Y_p >= 40_000 && Y_p <= 135_000 ? hardening(Y_p) : Number.NaN),
});

/** Steel as rolled or normalized gives up twice the depth of a flaw; the tougher quenched steels but once. */
const FLAW_COUNTS = 2;

/** Where the wall tears, not where it yields: the last of the pipe body's limits, ends capped, no other axial load. */
export const ductileRupture = formula({
	id: "casing/ductile-rupture",
	name: "Ductile rupture of the pipe body",
	expression: "P = 2 k U_p t_r / (D − t_r), t_r = 0.875 t − 2 a t, k = (1/2)^(n+1) + (1/√3)^(n+1)",
	source: cite("iso-10400", "ductile rupture of capped-end pipe; from memory"),
	inputs: {
		D: "diameter",
		t: "diameter",
		U_p: "pressure",
		n: "ratio",
		a: "share",
	},
	gives: "pressure",
	validity:
		"0 < t < D/2; 0 ≤ n < 1; 0.875 > 2 a; a is the flaw that inspection may pass, as part of the wall",
	compute: ({ D, t, U_p, n, a }) => {
		const left = (0.875 - FLAW_COUNTS * a) * t;
		if (!isPipe(D, t) || !(n >= 0 && n < 1) || !(left > 0)) return Number.NaN;
		const k = (1 / 2) ** (n + 1) + (1 / Math.sqrt(3)) ** (n + 1);
		return (2 * k * U_p * left) / (D - left);
	},
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
