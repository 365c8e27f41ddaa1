import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { STEEL_MODULUS } from "../casing/triaxial.ts";

const source = (at: string) => cite("api-10d-2", `${at}, from memory`);

/** Side load of the pipe between two centralizers [lbf]. */
export const sideLoad = formula({
	id: "cement/side-load",
	name: "Side load on a centralizer",
	expression:
		"F = √[(w_b L sin I − T ΔI)² + (T ΔA sin I)²], w_b = w (1 − ρ/65.5), T = w_b (D_shoe − D), ΔI down the hole",
	source: source("casing weight and tension on a curved hole"),
	inputs: {
		w: "linear-weight",
		ρ: "density",
		L: "length",
		I_1: "angle",
		I_2: "angle",
		A_1: "angle",
		A_2: "angle",
		D_shoe: "true-vertical-depth",
		D: "true-vertical-depth",
	},
	gives: "force",
	validity:
		"one fluid inside and outside the pipe; tension from the buoyed weight below, no drag; in a build the tension takes from the weight, in a drop it adds",
	compute: ({ w, ρ, L, I_1, I_2, A_1, A_2, D_shoe, D }) => {
		const buoyed = w * (1 - ρ / STEEL_DENSITY);
		const rad = Math.PI / 180;
		const sine = Math.sin(((I_1 + I_2) / 2) * rad);
		const turn = (((A_2 - A_1 + 540) % 360) - 180) * rad;
		const T = Math.max(0, buoyed * (D_shoe - D));
		const inPlane = buoyed * L * sine - T * (I_2 - I_1) * rad;
		return Math.hypot(inPlane, T * turn * sine);
	},
});

/** [lb/gal] */
const STEEL_DENSITY = 65.5;

/** Standoff at a bow spring: the spring gives way in proportion to its load, a third of the gap at its restoring force. */
export const bowSpringStandoff = formula({
	id: "cement/bow-spring-standoff",
	name: "Standoff at a bow spring",
	expression: "S = 1 − 0.33 F / F_67, 0 ≤ S ≤ 1",
	source: cite("api-10d", "restoring force is stated at 67 % standoff; the straight line between is ours"),
	inputs: { F: "force", F_67: "force" },
	gives: "share",
	validity: "a spring that reaches the wall; hole at gauge",
	compute: ({ F, F_67 }) => (F_67 > 0 ? Math.max(0, 1 - (0.33 * F) / F_67) : Number.NaN),
});

/** Standoff at a rigid centralizer, lying on its blades. */
export const rigidStandoff = formula({
	id: "cement/rigid-standoff",
	name: "Standoff at a rigid centralizer",
	expression: "S = (D_blades − D_pipe) / (D_hole − D_pipe)",
	source: source("standoff ratio"),
	inputs: { D_blades: "diameter", D_pipe: "diameter", D_hole: "diameter" },
	gives: "share",
	validity: "blades larger than the pipe and no larger than the hole",
	compute: ({ D_blades, D_pipe, D_hole }) =>
		D_blades <= D_pipe || D_blades > D_hole ? Number.NaN : (D_blades - D_pipe) / (D_hole - D_pipe),
});

/** Tension of the pipe at a depth: the buoyed weight that hangs below it [lbf]. */
export const hangingTension = formula({
	id: "cement/hanging-tension",
	name: "Tension from the weight below",
	expression: "T = w_b (D_shoe − D), w_b = w (1 − ρ/65.5), not below 0",
	source: source("casing weight"),
	inputs: { w: "linear-weight", ρ: "density", D_shoe: "true-vertical-depth", D: "true-vertical-depth" },
	gives: "force",
	validity: "one fluid inside and outside the pipe; no drag; a lateral hangs on nothing",
	compute: ({ w, ρ, D_shoe, D }) => Math.max(0, w * (1 - ρ / STEEL_DENSITY) * (D_shoe - D)),
});

/** Standoff half-way between two centralizers, with the sag of the pipe taken off. */
export const sagStandoff = formula({
	id: "cement/standoff-between",
	name: "Standoff between two centralizers",
	expression:
		"S − δ / c, δ = F L³ / (384 E I_p) · 24 (u²/2 − u tanh(u/2)) / u⁴, u² = T L² / (4 E I_p), I_p = π (D⁴ − d⁴) / 64, c = (D_hole − D) / 2, not below 0",
	source: source("deflection of a beam held at both ends, under tension"),
	inputs: {
		S: "share",
		F: "force",
		T: "force",
		L: "length",
		D_pipe: "diameter",
		d_pipe: "diameter",
		D_hole: "diameter",
	},
	gives: "share",
	validity: "pipe smaller than the hole; lengths in inches in the beam",
	compute: ({ S, F, T, L, D_pipe, d_pipe, D_hole }) => {
		const gap = (D_hole - D_pipe) / 2;
		const stiffness = (STEEL_MODULUS * Math.PI * (D_pipe ** 4 - d_pipe ** 4)) / 64;
		const span = 12 * L;
		const sag =
			((F * span ** 3) / (384 * stiffness)) * stiffened(Math.sqrt((T * span ** 2) / (4 * stiffness)));
		return gap > 0 ? Math.max(0, S - sag / gap) : Number.NaN;
	},
});

/** Share of the sag that tension leaves; 1 without tension, where the form itself loses its digits. */
const stiffened = (u: number): number =>
	u < 0.1 ? 1 - u ** 2 / 10 : (24 * (u ** 2 / 2 - u * Math.tanh(u / 2))) / u ** 4;

/** Depth of a station of the standoff profile, evenly spaced and the shoe last [ft]. */
export const profileDepth = formula({
	id: "cement/profile-depth",
	name: "Depth of a station of the standoff profile",
	expression: "MD = MD_top + (i / n) (MD_shoe − MD_top)",
	source: cite("definition"),
	inputs: { MD_top: "measured-depth", MD_shoe: "measured-depth", i: "count", n: "count" },
	gives: "measured-depth",
	compute: ({ MD_top, MD_shoe, i, n }) => MD_top + ((MD_shoe - MD_top) * i) / n,
});

/** Centralizers that a pattern comes to, one at each end of its stretch. */
export const centralizerCount = formula({
	id: "cement/centralizer-count",
	name: "Centralizers of a stretch",
	expression: "n = (MD_bottom − MD_top) / (k L_joint), rounded up",
	source: cite("common-practice", "one centralizer to every k joints"),
	inputs: {
		MD_top: "measured-depth",
		MD_bottom: "measured-depth",
		k: "count",
		L_joint: "length",
	},
	gives: "count",
	compute: ({ MD_top, MD_bottom, k, L_joint }) => Math.ceil((MD_bottom - MD_top) / (k * L_joint) - 1e-9),
});

/** Distance between centralizers. */
export const centralizerSpacing = formula({
	id: "cement/centralizer-spacing",
	name: "Spacing of centralizers",
	expression: "L = k L_joint",
	source: cite("definition"),
	inputs: { k: "count", L_joint: "length" },
	gives: "length",
	compute: ({ k, L_joint }) => k * L_joint,
});
