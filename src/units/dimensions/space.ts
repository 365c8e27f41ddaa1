import { ACRE, FOOT, INCH, MILE } from "../factors.ts";
import type { DimensionDefinition } from "./dimension.ts";
import { depth, feet } from "./shared-units.ts";

/** Where things are and how large they are. */
export const SPACE = {
	length: { ...depth, example: "8000 ft" },
	"measured-depth": { ...depth, example: "1185 ft" },
	"true-vertical-depth": { ...depth, example: "8850 ft TVD" },
	"depth-below-ground": { ...depth, example: "984 ft below ground" },
	elevation: { ...depth, example: "1482 ft", signed: true },
	/** Horizontal or vertical offset that may lie on either side of its origin. */
	offset: {
		...depth,
		units: [...feet, { symbol: "mi", spellings: ["mile", "miles"], si: MILE }],
		example: "-120 ft",
		signed: true,
	},
	distance: {
		canonical: "ft",
		units: [
			...feet,
			{ symbol: "mi", spellings: ["mile", "miles"], si: MILE },
			{ symbol: "km", si: 1000 },
			{ symbol: "yd", si: 3 * FOOT },
		],
		field: { unit: "ft", decimals: 0 },
		metric: { unit: "m", decimals: 0 },
		example: "1710 ft",
	},
	diameter: {
		canonical: "in",
		units: [
			{ symbol: "in", spellings: ["inch", "inches", '"', "”", "″"], si: INCH },
			{ symbol: "mm", si: 1e-3 },
			{ symbol: "cm", si: 1e-2 },
		],
		field: { unit: "in", decimals: 3 },
		metric: { unit: "mm", decimals: 1 },
		example: "9 5/8 in",
	},
	area: {
		canonical: "in²",
		units: [
			{ symbol: "in²", spellings: ["in2", "sq in"], si: INCH ** 2 },
			{ symbol: "cm²", spellings: ["cm2"], si: 1e-4 },
		],
		field: { unit: "in²", decimals: 3 },
		metric: { unit: "cm²", decimals: 2 },
		example: "6.630 in2",
	},
	/** Of two errors of place. */
	covariance: {
		canonical: "ft²",
		units: [
			{ symbol: "ft²", spellings: ["ft2", "sq ft"], si: FOOT ** 2 },
			{ symbol: "m²", spellings: ["m2", "sq m"], si: 1 },
		],
		field: { unit: "ft²", decimals: 1 },
		metric: { unit: "m²", decimals: 2 },
		example: "1200 ft2",
		signed: true,
	},
	"land-area": {
		canonical: "acre",
		units: [
			{ symbol: "acre", printed: "acres", spellings: ["acres", "ac"], si: ACRE },
			{ symbol: "ha", spellings: ["hectare", "hectares"], si: 1e4 },
			{ symbol: "ft²", spellings: ["ft2", "sq ft"], si: FOOT ** 2 },
			{ symbol: "m²", spellings: ["m2"], si: 1 },
		],
		field: { unit: "acre", decimals: 1 },
		metric: { unit: "ha", decimals: 2 },
		example: "6.4 acres",
	},
	angle: {
		canonical: "°",
		units: [
			{
				symbol: "°",
				spellings: ["deg", "degree", "degrees"],
				si: Math.PI / 180,
			},
		],
		field: { unit: "°", decimals: 2 },
		metric: { unit: "°", decimals: 2 },
		example: "158 deg",
		signed: true,
	},
	dogleg: {
		canonical: "°/100 ft",
		units: [
			{
				symbol: "°/100 ft",
				spellings: ["deg/100 ft", "deg/100ft", "deg/100'"],
				si: Math.PI / 180 / (100 * FOOT),
			},
			{
				symbol: "°/30 m",
				spellings: ["deg/30 m", "deg/30m"],
				si: Math.PI / 180 / 30,
			},
		],
		field: { unit: "°/100 ft", decimals: 2 },
		metric: { unit: "°/30 m", decimals: 2 },
		example: "10 deg/100 ft",
		signed: true,
	},
} as const satisfies Record<string, DimensionDefinition>;
