import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { RULE_FORMULAS } from "../../src/rules/formulas.ts";
import { say } from "../../src/rules/reason.ts";
import { finding, set, without } from "./builders.ts";

/** Surface casing runs from the hanger at 20 ft to 1000 ft: 980 ft. Its J55 BTC internal yield is 2,735 psi, API's 2,730. */
const test = (at_least: unknown, string = "surface") => ({
	check: "casing-pressure-test",
	applies_to: { string },
	limit: { measure: "test pressure", at_least },
});
const required = (at_least: unknown, string?: string) => finding(test(at_least, string)).required?.value;

describe("amounts", () => {
	it("a factor on a length", () => {
		expect(required({ times: "0.22 psi/ft", of: "string length" })).toBeCloseTo(215.6, 9);
		expect(required({ times: "1.5 psi/ft", of: "shoe vertical depth" })).toBeCloseTo(1500, 9);
	});
	it("a share of the yield, API 5C2 rounding 2,730 psi for 13 3/8 in 54.5 lb/ft J55 (memory)", () => {
		expect(required({ times: 0.7, of: "internal yield" })).toBeGreaterThan(0.7 * 2725);
		expect(required({ times: 0.7, of: "internal yield" })).toBeLessThan(0.7 * 2740);
	});
	it("the federal form: the greater of two, but not above a share of the yield", () => {
		const form = {
			least_of: [
				{ greatest_of: [{ times: "0.22 psi/ft", of: "string length" }, "1500 psi"] },
				{ times: 0.7, of: "internal yield" },
			],
		};
		expect(required(form)).toBe(1500);
		// 0.22 × 9980 = 2195.6, below 70 % of some 12,360 psi.
		expect(required(form, "production")).toBeCloseTo(2195.6, 9);
		const low = {
			least_of: [
				{ greatest_of: [{ times: "0.22 psi/ft", of: "string length" }, "3000 psi"] },
				{ times: 0.7, of: "internal yield" },
			],
		};
		expect(required(low)).toBeLessThan(3000);
	});
	it.each([
		["below its floor", "400 psi", "1000 psi", 400],
		["within", "100 psi", "1000 psi", 215.6],
		["above its ceiling", "100 psi", "200 psi", 200],
	])("held between, %s", (_, from, to, value) => {
		expect(required({ clamp: { times: "0.22 psi/ft", of: "string length" }, from, to })).toBeCloseTo(
			value,
			9,
		);
	});
	it("by how the cement top is found, and no other way", () => {
		const top = {
			check: "cement-top",
			applies_to: { string: "intermediate" },
			limit: {
				measure: "cement top above shoe",
				along: "hole",
				at_least: { by_method: { calculated: "1601 ft", "bond log": "1600 ft" } },
			},
		};
		const by = (method: string) => set("casing.2.cement.top_method", method);
		expect(finding(top, by("calculated")).verdict).toBe("not met");
		expect(finding(top, by("bond log")).verdict).toBe("met");
		const other = finding(top, by("temperature survey"));
		expect(other.verdict).toBe("cannot tell");
		expect(other.because).toBe("The rule gives no distance for a top by temperature survey.");
		expect(other.missing?.[0]?.at).toEqual(["casing", 2, "cement", "top_method"]);
	});
	it("a missing part of an amount is missing from the whole", () => {
		const margin = {
			check: "internal-yield-margin",
			applies_to: { string: "treated through" },
			limit: { measure: "internal yield", at_least: { times: 1.1, of: "maximum treating pressure" } },
		};
		expect(finding(margin).required?.value).toBeCloseTo(8800, 9);
		const found = finding(margin, without("stimulation.limits"));
		expect(found.verdict).toBe("cannot tell");
		expect(found.missing?.[0]?.at).toEqual(["stimulation", "limits", "maximum_treating_pressure"]);
	});
});

describe("the sentence", () => {
	it("carries both numbers and the arithmetic of the limit", () => {
		const form = {
			least_of: [
				{ greatest_of: [{ times: "0.22 psi/ft", of: "string length" }, "1600 psi"] },
				{ times: 0.7, of: "internal yield" },
			],
		};
		expect(finding(test(form)).because.replaceAll("\u00a0", " ")).toMatch(
			/^The planned test pressure is 1,500 psi; at least 1,600 psi is required: the lesser of 1,600 psi \(the greater of 216 psi \[0\.22 psi\/ft × 980 ft, the length of the string\] and 1,600 psi\) and 1,91\d psi \(0\.7 × 2,73\d psi, the lowest internal yield pressure of the string\)\.$/,
		);
	});
	it("does not print two different numbers alike", () => {
		expect(finding(test("1500.3 psi")).because.replaceAll("\u00a0", " ")).toBe(
			"The planned test pressure is 1,500.0 psi; at least 1,500.3 psi is required.",
		);
	});
	it("prints in metric as well, from the same parts", () => {
		const { reason } = finding(test("1500 psi"));
		expect(say(reason, { language: "en", units: "metric" }).replaceAll("\u00a0", " ")).toBe(
			"The planned test pressure is 10.34 MPa; at least 10.34 MPa is required.",
		);
	});
	it("never says compliant", () => {
		expect(finding(test("1500 psi")).because).not.toMatch(/complian/i);
	});
});

describe("what a limit comes to remembers how", () => {
	it("formula, rule and inputs", () => {
		const { required: value } = finding(test({ times: "0.22 psi/ft", of: "string length" }));
		expect(value?.from).toMatchObject({
			kind: "worked",
			formula: "rules/pressure-from-length",
			source: { key: "cited-rule" },
			inputs: {
				k: {
					from: {
						kind: "catalogue",
						table: "made-up.yaml",
						row: "xx-one.rule",
						column: "limit.at_least.times",
						source: { at: "Made-up Code § 1" },
					},
				},
				x: { value: 980 },
			},
		});
	});
	it("every formula is registered once, with words and a source", () => {
		expect(RULE_FORMULAS.length).toBeGreaterThan(15);
		expect(new Set(RULE_FORMULAS.map(({ id }) => id)).size).toBe(RULE_FORMULAS.length);
		for (const { id, name, expression, source } of RULE_FORMULAS) {
			expect(id).toMatch(/^rules\/[a-z-]+$/);
			expect(name).not.toBe("");
			expect(expression).not.toBe("");
			expect(source.key).toMatch(/^(cited-rule|common-practice|definition|geometry)$/);
		}
	});
	it("holding between never leaves its ends, and refuses ends the wrong way round", () => {
		const clamp = RULE_FORMULAS.find(({ id }) => id === "rules/clamp-pressure");
		const compute = clamp?.compute as (inputs: Record<string, number>) => number;
		fc.assert(
			fc.property(
				fc.double({ noNaN: true, min: -1e6, max: 1e6 }),
				fc.double({ noNaN: true, min: 0, max: 1e4 }),
				fc.double({ noNaN: true, min: 0, max: 1e4 }),
				(x, from, width) => {
					const held = compute({ x, from, to: from + width });
					return held >= from && held <= from + width && (x < from || x > from + width || held === x);
				},
			),
		);
		expect(compute({ x: 1, from: 2, to: 1 })).toBeNaN();
	});
});
