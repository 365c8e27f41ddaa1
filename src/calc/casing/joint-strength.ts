import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { buttressRoot } from "./internal-yield.ts";
import { areaOf, isPipe } from "./pipe-body.ts";

/** Length of engaged round thread: face of the coupling to the end of the pipe, made up. */
export const engagedLength = formula({
	id: "casing/engaged-thread-length",
	name: "Engaged thread length",
	expression: "L = L_4 − M",
	source: cite("api-5b", "round thread dimensions"),
	inputs: { L_4: "diameter", M: "diameter" },
	gives: "diameter",
	validity: "L_4 > M",
	compute: ({ L_4, M }) => (L_4 > M ? L_4 - M : Number.NaN),
});

/** Short or long round thread, by the length engaged. */
export const roundJointStrength = formula({
	id: "casing/round-joint-strength",
	name: "Joint strength, round thread",
	expression:
		"lesser of 0.95 A_jp U_p and 0.95 A_jp L [0.74 D^−0.59 U_p / (0.5 L + 0.14 D) + Y_p / (L + 0.14 D)], " +
		"A_jp = 0.7854 [(D − 0.1425)² − d²], L = L_4 − M",
	source: cite("api-5c3", "round thread casing joint strength"),
	inputs: {
		D: "diameter",
		t: "diameter",
		L_4: "diameter",
		M: "diameter",
		Y_p: "pressure",
		U_p: "pressure",
	},
	gives: "force",
	validity: "0 < t < D/2, L_4 > M",
	compute: ({ D, t, L_4, M, Y_p, U_p }) => {
		if (!isPipe(D, t) || !(L_4 > M)) return Number.NaN;
		const L = L_4 - M;
		const A_jp = 0.7854 * ((D - 0.1425) ** 2 - (D - 2 * t) ** 2);
		const fracture = 0.95 * A_jp * U_p;
		const pullOut =
			0.95 * A_jp * L * ((0.74 * D ** -0.59 * U_p) / (0.5 * L + 0.14 * D) + Y_p / (L + 0.14 * D));
		return pullOut < fracture
			? { value: pullOut, branch: "pull-out" }
			: { value: fracture, branch: "fracture" };
	},
});

/** The coupling is of the pipe's own grade. */
export const buttressJointStrength = formula({
	id: "casing/buttress-joint-strength",
	name: "Joint strength, buttress thread",
	expression:
		"lesser of 0.95 A_p U_p [1.008 − 0.0396 (1.083 − Y_p/U_p) D] and 0.95 A_c U_p, " +
		"A_c = 0.7854 (W² − d_1²), d_1 = E_7 − (L_7 + I) T + 0.062",
	source: cite("api-5c3", "buttress thread casing joint strength"),
	inputs: {
		D: "diameter",
		t: "diameter",
		W: "diameter",
		E_7: "diameter",
		L_7: "diameter",
		I: "diameter",
		T: "ratio",
		Y_p: "pressure",
		U_p: "pressure",
	},
	gives: "force",
	validity: "0 < t < D/2, W > d_1",
	compute: ({ D, t, W, E_7, L_7, I, T, Y_p, U_p }) => {
		const d_1 = buttressRoot(E_7, L_7, I, T);
		if (!isPipe(D, t) || !(W > d_1)) return Number.NaN;
		const pipe = 0.95 * areaOf(D, t) * U_p * (1.008 - 0.0396 * (1.083 - Y_p / U_p) * D);
		const coupling = 0.95 * 0.7854 * (W ** 2 - d_1 ** 2) * U_p;
		return coupling < pipe ? { value: coupling, branch: "coupling" } : { value: pipe, branch: "pipe" };
	},
});

/** The most that may be pulled on a string: its least tension rating with the design factor kept. */
export const allowedPull = formula({
	id: "casing/allowed-pull",
	name: "Pull that keeps the design factor",
	expression: "F = rating / design factor",
	source: cite("definition"),
	inputs: { rating: "force", DF: "ratio" },
	gives: "force",
	validity: "a design factor above zero",
	compute: ({ rating, DF }) => (DF > 0 ? rating / DF : Number.NaN),
});

/** The lesser of what is stated for the hook and what pipe and connection allow. */
export const maximumPull = formula({
	id: "casing/maximum-pull",
	name: "Maximum pull",
	expression: "min(F)",
	source: cite("definition"),
	inputs: { F: { many: "force" } },
	gives: "force",
	validity: "at least one",
	compute: ({ F }) => (F.length === 0 ? Number.NaN : Math.min(...F)),
});

/** Tension a section takes: the lesser of pipe body and connection. */
export const leastTension = formula({
	id: "casing/least-tension",
	name: "Least tension rating",
	expression: "min(pipe body yield, joint strength)",
	source: cite("api-5c3", "pipe body yield and joint strength"),
	inputs: { ratings: { many: "force" } },
	gives: "force",
	validity: "at least one rating",
	compute: ({ ratings }) => (ratings.length === 0 ? Number.NaN : Math.min(...ratings)),
});
