import { CUBIC_FOOT, FOOT, GALLON, POUND, POUND_FORCE } from "../factors.ts";
import type { DimensionDefinition } from "./dimension.ts";

/** What a fluid is and carries. */
export const FLUIDS = {
	"plastic-viscosity": {
		canonical: "cP",
		units: [
			{ symbol: "cP", si: 1e-3 },
			{ symbol: "mPa·s", si: 1e-3, caseMatters: true },
		],
		field: { unit: "cP", decimals: 1 },
		metric: { unit: "cP", decimals: 1 },
		example: "14 cP",
	},
	"yield-point": {
		canonical: "lbf/100 ft²",
		units: [
			{
				symbol: "lbf/100 ft²",
				spellings: ["lbf/100ft2", "lbf/100 ft2", "lb/100ft2", "lb/100 ft2"],
				si: POUND_FORCE / (100 * FOOT ** 2),
			},
			{ symbol: "Pa", si: 1 },
		],
		field: { unit: "lbf/100 ft²", decimals: 1 },
		metric: { unit: "Pa", decimals: 1 },
		example: "11 lbf/100ft2",
	},
	leakoff: {
		canonical: "ft/min^0.5",
		units: [
			{
				symbol: "ft/min^0.5",
				spellings: ["ft/sqrt(min)", "ft/√min"],
				si: FOOT / Math.sqrt(60),
			},
			{ symbol: "m/s^0.5", si: 1 },
		],
		field: { unit: "ft/min^0.5", decimals: 5 },
		metric: { unit: "m/s^0.5", decimals: 7 },
		example: "0.0008 ft/min^0.5",
	},
	"proppant-concentration": {
		canonical: "lb/gal",
		units: [
			{
				symbol: "lb/gal",
				spellings: ["ppa", "ppg", "#/gal"],
				si: POUND / GALLON,
			},
			{ symbol: "kg/m³", spellings: ["kg/m3"], si: 1 },
		],
		field: { unit: "lb/gal", decimals: 2 },
		metric: { unit: "kg/m³", decimals: 0 },
		example: "1.25 lb/gal",
	},
	"dissolved-solids": {
		canonical: "mg/L",
		units: [{ symbol: "mg/L", spellings: ["ppm"], si: 1e-3 }],
		field: { unit: "mg/L", decimals: 0 },
		metric: { unit: "mg/L", decimals: 0 },
		example: "1150 mg/L",
	},
	/** Volume of additive per volume of base fluid. */
	"additive-rate": {
		canonical: "gal/1000 gal",
		units: [
			{ symbol: "gal/1000 gal", spellings: ["gal/1000gal", "gpt"], si: 1e-3 },
			{ symbol: "L/m³", spellings: ["L/m3"], si: 1e-3 },
		],
		field: { unit: "gal/1000 gal", decimals: 2 },
		metric: { unit: "L/m³", decimals: 2 },
		example: "0.7 gal/1000gal",
	},
	"free-fluid": {
		canonical: "mL/250 mL",
		units: [
			{ symbol: "mL/250 mL", spellings: ["mL/250mL"], si: 1 / 250 },
			{ symbol: "%", si: 0.01 },
		],
		field: { unit: "mL/250 mL", decimals: 1 },
		metric: { unit: "mL/250 mL", decimals: 1 },
		example: "3 mL/250 mL",
	},
	/** Volume or mole fraction of a gas. */
	"gas-fraction": {
		canonical: "ppm",
		units: [
			{ symbol: "ppm", spellings: ["ppmv"], si: 1e-6 },
			{ symbol: "%", spellings: ["mol%", "mol %"], si: 1e-2 },
		],
		field: { unit: "ppm", decimals: 0 },
		metric: { unit: "ppm", decimals: 0 },
		example: "100 ppm",
	},
	/** Volume of gas at the rule's own base conditions. */
	"gas-volume": {
		canonical: "scf",
		units: [{ symbol: "scf", si: CUBIC_FOOT }],
		field: { unit: "scf", decimals: 0 },
		metric: { unit: "scf", decimals: 0 },
		example: "1117 scf",
	},
	"gas-rate": {
		canonical: "scf/d",
		units: [
			{ symbol: "scf/d", spellings: ["scfd"], si: CUBIC_FOOT / 86_400 },
			{ symbol: "scf/hr", spellings: ["scf/h", "scfh"], si: CUBIC_FOOT / 3600 },
			{
				symbol: "MMscf/d",
				spellings: ["MMscfd"],
				si: (1e6 * CUBIC_FOOT) / 86_400,
			},
		],
		field: { unit: "scf/d", decimals: 0 },
		metric: { unit: "scf/d", decimals: 0 },
		example: "10000000 scf/d",
	},
} as const satisfies Record<string, DimensionDefinition>;
