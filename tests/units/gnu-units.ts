import type { Dimension } from "../../src/units/dimensions.ts";

/**
 * How many canonical units one of each other unit is.
 *
 * Source: the program GNU Units 2.22 (Debian package `units` 2.22-2), `units -o%.12g -1t "<from>" "<to>"`; the last two
 * fields are the expressions it was given. `GNU_TEMPERATURES` came from its `tempF` and `tempC`. Where it has no name
 * for a unit the expression spells it out: the acre is 43,560 square (international) feet, a sack holds 94 lb, and
 * gas is counted in standard cubic feet.
 */
export const GNU_UNITS: readonly (readonly [
	Dimension,
	unit: string,
	canonical: string,
	factor: number,
	string,
	string,
])[] = [
	["length", "m", "ft", 3.28083989501, "m", "ft"],
	["measured-depth", "m", "ft", 3.28083989501, "m", "ft"],
	["true-vertical-depth", "m", "ft", 3.28083989501, "m", "ft"],
	["depth-below-ground", "m", "ft", 3.28083989501, "m", "ft"],
	["elevation", "m", "ft", 3.28083989501, "m", "ft"],
	["offset", "m", "ft", 3.28083989501, "m", "ft"],
	["offset", "mi", "ft", 5280, "mile", "ft"],
	["distance", "m", "ft", 3.28083989501, "m", "ft"],
	["distance", "mi", "ft", 5280, "mile", "ft"],
	["distance", "km", "ft", 3280.83989501, "km", "ft"],
	["distance", "yd", "ft", 3, "yard", "ft"],
	["diameter", "mm", "in", 0.0393700787402, "mm", "in"],
	["diameter", "cm", "in", 0.393700787402, "cm", "in"],
	["pressure", "kPa", "psi", 0.14503773773, "kPa", "psi"],
	["pressure", "MPa", "psi", 145.03773773, "MPa", "psi"],
	["pressure", "GPa", "psi", 145037.73773, "GPa", "psi"],
	["pressure", "bar", "psi", 14.503773773, "bar", "psi"],
	["pressure-difference", "kPa", "psi", 0.14503773773, "kPa", "psi"],
	["pressure-difference", "MPa", "psi", 145.03773773, "MPa", "psi"],
	["pressure-difference", "GPa", "psi", 145037.73773, "GPa", "psi"],
	["pressure-difference", "bar", "psi", 14.503773773, "bar", "psi"],
	["pressure-gradient", "kPa/m", "psi/ft", 0.0442075024602, "kPa/m", "psi/ft"],
	["density", "SG", "lb/gal", 8.34540445202, "g/cm^3", "lb/gal"],
	["density", "kg/m³", "lb/gal", 0.00834540445202, "kg/m^3", "lb/gal"],
	["density", "g/cm³", "lb/gal", 8.34540445202, "g/cm^3", "lb/gal"],
	["density", "lb/ft³", "lb/gal", 0.133680555556, "lb/ft^3", "lb/gal"],
	["bulk-density", "kg/m³", "lb/ft³", 0.0624279605761, "kg/m^3", "lb/ft^3"],
	["linear-weight", "kg/m", "lb/ft", 0.67196897514, "kg/m", "lb/ft"],
	["force", "klbf", "lbf", 1000, "1000 lbf", "lbf"],
	["force", "kN", "lbf", 224.8089431, "kN", "lbf"],
	["force", "daN", "lbf", 2.248089431, "daN", "lbf"],
	["torque", "N·m", "ft·lbf", 0.737562149277, "N m", "ft lbf"],
	["torque", "kN·m", "ft·lbf", 737.562149277, "kN m", "ft lbf"],
	["area", "cm²", "in²", 0.155000310001, "cm^2", "in^2"],
	["covariance", "m²", "ft²", 10.7639104167, "m^2", "ft^2"],
	["magnetic-field", "µT", "nT", 1000, "microtesla", "nanotesla"],
	["land-area", "ha", "acre", 2.47105381467, "hectare", "43560 ft^2"],
	["land-area", "ft²", "acre", 2.29568411387e-5, "ft^2", "43560 ft^2"],
	["land-area", "m²", "acre", 0.000247105381467, "m^2", "43560 ft^2"],
	["volume", "gal", "bbl", 0.0238095238095, "gal", "bbl"],
	["volume", "ft³", "bbl", 0.178107606679, "ft^3", "bbl"],
	["volume", "m³", "bbl", 6.28981077043, "m^3", "bbl"],
	["volume", "L", "bbl", 0.00628981077043, "L", "bbl"],
	["capacity", "ft³/ft", "bbl/ft", 0.178107606679, "ft^3/ft", "bbl/ft"],
	["capacity", "L/m", "bbl/ft", 0.00191713432283, "L/m", "bbl/ft"],
	["specific-volume", "L/kg", "gal/lb", 0.119826427317, "L/kg", "gal/lb"],
	["slurry-yield", "L/kg", "ft³/sk", 1.50573555715, "L/kg", "ft^3/(94 lb)"],
	["water-requirement", "L/kg", "gal/sk", 11.2636841678, "L/kg", "gal/(94 lb)"],
	["flow-rate", "gal/min", "bbl/min", 0.0238095238095, "gal/min", "bbl/min"],
	["flow-rate", "m³/min", "bbl/min", 6.28981077043, "m^3/min", "bbl/min"],
	["flow-rate", "L/min", "bbl/min", 0.00628981077043, "L/min", "bbl/min"],
	["duration", "hr", "min", 60, "hour", "min"],
	["duration", "d", "min", 1440, "day", "min"],
	["duration", "s", "min", 0.0166666666667, "s", "min"],
	["temperature", "°C", "°F", 1.8, "degC", "degF"],
	["temperature-difference", "°C", "°F", 1.8, "degC", "degF"],
	["temperature-gradient", "°C/100 m", "°F/100 ft", 0.54864, "degC/(100 m)", "degF/(100 ft)"],
	["temperature-gradient", "°C/km", "°F/100 ft", 0.054864, "degC/km", "degF/(100 ft)"],
	["dogleg", "°/30 m", "°/100 ft", 1.016, "deg/(30 m)", "deg/(100 ft)"],
	["share", "%", "1", 0.01, "0.01", "1"],
	["share-per-temperature", "%/°F", "1/°F", 0.01, "0.01/degF", "1/degF"],
	["share-per-temperature", "%/°C", "1/°F", 0.00555555555556, "0.01/degC", "1/degF"],
	["proppant-concentration", "kg/m³", "lb/gal", 0.00834540445202, "kg/m^3", "lb/gal"],
	["mass", "kg", "lb", 2.20462262185, "kg", "lb"],
	["mass", "t", "lb", 2204.62262185, "tonne", "lb"],
	["mass", "short ton", "lb", 2000, "shortton", "lb"],
	["plastic-viscosity", "mPa·s", "cP", 1, "mPa s", "centipoise"],
	["yield-point", "Pa", "lbf/100 ft²", 2.08854342332, "Pa", "lbf/(100 ft^2)"],
	["additive-rate", "L/m³", "gal/1000 gal", 1, "L/m^3", "gal/(1000 gal)"],
	["gas-fraction", "%", "ppm", 10000, "0.01", "1e-6"],
	["gas-rate", "scf/hr", "scf/d", 24, "ft^3/hr", "ft^3/day"],
	["gas-rate", "MMscf/d", "scf/d", 1000000, "1e6 ft^3/day", "ft^3/day"],
	["dust-concentration", "mg/m³", "µg/m³", 1000, "mg/m^3", "microgram/m^3"],
	["speed", "ft/s", "mph", 0.681818181818, "ft/s", "mile/hour"],
	["speed", "m/s", "mph", 2.23693629205, "m/s", "mile/hour"],
	["speed", "km/h", "mph", 0.621371192237, "km/hour", "mile/hour"],
	["fluid-velocity", "ft/min", "ft/s", 0.0166666666667, "ft/min", "ft/s"],
	["fluid-velocity", "m/s", "ft/s", 3.28083989501, "m/s", "ft/s"],
	["free-fluid", "%", "mL/250 mL", 2.5, "0.01", "mL/(250 mL)"],
	["hydraulic-power", "kW", "hhp", 1.3410220896, "kW", "550 ft lbf/s"],
];

/**
 * Units of which no figure of GNU Units is at hand: one of them in SI.
 *
 * Source: NIST SP 811 (2008), Appendix B.8, to the seven digits printed there; from memory.
 */
export const NIST_UNITS: readonly (readonly [unit: string, si: number, dimensions: readonly Dimension[]])[] =
	[
		[
			"usft",
			0.3048006,
			[
				"length",
				"measured-depth",
				"true-vertical-depth",
				"depth-below-ground",
				"elevation",
				"offset",
				"distance",
			],
		],
		["ksi", 6.894757e6, ["pressure", "pressure-difference"]],
	];

/** GNU Units takes no root of a second; it gives the square of the leakoff unit, m²/s in ft²/min. */
export const GNU_LEAKOFF_SQUARED = 645.834625003;

/** Scales with a zero of their own: `units "tempF(80)" tempC`, and so on. */
export const GNU_TEMPERATURES: readonly (readonly [fahrenheit: number, celsius: number])[] = [
	[80, 26.6666666667],
	[212, 100],
	[32, 0],
	[-40, -40],
	[302, 150],
];
