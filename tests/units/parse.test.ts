import { describe, expect, it } from "vitest";
import { DIMENSIONS, type Dimension } from "../../src/units/dimensions.ts";
import { parseQuantity } from "../../src/units/parse.ts";
import { unitKey } from "../../src/units/units-of.ts";

const dimensions = Object.keys(DIMENSIONS) as Dimension[];

describe("parseQuantity takes", () => {
	const cases: [string, Dimension, number, string][] = [
		["9 5/8 in", "diameter", 9.625, "in"],
		['9-5/8"', "diameter", 9.625, "in"],
		["9.625”", "diameter", 9.625, "in"],
		["9.625''", "diameter", 9.625, "in"],
		["7 5/8in", "diameter", 7.625, "in"],
		["9⅝ in", "diameter", 9.625, "in"],
		["9 ⅝ in", "diameter", 9.625, "in"],
		["9-⅝″", "diameter", 9.625, "in"],
		["9 5⁄8 in", "diameter", 9.625, "in"],
		["½ in", "diameter", 0.5, "in"],
		["1/2 in", "diameter", 0.5, "in"],
		["8 in.", "diameter", 8, "in"],
		["9 ⁵⁄₈ in", "diameter", 9.625, "in"],
		["9⁵⁄₈ in", "diameter", 9.625, "in"],
		["9 5 / 8 in", "diameter", 9.625, "in"],
		["30 mins", "duration", 30, "min"],
		["10 deg/100'", "dogleg", 10, "°/100 ft"],
		["80 degrees F", "temperature", 80, "°F"],
		["13 3/8 IN", "diameter", 13.375, "in"],
		["8750 ft", "length", 8750, "ft"],
		["8750ft", "length", 8750, "ft"],
		["8750'", "length", 8750, "ft"],
		["8750\u00a0ft", "length", 8750, "ft"],
		["8750\u2009ft", "length", 8750, "ft"],
		["8750\u202fFt", "length", 8750, "ft"],
		["54.5 lb/ft", "linear-weight", 54.5, "lb/ft"],
		["54.5 lb per ft", "linear-weight", 54.5, "lb/ft"],
		["54.5 #/ft", "linear-weight", 54.5, "lb/ft"],
		["10 deg/100 ft", "dogleg", 10, "°/100 ft"],
		["10 deg/100ft", "dogleg", 10, "°/100 ft"],
		["10°/100 ft", "dogleg", 10, "°/100 ft"],
		["10 deg per 100 ft", "dogleg", 10, "°/100 ft"],
		["4.2e6 psi", "pressure", 4.2e6, "psi"],
		["8.8 PPG", "density", 8.8, "lb/gal"],
		["8.8 #/gal", "density", 8.8, "lb/gal"],
		["\u2212120 ft", "offset", -120, "ft"],
		["-120 ft", "offset", -120, "ft"],
		["+120 ft", "offset", 120, "ft"],
		["80 °F", "temperature", 80, "°F"],
		["80 deg F", "temperature", 80, "°F"],
		["80 F", "temperature", 80, "°F"],
		["0.0008 ft/min^0.5", "leakoff", 0.0008, "ft/min^0.5"],
		["11 lbf/100ft2", "yield-point", 11, "lbf/100 ft²"],
		["11 lb/100 ft²", "yield-point", 11, "lbf/100 ft²"],
		["3 mL/250 mL", "free-fluid", 3, "mL/250 mL"],
		["0.7 gal/1000gal", "additive-rate", 0.7, "gal/1000 gal"],
		["10 % LEL", "explosive-limit", 10, "% LEL"],
		["2 short tons", "mass", 4000, "short ton"],
		["3 1/°F", "share-per-temperature", 3, "1/°F"],
		["1.32 cu ft/sk", "slurry-yield", 1.32, "ft³/sk"],
		["39", "count", 39, "1"],
		["1.125", "ratio", 1.125, "1"],
		["-0 ft", "length", 0, "ft"],
	];
	it.each(cases)("%s as %s", (text, dimension, value, unit) => {
		expect(parseQuantity(text, dimension)).toEqual({ ok: true, value, unit });
	});

	it("other units, converted", () => {
		const value = (text: string, dimension: Dimension): number => {
			const read = parseQuantity(text, dimension);
			return read.ok ? read.value : Number.NaN;
		};
		expect(value(".5 %", "share")).toBeCloseTo(0.005, 15);
		expect(value("0.3 fraction", "share")).toBe(0.3);
		expect(value("244.475 mm", "diameter")).toBeCloseTo(9.625, 12);
		expect(value("3 deg/30 m", "dogleg")).toBeCloseTo(3.048, 12);
		expect(value("35 MPa", "pressure")).toBeCloseTo(5076.32, 2);
		expect(value("1.62 SG", "density")).toBeCloseTo(13.51956, 5);
		expect(value("25 °C", "temperature")).toBeCloseTo(77, 10);
		expect(value("12 hr", "duration")).toBe(720);
	});
});

describe("parseQuantity refuses", () => {
	const cases: [string, Dimension, string, string, string?][] = [
		["3,250 ft", "length", "comma", "3,250 ft", "3250 ft"],
		["17,260.5 ft", "length", "comma", "17,260.5 ft", "17260.5 ft"],
		["1,250,000 psi", "pressure", "comma", "1,250,000 psi", "1250000 psi"],
		["8,5 in", "diameter", "comma", "8,5 in", "8.5 in"],
		["8750", "length", "no-unit", "8750"],
		["9 5/8", "diameter", "no-unit", "9 5/8"],
		["0.3", "share", "no-unit", "0.3"],
		["1 200 ft", "length", "digit-space", "1 200 ft", "1200 ft"],
		["1_200 ft", "length", "digit-space", "1_200 ft", "1200 ft"],
		["1'200 ft", "length", "digit-space", "1'200 ft", "1200 ft"],
		["3.250,5 ft", "length", "comma", "3.250,5 ft", "3250.5 ft"],
		["4300-4500 psi", "pressure", "several-numbers", "4300-4500 psi"],
		["4300 to 4500 psi", "pressure", "several-numbers", "4300 to 4500 psi"],
		["4300 psi ± 50", "pressure", "several-numbers", "4300 psi ± 50"],
		["8900 psi 9000 psi", "pressure", "several-numbers", "8900 psi 9000 psi"],
		["23 lb/ft nominal", "linear-weight", "words-after-unit", "nominal", "23 lb/ft"],
		["1 200", "count", "digit-space", "1 200", "1200"],
		["95/8 in", "diameter", "improper-fraction", "95/8 in", "9 5/8 in"],
		["133/8 in", "diameter", "improper-fraction", "133/8 in", "13 3/8 in"],
		["35 mpa", "pressure", "letter-case", "mpa", "35 MPa"],
		["35 mPa", "pressure", "letter-case", "mPa", "35 MPa"],
		["14 MPa.s", "plastic-viscosity", "letter-case", "MPa.s", "14 mPa·s"],
		["300 M", "length", "letter-case", "M", "300 m"],
		["8750 ft TVD", "length", "words-after-unit", "TVD", "8750 ft"],
		["8750 psi", "length", "unknown-unit", "psi"],
		["5 ft 6 in", "length", "several-numbers", "5 ft 6 in"],
		["39 stages", "count", "unknown-unit", "stages", "39"],
		["1.125 ft", "ratio", "unknown-unit", "ft", "1.125"],
		["10/100 ft", "length", "not-a-number", "10/100 ft"],
		["1/0 in", "diameter", "not-a-number", "1/0 in"],
		["1.2.3 ft", "length", "not-a-number", "1.2.3 ft"],
		["10-20 ft", "length", "several-numbers", "10-20 ft"],
		["10–20 ft", "length", "several-numbers", "10-20 ft"],
		["~1200 ft", "length", "not-a-number", "~1200 ft"],
		["NaN", "count", "not-a-number", "NaN"],
		["NaN ft", "length", "not-a-number", "NaN ft"],
		["", "length", "not-a-number", ""],
		["ft", "length", "not-a-number", "ft"],
		["1e999 ft", "length", "not-finite", "1e999 ft"],
		["1e308 klbf", "force", "not-finite", "1e308 klbf"],
		["Infinity", "count", "not-finite", "Infinity"],
		[".inf", "count", "not-finite", ".inf"],
		["-5 ft", "length", "negative", "-5 ft"],
		["-39", "count", "negative", "-39"],
		["0x10 ft", "length", "unknown-unit", "x10 ft"],
	];
	it.each(cases)("%s as %s: %s", (text, dimension, reason, found, cure) => {
		expect(parseQuantity(text, dimension)).toMatchObject({
			ok: false,
			reason,
			found,
		});
		const read = parseQuantity(text, dimension);
		expect(read.ok ? undefined : read.cure).toBe(cure);
	});

	it("a comma that may mark decimals, with both readings", () => {
		expect(parseQuantity("9,625 in", "diameter")).toMatchObject({ cure: "9625 in", alternative: "9.625 in" });
		expect(parseQuantity("17,260.5 ft", "length")).not.toHaveProperty("alternative");
		expect(parseQuantity("8,5 in", "diameter")).not.toHaveProperty("alternative");
	});

	it("and names the units it could be", () => {
		expect(parseQuantity("8.4", "density")).toMatchObject({
			accepted: ["lb/gal", "SG", "kg/m³", "g/cm³", "lb/ft³"],
		});
		expect(parseQuantity("30", "share")).toMatchObject({
			accepted: ["%", "fraction"],
		});
		expect(parseQuantity("many", "count")).toMatchObject({ accepted: [] });
	});
});

describe("every dimension", () => {
	it.each(dimensions)("%s: its example is understood", (dimension) => {
		const { example } = DIMENSIONS[dimension];
		const bare = example.replace(/ (TVD|below ground)$/, "");
		expect(parseQuantity(bare, dimension)).toMatchObject({ ok: true });
	});

	it.each(dimensions)("%s: no spelling means two units", (dimension) => {
		const seen = new Map<string, string>();
		const units: readonly { symbol: string; spellings?: readonly string[] }[] = DIMENSIONS[dimension].units;
		for (const { symbol, spellings = [] } of units) {
			for (const word of [symbol, ...spellings]) {
				const key = unitKey(word).toLowerCase();
				expect(seen.get(key) ?? symbol, word).toBe(symbol);
				seen.set(key, symbol);
			}
		}
		expect(seen.size).toBeGreaterThan(0);
	});

	it.each(dimensions)("%s: its canonical, field and metric units are units of it", (dimension) => {
		const { units, canonical, field, metric } = DIMENSIONS[dimension];
		const symbols: string[] = units.map((unit) => unit.symbol);
		expect(symbols).toContain(canonical);
		for (const { unit } of [field, metric]) if (unit !== "") expect(symbols).toContain(unit);
	});
});
