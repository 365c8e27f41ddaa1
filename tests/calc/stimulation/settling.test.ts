import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { hinderedSettlingVelocity, settlingVelocity } from "../../../src/calc/stimulation/settling.ts";
import { given } from "../given.ts";

const falling = (d: number, SG_p = 2.65, μ = 1) =>
	settlingVelocity.of({
		d: given("diameter", d),
		SG_p: given("ratio", SG_p),
		SG_f: given("ratio", 1),
		μ: given("plastic-viscosity", μ),
	}).value;

describe("a settling grain", () => {
	test("small enough, falls by Stokes' law: g d² Δρ / 18 μ", () => {
		const d = 0.0004;
		const metres = d * 0.0254;
		const stokes = (9.80665 * metres ** 2 * 1650) / (18 * 1e-3) / 0.3048;
		expect(falling(d) / stokes).toBeCloseTo(1, 2);
	});

	test("coarser or heavier falls faster, thicker fluid holds it up", () => {
		fc.assert(
			fc.property(fc.double({ min: 0.002, max: 0.03, noNaN: true }), (d) => {
				expect(falling(d * 1.1)).toBeGreaterThan(falling(d));
				expect(falling(d, 2.9)).toBeGreaterThan(falling(d));
				expect(falling(d, 2.65, 1.5)).toBeLessThan(falling(d));
			}),
		);
	});

	test("a grain that floats, or one too coarse for the law, is not told", () => {
		expect(falling(0.01, 0.9)).toBeNaN();
		expect(falling(0.5)).toBeNaN();
	});

	test("among many grains falls slower", () => {
		const v = given("fluid-velocity", 0.1);
		const among = (φ: number) => hinderedSettlingVelocity.of({ v, φ: given("share", φ) }).value;
		expect(among(0)).toBe(0.1);
		expect(among(0.1)).toBeCloseTo(0.1 * 0.9 ** 5, 12);
		expect(among(0.6)).toBeNaN();
	});
});
