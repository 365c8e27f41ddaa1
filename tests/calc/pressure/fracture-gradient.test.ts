import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	eatonFractureGradient,
	hubbertWillisMaximum,
	hubbertWillisMinimum,
	matrixStressGradient,
	matthewsKellyFractureGradient,
} from "../../../src/calc/pressure/fracture-gradient.ts";
import { pressureWindow } from "../../../src/calc/pressure/window.ts";
import { given } from "../given.ts";

const g = (value: number) => given("pressure-gradient", value);
const ratio = (value: number) => given("ratio", value);
const pore = fc.double({ min: 0, max: 0.99, noNaN: true });

describe("fracture gradients", () => {
	test("Hubbert and Willis are Eaton's form with ν of a quarter and a third, under 1 psi/ft", () => {
		fc.assert(
			fc.property(pore, (P) => {
				const eaton = (ν: number) => eatonFractureGradient.of({ S: g(1), P: g(P), ν: ratio(ν) }).value;
				expect(hubbertWillisMinimum.of({ P: g(P) }).value).toBeCloseTo(eaton(1 / 4), 12);
				expect(hubbertWillisMaximum.of({ P: g(P) }).value).toBeCloseTo(eaton(1 / 3), 12);
			}),
		);
	});

	test("Eaton and Matthews and Kelly agree where K_i is ν/(1 − ν)", () => {
		fc.assert(
			fc.property(pore, fc.double({ min: 0, max: 0.5, noNaN: true }), (P, ν) => {
				const K_i = ratio(ν / (1 - ν));
				expect(matthewsKellyFractureGradient.of({ K_i, S: g(1), P: g(P) }).value).toBeCloseTo(
					eatonFractureGradient.of({ S: g(1), P: g(P), ν: ratio(ν) }).value,
					12,
				);
			}),
		);
	});

	test("incompressible rock fractures at the overburden, rock without grip at the pore pressure", () => {
		expect(eatonFractureGradient.of({ S: g(1), P: g(0.465), ν: ratio(0.5) }).value).toBeCloseTo(1, 12);
		expect(eatonFractureGradient.of({ S: g(1), P: g(0.465), ν: ratio(0) }).value).toBeCloseTo(0.465, 12);
		expect(matrixStressGradient.of({ S: g(1), P: g(1) }).value).toBe(0);
	});

	test("every one lies between pore pressure and overburden, and rises with pore pressure", () => {
		fc.assert(
			fc.property(pore, fc.double({ min: 0.05, max: 0.45, noNaN: true }), (P, ν) => {
				const F = (p: number) => eatonFractureGradient.of({ S: g(1), P: g(p), ν: ratio(ν) }).value;
				expect(F(P)).toBeGreaterThan(P);
				expect(F(P)).toBeLessThan(1);
				expect(F(P + 0.005)).toBeGreaterThan(F(P));
				expect(hubbertWillisMinimum.of({ P: g(P) }).value).toBeLessThan(
					hubbertWillisMaximum.of({ P: g(P) }).value,
				);
			}),
		);
	});

	test("pore pressure above the overburden is refused", () => {
		expect(eatonFractureGradient.of({ S: g(0.9), P: g(0.95), ν: ratio(0.3) }).value).toBeNaN();
		expect(matrixStressGradient.of({ S: g(0.9), P: g(0.95) }).value).toBeNaN();
		expect(hubbertWillisMinimum.of({ P: g(1.1) }).value).toBeNaN();
		expect(eatonFractureGradient.of({ S: g(1), P: g(0.4), ν: ratio(0.6) }).value).toBeNaN();
	});

	test("the window counts from the ground, with a step at each change of rock", () => {
		const tvd = (value: number) => given("true-vertical-depth", value);
		const { rows } = pressureWindow.of({
			D_top: [tvd(20), tvd(1020)],
			D_base: [tvd(1020), tvd(5020)],
			ρ_p: [given("density", 8.5), given("density", 10)],
			F: [g(0.8), g(0.7)],
			a: given("length", 20),
		});
		expect(rows.map((r) => [r.tvd, Math.round(r.pore), Math.round(r.fracture)])).toEqual([
			[20, 0, 0],
			[1020, 442, 800],
			[1020, 520, 700],
			[5020, 2600, 3500],
		]);
	});
});
