import { describe, expect, test } from "vitest";
import { toeFaults } from "../../../src/calc/stimulation/toe.ts";
import { toldPlainly } from "../../told.ts";
import { well } from "../a-well.ts";
import { given } from "../given.ts";
import { only, planned, pumped, results } from "./a-stimulation.ts";

const md = (feet: number) => given("measured-depth", feet);
const valve = (opens: number, at: "surface" | "valve" = "surface") =>
	planned({
		limits: { maximumTreatingPressure: given("pressure", 9600), pumpKickouts: [] },
		toe: {
			kind: "initiation valve",
			depth: md(8950),
			opensAt: given("pressure", opens),
			opensAtMeasured: at,
		},
	});
const codes = (stimulation: ReturnType<typeof valve>) =>
	toeFaults(well([only], [pumped], { stimulation }), results(stimulation).found).map(({ code, what }) => [
		code,
		toldPlainly(what),
	]);

describe("an initiation valve", () => {
	// The casing is tested to 9,000 psi.
	test("opens above the casing test and below the maximum", () => {
		expect(codes(valve(9300))).toEqual([]);
	});
	test("must not be opened by the casing test, at it or below it", () => {
		expect(codes(valve(9000))).toEqual([
			["calc/toe-valve", "the casing test would open the initiation valve"],
		]);
	});
	test("must be within reach of the maximum", () => {
		expect(codes(valve(9601))).toEqual([
			["calc/toe-valve", "no allowed pressure opens the initiation valve"],
		]);
	});
	test("rated at its own depth, opens at the surface by the column less", () => {
		expect(results(valve(13_000, "valve")).found?.toe_opens_at_surface?.value).toBeCloseTo(
			13_000 - 0.052 * 8.4 * 8950,
			6,
		);
	});
	test("a well that is plugged and perforated says how its first stage is opened", () => {
		expect(results(planned({ toe: undefined as never })).gaps.map(({ key }) => key)).toContain(
			"stimulation.toe",
		);
	});
});
