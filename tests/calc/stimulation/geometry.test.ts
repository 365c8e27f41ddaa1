import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	fractureHeight,
	heightGrowth,
	netPressureForHeight,
	payHeight,
} from "../../../src/calc/stimulation/fracture-height.ts";
import { kgdGrowth, kgdLength, kgdPressure, kgdWidth } from "../../../src/calc/stimulation/kgd.ts";
import { carterBracket, carterEfficiency, carterHalfLength } from "../../../src/calc/stimulation/leakoff.ts";
import {
	pknGrowthConstantRate,
	pknGrowthFallingRate,
	pknLengthConstantRate,
	pknLengthFallingRate,
	pknPressureConstantRate,
	pknPressureFallingRate,
	pknWidthConstantRate,
	pknWidthFallingRate,
} from "../../../src/calc/stimulation/pkn.ts";
import {
	planeStrainModulus,
	planeStrainModulusFromShear,
} from "../../../src/calc/stimulation/plane-strain.ts";
import { radialRadius, radialWidth } from "../../../src/calc/stimulation/radial.ts";
import { given } from "../given.ts";

/** 9702 in³ a barrel, 1728 in³ a cubic foot. */
const CUBIC_FEET = 9702 / 1728;

const injection = fc.record({
	q: fc.double({ min: 1, max: 60, noNaN: true }).map((v) => given("flow-rate", v)),
	μ: fc.double({ min: 1, max: 300, noNaN: true }).map((v) => given("plastic-viscosity", v)),
	"E'": fc.double({ min: 5e5, max: 8e6, noNaN: true }).map((v) => given("pressure", v)),
	h: fc.double({ min: 20, max: 400, noNaN: true }).map((v) => given("length", v)),
	t: fc.double({ min: 1, max: 300, noNaN: true }).map((v) => given("duration", v)),
});

describe("simple fractures without leakoff hold what is pumped into them", () => {
	test("PKN, either solution", () => {
		fc.assert(
			fc.property(injection, (of) => {
				const pumped = of.q.value * CUBIC_FEET * of.t.value;
				for (const [length, width] of [
					[pknLengthConstantRate, pknWidthConstantRate],
					[pknLengthFallingRate, pknWidthFallingRate],
				] as const) {
					const x_f = length.of(of);
					const mean = width.of({ q: of.q, μ: of.μ, "E'": of["E'"], x_f }).value / 12;
					expect((mean * of.h.value * x_f.value) / pumped).toBeCloseTo(1, 2);
				}
			}),
		);
	});

	test("KGD", () => {
		fc.assert(
			fc.property(injection, (of) => {
				const x_f = kgdLength.of(of);
				const mean = kgdWidth.of({ q: of.q, μ: of.μ, "E'": of["E'"], x_f, h: of.h }).value / 12;
				expect((mean * of.h.value * x_f.value) / (of.q.value * CUBIC_FEET * of.t.value)).toBeCloseTo(1, 2);
				// the greatest width is 4/π of the mean of an ellipse
				expect((mean * 12 * 4) / Math.PI / kgdGrowth.of(of).value).toBeCloseTo(1, 2);
			}),
		);
	});

	test("radial: half a disk into each wing, its mean width 8/15 of the greatest (w_0 √(1 − r/R))", () => {
		fc.assert(
			fc.property(injection, ({ q, μ, "E'": E, t }) => {
				const of = { q, μ, "E'": E, t };
				const [R, w] = [radialRadius.of(of).value, radialWidth.of(of).value / 12];
				expect(((Math.PI / 2) * R ** 2 * (8 / 15) * w) / (q.value * CUBIC_FEET * t.value)).toBeCloseTo(1, 2);
			}),
		);
	});

	test("PKN's greatest width is the one its length asks for, and opens under its net pressure", () => {
		fc.assert(
			fc.property(injection, (of) => {
				for (const [length, mean, growth, pressure, share] of [
					[
						pknLengthConstantRate,
						pknWidthConstantRate,
						pknGrowthConstantRate,
						pknPressureConstantRate,
						0.628,
					],
					[pknLengthFallingRate, pknWidthFallingRate, pknGrowthFallingRate, pknPressureFallingRate, 0.589],
				] as const) {
					const greatest = mean.of({ q: of.q, μ: of.μ, "E'": of["E'"], x_f: length.of(of) }).value / share;
					expect(greatest / growth.of(of).value).toBeCloseTo(1, 2);
					// w = 2 h p / E'
					const opened = (24 * of.h.value * pressure.of(of).value) / of["E'"].value;
					expect(opened / growth.of(of).value).toBeCloseTo(1, 2);
				}
			}),
		);
	});

	test("KGD's net pressure opens its width: w = 4 x_f p / E'", () => {
		fc.assert(
			fc.property(injection, (of) => {
				const p = kgdPressure.of({ μ: of.μ, "E'": of["E'"], t: of.t }).value;
				const opened = (48 * kgdLength.of(of).value * p) / of["E'"].value;
				expect(opened / kgdGrowth.of(of).value).toBeCloseTo(1, 2);
			}),
		);
		const of = { μ: given("plastic-viscosity", 1), "E'": given("pressure", 1e6) };
		expect(kgdPressure.of({ ...of, t: given("duration", 0) }).value).toBeNaN();
	});
});

describe("the plane-strain modulus", () => {
	test("is the same from Young's modulus and from the shear modulus, G = E / 2(1 + ν)", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 1e5, max: 1e7, noNaN: true }),
				fc.double({ min: 0, max: 0.49, noNaN: true }),
				(E, nu) => {
					const ν = given("ratio", nu);
					const fromShear = planeStrainModulusFromShear.of({
						G: given("pressure", E / (2 * (1 + nu))),
						ν,
					}).value;
					expect(planeStrainModulus.of({ E: given("pressure", E), ν }).value / fromShear).toBeCloseTo(1, 12);
				},
			),
		);
		expect(planeStrainModulus.of({ E: given("pressure", 1e6), ν: given("ratio", 0.6) }).value).toBeNaN();
	});
});

describe("leakoff after Carter", () => {
	const of = (C: number, t = 60, S = 0) => ({
		q: given("flow-rate", 20),
		h: given("length", 100),
		w: given("length", 0.02),
		C: given("leakoff", C),
		S: given("length", S),
		t: given("duration", t),
	});

	test("with almost none, the fracture holds everything", () => {
		expect(carterEfficiency.of(of(1e-7)).value).toBeCloseTo(1, 3);
		expect(carterHalfLength.of(of(1e-7)).value / ((20 * CUBIC_FEET * 60) / (0.02 * 100))).toBeCloseTo(1, 3);
	});

	test("spurt is lost through both faces: the fluid makes w + 2S", () => {
		const exact = (20 * CUBIC_FEET * 60) / ((0.02 + 2 * 0.005) * 100);
		expect(carterHalfLength.of(of(1e-7, 60, 0.005)).value / exact).toBeCloseTo(1, 3);
	});

	test("with much, length grows as the root of time: q √t / (π C h)", () => {
		const exact = (20 * CUBIC_FEET * Math.sqrt(6000)) / (Math.PI * 0.05 * 100);
		expect(carterHalfLength.of(of(0.05, 6000)).value / exact).toBeCloseTo(1, 2);
	});

	test("leakier rock, or spurt, makes it shorter", () => {
		fc.assert(
			fc.property(fc.double({ min: 1e-4, max: 0.02, noNaN: true }), (C) => {
				expect(carterHalfLength.of(of(C * 1.1)).value).toBeLessThan(carterHalfLength.of(of(C)).value);
				expect(carterHalfLength.of(of(C, 60, 0.01)).value).toBeLessThan(carterHalfLength.of(of(C)).value);
				const η = carterEfficiency.of(of(C)).value;
				expect(η).toBeGreaterThan(0);
				expect(η).toBeLessThan(1);
			}),
		);
		expect(carterHalfLength.of(of(0)).value).toBeNaN();
	});

	test("its bracket joins where series and fraction meet, and keeps its digits near nothing", () => {
		expect(carterBracket(2.4999999) / carterBracket(2.5000001)).toBeCloseTo(1, 6);
		// e^(x²) erfc x + 2x/√π − 1 begins with x² − 4x³/(3√π) + x⁴/2
		const x = 1e-4;
		expect(carterBracket(x) / (x ** 2 - (4 * x ** 3) / (3 * Math.sqrt(Math.PI)) + x ** 4 / 2)).toBeCloseTo(
			1,
			8,
		);
		// tables: erfc 1 = 0.157299207
		expect(carterBracket(1)).toBeCloseTo(Math.E * 0.157299207 + 2 / Math.sqrt(Math.PI) - 1, 8);
		// tables: e^9 erfc 3 = 0.179001151
		expect(carterBracket(3)).toBeCloseTo(0.179001151 + 6 / Math.sqrt(Math.PI) - 1, 8);
	});
});

describe("illustrative height", () => {
	const height = (net: number) =>
		fractureHeight.of({
			h_pay: given("length", 160),
			p_net: given("pressure", net),
			Δσ: given("pressure", 900),
		});

	test("without net pressure is the pay; it grows with it, and has no bound at the contrast", () => {
		expect(height(0).value).toBe(160);
		expect(height(500).value).toBeGreaterThan(height(400).value);
		expect(height(900).value).toBeNaN();
		expect(height(-1).value).toBeNaN();
	});

	test("asks for the net pressure that made it", () => {
		fc.assert(
			fc.property(fc.double({ min: 0, max: 890, noNaN: true }), (net) => {
				const p = netPressureForHeight.of({
					h_pay: given("length", 160),
					h: height(net),
					Δσ: given("pressure", 900),
				});
				expect(p.value).toBeCloseTo(net, 4);
			}),
		);
		const short = { h_pay: given("length", 160), h: given("length", 100), Δσ: given("pressure", 900) };
		expect(netPressureForHeight.of(short).value).toBeNaN();
	});

	test("grows alike above and below", () => {
		const h_pay = payHeight.of({
			TVD_top: given("true-vertical-depth", 8850),
			TVD_base: given("true-vertical-depth", 9010),
		});
		expect(h_pay.value).toBe(160);
		expect(heightGrowth.of({ h: given("length", 200), h_pay }).value).toBe(20);
		const upsideDown = {
			TVD_top: given("true-vertical-depth", 10),
			TVD_base: given("true-vertical-depth", 9),
		};
		expect(payHeight.of(upsideDown).value).toBeNaN();
	});
});
