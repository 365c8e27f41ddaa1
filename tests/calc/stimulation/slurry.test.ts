import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	cleanPerSlurry,
	cleanRate,
	countOf,
	proppantMass,
	proppantPerMinute,
	proppantPerSlurry,
	pumpingTime,
	sharedVolume,
	slurryDensity,
	slurryPerClean,
	slurryVolume,
	totalMass,
	totalTime,
	volumeLess,
} from "../../../src/calc/stimulation/slurry.ts";
import { given } from "../given.ts";

const volume = (value: number) => given("volume", value);
const concentration = fc.double({ min: 0, max: 14, noNaN: true });
const gravity = fc.double({ min: 1.05, max: 3.7, noNaN: true });
const clean = fc.double({ min: 0.1, max: 20_000, noNaN: true });
const fluid = fc.double({ min: 8, max: 11, noNaN: true });

const loaded = (c: number, SG: number) => ({ c: given("proppant-concentration", c), SG: given("ratio", SG) });

describe("a proppant slurry", () => {
	test("weighs what went into it: fluid and proppant, to a part in a thousand million", () => {
		fc.assert(
			fc.property(concentration, gravity, clean, fluid, (c, SG, V, rho) => {
				const of = loaded(c, SG);
				const V_c = volume(V);
				const density = slurryDensity.of({ ρ_f: given("density", rho), ...of }).value;
				const weighed = 42 * slurryVolume.of({ V_c, ...of }).value * density;
				const poured = 42 * V * rho + proppantMass.of({ V_c, c: of.c }).value;
				expect(Math.abs(weighed - poured) / poured).toBeLessThan(1e-9);
			}),
		);
	});

	test("is clean fluid where there is no proppant", () => {
		fc.assert(
			fc.property(gravity, clean, fluid, (SG, V, rho) => {
				const of = loaded(0, SG);
				expect(slurryVolume.of({ V_c: volume(V), ...of }).value).toBe(V);
				expect(slurryDensity.of({ ρ_f: given("density", rho), ...of }).value).toBe(rho);
				expect(proppantMass.of({ V_c: volume(V), c: of.c }).value).toBe(0);
			}),
		);
	});

	test("takes more room and less fluid the more proppant is in it", () => {
		fc.assert(
			fc.property(concentration, gravity, (c, SG) => {
				const [now, more] = [loaded(c, SG), loaded(c + 0.25, SG)];
				expect(slurryPerClean.of(more).value).toBeGreaterThan(slurryPerClean.of(now).value);
				expect(proppantPerSlurry.of(more).value).toBeGreaterThan(proppantPerSlurry.of(now).value);
				expect(slurryPerClean.of(now).value * cleanPerSlurry.of(now).value).toBeCloseTo(1, 12);
			}),
		);
	});

	test("at a rate for its time brings the step's proppant", () => {
		fc.assert(
			fc.property(
				concentration,
				gravity,
				clean,
				fc.double({ min: 1, max: 120, noNaN: true }),
				(c, SG, V, rate) => {
					const of = loaded(c, SG);
					const [V_c, Q] = [volume(V), given("flow-rate", rate)];
					const minutes = pumpingTime.of({ V_s: slurryVolume.of({ V_c, ...of }), Q }).value;
					const Q_c = cleanRate.of({ Q, ...of });
					const mass = proppantMass.of({ V_c, c: of.c }).value;
					expect(Q_c.value * minutes).toBeCloseTo(V, 6);
					expect(Math.abs(proppantPerMinute.of({ Q_c, c: of.c }).value * minutes - mass)).toBeLessThan(
						1e-6 * (1 + mass),
					);
				},
			),
		);
	});

	test("sums, shares and remainders", () => {
		expect(totalMass.of({ m_i: [] }).value).toBe(0);
		expect(totalMass.of({ m_i: [given("mass", 2), given("mass", 3)] }).value).toBe(5);
		expect(totalTime.of({ t_i: [given("duration", 2), given("duration", 3)] }).value).toBe(5);
		expect(volumeLess.of({ V: volume(10), V_i: [volume(2), volume(3)] }).value).toBe(5);
		expect(sharedVolume.of({ V: volume(10), s: given("share", 0.4) }).value).toBe(4);
		expect(sharedVolume.of({ V: volume(10), s: given("share", 1.4) }).value).toBeNaN();
		expect(countOf.of({ number: [given("count", 1), given("count", 2)] }).value).toBe(2);
		expect(pumpingTime.of({ V_s: volume(10), Q: given("flow-rate", 0) }).value).toBeNaN();
	});
});
