import { describe, expect, test } from "vitest";
import { openGaps } from "../../../src/calc/gaps.ts";
import type { CasingResults } from "../../../src/calc/results.ts";
import { stimulationResults } from "../../../src/calc/stimulation/index.ts";
import type { Stage, Stimulation, TreatmentStep, Well } from "../../../src/well/well.ts";
import { hole, md, straightDown, string, well } from "../a-well.ts";
import { given } from "../given.ts";

const PER_FOOT = ((Math.PI / 4) * 12) / 9702;

const only = hole("production", 8.5, 20, 9100, { mud: 10 });
const pumped = string(
	"production",
	only,
	22,
	[
		[7, 6.094, 4000],
		[5.5, 4.67, 9000],
	],
	{ pressureTest: { pressure: given("pressure", 9000), hold: given("duration", 30) } },
);

const step = (name: string, clean: number | "flush", more: Partial<TreatmentStep> = {}): TreatmentStep => ({
	name,
	rate: given("flow-rate", 60),
	...(clean === "flush" ? { flushTo: "top cluster" as const } : { cleanVolume: given("volume", clean) }),
	...more,
});
const sand = (c: number) => ({ proppant: "sand", concentration: given("proppant-concentration", c) });
const steps = [
	step("acid", 20, { fluid: "acid", rate: given("flow-rate", 10) }),
	step("pad", 500),
	step("sand 1", 1000, sand(1)),
	step("sand 2", 800, sand(2)),
	step("flush", "flush"),
];

const stage = (number: number, bottom: number, more: Partial<Stage> = {}): Stage => ({
	number,
	bottom: md(bottom),
	top: md(bottom - 100),
	clusters: [md(bottom - 10), md(bottom - 50), md(bottom - 90)],
	shotsPerCluster: given("count", 8),
	shotDiameter: given("diameter", 0.4),
	rate: given("flow-rate", 60),
	steps,
	...more,
});

const planned = (more: Partial<Stimulation> = {}): Stimulation =>
	({
		method: "plug and perforate",
		treatedThrough: "production",
		baseFluid: {
			kind: "slickwater",
			density: given("density", 8.4),
			viscosity: given("plastic-viscosity", 1.2),
		},
		waterSources: [
			{ name: "Pond", share: given("share", 0.7), recycled: false },
			{ name: "Produced water", share: given("share", 0.3), recycled: true },
		],
		pressureModel: {
			net: given("pressure", 300),
			nearWellbore: given("pressure", 200),
			frictionReduction: given("share", 0.7),
			roughness: given("diameter", 0.0018),
			discharge: [given("ratio", 0.65), given("ratio", 0.85)],
		},
		boundary: [
			{ element: "treating iron", rating: given("pressure", 15_000), factor: given("ratio", 0.9) },
			{ element: "Casing", factor: given("ratio", 0.8) },
			{ element: "casing test", factor: given("ratio", 1) },
		],
		stages: [stage(1, 8900), stage(2, 8700)],
		proppants: [{ id: "sand", material: "quartz", specificGravity: given("ratio", 2.65), cas: "14808-60-7" }],
		additives: [
			{
				id: "acid",
				name: "Acid",
				purpose: "acid",
				density: given("density", 8.96),
				ingredients: [
					{ name: "Hydrogen chloride", cas: "7647-01-0", maxShare: given("share", 0.15) },
					{ name: "Water", cas: "7732-18-5", maxShare: given("share", 0.85) },
				],
			},
			{
				id: "fr",
				name: "Friction reducer",
				purpose: "friction reducer",
				density: given("density", 8.6),
				rate: given("additive-rate", 1),
				ingredients: [
					{ name: "Polymer", maxShare: given("share", 0.3) },
					{ name: "Withheld", tradeSecret: "the maker" },
				],
			},
		],
		annuli: [],
		...more,
	}) as Stimulation;

const geology = {
	formations: [
		{ id: "cap", name: "Cap", top: given("true-vertical-depth", 20), lithology: "shale" },
		{
			id: "pay",
			name: "Pay",
			top: given("true-vertical-depth", 8500),
			base: given("true-vertical-depth", 9000),
			lithology: "shale",
			mechanical: { closure: given("pressure-gradient", 0.7), stressContrast: given("pressure", 900) },
		},
	],
	water: [],
} as unknown as Well["geology"];

const results = (stimulation: Stimulation, more: Partial<Well> = {}, strings = [pumped]) => {
	const gaps = openGaps();
	const casing = Object.fromEntries(
		strings.map((s, i) => [
			s.id,
			{ least_internal_yield: given("pressure", 12_000 - 1000 * i) } as CasingResults,
		]),
	);
	const of = well([only], strings, { stimulation, geology, ...more });
	return { found: stimulationResults(of, straightDown, casing, gaps), gaps: gaps.undetermined };
};

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
		expect(found?.expected_treating_pressure?.value).toBe(p.treating_fresh.value);
		expect(p.horsepower.value).toBeCloseTo((p.treating_fresh.value * 60) / 40.8, 6);
	});

	test("shows how far roughness moves it", () => {
		const [smooth, rough] = found?.roughness_sensitivity ?? [];
		expect(smooth?.treating_pressure.value).toBeLessThan(rough?.treating_pressure.value ?? 0);
		expect(rough?.treating_pressure.value).toBeCloseTo(found?.expected_treating_pressure?.value ?? 0, 9);
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
		expect(gaps[0]?.because).toContain("the net pressure, the discharge coefficients");
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
