import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/** Exposure averaged over an eight-hour shift [µg/m³]. */
export const silicaTimeWeightedAverage = formula({
	id: "safety/silica-twa",
	name: "Respirable silica, 8-hour time-weighted average",
	expression: "TWA = Σ C_i t_i / 8 h",
	source: cite("osha-1910-1053", "8-hour time-weighted average"),
	inputs: { C_i: { many: "dust-concentration" }, t_i: { many: "duration" } },
	gives: "dust-concentration",
	validity: "one time for each concentration; divided by eight hours however long the shift was",
	compute: ({ C_i, t_i }) =>
		C_i.length !== t_i.length
			? Number.NaN
			: C_i.reduce<number>((sum, c, i) => sum + c * (t_i[i] ?? Number.NaN), 0) / (8 * 60),
});
