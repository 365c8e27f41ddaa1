import { FOOT, POUND, POUND_FORCE } from "../factors.ts";
import type { DimensionDefinition } from "./dimension.ts";

/** Weights, forces and power. */
export const FORCES = {
	"linear-weight": {
		canonical: "lb/ft",
		units: [
			{
				symbol: "lb/ft",
				spellings: ["lbm/ft", "ppf", "#/ft", "#"],
				si: POUND / FOOT,
			},
			{ symbol: "kg/m", si: 1 },
		],
		field: { unit: "lb/ft", decimals: 2 },
		metric: { unit: "kg/m", decimals: 2 },
		example: "54.5 lb/ft",
	},
	force: {
		canonical: "lbf",
		units: [
			{ symbol: "lbf", spellings: ["lb", "lbs"], si: POUND_FORCE },
			{
				symbol: "klbf",
				spellings: ["klb", "kip", "kips"],
				si: 1000 * POUND_FORCE,
			},
			{ symbol: "kN", si: 1e3 },
			{ symbol: "daN", si: 10 },
		],
		field: { unit: "lbf", decimals: 0 },
		metric: { unit: "kN", decimals: 0 },
		example: "100000 lbf",
		signed: true,
	},
	torque: {
		canonical: "ft·lbf",
		units: [
			{
				symbol: "ft·lbf",
				spellings: ["ft-lbf", "ft lbf", "ft-lb", "ft·lb", "ft lb"],
				si: POUND_FORCE * FOOT,
			},
			{ symbol: "N·m", spellings: ["N-m", "Nm", "N m"], si: 1 },
			{ symbol: "kN·m", spellings: ["kN-m", "kNm", "kN m"], si: 1e3 },
		],
		field: { unit: "ft·lbf", decimals: 0 },
		metric: { unit: "kN·m", decimals: 1 },
		example: "8500 ft-lbf",
	},
	mass: {
		canonical: "lb",
		units: [
			{ symbol: "lb", spellings: ["lbs", "lbm", "pounds"], si: POUND },
			{ symbol: "kg", si: 1 },
			{ symbol: "t", spellings: ["tonne", "tonnes"], si: 1000 },
			{
				symbol: "short ton",
				spellings: ["ton", "tons", "short tons"],
				si: 2000 * POUND,
			},
		],
		field: { unit: "lb", decimals: 0 },
		metric: { unit: "t", decimals: 1 },
		example: "48000 lb",
	},
	"hydraulic-power": {
		canonical: "hhp",
		units: [
			{ symbol: "hhp", spellings: ["hp"], si: 550 * POUND_FORCE * FOOT },
			{ symbol: "kW", si: 1e3 },
		],
		field: { unit: "hhp", decimals: 0 },
		metric: { unit: "kW", decimals: 0 },
		example: "18000 hhp",
	},
} as const satisfies Record<string, DimensionDefinition>;
