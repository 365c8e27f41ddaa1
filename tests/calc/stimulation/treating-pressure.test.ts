import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	allowedPressure,
	closureStress,
	fracturePressureAtDepth,
	leastPressure,
	perforationCount,
	perforationFriction,
	surfaceTreatingPressure,
} from "../../../src/calc/stimulation/treating-pressure.ts";
import { given } from "../given.ts";

const p = (value: number) => given("pressure", value);

describe("treating pressure", () => {
	const parts = { P_frac: p(6900), P_h: p(3900), ΔP_pipe: p(4000), ΔP_perf: p(500), ΔP_nwb: p(250) };

	test("with the pumps stopped it is what the fracture holds less the column", () => {
		const still = { ...parts, ΔP_pipe: p(0), ΔP_perf: p(0), ΔP_nwb: p(0) };
		expect(surfaceTreatingPressure.of(still).value).toBe(3000);
		expect(surfaceTreatingPressure.of(parts).value).toBe(7750);
	});

	test("a heavier column spares the pumps, friction does not", () => {
		fc.assert(
			fc.property(fc.double({ min: 1, max: 500, noNaN: true }), (more) => {
				const now = surfaceTreatingPressure.of(parts).value;
				expect(surfaceTreatingPressure.of({ ...parts, P_h: p(3900 + more) }).value).toBeLessThan(now);
				expect(surfaceTreatingPressure.of({ ...parts, ΔP_pipe: p(4000 + more) }).value).toBeGreaterThan(now);
			}),
		);
	});

	test("closure is a gradient from the ground, and net pressure stands on it", () => {
		const at = (D: number) =>
			fracturePressureAtDepth.of({
				G_c: given("pressure-gradient", 0.74),
				D: given("depth-below-ground", D),
				P_net: p(350),
			}).value;
		expect(at(0)).toBe(350);
		expect(at(10_000)).toBeCloseTo(7750, 9);
	});

	test("perforations: four times the loss at twice the rate, a quarter with twice the holes, a sixteenth at twice the size", () => {
		const loss = (Q: number, N: number, d: number, C_d = 0.8) =>
			perforationFriction.of({
				Q: given("flow-rate", Q),
				ρ: given("density", 8.4),
				N: given("count", N),
				d: given("diameter", d),
				C_d: given("ratio", C_d),
			}).value;
		const now = loss(40, 24, 0.4);
		expect(loss(80, 24, 0.4) / now).toBeCloseTo(4, 12);
		expect(loss(40, 48, 0.4) / now).toBeCloseTo(1 / 4, 12);
		expect(loss(40, 24, 0.8) / now).toBeCloseTo(1 / 16, 12);
		expect(loss(40, 24, 0.4, 0.6)).toBeGreaterThan(now);
		expect(loss(40, 0, 0.4)).toBeNaN();
		expect(loss(40, 24, 0.4, 1.1)).toBeNaN();
		expect(perforationCount.of({ n_c: given("count", 6), n_s: given("count", 8) }).value).toBe(48);
	});

	test("closure stress: incompressible rock passes the overburden on, rock without grip only its pore pressure", () => {
		const stress = (ν: number, biot = 1) =>
			closureStress.of({
				σ_v: p(9000),
				p: p(4500),
				ν: given("ratio", ν),
				α: given("ratio", biot),
				σ_t: given("pressure-difference", 0),
			}).value;
		expect(stress(0.5)).toBeCloseTo(9000, 9);
		expect(stress(0)).toBeCloseTo(4500, 9);
		expect(stress(0.3)).toBeGreaterThan(stress(0.2));
		expect(stress(0.6)).toBeNaN();
		expect(stress(0.3, 1.2)).toBeNaN();
	});
});

describe("the pressure boundary", () => {
	test("an element sees a part of its rating, never more than the whole", () => {
		const allowed = (f: number) => allowedPressure.of({ P: p(15_000), f: given("ratio", f) }).value;
		expect(allowed(0.9)).toBe(13_500);
		expect(allowed(1)).toBe(15_000);
		expect(allowed(1.1)).toBeNaN();
		expect(allowed(0)).toBeNaN();
	});

	test("the weakest governs, in whatever order they come", () => {
		fc.assert(
			fc.property(
				fc.array(fc.double({ min: 1, max: 20_000, noNaN: true }), { minLength: 1 }),
				(pressures) => {
					const least = leastPressure.of({ P_i: pressures.map(p) }).value;
					expect(least).toBe(leastPressure.of({ P_i: [...pressures].reverse().map(p) }).value);
					expect(pressures.every((each) => each >= least)).toBe(true);
				},
			),
		);
		expect(leastPressure.of({ P_i: [] }).value).toBeNaN();
	});
});
