import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	additiveVolume,
	casCheckDigit,
	fluidMass,
	ingredientMass,
	massShare,
} from "../../../src/calc/stimulation/disclosure.ts";
import { totalMass } from "../../../src/calc/stimulation/slurry.ts";
import { casCloses } from "../../../src/definition/cas-number.ts";
import { given } from "../given.ts";

describe("mass shares", () => {
	test("of everything pumped sum to the whole", () => {
		fc.assert(
			fc.property(
				fc.array(fc.double({ min: 1, max: 1e8, noNaN: true }), { minLength: 1, maxLength: 12 }),
				(masses) => {
					const m_i = masses.map((m) => given("mass", m));
					const m_t = totalMass.of({ m_i });
					const sum = m_i.reduce((all, m) => all + massShare.of({ m_i: [m], m_t }).value, 0);
					expect(sum).toBeCloseTo(1, 9);
					expect(massShare.of({ m_i, m_t }).value).toBeCloseTo(1, 9);
				},
			),
		);
	});

	test("a mass is its volume times its density; a metered volume is parts in a thousand", () => {
		const V = additiveVolume.of({ r: given("additive-rate", 0.7), V: given("volume", 10_000) });
		expect(V.value).toBeCloseTo(7, 12);
		expect(fluidMass.of({ V, ρ: given("density", 8.6) }).value).toBeCloseTo(7 * 42 * 8.6, 9);
		expect(ingredientMass.of({ m_a: given("mass", 100), s: given("share", 0.3) }).value).toBe(30);
		expect(ingredientMass.of({ m_a: given("mass", 100), s: given("share", 1.3) }).value).toBeNaN();
		expect(massShare.of({ m_i: [], m_t: given("mass", 0) }).value).toBeNaN();
	});
});

describe("the CAS check digit", () => {
	const digit = fc.integer({ min: 0, max: 9 });

	test("is the one that the definition's check accepts, and no other", () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 1, max: 9 }),
				fc.array(digit, { minLength: 3, maxLength: 8 }),
				(first, rest) => {
					const digits = [first, ...rest];
					const check = casCheckDigit.of({ N_i: digits.map((d) => given("count", d)) }).value;
					const number = (last: number) =>
						`${digits.slice(0, -2).join("")}-${digits.slice(-2).join("")}-${last}`;
					expect(casCloses(number(check))).toBe(true);
					expect(casCloses(number((check + 1) % 10))).toBe(false);
				},
			),
		);
	});

	test("needs four to nine digits, the first not zero", () => {
		const of = (...digits: number[]) => casCheckDigit.of({ N_i: digits.map((d) => given("count", d)) }).value;
		expect(of(1, 2, 3)).toBeNaN();
		expect(of(0, 1, 2, 3)).toBeNaN();
		expect(of(1, 2, 3, 4, 5, 6, 7, 8, 9, 1)).toBeNaN();
	});
});
