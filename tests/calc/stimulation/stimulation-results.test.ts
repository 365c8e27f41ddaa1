import { describe, expect, test } from "vitest";
import type { Stimulation, Well } from "../../../src/well/well.ts";
import { toldPlainly } from "../../told.ts";
import { string } from "../a-well.ts";
import { given } from "../given.ts";
import { only, PER_FOOT, planned, pumped, results, stage } from "./a-stimulation.ts";

describe("a planned stimulation", () => {
	const { found, gaps } = results(planned());
	const [one, two] = found?.stages ?? [];

	test("wants nothing but the shares of what is withheld", () => {
		expect(gaps).toEqual([]);
		expect(found?.disclosure?.additives[1]?.ingredients.map((i) => i.share !== undefined)).toEqual([
			true,
			false,
		]);
	});

	test("flushes the casing, section by section, to the uppermost cluster", () => {
		const to = (depth: number) => PER_FOOT * ((4000 - 22) * 6.094 ** 2 + (depth - 4000) * 4.67 ** 2);
		expect(one?.flush_volume?.value).toBeCloseTo(to(8810), 8);
		expect(two?.flush_volume?.value).toBeCloseTo(to(8610), 8);
		expect(one?.steps.at(-1)?.clean_volume.value).toBe(one?.flush_volume?.value);
	});

	test("a stage is the sum of its steps, the well the sum of its stages", () => {
		for (const each of found?.stages ?? []) {
			const sum = (of: (s: (typeof each.steps)[number]) => number) =>
				each.steps.reduce((all, s) => all + of(s), 0);
			expect(each.clean_volume.value).toBeCloseTo(
				sum((s) => s.clean_volume.value),
				9,
			);
			expect(each.slurry_volume.value).toBeCloseTo(
				sum((s) => s.slurry_volume.value),
				9,
			);
			expect(each.proppant_mass.value).toBeCloseTo(
				sum((s) => s.proppant_mass.value),
				6,
			);
			expect(each.pumping_time.value).toBeCloseTo(
				sum((s) => s.time.value),
				9,
			);
		}
		const stages = (of: (s: NonNullable<typeof one>) => number) =>
			(found?.stages ?? []).reduce((all, s) => all + of(s), 0);
		expect(found?.clean_volume.value).toBeCloseTo(
			stages((s) => s.clean_volume.value),
			9,
		);
		expect(found?.proppant_mass.value).toBeCloseTo(2 * 42 * (1000 + 1600), 6);
		expect(found?.stage_count.value).toBe(2);
	});

	test("water is what is clean and not acid, and its sources are all of it", () => {
		expect(found?.neat_volumes).toMatchObject([{ id: "acid", volume: { value: 40 } }]);
		expect(found?.water_volume.value).toBeCloseTo((found?.clean_volume.value ?? 0) - 40, 9);
		const sources = found?.water_by_source.reduce((sum, s) => sum + s.volume.value, 0);
		expect(sources).toBeCloseTo(found?.water_volume.value ?? 0, 9);
		expect(found?.recycled_water_volume?.value).toBeCloseTo(0.3 * (found?.water_volume.value ?? 0), 9);
	});

	test("opens from the deepest to the shallowest cluster", () => {
		expect(found?.bottom_perforation.md.value).toBe(8890);
		expect(found?.top_perforation.md.value).toBe(8610);
		expect(one?.perforations?.value).toBe(24);
	});

	test("the weakest element limits it, the casing by its least yield and its test by its pressure", () => {
		expect(found?.boundary.map((b) => [b.id, b.allowed.value])).toEqual([
			["treating-iron", 13_500],
			["casing", 9600],
			["casing-test", 9000],
		]);
		expect(found?.limiting).toMatchObject({ element: "casing test", allowed: { value: 9000 } });
	});

	test("pressure is made of its parts, and the deeper stage needs more", () => {
		const p = one?.pressure;
		if (p === undefined) throw new Error("no pressure");
		const parts = p.fracturing.value - p.hydrostatic.value + p.pipe_friction.value + p.near_wellbore.value;
		expect(p.fracturing.value).toBeCloseTo(0.7 * (8810 - 20) + 300, 8);
		expect(p.hydrostatic.value).toBeCloseTo(0.052 * 8.4 * (8810 - 22), 8);
		expect(p.treating_fresh.value).toBeCloseTo(parts + p.perforation_friction_fresh.value, 8);
		expect(p.treating_worn.value).toBeCloseTo(parts + p.perforation_friction_worn.value, 8);
		expect(p.perforation_friction_fresh.value).toBeGreaterThan(p.perforation_friction_worn.value);
		expect(p.drag_reduction.value).toBeCloseTo(0.7, 9);
		expect(p.treating_fresh.value).toBeGreaterThan(
			two?.pressure?.treating_fresh.value ?? Number.POSITIVE_INFINITY,
		);
		// Slurry at fresh perforations passes what clean fluid needs.
		expect(found?.expected_treating_pressure?.value).toBeGreaterThanOrEqual(p.treating_fresh.value);
		expect(p.horsepower.value).toBeCloseTo((p.treating_fresh.value * 60) / 40.8, 6);
	});

	test("shows how far roughness moves it", () => {
		const [smooth, rough] = found?.roughness_sensitivity ?? [];
		expect(smooth?.treating_pressure.value).toBeLessThan(rough?.treating_pressure.value ?? 0);
		expect(rough?.treating_pressure.value).toBeCloseTo(one?.pressure?.treating_fresh.value ?? 0, 9);
	});

	test("counts the plugs, and what comes back by the shares stated", () => {
		const treated = results(
			planned({
				stages: [stage(1, 8900), stage(2, 8700, { plug: given("measured-depth", 8750) })],
				flowback: { returned: [given("share", 0.1), given("share", 0.3)] },
			}),
		).found;
		expect(treated?.plugs.value).toBe(1);
		expect(treated?.returned?.low.value).toBeCloseTo(0.1 * (treated?.water_volume.value ?? 0), 9);
		expect(treated?.returned?.high.value).toBeCloseTo(0.3 * (treated?.water_volume.value ?? 0), 9);
	});

	test("each chemical is listed once, over everything it is in", () => {
		const { disclosure } = found ?? {};
		const ids = disclosure?.chemicals.map((c) => c.id);
		expect(ids).toEqual(["7732-18-5", "14808-60-7", "7647-01-0", "Polymer"]);
		const acid = disclosure?.additives[0];
		expect(acid?.volume.value).toBeCloseTo(40, 12);
		const water = disclosure?.chemicals[0]?.share.value ?? 0;
		expect(water).toBeCloseTo(
			(disclosure?.base_fluid.share.value ?? 0) + 0.85 * (acid?.share.value ?? 0),
			12,
		);
		const whole = [
			disclosure?.base_fluid.share,
			...(disclosure?.proppants ?? []).map((p) => p.share),
			...(disclosure?.additives ?? []).map((a) => a.share),
		].reduce((sum, share) => sum + (share?.value ?? 0), 0);
		expect(whole).toBeCloseTo(1, 9);
	});

	test("an illustrative height stays within its model", () => {
		expect(found?.illustrative_height).toMatchObject({ formation: "Pay", pay: { value: 500 } });
		expect(found?.illustrative_height?.height.value).toBeCloseTo(500 / Math.cos(Math.PI / 6), 6);
	});
});

describe("what is wanting in a stimulation", () => {
	const keys = (stimulation: Stimulation, more: Partial<Well> = {}) =>
		results(stimulation, more).gaps.map((gap) => gap.key);

	test("is said once for the pressure, with everything it needs", () => {
		const { discharge: _, net: __, ...model } = planned().pressureModel ?? {};
		const { gaps, found } = results(planned({ pressureModel: model }));
		expect(gaps.map((g) => g.key)).toEqual(["stimulation.expected_treating_pressure"]);
		expect(toldPlainly(gaps[0]?.because)).toContain("the net pressure and the discharge coefficients");
		expect(found).not.toHaveProperty("expected_treating_pressure");
		expect(found?.stages[0]).not.toHaveProperty("pressure");
	});

	test("an element without a rating is left out and named", () => {
		const boundary = [{ element: "valve", factor: given("ratio", 1) }];
		expect(keys(planned({ boundary }))).toEqual(["stimulation.boundary.valve"]);
	});

	test("an additive of unknown density leaves no share to be told", () => {
		const [acid] = planned().additives;
		const { density: _, ...vague } = acid ?? {};
		const { found, gaps } = results(planned({ additives: [vague as NonNullable<typeof acid>] }));
		expect(found).not.toHaveProperty("disclosure");
		expect(gaps.map((g) => g.key)).toEqual(["stimulation.disclosure.additives.acid"]);
	});

	test("net pressure at the stress contrast leaves the height without a bound", () => {
		const pressureModel = { ...planned().pressureModel, net: given("pressure", 900) };
		expect(keys(planned({ pressureModel }))).toEqual(["stimulation.illustrative_height"]);
	});

	test("no stages, no stimulation", () => {
		expect(results(planned({ stages: [] })).found).toBeUndefined();
	});
});

describe("other wells", () => {
	test("a test made stands before the test planned", () => {
		const tested = {
			...pumped,
			pressureTest: {
				pressure: given("pressure", 9000),
				hold: given("duration", 30),
				actual: { pressure: given("pressure", 9350) },
			},
		};
		expect(results(planned(), {}, [tested]).found?.limiting?.allowed.value).toBe(9350);
	});

	test("a liner is rated with what leads to it", () => {
		const outer = string("intermediate", only, 22, [[9.625, 8.681, 5000]]);
		const liner = string("production", only, 4500, [[5.5, 4.67, 9000]], {
			kind: "liner",
			within: "intermediate",
		});
		const { found } = results(planned({ boundary: [{ element: "casing", factor: given("ratio", 1) }] }), {}, [
			liner,
			outer,
		]);
		expect(found?.boundary[0]?.rating.value).toBe(11_000);
		expect(found?.stages[0]?.flush_volume?.value).toBeCloseTo(
			PER_FOOT * ((4500 - 22) * 8.681 ** 2 + (8810 - 4500) * 4.67 ** 2),
			8,
		);
	});

	test("a fluid too thick to be turbulent saves no friction", () => {
		const thick = planned({
			baseFluid: { kind: "gel", density: given("density", 8.6), viscosity: given("plastic-viscosity", 3000) },
		});
		const pressure = results(thick).found?.stages[0]?.pressure;
		expect(pressure?.drag_reduction.value).toBeCloseTo(0, 12);
		expect(pressure?.pipe_friction.value).toBe(pressure?.water_friction.value);
	});

	test("a single interval without clusters opens from its top to its bottom", () => {
		const interval = stage(1, 8900, { clusters: [], shotsPerCluster: given("count", 60) });
		const { found } = results(planned({ stages: [interval] }));
		expect([found?.top_perforation.md.value, found?.bottom_perforation.md.value]).toEqual([8800, 8900]);
		expect(found?.stages[0]?.perforations?.value).toBe(60);
	});
});
