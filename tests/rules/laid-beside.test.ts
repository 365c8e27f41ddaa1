import { describe, expect, it } from "vitest";
import { JURISDICTION_CODES, loadJurisdictions } from "../../src/catalog/jurisdictions.ts";
import { type Edit, KICKED, set, wellWith } from "./builders.ts";
import { judged } from "./told.ts";

/*
 * Rows mended or added when they were laid beside a public copy: who they bind, and what the copy says of the number. The copies
 * are named in the rows; the sweep of `every-shipped-row.test.ts` puts each number at, under and over its boundary.
 */

const shipped = loadJurisdictions(JURISDICTION_CODES).value ?? [];
const first = (id: string, ...edits: readonly Edit[]) => {
	const { well, results } = wellWith(...edits);
	const sets = shipped.flatMap((each) => {
		const rules = each.rules.filter((rule) => rule.id === id);
		return rules.length === 0 ? [] : [{ ...each, rules }];
	});
	expect(sets, id).toHaveLength(1);
	return judged(well, results, sets).findings[0];
};

describe("Montana, ARM 36.22.1106 and 36.22.1011", () => {
	it.each([
		["8100 psi", "met"],
		["8000 psi", "met"],
		["7999 psi", "not met"],
	])("the relief valve at 8,000 psi, casing tested to %s: %s", (pressure, verdict) => {
		const test = { pressure, hold: "30 min", allowed_fall: "10 %" };
		expect(
			first(
				"us-mt.wellcontrol",
				set("stimulation.limits.relief_valve", "8000 psi"),
				set("casing.3.pressure_test", test),
			)?.verdict,
		).toBe(verdict);
	});
	it.each([
		[{ pressure: "8000 psi", hold: "30 min", allowed_fall: "10 %" }, "met"],
		[{ pressure: "7999 psi", hold: "30 min", allowed_fall: "10 %" }, "not met"],
		[{ pressure: "8000 psi", hold: "29 min", allowed_fall: "10 %" }, "not met"],
		[{ pressure: "8000 psi", hold: "30 min", allowed_fall: "10.1 %" }, "not met"],
	])("the test of casing that is treated through: %j", (test, verdict) => {
		expect(first("us-mt.wellcontrol.test", set("casing.3.pressure_test", test))?.verdict).toBe(verdict);
	});
	it("a wildcat has 6 months for its report, a well in a known field 30 days after 2026-08-05", () => {
		const due = (id: string, is: string) =>
			/due by (\S+),/i.exec(first(id, set("well.class", is))?.because ?? "")?.[1];
		expect(["us-mt.report", "us-mt.report.wildcat"].map((id) => due(id, "development"))).toEqual([
			"2026-09-04",
			undefined,
		]);
		expect(["us-mt.report", "us-mt.report.wildcat"].map((id) => due(id, "exploratory"))).toEqual([
			undefined,
			"2027-02-05",
		]);
	});
});

describe("Illinois, 62 IAC 245.710(b): high volume begins over 80,000 gal in a stage of a horizontal well", () => {
	const applies = (volume: string, ...edits: readonly Edit[]) =>
		/due by/i.test(
			first("us-il.hv.lists", set("stimulation.stages.treatment.steps.0.clean_volume", volume), ...edits)
				?.because ?? "",
		);
	it.each([
		["79999 gal", false],
		["80000 gal", false],
		["80001 gal", true],
	])("a stage of %s", (volume, is) => {
		expect(applies(volume, ...KICKED)).toBe(is);
	});
	it("and of no vertical well", () => {
		expect(applies("90000 gal")).toBe(false);
	});
});

describe("Ohio and Pennsylvania", () => {
	it("plugging that nobody witnessed is reported 30 days after it, and asked of no well that stands", () => {
		expect(first("us-oh.report.plugging")?.verdict).toBe("does not apply");
		const plugged = set("site.events", [{ event: "well plugged", on: "2026-07-15", recorded: true }]);
		expect(first("us-oh.report.plugging", plugged)?.because).toMatch(/due by 2026-08-14/i);
	});
	it("a string that protects the water is no production casing in wells drilled after 2011-02-05", () => {
		const spud = (day: string) =>
			first(
				"us-pa.surf.not-production",
				set("well.spud", day),
				set("schedule.1.starts", day),
				set("schedule.0.starts", "2010-01-01"),
			)?.verdict;
		expect(spud("2011-02-05")).toBe("does not apply");
		expect(spud("2011-02-06")).not.toBe("does not apply");
	});
});
