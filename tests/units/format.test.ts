import { describe, expect, it } from "vitest";
import type { Dimension } from "../../src/units/dimensions.ts";
import { formatQuantity, printedUnit, type QuantityStyle, quantityString } from "../../src/units/format.ts";

const show = (
	dimension: Dimension,
	value: number,
	style: QuantityStyle = {},
	system: "field" | "metric" = "field",
) => quantityString({ dimension, value, style }, system).replaceAll("\u00a0", "_").replaceAll("\u2212", "–");

describe("quantityString", () => {
	it.each<[string, Dimension, number, QuantityStyle]>([
		["10,000_psi", "pressure", 10000, {}],
		["1,250,000_psi", "pressure", 1.25e6, {}],
		["999_psi", "pressure", 999, {}],
		["9.625_in", "diameter", 9.625, {}],
		["9⅝_in", "diameter", 9.625, { pipeSize: true }],
		["13⅜_in", "diameter", 13.375, { pipeSize: true }],
		["5½_in", "diameter", 5.5, { pipeSize: true }],
		["20_in", "diameter", 20, { pipeSize: true }],
		["½_in", "diameter", 0.5, { pipeSize: true }],
		["2_1/16_in", "diameter", 2.0625, { pipeSize: true }],
		["5/16_in", "diameter", 0.3125, { pipeSize: true }],
		["0.415_in", "diameter", 0.415, { pipeSize: true }],
		["9⅝", "diameter", 9.625, { pipeSize: true, bare: true }],
		["–120_ft", "offset", -120, {}],
		["+120_ft", "offset", 120, { sign: true }],
		["120_ft", "offset", -120, { unsigned: true }],
		["0_ft", "offset", 0, { sign: true }],
		["0_ft", "offset", -0.4, {}],
		["0_ft", "offset", -0, { sign: true }],
		["0.0_ft", "offset", -0.04, { decimals: 1 }],
		["1,185_ft", "measured-depth", 1185, { sign: true }],
		["1,200_ft", "length", 1185, { significant: 2 }],
		["100_ft", "length", 99.96, { significant: 3 }],
		["10.0_ft", "length", 9.995, { significant: 3 }],
		["0.0012_ft", "length", 0.00123, { significant: 2 }],
		["0_ft", "length", 0, { significant: 2 }],
		["4,460_psi", "pressure", 4455, { nearest: 10 }],
		["4,450_psi", "pressure", 4454.999, { nearest: 10 }],
		["8.70_lb/gal", "density", 8.72, { nearest: 0.1 }],
		["1.01_lb/gal", "density", 1.005, {}],
		["0.30_lb/gal", "density", 0.1 + 0.2, {}],
		["2.675_lb/gal", "density", 2.675, { decimals: 3 }],
		["2.68_lb/gal", "density", 2.675, {}],
		["158.00°", "angle", 158, {}],
		["80_°F", "temperature", 80, {}],
		["10.00°/100_ft", "dogleg", 10, {}],
		["30.0_%", "share", 0.3, {}],
		["0.3_fraction", "share", 0.3, { unit: "1", decimals: 1 }],
		["39", "count", 39, {}],
		["1.125", "ratio", 1.125, { decimals: 3 }],
		["12.0_hr", "duration", 720, { unit: "hr", decimals: 1 }],
		["11,667,600_gal", "volume", 277800, { unit: "gal" }],
		["8,000", "length", 8000, { bare: true }],
	])("%s", (expected, dimension, value, style) => {
		expect(show(dimension, value, style)).toBe(expected);
	});

	it.each<[string, Dimension, number, QuantityStyle]>([
		["244.5_mm", "diameter", 9.625, {}],
		["244.5_mm", "diameter", 9.625, { pipeSize: true }],
		["361.2_m", "measured-depth", 1185, {}],
		["29.65_MPa", "pressure", 4300, { decimals: 0 }],
		["30.72_MPa", "pressure", 4455, { nearest: 10 }],
		["28.00_MPa", "pressure", 28e6 / 6894.757293168361, { nearest: 10 }],
		["4,300_psi", "pressure", 4300, { unit: "psi" }],
		["1,054_kg/m³", "density", 8.8, { decimals: 1 }],
		["9.84°/30_m", "dogleg", 10, {}],
		["27_°C", "temperature", 80, {}],
		["39", "count", 39, {}],
	])("metric: %s", (expected, dimension, value, style) => {
		expect(show(dimension, value, style, "metric")).toBe(expected);
	});

	it("refuses to print what is not a number", () => {
		for (const value of [Number.NaN, Number.POSITIVE_INFINITY])
			expect(() => formatQuantity({ dimension: "pressure", value }, "field")).toThrow(RangeError);
	});

	it("names the unit of a table's column", () => {
		expect(printedUnit("pressure", "field")).toBe("psi");
		expect(printedUnit("pressure", "metric", { bare: true })).toBe("MPa");
		expect(printedUnit("count", "field")).toBe("");
	});
});
