import { describe, expect, it } from "vitest";
import { isTable } from "../src/cite/known.ts";
import { EVERY_FORMULA } from "../src/rules/every-formula.ts";
import { DIMENSIONS } from "../src/units/dimensions.ts";
import { resultsInFull } from "./results-in-full.ts";
import { told } from "./rules/told.ts";
import { findingsOf, STARTERS, starterText, understandStarter, understandText } from "./starters.ts";

describe.each(STARTERS)("starter %s", (starter) => {
	it("is understood without a fault", () => {
		expect(understandStarter(starter).diagnostics).toEqual([]);
	});

	it("has only finite values, each with a unit, a formula or an origin, a source and inputs", () => {
		const { index } = findingsOf(starter);
		expect(index.byKey.size).toBeGreaterThan(300);
		const json = resultsInFull(index, "");
		expect(Object.keys(json).length).toBe(index.byKey.size);
		for (const [key, value] of index.byKey) {
			const printed = json[key] as Record<string, unknown>;
			expect(printed, key).toHaveProperty("source");
			expect(printed, key).toHaveProperty("inputs");
			expect(printed, key).toHaveProperty("formula");
			if (isTable(value)) {
				for (const row of value.rows)
					for (const cell of Object.values(row)) expect(Number.isFinite(cell), key).toBe(true);
				continue;
			}
			expect(Number.isFinite(value.value), key).toBe(true);
			expect(DIMENSIONS[value.dimension], key).toBeDefined();
			expect(printed, key).toHaveProperty("unit");
			if (value.from.kind === "worked")
				expect(EVERY_FORMULA.has(value.from.formula), `${key}: ${value.from.formula}`).toBe(true);
		}
	});

	it("is understood alike twice", () => {
		const again = understandText(starterText(starter), `${starter}.yaml`);
		expect(resultsInFull(again.findings?.index ?? { byKey: new Map(), keyOf: () => undefined }, "")).toEqual(
			resultsInFull(findingsOf(starter).index, ""),
		);
	});

	it("has findings for every jurisdiction that it names, none of them on silence", () => {
		const { judgement, well } = findingsOf(starter);
		expect(judgement.findings.length).toBeGreaterThan(5);
		for (const code of well.site.jurisdictions)
			expect(
				judgement.findings.some((f) => f.cite.jurisdiction === code),
				code,
			).toBe(true);
		for (const finding of judgement.findings.map(told)) {
			expect(finding.because.length, finding.cite.rule).toBeGreaterThan(10);
			if (finding.verdict === "cannot tell")
				expect(finding.missing?.length ?? 0, finding.cite.rule).toBeGreaterThan(0);
		}
	});
});
