import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pressureProfile, profileAt, uniformPressure } from "../../../src/calc/casing/loads/profiles.ts";
import {
	bumpPressure,
	creepingProfile,
	packedProfile,
	pressureAtDepth,
} from "../../../src/calc/casing/loads/stepped-profiles.ts";
import type { KnownTable } from "../../../src/cite/known.ts";
import { given } from "../given.ts";

const column = (ppg: number, surface = 0) =>
	pressureProfile.of({
		p_0: given("pressure", surface),
		D_0: given("true-vertical-depth", 0),
		g: [given("pressure-gradient", 0.052 * ppg)],
		D_bottom: [given("true-vertical-depth", 10_000)],
	});
const tvd = (value: number) => given("true-vertical-depth", value);
const at = (profile: KnownTable, depth: number) => profileAt(profile, "pressure", depth);

describe("a packer parts the pressures", () => {
	const packed = packedProfile.of({ above: column(10, 3000), below: column(2, 3000), D_packer: tvd(9000) });

	test("the column above it, the rock's below it, at every depth", () => {
		fc.assert(
			fc.property(fc.double({ min: 0, max: 12_000, noNaN: true }), (depth) => {
				if (Math.abs(depth - 9000) < 0.02) return;
				expect(at(packed, depth)).toBeCloseTo(3000 + 0.052 * (depth < 9000 ? 10 : 2) * depth, 6);
			}),
		);
	});

	test("the same on both sides is no packer at all", () => {
		const same = packedProfile.of({ above: column(9), below: column(9), D_packer: tvd(5000) });
		for (const depth of [0, 4999, 5000, 5000.005, 5001, 9000])
			expect(at(same, depth)).toBeCloseTo(0.468 * depth, 6);
	});
});

describe("rock that creeps", () => {
	const salt = (g: number) =>
		creepingProfile.of({
			fluid: column(10),
			top: [tvd(5000), tvd(7000)],
			base: [tvd(5500), tvd(7100)],
			g: given("pressure-gradient", g),
			h: given("length", 20),
		});

	test("presses with its overburden from ground level where it lies, and fluid does elsewhere", () => {
		const profile = salt(1);
		expect(at(profile, 4999)).toBeCloseTo(0.52 * 4999, 6);
		expect(at(profile, 5001)).toBeCloseTo(4981, 6);
		expect(at(profile, 5500)).toBeCloseTo(5480, 6);
		expect(at(profile, 5501)).toBeCloseTo(0.52 * 5501, 6);
		expect(at(profile, 7100)).toBeCloseTo(7080, 6);
		expect(at(profile, 9000)).toBeCloseTo(0.52 * 9000, 6);
	});

	test("no lighter than the fluid", () => {
		for (const depth of [4000, 5250, 7050, 8000]) expect(at(salt(0.1), depth)).toBeCloseTo(0.52 * depth, 6);
	});
});

describe("pressures read and made", () => {
	test("a profile is read straight between its rows", () => {
		expect(pressureAtDepth.of({ profile: column(10, 100), D: tvd(5000) }).value).toBeCloseTo(2700, 9);
		expect(uniformPressure.of({ p: given("pressure", 7) }).rows).toEqual([{ tvd: 0, pressure: 7 }]);
	});

	test("a plug is bumped at the lift and what is held over it; cement lighter than the displacement lifts nothing", () => {
		const bump = (out: number, inside: number) =>
			bumpPressure.of({
				p_o: given("pressure", out),
				p_i: given("pressure", inside),
				over: given("pressure", 1000),
			}).value;
		expect([bump(6000, 4500), bump(4000, 4500)]).toEqual([2500, 1000]);
	});
});
