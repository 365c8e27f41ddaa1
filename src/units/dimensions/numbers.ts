import type { DimensionDefinition } from "./dimension.ts";
import { PERCENT } from "./shared-units.ts";

/** Shares, ratios and counts. */
export const NUMBERS = {
	/** A part of a whole, kept as a fraction of one. */
	share: {
		canonical: "1",
		units: [PERCENT, { symbol: "1", spellings: ["fraction"], si: 1 }],
		field: { unit: "%", decimals: 1 },
		metric: { unit: "%", decimals: 1 },
		example: "30 %",
	},
	"share-per-temperature": {
		canonical: "1/°F",
		units: [
			{ symbol: "%/°F", spellings: ["%/degF"], si: 0.01 / (5 / 9) },
			{ symbol: "%/°C", spellings: ["%/degC"], si: 0.01 },
			{ symbol: "1/°F", si: 1 / (5 / 9) },
		],
		field: { unit: "%/°F", decimals: 3 },
		metric: { unit: "%/°C", decimals: 3 },
		example: "0.03 %/degF",
	},
	ratio: {
		canonical: "1",
		units: [{ symbol: "1", si: 1 }],
		field: { unit: "", decimals: 2 },
		metric: { unit: "", decimals: 2 },
		example: "1.125",
		signed: true,
	},
	count: {
		canonical: "1",
		units: [{ symbol: "1", si: 1 }],
		field: { unit: "", decimals: 0 },
		metric: { unit: "", decimals: 0 },
		example: "39",
	},
} as const satisfies Record<string, DimensionDefinition>;
