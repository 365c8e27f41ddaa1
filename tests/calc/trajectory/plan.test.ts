import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { minimumCurvaturePath, pathStationsOf } from "../../../src/calc/trajectory/path.ts";
import {
	kickoffOnPath,
	landingOnPath,
	maximumDogleg,
	maximumInclination,
	pathEnd,
} from "../../../src/calc/trajectory/path-summary.ts";
import { leastBuild, leastHeight } from "../../../src/calc/trajectory/plan-geometry.ts";
import { plannedStations } from "../../../src/calc/trajectory/planned-path.ts";
import type { TrajectoryPlan } from "../../../src/well/well.ts";
import { told, toldPlainly } from "../../told.ts";
import { given } from "../given.ts";

const pathOf = (plan: TrajectoryPlan) => {
	const { value, diagnostics } = plannedStations(plan);
	if (value === undefined) throw new Error(told(diagnostics[0]?.what));
	return minimumCurvaturePath.of({
		stations: value,
		TD: given("measured-depth", 0),
		Avs: given("angle", 0),
	});
};

const buildAndLand = (
	kickoff: number,
	build: number,
	inclination: number,
	lateral: number,
): TrajectoryPlan => ({
	kind: "build-and-land",
	kickoff: given("measured-depth", kickoff),
	build: given("dogleg", build),
	azimuth: given("angle", 158),
	landingInclination: given("angle", inclination),
	lateral: given("length", lateral),
});

const buildAndHold = (kickoff: number, build: number, tvd: number, departure: number): TrajectoryPlan => ({
	kind: "build-and-hold",
	kickoff: given("measured-depth", kickoff),
	build: given("dogleg", build),
	azimuth: given("angle", 90),
	target: { tvd: given("true-vertical-depth", tvd), departure: given("length", departure) },
});

describe("planned stations", () => {
	test("stand no further than a hundred feet apart, with both ends of every piece", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 100, max: 9000, noNaN: true }),
				fc.double({ min: 1, max: 15, noNaN: true }),
				fc.double({ min: 5, max: 100, noNaN: true }),
				(kickoff, build, inclination) => {
					const { value } = plannedStations(buildAndLand(kickoff, build, inclination, 3000));
					const mds = (value?.rows ?? []).map(({ md }) => md);
					const landing = kickoff + (100 * inclination) / build;
					for (const end of [0, kickoff, landing, landing + 3000]) expect(mds).toContain(end);
					for (const [i, md] of mds.entries()) {
						const step = md - (mds[i - 1] ?? md - 1);
						expect(step).toBeGreaterThan(0);
						expect(step).toBeLessThan(102);
					}
				},
			),
		);
	});

	test("build and land: the landing lies a radius below and beyond the kickoff", () => {
		const radius = 18_000 / Math.PI / 10;
		const path = pathOf(buildAndLand(8360, 10, 90, 8000));
		const stations = pathStationsOf(path);
		const landing = stations.find(({ md }) => md === 9260);
		expect(landing?.tvd).toBeCloseTo(8360 + radius, 9);
		expect(stations.at(-1)?.tvd).toBeCloseTo(8360 + radius, 6);
		expect(Math.hypot(stations.at(-1)?.north ?? 0, stations.at(-1)?.east ?? 0)).toBeCloseTo(radius + 8000, 6);
		expect(maximumDogleg.of({ path }).value).toBeCloseTo(10, 9);
		expect(maximumInclination.of({ path }).value).toBe(90);
		expect(pathEnd.of({ path }).value).toBe(17_260);
		expect(kickoffOnPath.of({ path }).value).toBe(8360);
	});

	test("build and hold goes through its target", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 500, max: 5000, noNaN: true }),
				fc.double({ min: 500, max: 8000, noNaN: true }),
				fc.double({ min: 10, max: 6000, noNaN: true }),
				fc.double({ min: 1.1, max: 4, noNaN: true }),
				(kickoff, below, departure, over) => {
					const build =
						over *
						(leastBuild.compute({
							Z: given("offset", below).value,
							X: given("length", departure).value,
						}) as number);
					const end = pathStationsOf(pathOf(buildAndHold(kickoff, build, kickoff + below, departure))).at(-1);
					expect(end?.tvd).toBeCloseTo(kickoff + below, 5);
					expect(end?.east).toBeCloseTo(departure, 5);
				},
			),
		);
	});

	test("segments: one arc each, to the angles at its own end", () => {
		const path = pathOf({
			kind: "segments",
			segments: [
				{ length: given("length", 2000), inclination: given("angle", 0), azimuth: given("angle", 30) },
				{ length: given("length", 1500), inclination: given("angle", 45), azimuth: given("angle", 30) },
				{ length: given("length", 1000), inclination: given("angle", 45), azimuth: given("angle", 70) },
			],
		});
		const stations = pathStationsOf(path);
		expect(stations.at(-1)).toMatchObject({ md: 4500, inclination: 45, azimuth: 70 });
		const doglegs = stations.filter(({ md }) => md > 3500).map(({ dogleg }) => dogleg);
		for (const dogleg of doglegs) expect(dogleg).toBeCloseTo(doglegs[0] ?? Number.NaN, 6);
		expect(kickoffOnPath.of({ path }).value).toBe(2000);
		expect(landingOnPath.of({ path, I_L: given("angle", 45), margin: given("angle", 15) }).value).toBeCloseTo(
			3000,
			6,
		);
	});

	test("a vertical plan is vertical", () => {
		const path = pathOf({ kind: "vertical", to: given("measured-depth", 4250) });
		expect(pathStationsOf(path).at(-1)).toMatchObject({ md: 4250, tvd: 4250, inclination: 0 });
		expect(kickoffOnPath.of({ path }).value).toBeNaN();
	});
});

describe("impossible plans say what would fit", () => {
	test("a target inside the arc: the offered build and the offered kickoff both reach it", () => {
		const { value, diagnostics } = plannedStations(buildAndHold(4000, 2, 5000, 2000));
		expect(value).toBeUndefined();
		const mend = toldPlainly(diagnostics[0]?.mend);
		const build = Number(/build at ([\d.]+)/.exec(mend)?.[1]);
		const kickoff = Number(/kick off at ([\d,.]+)/.exec(mend)?.[1]?.replace(",", ""));
		expect(plannedStations(buildAndHold(4000, build, 5000, 2000)).value).toBeDefined();
		expect(plannedStations(buildAndHold(kickoff, 2, 5000, 2000)).value).toBeDefined();
		expect(plannedStations(buildAndHold(4000, build - 0.02, 5000, 2000)).value).toBeUndefined();
		expect(plannedStations(buildAndHold(kickoff + 2, 2, 5000, 2000)).value).toBeUndefined();
	});

	test("a near target inside the arc likewise", () => {
		const { diagnostics } = plannedStations(buildAndHold(4000, 1, 4600, 300));
		const build = Number(/build at ([\d.]+)/.exec(toldPlainly(diagnostics[0]?.mend))?.[1]);
		expect(plannedStations(buildAndHold(4000, build, 4600, 300)).value).toBeDefined();
	});

	test.each([
		["a target above the kickoff", buildAndHold(5000, 3, 4900, 500), /no deeper than the kickoff/],
		["no build", buildAndHold(1000, 0, 5000, 500), /build rate of zero/],
		["a landing past straight up", buildAndLand(1000, 10, 180, 500), /no hole can follow/],
		["a kickoff above the datum", buildAndLand(-5, 10, 90, 500), /no hole can follow/],
		[
			"a segment that turns right back",
			{
				kind: "segments",
				segments: [
					{ length: given("length", 10), inclination: given("angle", 180), azimuth: given("angle", 0) },
				],
			} as TrajectoryPlan,
			/no hole can follow these segments/,
		],
	])("%s", (_, plan, what) => {
		const { value, diagnostics } = plannedStations(plan);
		expect(value).toBeUndefined();
		expect(diagnostics).toHaveLength(1);
		expect(diagnostics[0]).toMatchObject({ code: "calc/impossible-plan", severity: "error" });
		expect(toldPlainly(diagnostics[0]?.what)).toMatch(what);
	});

	test("least build and least height are each other's inverse", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 200, max: 8000, noNaN: true }),
				fc.double({ min: 10, max: 8000, noNaN: true }),
				(Z, X) => {
					const B = leastBuild.compute({
						Z: given("offset", Z).value,
						X: given("length", X).value,
					}) as number;
					const R = given("length", 18_000 / Math.PI / B).value;
					const least = leastHeight.compute({ R, X: given("length", X).value }) as number;
					expect(least).toBeCloseTo(Z, 4);
				},
			),
		);
	});
});
