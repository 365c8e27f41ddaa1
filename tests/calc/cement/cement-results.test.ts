import { describe, expect, test } from "vitest";
import { cementResults } from "../../../src/calc/cement/index.ts";
import { openGaps } from "../../../src/calc/gaps.ts";
import type { CasingResults } from "../../../src/calc/results.ts";
import type { CementJob, Well } from "../../../src/well/well.ts";
import { hole, job, md, slurry, straightDown, string, well } from "../a-well.ts";
import { given } from "../given.ts";

const PER_FOOT = ((Math.PI / 4) * 12) / (42 * 231);

const holes = [
	hole("surface", 17.5, 20, 2015, { mud: 9 }),
	hole("production", 12.25, 2015, 9020, { washout: 0.05, mud: 10 }),
] as const;

/** A production string in 13 3/8 in casing, cemented as a test likes. */
const cemented = (cement: CementJob, more: Partial<Well> = {}, shoeTrack: number | "none" = 80): Well =>
	well(
		holes,
		[
			string("surface", holes[0], 22, [[13.375, 12.615, 2000]]),
			string("production", holes[1], 22, [[9.625, 8.681, 9000]], {
				within: "surface",
				cement,
				...(shoeTrack === "none" ? {} : { shoeTrack: given("length", shoeTrack) }),
			}),
		],
		more,
	);

const casing = {
	production: {
		weight_in_air: given("force", 400_000),
		least_internal_yield: given("pressure", 5000),
	} as CasingResults,
};

const calculate = (of: Well) => {
	const gaps = openGaps();
	const results = cementResults(of, straightDown, casing, gaps);
	return { results, production: results["production"], gaps: gaps.undetermined };
};

const leadAndTail = [
	slurry("lead", 1500, 7000, { excess: 0.2, density: 12.5 }),
	slurry("tail", 7000, 9000, { excess: 0.1, density: 15.8 }),
];
const plan = job(leadAndTail, {
	spacer: { volume: given("volume", 50), density: given("density", 11) },
	displacement: { density: given("density", 10), rate: given("flow-rate", 6) },
});

describe("a two-slurry job", () => {
	const { results, production, gaps } = calculate(cemented(plan));
	const ring = PER_FOOT * ((12.25 * 1.05) ** 2 - 9.625 ** 2);
	const cased = PER_FOOT * (12.615 ** 2 - 9.625 ** 2);

	test("only the cemented string has results, and nothing is wanting", () => {
		expect(Object.keys(results)).toEqual(["production"]);
		expect(gaps).toEqual([]);
	});

	test("excess is in the open hole alone; the last slurry fills shoe track and rathole", () => {
		const [lead, tail] = production?.slurries ?? [];
		const rathole = PER_FOOT * (17.5 ** 2 - 9.625 ** 2) * 15;
		expect(lead?.cased_volume.value).toBeCloseTo(500 * cased, 8);
		expect(lead?.open_hole_volume.value).toBeCloseTo((rathole + 4985 * ring) * 1.2, 7);
		expect(lead?.shoe_track_volume).toBeUndefined();
		expect(tail?.open_hole_volume.value).toBeCloseTo(2000 * ring * 1.1, 7);
		expect(tail?.shoe_track_volume?.value).toBeCloseTo(PER_FOOT * 8.681 ** 2 * 80, 9);
		expect(tail?.rathole_volume?.value).toBeCloseTo(PER_FOOT * (12.25 * 1.05) ** 2 * 20, 9);
	});

	test("a slurry is the sum of its parts, a job of its slurries", () => {
		for (const s of production?.slurries ?? []) {
			const parts = [s.open_hole_volume, s.cased_volume, s.shoe_track_volume, s.rathole_volume];
			expect(parts.reduce((sum, v) => sum + (v?.value ?? 0), 0)).toBeCloseTo(s.volume.value, 9);
		}
		const sum = (of: (s: NonNullable<typeof production>["slurries"][number]) => number) =>
			(production?.slurries ?? []).reduce((total, s) => total + of(s), 0);
		expect(production?.slurry_volume.value).toBeCloseTo(
			sum((s) => s.volume.value),
			9,
		);
		expect(production?.sacks.value).toBe(sum((s) => s.sacks.value));
		expect(production?.mix_water.value).toBeCloseTo(
			sum((s) => s.mix_water.value),
			9,
		);
	});

	test("without excess the annulus is what the column fills", () => {
		const rathole = PER_FOOT * (17.5 ** 2 - 9.625 ** 2) * 15;
		expect(production?.annulus_volume.value).toBeCloseTo(500 * cased + rathole + 6985 * ring, 6);
	});

	test("displacement goes from the datum to the float collar", () => {
		expect(production?.float_collar?.md.value).toBe(8920);
		expect(production?.displacement_volume?.value).toBeCloseTo(PER_FOOT * 8.681 ** 2 * 8920, 8);
	});

	test("outside stand mud, spacer and slurries; inside, displacement and the tail", () => {
		const spacer = 50 / cased;
		const outside = 0.052 * (10 * (1500 - spacer) + 11 * spacer + 12.5 * 5500 + 15.8 * 2000);
		const inside = 0.052 * (10 * 8920 + 15.8 * 80);
		expect(production?.spacer_top?.md.value).toBeCloseTo(1500 - spacer, 8);
		expect(production?.annulus_hydrostatic_at_shoe?.value).toBeCloseTo(outside, 7);
		expect(production?.inside_hydrostatic_at_shoe?.value).toBeCloseTo(inside, 7);
		expect(production?.final_lift?.value).toBeCloseTo(outside - inside, 7);
		expect(production?.equivalent_density_at_shoe?.value).toBeCloseTo(outside / (0.052 * 9000), 9);
		expect(production?.annulus_column?.rows.at(-1)?.standing).toBeCloseTo(outside, 7);
		expect(production?.spacer_contact_time?.value).toBeCloseTo(50 / 6, 9);
	});

	test("pumping makes it heavier than at rest", () => {
		const [still, moving] = [production?.equivalent_density_at_shoe, production?.circulating_density_at_shoe];
		expect(moving?.value).toBeGreaterThan(still?.value ?? Number.POSITIVE_INFINITY);
	});

	test("a slurry given by its components has no second density from yield and water", () => {
		const [lead, tail] = leadAndTail;
		if (lead === undefined || tail === undefined) throw new Error("two slurries");
		const design = { cementGravity: given("ratio", 3.14), components: [], open: [] };
		const { production: made } = calculate(cemented({ ...plan, slurries: [lead, { ...tail, design }] }));
		expect(made?.slurries.map(({ density_from_yield }) => density_from_yield !== undefined)).toEqual([
			true,
			false,
		]);
	});

	test("its top is only planned", () => {
		expect(production).toMatchObject({ top_basis: "planned", top_method: "calculated", to_surface: false });
		expect(production?.planned_top).toBeUndefined();
	});
});

describe("the record stands before the plan", () => {
	test("a recorded top moves the column, and the plan's stays beside it", () => {
		const { production } = calculate(
			cemented({ ...plan, actual: { pumped: [], top: { depth: md(2600), method: "bond log" } } }),
		);
		expect(production).toMatchObject({ top_basis: "recorded", top_method: "bond log" });
		expect(production?.top.md.value).toBe(2600);
		expect(production?.planned_top?.md.value).toBe(1500);
		const planned = calculate(cemented(plan)).production;
		expect(production?.annulus_hydrostatic_at_shoe?.value).toBeLessThan(
			planned?.annulus_hydrostatic_at_shoe?.value ?? 0,
		);
		expect(production?.slurry_volume.value).toBe(planned?.slurry_volume.value);
	});

	test("cement seen at surface is a top at ground level", () => {
		const { production } = calculate(
			cemented({ ...plan, actual: { pumped: [], returnsToSurface: given("volume", 12) } }),
		);
		expect(production).toMatchObject({ top_basis: "recorded", top_method: "returns seen", to_surface: true });
		expect(production?.top.md.value).toBe(20);
	});

	test("no returns are no top", () => {
		const { production } = calculate(
			cemented({ ...plan, actual: { pumped: [], returnsToSurface: given("volume", 0) } }),
		);
		expect(production?.top_basis).toBe("planned");
	});

	test("what was pumped is compared by the slurries' names, whatever else was pumped", () => {
		const { production } = calculate(
			cemented({
				...plan,
				actual: {
					pumped: [
						{ fluid: "spacer", volume: given("volume", 50) },
						{ fluid: "Lead", volume: given("volume", 300) },
						{ fluid: "tail", volume: given("volume", 200) },
					],
				},
			}),
		);
		expect(production?.pumped_volume?.value).toBe(500);
		expect(production?.pumped_over_calculated?.value).toBeCloseTo(
			500 / (production?.slurry_volume.value ?? 1),
			12,
		);
	});
});

describe("what is wanting is said", () => {
	const keysOf = (of: Well) => calculate(of).gaps.map((gap) => gap.key);

	test("no shoe track: no displacement", () => {
		expect(keysOf(cemented(plan, {}, "none"))).toContain("cement.production.displacement_volume");
		const { production } = calculate(cemented(plan, {}, "none"));
		expect(production?.displacement_volume).toBeUndefined();
		expect(production?.shoe_track_volume).toBeUndefined();
	});

	test("a shoe track longer than the string is no shoe track", () => {
		expect(keysOf(cemented(plan, {}, 9500))).toContain("cement.production.float_collar");
	});

	test("no displacement density: no lift", () => {
		const { displacement: _, ...without } = plan;
		expect(keysOf(cemented(without))).toEqual([
			"cement.production.placement",
			"cement.production.final_lift",
		]);
	});

	test("no spacer density: no column", () => {
		const unknown = { ...plan, spacer: { volume: given("volume", 50) } };
		expect(keysOf(cemented(unknown))).toEqual([
			"cement.production.placement",
			"cement.production.annulus_hydrostatic_at_shoe",
		]);
	});

	test("a column that stops short of the shoe fills neither shoe track nor rathole", () => {
		const short = { ...plan, slurries: [slurry("lead", 1500, 7000)] };
		const { production, gaps } = calculate(cemented(short));
		expect(gaps.map((g) => g.key)).toEqual(["cement.production.annulus_hydrostatic_at_shoe"]);
		expect(production?.slurries[0]?.rathole_volume).toBeUndefined();
		expect(production?.bottom.md.value).toBe(7000);
	});

	test("an outermost string grouted from the surface wants neither plug nor lift", () => {
		const conductor = hole("conductor", 26, 20, 108, { air: true });
		const grout = job([slurry("filler", 20, 106)], { volumeBasis: "gauge hole" });
		const of = well(
			[conductor],
			[string("conductor", conductor, 22, [[20, 19.124, 106]], { cement: grout })],
		);
		const { results, gaps } = calculate(of);
		expect(gaps).toEqual([]);
		expect(results["conductor"]?.to_surface).toBe(true);
		expect(results["conductor"]?.annulus_hydrostatic_at_shoe?.value).toBeCloseTo(0.052 * 15.6 * 86, 9);
	});
});

describe("the weakest rock in the open hole", () => {
	const formation = (name: string, top: number, gradient: number | undefined, base?: number) => ({
		id: name,
		name,
		top: given("true-vertical-depth", top),
		...(base === undefined ? {} : { base: given("true-vertical-depth", base) }),
		...(gradient === undefined ? {} : { fractureGradient: given("pressure-gradient", gradient) }),
		lithology: "shale",
		confining: false,
		target: false,
	});
	const geology = (middle: number) =>
		({
			formations: [
				formation("Above the shoe", 20, 0.5, 2500),
				formation("Middle", 2500, middle, 6000),
				formation("Unmeasured", 6000, undefined, 7000),
				formation("Below", 7000, 0.9),
			],
			water: [],
		}) as unknown as Well["geology"];

	test("is found with its depth and its margin", () => {
		const { production } = calculate(cemented(plan, { geology: geology(0.6) }));
		const weakest = production?.least_fracture_margin;
		expect(weakest?.formation).toBe("Above the shoe");
		expect(weakest?.at.tvd.value).toBe(2500);
	});

	test("is not sought behind casing", () => {
		const strong = calculate(cemented(plan, { geology: geology(0.55) })).production?.least_fracture_margin;
		expect(strong?.at.tvd.value).toBeGreaterThanOrEqual(2000);
	});
});
