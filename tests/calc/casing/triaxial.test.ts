import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	ballooningForce,
	bendingForce,
	bendingStress,
	bumpForce,
	buoyancyFactor,
	endForce,
	shockForce,
	temperatureForce,
	totalWeight,
	weightInAir,
} from "../../../src/calc/casing/axial.ts";
import { yieldCollapse } from "../../../src/calc/casing/collapse.ts";
import { bodyArea } from "../../../src/calc/casing/pipe-body.ts";
import {
	greatestTriaxialStress,
	hoopStress,
	radialStress,
	vonMisesStress,
} from "../../../src/calc/casing/triaxial.ts";
import { given } from "../given.ts";

const D = given("diameter", 5.5);
const t = given("diameter", 0.415);
const psi = (value: number) => given("pressure", value);
const force = (value: number) => given("force", value);
const bend = (value: number) => given("dogleg", value);
const area = bodyArea.of({ D, t }).value;
const stress = (p_i: number, p_o: number, F: number, DLS = 0) =>
	greatestTriaxialStress.of({ D, t, p_i: psi(p_i), p_o: psi(p_o), F: force(F), DLS: bend(DLS) });

describe("triaxial stress", () => {
	test("tension alone is its own stress", () => {
		fc.assert(
			fc.property(fc.double({ min: 1, max: 900_000, noNaN: true }), (F) => {
				expect(stress(0, 0, F).value).toBeCloseTo(F / area, 6);
				expect(stress(0, 0, -F).value).toBeCloseTo(F / area, 6);
			}),
		);
	});

	test("the same pressure all round, with the force it makes, is no stress at all", () => {
		expect(stress(8000, 8000, -8000 * area).value).toBeCloseTo(0, 6);
	});

	test("bending alone is the bending stress of the outer wall", () => {
		const bent = stress(0, 0, 0, 10);
		expect(bent.value).toBeCloseTo(bendingStress.of({ D, DLS: bend(10) }).value, 6);
		expect(bent.from).toMatchObject({ branch: "outer wall" });
	});

	test("pressure inside works hardest at the inner wall", () => {
		expect(stress(10_000, 0, 0).from).toMatchObject({ branch: "inner wall" });
	});

	test("hoop and radial stress sum to the same everywhere, and meet the pressures at the walls", () => {
		const at = (r: number) => {
			const given_ = { D, t, p_i: psi(9000), p_o: psi(2000), r: given("diameter", r) };
			return { radial: radialStress.of(given_).value, hoop: hoopStress.of(given_).value };
		};
		const [inner, outer] = [at(2.335), at(2.75)];
		expect(inner.radial).toBeCloseTo(-9000, 6);
		expect(outer.radial).toBeCloseTo(-2000, 6);
		expect(inner.radial + inner.hoop).toBeCloseTo(outer.radial + outer.hoop, 6);
		expect(at(3).hoop).toBeNaN();
	});

	test("a thin ring's hoop stress is the boiler formula's", () => {
		const [wide, thin] = [given("diameter", 100), given("diameter", 0.05)];
		const hoop = hoopStress.of({
			D: wide,
			t: thin,
			p_i: psi(100),
			p_o: psi(0),
			r: given("diameter", 50),
		}).value;
		expect(hoop / ((100 * 99.9) / (2 * 0.05))).toBeCloseTo(1, 2);
	});

	test("pressure outside to yield at the inner wall is API's yield strength collapse", () => {
		const Y_p = psi(80_000);
		const p = yieldCollapse.of({ D, t, Y_p }).value;
		const hoop = hoopStress.of({ D, t, p_i: psi(0), p_o: psi(p), r: given("diameter", 2.335) }).value;
		expect(hoop).toBeCloseTo(-80_000, 6);
	});

	test("von Mises: equal stresses give none, one stress gives itself, pure shear gives √3 times it", () => {
		const of = (σ_r: number, σ_θ: number, σ_z: number) =>
			vonMisesStress.of({
				σ_r: given("pressure-difference", σ_r),
				σ_θ: given("pressure-difference", σ_θ),
				σ_z: given("pressure-difference", σ_z),
			}).value;
		expect(of(-700, -700, -700)).toBe(0);
		expect(of(0, 0, -700)).toBe(700);
		expect(of(-700, 700, 0)).toBeCloseTo(700 * Math.sqrt(3), 9);
	});
});

describe("what an axial load is made of", () => {
	test("weights add, by the vertical", () => {
		const F = weightInAir.of({ w: given("linear-weight", 23), ΔTVD: given("offset", 1000) });
		expect(totalWeight.of({ F: [F, F] }).value).toBe(46_000);
		expect(weightInAir.of({ w: given("linear-weight", 23), ΔTVD: given("offset", 0) }).value).toBe(0);
	});

	test("pressure on the end and the weight of the steel make the buoyed weight", () => {
		const [depth, ρ] = [10_000, 12];
		const p = psi(0.052 * ρ * depth);
		const steel = (490 / 144) * area * depth;
		const hung = steel + endForce.of({ D, t, p_i: p, p_o: p }).value;
		const buoyed = steel * buoyancyFactor.of({ ρ: given("density", ρ) }).value;
		expect(hung / buoyed).toBeCloseTo(1, 2);
	});

	test("steel in its own weight of mud weighs nothing", () => {
		expect(buoyancyFactor.of({ ρ: given("density", 65.5) }).value).toBe(0);
	});

	test("the bend's force is its stress on the whole section, either way the hole turns", () => {
		const σ = bendingStress.of({ D, DLS: bend(10) }).value;
		expect(σ).toBeCloseTo(218.17 * 5.5 * 10, 0);
		expect(bendingForce.of({ D, t, DLS: bend(10) }).value).toBeCloseTo(σ * area, 6);
		expect(bendingForce.of({ D, t, DLS: bend(-10) }).value).toBeCloseTo(σ * area, 6);
	});

	test("a stopped string is shocked as √(E ρ) of steel says", () => {
		const perFoot = shockForce.of({ v: given("fluid-velocity", 1), D, t }).value / area;
		const wave = Math.sqrt(30e6 * (490 / (32.174 * 1728 * 12))) * 12;
		expect(perFoot / wave).toBeCloseTo(1, 2);
	});

	test("a landed plug hangs its pressure on the bore", () => {
		expect(bumpForce.of({ D, t, P: psi(1000) }).value).toBeCloseTo((Math.PI / 4) * 4.67 ** 2 * 1000, 6);
	});

	test("ballooning pulls with pressure inside, pushes with pressure outside, and is nothing without a change", () => {
		const change = (i: number, o: number) =>
			ballooningForce.of({
				D,
				t,
				Δp_i: given("pressure-difference", i),
				Δp_o: given("pressure-difference", o),
			}).value;
		expect(change(0, 0)).toBe(0);
		expect(change(1000, 0)).toBeCloseTo(0.56 * (Math.PI / 4) * 4.67 ** 2 * 1000, 6);
		expect(change(0, 1000)).toBeLessThan(0);
	});

	test("cooling pulls 207 psi per °F", () => {
		const degF = (value: number) => given("temperature", value);
		expect(temperatureForce.of({ D, t, T_1: degF(200), T_2: degF(100) }).value).toBeCloseTo(20_700 * area, 6);
		expect(temperatureForce.of({ D, t, T_1: degF(100), T_2: degF(100) }).value).toBeCloseTo(0, 12);
	});
});
