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

/** The limit before 2016, for old records [µg/m³]. */
export const formerQuartzLimit = formula({
	id: "safety/former-quartz-limit",
	name: "Former exposure limit for respirable quartz dust",
	expression: "10 / (% SiO₂ + 2) mg/m³, the share as s",
	source: cite("osha-1910-1000", "Table Z-3; superseded by 29 CFR 1910.1053"),
	inputs: { s: "share" },
	gives: "dust-concentration",
	validity: "a share from 0 to 1; for reading old records only",
	compute: ({ s }) => (s < 0 || s > 1 ? Number.NaN : (10 / (s * 100 + 2)) * 1000),
});
