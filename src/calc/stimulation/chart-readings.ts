import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/** Slurry that a rate over time comes to, by trapezoids [bbl]. */
export const chartVolume = formula({
	id: "stimulation/chart-volume",
	name: "Slurry volume under the rate of a chart",
	expression: "V = Σ (Q_i + Q_i+1) / 2 (t_i+1 − t_i)",
	source: cite("conservation", "trapezoids between the readings"),
	inputs: { t_i: { many: "duration" }, Q_i: { many: "flow-rate" } },
	gives: "volume",
	validity: "one rate for each time, in order of time",
	compute: ({ t_i, Q_i }) =>
		t_i.length !== Q_i.length
			? Number.NaN
			: t_i.reduce<number>((sum, t, i) => {
					const [before, Q, Q_before] = [t_i[i - 1], Q_i[i], Q_i[i - 1]];
					if (before === undefined || Q === undefined || Q_before === undefined) return sum;
					return t < before ? Number.NaN : sum + ((Q + Q_before) / 2) * (t - before);
				}, 0),
});

/** By how much two figures of one volume differ, as a part of the second. */
export const volumeApart = formula({
	id: "stimulation/volume-apart",
	name: "Chart and record, difference of volume",
	expression: "|V − V_r| / V_r",
	source: cite("definition"),
	inputs: { V: "volume", V_r: "volume" },
	gives: "share",
	validity: "a recorded volume above zero",
	compute: ({ V, V_r }) => (V_r > 0 ? Math.abs(V - V_r) / V_r : Number.NaN),
});

/** The greatest of several shares. */
export const greatestApart = formula({
	id: "stimulation/greatest-apart",
	name: "Chart and record, greatest difference of volume",
	expression: "max s_i",
	source: cite("definition"),
	inputs: { s_i: { many: "share" } },
	gives: "share",
	validity: "at least one",
	compute: ({ s_i }) => (s_i.length === 0 ? Number.NaN : Math.max(...s_i)),
});
