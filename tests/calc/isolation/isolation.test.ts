import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cementResults } from "../../../src/calc/cement/index.ts";
import { holeMark } from "../../../src/calc/depths/index.ts";
import { openGaps } from "../../../src/calc/gaps.ts";
import { steelEvidence } from "../../../src/calc/isolation/evidence.ts";
import { isolationResults, layersAt } from "../../../src/calc/isolation/index.ts";
import {
	columnsAcross,
	neighborWellBottom,
	separationAboveFracture,
	verticalSeparation,
} from "../../../src/calc/isolation/separation.ts";
import type {
	CasingResults,
	Results,
	SiteResults,
	StimulationResults,
	WellPath,
} from "../../../src/calc/results.ts";
import type { CasingString, CementActual, Well } from "../../../src/well/well.ts";
import { toldPlainly } from "../../told.ts";
import { hole, job, md, slurry, straightDown, string, well } from "../a-well.ts";
import { given } from "../given.ts";

const tvd = (value: number) => given("true-vertical-depth", value);

describe("separations and counts", () => {
	test("a separation changes sign with its ends, and adds over a place between", () => {
		const depth = fc.double({ min: 0, max: 20_000, noNaN: true });
		fc.assert(
			fc.property(depth, depth, depth, (a, b, c) => {
				const from = (upper: number, lower: number) =>
					verticalSeparation.of({
						TVD_lower: tvd(lower),
						TVD_upper: tvd(upper),
					}).value;
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
			geology: {
				formations: [],
				water: [],
				protectedWater: { base: tvd(1000) },
			},
			...more,
		} as Partial<Well>,
	);

const formation = (name: string, top: number, base: number, more: object) => ({
	id: name.toLowerCase().replaceAll(" ", "-"),
	name,
	top: tvd(top),
	base: tvd(base),
	lithology: "shale",
	confining: false,
	target: false,
	...more,
});

const casingOf = (of: Well): Results["casing"] =>
	Object.fromEntries(
		of.strings.map((s) => [
			s.id,
			{
				top: holeMark(straightDown, s.top, of.datum),
				shoe: holeMark(straightDown, s.shoe, of.datum),
			} as CasingResults,
		]),
	);
const cementOf = (of: Well) => cementResults(of, straightDown, casingOf(of), openGaps());

const nowhere: SiteResults = { neighbors: [], offset_wells: [] };
const isolation = (
	of: Well,
	topPerforation?: number,
	{ path = straightDown, site = nowhere, end = 8990 } = {},
) => {
	const gaps = openGaps();
	const casing = casingOf(of);
	const cement = cementOf(of);
	const stimulation =
		topPerforation === undefined
			? {}
			: {
					stimulation: {
						top_perforation: holeMark(straightDown, md(topPerforation), of.datum),
					} as StimulationResults,
				};
	const trajectory = {
		path: path as WellPath,
		total_depth: holeMark(path, md(end), of.datum),
	};
	const before = { trajectory, casing, cement, site, ...stimulation };
	return {
		...isolationResults(of, before, gaps),
		undetermined: gaps.undetermined,
	};
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
		expect(found.undetermined).toEqual([]);
	});

	test("surface casing that does not is not stood in for by the next string", () => {
		const found = isolation(designed({ surfaceTop: 1200, productionTop: 500 }));
		expect(found).not.toHaveProperty("protecting_string");
		expect(found.undetermined.map((g) => toldPlainly(g.because))).toEqual([
			"The surface string has to protect the water, but does not have both its shoe below the base of protected water and cement across it.",
		]);
	});

	test("where no string does, it is said, and nothing stands in for it", () => {
		const found = isolation(designed({ surfaceTop: 1200 }));
		expect(found).not.toHaveProperty("protecting_string");
		expect(found).not.toHaveProperty("shoe_below_protected_water");
		expect(found.undetermined.map((g) => g.key)).toEqual(["isolation.protecting_string"]);
		expect(found.cement_at_protected_water).toEqual([]);
	});

	test("without a base of protected water nothing is told", () => {
		const found = isolation(designed({ more: { geology: { formations: [], water: [] } } }));
		expect(found.undetermined.map((g) => g.needs)).toEqual([[["geology", "protected_water"]]]);
		expect(found).not.toHaveProperty("steel_at_protected_water");
	});
});

describe("evidence of a cement column", () => {
	test("a plan is only a plan, and pumping alone makes it a calculation", () => {
		expect(evidence()).toEqual(["planned"]);
		expect(evidence({ pumped: [{ fluid: "all", volume: given("volume", 5000) }] })).toEqual(["calculated"]);
		expect(evidence({ pumped: [], returnsToSurface: given("volume", 0) })).toEqual(["planned"]);
	});

	test("returns, a calculation from volumes and a log are three different things", () => {
		expect(evidence({ pumped: [], returnsToSurface: given("volume", 30) })).toEqual(["returns seen"]);
		expect(evidence({ pumped: [], top: { depth: md(100), method: "calculated" } })).toEqual(["calculated"]);
		expect(evidence({ pumped: [], top: { depth: md(100), method: "bond log" } })).toEqual(["logged"]);
		expect(
			evidence({
				pumped: [],
				top: { depth: md(100), method: "temperature survey" },
			}),
		).toEqual(["logged"]);
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

describe("how well the seal across the base of protected water is known", () => {
	const seal = (actual?: CementActual) => {
		const [zone] = isolation(designed(actual === undefined ? {} : { actual })).zones;
		return zone?.seals[0];
	};
	const none = { surveys: [], tests: [], squeezes: [] };
	const stretch = { top: md(900), bottom: md(1100), date: "2026-02-03" };
	const logged = (bonded: boolean): CementActual => ({
		pumped: [],
		returnsToSurface: given("volume", 30),
		seal: {
			...none,
			bondLog: {
				date: "2026-02-02",
				intervals: [{ ...stretch, index: given("share", bonded ? 0.9 : 0.4) }],
			},
		},
	});

	test("planned, placed, inferred, measured, tested: each by its own record", () => {
		expect(seal()).toMatchObject({ string: "surface", state: "planned", covers: true });
		expect(seal({ pumped: [{ fluid: "all", volume: given("volume", 5000) }] })?.state).toBe("placed");
		expect(seal({ pumped: [], returnsToSurface: given("volume", 30) })).toMatchObject({
			state: "inferred",
			by: "returns seen",
		});
		expect(
			seal({
				pumped: [],
				top: { depth: md(100), method: "calculated" },
				seal: { ...none, surveys: [{ ...stretch, kind: "tracer", showsCement: true }] },
			}),
		).toMatchObject({ state: "inferred", by: "tracer" });
		expect(seal(logged(true))).toMatchObject({ state: "measured", bond: "throughout" });
		expect(
			seal({
				...logged(true),
				seal: {
					...none,
					tests: [{ ...stretch, through: "annulus", pressure: given("pressure", 500), held: true }],
				},
			}),
		).toMatchObject({ state: "tested", by: "annulus" });
	});

	test("a log that shows no bond outranks the returns, and the sheath is no longer verified", () => {
		expect(seal(logged(false))).toMatchObject({ state: "measured", bond: "nowhere" });
		expect(isolation(designed({ actual: logged(true) })).unsealed_water?.value).toBe(0);
		expect(isolation(designed({ actual: logged(false) })).unsealed_water?.value).toBe(1);
	});

	test("a squeeze counts once its test held, and a test that did not hold counts for nothing", () => {
		const squeezed = (held?: boolean): CementActual => ({
			...logged(false),
			seal: {
				...logged(false).seal,
				surveys: [],
				tests: [],
				squeezes: [{ ...stretch, why: "poor log", ...(held === undefined ? {} : { held }) }],
			},
		});
		expect(seal(squeezed(true))).toMatchObject({ state: "tested", by: "squeeze" });
		expect(seal(squeezed())).toMatchObject({ state: "measured", bond: "nowhere" });
		expect(seal(squeezed(false))).toMatchObject({ state: "measured", bond: "nowhere" });
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
		{
			id: "old",
			name: "Old",
			status: "plugged",
			total_depth: { reference: "vertical", depth: tvd(4120) },
		},
		{
			id: "slant",
			name: "Slant",
			status: "idle",
			total_depth: { reference: "measured", depth: md(5000) },
		},
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

describe("layers from the inside of the well to the rock", () => {
	const found = isolation(designed());
	const at = (depth: number) =>
		layersAt(designed(), { casing: casingOf(designed()), cement: cementOf(designed()) }, depth).map(
			({ kind, string: of }) => `${kind} ${of}`,
		);

	test("are told from the inside outward, with the open annulus among them", () => {
		expect(at(1000)).toEqual([
			"steel production",
			"open annulus production",
			"steel surface",
			"cement surface",
		]);
		expect(at(2500)).toEqual(["steel production", "open annulus production"]);
		expect(at(5000)).toEqual(["steel production", "cement production"]);
		expect(at(8995)).toEqual([]);
	});

	test("come in stretches that follow one another down to total depth, agreeing with the layers at their middle", () => {
		expect(found.layers.map(({ top, bottom }) => [top.md.value, bottom.md.value])).toEqual([
			[22, 2000],
			[2000, 3000],
			[3000, 8990],
		]);
		for (const { top, bottom, layers } of found.layers)
			expect(layers.map(({ kind, string: of }) => `${kind} ${of}`)).toEqual(
				at((top.md.value + bottom.md.value) / 2),
			);
	});

	test("a test that fell too far proves nothing of the steel", () => {
		const tested = (fall: number) =>
			steelEvidence({
				...designed().strings[0],
				pressureTest: {
					pressure: given("pressure", 1000),
					hold: given("duration", 30),
					allowedFall: given("share", 0.1),
					actual: { pressure: given("pressure", 1000), fall: given("share", fall) },
				},
			} as CasingString);
		expect([tested(0.1), tested(0.11)]).toEqual(["tested", "planned"]);
	});
});

describe("zones, in each part of the well's life", () => {
	const geology = {
		formations: [
			formation("Gas Sand", 2300, 2400, { flowZone: "gas", porePressure: given("density", 9.5) }),
			formation("Pay", 8000, 9500, { target: true }),
		],
		water: [{ id: "aquifer", name: "Aquifer", top: tvd(100), base: tvd(900) }],
		protectedWater: { base: tvd(1000) },
	};
	const of = designed({ more: { geology, stimulation: {} } as unknown as Partial<Well> });
	const found = isolation(of, 8200);
	const counts = (id: string) =>
		found.zones
			.find((zone) => zone.id === id)
			?.phases.map((p) => [p.id, p.steel.value, p.cement.value, p.open ?? "", p.fluid ?? ""]);

	test("water is open to the first hole, and behind what spans it afterwards", () => {
		expect(counts("aquifer")).toEqual([
			["drilling-surface", 0, 0, "hole", ""],
			["drilling-production", 1, 1, "", ""],
			["stimulating", 2, 1, "", ""],
			["producing", 2, 1, "", ""],
		]);
	});

	test("a flow zone open to the hole tells whether the fluid stands over it; behind bare pipe it has no cement", () => {
		expect(counts("gas-sand")).toEqual([
			["drilling-production", 0, 0, "hole", "holds"],
			["stimulating", 1, 0, "", ""],
			["producing", 1, 0, "", ""],
		]);
	});

	test("the target is open on purpose", () => {
		expect(counts("pay")?.at(-1)).toEqual(["producing", 1, 1, "perforations", ""]);
	});

	test("what is only planned is not counted as verified", () => {
		expect(
			found.zones.flatMap(({ phases }) =>
				phases.map((p) => p.verified_cement.value + p.verified_steel.value),
			),
		).toEqual(found.zones.flatMap(({ phases }) => phases.map(() => 0)));
		const recorded = isolation(
			designed({ actual: { pumped: [], returnsToSurface: given("volume", 30) }, more: { geology } as never }),
		);
		expect(recorded.zones.find(({ id }) => id === "aquifer")?.phases.at(-1)?.verified_cement.value).toBe(1);
	});

	test("a gap against the rock names the zones it opens; between two strings it opens none", () => {
		expect(
			found.gaps.map(({ id, against, zones, top, bottom }) => [
				id,
				against,
				top.md.value,
				bottom.md.value,
				zones,
			]),
		).toEqual([
			["production-1", "surface", 22, 2000, []],
			["production-2", "rock", 2000, 3000, ["gas-sand"]],
		]);
		expect(found.zones.find(({ id }) => id === "gas-sand")?.gaps).toEqual(["production-2"]);
	});

	test("a gap that opens water and gas joins them", () => {
		const joined = isolation(
			designed({
				surfaceTop: 1500,
				productionTop: 3000,
				more: {
					geology: { ...geology, water: [{ id: "deep", name: "Deep", top: tvd(2100), base: tvd(2200) }] },
				} as never,
			}),
		);
		expect(joined.gaps.find(({ id }) => id === "production-2")?.zones).toEqual(["deep", "gas-sand"]);
	});

	test("confining beds count only as far as they lie between", () => {
		const beds = [
			formation("Above", 400, 900, { confining: true }),
			formation("Across", 900, 1300, { confining: true }),
			formation("Deep", 7000, 8600, { confining: true }),
			formation("Loose", 3000, 4000, {}),
		];
		const { confining } = isolation(
			designed({ more: { geology: { ...geology, formations: beds } } as never }),
			8200,
		);
		expect(confining.map(({ name, thickness }) => [name, thickness.value])).toEqual([
			["Across", 300],
			["Deep", 1200],
		]);
	});

	test("each string is counted from the water", () => {
		expect(
			found.strings.map((s) => [
				s.id,
				s.shoe_below_protected_water?.value,
				s.cement_top_above_protected_water?.value,
			]),
		).toEqual([
			["surface", 1000, 980],
			["production", 7990, -2000],
		]);
	});
});
