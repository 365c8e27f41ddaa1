import { describe, expect, test } from "vitest";
import {
	blendDensity,
	blendOff,
	brineDensity,
	brineDensityOfSolids,
} from "../../../src/calc/stimulation/brine.ts";
import { given } from "../given.ts";

const ppg = (value: number) => given("density", value);
const share = (value: number) => given("share", value);

describe("salt water", () => {
	test("one water is its own blend, halves lie in the middle", () => {
		expect(blendDensity.of({ s_i: [share(0.4)], ρ_i: [ppg(9)] }).value).toBeCloseTo(9, 12);
		const half = blendDensity.of({ s_i: [share(0.5), share(0.5)], ρ_i: [ppg(8.4), ppg(9.4)] });
		expect(half.value).toBeCloseTo(8.9, 12);
		expect(blendOff.of({ ρ_f: ppg(8.4), ρ_b: half }).value).toBeCloseTo(0.5, 12);
		expect(blendDensity.of({ s_i: [], ρ_i: [] }).value).toBeNaN();
	});

	test("both ways to a density meet, and water with no salt is fresh", () => {
		const fresh = brineDensity.of({ S: share(0) }).value;
		expect(fresh).toBeCloseTo(8.337, 3);
		expect(brineDensityOfSolids.of({ C: given("dissolved-solids", 0) }).value).toBeCloseTo(fresh, 12);
		const ρ = brineDensity.of({ S: share(0.1) }).value;
		const C = given("dissolved-solids", 0.1 * ρ * 7.4805 * 16_018.46);
		expect(brineDensityOfSolids.of({ C }).value).toBeCloseTo(ρ, 9);
		expect(brineDensity.of({ S: share(0.3) }).value).toBeNaN();
	});
});
