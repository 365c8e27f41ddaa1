import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tvdAt } from "../../../src/calc/trajectory/at-depth.ts";
import { crossingsOf, mdAtTvd } from "../../../src/calc/trajectory/md-at-tvd.ts";
import { minimumCurvaturePath, pathStationsOf } from "../../../src/calc/trajectory/path.ts";
import { maximumTvd } from "../../../src/calc/trajectory/path-summary.ts";
import { given, stationTable } from "../given.ts";

const path = minimumCurvaturePath.of({
	stations: stationTable([
		[0, 0, 158],
		[8500, 0, 158],
		[9262.5, 91.5, 158],
		[14_262.5, 91.5, 158],
	]),
	TD: given("measured-depth", 0),
	Avs: given("angle", 158),
});
const stations = pathStationsOf(path);

describe("measured depth at a true vertical depth", () => {
	test("inverts the depth wherever the hole goes down", () => {
		fc.assert(
			fc.property(fc.double({ min: 1, max: 9200, noNaN: true }), (md) => {
				const tvd = tvdAt(path, given("measured-depth", md));
				expect(mdAtTvd(path, tvd).md?.value).toBeCloseTo(md, 4);
			}),
		);
	});

	test("a hole that climbs past level passes a depth twice, and says so", () => {
		const landing = stations[2]?.tvd ?? Number.NaN;
		const { md, passes } = mdAtTvd(path, given("true-vertical-depth", landing - 20));
		expect(passes?.value).toBe(2);
		expect(md?.value).toBeLessThan(9262.5);
		expect(crossingsOf(stations, landing - 20)[1]).toBeCloseTo(
			9262.5 + 20 / Math.sin((1.5 * Math.PI) / 180),
			3,
		);
	});

	test("inside an arc past level both crossings are found", () => {
		const deepest = maximumTvd.compute({ path, MD: given("measured-depth", 20_000).value }) as number;
		const bend = crossingsOf(stations, deepest - 0.05);
		expect(bend.length).toBe(2);
		expect(bend[0]).toBeLessThan(9250);
		expect(bend[1]).toBeGreaterThan(9250);
		expect(bend[1]).toBeLessThan(9262.5);
	});

	test("a depth the hole does not reach has none", () => {
		expect(mdAtTvd(path, given("true-vertical-depth", 9500))).toEqual({});
		expect(mdAtTvd(path, given("true-vertical-depth", -5))).toEqual({});
	});

	test("a station's own depth is passed once", () => {
		expect(crossingsOf(stations, 8500)).toEqual([8500]);
	});

	test("the greatest depth is at level, not at the end", () => {
		const at = (md: number) => maximumTvd.compute({ path, MD: given("measured-depth", md).value }) as number;
		expect(at(9262.5)).toBeGreaterThan(stations[2]?.tvd ?? 0);
		expect(at(14_000)).toBe(at(9262.5));
		expect(at(5000)).toBe(5000);
	});
});
