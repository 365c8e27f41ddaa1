import { tableFormula } from "../../../cite/formula.ts";
import type { KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";

/** Pressure over vertical depth; straight between rows, and below the last on at its gradient. */
export const pressureProfile = tableFormula({
	id: "casing/pressure-profile",
	name: "Pressure over depth",
	expression: "p(D) = p_0 + Σ g (D_bottom − D_top), column by column",
	source: cite("hydrostatics"),
	inputs: {
		p_0: "pressure",
		D_0: "true-vertical-depth",
		g: { many: "pressure-gradient" },
		D_bottom: { many: "true-vertical-depth" },
	},
	gives: { tvd: "true-vertical-depth", pressure: "pressure" },
	validity: "a bottom for each column, from the top down",
	compute: ({ p_0, D_0, g, D_bottom }) => {
		if (g.length !== D_bottom.length || g.length === 0) return [];
		const rows = [{ tvd: D_0 as number, pressure: p_0 as number }];
		for (const [i, gradient] of g.entries()) {
			const above = rows.at(-1);
			if (above === undefined) return [];
			const tvd = Math.max(above.tvd, D_bottom[i] ?? Number.NaN);
			rows.push({ tvd, pressure: above.pressure + gradient * (tvd - above.tvd) });
		}
		return rows.every((row) => Number.isFinite(row.pressure)) ? rows : [];
	},
});

/** Undisturbed temperature over vertical depth, from ground level down. */
export const temperatureProfile = tableFormula({
	id: "casing/temperature-profile",
	name: "Static temperature over depth",
	expression: "T(D) = T_s + G (D − h) / 100, D below the datum, h its height above ground",
	source: cite("lapeyrouse", "ch. 1, temperature conversion and gradient"),
	inputs: {
		T_s: "temperature",
		G: "temperature-gradient",
		h: "length",
		D: "true-vertical-depth",
	},
	gives: { tvd: "true-vertical-depth", temperature: "temperature" },
	validity: "D below the ground",
	compute: ({ T_s, G, h, D }) =>
		D > h
			? [
					{ tvd: 0, temperature: T_s },
					{ tvd: h, temperature: T_s },
					{ tvd: D, temperature: T_s + (G * (D - h)) / 100 },
				]
			: [],
});

/** A well that flows long: straight from the wellhead to what the rock has at the foot of the well. */
export const producingTemperatureProfile = tableFormula({
	id: "casing/producing-temperature-profile",
	name: "Producing temperature over depth",
	expression: "T(D) = T_wh + (T_r − T_wh) D / D_r, T_r static at the foot of the well, D_r",
	source: cite("common-practice"),
	inputs: { T_wh: "temperature", static: { table: "temperature" } },
	gives: { tvd: "true-vertical-depth", temperature: "temperature" },
	validity: "steady flow; straight in vertical depth",
	compute: ({ T_wh, static: undisturbed }) => {
		const foot = undisturbed.rows.at(-1);
		return [
			{ tvd: 0, temperature: T_wh },
			{ tvd: foot?.["tvd"] ?? Number.NaN, temperature: foot?.["temperature"] ?? Number.NaN },
		];
	},
});

/** One temperature all the way: steel cooled through by what is pumped, or a temperature that is not known. */
export const uniformTemperature = tableFormula({
	id: "casing/uniform-temperature",
	name: "One temperature over depth",
	expression: "T(D) = T",
	source: cite("definition"),
	inputs: { T: "temperature" },
	gives: { tvd: "true-vertical-depth", temperature: "temperature" },
	compute: ({ T }) => [{ tvd: 0, temperature: T }],
});

/** One pressure all the way. */
export const uniformPressure = tableFormula({
	id: "casing/uniform-pressure",
	name: "One pressure over depth",
	expression: "p(D) = p",
	source: cite("definition"),
	inputs: { p: "pressure" },
	gives: { tvd: "true-vertical-depth", pressure: "pressure" },
	compute: ({ p }) => [{ tvd: 0, pressure: p }],
});

/**
 * A profile's value at a depth: straight between its rows, above the first as the first, below the last on at the last
 * gradient.
 */
export const profileAt = (profile: KnownTable, column: string, tvd: number): number => {
	const rows = profile.rows;
	const last = rows.length - 1;
	const at = (i: number, name: string): number => rows[i]?.[name] ?? Number.NaN;
	if (last < 1 || tvd <= at(0, "tvd")) return at(0, column);
	let i = 1;
	while (i < last && (at(i, "tvd") < tvd || at(i, "tvd") === at(i - 1, "tvd"))) i += 1;
	const height = at(i, "tvd") - at(i - 1, "tvd");
	if (height === 0) return at(i, column);
	return at(i - 1, column) + ((at(i, column) - at(i - 1, column)) * (tvd - at(i - 1, "tvd"))) / height;
};
