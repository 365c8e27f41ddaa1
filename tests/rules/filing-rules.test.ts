import { describe, expect, it } from "vitest";
import { withOwnRules } from "../../src/catalog/jurisdictions.ts";
import { told } from "../told.ts";
import { type Edit, finding, findings, read, row, rule, set, wellWith } from "./builders.ts";
import { judged as judge } from "./told.ts";

/* Rules as they are filed on: bands, consents, dates of coming into force, sets of one's own, conditions that name neighbors. */

const faults = (parts: Readonly<Record<string, unknown>>, more = {}) =>
	read([row(parts)], more).diagnostics.map(
		({ code, what, mend }) => `${code}: ${told(what)} (${told(mend)})`,
	);
const shoe = { check: "surface-shoe-depth", applies_to: { string: "surface" } };
const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, " ");

describe("a rule that says about", () => {
	// The surface shoe of the round-numbered well is 200 ft below the base of protected water.
	const about = (amount: string) =>
		finding({ ...shoe, limit: { measure: "shoe below protected water", at_least: amount, about: "5 ft" } });
	it("is met by what lies at or over the number: 200 ft where about 50 is asked", () => {
		expect(about("50 ft").verdict).toBe("met");
		expect(about("200 ft").verdict).toBe("met");
	});
	it("leaves the band under it to a person, and no more than the band", () => {
		expect(about("205 ft").verdict).toBe("needs judgement");
		expect(plain(about("205 ft").because)).toBe(
			'The shoe is 200 ft below the base of protected water; at least 205 ft is required. The rule says "about"; a shortfall of no more than 5 ft is left to engineering judgment.',
		);
		expect(about("205.1 ft").verdict).toBe("not met");
	});
});

describe("a limit on the side that protects nothing", () => {
	it("is refused, and allowed in a condition", () => {
		const test = { check: "casing-pressure-test", applies_to: { string: "surface" } };
		expect(faults({ ...test, limit: { measure: "test fall", at_least: "10 %" } })).toEqual([
			'rules/limit-form: a limit of "at least" on "test fall" protects nothing (write at_most, if that is what the rule says)',
		]);
		expect(
			faults({
				...test,
				limit: {
					if: { measure: "test fall", at_least: "10 %" },
					require: { measure: "test hold", at_least: "60 min" },
				},
			}),
		).toEqual([]);
	});
	it("a clamp the wrong way round is refused", () => {
		const clamp = { clamp: { times: 0.1, of: "well depth below ground" }, from: "1500 ft", to: "200 ft" };
		expect(
			faults({
				check: "shoe-depth",
				applies_to: { string: "surface" },
				limit: { measure: "shoe below ground", at_least: clamp },
			}),
		).toEqual([
			"rules/limit-form: the lower end of the clamp is above its upper end, so no amount fits between them (swap the two, if that is what you mean)",
		]);
	});
});

describe("a neighbor's written consent", () => {
	const setback = {
		check: "setback",
		applies_to: { neighbor: "dwelling" },
		limit: {
			any_of: [
				{ measure: "distance", from: "wellhead", at_least: "2 mi" },
				{ all_of: [{ consent: "written" }, { measure: "distance", from: "wellhead", at_least: "100 ft" }] },
			],
		},
	};
	it("is what the rule says it is, and none is taken as given", () => {
		expect(finding(setback).verdict).toBe("not met");
		expect(finding(setback).because).toContain("No written consent is recorded for The house.");
		const agreed = set("site.neighbors.0.consent", { given: "2026-03-01", cite: "county record 7" });
		expect(finding(setback, agreed).verdict).toBe("met");
	});
});

describe("in force by the right day", () => {
	const by = (in_force: Readonly<Record<string, unknown>>, ...edits: readonly Edit[]) =>
		finding(
			{ ...shoe, limit: { measure: "shoe below protected water", at_least: "50 ft" }, in_force },
			...edits,
		);
	it("counts by spud, by the permit and by the treatment", () => {
		// Spud on 2026-07-01, treatment from 2026-07-21, issued before both.
		expect(by({ from: "2026-07-01", by: "spud" }).verdict).toBe("met");
		expect(by({ from: "2026-07-02", by: "spud" }).because).toBe(
			"The rule is in force from 2026-07-02; spud is 2026-07-01.",
		);
		expect(by({ from: "2026-07-22", by: "treatment" }).verdict).toBe("does not apply");
		expect(by({ from: "2026-07-21", by: "treatment" }).verdict).toBe("met");
		const permit = set("site.events", [{ event: "permit issued", on: "2026-05-01", recorded: true }]);
		expect(by({ from: "2026-05-01", by: "permit" }, permit).verdict).toBe("met");
		expect(by({ from: "2026-05-02", by: "permit" }, permit).verdict).toBe("does not apply");
	});
	it("without that day: cannot tell, and says which", () => {
		const found = by({ from: "2014-01-01", by: "permit" });
		expect(found.verdict).toBe("cannot tell");
		expect(found.because).toBe(
			"The rule is in force from 2014-01-01, counted by the day the permit was issued, whose date is not given.",
		);
		expect(found.missing?.map(({ what, at }) => [told(what), at])).toEqual([
			["the day the permit was issued", ["site", "events"]],
		]);
	});
	it("refuses an end before the beginning", () => {
		expect(
			faults({
				...shoe,
				limit: { measure: "shoe below protected water", at_least: "50 ft" },
				in_force: { from: "2026-01-01", to: "2025-12-31" },
			}),
		).toEqual(["rules/date: the rule ends before it takes effect (swap the two, if that is what you mean)"]);
	});
});

describe("a condition of the permit that names its neighbors", () => {
	const condition = (neighbors: readonly string[] | undefined) =>
		set("site.conditions", [
			{
				check: "setback",
				limit: { measure: "distance", from: "wellhead", at_least: "2 mi" },
				cite: "condition 4",
				...(neighbors === undefined ? {} : { neighbors }),
			},
		]);
	const judged = (...edits: readonly Edit[]) => {
		const { well, results } = wellWith(...edits);
		return judge(well, results, []).findings.map(({ subject, verdict }) => `${subject}: ${verdict}`);
	};
	it("is judged on each of them, by kind or by short name", () => {
		expect(judged(condition(["dwelling"]))).toEqual(["The house: not met"]);
		const { well } = wellWith();
		expect(judged(condition([well.neighbors[0]?.id ?? ""]))).toEqual(["The house: not met"]);
	});
	it("cannot be told where it names none, or none is listed", () => {
		expect(judged(condition(undefined))).toEqual(["well: cannot tell"]);
		expect(judged(condition(["school"]))).toEqual(["school: cannot tell"]);
	});
});

describe("rules of one's own", () => {
	const shipped = [
		rule({ id: "xx-one.a", ...shoe, limit: { measure: "shoe below protected water", at_least: "50 ft" } }),
	];
	const mine = (parts: Readonly<Record<string, unknown>>) => [
		{
			file: "mine.yaml",
			jurisdiction: rule({
				...shoe,
				limit: { measure: "shoe below protected water", at_least: "100 ft" },
				...parts,
			}),
		},
	];
	const merged = (parts: Readonly<Record<string, unknown>>) => {
		const { value, diagnostics } = withOwnRules(shipped, mine(parts), "2026-05-04");
		return {
			ids: value?.flatMap(({ rules }) => rules.map(({ id }) => id)),
			faults: diagnostics.map(({ code, at }) => `${code} ${at.file} ${at.path.join(".")}`),
		};
	};
	it("add by default, also under a code that ships", () => {
		expect(merged({ id: "xx-one.b" })).toEqual({ ids: ["xx-one.a", "xx-one.b"], faults: [] });
	});
	it("replace a row only where they say so", () => {
		expect(merged({ id: "xx-one.b", replaces: "xx-one.a" })).toEqual({ ids: ["xx-one.b"], faults: [] });
		expect(merged({ id: "xx-one.a", replaces: "xx-one.a" })).toEqual({ ids: ["xx-one.a"], faults: [] });
		expect(merged({ id: "xx-one.a" }).faults).toEqual(["rules/id mine.yaml rules.0.id"]);
		expect(merged({ id: "xx-one.b", replaces: "xx-one.z" }).faults).toEqual([
			"rules/unknown-rule mine.yaml rules.0.replaces",
		]);
	});
	it("refuse a text dated after the issue", () => {
		expect(merged({ id: "xx-one.b", text_as_of: "2206-01-01" }).faults).toEqual([
			"rules/date mine.yaml rules.0.text_as_of",
		]);
	});
	it.each(["county", "municipality", "tribe", "field", "company"])("may be of a %s", (kind) => {
		expect(
			faults({ ...shoe, limit: { measure: "shoe below protected water", at_least: "50 ft" } }, { kind }),
		).toEqual([]);
	});
});

describe("events of a string, and days that no phase of the schedule has", () => {
	const events = set("site.events", [
		{ event: "casing test", string: "surface", on: "2026-07-08" },
		{ event: "pad rig release", on: "2026-08-20" },
		{ event: "water withdrawal", on: "2026-07-10" },
	]);
	it("are what a deadline counts from, and it prints them", () => {
		const tested = finding(
			{
				check: "string-report",
				applies_to: { string: "surface" },
				limit: { deadline: { after: { "casing test": "15 days" } } },
			},
			events,
		);
		expect(tested.because).toMatch(
			/^Due by 2026-07-23, 15 days after the pressure test of the string, planned for 2026-07-08/,
		);
		const pad = finding(
			{ check: "report", limit: { deadline: { after: { "pad rig release": "60 days" } } } },
			events,
		);
		expect(pad.because).toMatch(
			/^Due by 2026-10-19, 60 days after rig release from the last well of the pad/,
		);
	});
	it("cannot be told without their day", () => {
		const found = findings({
			check: "notice",
			limit: { deadline: { before: { "water withdrawal": "30 days" } } },
		});
		expect(found.map(({ verdict, missing }) => [verdict, missing?.[0]?.at])).toEqual([
			["cannot tell", ["site", "events"]],
		]);
	});
	it("of a string have no meaning for a rule on the well", () => {
		expect(faults({ check: "report", limit: { deadline: { after: { "casing test": "15 days" } } } })).toEqual(
			[
				'rules/limit-form: "casing test" is an event of one string, and the check is made on the well (name one of those checks, and the string in applies_to)',
			],
		);
	});
});
