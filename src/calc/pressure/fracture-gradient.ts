import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { HYDROSTATIC_CONSTANT } from "./hydrostatic.ts";

/*
 * Regional correlations. A measured leak-off or injection test outranks every one of them. All gradients are per foot
 * below ground level.
 */

/** Stress carried by the rock's own grains [psi/ft]. */
export const matrixStressGradient = formula({
	id: "pressure/matrix-stress-gradient",
	name: "Matrix stress gradient",
	expression: "σ/D = S − P",
	source: cite("tamu-slides", "S = P + σ"),
	inputs: { S: "pressure-gradient", P: "pressure-gradient" },
	gives: "pressure-gradient",
	validity: "pore pressure no greater than the overburden",
	compute: ({ S, P }) => (P > S ? Number.NaN : S - P),
});

/** Stress carried by the rock's own grains at a depth [psi]. */
export const matrixStress = formula({
	id: "pressure/matrix-stress",
	name: "Matrix stress",
	expression: "σ = (S − P) D",
	source: cite("tamu-slides", "S = P + σ"),
	inputs: {
		S: "pressure-gradient",
		P: "pressure-gradient",
		D: "depth-below-ground",
	},
	gives: "pressure",
	validity: "pore pressure no greater than the overburden",
	compute: ({ S, P, D }) => (P > S ? Number.NaN : (S - P) * D),
});

/** Lower bound [psi/ft], for an overburden of 1 psi/ft. */
export const hubbertWillisMinimum = formula({
	id: "pressure/fracture-gradient-hubbert-willis-minimum",
	name: "Fracture gradient, Hubbert and Willis, lower bound",
	expression: "F = (1 + 2 P) / 3",
	source: cite("hubbert-willis-1957"),
	inputs: { P: "pressure-gradient" },
	gives: "pressure-gradient",
	validity: "an overburden of 1 psi/ft; pore gradient from 0 to 1 psi/ft",
	compute: ({ P }) => (P < 0 || P > 1 ? Number.NaN : (1 + 2 * P) / 3),
});

/** Upper bound [psi/ft], for an overburden of 1 psi/ft. */
export const hubbertWillisMaximum = formula({
	id: "pressure/fracture-gradient-hubbert-willis-maximum",
	name: "Fracture gradient, Hubbert and Willis, upper bound",
	expression: "F = (1 + P) / 2",
	source: cite("hubbert-willis-1957"),
	inputs: { P: "pressure-gradient" },
	gives: "pressure-gradient",
	validity: "an overburden of 1 psi/ft; pore gradient from 0 to 1 psi/ft",
	compute: ({ P }) => (P < 0 || P > 1 ? Number.NaN : (1 + P) / 2),
});

/** [psi/ft]; the matrix stress coefficient is read from a chart for the region and is an input. */
export const matthewsKellyFractureGradient = formula({
	id: "pressure/fracture-gradient-matthews-kelly",
	name: "Fracture gradient, Matthews and Kelly",
	expression: "F = K_i (S − P) + P",
	source: cite("matthews-kelly-1967"),
	inputs: { K_i: "ratio", S: "pressure-gradient", P: "pressure-gradient" },
	gives: "pressure-gradient",
	validity: "coefficient from 0 to 1; pore pressure no greater than the overburden",
	compute: ({ K_i, S, P }) => (K_i < 0 || K_i > 1 || P > S ? Number.NaN : K_i * (S - P) + P),
});

/** [psi/ft] */
export const eatonFractureGradient = formula({
	id: "pressure/fracture-gradient-eaton",
	name: "Fracture gradient, Eaton",
	expression: "F = (S − P) ν / (1 − ν) + P",
	source: cite("eaton-1969"),
	inputs: { S: "pressure-gradient", P: "pressure-gradient", ν: "ratio" },
	gives: "pressure-gradient",
	validity: "Poisson's ratio from 0 to 0.5; pore pressure no greater than the overburden",
	compute: ({ S, P, ν }) => (ν < 0 || ν > 0.5 || P > S ? Number.NaN : (S - P) * (ν / (1 - ν)) + P),
});

/** Pressure that opens a fracture at a depth [psi]. */
export const fracturePressure = formula({
	id: "pressure/fracture-pressure",
	name: "Fracture pressure of the formation",
	expression: "p_f = F D",
	source: cite("definition"),
	inputs: { F: "pressure-gradient", D: "depth-below-ground" },
	gives: "pressure",
	compute: ({ F, D }) => F * D,
});

/** Pressure of the fluid in the rock at a depth [psi]. */
export const porePressure = formula({
	id: "pressure/pore-pressure",
	name: "Pore pressure of the formation",
	expression: "p_p = 0.052 ρ_p D",
	source: cite("lapeyrouse", "ch. 1, hydrostatic pressure"),
	inputs: { ρ_p: "density", D: "depth-below-ground" },
	gives: "pressure",
	validity: "an equivalent density that counts from ground level",
	compute: ({ ρ_p, D }) => HYDROSTATIC_CONSTANT * ρ_p * D,
});
