import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	addedConcentration,
	padFraction,
	padFractionAlternative,
	rampConcentration,
	rampMass,
	rampMeanConcentration,
} from "../../../src/calc/stimulation/schedule.ts";
import { proppantPerSlurry } from "../../../src/calc/stimulation/slurry.ts";
import { given } from "../given.ts";

const volume = (value: number) => given("volume", value);
const efficiency = fc.double({ min: 0.05, max: 0.95, noNaN: true });
const c_end = given("proppant-concentration", 2.6);

const ramp = (η: number, total = 9000) => {
	const ε = padFraction.of({ η: given("share", η) });
	const V_pad = volume(total * ε.value);
	return { c_end, ε, V_pad, V_total: volume(total) };
};

describe("the power-law ramp", () => {
	test("its concentration, summed over the slurry, is its mass", () => {
		fc.assert(
			fc.property(efficiency, (η) => {
				const of = ramp(η);
				const steps = 20_000;
				const [pad, total] = [of.V_pad.value, of.V_total.value];
				let mass = 0;
				for (let i = 0; i < steps; i++) {
					const V = volume(pad + ((total - pad) * (i + 0.5)) / steps);
					mass += (42 * rampConcentration.of({ ...of, V }).value * (total - pad)) / steps;
				}
				const exact = rampMass.of({ c_end, V_total: of.V_total, η: given("share", η) }).value;
				expect(mass / exact).toBeCloseTo(1, 3);
			}),
			{ numRuns: 15 },
		);
	});

	test("steps at their mean concentration bring the same mass, however the ramp is cut", () => {
		fc.assert(
			fc.property(efficiency, fc.array(fc.integer({ min: 1, max: 99 }), { maxLength: 6 }), (η, cuts) => {
				const of = ramp(η);
				const [pad, total] = [of.V_pad.value, of.V_total.value];
				const ends = [0, ...[...new Set(cuts)].sort((a, b) => a - b), 100].map(
					(x) => pad + (x / 100) * (total - pad),
				);
				const mass = ends.slice(1).reduce((sum, end, i) => {
					const from = ends[i] ?? pad;
					const mean = rampMeanConcentration.of({
						...of,
						V_1: volume(from),
						V_2: volume(Math.min(end, total)),
					});
					return sum + 42 * mean.value * (end - from);
				}, 0);
				const exact = rampMass.of({ c_end, V_total: of.V_total, η: given("share", η) }).value;
				expect(mass / exact).toBeCloseTo(1, 9);
			}),
		);
	});

	test("starts at nothing after the pad, ends at the end concentration, and never falls", () => {
		const of = ramp(0.4);
		const at = (V: number) => rampConcentration.of({ ...of, V: volume(V) });
		expect(at(of.V_pad.value)).toMatchObject({ value: 0, from: { branch: "pad" } });
		expect(at(9000).value).toBe(2.6);
		expect(at(9001).value).toBeNaN();
		fc.assert(
			fc.property(fc.double({ min: 0, max: 8900, noNaN: true }), (V) => {
				expect(at(V + 50).value).toBeGreaterThanOrEqual(at(V).value);
			}),
		);
	});

	test("a fluid that loses nothing needs no pad, one that loses nearly all is nearly all pad", () => {
		const pad = (η: number) => padFraction.of({ η: given("share", η) }).value;
		expect(pad(1)).toBe(0);
		expect(pad(0.01)).toBeGreaterThan(0.98);
		expect(pad(0)).toBeNaN();
		expect(padFractionAlternative.of({ η: given("share", 1) }).value).toBeCloseTo(0.05, 12);
		expect(padFractionAlternative.of({ η: given("share", 0.6) }).value).toBeCloseTo(0.21, 12);
		expect(padFractionAlternative.of({ η: given("share", 0) }).value).toBeNaN();
	});

	test("pounds added to clean fluid give back the pounds in slurry", () => {
		fc.assert(
			fc.property(fc.double({ min: 0, max: 12, noNaN: true }), (ppa) => {
				const SG = given("ratio", 2.65);
				const c = proppantPerSlurry.of({ c: given("proppant-concentration", ppa), SG });
				expect(addedConcentration.of({ c, SG }).value).toBeCloseTo(ppa, 9);
			}),
		);
		const solid = given("proppant-concentration", 8.33 * 2.65);
		expect(addedConcentration.of({ c: solid, SG: given("ratio", 2.65) }).value).toBeNaN();
	});
});
