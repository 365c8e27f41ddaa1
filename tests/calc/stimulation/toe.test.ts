import { describe, expect, test } from "vitest";
import { given } from "../given.ts";
import { planned, results } from "./a-stimulation.ts";

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
describe("an initiation valve", () => {
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
