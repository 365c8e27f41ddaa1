import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/** Pressure lost through the perforations [psi]. */
export const perforationFriction = formula({
	id: "stimulation/perforation-friction",
	name: "Perforation friction",
	expression: "ΔP = 0.2369 Q² ρ / (N² d⁴ C_d²)",
	source: cite("bell-sukup-tariq-1995", "p. 79"),
	inputs: {
		rate: "flow-rate",
		density: "density",
		perforations: "count",
		diameter: "diameter",
		discharge: "ratio",
	},
	gives: "pressure",
	validity: "all perforations open and alike; discharge coefficient above 0 to 1",
	compute: ({ rate, density, perforations, diameter, discharge }) =>
		perforations <= 0 || discharge <= 0 || discharge > 1
			? Number.NaN
			: (0.2369 * rate ** 2 * density) / (perforations ** 2 * diameter ** 4 * discharge ** 2),
});

/** Perforations of a stage. */
export const perforationCount = formula({
	id: "stimulation/perforation-count",
	name: "Perforations of a stage",
	expression: "N = clusters · shots",
	source: cite("definition"),
	inputs: { clusters: "count", shots_per_cluster: "count" },
	gives: "count",
	compute: ({ clusters, shots_per_cluster }) => clusters * shots_per_cluster,
});

/** Pressure in the fracture at the perforations [psi]. */
export const fracturePressureAtDepth = formula({
	id: "stimulation/fracturing-pressure",
	name: "Fracturing pressure at depth",
	expression: "P_frac = closure gradient · D + P_net, D from ground level",
	source: cite("definition", "net pressure is what the fracture holds above closure"),
	inputs: { closure: "pressure-gradient", depth: "depth-below-ground", net: "pressure" },
	gives: "pressure",
	compute: ({ closure, depth, net }) => closure * depth + net,
});

/** Least horizontal stress from uniaxial strain [psi]. */
export const closureStress = formula({
	id: "stimulation/closure-stress",
	name: "Closure stress, uniaxial strain",
	expression: "σ_h = ν/(1−ν) (σ_v − α p) + α p + σ_tect",
	source: cite("economides-hill-1994", "horizontal stress from uniaxial strain"),
	inputs: {
		overburden: "pressure",
		pore: "pressure",
		poissons_ratio: "ratio",
		biot: "ratio",
		tectonic: "pressure-difference",
	},
	gives: "pressure",
	validity: "Poisson's ratio from 0 to 0.5; Biot's coefficient from 0 to 1",
	compute: ({ overburden, pore, poissons_ratio: nu, biot, tectonic }) =>
		nu < 0 || nu > 0.5 || biot < 0 || biot > 1
			? Number.NaN
			: (nu / (1 - nu)) * (overburden - biot * pore) + biot * pore + tectonic,
});

/** Pressure at the surface while pumping [psi]. */
export const surfaceTreatingPressure = formula({
	id: "stimulation/surface-treating-pressure",
	name: "Surface treating pressure",
	expression: "P_s = P_frac − 0.052 ρ D + ΔP_pipe + ΔP_perf + ΔP_nwb",
	source: cite("guo-2007", "surface injection pressure: breakdown less hydrostatic plus friction"),
	inputs: {
		fracturing: "pressure",
		hydrostatic: "pressure",
		pipe_friction: "pressure",
		perforation_friction: "pressure",
		near_wellbore: "pressure",
	},
	gives: "pressure",
	validity: "steady pumping into an open fracture; breakdown and screen-out lie above it",
	compute: ({ fracturing, hydrostatic, pipe_friction, perforation_friction, near_wellbore }) =>
		fracturing - hydrostatic + pipe_friction + perforation_friction + near_wellbore,
});

/** [hhp] */
export const hydraulicHorsepower = formula({
	id: "stimulation/hydraulic-horsepower",
	name: "Hydraulic horsepower",
	expression: "HHP = P Q / 40.8",
	source: cite("fracturing-calculation-procedure", "0.0245 P Q"),
	inputs: { pressure: "pressure", rate: "flow-rate" },
	gives: "hydraulic-power",
	compute: ({ pressure, rate }) => (pressure * rate) / 40.8,
});

/** What an element of the pressure boundary may see [psi]. */
export const allowedPressure = formula({
	id: "stimulation/allowed-pressure",
	name: "Allowed pressure of an element",
	expression: "P_allowed = rating · factor",
	source: cite("definition", "the factor is the operator's own"),
	inputs: { rating: "pressure", factor: "ratio" },
	gives: "pressure",
	validity: "a factor above 0 to 1",
	compute: ({ rating, factor }) => (factor <= 0 || factor > 1 ? Number.NaN : rating * factor),
});

/** The least of several pressures [psi]: the weakest element governs. */
export const leastPressure = formula({
	id: "stimulation/least-pressure",
	name: "Least pressure",
	expression: "min Pᵢ",
	source: cite("definition"),
	inputs: { pressures: { many: "pressure" } },
	gives: "pressure",
	validity: "at least one",
	compute: ({ pressures }) => (pressures.length === 0 ? Number.NaN : Math.min(...pressures)),
});
