import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	absoluteVolume,
	additiveMass,
	densityFromYield,
	slurryDensity,
	slurryVolumePerSack,
	slurryYield,
	waterForDensity,
	waterFromShare,
} from "../../../src/calc/cement/slurry-design.ts";
import { given } from "../given.ts";

const solid = fc.record({
	mass: fc.double({ min: 0.1, max: 60, noNaN: true }),
	gravity: fc.double({ min: 1.02, max: 5.2, noNaN: true }),
});
const blend = fc.array(solid, { maxLength: 5 }).map((solids) => {
	const all = [{ mass: 94, gravity: 3.14 }, ...solids];
	return {
		m_i: all.map(({ mass }) => given("mass", mass)),
		V_i: all.map(({ gravity }) => absoluteVolume.of({ SG: given("ratio", gravity) })),
	};
});
const water = fc.double({ min: 3, max: 15, noNaN: true });

describe("slurry by absolute volume", () => {
	test("what goes in comes out: density times volume is the mass of a sack, its additives and its water", () => {
		fc.assert(
			fc.property(blend, water, (of, gallons) => {
				const w = given("water-requirement", gallons);
				const mass = of.m_i.reduce((sum, m) => sum + m.value, 8.33 * gallons);
				const volume = slurryVolumePerSack.of({ ...of, w }).value;
				const weighed = slurryDensity.of({ ...of, w }).value * volume;
				expect(Math.abs(weighed - mass) / mass).toBeLessThan(1e-9);
				// 231 in³ a gallon, 1728 in³ a cubic foot
				expect(slurryYield.of({ ...of, w }).value).toBeCloseTo((volume * 231) / 1728, 9);
			}),
		);
	});

	test("water for a density gives back that density", () => {
		fc.assert(
			fc.property(blend, water, (of, gallons) => {
				const ρ = slurryDensity.of({ ...of, w: given("water-requirement", gallons) });
				expect(waterForDensity.of({ ...of, ρ }).value).toBeCloseTo(gallons, 6);
			}),
		);
	});

	test("more water makes a lighter slurry and more of it", () => {
		fc.assert(
			fc.property(blend, water, fc.double({ min: 0.1, max: 3, noNaN: true }), (of, gallons, more) => {
				const at = (w: number) => ({ ...of, w: given("water-requirement", w) });
				expect(slurryDensity.of(at(gallons + more)).value).toBeLessThan(slurryDensity.of(at(gallons)).value);
				expect(slurryYield.of(at(gallons + more)).value).toBeGreaterThan(slurryYield.of(at(gallons)).value);
			}),
		);
	});

	test("a neat slurry's yield and water imply its density", () => {
		const of = { m_i: [given("mass", 94)], V_i: [absoluteVolume.of({ SG: given("ratio", 3.14) })] };
		fc.assert(
			fc.property(water, (gallons) => {
				const w = given("water-requirement", gallons);
				const y = slurryYield.of({ ...of, w });
				expect(densityFromYield.of({ y, w }).value).toBeCloseTo(slurryDensity.of({ ...of, w }).value, 9);
			}),
		);
	});

	test("outside their validity they give nothing", () => {
		const one = { m_i: [given("mass", 94)], V_i: [] };
		expect(slurryDensity.of({ ...one, w: given("water-requirement", 5) }).value).toBeNaN();
		expect(absoluteVolume.of({ SG: given("ratio", 0) }).value).toBeNaN();
		const neat = { m_i: [given("mass", 94)], V_i: [given("specific-volume", 0.0382)] };
		expect(waterForDensity.of({ ...neat, ρ: given("density", 8.0) }).value).toBeNaN();
		expect(waterForDensity.of({ ...neat, ρ: given("density", 30) }).value).toBeNaN();
	});

	test("a share by weight of cement is of one sack of 94 lb", () => {
		expect(additiveMass.of({ s: given("share", 0.35) }).value).toBeCloseTo(32.9, 12);
		expect(waterFromShare.of({ s: given("share", 0.38) }).value * 8.33).toBeCloseTo(94 * 0.38, 9);
	});
});
