import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { holeMark } from "../../../src/calc/depths/index.ts";
import { curveResults, departureBetween, meanRadius } from "../../../src/calc/trajectory/curve.ts";
import { minimumCurvaturePath, pathStationsOf } from "../../../src/calc/trajectory/path.ts";
import { sectionFromOrigin } from "../../../src/calc/trajectory/section-origin.ts";
import { findingsOf, STARTERS } from "../../starters.ts";
import { given, stationTable } from "../given.ts";

const md = (value: number) => given("measured-depth", value);
const datum = { aboveGround: given("length", 20) };

const pathOf = (rows: readonly (readonly [number, number, number])[], Avs = 0) =>
	minimumCurvaturePath.of({ stations: stationTable(rows), TD: md(0), Avs: given("angle", Avs) });

const quarter = (radius: number) =>
	pathOf([
		[0, 0, 60],
		[5000, 0, 60],
		[5000 + (radius * Math.PI) / 2, 90, 60],
		[12_000, 90, 60],
	]);

describe("from kickoff to landing", () => {
	test("a quarter circle is as deep and as far as its radius", () => {
		fc.assert(
			fc.property(fc.double({ min: 200, max: 2000, noNaN: true }), (radius) => {
				const path = quarter(radius);
				const ends = { path, MD_1: md(5000), MD_2: md(5000 + (radius * Math.PI) / 2) };
				expect(meanRadius.of(ends).value).toBeCloseTo(radius, 6);
				expect(departureBetween.of(ends).value).toBeCloseTo(radius, 6);
				const curve = curveResults(path, holeMark(path, ends.MD_1, datum), holeMark(path, ends.MD_2, datum));
				expect(curve?.depth_gained.value).toBeCloseTo(radius, 6);
				expect(curve?.length.value).toBeCloseTo((radius * Math.PI) / 2, 6);
			}),
		);
	});

	test("a straight has no radius, and nothing lies between a depth and itself", () => {
		const path = quarter(600);
		expect(meanRadius.of({ path, MD_1: md(1000), MD_2: md(4000) }).value).toBeNaN();
		expect(departureBetween.of({ path, MD_1: md(1000), MD_2: md(1000) }).value).toBeNaN();
		expect(curveResults(path, holeMark(path, md(5000), datum), undefined)).toBeUndefined();
	});

	/*
	 * Common practice, no source: kickoff about 500 ft above the planned horizontal, and just under a quarter of a mile
	 * (1,320 ft) along the hole from there. Both do not fit one constant build: a radius of 500 ft has an arc of 785 ft,
	 * an arc of 1,320 ft a radius of 840 ft. They are used as the ends of a range.
	 */
	test.each(STARTERS.filter((starter) => starter.startsWith("horizontal")))(
		"the curve of %s lies within the range of the trade",
		(starter) => {
			const { curve } = findingsOf(starter).results.trajectory;
			const [length, depth] = [curve?.length.value ?? Number.NaN, curve?.depth_gained.value ?? Number.NaN];
			expect(length).toBeGreaterThan(785);
			expect(length).toBeLessThan(1320);
			expect(depth).toBeGreaterThan(500);
			expect(depth).toBeLessThan(840);
		},
	);
});

describe("build and turn", () => {
	test("make up the dogleg: all build in a plane, all turn when level", () => {
		const stations = pathStationsOf(
			pathOf([
				[0, 0, 30],
				[1000, 0, 30],
				[1300, 30, 30],
				[2000, 90, 30],
				[2400, 90, 350],
			]),
		);
		expect(stations.map((s) => s.build)).toEqual([0, 0, 10, expect.closeTo(60 / 7, 12), 0]);
		expect(stations.map((s) => s.turn)).toEqual([0, 0, 0, 0, -10]);
		expect(stations.at(-1)?.dogleg).toBeCloseTo(10, 12);
		expect(stations[2]?.dogleg).toBeCloseTo(10, 12);
	});
});

describe("vertical section from a chosen origin", () => {
	test("moves by the origin's own section, at every station", () => {
		const path = quarter(600);
		const origin = { N_0: given("offset", 35), E_0: given("offset", -20), Avs: given("angle", 0) };
		const moved = sectionFromOrigin.of({ path, ...origin });
		for (const [i, row] of moved.rows.entries()) {
			const from = path.rows[i];
			expect(row.vertical_section).toBeCloseTo((from?.vertical_section ?? 0) - 35, 9);
			expect([row.md, row.tvd, row.north]).toEqual([from?.md, from?.tvd, from?.north]);
		}
	});
});
