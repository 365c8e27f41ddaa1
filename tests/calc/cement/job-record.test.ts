import { describe, expect, test } from "vitest";
import { cementResults } from "../../../src/calc/cement/index.ts";
import { liftOffCalculated } from "../../../src/calc/cement/record.ts";
import { openGaps } from "../../../src/calc/gaps.ts";
import type { CementActual, CementJob } from "../../../src/well/well.ts";
import { hole, job, md, slurry, straightDown, string, well } from "../a-well.ts";
import { given } from "../given.ts";

const PER_FOOT = ((Math.PI / 4) * 12) / (42 * 231);
const RING = PER_FOOT * ((12.25 * 1.05) ** 2 - 9.625 ** 2);

const holes = [
	hole("surface", 17.5, 20, 2015, { mud: 9 }),
	hole("production", 12.25, 2015, 9020, { washout: 0.05, mud: 10 }),
] as const;
const plan = job(
	[
		slurry("lead", 1500, 7000, { excess: 0.2, density: 12.5 }),
		slurry("tail", 7000, 9000, { excess: 0.1, density: 15.8 }),
	],
	{
		spacer: { volume: given("volume", 50), density: given("density", 11) },
		displacement: { density: given("density", 10), rate: given("flow-rate", 6) },
	},
);

const calculate = (cement: CementJob) => {
	const of = well(holes, [
		string("surface", holes[0], 22, [[13.375, 12.615, 2000]]),
		string("production", holes[1], 22, [[9.625, 8.681, 9000]], {
			within: "surface",
			cement,
			shoeTrack: given("length", 80),
		}),
	]);
	const found = cementResults(of, straightDown, {}, openGaps())["production"];
	if (found === undefined) throw new Error("the string is cemented");
	return found;
};
const planned = calculate(plan);
const [lead = Number.NaN, tail = Number.NaN] = planned.slurries.map(({ volume }) => volume.value);

const done = (more: Partial<CementActual>, tailDensity = 15.8, [leadVolume, tailVolume] = [lead, tail]) =>
	calculate({
		...plan,
		actual: {
			pumped: [
				{ fluid: "Lead", volume: given("volume", leadVolume ?? 0), density: given("density", 12.5) },
				{ fluid: "tail", volume: given("volume", tailVolume ?? 0), density: given("density", tailDensity) },
			],
			...more,
		},
	});

describe("a cement top that nobody saw", () => {
	test("is the planned one where the planned volumes were pumped", () => {
		const found = done({});
		expect(found.top_basis).toBe("calculated");
		expect(found.top_method).toBe("calculated");
		expect(found.top.md.value).toBeCloseTo(1500, 6);
		expect(found.record?.slurries.map(({ top_by_volume }) => top_by_volume?.md.value)).toEqual([
			expect.closeTo(1500, 6),
			expect.closeTo(7000, 6),
		]);
		expect(found.final_lift?.value).toBeCloseTo(planned.final_lift?.value ?? Number.NaN, 4);
	});

	test("is lower by what was not pumped, filled from the shoe up with the excess of the plan", () => {
		const found = done({}, 15.8, [lead, tail - 100 * RING * 1.1]);
		expect(found.record?.slurries[1]?.top_by_volume?.md.value).toBeCloseTo(7100, 6);
		expect(found.top.md.value).toBeGreaterThan(1500);
		expect(found.planned_top?.md.value).toBe(1500);
		expect(found.record?.least_of_plan?.value).toBeCloseTo(1 - (100 * RING * 1.1) / tail, 9);
	});

	test("is no higher than the volumes put it, where the record calls it calculated", () => {
		const short: readonly [number, number] = [lead / 2, tail];
		const claimed = done({ top: { depth: md(1500), method: "calculated" } }, 15.8, [...short]);
		expect(claimed.top_basis).toBe("calculated");
		expect(claimed.top.md.value).toBeGreaterThan(3000);
		const logged = done({ top: { depth: md(1500), method: "bond log" } }, 15.8, [...short]);
		expect([logged.top_basis, logged.top.md.value]).toEqual(["recorded", 1500]);
		const lower = done({ top: { depth: md(6000), method: "calculated" } }, 15.8, [...short]);
		expect([lower.top_basis, lower.top.md.value]).toEqual(["recorded", 6000]);
	});

	test("is the shoe where less was pumped than fills the pipe and hole below it", () => {
		expect(done({}, 15.8, [0, 0.1]).top.md.value).toBe(9000);
	});

	test("stays the planned one where the volume of a slurry is not recorded, or a stage tool parts them", () => {
		const one = { pumped: [{ fluid: "tail", volume: given("volume", tail) }] };
		expect(calculate({ ...plan, actual: one }).top_basis).toBe("planned");
		expect(calculate({ ...plan, stageTool: md(7000), actual: one }).top_basis).toBe("planned");
	});
});

describe("the record beside the plan", () => {
	test("weighs each slurry against its design, and lifts by what was weighed", () => {
		const light = done({ top: { depth: md(1500), method: "bond log" } }, 14.8);
		expect(light.record?.greatest_density_off?.value).toBeCloseTo(1, 12);
		// A foot of tail outside the shoe track is lighter by a pound a gallon; inside it is, too.
		const less = 0.052 * (2000 - 80);
		expect(light.final_lift?.value).toBeCloseTo((planned.final_lift?.value ?? 0) - less, 6);
	});

	test("has no least or greatest where a slurry lacks its figure", () => {
		const found = calculate({
			...plan,
			actual: { pumped: [{ fluid: "tail", volume: given("volume", tail) }] },
		});
		expect(found.record?.least_of_plan).toBeUndefined();
		expect(found.record?.greatest_density_off).toBeUndefined();
	});

	test("a lift agrees anywhere between the columns at rest and the final circulating pressure", () => {
		const off = (p: number) => {
			const found = liftOffCalculated.of({
				p: given("pressure", p),
				Δp: given("pressure-difference", 1000),
				p_f: given("pressure", 1400),
			});
			return found.value;
		};
		expect([off(800), off(1000), off(1200), off(1400), off(1750)]).toEqual([0.2, 0, 0, 0, 0.25]);
	});
});
