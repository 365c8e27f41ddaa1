import { describe, expect, test } from "vitest";
import { caliperDiameter } from "../../../src/calc/cement/capacity.ts";
import { totalTime, volumeLeft } from "../../../src/calc/cement/sacks.ts";
import { drillOutFrom, strengthAfter, timeInUse, timeToStrength } from "../../../src/calc/cement/setting.ts";
import { componentMass, liquidMass, saltMass } from "../../../src/calc/cement/slurry-design.ts";
import {
	bowSpringStandoff,
	centralizerCount,
	centralizerSpacing,
	hangingTension,
	profileDepth,
	rigidStandoff,
	sagStandoff,
	sideLoad,
} from "../../../src/calc/cement/standoff.ts";
import { porePressure } from "../../../src/calc/pressure/fracture-gradient.ts";
import { kickMargin } from "../../../src/calc/pressure/kick-tolerance.ts";
import type { KnownTable } from "../../../src/cite/known.ts";
import { given } from "../given.ts";

const curve = {
	t_i: [given("duration", 480), given("duration", 1440)],
	s_i: [given("pressure", 500), given("pressure", 1460)],
};

describe("setting", () => {
	test("strength lies on the straight line between two tests, and is never more than tested", () => {
		const strengthAt = (t: number) => strengthAfter.of({ ...curve, t: given("duration", t) }).value;
		expect(strengthAt(960)).toBeCloseTo(980, 9);
		expect(strengthAt(480)).toBe(500);
		expect(strengthAt(9999)).toBe(1460);
		expect(strengthAt(240)).toBe(250);
	});
	test("time to a strength and strength after that time are each other's inverse", () => {
		const t = timeToStrength.of({ ...curve, s: given("pressure", 800) });
		expect(strengthAfter.of({ ...curve, t }).value).toBeCloseTo(800, 9);
		expect(timeToStrength.of({ ...curve, s: given("pressure", 50) }).value).toBe(480);
		expect(timeToStrength.of({ ...curve, s: given("pressure", 2000) }).value).toBeNaN();
	});
	test("the later of wait and strength governs, and is named", () => {
		const from = (wait: number) =>
			drillOutFrom.of({ wait: given("duration", wait), t_s: given("duration", 480) });
		expect(from(720).value).toBe(720);
		expect(from(300).value).toBe(480);
		expect(from(300).from).toMatchObject({ branch: "the strength" });
	});
	test("times and volumes add up, and what is left is never more than the whole", () => {
		expect(totalTime.of({ t_i: [given("duration", 5), given("duration", 7)] }).value).toBe(12);
		expect(timeInUse.of({ t_end: given("duration", 90), t_mixed: given("duration", 20) }).value).toBe(70);
		expect(volumeLeft.of({ V: given("volume", 90), V_last: given("volume", 20) }).value).toBe(70);
		expect(kickMargin.of({ V: given("volume", 6.5), V_design: given("volume", 25) }).value).toBe(-18.5);
	});
});

describe("components", () => {
	test("salt goes by the water, liquids by their volume, and all by the sack", () => {
		// 10 % of 10 gal of water at 8.33 lb/gal.
		expect(saltMass.of({ s: given("share", 0.1), w: given("water-requirement", 10) }).value).toBeCloseTo(
			8.33,
			9,
		);
		const V = given("specific-volume", 0.1);
		expect(liquidMass.of({ q: given("water-requirement", 0.2), V }).value).toBeCloseTo(2, 9);
		expect(componentMass.of({ n: given("count", 300), m: given("mass", 3.76) }).value).toBeCloseTo(1128, 9);
	});
});

const log = (rows: readonly (readonly [number, number])[]): KnownTable<"md" | "diameter"> => ({
	columns: { md: "measured-depth", diameter: "diameter" },
	rows: rows.map(([md, diameter]) => ({ md, diameter })),
	from: { kind: "constant", name: "given by a test", source: { key: "definition" } },
});
const widthOf = (rows: readonly (readonly [number, number])[], top: number, bottom: number): number =>
	caliperDiameter.of({
		log: log(rows),
		MD_top: given("measured-depth", top),
		MD_bottom: given("measured-depth", bottom),
	}).value;

describe("a caliper", () => {
	test("of one width is that width, wherever it is asked", () => {
		const even = [
			[100, 12],
			[500, 12],
		] as const;
		expect(widthOf(even, 0, 50)).toBe(12);
		expect(widthOf(even, 150, 700)).toBeCloseTo(12, 12);
	});
	test("of a cone holds what a cone holds", () => {
		// From 10 to 14 in: the mean of the squares is (100 + 140 + 196)/3.
		expect(
			widthOf(
				[
					[0, 10],
					[100, 14],
				],
				0,
				100,
			),
		).toBeCloseTo(Math.sqrt((100 + 140 + 196) / 3), 12);
	});
	test("volume of a stretch is that of its parts", () => {
		const rows = [
			[0, 10],
			[40, 13],
			[70, 12.2],
			[100, 14],
		] as const;
		const square = (a: number, b: number) => widthOf(rows, a, b) ** 2 * (b - a);
		expect(square(10, 55) + square(55, 90)).toBeCloseTo(square(10, 90), 8);
	});
});

const load = (I_1: number, I_2: number, A_1 = 0, A_2 = 0) =>
	sideLoad.of({
		w: given("linear-weight", 40),
		ρ: given("density", 0),
		L: given("length", 40),
		I_1: given("angle", I_1),
		I_2: given("angle", I_2),
		A_1: given("angle", A_1),
		A_2: given("angle", A_2),
		D_shoe: given("true-vertical-depth", 5000),
		D: given("true-vertical-depth", 4000),
	}).value;

describe("standoff", () => {
	test("a vertical pipe does not lean, a level one rests with its whole weight", () => {
		expect(load(0, 0)).toBe(0);
		expect(load(90, 90)).toBeCloseTo(1600, 9);
		expect(load(30, 30)).toBeCloseTo(800, 9);
	});
	test("tension takes from the weight in a build and adds to it in a drop", () => {
		const T = 40 * 1000 * ((2 * Math.PI) / 180);
		const weight = 1600 * Math.sin((30 * Math.PI) / 180);
		expect(load(29, 31)).toBeCloseTo(Math.abs(weight - T), 6);
		expect(load(31, 29)).toBeCloseTo(weight + T, 6);
		// A turn across north is a turn of two degrees, not of 358.
		expect(load(30, 30, 359, 1)).toBeCloseTo(load(30, 30, 1, 3), 6);
	});
	test("what hangs below pulls: nothing at the shoe, nothing in a lateral that climbs", () => {
		const at = (D: number) =>
			hangingTension.of({
				w: given("linear-weight", 40),
				ρ: given("density", 0),
				D_shoe: given("true-vertical-depth", 5000),
				D: given("true-vertical-depth", D),
			}).value;
		expect(at(4000)).toBe(40_000);
		expect(at(5000)).toBe(0);
		expect(at(5100)).toBe(0);
	});
	test("a bow spring at its restoring force stands off 67 %, unloaded 100 %, crushed not at all", () => {
		const off = (F: number) =>
			bowSpringStandoff.of({ F: given("force", F), F_67: given("force", 1600) }).value;
		expect(off(1600)).toBeCloseTo(0.67, 12);
		expect(off(0)).toBe(1);
		expect(off(1e6)).toBe(0);
	});
	test("rigid blades as wide as the hole hold the pipe in the middle, as wide as the pipe not at all", () => {
		const off = (blades: number) =>
			rigidStandoff.of({
				D_blades: given("diameter", blades),
				D_pipe: given("diameter", 5.5),
				D_hole: given("diameter", 8.5),
			}).value;
		expect(off(8.5)).toBe(1);
		expect(off(8)).toBeCloseTo(2.5 / 3, 12);
		expect(off(5.5)).toBeNaN();
	});
	test("an unloaded span does not sag, and sag goes with the cube of the span under one load", () => {
		const off = (F: number, L: number, T = 0) =>
			sagStandoff.of({
				S: given("share", 1),
				F: given("force", F),
				T: given("force", T),
				L: given("length", L),
				D_pipe: given("diameter", 5.5),
				d_pipe: given("diameter", 4.67),
				D_hole: given("diameter", 8.5),
			}).value;
		expect(off(0, 80)).toBe(1);
		expect((1 - off(900, 40)) / (1 - off(900, 20))).toBeCloseTo(8, 6);
		// Tension takes from the sag: a little of it hardly, and of a taut string only F L / (8 T) is left, over a gap of
		// 1.5 in.
		expect(off(900, 60, 1)).toBeCloseTo(off(900, 60), 4);
		expect(off(900, 60, 40_000)).toBeGreaterThan(off(900, 60));
		const taut = (900 * 12 * 60) / (8 * 3e7) / 1.5;
		const left = (1 - off(900, 60, 3e7)) / taut;
		expect(left).toBeGreaterThan(0.96);
		expect(left).toBeLessThan(1);
	});
	test("stations of a profile divide the cemented length evenly, and the last is the shoe", () => {
		const at = (i: number) =>
			profileDepth.compute({
				MD_top: given("measured-depth", 5400).value,
				MD_shoe: given("measured-depth", 17400).value,
				i: given("count", i).value,
				n: given("count", 12).value,
			});
		expect([1, 2, 6, 12].map(at)).toEqual([6400, 7400, 11400, 17400]);
	});
	test("centralizers are counted up, and stand their joints apart", () => {
		const k = given("count", 4);
		const L_joint = given("length", 40);
		const count = centralizerCount.of({
			MD_top: given("measured-depth", 28),
			MD_bottom: given("measured-depth", 1065),
			k,
			L_joint,
		});
		expect(count.value).toBe(7);
		expect(centralizerSpacing.of({ k, L_joint }).value).toBe(160);
	});
});

test("pore pressure counts from the ground: none there, and a mud of its density balances it", () => {
	const at = (D: number) =>
		porePressure.of({ ρ_p: given("density", 9), D: given("depth-below-ground", D) }).value;
	expect(at(0)).toBe(0);
	expect(at(1000)).toBeCloseTo(468, 9);
});
