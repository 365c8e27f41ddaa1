import { CUBIC_FOOT, FOOT, GALLON, POUND, PSI, WATER } from "../factors.ts";
import type { DimensionDefinition } from "./dimension.ts";
import { pressures } from "./shared-units.ts";

/** Pressures, and the densities and gradients that make them. */
export const PRESSURES = {
	pressure: {
		canonical: "psi",
		units: pressures,
		field: { unit: "psi", decimals: 0 },
		metric: { unit: "MPa", decimals: 2 },
		example: "4300 psi",
	},
	/** A pressure that may act either way (a margin, a differential). */
	"pressure-difference": {
		canonical: "psi",
		units: pressures,
		field: { unit: "psi", decimals: 0 },
		metric: { unit: "MPa", decimals: 2 },
		example: "-250 psi",
		signed: true,
	},
	"pressure-gradient": {
		canonical: "psi/ft",
		units: [
			{ symbol: "psi/ft", si: PSI / FOOT },
			{ symbol: "kPa/m", si: 1e3 },
		],
		field: { unit: "psi/ft", decimals: 3 },
		metric: { unit: "kPa/m", decimals: 2 },
		example: "0.465 psi/ft",
	},
	density: {
		canonical: "lb/gal",
		units: [
			{
				symbol: "lb/gal",
				spellings: ["ppg", "#/gal", "lbm/gal", "pounds/gallon"],
				si: POUND / GALLON,
			},
			{ symbol: "SG", spellings: ["s.g."], si: WATER },
			{ symbol: "kg/m³", spellings: ["kg/m3"], si: 1 },
			{ symbol: "g/cm³", spellings: ["g/cm3", "g/cc"], si: 1000 },
			{
				symbol: "lb/ft³",
				spellings: ["lb/ft3", "pcf"],
				si: POUND / CUBIC_FOOT,
			},
		],
		field: { unit: "lb/gal", decimals: 2 },
		metric: { unit: "kg/m³", decimals: 0 },
		example: "8.8 ppg",
	},
	"bulk-density": {
		canonical: "lb/ft³",
		units: [
			{
				symbol: "lb/ft³",
				spellings: ["lb/ft3", "pcf"],
				si: POUND / CUBIC_FOOT,
			},
			{ symbol: "kg/m³", spellings: ["kg/m3"], si: 1 },
		],
		field: { unit: "lb/ft³", decimals: 0 },
		metric: { unit: "kg/m³", decimals: 0 },
		example: "96 lb/ft3",
	},
} as const satisfies Record<string, DimensionDefinition>;
