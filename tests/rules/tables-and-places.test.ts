import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readJurisdictionText } from "../../src/catalog/jurisdictions.ts";
import { judge } from "../../src/rules/judge.ts";
import { told } from "../told.ts";
import { type Edit, finding, read, row, set, wellWith, without } from "./builders.ts";

/*
 * What an author of a rules file may write beside plain numbers: tables that go by steps, spans of weeks to years, notices that
 * must not come too soon, places, days, and several conditions at once. The well is the round-numbered one; what a number comes
 * to on it is worked in the line. The jurisdictions in part are written from public copies (their addresses stand in the files).
 */

const set_ = (name: string) => {
	const { value, diagnostics } = readJurisdictionText(
		readFileSync(new URL(`../../fixtures/jurisdictions/${name}.yaml`, import.meta.url), "utf8"),
		`${name}.yaml`,
	);
	if (value === undefined || diagnostics.length > 0)
		throw new Error(diagnostics.map(({ at, what }) => `${at.path.join(".")}: ${told(what)}`).join("; "));
	return value;
};
const SETS = ["us-la", "us-ca-offshore", "us-tx-chico", "us-ocs", "xx-three"].map(set_);

const verdicts = (rule: string, ...edits: readonly Edit[]): readonly string[] => {
	const { well, results } = wellWith(...edits);
	return judge(well, results, SETS)
		.findings.filter(({ cite }) => cite.rule === rule)
		.map(({ verdict }) => verdict);
};
const verdict = (rule: string, ...edits: readonly Edit[]): string => verdicts(rule, ...edits)[0] ?? "none";

const SURFACE = "casing.1";
const INTERMEDIATE = "casing.2";
const PRODUCTION = "casing.3";
const shoe = (depth: number): readonly Edit[] => [
	set(`${SURFACE}.pipe.0.to`, `${depth} ft`),
	set("holes.1.to", `${depth + 10} ft`),
	set(`${SURFACE}.cement.slurries.1.to`, `${depth} ft`),
	set(`${SURFACE}.centralizers`, { bow_spring: [{ from: "surface", to: `${depth} ft`, every: "1 joints" }] }),
];
const issued = set("well.issued", "2027-12-31");
const sent = (rule: string, on: string): Edit => set("site.notices", [{ to: "the agency", rule, sent: on }]);

describe("Louisiana, by its table", () => {
	it("asks 1,800 ft below ground of a well deeper than 9,000 ft: at, under and over", () => {
		expect([1820, 1819.9, 1820.1].map((depth) => verdict("us-la.surf.depth", ...shoe(depth)))).toEqual([
			"met",
			"not met",
			"met",
		]);
	});
	it("names the table and the depth", () => {
		const { well, results } = wellWith();
		const [found] = judge(well, results, SETS).findings.filter(
			({ cite }) => cite.rule === "us-la.surf.depth",
		);
		expect(found?.required?.value).toBe(1800);
	});
	it('is met by "sacks of cement" or by 10 percent over the annulus, and by neither at none', () => {
		// The two slurries of the surface string are pumped with 30 percent over the open hole.
		expect(verdict("us-la.surf.cement")).toBe("met");
		const lean = [0, 1].map((i) => set(`${SURFACE}.cement.slurries.${i}.excess`, "0 %"));
		const heavy = set(`${SURFACE}.cement.slurries.0.yield`, "1.18 ft3/sk");
		expect(verdict("us-la.surf.cement", ...lean)).toBe("not met");
		expect(verdict("us-la.surf.cement", ...lean, heavy)).toBe("met");
		expect(verdict("us-la.surf.cement", without(`${SURFACE}.cement`))).toBe("cannot tell");
	});
	it("tests to the pressure of the table: at, under, over, and without a test", () => {
		const test = (pressure: string) =>
			set(`${SURFACE}.pressure_test`, { pressure, hold: "30 min", allowed_fall: "10 %" });
		expect(
			["1000 psi", "999 psi", "1001 psi"].map((pressure) => verdict("us-la.surf.test", test(pressure))),
		).toEqual(["met", "not met", "met"]);
		expect(verdict("us-la.surf.test", without(`${SURFACE}.pressure_test`))).toBe("cannot tell");
	});
});

describe("California offshore, two surface strings", () => {
	const test = (pressure: string) => set(`${SURFACE}.pressure_test.pressure`, pressure);
	it("the first is tested to 1 psi per foot: 1,000 psi at 1,000 ft", () => {
		expect(
			["1000 psi", "999.9 psi", "1000.1 psi"].map((p) => verdict("us-ca-offshore.surf.test", test(p))),
		).toEqual(["met", "not met", "met"]);
	});
	it("a rule on a second surface string does not apply where there is one", () => {
		expect(verdict("us-ca-offshore.second.test")).toBe("does not apply");
	});
	it("the greater of 1,500 psi and 0.2 psi per foot: 1,996 psi of 9,980 ft", () => {
		const deep = (pressure: string) => set(`${PRODUCTION}.pressure_test.pressure`, pressure);
		const of = (pressure: string) => verdicts("us-ca-offshore.deeper.test", deep(pressure))[1];
		expect(["1996 psi", "1995 psi", "1997 psi"].map(of)).toEqual(["met", "not met", "met"]);
	});
	it("hours or strength, whichever is first", () => {
		const wait = (hours: string) => set(`${INTERMEDIATE}.cement.wait_on_cement`, hours);
		const of = (...edits: readonly Edit[]) => verdicts("us-ca-offshore.woc.others", ...edits)[0];
		const weak = set(`${INTERMEDIATE}.cement.slurries.0.strength`, [
			{ value: "400 psi", after: "24 hr", at: "120 degF" },
		]);
		expect([of(wait("12 hr"), weak), of(wait("11.9 hr"), weak), of(wait("9 hr"))]).toEqual([
			"met",
			"not met",
			"met",
		]);
	});
});

describe("a city's table by depth and by size", () => {
	it('binds the "pipe diameter": 7,740 psi of 5 1/2 in beyond 8,000 ft, and nothing of another size', () => {
		// 5 1/2 in, 23 lb/ft, P110 holds 14,530 psi; J55 of 14 lb/ft holds 4,270 psi.
		expect(verdict("us-tx-chico.prod.rating")).toBe("met");
		const weak = [set(`${PRODUCTION}.pipe.0.weight`, "14 lb/ft"), set(`${PRODUCTION}.pipe.0.grade`, "J55")];
		expect(verdict("us-tx-chico.prod.rating", ...weak)).toBe("not met");
		const other = [
			set(`${PRODUCTION}.pipe.0.od`, "4 1/2 in"),
			set(`${PRODUCTION}.pipe.0.weight`, "11.6 lb/ft"),
			set(`${PRODUCTION}.pipe.0.grade`, "J55"),
		];
		expect(verdict("us-tx-chico.prod.rating", ...other)).toBe("does not apply");
	});
});

describe("a window of new hole", () => {
	it("is at least 10 ft and at most 50 ft", () => {
		const hole = (depth: string) => verdict("us-ocs.shoe.test", set(`${SURFACE}.shoe_test.new_hole`, depth));
		expect(["10 ft", "9.9 ft", "50 ft", "50.1 ft"].map(hole)).toEqual(["met", "not met", "met", "not met"]);
		expect(verdict("us-ocs.shoe.test", without(`${SURFACE}.shoe_test`))).toBe("cannot tell");
	});
});

describe("a table's steps", () => {
	// The surface string is 980 ft long, from the hanger 20 ft down.
	const asked = (end: string, key: "up_to" | "under") =>
		finding({
			check: "wait-on-cement",
			applies_to: { string: "surface" },
			limit: {
				measure: "wait on cement",
				at_least: { by: "string length", steps: [{ [key]: end, is: "12 hr" }, { beyond: "24 hr" }] },
			},
		});
	it("take their end in where they say up to, and leave it out where they say under", () => {
		expect(asked("980 ft", "up_to").verdict).toBe("met");
		expect(asked("979.9 ft", "up_to").verdict).toBe("not met");
		expect(asked("980 ft", "under").verdict).toBe("not met");
		expect(asked("980.1 ft", "under").verdict).toBe("met");
	});
	it("say what the table goes by", () => {
		expect(asked("980 ft", "under").because).toContain(
			"by the rule’s table, for a length of the string of 980\u00a0ft",
		);
	});
	it("cannot be told without what they go by", () => {
		const found = finding(
			{
				check: "wait-on-cement",
				applies_to: { string: "surface" },
				limit: {
					measure: "wait on cement",
					at_least: {
						by: "shoe below protected water",
						steps: [{ up_to: "9 ft", is: "1 hr" }, { beyond: "2 hr" }],
					},
				},
			},
			without("geology.protected_water"),
		);
		expect(found.verdict).toBe("cannot tell");
	});
	it.each([
		[[{ up_to: "9 ft", is: "1 hr" }], "beyond"],
		[[{ beyond: "1 hr" }], "beyond"],
		[[{ up_to: "9 ft", is: "1 hr" }, { up_to: "8 ft", is: "2 hr" }, { beyond: "3 hr" }], "order"],
		[[{ to: "9 ft", is: "1 hr" }, { beyond: "3 hr" }], "up_to"],
		[[{ up_to: "9 psi", is: "1 hr" }, { beyond: "3 hr" }], "unit"],
	])("%j is refused and mended: %s", (steps, mend) => {
		const { diagnostics } = read([
			row({
				check: "wait-on-cement",
				applies_to: { string: "surface" },
				limit: { measure: "wait on cement", at_least: { by: "string length", steps } },
			}),
		]);
		expect(diagnostics).toHaveLength(1);
		expect(`${told(diagnostics[0]?.expected ?? "")} ${told(diagnostics[0]?.mend ?? "")}`).toContain(mend);
	});
});

describe("places and days", () => {
	it("a county is told by its name, whatever its case, and with or without the word county", () => {
		const wait = set(`${SURFACE}.cement.wait_on_cement`, "9 hr");
		expect(verdict("xx-three.county", wait)).toBe("met");
		expect(verdict("xx-three.county", wait, set("site.county", "flint"))).toBe("met");
		expect(verdict("xx-three.county", wait, set("site.county", "Slate County"))).toBe("not met");
		expect(verdict("xx-three.county", wait, without("site.county"))).toBe("cannot tell");
		expect(
			verdict("xx-three.county", without("site.county"), set(`${SURFACE}.cement.wait_on_cement`, "18 hr")),
		).toBe("met");
	});
	it("a field that the rule leaves out is left out", () => {
		expect(verdict("xx-three.field")).toBe("does not apply");
		expect(verdict("xx-three.field", set("well.field", "Another"))).toBe("not met");
		expect(verdict("xx-three.field", without("well.field"))).toBe("cannot tell");
	});
	it("a day counts from itself on, and before another not on it", () => {
		expect(verdict("xx-three.older")).toBe("does not apply");
		const begun = (day: string) => [set("well.spud", day), set("schedule.1.starts", day)];
		expect(verdict("xx-three.older", ...begun("2026-06-30"))).toBe("met");
		expect(verdict("xx-three.older", without("well.spud"), without("schedule"))).not.toBe("does not apply");
	});
	it("one condition of several is enough, or all are asked", () => {
		expect(verdict("xx-three.gas")).not.toBe("does not apply");
		const oil = set("well.purpose", "oil");
		expect(verdict("xx-three.gas", oil)).toBe("does not apply");
		expect(verdict("xx-three.gas", oil, set("well.class", "exploratory"))).not.toBe("does not apply");
		// Met either way, whatever the class may be.
		expect(verdict("xx-three.gas", oil, without("well.class"))).toBe("met");
		expect(verdict("xx-three.oil", oil)).toBe("needs judgement");
		expect(verdict("xx-three.oil")).toBe("does not apply");
		expect(verdict("xx-three.oil", set("well.purpose", "gas and oil"))).toBe("needs judgement");
		expect(verdict("xx-three.oil", without("well.purpose"))).toBe("cannot tell");
	});
});

describe("spans", () => {
	it("months and years keep the day, and end with a month that lacks it", () => {
		// Flowback ends on 2026-08-05: half a year on is 2027-02-05.
		const on = (day: string) => verdict("xx-three.month", issued, sent("xx-three.month", day));
		expect(["2027-02-05", "2027-02-04", "2027-02-06"].map(on)).toEqual(["met", "met", "not met"]);
		// Drilling ends on 2026-07-21; a year on is before 60 weeks after flowback.
		const year = (day: string) => verdict("xx-three.year", issued, sent("xx-three.year", day));
		expect(["2027-07-21", "2027-07-22"].map(year)).toEqual(["met", "not met"]);
	});
	it("a notice may come too soon", () => {
		// Drilling starts on 2026-07-01: not before 2026-06-17, and by 2026-06-30.
		const on = (day: string) => verdict("xx-three.window", issued, sent("xx-three.window", day));
		expect(["2026-06-16", "2026-06-17", "2026-06-30", "2026-07-01"].map(on)).toEqual([
			"not met",
			"met",
			"met",
			"not met",
		]);
	});
	it("hours after an event are dated on the safe side of them", () => {
		const late = (span: string, day: string) =>
			finding(
				{ check: "report", limit: { deadline: { after: { "stimulation ends": span } } } },
				issued,
				sent("xx-one.rule", day),
			).verdict;
		// The treatment ends on 2026-07-26: 36 hours on is surely over by the 28th.
		expect([late("36 hours", "2026-07-27"), late("36 hours", "2026-07-28")]).toEqual(["met", "not met"]);
		expect([late("48 hours", "2026-07-28"), late("48 hours", "2026-07-29")]).toEqual(["met", "not met"]);
	});
	it.each([
		[{ before: { spud: "30" } }, "30 days"],
		[{ before: { spud: "2 fortnights" } }, "6 months"],
		[{ before: { spud: "2 months" }, days: "business" }, "days: business"],
		[{ before: "spud" }, "spud: 30 days"],
		[{ before: { spud: "2 days", completion: "2 days" }, no_sooner: "9 days" }, "one event"],
		[{ after: { spud: "2 days" }, no_sooner: "9 days" }, "after, days"],
	])("%j is refused and mended: %s", (deadline, mend) => {
		const { diagnostics } = read([row({ check: "notice", limit: { deadline } })]);
		expect(diagnostics).toHaveLength(1);
		expect(`${told(diagnostics[0]?.expected ?? "")} ${told(diagnostics[0]?.mend ?? "")}`).toContain(mend);
	});
});

describe("other numbers", () => {
	it("a factor may be written as a percentage", () => {
		// 33 percent of 9,980 ft is 3,293.4 ft; cement from 6,706.6 ft up to the shoe at 10,000 ft.
		const top = (depth: string) =>
			verdict("xx-three.third", set(`${PRODUCTION}.cement.slurries.0.from`, depth));
		expect(["6706.6 ft", "6706.7 ft", "6706.5 ft"].map(top)).toEqual(["met", "not met", "met"]);
	});
	it("hours are held between two, and the greatest counts", () => {
		const wait = (hours: string) =>
			verdict("xx-three.wait", set(`${INTERMEDIATE}.cement.wait_on_cement`, hours));
		expect(["18 hr", "17.9 hr"].map(wait)).toEqual(["met", "not met"]);
	});
	it("a density may be a sum or a multiple of another", () => {
		// 9.4 ppg × 1.1 is 10.34 ppg, and 9.4 ppg with 60 kg/m³ is 9.901 ppg, the lesser.
		const test = (density: string) =>
			verdict("xx-three.shoe", set(`${SURFACE}.shoe_test.equivalent`, density));
		expect(["9.91 ppg", "9.90 ppg"].map(test)).toEqual(["met", "not met"]);
	});
	it("metric and customary depths are compared as they are", () => {
		const depth = (feet: number) => verdict("xx-three.depth", ...shoe(feet));
		expect([600, 599.9].map(depth)).toEqual(["met", "not met"]);
	});
	it("a distance by a table of sour gas, or the owner's consent", () => {
		const far = (distance: string, ppm: string) =>
			verdicts(
				"xx-three.near",
				set("site.neighbors.0.surveyed", [{ from: "wellhead", distance }]),
				set("safety.hydrogen_sulfide.fraction", ppm),
			)[0];
		expect([
			far("100 m", "99 ppm"),
			far("99.9 m", "99 ppm"),
			far("100 m", "100 ppm"),
			far("1.5 km", "100 ppm"),
		]).toEqual(["met", "not met", "not met", "met"]);
	});
});

describe("a way that may not be there for this well", () => {
	const limit = (inner: string) => ({
		check: "wait-on-cement",
		applies_to: { string: "surface" },
		limit: {
			any_of: [
				{ measure: "wait on cement", at_least: "18 hr" },
				{ if: { county: "Marl" }, require: { measure: "wait on cement", at_least: inner } },
			],
		},
	});
	// The string waits 12 hours.
	it.each([
		["8 hr", [], "met"],
		["8 hr", [set("site.county", "Slate")], "not met"],
		["8 hr", [without("site.county")], "cannot tell"],
		["14 hr", [without("site.county")], "not met"],
	] as const)("of %s", (inner, edits, expected) => {
		expect(finding(limit(inner), ...edits).verdict).toBe(expected);
	});
});
