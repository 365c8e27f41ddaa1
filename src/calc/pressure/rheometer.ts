import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/*
 * A drilling fluid by the dial of the rotational viscometer: degrees at 600, 300, 6 and 3 turns a minute, each degree one
 * lbf/100 ft² of shear stress but for 1.066.
 */

const source = (at: string) => cite("api-rp-13d", `${at}; equations read in copies, the rest from memory`);

/** [cP] */
export const plasticViscosityOfReadings = formula({
	id: "pressure/plastic-viscosity-of-readings",
	name: "Plastic viscosity",
	expression: "PV = R_600 − R_300",
	source: source("rheological models"),
	inputs: { R_600: "ratio", R_300: "ratio" },
	gives: "plastic-viscosity",
	validity: "R_600 above R_300",
	compute: ({ R_600, R_300 }) => (R_600 > R_300 ? R_600 - R_300 : Number.NaN),
});

/** [lbf/100 ft²] */
export const yieldPointOfReadings = formula({
	id: "pressure/yield-point-of-readings",
	name: "Yield point",
	expression: "YP = 2 R_300 − R_600",
	source: source("rheological models"),
	inputs: { R_600: "ratio", R_300: "ratio" },
	gives: "yield-point",
	validity: "2 R_300 not below R_600",
	compute: ({ R_600, R_300 }) => (2 * R_300 >= R_600 ? 2 * R_300 - R_600 : Number.NaN),
});

/** Stress below which the fluid does not move [lbf/100 ft²]. */
export const yieldStress = formula({
	id: "pressure/yield-stress",
	name: "Yield stress, Herschel–Bulkley",
	expression: "τ_y = 2 R_3 − R_6, at least zero",
	source: source("low-shear-rate yield point"),
	inputs: { R_6: "ratio", R_3: "ratio" },
	gives: "yield-point",
	compute: ({ R_6, R_3 }) => Math.max(0, 2 * R_3 - R_6),
});

const model = { PV: "plastic-viscosity", YP: "yield-point", τ_y: "yield-point" } as const;

const indexOf = (PV: number, YP: number, τ_y: number): number =>
	3.32 * Math.log10((2 * PV + YP - τ_y) / (PV + YP - τ_y));

export const flowIndex = formula({
	id: "pressure/flow-index",
	name: "Flow behavior index, Herschel–Bulkley",
	expression: "n = 3.32 log [(2 PV + YP − τ_y) / (PV + YP − τ_y)]",
	source: source("Herschel–Bulkley; the power law where τ_y is zero"),
	inputs: model,
	gives: "ratio",
	validity: "τ_y below PV + YP",
	compute: ({ PV, YP, τ_y }) => (PV + YP > τ_y ? indexOf(PV, YP, τ_y) : Number.NaN),
});

/** [lbf·sⁿ/100 ft², of the dial] */
export const consistency = formula({
	id: "pressure/consistency",
	name: "Consistency, Herschel–Bulkley",
	expression: "k = (PV + YP − τ_y) / 511ⁿ, lbf·sⁿ/100 ft²",
	source: source("Herschel–Bulkley; the power law where τ_y is zero"),
	inputs: { ...model, n: "ratio" },
	gives: "ratio",
	validity: "τ_y below PV + YP",
	compute: ({ PV, YP, τ_y, n }) => (PV + YP > τ_y ? (PV + YP - τ_y) / 511 ** n : Number.NaN),
});
