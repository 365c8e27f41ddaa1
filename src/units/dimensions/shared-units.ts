import { BARREL, CUBIC_FOOT, FOOT, GALLON, PSI, SURVEY_FOOT } from "../factors.ts";
import type { Unit } from "./dimension.ts";

export const feet: readonly Unit[] = [
	{ symbol: "ft", spellings: ["feet", "foot", "'"], si: FOOT },
	{
		symbol: "m",
		spellings: ["metre", "metres", "meter", "meters"],
		si: 1,
		caseMatters: true,
	},
	{
		symbol: "usft",
		spellings: ["ftUS", "US ft", "US survey foot", "US survey feet", "survey ft", "survey feet"],
		si: SURVEY_FOOT,
	},
];
export const depth = {
	canonical: "ft",
	units: feet,
	field: { unit: "ft", decimals: 0 },
	metric: { unit: "m", decimals: 1 },
};

export const pressures: readonly Unit[] = [
	{ symbol: "psi", spellings: ["psig", "lbf/in2", "lbf/in²"], si: PSI },
	{ symbol: "kPa", si: 1e3 },
	{ symbol: "MPa", si: 1e6, caseMatters: true },
	{ symbol: "GPa", si: 1e9 },
	{ symbol: "bar", si: 1e5 },
	{ symbol: "ksi", spellings: ["kpsi"], si: 1000 * PSI },
];

export const volumes: readonly Unit[] = [
	{ symbol: "bbl", spellings: ["barrel", "barrels"], si: BARREL },
	{ symbol: "gal", spellings: ["gallon", "gallons"], si: GALLON },
	{ symbol: "ft³", spellings: ["ft3", "cu ft", "cuft"], si: CUBIC_FOOT },
	{ symbol: "m³", spellings: ["m3"], si: 1 },
	{ symbol: "L", spellings: ["liter", "litre", "liters", "litres"], si: 1e-3 },
];

export const PERCENT: Unit = { symbol: "%", spellings: ["percent", "pct"], si: 0.01 };
