import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { absoluteVolume } from "../cement/slurry-design.ts";

const table = cite("economides-1992", "Table P-21, slurry yield and clean fraction");

/** Gallons in a barrel. */
const GALLONS_PER_BARREL = 42;

/** Slurry made of one volume of clean fluid: 1 + cV. */
const yieldOf = (concentration: number, specificGravity: number): number =>
	1 + concentration * Number(absoluteVolume.compute({ specific_gravity: specificGravity as never }));

const proppantInputs = { concentration: "proppant-concentration", specific_gravity: "ratio" } as const;

/** Slurry volume of one volume of clean fluid. */
export const slurryPerClean = formula({
	id: "stimulation/slurry-per-clean",
	name: "Slurry volume over clean volume",
	expression: "1 + c V, V = 1 / (8.33 SG)",
	source: table,
	inputs: proppantInputs,
	gives: "ratio",
	validity: "c in lb of proppant added to a gallon of clean fluid",
	compute: ({ concentration, specific_gravity }) => yieldOf(concentration, specific_gravity),
});

/** Clean fluid in one volume of slurry. */
export const cleanPerSlurry = formula({
	id: "stimulation/clean-per-slurry",
	name: "Clean volume over slurry volume",
	expression: "1 / (1 + c V)",
	source: table,
	inputs: proppantInputs,
	gives: "ratio",
	compute: ({ concentration, specific_gravity }) => 1 / yieldOf(concentration, specific_gravity),
});

/** Density of fluid and proppant together [lb/gal]. */
export const slurryDensity = formula({
	id: "stimulation/slurry-density",
	name: "Density of proppant slurry",
	expression: "ρ = (ρ_f + c) / (1 + c V)",
	source: cite("economides-1992", "Table P-21, slurry density"),
	inputs: { fluid: "density", ...proppantInputs },
	gives: "density",
	compute: ({ fluid, concentration, specific_gravity }) =>
		(fluid + concentration) / yieldOf(concentration, specific_gravity),
});

/** Proppant in a gallon of slurry [lb/gal]. */
export const proppantPerSlurry = formula({
	id: "stimulation/proppant-per-slurry",
	name: "Proppant in a gallon of slurry",
	expression: "c / (1 + c V)",
	source: cite("economides-1992", "Table P-21, pounds per gallon of slurry"),
	inputs: proppantInputs,
	gives: "proppant-concentration",
	compute: ({ concentration, specific_gravity }) => concentration / yieldOf(concentration, specific_gravity),
});

/** Clean volume of a step from its slurry [bbl]. */
export const slurryVolume = formula({
	id: "stimulation/slurry-volume",
	name: "Slurry volume of a step",
	expression: "V_s = V_c (1 + c V)",
	source: cite("conservation", "clean fluid and absolute volume of proppant"),
	inputs: { clean: "volume", ...proppantInputs },
	gives: "volume",
	compute: ({ clean, concentration, specific_gravity }) => clean * yieldOf(concentration, specific_gravity),
});

/** Proppant in a step [lb]. */
export const proppantMass = formula({
	id: "stimulation/proppant-mass",
	name: "Proppant mass of a step",
	expression: "m = 42 c V_c",
	source: cite("conservation", "pounds added to each gallon of clean fluid"),
	inputs: { clean: "volume", concentration: "proppant-concentration" },
	gives: "mass",
	compute: ({ clean, concentration }) => GALLONS_PER_BARREL * concentration * clean,
});

/** Rate of the clean fluid while slurry goes at a rate [bbl/min]. */
export const cleanRate = formula({
	id: "stimulation/clean-rate",
	name: "Clean rate",
	expression: "Q_c = Q / (1 + c V)",
	source: cite("conservation", "clean fluid and absolute volume of proppant"),
	inputs: { rate: "flow-rate", ...proppantInputs },
	gives: "flow-rate",
	compute: ({ rate, concentration, specific_gravity }) => rate / yieldOf(concentration, specific_gravity),
});

/** Proppant going down in a minute [lb]. */
export const proppantPerMinute = formula({
	id: "stimulation/proppant-per-minute",
	name: "Proppant rate, per minute",
	expression: "42 Q_c c",
	source: cite("conservation"),
	inputs: { clean_rate: "flow-rate", concentration: "proppant-concentration" },
	gives: "mass",
	compute: ({ clean_rate, concentration }) => GALLONS_PER_BARREL * clean_rate * concentration,
});

/** [min] */
export const pumpingTime = formula({
	id: "stimulation/pumping-time",
	name: "Pumping time",
	expression: "t = V_s / Q",
	source: cite("definition", "the rate is that of the slurry"),
	inputs: { slurry: "volume", rate: "flow-rate" },
	gives: "duration",
	validity: "a rate above zero",
	compute: ({ slurry, rate }) => (rate > 0 ? slurry / rate : Number.NaN),
});

/** [lb] */
export const totalMass = formula({
	id: "stimulation/total-mass",
	name: "Total mass",
	expression: "m = Σ mᵢ",
	source: cite("conservation"),
	inputs: { parts: { many: "mass" } },
	gives: "mass",
	compute: ({ parts }) => parts.reduce<number>((sum, part) => sum + part, 0),
});

/** [min] */
export const totalTime = formula({
	id: "stimulation/total-time",
	name: "Total pumping time",
	expression: "t = Σ tᵢ",
	source: cite("definition", "pumps running; the time between stages is not in it"),
	inputs: { parts: { many: "duration" } },
	gives: "duration",
	compute: ({ parts }) => parts.reduce<number>((sum, part) => sum + part, 0),
});

/** A source's part of a volume [bbl]. */
export const sharedVolume = formula({
	id: "stimulation/shared-volume",
	name: "Volume from one source",
	expression: "Vᵢ = V sᵢ",
	source: cite("definition"),
	inputs: { volume: "volume", share: "share" },
	gives: "volume",
	validity: "a share from 0 to 1",
	compute: ({ volume, share }) => (share < 0 || share > 1 ? Number.NaN : volume * share),
});
