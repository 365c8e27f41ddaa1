import { BARREL, CUBIC_FOOT, FOOT, GALLON, POUND } from "../factors.ts";
import type { DimensionDefinition } from "./dimension.ts";
import { volumes } from "./shared-units.ts";

/** Volumes, and what flows. */
export const VOLUMES = {
	volume: {
		canonical: "bbl",
		units: volumes,
		field: { unit: "bbl", decimals: 1 },
		metric: { unit: "m³", decimals: 2 },
		example: "40 bbl",
		signed: true,
	},
	capacity: {
		canonical: "bbl/ft",
		units: [
			{ symbol: "bbl/ft", si: BARREL / FOOT },
			{ symbol: "ft³/ft", spellings: ["ft3/ft"], si: CUBIC_FOOT / FOOT },
			{ symbol: "L/m", si: 1e-3 },
		],
		field: { unit: "bbl/ft", decimals: 5 },
		metric: { unit: "L/m", decimals: 3 },
		example: "0.0558 bbl/ft",
	},
	/** Absolute volume of a solid or of a liquid additive. */
	"specific-volume": {
		canonical: "gal/lb",
		units: [
			{ symbol: "gal/lb", si: GALLON / POUND },
			{ symbol: "L/kg", si: 1e-3 },
		],
		field: { unit: "gal/lb", decimals: 4 },
		metric: { unit: "L/kg", decimals: 4 },
		example: "0.0453 gal/lb",
	},
	"slurry-yield": {
		canonical: "ft³/sk",
		units: [
			{
				symbol: "ft³/sk",
				spellings: ["ft3/sk", "cuft/sk", "cu ft/sk", "ft3/sack"],
				si: CUBIC_FOOT / (94 * POUND),
			},
			{ symbol: "L/kg", spellings: ["m3/t", "m³/t"], si: 1e-3 },
		],
		field: { unit: "ft³/sk", decimals: 2 },
		metric: { unit: "L/kg", decimals: 3 },
		example: "1.32 ft3/sk",
	},
	"water-requirement": {
		canonical: "gal/sk",
		units: [
			{ symbol: "gal/sk", spellings: ["gal/sack"], si: GALLON / (94 * POUND) },
			{ symbol: "L/kg", spellings: ["m3/t", "m³/t"], si: 1e-3 },
		],
		field: { unit: "gal/sk", decimals: 2 },
		metric: { unit: "L/kg", decimals: 3 },
		example: "6.3 gal/sk",
	},
	"flow-rate": {
		canonical: "bbl/min",
		units: [
			{ symbol: "bbl/min", spellings: ["bpm"], si: BARREL / 60 },
			{ symbol: "gal/min", spellings: ["gpm"], si: GALLON / 60 },
			{ symbol: "m³/min", spellings: ["m3/min"], si: 1 / 60 },
			{ symbol: "L/min", si: 1e-3 / 60 },
		],
		field: { unit: "bbl/min", decimals: 1 },
		metric: { unit: "m³/min", decimals: 2 },
		example: "6 bbl/min",
	},
} as const satisfies Record<string, DimensionDefinition>;
