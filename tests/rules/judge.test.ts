import { describe, expect, it } from "vitest";
import { message } from "../../src/messages/message.ts";
import { judge as judgeOf } from "../../src/rules/judge.ts";
import { missingIn, missingInformation } from "../../src/rules/missing-information.ts";
import { finding, findings, rule, set, wellWith, without } from "./builders.ts";
import { judged as judge } from "./told.ts";

const deep = {
	check: "surface-shoe-depth",
	applies_to: { string: "surface" },
	limit: { measure: "shoe below protected water", at_least: "201 ft" },
};
const ok = { ...deep, limit: { measure: "shoe below protected water", at_least: "200 ft" } };
const permit = (condition: object) => {
	const { well, results } = wellWith(set("site.conditions", [condition]));
	return judge(well, results, []).findings;
};

describe("what a rule adds to the arithmetic", () => {
	it("a soft word leaves the numbers to a person, met or not", () => {
		expect(finding({ ...ok, soft: "approximately" })).toMatchObject({ verdict: "needs judgement" });
		const short = finding({ ...deep, soft: "approximately" });
		expect(short.verdict).toBe("needs judgement");
		expect(short.because).toContain('The rule says "approximately", so an engineer must decide.');
		expect(short.required).toBeDefined();
	});
	it("a soft word does not turn a missing input into a judgement", () => {
		expect(finding({ ...ok, soft: "about" }, without("geology.protected_water")).verdict).toBe("cannot tell");
	});
	it("what a shortfall may be cured by is said, and is no pass", () => {
		const found = finding({ ...deep, unless: "the director approves" });
		expect(found.verdict).toBe("not met");
		expect(found.because).toContain("The rule allows it only where the director approves.");
		expect(finding({ ...ok, unless: "the director approves" }).because).not.toContain("director");
	});
	it("a shortfall that only brings duties in needs judgement", () => {
		expect(finding({ ...deep, if_not_met: "needs judgement" }).verdict).toBe("needs judgement");
		expect(finding({ ...ok, if_not_met: "needs judgement" }).verdict).toBe("met");
	});
	it("dates: before it is in force and after its end it does not apply", () => {
		// The well is issued on 2026-05-04.
		const on = (in_force: object) => finding({ ...deep, in_force }).verdict;
		expect(on({ from: "2026-05-05" })).toBe("does not apply");
		expect(on({ from: "2026-05-04" })).toBe("not met");
		expect(on({ from: "unknown", to: "2026-05-03" })).toBe("does not apply");
		expect(on({ from: "unknown", to: "2026-05-04" })).toBe("not met");
		expect(on({ from: "unknown" })).toBe("not met");
	});
});

describe("variances", () => {
	const granted = set("site.variances", [
		{ of: "xx-one.rule", granted: "195 ft is enough", cite: "order 7" },
	]);
	it("stand beside the rule, and hand its question to a person", () => {
		const found = finding(deep, granted);
		expect(found.verdict).toBe("needs judgement");
		expect(found.variance).toEqual({ granted: "195 ft is enough", cite: "order 7" });
		expect(found.requirement).toBe("Made up for a test.");
		expect(found.because).toContain("at least 201");
	});
	it("do not spoil a rule that is met, and do not reach another rule", () => {
		expect(finding(ok, granted)).toMatchObject({ verdict: "met", variance: { cite: "order 7" } });
		expect(finding({ ...deep, id: "xx-one.other" }, granted).variance).toBeUndefined();
	});
});

describe("conditions of the permit", () => {
	it("are judged with the forms of a jurisdiction's row, under their own citation", () => {
		const condition = {
			check: "cement-top",
			string: "intermediate",
			limit: { at: "surface" },
			cite: "permit D-1 condition 4",
		};
		const [only] = permit(condition);
		expect(only).toMatchObject({
			verdict: "not met",
			subject: "intermediate",
			cite: { jurisdiction: "permit", citation: "permit D-1 condition 4", standing: "not compared" },
		});
		expect(permit({ ...condition, string: "surface" })[0]?.verdict).toBe("met");
	});
	it("carry the place of their number", () => {
		const [only] = permit({
			check: "wait-on-cement",
			string: "surface",
			limit: { measure: "wait on cement", at_least: "13 hr" },
			cite: "permit",
		});
		expect(only?.verdict).toBe("not met");
		expect(only?.required?.from).toMatchObject({
			kind: "definition",
			at: ["site", "conditions", 0, "limit", "at_least"],
			text: "13 hr",
		});
	});
	it("that cannot be read are findings, not silence", () => {
		const faults = [
			{ check: "nonsense", limit: { at: "surface" }, cite: "permit" },
			{ check: "cement-top", string: "surface", limit: { at: "sea level" }, cite: "permit" },
			{ check: "cement-top", limit: { at: "surface" }, cite: "permit" },
		];
		for (const fault of faults) {
			const [only] = permit(fault);
			expect(only?.verdict).toBe("cannot tell");
			expect(only?.missing?.[0]?.at.slice(0, 3)).toEqual(["site", "conditions", 0]);
		}
	});
	it("stand beside the rules, on lines of their own", () => {
		const { well, results } = wellWith(
			set("site.conditions", [
				{
					check: "surface-shoe-depth",
					string: "surface",
					limit: { measure: "shoe below protected water", at_least: "250 ft" },
					cite: "permit",
				},
			]),
		);
		const { findings: all } = judge(well, results, [rule(ok)]);
		expect(all.map(({ cite, verdict }) => [cite.jurisdiction, verdict])).toEqual([
			["xx-one", "met"],
			["permit", "not met"],
		]);
	});
});

describe("which string is meant", () => {
	const wait = (string: string) => ({
		check: "wait-on-cement",
		applies_to: { string },
		limit: { measure: "wait on cement", at_least: "1 hr" },
	});
	it.each([
		["surface", ["surface"]],
		["production", ["production"]],
		["below conductor", ["surface", "intermediate", "production"]],
		["below surface", ["intermediate", "production"]],
		["treated through", ["production"]],
	])("%s", (selector, subjects) => {
		expect(findings(wait(selector)).map(({ subject }) => subject)).toEqual(subjects);
	});
	it("none of the kind: the rule does not apply, and says so", () => {
		expect(finding(wait("liner"))).toMatchObject({
			verdict: "does not apply",
			because: "The well has no liner string.",
		});
		expect(finding(wait("treated through"), without("stimulation")).verdict).toBe("does not apply");
	});
	it("a name that does not say what the string is keeps a rule from being skipped", () => {
		const renamed = [
			set("casing.2.id", "nine-inch"),
			set("stimulation.annuli", [
				{ between: ["production", "nine-inch"], predicted_rise: "300 psi", stop_above: "350 psi" },
			]),
		];
		const found = finding(wait("intermediate"), ...renamed);
		expect(found.verdict).toBe("cannot tell");
		expect(found.missing?.[0]?.at).toEqual(["casing", 2, "id"]);
	});
	it("a rule may hang on a fact that cannot be told: met either way is met, else it cannot be told", () => {
		const asked = (limit: string) => ({
			check: "wait-on-cement",
			applies_to: { string: "surface", when: "exploratory well" },
			limit: { measure: "wait on cement", at_least: limit },
		});
		expect(finding(asked("13 hr")).verdict).toBe("does not apply");
		expect(finding(asked("13 hr"), set("well.class", "exploratory")).verdict).toBe("not met");
		const untold = finding(asked("13 hr"), without("well.class"));
		expect(untold).toMatchObject({ verdict: "cannot tell", missing: [{ at: ["well", "class"] }] });
		expect(finding(asked("12 hr"), without("well.class")).verdict).toBe("met");
	});
	it("a rule may hang on a measure", () => {
		const asked = (at_least: string) => ({
			check: "shoe-test",
			applies_to: { string: "surface", when: { measure: "preventer working pressure", at_least } },
			limit: { measure: "new hole before shoe test", at_most: "10 ft" },
		});
		expect(finding(asked("5000 psi")).verdict).toBe("not met");
		expect(finding(asked("5001 psi"))).toMatchObject({ verdict: "does not apply" });
		expect(finding(asked("5001 psi")).because).toContain("not at least 5,001");
		expect(finding(asked("5000 psi"), without("well_control")).missing?.map(({ at }) => at[0])).toContain(
			"well_control",
		);
	});
});

describe("what the well names and nobody knows", () => {
	it("is told with the judgement", () => {
		const { well, results } = wellWith(set("site.jurisdictions", ["xx-one", "zz-none"]));
		expect(judge(well, results, [rule(ok)]).unknownJurisdictions).toEqual(["zz-none"]);
	});
});

describe("missing information", () => {
	it("names each thing once, with every citation that asks for it", () => {
		const { well, results } = wellWith(without("geology.protected_water"));
		const second = rule({ ...deep, id: "xx-one.second", citation: "Made-up Code § 2" });
		const items = missingInformation(well, results, [rule(ok), second]);
		expect(items).toEqual([
			{
				what: message("rules/missing", { what: message("rules/base-protected-water") }),
				at: ["geology", "protected_water", "base"],
				askedBy: ["Made-up Code § 1", "Made-up Code § 2"],
			},
		]);
		expect(missingIn(judgeOf(well, results, [rule(ok), second]))).toEqual(items);
	});
	it("is empty where nothing is missing", () => {
		const { well, results } = wellWith();
		expect(missingInformation(well, results, [rule(ok)])).toEqual([]);
	});
});
