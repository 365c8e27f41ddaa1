import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fromCanonical, toCanonical } from "../../src/units/convert.ts";
import { DIMENSIONS, type Dimension } from "../../src/units/dimensions.ts";
import { definitionOf } from "../../src/units/units-of.ts";
import { GNU_LEAKOFF_SQUARED, GNU_TEMPERATURES, GNU_UNITS, NIST_UNITS } from "./gnu-units.ts";

const everyUnit = (Object.keys(DIMENSIONS) as Dimension[]).flatMap((dimension) =>
	definitionOf(dimension).units.map(({ symbol }) => [dimension, symbol] as const),
);
const otherUnits = everyUnit.filter(([dimension, symbol]) => symbol !== definitionOf(dimension).canonical);

/** Either sign and any size that a well could hold; below it doubles lose digits. */
const magnitudes = fc.double({ min: -1e9, max: 1e9, noNaN: true }).filter((value) => Math.abs(value) > 1e-12);

const within = (actual: number, expected: number, relative: number): void =>
	expect(Math.abs(actual / expected - 1)).toBeLessThan(relative);

describe("conversion factors agree with GNU Units", () => {
	it.each(GNU_UNITS)("%s: one %s in %s", (dimension, unit, canonical, factor) => {
		expect(definitionOf(dimension).canonical).toBe(canonical);
		const span = toCanonical(1, dimension, unit) - toCanonical(0, dimension, unit);
		within(span, factor, 1e-11);
	});

	it.each(NIST_UNITS)("%s is %s in SI, as NIST prints it", (symbol, si, dimensions) => {
		const metric = { usft: "m", ksi: "kPa" }[symbol] ?? "";
		const size = symbol === "ksi" ? 1000 : 1;
		for (const dimension of dimensions) {
			const shift = toCanonical(0, dimension, metric);
			within(
				(toCanonical(1, dimension, symbol) - shift) / (toCanonical(1 / size, dimension, metric) - shift),
				si,
				1e-7,
			);
		}
	});

	it("a survey foot is 1200/3937 m to the last bit, and no international foot", () => {
		expect(toCanonical(3937, "length", "usft")).toBeCloseTo(1200 / 0.3048, 9);
		expect(toCanonical(1, "length", "usft")).not.toBe(1);
	});

	it("leakoff, by its square", () => {
		within(toCanonical(1, "leakoff", "m/s^0.5") ** 2, GNU_LEAKOFF_SQUARED, 1e-11);
	});

	it.each(GNU_TEMPERATURES)("%s °F is %s °C", (fahrenheit, celsius) => {
		expect(fromCanonical(fahrenheit, "temperature", "°C")).toBeCloseTo(celsius, 9);
		expect(toCanonical(celsius, "temperature", "°C")).toBeCloseTo(fahrenheit, 9);
	});

	it("no unit is without an outside figure", () => {
		const checked = new Set([
			...GNU_UNITS.map(([dimension, unit]) => `${dimension} ${unit}`),
			...NIST_UNITS.flatMap(([unit, , dimensions]) => dimensions.map((dimension) => `${dimension} ${unit}`)),
			"leakoff m/s^0.5",
		]);
		expect(otherUnits.map((pair) => pair.join(" ")).filter((pair) => !checked.has(pair))).toEqual([]);
		expect(otherUnits.length).toBeGreaterThan(50);
	});
});

describe("a conversion", () => {
	it("leaves a canonical value untouched", () => {
		expect(toCanonical(0.1 + 0.2, "pressure", "psi")).toBe(0.1 + 0.2);
		expect(fromCanonical(459.67, "temperature", "°F")).toBe(459.67);
	});

	it("is exact where the definitions are whole", () => {
		expect(toCanonical(42, "volume", "gal")).toBe(1);
		expect(toCanonical(1, "distance", "mi")).toBe(5280);
		expect(toCanonical(7, "force", "klbf")).toBe(7000);
		expect(toCanonical(12, "duration", "hr")).toBe(720);
		expect(toCanonical(30.48, "length", "m")).toBe(100);
	});

	it("throws on a unit that the dimension does not have", () => {
		expect(() => toCanonical(1, "pressure", "ft")).toThrow(RangeError);
	});

	it.each(everyUnit)("is its own inverse: %s in %s", (dimension, unit) => {
		fc.assert(
			fc.property(magnitudes, (value) => {
				const back = fromCanonical(toCanonical(value, dimension, unit), dimension, unit);
				const scale = dimension === "temperature" ? Math.abs(value) + 500 : Math.abs(value);
				expect(Math.abs(back - value)).toBeLessThanOrEqual(4 * Number.EPSILON * scale);
			}),
		);
	});
});
