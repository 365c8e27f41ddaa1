import { FOOT, MILE } from "../factors.ts";
import type { DimensionDefinition } from "./dimension.ts";

/** Times, speeds and temperatures. */
export const TIME_AND_TEMPERATURE = {
	duration: {
		canonical: "min",
		units: [
			{ symbol: "min", spellings: ["mins", "minute", "minutes"], si: 60 },
			{ symbol: "hr", spellings: ["h", "hour", "hours", "hrs"], si: 3600 },
			{ symbol: "d", spellings: ["day", "days"], si: 86_400 },
			{ symbol: "s", spellings: ["sec", "second", "seconds"], si: 1 },
		],
		field: { unit: "min", decimals: 0 },
		metric: { unit: "min", decimals: 0 },
		example: "30 min",
	},
	speed: {
		canonical: "mph",
		units: [
			{ symbol: "mph", si: MILE / 3600 },
			{ symbol: "ft/s", si: FOOT },
			{ symbol: "m/s", si: 1 },
			{ symbol: "km/h", si: 1 / 3.6 },
		],
		field: { unit: "mph", decimals: 0 },
		metric: { unit: "km/h", decimals: 0 },
		example: "30 mph",
	},
	"fluid-velocity": {
		canonical: "ft/s",
		units: [
			{ symbol: "ft/s", si: FOOT },
			{ symbol: "ft/min", si: FOOT / 60 },
			{ symbol: "m/s", si: 1 },
		],
		field: { unit: "ft/s", decimals: 1 },
		metric: { unit: "m/s", decimals: 2 },
		example: "12 ft/s",
	},
	temperature: {
		canonical: "°F",
		units: [
			{
				symbol: "°F",
				spellings: ["degF", "deg F", "degrees F", "F"],
				si: 5 / 9,
				zero: 459.67 * (5 / 9),
			},
			{ symbol: "°C", spellings: ["degC", "deg C", "degrees C", "C"], si: 1, zero: 273.15 },
		],
		field: { unit: "°F", decimals: 0 },
		metric: { unit: "°C", decimals: 0 },
		example: "80 degF",
		signed: true,
	},
	/** How far one temperature is from another. */
	"temperature-difference": {
		canonical: "°F",
		units: [
			{ symbol: "°F", spellings: ["degF", "deg F", "degrees F", "F"], si: 5 / 9 },
			{ symbol: "°C", spellings: ["degC", "deg C", "degrees C", "C"], si: 1 },
		],
		field: { unit: "°F", decimals: 0 },
		metric: { unit: "°C", decimals: 0 },
		example: "20 degF",
		signed: true,
	},
	"temperature-gradient": {
		canonical: "°F/100 ft",
		units: [
			{
				symbol: "°F/100 ft",
				spellings: ["degF/100 ft", "degF/100ft"],
				si: 5 / 9 / (100 * FOOT),
			},
			{ symbol: "°C/100 m", spellings: ["degC/100 m", "degC/100m"], si: 0.01 },
			{ symbol: "°C/km", spellings: ["degC/km"], si: 0.001 },
		],
		field: { unit: "°F/100 ft", decimals: 2 },
		metric: { unit: "°C/100 m", decimals: 2 },
		example: "1.5 degF/100 ft",
	},
} as const satisfies Record<string, DimensionDefinition>;
