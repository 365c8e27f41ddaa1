import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	columnPressure,
	equivalentMudWeight,
	HYDROSTATIC_CONSTANT,
	hydrostaticPressure,
	pressureDifference,
	stackedPressure,
	temperatureAtDepth,
} from "../../../src/calc/pressure/hydrostatic.ts";
import { given } from "../given.ts";

const tvd = (value: number) => given("true-vertical-depth", value);
const density = fc.double({ min: 1, max: 22, noNaN: true });
const depth = fc.double({ min: 1, max: 30_000, noNaN: true });

describe("hydrostatic pressure", () => {
	test("the trade's constant is a tenth of a percent above the exact 12/231", () => {
		expect(HYDROSTATIC_CONSTANT / (12 / 231) - 1).toBeCloseTo(0.001, 5);
	});

	test("a column cut in two weighs what it did", () => {
		fc.assert(
			fc.property(density, depth, fc.double({ min: 0, max: 1, noNaN: true }), (rho, deep, part) => {
				const ρ = given("density", rho);
				const cut = tvd(deep * part);
				const p_i = [
					columnPressure.of({ ρ, D_top: tvd(0), D_bottom: cut }),
					columnPressure.of({ ρ, D_top: cut, D_bottom: tvd(deep) }),
				];
				expect(stackedPressure.of({ p_i }).value).toBeCloseTo(
					hydrostaticPressure.of({ ρ, D: tvd(deep) }).value,
					8,
				);
			}),
		);
	});

	test("deeper or heavier is more, and the equivalent gives the density back", () => {
		fc.assert(
			fc.property(density, depth, (rho, deep) => {
				const at = (r: number, D: number) => hydrostaticPressure.of({ ρ: given("density", r), D: tvd(D) });
				expect(at(rho, deep + 1).value).toBeGreaterThan(at(rho, deep).value);
				expect(at(rho + 0.1, deep).value).toBeGreaterThan(at(rho, deep).value);
				expect(equivalentMudWeight.of({ p: at(rho, deep), D: tvd(deep) }).value).toBeCloseTo(rho, 9);
			}),
		);
	});

	test("a fluid in a hole that climbs takes pressure off", () => {
		const ρ = given("density", 10);
		expect(columnPressure.of({ ρ, D_top: tvd(9000), D_bottom: tvd(8900) }).value).toBeCloseTo(-52, 9);
	});

	test("at the datum no density makes a pressure", () => {
		expect(equivalentMudWeight.of({ p: given("pressure", 10), D: tvd(0) }).value).toBeNaN();
	});

	test("a difference keeps its sign", () => {
		const [p_1, p_2] = [given("pressure", 100), given("pressure", 250)];
		expect(pressureDifference.of({ p_1, p_2 }).value).toBe(-150);
	});

	test("at ground level the rock is as warm as the ground", () => {
		const temperature = (D: number) =>
			temperatureAtDepth.of({
				T_s: given("temperature", 72),
				G: given("temperature-gradient", 1.5),
				D: given("depth-below-ground", D),
			}).value;
		expect(temperature(0)).toBe(72);
		expect(temperature(10_000)).toBe(222);
	});
});
