import {
	ACRE,
	BARREL,
	CUBIC_FOOT,
	FOOT,
	GALLON,
	INCH,
	MILE,
	POUND,
	POUND_FORCE,
	PSI,
	SURVEY_FOOT,
	WATER,
} from "./factors.ts";

/** One unit of a dimension: how it is printed, how it may be written, and its size in SI. */
export interface Unit {
	readonly symbol: string;
	/** Further accepted spellings; matching ignores letter case unless `caseMatters`. */
	readonly spellings?: readonly string[];
	/** Size of one unit in the dimension's SI unit. */
	readonly si: number;
	/** SI value of the unit's zero, for scales such as °F. */
	readonly zero?: number;
	/** True where the symbol in another letter case means something else (MPa and mPa, m and M); spellings stay free. */
	readonly caseMatters?: boolean;
}

export interface DimensionDefinition {
	/** Symbol of the unit that the calculation core works in. */
	readonly canonical: string;
	readonly units: readonly Unit[];
	/** How a paper prints it unless the paper says otherwise. */
	readonly field: { readonly unit: string; readonly decimals: number };
	readonly metric: { readonly unit: string; readonly decimals: number };
	/** A value as somebody would write it; shown in error messages. */
	readonly example: string;
	/** Whether a value below zero has a meaning. */
	readonly signed?: boolean;
}

const feet: readonly Unit[] = [
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
const depth = {
	canonical: "ft",
	units: feet,
	field: { unit: "ft", decimals: 0 },
	metric: { unit: "m", decimals: 1 },
};

const pressures: readonly Unit[] = [
	{ symbol: "psi", spellings: ["psig", "lbf/in2", "lbf/in²"], si: PSI },
	{ symbol: "kPa", si: 1e3 },
	{ symbol: "MPa", si: 1e6, caseMatters: true },
	{ symbol: "GPa", si: 1e9 },
	{ symbol: "bar", si: 1e5 },
	{ symbol: "ksi", spellings: ["kpsi"], si: 1000 * PSI },
];

const volumes: readonly Unit[] = [
	{ symbol: "bbl", spellings: ["barrel", "barrels"], si: BARREL },
	{ symbol: "gal", spellings: ["gallon", "gallons"], si: GALLON },
	{ symbol: "ft³", spellings: ["ft3", "cu ft", "cuft"], si: CUBIC_FOOT },
	{ symbol: "m³", spellings: ["m3"], si: 1 },
	{ symbol: "L", spellings: ["liter", "litre", "liters", "litres"], si: 1e-3 },
];

const PERCENT: Unit = { symbol: "%", spellings: ["percent", "pct"], si: 0.01 };

/**
 * Every dimension the tool knows, with its units. The canonical unit is the trade's own, so that a formula reads like
 * the handbook page it cites.
 *
 * @source nist-sp-811, Appendix B, through `factors.ts`
 */
export const DIMENSIONS = {
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
	"land-area": {
		canonical: "acre",
		units: [
			{ symbol: "acre", spellings: ["acres", "ac"], si: ACRE },
			{ symbol: "ha", spellings: ["hectare", "hectares"], si: 1e4 },
			{ symbol: "ft²", spellings: ["ft2", "sq ft"], si: FOOT ** 2 },
			{ symbol: "m²", spellings: ["m2"], si: 1 },
		],
		field: { unit: "acre", decimals: 1 },
		metric: { unit: "ha", decimals: 2 },
		example: "6.4 acre",
	},
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

export type Dimension = keyof typeof DIMENSIONS;
