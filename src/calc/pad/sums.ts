import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

const source = cite("definition", "every well of the pad");
const sum = (values: readonly number[]): number => values.reduce<number>((total, value) => total + value, 0);

/** [bbl] */
export const volumeOfWells = formula({
	id: "pad/volume-of-wells",
	name: "Volume for all wells of the pad",
	expression: "V = Σ V_i",
	source,
	inputs: { V_i: { many: "volume" } },
	gives: "volume",
	compute: ({ V_i }) => sum(V_i),
});

/** [lb] */
export const massOfWells = formula({
	id: "pad/mass-of-wells",
	name: "Mass for all wells of the pad",
	expression: "m = Σ m_i",
	source,
	inputs: { m_i: { many: "mass" } },
	gives: "mass",
	compute: ({ m_i }) => sum(m_i),
});

/** [count] */
export const countOfWells = formula({
	id: "pad/count-of-wells",
	name: "Number for all wells of the pad",
	expression: "n = Σ n_i",
	source,
	inputs: { n_i: { many: "count" } },
	gives: "count",
	compute: ({ n_i }) => sum(n_i),
});

/** From the first day that any well has of a phase to the last that any has [min, printed in days]. */
export const spanOfPhase = formula({
	id: "pad/span-of-phase",
	name: "Time from the first well's start of a phase to the last well's end of it",
	expression: "t = max(s_i + t_i) − min s_i",
	source: cite("definition", "schedules of the wells, the days between them counted in"),
	inputs: { s_i: { many: "duration" }, t_i: { many: "duration" } },
	gives: "duration",
	validity: "as many starts as durations, from one day",
	compute: ({ s_i, t_i }) =>
		s_i.length === t_i.length && s_i.length > 0
			? Math.max(...s_i.map((start, i) => start + (t_i[i] ?? Number.NaN))) - Math.min(...s_i)
			: Number.NaN,
});
