import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { turnBetweenNorths, turnedStations } from "../../../src/calc/trajectory/north.ts";
import { trajectoryResults } from "../../../src/calc/trajectory/trajectory-results.ts";
import type { Survey, Well } from "../../../src/well/well.ts";
import { toldPlainly } from "../../told.ts";
import { well } from "../a-well.ts";
import { given, stationTable } from "../given.ts";

const deg = (value: number) => given("angle", value);

const stations = stationTable([
	[0, 0, 0],
	[5000, 0, 0],
	[5900, 90, 150],
	[12_000, 90, 150],
]);

const surveyedWith = (north: object | undefined, survey: Partial<Survey>) =>
	trajectoryResults(
		well([], [], {
			site: { jurisdictions: [], ...(north === undefined ? {} : { north }) },
			trajectory: { survey: { stations, ...survey } },
		} as unknown as Partial<Well>),
	);

const azimuthWith = (north: object | undefined, survey: Partial<Survey>): number | undefined =>
	surveyedWith(north, survey).value?.closure_azimuth.value;

describe("norths are turned to one, or asked for", () => {
	const whole = { convergence: deg(0.8), declination: deg(3.9) };

	test("a survey in the well's own north, or in none stated, stays as it is", () => {
		expect(azimuthWith({ reference: "grid", ...whole }, { north: "grid" })).toBeCloseTo(150, 9);
		expect(azimuthWith({ reference: "grid", ...whole }, {})).toBeCloseTo(150, 9);
		expect(azimuthWith(undefined, {})).toBeCloseTo(150, 9);
	});

	test("a magnetic survey of a well planned on the grid gains the declination and loses the convergence", () => {
		expect(azimuthWith({ reference: "grid", ...whole }, { north: "magnetic" })).toBeCloseTo(
			150 + 3.9 - 0.8,
			9,
		);
		expect(azimuthWith({ reference: "true", ...whole }, { north: "magnetic" })).toBeCloseTo(153.9, 9);
		expect(azimuthWith({ reference: "true", ...whole }, { north: "grid" })).toBeCloseTo(150.8, 9);
		expect(azimuthWith({ reference: "magnetic", ...whole }, { north: "true" })).toBeCloseTo(146.1, 9);
	});

	test("what turns one to the other is asked for, by its name and its place", () => {
		const without = (north: object | undefined, survey: Partial<Survey>) => surveyedWith(north, survey);
		const { value, diagnostics } = without(
			{ reference: "grid", convergence: deg(0.8) },
			{ north: "magnetic" },
		);
		expect(value).toBeUndefined();
		expect(diagnostics).toMatchObject([{ code: "calc/mixed-norths", severity: "error" }]);
		expect(toldPlainly(diagnostics[0]?.expected)).toContain("magnetic declination");
		expect(without(undefined, { north: "magnetic" }).diagnostics[0]?.code).toBe("calc/mixed-norths");
		expect(toldPlainly(without({ reference: "true" }, { north: "grid" }).diagnostics[0]?.mend)).toContain(
			"convergence",
		);
	});

	test("turning there and back changes no azimuth, and no depth", () => {
		const angle = fc.double({ min: -20, max: 20, noNaN: true });
		fc.assert(
			fc.property(angle, angle, (one, other) => {
				const turn = turnBetweenNorths.of({ δ_from: deg(one), δ_to: deg(other) });
				const back = turnBetweenNorths.of({ δ_from: deg(other), δ_to: deg(one) });
				const again = turnedStations.of({ stations: turnedStations.of({ stations, turn }), turn: back });
				for (const [i, row] of again.rows.entries()) {
					const from = stations.rows[i];
					expect(row.md).toBe(from?.md);
					expect(row.inclination).toBe(from?.inclination);
					expect(Math.cos(((row.azimuth - (from?.azimuth ?? 0)) * Math.PI) / 180)).toBeCloseTo(1, 12);
				}
			}),
		);
	});
});

describe("a survey that begins down the hole", () => {
	const startingAt = (md: number, inclination: number) =>
		surveyedWith(undefined, {
			stations: stationTable([
				[md, inclination, 40],
				[md + 500, inclination, 40],
			]),
		}).diagnostics.map(({ code }) => code);

	test("already inclined, is told; vertical, or at the datum, is not", () => {
		expect(startingAt(4000, 30)).toEqual(["calc/survey-start"]);
		expect(startingAt(4000, 0.5)).toEqual([]);
		expect(startingAt(0, 30)).toEqual([]);
	});
});
