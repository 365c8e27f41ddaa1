import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

const nolte = cite("nolte-1986", "power-law proppant schedule");

/** Pad as a share of the slurry, and exponent of the ramp. */
export const padFraction = formula({
	id: "stimulation/pad-fraction",
	name: "Pad fraction and ramp exponent",
	expression: "f_pad = ε = (1 − η) / (1 + η)",
	source: nolte,
	inputs: { η: "share" },
	gives: "share",
	validity: "efficiency above 0 to 1",
	compute: ({ η }) => (η <= 0 || η > 1 ? Number.NaN : (1 - η) / (1 + η)),
});

/** The other rule for the pad. */
export const padFractionAlternative = formula({
	id: "stimulation/pad-fraction-alternative",
	name: "Pad fraction, square rule",
	expression: "f_pad = (1 − η)² + 0.05",
	source: nolte,
	inputs: { η: "share" },
	gives: "share",
	validity: "efficiency above 0 to 1",
	compute: ({ η }) => (η <= 0 || η > 1 ? Number.NaN : (1 - η) ** 2 + 0.05),
});

/** Proppant in a gallon of slurry when a volume of slurry has been pumped [lb/gal]. */
export const rampConcentration = formula({
	id: "stimulation/ramp-concentration",
	name: "Proppant concentration of the ramp, in slurry",
	expression: "c = c_end τ^ε, τ = (V − V_pad) / (V_total − V_pad)",
	source: nolte,
	inputs: {
		c_end: "proppant-concentration",
		ε: "share",
		V: "volume",
		V_pad: "volume",
		V_total: "volume",
	},
	gives: "proppant-concentration",
	validity: "c in lb per gallon of slurry, V slurry; zero in the pad, V no more than the total",
	compute: ({ c_end, ε, V, V_pad, V_total }) =>
		V > V_total || V_pad >= V_total
			? Number.NaN
			: V <= V_pad
				? { value: 0, branch: "pad" }
				: { value: c_end * ((V - V_pad) / (V_total - V_pad)) ** ε, branch: "ramp" },
});

/** Mean concentration between two slurry volumes of the ramp [lb per gallon of slurry]: what a step table pumps. */
export const rampMeanConcentration = formula({
	id: "stimulation/ramp-mean-concentration",
	name: "Mean proppant concentration of a step of the ramp, in slurry",
	expression:
		"c = c_end (τ_2^(ε+1) − τ_1^(ε+1)) / ((ε + 1)(τ_2 − τ_1)), τ_i = (V_i − V_pad) / (V_total − V_pad)",
	source: cite("nolte-1986", "power-law proppant schedule, integrated over the step"),
	inputs: {
		c_end: "proppant-concentration",
		ε: "share",
		V_1: "volume",
		V_2: "volume",
		V_pad: "volume",
		V_total: "volume",
	},
	gives: "proppant-concentration",
	validity: "a step within the ramp",
	compute: ({ c_end, ε, V_1, V_2, V_pad, V_total }) => {
		if (V_1 < V_pad || V_2 > V_total || V_2 <= V_1) return Number.NaN;
		const first = (V_1 - V_pad) / (V_total - V_pad);
		const last = (V_2 - V_pad) / (V_total - V_pad);
		return (c_end * (last ** (ε + 1) - first ** (ε + 1))) / ((ε + 1) * (last - first));
	},
});

/** Proppant of a whole ramp [lb]. */
export const rampMass = formula({
	id: "stimulation/ramp-mass",
	name: "Proppant mass of the ramp",
	expression: "m = 42 c_end V_total η",
	source: cite("nolte-1986", "exact where the pad fraction and the exponent are (1 − η)/(1 + η)"),
	inputs: { c_end: "proppant-concentration", V_total: "volume", η: "share" },
	gives: "mass",
	validity: "c in lb per gallon of slurry",
	compute: ({ c_end, V_total, η }) => 42 * c_end * V_total * η,
});

/** Pounds per gallon of clean fluid that give a concentration in slurry [lb/gal]. */
export const addedConcentration = formula({
	id: "stimulation/added-concentration",
	name: "Proppant added to a gallon of clean fluid",
	expression: "ppa = c / (1 − c V), V = 1 / (8.33 SG)",
	source: cite("conservation", "inverse of c/(1 + cV)"),
	inputs: { c: "proppant-concentration", SG: "ratio" },
	gives: "proppant-concentration",
	validity: "less proppant than fills the slurry",
	compute: ({ c, SG }) => {
		const solids = c / (8.33 * SG);
		return solids >= 1 ? Number.NaN : c / (1 - solids);
	},
});

/** Slurry of the pad [bbl]. */
export const rampPad = formula({
	id: "stimulation/ramp-pad",
	name: "Pad of a ramp",
	expression: "V_pad = f_pad V",
	source: nolte,
	inputs: { f_pad: "share", V: "volume" },
	gives: "volume",
	compute: ({ f_pad, V }) => f_pad * V,
});

/** Concentration at the end of a ramp that places a mass [lb per gallon of slurry]. */
export const rampEndConcentration = formula({
	id: "stimulation/ramp-end-concentration",
	name: "Proppant concentration at the end of the ramp, in slurry",
	expression: "c_end = m / (42 V_total η)",
	source: cite("nolte-1986", "the mass of the ramp, turned round"),
	inputs: { m: "mass", V_total: "volume", η: "share" },
	gives: "proppant-concentration",
	validity: "a volume and an efficiency above zero",
	compute: ({ m, V_total, η }) => (V_total > 0 && η > 0 ? m / (42 * V_total * η) : Number.NaN),
});

/** Slurry pumped when so many of the ramp's equal steps are done [bbl]. */
export const rampBound = formula({
	id: "stimulation/ramp-bound",
	name: "Slurry at the end of a step of the ramp",
	expression: "V_i = V_pad + (V_total − V_pad) i / n",
	source: cite("definition", "steps of equal slurry"),
	inputs: { V_pad: "volume", V_total: "volume", i: "count", n: "count" },
	gives: "volume",
	validity: "i from 0 to n",
	compute: ({ V_pad, V_total, i, n }) =>
		// The last bound is the total itself, to its last bit.
		i === n ? V_total : V_pad + ((V_total - V_pad) * i) / n,
});

/** [bbl] */
export const volumeBetween = formula({
	id: "stimulation/volume-between",
	name: "Slurry of a step of the ramp",
	expression: "V_2 − V_1",
	source: cite("conservation"),
	inputs: { V_1: "volume", V_2: "volume" },
	gives: "volume",
	compute: ({ V_1, V_2 }) => V_2 - V_1,
});

/** Clean fluid in a volume of slurry [bbl]. */
export const cleanOfSlurry = formula({
	id: "stimulation/clean-of-slurry",
	name: "Clean volume of a step, from its slurry",
	expression: "V_c = V_s / (1 + c V), V = 1 / (8.33 SG)",
	source: cite("conservation", "clean fluid and absolute volume of proppant"),
	inputs: { V_s: "volume", c: "proppant-concentration", SG: "ratio" },
	gives: "volume",
	compute: ({ V_s, c, SG }) => V_s / (1 + c / (8.33 * SG)),
});
