import { describe, expect, it } from "vitest";
import { JURISDICTION_CODES, loadJurisdictions } from "../../src/catalog/jurisdictions.ts";
import { say } from "../../src/rules/reason.ts";
import { findingsOf, STARTERS } from "../starters.ts";
import { told } from "../told.ts";
import { judged as judge } from "./told.ts";

const jurisdictions = loadJurisdictions(JURISDICTION_CODES).value ?? [];

describe.each(STARTERS)("%s under every jurisdiction", (starter) => {
	const { well, results } = findingsOf(starter);
	const { findings, counts } = judge(well, results, jurisdictions);

	it("gets a finding from every rule", () => {
		const asked = new Set(findings.map(({ cite }) => cite.rule));
		const rules = jurisdictions.flatMap(({ rules: each }) => each);
		expect(rules.filter(({ id }) => !asked.has(id))).toEqual([]);
		expect(rules.length).toBeGreaterThan(200);
		expect(Object.values(counts).every((count) => count > 0)).toBe(true);
	});

	it("every finding is a sentence that holds by itself", () => {
		for (const { because, cite } of findings) {
			expect(because, cite.rule).toMatch(/^[A-Z0-9].*[.)]$/s);
			expect(because, cite.rule).not.toMatch(/undefined|NaN|\[object|complian| {2}|\.\./i);
		}
	});

	it("prints in metric units too", () => {
		for (const { reason, cite } of findings)
			expect(say(reason, { language: "en", units: "metric" }), cite.rule).not.toMatch(
				/undefined|NaN|\bpsi\b|\bft\b/,
			);
	});

	it("what cannot be told names what is missing, or a date that no list covers", () => {
		for (const { verdict, missing = [], because, cite } of findings) {
			if (verdict === "cannot tell" && missing.length === 0)
				expect(because, cite.rule).toMatch(/list of holidays/);
			if (verdict === "met" || verdict === "does not apply") expect(missing, cite.rule).toEqual([]);
			for (const { what, at } of missing) {
				expect(told(what), cite.rule).toMatch(/^(the|a) /);
				expect(at.length, cite.rule).toBeGreaterThan(0);
			}
		}
	});

	it("a verdict on numbers carries both of them, and how they were compared", () => {
		for (const { required, measured, comparison, cite } of findings) {
			if (required !== undefined) expect(comparison, cite.rule).toBeDefined();
			if (measured !== undefined) expect(required, cite.rule).toBeDefined();
		}
	});

	it("comes out the same twice, whatever the order of the jurisdictions", () => {
		const back = judge(well, results, [...jurisdictions].reverse()).findings;
		const line = ({ cite, subject, verdict, because }: (typeof findings)[number]) =>
			`${cite.rule} ${subject} ${verdict} ${because}`;
		expect(back.map(line).sort()).toEqual(findings.map(line).sort());
	});
});
