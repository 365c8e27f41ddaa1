import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/** Gallons in a barrel. */
const GALLONS_PER_BARREL = 42;

/** Density of everything pumped into a stage, mixed evenly [lb/gal]. */
export const meanSlurryDensity = formula({
	id: "stimulation/mean-slurry-density",
	name: "Mean density of the slurry of a stage",
	expression: "ρ_m = (42 ρ_f V_c + m) / (42 V_s)",
	source: cite("conservation", "mass of clean fluid and proppant over their volume"),
	inputs: { ρ_f: "density", V_c: "volume", m: "mass", V_s: "volume" },
	gives: "density",
	validity: "average pressure is taken over the whole stage",
	compute: ({ ρ_f, V_c, m, V_s }) =>
		V_s > 0 ? (GALLONS_PER_BARREL * ρ_f * V_c + m) / (GALLONS_PER_BARREL * V_s) : Number.NaN,
});

/** Pressure in the fracture just after the pumps stop, over its depth [psi/ft]. */
export const shutInGradient = formula({
	id: "stimulation/shut-in-gradient",
	name: "Gradient at instantaneous shut-in",
	expression: "G = (ISIP + P_h) / D",
	source: cite("common-practice", "the pipe is full of the flush fluid when the pumps stop"),
	inputs: { ISIP: "pressure", P_h: "pressure", D: "depth-below-ground" },
	gives: "pressure-gradient",
	validity: "friction near the wellbore has died away when the pressure is read",
	compute: ({ ISIP, P_h, D }) => (D > 0 ? (ISIP + P_h) / D : Number.NaN),
});

/** What the fracture holds above closure just after the pumps stop [psi]; negative where closure is stated too high. */
export const netAtShutIn = formula({
	id: "stimulation/net-at-shut-in",
	name: "Net pressure at instantaneous shut-in",
	expression: "P_net = ISIP + P_h − G_c D",
	source: cite("definition", "net pressure is what the fracture holds above closure"),
	inputs: { ISIP: "pressure", P_h: "pressure", G_c: "pressure-gradient", D: "depth-below-ground" },
	gives: "pressure-difference",
	compute: ({ ISIP, P_h, G_c, D }) => ISIP + P_h - G_c * D,
});

/** Pressure that a stage lost between surface and fracture [psi]. */
export const frictionHad = formula({
	id: "stimulation/friction-had",
	name: "Friction of a stage by its record",
	expression: "ΔP = P_avg + P_hm − (ISIP + P_h)",
	source: cite(
		"definition",
		"pressure in the fracture is taken as that at shut-in; columns as pumped and as flushed",
	),
	inputs: { P_avg: "pressure", P_hm: "pressure", ISIP: "pressure", P_h: "pressure" },
	gives: "pressure-difference",
	compute: ({ P_avg, P_hm, ISIP, P_h }) => P_avg + P_hm - (ISIP + P_h),
});

/** Part of water's friction in the pipe that the friction reducer saved [share]; negative where it was more than water's. */
export const reductionHad = formula({
	id: "stimulation/friction-reduction-had",
	name: "Friction reduction by the record",
	expression: "DR = 1 − (ΔP − ΔP_perf − ΔP_nwb) / ΔP_w",
	source: cite("definition", "what is left of the recorded friction is in the pipe"),
	inputs: { ΔP: "pressure-difference", ΔP_perf: "pressure", ΔP_nwb: "pressure", ΔP_w: "pressure" },
	gives: "share",
	validity: "friction of water above zero at the recorded average rate",
	compute: ({ ΔP, ΔP_perf, ΔP_nwb, ΔP_w }) => (ΔP_w > 0 ? 1 - (ΔP - ΔP_perf - ΔP_nwb) / ΔP_w : Number.NaN),
});
