import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	contactTime,
	exactSacks,
	mixWater,
	pumpedOverCalculated,
	pumpStrokes,
	sacks,
	totalSacks,
} from "../../../src/calc/cement/sacks.ts";
import { given } from "../given.ts";

describe("sacks", () => {
	test("never fewer than the volume needs, never one too many", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 0, max: 5000, noNaN: true }),
				fc.double({ min: 0.8, max: 4, noNaN: true }),
				(volume, y) => {
					const n = exactSacks.of({ V: given("volume", volume), y: given("slurry-yield", y) });
					const whole = sacks.of({ n }).value;
					expect(whole).toBeGreaterThanOrEqual(n.value - 1e-5);
					expect(whole - n.value).toBeLessThan(1);
					expect(Number.isInteger(whole)).toBe(true);
					// 9702 in³ a barrel, 1728 in³ a cubic foot
					expect(n.value * y).toBeCloseTo((volume * 9702) / 1728, 6);
				},
			),
		);
	});

	test("a whole count that arithmetic left a hair above itself stays", () => {
		expect(sacks.of({ n: given("ratio", 147.00000000001) }).value).toBe(147);
		expect(sacks.of({ n: given("ratio", 147.001) }).value).toBe(148);
		expect(sacks.of({ n: given("ratio", 0) }).value).toBe(0);
	});

	test("a hundred sacks at 4.2 gal take ten barrels of 42 gal", () => {
		expect(mixWater.of({ n: given("count", 100), w: given("water-requirement", 4.2) }).value).toBeCloseTo(
			10,
			12,
		);
	});

	test("ten strokes of a tenth of a barrel pump a barrel; no output is no count", () => {
		const V = given("volume", 1);
		expect(pumpStrokes.of({ V, V_s: given("volume", 0.1) }).value).toBe(10);
		expect(pumpStrokes.of({ V: given("volume", 176.7), V_s: given("volume", 0.0997) }).value).toBe(1772);
		expect(pumpStrokes.of({ V, V_s: given("volume", 0) }).value).toBeNaN();
	});

	test("totals, ratios and times", () => {
		expect(totalSacks.of({ n_i: [given("count", 495), given("count", 295)] }).value).toBe(790);
		const V = given("volume", 200);
		expect(pumpedOverCalculated.of({ V_pumped: V, V }).value).toBe(1);
		expect(pumpedOverCalculated.of({ V_pumped: V, V: given("volume", 0) }).value).toBeNaN();
		expect(contactTime.of({ V: given("volume", 60), Q: given("flow-rate", 6) }).value).toBe(10);
		expect(contactTime.of({ V: given("volume", 60), Q: given("flow-rate", 0) }).value).toBeNaN();
		expect(exactSacks.of({ V, y: given("slurry-yield", 0) }).value).toBeNaN();
	});
});
