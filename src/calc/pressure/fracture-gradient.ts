import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/*
 * Regional correlations. A measured leak-off or injection test outranks every one of them. All gradients are per foot
 * below ground level.
 */

/** Stress carried by the rock's own grains [psi/ft]. */
export const matrixStressGradient = formula({
	id: "pressure/matrix-stress-gradient",
	name: "Matrix stress gradient",
	expression: "σ/D = S/D − P/D",
	source: cite("tamu-slides", "S = P + σ"),
	inputs: { overburden: "pressure-gradient", pore: "pressure-gradient" },
	gives: "pressure-gradient",
	validity: "pore pressure no greater than the overburden",
	compute: ({ overburden, pore }) => (pore > overburden ? Number.NaN : overburden - pore),
});

/** Stress carried by the rock's own grains at a depth [psi]. */
export const matrixStress = formula({
	id: "pressure/matrix-stress",
	name: "Matrix stress",
	expression: "σ = S − P",
	source: cite("tamu-slides", "S = P + σ"),
	inputs: { overburden: "pressure-gradient", pore: "pressure-gradient", depth: "depth-below-ground" },
	gives: "pressure",
	validity: "pore pressure no greater than the overburden",
	compute: ({ overburden, pore, depth }) => (pore > overburden ? Number.NaN : (overburden - pore) * depth),
});

/** Lower bound [psi/ft], for an overburden of 1 psi/ft. */
export const hubbertWillisMinimum = formula({
	id: "pressure/fracture-gradient-hubbert-willis-minimum",
	name: "Fracture gradient, Hubbert and Willis, lower bound",
	expression: "F_min = (1 + 2 P/D) / 3",
	source: cite("hubbert-willis-1957"),
	inputs: { pore: "pressure-gradient" },
	gives: "pressure-gradient",
	validity: "an overburden of 1 psi/ft; pore gradient from 0 to 1 psi/ft",
	compute: ({ pore }) => (pore < 0 || pore > 1 ? Number.NaN : (1 + 2 * pore) / 3),
});

/** Upper bound [psi/ft], for an overburden of 1 psi/ft. */
export const hubbertWillisMaximum = formula({
	id: "pressure/fracture-gradient-hubbert-willis-maximum",
	name: "Fracture gradient, Hubbert and Willis, upper bound",
	expression: "F_max = (1 + P/D) / 2",
	source: cite("hubbert-willis-1957"),
	inputs: { pore: "pressure-gradient" },
	gives: "pressure-gradient",
	validity: "an overburden of 1 psi/ft; pore gradient from 0 to 1 psi/ft",
	compute: ({ pore }) => (pore < 0 || pore > 1 ? Number.NaN : (1 + pore) / 2),
});

/** [psi/ft]; the matrix stress coefficient is read from a chart for the region and is an input. */
export const matthewsKellyFractureGradient = formula({
	id: "pressure/fracture-gradient-matthews-kelly",
	name: "Fracture gradient, Matthews and Kelly",
	expression: "F = K_i σ/D + P/D",
	source: cite("matthews-kelly-1967"),
	inputs: { coefficient: "ratio", overburden: "pressure-gradient", pore: "pressure-gradient" },
	gives: "pressure-gradient",
	validity: "coefficient from 0 to 1; pore pressure no greater than the overburden",
	compute: ({ coefficient, overburden, pore }) =>
		coefficient < 0 || coefficient > 1 || pore > overburden
			? Number.NaN
			: coefficient * (overburden - pore) + pore,
});

/** [psi/ft] */
export const eatonFractureGradient = formula({
	id: "pressure/fracture-gradient-eaton",
	name: "Fracture gradient, Eaton",
	expression: "F = (S/D − P/D) ν/(1 − ν) + P/D",
	source: cite("eaton-1969"),
	inputs: { overburden: "pressure-gradient", pore: "pressure-gradient", poissons_ratio: "ratio" },
	gives: "pressure-gradient",
	validity: "Poisson's ratio from 0 to 0.5; pore pressure no greater than the overburden",
	compute: ({ overburden, pore, poissons_ratio: nu }) =>
		nu < 0 || nu > 0.5 || pore > overburden ? Number.NaN : (overburden - pore) * (nu / (1 - nu)) + pore,
});

/** Pressure that opens a fracture at a depth [psi]. */
export const fracturePressure = formula({
	id: "pressure/fracture-pressure",
	name: "Fracture pressure of the formation",
	expression: "p_f = F D, D from ground level",
	source: cite("definition"),
	inputs: { gradient: "pressure-gradient", depth: "depth-below-ground" },
	gives: "pressure",
	compute: ({ gradient, depth }) => gradient * depth,
});
