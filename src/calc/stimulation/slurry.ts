import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { absoluteVolume } from "../cement/slurry-design.ts";

const table = cite("economides-1992", "Table P-21, slurry yield and clean fraction");

/** Gallons in a barrel. */
const GALLONS_PER_BARREL = 42;

/** Slurry made of one volume of clean fluid: 1 + cV. */
const yieldOf = (concentration: number, specificGravity: number): number =>
	1 + concentration * Number(absoluteVolume.compute({ SG: specificGravity as never }));

const proppantInputs = { c: "proppant-concentration", SG: "ratio" } as const;

/** Slurry volume of one volume of clean fluid. */
export const slurryPerClean = formula({
	id: "stimulation/slurry-per-clean",
	name: "Slurry volume over clean volume",
	expression: "1 + c V, V = 1 / (8.33 SG)",
	source: table,
	inputs: proppantInputs,
	gives: "ratio",
	validity: "c in lb of proppant added to a gallon of clean fluid",
	compute: ({ c, SG }) => yieldOf(c, SG),
});

/** Clean fluid in one volume of slurry. */
export const cleanPerSlurry = formula({
	id: "stimulation/clean-per-slurry",
	name: "Clean volume over slurry volume",
	expression: "1 / (1 + c V), V = 1 / (8.33 SG)",
	source: table,
	inputs: proppantInputs,
	gives: "ratio",
	compute: ({ c, SG }) => 1 / yieldOf(c, SG),
});

/** Density of fluid and proppant together [lb/gal]. */
export const slurryDensity = formula({
	id: "stimulation/slurry-density",
	name: "Density of proppant slurry",
	expression: "ρ = (ρ_f + c) / (1 + c V), V = 1 / (8.33 SG)",
	source: cite("economides-1992", "Table P-21, slurry density"),
	inputs: { ρ_f: "density", ...proppantInputs },
	gives: "density",
	compute: ({ ρ_f, c, SG }) => (ρ_f + c) / yieldOf(c, SG),
});

/** Proppant in a gallon of slurry [lb/gal]. */
export const proppantPerSlurry = formula({
	id: "stimulation/proppant-per-slurry",
	name: "Proppant in a gallon of slurry",
	expression: "c / (1 + c V), V = 1 / (8.33 SG)",
	source: cite("economides-1992", "Table P-21, pounds per gallon of slurry"),
	inputs: proppantInputs,
	gives: "proppant-concentration",
	compute: ({ c, SG }) => c / yieldOf(c, SG),
});

/** Clean volume of a step from its slurry [bbl]. */
export const slurryVolume = formula({
	id: "stimulation/slurry-volume",
	name: "Slurry volume of a step",
	expression: "V_s = V_c (1 + c V), V = 1 / (8.33 SG)",
	source: cite("conservation", "clean fluid and absolute volume of proppant"),
	inputs: { V_c: "volume", ...proppantInputs },
	gives: "volume",
	compute: ({ V_c, c, SG }) => V_c * yieldOf(c, SG),
});

/** Proppant in a step [lb]. */
export const proppantMass = formula({
	id: "stimulation/proppant-mass",
	name: "Proppant mass of a step",
	expression: "m = 42 c V_c",
	source: cite("conservation", "pounds added to each gallon of clean fluid"),
	inputs: { V_c: "volume", c: "proppant-concentration" },
	gives: "mass",
	compute: ({ V_c, c }) => GALLONS_PER_BARREL * c * V_c,
});

/** Rate of the clean fluid while slurry goes at a rate [bbl/min]. */
export const cleanRate = formula({
	id: "stimulation/clean-rate",
	name: "Clean rate",
	expression: "Q_c = Q / (1 + c V), V = 1 / (8.33 SG)",
	source: cite("conservation", "clean fluid and absolute volume of proppant"),
	inputs: { Q: "flow-rate", ...proppantInputs },
	gives: "flow-rate",
	compute: ({ Q, c, SG }) => Q / yieldOf(c, SG),
});

/** Proppant going down in a minute [lb]. */
export const proppantPerMinute = formula({
	id: "stimulation/proppant-per-minute",
	name: "Proppant rate, per minute",
	expression: "42 Q_c c",
	source: cite("conservation"),
	inputs: { Q_c: "flow-rate", c: "proppant-concentration" },
	gives: "mass",
	compute: ({ Q_c, c }) => GALLONS_PER_BARREL * Q_c * c,
});

/** [min] */
export const pumpingTime = formula({
	id: "stimulation/pumping-time",
	name: "Pumping time",
	expression: "t = V_s / Q",
	source: cite("definition", "the rate is that of the slurry"),
	inputs: { V_s: "volume", Q: "flow-rate" },
	gives: "duration",
	validity: "a rate above zero",
	compute: ({ V_s, Q }) => (Q > 0 ? V_s / Q : Number.NaN),
});

/** [lb] */
export const totalMass = formula({
	id: "stimulation/total-mass",
	name: "Total mass",
	expression: "m = Σ m_i",
	source: cite("conservation"),
	inputs: { m_i: { many: "mass" } },
	gives: "mass",
	compute: ({ m_i }) => m_i.reduce<number>((sum, m) => sum + m, 0),
});

/** [min] */
export const totalTime = formula({
	id: "stimulation/total-time",
	name: "Total pumping time",
	expression: "t = Σ t_i",
	source: cite("definition", "pumps running; the time between stages is not in it"),
	inputs: { t_i: { many: "duration" } },
	gives: "duration",
	compute: ({ t_i }) => t_i.reduce<number>((sum, t) => sum + t, 0),
});

/** A source's part of a volume [bbl]. */
export const sharedVolume = formula({
	id: "stimulation/shared-volume",
	name: "Volume from one source",
	expression: "V_i = V s",
	source: cite("definition"),
	inputs: { V: "volume", s: "share" },
	gives: "volume",
	validity: "a share from 0 to 1",
	compute: ({ V, s }) => (s < 0 || s > 1 ? Number.NaN : V * s),
});

/** What is left of a volume when others are taken off it [bbl]. */
export const volumeLess = formula({
	id: "stimulation/volume-less",
	name: "Volume less its parts",
	expression: "V − Σ V_i",
	source: cite("conservation"),
	inputs: { V: "volume", V_i: { many: "volume" } },
	gives: "volume",
	compute: ({ V, V_i }) => V_i.reduce<number>((left, part) => left - part, V),
});

/** How many there are. */
export const countOf = formula({
	id: "stimulation/count",
	name: "Number of stages",
	expression: "how many stages are listed",
	source: cite("definition"),
	inputs: { number: { many: "count" } },
	gives: "count",
	compute: ({ number }) => number.length,
});

/** How many plugs there are to drill out. */
export const plugCount = formula({
	id: "stimulation/plug-count",
	name: "Plugs to drill out",
	expression: "how many stages have a plug below them",
	source: cite("definition"),
	inputs: { number: { many: "count" } },
	gives: "count",
	compute: ({ number }) => number.length,
});
