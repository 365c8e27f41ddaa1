import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/** Pressure lost through the perforations [psi]. */
export const perforationFriction = formula({
	id: "stimulation/perforation-friction",
	name: "Perforation friction",
	expression: "ΔP = 0.2369 Q² ρ / (N² d⁴ C_d²)",
	source: cite("bell-sukup-tariq-1995", "p. 79"),
	inputs: {
		Q: "flow-rate",
		ρ: "density",
		N: "count",
		d: "diameter",
		C_d: "ratio",
	},
	gives: "pressure",
	validity: "all perforations open and alike; discharge coefficient above 0 to 1",
	compute: ({ Q, ρ, N, d, C_d }) =>
		N <= 0 || C_d <= 0 || C_d > 1 ? Number.NaN : (0.2369 * Q ** 2 * ρ) / (N ** 2 * d ** 4 * C_d ** 2),
});

/** Perforations of a stage. */
export const perforationCount = formula({
	id: "stimulation/perforation-count",
	name: "Perforations of a stage",
	expression: "N = n_c n_s",
	source: cite("definition"),
	inputs: { n_c: "count", n_s: "count" },
	gives: "count",
	compute: ({ n_c, n_s }) => n_c * n_s,
});

/** Pressure in the fracture at the perforations [psi]. */
export const fracturePressureAtDepth = formula({
	id: "stimulation/fracturing-pressure",
	name: "Fracturing pressure at depth",
	expression: "P_frac = G_c D + P_net",
	source: cite("definition", "net pressure is what the fracture holds above closure"),
	inputs: { G_c: "pressure-gradient", D: "depth-below-ground", P_net: "pressure" },
	gives: "pressure",
	compute: ({ G_c, D, P_net }) => G_c * D + P_net,
});

/** Least horizontal stress from uniaxial strain [psi]. */
export const closureStress = formula({
	id: "stimulation/closure-stress",
	name: "Closure stress, uniaxial strain",
	expression: "σ_h = ν / (1 − ν) (σ_v − α p) + α p + σ_t",
	source: cite("economides-hill-1994", "horizontal stress from uniaxial strain"),
	inputs: {
		σ_v: "pressure",
		p: "pressure",
		ν: "ratio",
		α: "ratio",
		σ_t: "pressure-difference",
	},
	gives: "pressure",
	validity: "Poisson's ratio from 0 to 0.5; Biot's coefficient from 0 to 1",
	compute: ({ σ_v, p, ν, α, σ_t }) =>
		ν < 0 || ν > 0.5 || α < 0 || α > 1 ? Number.NaN : (ν / (1 - ν)) * (σ_v - α * p) + α * p + σ_t,
});

/** Pressure at the surface while pumping [psi]. */
export const surfaceTreatingPressure = formula({
	id: "stimulation/surface-treating-pressure",
	name: "Surface treating pressure",
	expression: "P_s = P_frac − P_h + ΔP_pipe + ΔP_perf + ΔP_nwb",
	source: cite("guo-2007", "surface injection pressure: breakdown less hydrostatic plus friction"),
	inputs: {
		P_frac: "pressure",
		P_h: "pressure",
		ΔP_pipe: "pressure",
		ΔP_perf: "pressure",
		ΔP_nwb: "pressure",
	},
	gives: "pressure",
	validity: "steady pumping into an open fracture; breakdown and screen-out lie above it",
	compute: ({ P_frac, P_h, ΔP_pipe, ΔP_perf, ΔP_nwb }) => P_frac - P_h + ΔP_pipe + ΔP_perf + ΔP_nwb,
});

/** [hhp] */
export const hydraulicHorsepower = formula({
	id: "stimulation/hydraulic-horsepower",
	name: "Hydraulic horsepower",
	expression: "HHP = P Q / 40.8",
	source: cite("fracturing-calculation-procedure", "0.0245 P Q"),
	inputs: { P: "pressure", Q: "flow-rate" },
	gives: "hydraulic-power",
	compute: ({ P, Q }) => (P * Q) / 40.8,
});

/** What an element of the pressure boundary may see [psi]. */
export const allowedPressure = formula({
	id: "stimulation/allowed-pressure",
	name: "Allowed pressure of an element",
	expression: "P_a = P f",
	source: cite("definition", "the factor is the operator's own"),
	inputs: { P: "pressure", f: "ratio" },
	gives: "pressure",
	validity: "a factor above 0 to 1",
	compute: ({ P, f }) => (f <= 0 || f > 1 ? Number.NaN : P * f),
});

/** The least of several pressures [psi]: the weakest element governs. */
export const leastPressure = formula({
	id: "stimulation/least-pressure",
	name: "Least pressure",
	expression: "min P_i",
	source: cite("definition"),
	inputs: { P_i: { many: "pressure" } },
	gives: "pressure",
	validity: "at least one",
	compute: ({ P_i }) => (P_i.length === 0 ? Number.NaN : Math.min(...P_i)),
});

/** Surface pressure that puts a pressure on a valve under a still column [psi]. */
export const surfaceOpeningPressure = formula({
	id: "stimulation/surface-opening-pressure",
	name: "Opening pressure at the surface",
	expression: "P_s = P_v − P_h",
	source: cite("hydrostatics", "no flow, so no friction"),
	inputs: { P_v: "pressure", P_h: "pressure" },
	gives: "pressure",
	compute: ({ P_v, P_h }) => P_v - P_h,
});
