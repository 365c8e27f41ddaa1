import { describe, expect, it } from "vitest";
import { nearestName } from "../../src/diagnostics/nearest-name.ts";

const NAMES = ["weight", "grade", "connection", "shoe_track", "od", "top", "pressure_test"];

describe("nearestName", () => {
	it.each([
		["weigth", "weight"],
		["wieght", "weight"],
		["Weight", "weight"],
		["grad", "grade"],
		["shoe track", "shoe_track"],
		["shoetrack", "shoe_track"],
		["presure_test", "pressure_test"],
		["OD", "od"],
		["press", "pressure_test"],
		["conn", "connection"],
	])("%s is meant as %s", (written, meant) => {
		expect(nearestName(written, NAMES)).toBe(meant);
	});

	it.each(["density", "x", "ab", "wgt", ""])("%j is near to nothing", (written) => {
		expect(nearestName(written, NAMES)).toBeUndefined();
	});
});
