import type { DimensionDefinition } from "./dimension.ts";

/** What is measured on the pad and around the hole. */
export const SURROUNDINGS = {
	"magnetic-field": {
		canonical: "nT",
		units: [
			{ symbol: "nT", si: 1e-9 },
			{ symbol: "µT", spellings: ["uT", "microtesla"], si: 1e-6 },
		],
		field: { unit: "nT", decimals: 0 },
		metric: { unit: "nT", decimals: 0 },
		example: "48500 nT",
	},
	/** Mass of airborne dust in a volume of air. */
	"dust-concentration": {
		canonical: "µg/m³",
		units: [
			{ symbol: "µg/m³", spellings: ["ug/m3", "µg/m3"], si: 1e-9 },
			{ symbol: "mg/m³", spellings: ["mg/m3"], si: 1e-6 },
		],
		field: { unit: "µg/m³", decimals: 0 },
		metric: { unit: "µg/m³", decimals: 0 },
		example: "50 ug/m3",
	},
	/** Share of the lower explosive limit. */
	"explosive-limit": {
		canonical: "% LEL",
		units: [{ symbol: "% LEL", spellings: ["%LEL"], si: 0.01 }],
		field: { unit: "% LEL", decimals: 0 },
		metric: { unit: "% LEL", decimals: 0 },
		example: "10 % LEL",
	},
	/** What a bond log reads of the first arrival along the pipe. */
	"sonic-amplitude": {
		canonical: "mV",
		units: [{ symbol: "mV", si: 1e-3 }],
		field: { unit: "mV", decimals: 1 },
		metric: { unit: "mV", decimals: 1 },
		example: "4 mV",
	},
	"sound-level": {
		canonical: "dBA",
		units: [{ symbol: "dBA", spellings: ["dB(A)", "dB A"], si: 1 }],
		field: { unit: "dBA", decimals: 0 },
		metric: { unit: "dBA", decimals: 0 },
		example: "92 dBA",
	},
} as const satisfies Record<string, DimensionDefinition>;
