import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cementResults } from "../../../src/calc/cement/index.ts";
import { holeMark } from "../../../src/calc/depths/index.ts";
import { openGaps } from "../../../src/calc/gaps.ts";
import { isolationResults } from "../../../src/calc/isolation/index.ts";
import {
	columnsAcross,
	neighborWellBottom,
	separationAboveFracture,
	verticalSeparation,
} from "../../../src/calc/isolation/separation.ts";
import type { CasingResults, StimulationResults } from "../../../src/calc/results.ts";
import type { CementActual, Well } from "../../../src/well/well.ts";
import { hole, job, md, slurry, straightDown, string, well } from "../a-well.ts";
import { given } from "../given.ts";

const tvd = (value: number) => given("true-vertical-depth", value);

describe("separations and counts", () => {
	test("a separation changes sign with its ends, and adds over a place between", () => {
		const depth = fc.double({ min: 0, max: 20_000, noNaN: true });
		fc.assert(
			fc.property(depth, depth, depth, (a, b, c) => {
				const from = (upper: number, lower: number) =>
					verticalSeparation.of({ TVD_lower: tvd(lower), TVD_upper: tvd(upper) }).value;
				expect(from(a, b)).toBe(-from(b, a) + 0);
				expect(from(a, b) + from(b, c)).toBeCloseTo(from(a, c), 8);
			}),
		);
	});

	test("an allowance for the fracture is taken off", () => {
		const S = given("offset", 7000);
		expect(separationAboveFracture.of({ S, g: given("length", 0) }).value).toBe(7000);
		expect(separationAboveFracture.of({ S, g: given("length", 250) }).value).toBe(6750);
	});

	test("a neighbor's bottom is counted from this well's datum", () => {
		const D = given("depth-below-ground", 285);
		expect(neighborWellBottom.of({ D, a: given("length", 0) }).value).toBe(285);
		expect(neighborWellBottom.of({ D, a: given("length", 26) }).value).toBe(311);
	});

	test("a column counts where it spans the depth, its ends included", () => {
		const count = (z: number) =>
			columnsAcross.of({
				z: tvd(z),
				TVD_top: [tvd(22), tvd(22), tvd(4000)],
				TVD_bottom: [tvd(100), tvd(2000), tvd(9000)],
			}).value;
		expect([10, 22, 100, 101, 2000, 3000, 4000, 9000, 9001].map(count)).toEqual([0, 2, 2, 1, 1, 0, 1, 1, 0]);
		expect(columnsAcross.of({ z: tvd(1), TVD_top: [tvd(1)], TVD_bottom: [] }).value).toBeNaN();
	});
});

const holes = [
	hole("surface", 17.5, 20, 2010, { mud: 9 }),
	hole("production", 8.5, 2010, 9000, { mud: 10 }),
] as const;

interface Design {
	readonly surfaceTop?: number;
	readonly productionTop?: number;
	readonly actual?: CementActual;
	readonly more?: Partial<Well>;
}

const designed = ({ surfaceTop = 20, productionTop = 3000, actual, more = {} }: Design = {}): Well =>
	well(
		holes,
		[
			string("surface", holes[0], 22, [[13.375, 12.615, 2000]], {
				cement: job([slurry("all", surfaceTop, 2000)], actual === undefined ? {} : { actual }),
			}),
			string("production", holes[1], 22, [[5.5, 4.67, 8990]], {
				within: "surface",
				cement: job([slurry("all", productionTop, 8990)]),
			}),
		],
		{
			geology: { formations: [], water: [], protectedWater: { base: tvd(1000) } },
			...more,
		} as Partial<Well>,
	);

const isolation = (of: Well, topPerforation?: number) => {
	const gaps = openGaps();
	const casing = Object.fromEntries(
		of.strings.map((s) => [
			s.id,
			{
				top: holeMark(straightDown, s.top, of.datum),
				shoe: holeMark(straightDown, s.shoe, of.datum),
			} as CasingResults,
		]),
	);
	const cement = cementResults(of, straightDown, casing, openGaps());
	const stimulation =
		topPerforation === undefined
			? {}
			: {
					stimulation: {
						top_perforation: holeMark(straightDown, md(topPerforation), of.datum),
					} as StimulationResults,
				};
	return { ...isolationResults(of, { casing, cement, ...stimulation }, gaps), gaps: gaps.undetermined };
};

const evidence = (actual?: CementActual) =>
	isolation(designed(actual === undefined ? {} : { actual })).cement_at_protected_water?.map(
		(c) => c.evidence,
	);

describe("what stands across protected water", () => {
	test("the outermost string below it and cemented across it protects it", () => {
		const found = isolation(designed());
		expect(found.protecting_string).toBe("surface");
		expect(found.shoe_below_protected_water?.value).toBe(1000);
		expect(found.steel_at_protected_water?.value).toBe(2);
		expect(found.gaps).toEqual([]);
	});

	test("an outer string that is not cemented across it leaves that to the next", () => {
		expect(isolation(designed({ surfaceTop: 1200, productionTop: 500 })).protecting_string).toBe(
			"production",
		);
	});

	test("where no string does, it is said, and nothing stands in for it", () => {
		const found = isolation(designed({ surfaceTop: 1200 }));
		expect(found).not.toHaveProperty("protecting_string");
		expect(found).not.toHaveProperty("shoe_below_protected_water");
		expect(found.gaps.map((g) => g.key)).toEqual(["isolation.protecting_string"]);
		expect(found.cement_at_protected_water).toEqual([]);
	});

	test("without a base of protected water nothing is told", () => {
		const found = isolation(designed({ more: { geology: { formations: [], water: [] } } }));
		expect(found.gaps.map((g) => g.needs)).toEqual([[["geology", "protected_water"]]]);
		expect(found).not.toHaveProperty("steel_at_protected_water");
	});
});

describe("evidence of a cement column", () => {
	test("a plan is only a plan, and pumping alone does not change that", () => {
		expect(evidence()).toEqual(["planned"]);
		expect(evidence({ pumped: [{ fluid: "all", volume: given("volume", 5000) }] })).toEqual(["planned"]);
		expect(evidence({ pumped: [], returnsToSurface: given("volume", 0) })).toEqual(["planned"]);
	});

	test("returns, a calculation from volumes and a log are three different things", () => {
		expect(evidence({ pumped: [], returnsToSurface: given("volume", 30) })).toEqual(["returns seen"]);
		expect(evidence({ pumped: [], top: { depth: md(100), method: "calculated" } })).toEqual(["calculated"]);
		expect(evidence({ pumped: [], top: { depth: md(100), method: "bond log" } })).toEqual(["logged"]);
		expect(evidence({ pumped: [], top: { depth: md(100), method: "temperature survey" } })).toEqual([
			"logged",
		]);
	});

	test("a log lifts what returns showed, and the word none does not", () => {
		const returned = { pumped: [], returnsToSurface: given("volume", 30) };
		expect(evidence({ ...returned, evaluationLog: "bond log of 3 May" })).toEqual(["logged"]);
		expect(evidence({ ...returned, evaluationLog: "none" })).toEqual(["returns seen"]);
	});

	test("a recorded top below the water takes the column off", () => {
		expect(evidence({ pumped: [], top: { depth: md(1400), method: "tagged" } })).toEqual([]);
	});
});

describe("the rock between", () => {
	const neighbors = [
		{
			id: "near",
			kind: "water well",
			name: "Near",
			depth: { reference: "ground", depth: given("depth-below-ground", 300) },
		},
		{ id: "dug", kind: "public water supply", name: "Dug" },
		{ id: "home", kind: "dwelling", name: "Home" },
	] as unknown as Well["neighbors"];
	const offsetWells = [
		{ id: "old", name: "Old", status: "plugged", total_depth: { reference: "vertical", depth: tvd(4120) } },
		{ id: "slant", name: "Slant", status: "idle", total_depth: { reference: "measured", depth: md(5000) } },
	] as unknown as Well["offsetWells"];

	test("is counted from the shallowest perforation up, to the water and to each well", () => {
		const found = isolation(designed({ more: { neighbors, offsetWells } }), 8000);
		expect(found.protected_water_to_top_perforation?.value).toBe(7000);
		expect(found.neighbor_wells.map((w) => [w.id, w.bottom?.value, w.above_top_perforation?.value])).toEqual([
			["near", 320, 7680],
			["dug", undefined, undefined],
		]);
		expect(found.offset_wells.map((w) => [w.id, w.above_top_perforation?.value])).toEqual([
			["old", 3880],
			["slant", undefined],
		]);
	});

	test("without perforations there is none to count", () => {
		const found = isolation(designed({ more: { neighbors } }));
		expect(found).not.toHaveProperty("protected_water_to_top_perforation");
		expect(found.neighbor_wells[0]?.bottom?.value).toBe(320);
	});
});
