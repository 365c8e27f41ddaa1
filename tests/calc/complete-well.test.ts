import { describe, expect, test } from "vitest";
import { annulusIntervals } from "../../src/calc/cement/annulus.ts";
import { cementResults } from "../../src/calc/cement/index.ts";
import { completeWell } from "../../src/calc/complete-well.ts";
import { openGaps } from "../../src/calc/gaps.ts";
import type { CasingResults } from "../../src/calc/results.ts";
import type { Formation, Slurry, SlurryDesign, Well } from "../../src/well/well.ts";
import { hole, job, md, slurry, straightDown, string, well } from "./a-well.ts";
import { given } from "./given.ts";

const open = given("density", Number.NaN);
const holes = [hole("surface", 17.5, 20, 2015, { mud: 9 })] as const;
const cemented = (one: Slurry, formations: readonly Formation[] = []): Well =>
	well(holes, [string("surface", holes[0], 22, [[13.375, 12.615, 2000]], { cement: job([one]) })], {
		geology: { overburden: given("pressure-gradient", 1), formations, water: [] } as Well["geology"],
	});
const design = (more: Partial<SlurryDesign>): SlurryDesign => ({
	cementGravity: given("ratio", 3.14),
	components: [],
	open: ["density", "yield", "water"],
	...more,
});
const designed = (one: Slurry) => {
	const { value, diagnostics } = completeWell(cemented(one));
	return { slurry: value?.strings[0]?.cement?.slurries[0], codes: diagnostics.map(({ code }) => code) };
};
const bare = { ...slurry("lead", 20, 2000), density: open, yield: given("slurry-yield", Number.NaN) };

describe("a slurry given by its components", () => {
	// Lapeyrouse, ch. 2, cement additive calculations (read): class A, 4 % bentonite, 7.7 gal of water.
	const bentonite = {
		material: "bentonite",
		specificGravity: given("ratio", 2.65),
		share: given("share", 0.04),
	};

	test("class A with 4 % bentonite and 7.7 gal of water weighs 14.13 lb/gal and yields 1.53 ft³/sk", () => {
		const water = given("water-requirement", 7.7);
		const { slurry: found, codes } = designed({
			...bare,
			water,
			design: design({ water, components: [bentonite], open: ["density", "yield"] }),
		});
		expect(codes).toEqual([]);
		expect(Math.abs((found?.density.value ?? 0) - 14.13)).toBeLessThan(0.02);
		expect(Math.abs((found?.yield.value ?? 0) - 1.53)).toBeLessThan(0.005);
	});

	test("the same density wanted asks for the same water", () => {
		const { slurry: found } = designed({
			...bare,
			density: given("density", 14.13),
			design: design({ components: [bentonite], open: ["yield", "water"] }),
		});
		expect(Math.abs((found?.water.value ?? 0) - 7.7)).toBeLessThan(0.05);
	});

	test("water by weight of cement is the standard's: 46 % for class A is 5.2 gal", () => {
		const { slurry: found } = designed({ ...bare, design: design({ waterByWeight: given("share", 0.46) }) });
		expect(Math.abs((found?.water.value ?? 0) - 5.2)).toBeLessThan(0.05);
	});

	test("salt goes into the water, and what it takes up there is tabulated", () => {
		const water = given("water-requirement", 5.2);
		const salt = {
			material: "salt",
			specificGravity: given("ratio", 2.17),
			absoluteVolume: given("specific-volume", 0.0412),
			shareOfWater: given("share", 0.18),
		};
		const { slurry: found } = designed({
			...bare,
			water,
			design: design({ water, components: [salt], open: ["density", "yield"] }),
		});
		const mass = 94 + 5.2 * 8.33 * 1.18;
		const gallons = 94 / (8.33 * 3.14) + 5.2 + 5.2 * 8.33 * 0.18 * 0.0412;
		expect(found?.density.value).toBeCloseTo(mass / gallons, 9);
	});

	test("figures that its components contradict are told, and stand", () => {
		const heavy = { ...slurry("lead", 20, 2000, { density: 16.5 }) };
		const { slurry: found, codes } = designed({ ...heavy, design: design({ water: heavy.water, open: [] }) });
		expect(codes).toEqual(["calc/slurry-design"]);
		expect(found?.density.value).toBe(16.5);
	});
});

describe("a fracture gradient by correlation", () => {
	const rock = (fractureFrom: NonNullable<Formation["fractureFrom"]>): Formation => ({
		id: "a",
		name: "A",
		top: given("true-vertical-depth", 20),
		lithology: "shale",
		confining: false,
		target: false,
		porePressure: given("density", 0.465 / 0.052),
		fractureFrom,
	});
	const gradient = (fractureFrom: NonNullable<Formation["fractureFrom"]>) =>
		completeWell(cemented(slurry("lead", 20, 2000), [rock(fractureFrom)])).value?.geology.formations[0]
			?.fractureGradient?.value;

	test("each method gives its own formula of the pore pressure", () => {
		expect(gradient({ method: "Hubbert-Willis lower" })).toBeCloseTo((1 + 2 * 0.465) / 3, 9);
		expect(gradient({ method: "Hubbert-Willis upper" })).toBeCloseTo((1 + 0.465) / 2, 9);
		expect(gradient({ method: "Eaton", poissonsRatio: given("ratio", 0.4) })).toBeCloseTo(
			0.535 * (0.4 / 0.6) + 0.465,
			9,
		);
		expect(gradient({ method: "Matthews-Kelly", matrixStressCoefficient: given("ratio", 0.7) })).toBeCloseTo(
			0.7 * 0.535 + 0.465,
			9,
		);
	});
	test("without an input there is none, and it is said", () => {
		const { diagnostics } = completeWell(cemented(slurry("lead", 20, 2000), [rock({ method: "Eaton" })]));
		expect(diagnostics.map(({ code }) => code)).toEqual(["calc/fracture-correlation"]);
		expect(gradient({ method: "Eaton" })).toBeUndefined();
	});
});

describe("volumes by caliper and through a running string", () => {
	test("a caliper of bit size gives the gauge volume, an inch more gives more", () => {
		const logged = (wider: number) => {
			const [first] = holes;
			const caliper = {
				columns: { md: "measured-depth", diameter: "diameter" },
				rows: [0, 1000, 2015].map((depth) => ({ md: depth, diameter: 17.5 + wider })),
				from: { kind: "constant", name: "given by a test", source: { key: "definition" } },
			} as const;
			const each = { ...first, caliper };
			const of = well([each], [string("surface", each, 22, [[13.375, 12.615, 2000]])]);
			const [pipe] = of.strings;
			return pipe === undefined
				? Number.NaN
				: annulusIntervals(of, pipe, "caliper", md(100), md(1900)).reduce(
						(sum, { volume }) => sum + volume.value,
						0,
					);
		};
		const area = (D: number) => ((D ** 2 - 13.375 ** 2) / 1029.4) * 1800;
		expect(logged(0)).toBeCloseTo(area(17.5), 1);
		expect(logged(1)).toBeCloseTo(area(18.5), 1);
	});

	test("a liner is displaced through its running string, then its own bore", () => {
		const deep = hole("deep", 8.5, 2015, 9000, { mud: 10 });
		const liner = string("liner", deep, 1800, [[7, 6.276, 8990]], {
			kind: "liner",
			within: "surface",
			shoeTrack: given("length", 90),
			runningString: { outsideDiameter: given("diameter", 5), insideDiameter: given("diameter", 4.276) },
			cement: job([slurry("tail", 1800, 8990)]),
		});
		const of = well([...holes, deep], [string("surface", holes[0], 22, [[13.375, 12.615, 2000]]), liner]);
		const casing = {
			liner: {
				weight_in_air: given("force", 100_000),
				least_internal_yield: given("pressure", 9000),
			} as CasingResults,
		};
		const found = cementResults(of, straightDown, casing, openGaps())["liner"];
		expect(found?.displacement_volume?.value).toBeCloseTo(
			(4.276 ** 2 * 1800 + 6.276 ** 2 * (8900 - 1800)) / 1029.4,
			1,
		);
	});
});
