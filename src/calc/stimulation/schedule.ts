import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

const nolte = cite("nolte-1986", "power-law proppant schedule");

/** Pad as a share of the slurry, and exponent of the ramp. */
export const padFraction = formula({
	id: "stimulation/pad-fraction",
	name: "Pad fraction and ramp exponent",
	expression: "f_pad = ε = (1 − η) / (1 + η)",
	source: nolte,
	inputs: { efficiency: "share" },
	gives: "share",
	validity: "efficiency above 0 to 1",
	compute: ({ efficiency }) =>
		efficiency <= 0 || efficiency > 1 ? Number.NaN : (1 - efficiency) / (1 + efficiency),
});

/** The other rule for the pad. */
export const padFractionAlternative = formula({
	id: "stimulation/pad-fraction-alternative",
	name: "Pad fraction, square rule",
	expression: "f_pad = (1 − η)² + 0.05",
	source: nolte,
	inputs: { efficiency: "share" },
	gives: "share",
	validity: "efficiency above 0 to 1",
	compute: ({ efficiency }) =>
		efficiency <= 0 || efficiency > 1 ? Number.NaN : (1 - efficiency) ** 2 + 0.05,
});

/** Proppant in a gallon of slurry when a volume of slurry has been pumped [lb/gal]. */
export const rampConcentration = formula({
	id: "stimulation/ramp-concentration",
	name: "Proppant concentration of the ramp, in slurry",
	expression: "c = c_end τ^ε, τ = (V − V_pad) / (V_total − V_pad)",
	source: nolte,
	inputs: {
		end: "proppant-concentration",
		exponent: "share",
		pumped: "volume",
		pad: "volume",
		total: "volume",
	},
	gives: "proppant-concentration",
	validity: "c in lb per gallon of slurry, V slurry; zero in the pad, V no more than the total",
	compute: ({ end, exponent, pumped, pad, total }) =>
		pumped > total || pad >= total
			? Number.NaN
			: pumped <= pad
				? { value: 0, branch: "pad" }
				: { value: end * ((pumped - pad) / (total - pad)) ** exponent, branch: "ramp" },
});

/** Mean concentration between two slurry volumes of the ramp [lb per gallon of slurry]: what a step table pumps. */
export const rampMeanConcentration = formula({
	id: "stimulation/ramp-mean-concentration",
	name: "Mean proppant concentration of a step of the ramp, in slurry",
	expression: "c̄ = c_end (τ₂^(ε+1) − τ₁^(ε+1)) / ((ε + 1)(τ₂ − τ₁))",
	source: cite("nolte-1986", "power-law proppant schedule, integrated over the step"),
	inputs: {
		end: "proppant-concentration",
		exponent: "share",
		from: "volume",
		to: "volume",
		pad: "volume",
		total: "volume",
	},
	gives: "proppant-concentration",
	validity: "a step within the ramp",
	compute: ({ end, exponent, from, to, pad, total }) => {
		if (from < pad || to > total || to <= from) return Number.NaN;
		const first = (from - pad) / (total - pad);
		const last = (to - pad) / (total - pad);
		return (end * (last ** (exponent + 1) - first ** (exponent + 1))) / ((exponent + 1) * (last - first));
	},
});

/** Proppant of a whole ramp [lb]. */
export const rampMass = formula({
	id: "stimulation/ramp-mass",
	name: "Proppant mass of the ramp",
	expression: "m = 42 c_end V_total η",
	source: cite("nolte-1986", "exact where the pad fraction and the exponent are (1 − η)/(1 + η)"),
	inputs: { end: "proppant-concentration", total: "volume", efficiency: "share" },
	gives: "mass",
	validity: "c in lb per gallon of slurry",
	compute: ({ end, total, efficiency }) => 42 * end * total * efficiency,
});

/** Pounds per gallon of clean fluid that give a concentration in slurry [lb/gal]. */
export const addedConcentration = formula({
	id: "stimulation/added-concentration",
	name: "Proppant added to a gallon of clean fluid",
	expression: "ppa = c / (1 − c V), V = 1 / (8.33 SG)",
	source: cite("conservation", "inverse of c/(1 + cV)"),
	inputs: { in_slurry: "proppant-concentration", specific_gravity: "ratio" },
	gives: "proppant-concentration",
	validity: "less proppant than fills the slurry",
	compute: ({ in_slurry, specific_gravity }) => {
		const solids = in_slurry / (8.33 * specific_gravity);
		return solids >= 1 ? Number.NaN : in_slurry / (1 - solids);
	},
});
