import { describe, expect, it } from "vitest";
import { JURISDICTION_CODES, loadJurisdictions } from "../../src/catalog/jurisdictions.ts";
import type { Limit } from "../../src/catalog/limits/limit.ts";
import { ENGLISH_READER, factText } from "../../src/messages/print.ts";
import { numbersOf } from "../../src/rules/limit-in-words.ts";
import { rule } from "./builders.ts";

/* The numbers of a row as it writes them, in the unit of the rule: what is laid beside its text. */

const shoe = { check: "shoe-depth", applies_to: { string: "surface" } };
const strength = { check: "cement-strength", applies_to: { string: "surface" } };
const numbers = (limit: Limit, units: "field" | "metric" = "field"): string =>
	numbersOf(limit)
		.map((each) => factText(each, { ...ENGLISH_READER, units }))
		.join("; ");
const said = (check: Readonly<Record<string, unknown>>, limit: unknown): string =>
	numbers(rule({ ...check, limit }).rules[0].limit);

describe("the numbers of a row", () => {
	it.each([
		[shoe, { measure: "shoe below ground", at_least: "200 ft" }, "at least 200 ft"],
		[
			shoe,
			{
				measure: "shoe below ground",
				at_least: { clamp: { times: 0.1, of: "well depth below ground" }, from: "200 ft", to: "1500 ft" },
			},
			"at least 0.1 × the total depth below ground, TVD, but not less than 200 ft or more than 1500 ft",
		],
		[
			shoe,
			{
				measure: "shoe below ground",
				at_least: {
					by: "well depth below ground",
					steps: [
						{ up_to: "2500 ft", is: "100 ft" },
						{ under: "3000 ft", is: "150 ft" },
						{ beyond: "300 ft" },
					],
				},
			},
			"100 ft where the total depth below ground, TVD is at most 2500 ft; 150 ft where the total depth below ground, TVD is less than 3000 ft; 300 ft beyond that",
		],
		[
			strength,
			{ measure: "strength", zone: { bottom: "300 ft" }, after: "72 hr", at_least: "1200 psi" },
			"compressive strength: at least 1200 psi, in the bottom 300 ft of the string, 72 hr after placing",
		],
		[
			{ check: "setback", applies_to: { neighbor: "dwelling" } },
			{
				any_of: [
					{ measure: "distance", from: "wellhead", at_least: "0.5 mi", about: "20 ft" },
					{ all_of: [{ consent: "written" }, { measure: "distance", from: "wellhead", at_least: "100 ft" }] },
				],
			},
			/at least 0\.5 mi \(the rule says about; taken within 20 ft\) or .*at least 100 ft$/,
		],
		[
			{ check: "notice" },
			{ deadline: { before: { spud: "2 days" }, days: "business", no_sooner: "30 days" } },
			"2 business days before spud, no sooner than 30 days before it",
		],
		[
			{ check: "report" },
			{ deadline: { after: { completion: "90 days", "drilling ends": "150 days" } } },
			/^the earliest of 90 days after completion.* and 150 days after the end of drilling$/,
		],
		[
			{ check: "centralizers", applies_to: { string: "surface" } },
			{ pattern: { bottom_joints: 3 } },
			"centralizers on the lowest 3 joints",
		],
		[
			{ check: "offset-wells" },
			{ evidence_within: { radius: "1320 ft", of: "wellbore" } },
			"within 1320 ft of the wellbore",
		],
		[
			shoe,
			{
				if: { event: "spud", from: "2014-01-01" },
				require: { measure: "shoe below ground", at_least: "9 ft" },
			},
			/at least 9 ft, where spud from 2014-01-01/,
		],
		[{ check: "judgement" }, { question: "State it." }, /^$/],
	])("%j %j", (check, limit, words) => {
		const found = said(check, limit);
		if (words instanceof RegExp) expect(found).toMatch(words);
		else expect(found.endsWith(words), found).toBe(true);
	});

	it("are the same whatever units the reader has: a converted number is in no text", () => {
		const rules = (loadJurisdictions(JURISDICTION_CODES).value ?? []).flatMap((set) => set.rules);
		expect(rules.length).toBeGreaterThan(300);
		for (const { id, limit } of rules) expect(numbers(limit, "metric"), id).toBe(numbers(limit));
	});
});
