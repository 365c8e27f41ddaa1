import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { openGaps } from "../../../src/calc/gaps.ts";
import { groundUnderAnInch, peopleForAYear } from "../../../src/calc/logistics/comparisons.ts";
import {
	stagesDuration,
	stagesDurationByCycle,
	totalDuration,
} from "../../../src/calc/logistics/durations.ts";
import { logisticsResults } from "../../../src/calc/logistics/index.ts";
import {
	busiestDay,
	busiestDayOfStages,
	cementMass,
	greatestCount,
	loadsByMass,
	loadsByVolume,
	loadsPerDay,
	oneWayTrips,
	pipeMass,
	totalLoads,
	truckedVolume,
} from "../../../src/calc/logistics/loads.ts";
import type { CasingResults, CementResults, StimulationResults } from "../../../src/calc/results.ts";
import type { Well } from "../../../src/well/well.ts";
import { well } from "../a-well.ts";
import { given } from "../given.ts";

const amount = fc.double({ min: 0, max: 1e8, noNaN: true });
const truck = fc.double({ min: 100, max: 1e5, noNaN: true });
const days = (value: number) => given("duration", value * 1440);

describe("loads", () => {
	test("carry everything, and no truck drives empty", () => {
		fc.assert(
			fc.property(amount, truck, (m, p) => {
				const byMass = loadsByMass.of({ m: given("mass", m), p: given("mass", p) }).value;
				const byVolume = loadsByVolume.of({ V: given("volume", m), V_t: given("volume", p) }).value;
				expect(byMass).toBe(byVolume);
				expect(Number.isInteger(byMass)).toBe(true);
				// A load short by the last bits of the division is not a load more.
				expect(byMass * p).toBeGreaterThanOrEqual(m - 1.1e-9 * Math.max(p, m));
				expect((byMass - 1) * p).toBeLessThan(m + 1e-6);
			}),
		);
		expect(loadsByMass.of({ m: given("mass", 10), p: given("mass", 0) }).value).toBeNaN();
		expect(Object.is(loadsByMass.of({ m: given("mass", 0), p: given("mass", 10) }).value, 0)).toBe(true);
	});

	test("a pipeline spares its share of the trucks", () => {
		const V = given("volume", 1000);
		expect(truckedVolume.of({ V, s: given("share", 0.8) }).value).toBeCloseTo(200, 9);
		expect(truckedVolume.of({ V, s: given("share", 1) }).value).toBe(0);
		expect(truckedVolume.of({ V, s: given("share", 1.1) }).value).toBeNaN();
	});

	test("each load is two trips", () => {
		fc.assert(
			fc.property(fc.array(fc.integer({ min: 0, max: 5000 })), (loads) => {
				const n = totalLoads.of({ n_i: loads.map((l) => given("count", l)) });
				expect(oneWayTrips.of({ n }).value).toBe(2 * loads.reduce((sum, l) => sum + l, 0));
			}),
		);
		expect(loadsPerDay.of({ n: given("count", 90), t: days(30) }).value).toBe(3);
		expect(loadsPerDay.of({ n: given("count", 90), t: days(0) }).value).toBeNaN();
	});

	test("a sack of cement is 94 lb; pipe is what its strings are", () => {
		expect(cementMass.of({ n_i: [given("count", 10), given("count", 5)] }).value).toBe(15 * 94);
		expect(pipeMass.of({ m_i: [given("mass", 10), given("mass", 5)] }).value).toBe(15);
	});
});

describe("the busiest day", () => {
	const n = (value: number) => given("count", value);
	test("is all of it in a phase of a day, and never less than the average", () => {
		expect(busiestDay.of({ n: n(40), t: days(0.5) }).value).toBe(40);
		expect(busiestDay.of({ n: n(41), t: days(4) }).value).toBe(11);
		expect(busiestDay.of({ n: n(41), t: days(0) }).value).toBeNaN();
		expect(greatestCount.of({ n_i: [n(3), n(7)] }).value).toBe(7);
		expect(greatestCount.of({ n_i: [] }).value).toBeNaN();
	});
	test("begins whole stages, and no more than there are", () => {
		expect(busiestDayOfStages.of({ n: n(60), N: n(10), r: n(2.5) }).value).toBe(18);
		expect(busiestDayOfStages.of({ n: n(60), N: n(2), r: n(5) }).value).toBe(60);
		expect(busiestDayOfStages.of({ n: n(60), N: n(10), r: n(0) }).value).toBeNaN();
	});
});

describe("comparisons", () => {
	test("a person at home for a year uses 365 days of 82 gal", () => {
		const V = given("volume", (365 * 82) / 42);
		expect(peopleForAYear.of({ V }).value).toBeCloseTo(1, 12);
		expect(groundUnderAnInch.of({ V: given("volume", 0) }).value).toBe(0);
	});
});

describe("durations", () => {
	test("phases follow one another", () => {
		expect(totalDuration.of({ t_i: [days(2), days(3)] }).value).toBe(5 * 1440);
	});

	test("stages at a pace, and the same by a cycle that makes that pace", () => {
		const N = given("count", 39);
		expect(stagesDuration.of({ N, r: given("count", 2.5) }).value / 1440).toBeCloseTo(15.6, 12);
		expect(stagesDuration.of({ N, r: given("count", 0) }).value).toBeNaN();
		const cycle = (hours: number, e: number) =>
			stagesDurationByCycle.of({
				N,
				t_p: given("duration", 516),
				t_s: given("duration", 60),
				h: given("duration", hours * 60),
				e: given("share", e),
			}).value / 1440;
		expect(cycle(24, 1)).toBeCloseTo(15.6, 9);
		expect(cycle(12, 1)).toBeCloseTo(31.2, 9);
		expect(cycle(24, 0.5)).toBeCloseTo(31.2, 9);
		expect(cycle(25, 1)).toBeNaN();
		expect(cycle(24, 0)).toBeNaN();
	});
});

describe("a well's loads", () => {
	const before = {
		casing: { only: { pipe_mass: given("mass", 100_000) } as CasingResults },
		cement: { only: { sacks: given("count", 1000) } as CementResults },
		stimulation: {
			water_volume: given("volume", 12_000),
			proppant_mass: given("mass", 480_000),
			stage_count: given("count", 10),
		} as StimulationResults,
	};
	const trucks = {
		water_truck: given("volume", 120),
		water_by_pipeline: given("share", 0.5),
		sand_truck: given("mass", 48_000),
		cement_truck: given("mass", 46_000),
		pipe_truck: given("mass", 46_000),
		other_loads: given("count", 20),
	};
	const results = (more: object, of: Partial<typeof before> = before) => {
		const gaps = openGaps();
		const found = logisticsResults(
			well([], [], more as Partial<Well>),
			{ casing: {}, cement: {}, ...of },
			gaps,
		);
		return { found, gaps: gaps.undetermined };
	};

	test("by what is carried, and in all", () => {
		const { found, gaps } = results({ logistics: trucks });
		expect(gaps).toEqual([]);
		expect(
			[found?.water_loads, found?.proppant_loads, found?.cement_loads, found?.pipe_loads].map(
				(n) => n?.value,
			),
		).toEqual([50, 10, 3, 3]);
		expect(found?.total_loads?.value).toBe(86);
		expect(found?.one_way_trips?.value).toBe(172);
	});

	test("one truck unknown, and there is no total, only what is known", () => {
		const { sand_truck: _, ...without } = trucks;
		const { found, gaps } = results({ logistics: without });
		expect(found).not.toHaveProperty("total_loads");
		expect(found?.water_loads?.value).toBe(50);
		expect(gaps.map((g) => g.key)).toEqual(["logistics.proppant_loads"]);
	});

	test("a well that is not stimulated hauls neither water nor sand for it", () => {
		const { stimulation: _, ...drilled } = before;
		const { found, gaps } = results({ logistics: trucks }, drilled);
		expect(found?.total_loads?.value).toBe(26);
		expect(gaps).toEqual([]);
	});

	test("days run from low to high, one value standing for all three", () => {
		const schedule = [
			{ phase: "drilling", days: [days(16), days(19), days(26)] },
			{ phase: "stimulation", days: [days(4)], stages_per_day: given("count", 2.5) },
		];
		const { found } = results({ schedule, logistics: trucks });
		expect(
			[found?.duration?.low, found?.duration?.base, found?.duration?.high].map((t) => (t?.value ?? 0) / 1440),
		).toEqual([20, 23, 30]);
		expect((found?.stimulation_days?.value ?? 0) / 1440).toBe(4);
		expect(found?.loads_per_day?.value).toBeCloseTo(86 / 23, 9);
	});

	test("each phase brings its own, and the phases sum to the whole", () => {
		const schedule = [
			{ phase: "drilling", days: [days(16), days(19), days(26)] },
			{ phase: "stimulation", days: [days(4), days(5), days(8)], stages_per_day: given("count", 2.5) },
			{ phase: "flowback", days: [days(10)] },
		];
		const equipment = [
			{ phase: "drilling", loads: given("count", 30) },
			{ phase: "stimulation", loads: given("count", 4) },
			{ phase: "stimulation", loads: given("count", 5) },
		];
		const stimulation = {
			...before.stimulation,
			returned: { low: given("volume", 1200), high: given("volume", 3600) },
		} as StimulationResults;
		const { found } = results(
			{ schedule, logistics: { ...trucks, equipment, returned_water_by_pipeline: given("share", 0.5) } },
			{ ...before, stimulation },
		);
		expect(
			found?.by_phase.map((phase) => [
				phase.id,
				phase.loads.value,
				phase.one_way_trips.value,
				phase.busiest_day?.value,
			]),
		).toEqual([
			// 3 of pipe, 3 of cement, 30 of equipment, over 16 days at the shortest.
			["drilling", 36, 72, 3],
			// 50 of water and 10 of sand for 10 stages, 3 stages begun in a day: 18; all 69 over 4 days: 17.25.
			["stimulation", 69, 138, 18],
			// Half of 3,600 bbl in loads of 120.
			["flowback", 15, 30, 2],
			["no-one-phase", 20, 40, undefined],
		]);
		expect(found?.by_phase[1]).toMatchObject({
			water: { value: 50 },
			sand: { value: 10 },
			equipment: { value: 9 },
		});
		expect(found?.by_phase[1]?.loads_per_day?.value).toBeCloseTo(69 / 5, 9);
		expect(found?.by_phase.reduce((sum, { loads }) => sum + loads.value, 0)).toBe(found?.total_loads?.value);
	});

	test("strings run in a phase of their own bring their pipe in it", () => {
		const schedule = [
			{ phase: "drilling", days: [days(16)] },
			{ phase: "casing and cementing", days: [days(3)] },
		];
		const { found } = results({ schedule, logistics: trucks });
		expect(found?.by_phase.find(({ pipe }) => pipe !== undefined)?.id).toBe("casing-and-cementing");
	});

	test("nothing is said where nothing is given", () => {
		expect(results({}).found).toBeUndefined();
	});
});
