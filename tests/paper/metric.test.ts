import { describe, expect, it } from "vitest";
import { PAPERS } from "../../src/document/document.ts";
import { jobName, jobsOfWell } from "../../src/paper/jobs.ts";
import type { PaperRequest } from "../../src/pipeline.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { composeOnce } from "../run/compose-once.ts";
import { findingsOf } from "../starters.ts";

/*
 * A well written in metric units is told in them: a number in another unit stands only where a rule is quoted, which counts in
 * its own, and where a person typed them.
 */

const UNITS = {
	en: /\d ?(?:ft|feet|foot|psi|ppg|bbl|barrels?|gal|gallons?|lb|lbf|pounds?|in|inch|inches|mi|miles?|°F)\b/u,
	es: /\d ?(?:ft|pies?|psi|ppg|bbl|barril|barriles|gal|galón|galones|lb|lbf|libras?|pulgadas?|millas?|°F)\b/u,
} as const;

const textsOf = (language: "en" | "es"): readonly (readonly [paper: string, text: string])[] => {
	const findings = findingsOf("vertical-metric");
	const common = { language, units: "metric" } as const;
	const requests: readonly PaperRequest[] = [
		// The rule sections quote rules; what they hold is named by each rule in its own units.
		...PAPERS.filter((each) => !["crew", "regulator", "regulator-appendix"].includes(each)).map((paper) => ({
			paper,
			...common,
		})),
		...jobsOfWell(findings.well).map((job) => ({ paper: "crew" as const, job: jobName(job), ...common })),
	];
	return composeOnce(findings, requests).documents.map(({ paper }) => [
		paper.paper,
		renderText(paper).replaceAll(/[\u00a0\u202f\u2009]/gu, " "),
	]);
};

describe.each(["en", "es"] as const)("a metric well (%s)", (language) => {
	it("is told in metric units in every paper but where a rule is quoted", () => {
		const found = textsOf(language).flatMap(([paper, text]) =>
			text
				.split("\n")
				.filter((line) => UNITS[language].test(line))
				.map((line) => `${paper}: ${line}`),
		);
		expect(found).toEqual([]);
	});
});

describe("the pump schedule of a metric well", () => {
	it.each([
		["en", "Proppant in clean fluid, kg/m³", /per gallon/iu],
		["es", "Apuntalante en fluido limpio, kg/m³", /por galón/iu],
	] as const)("heads its concentration by no unit but its own (%s)", (language, head, other) => {
		const documents = composeOnce(
			findingsOf("vertical-metric"),
			(["regulator", "regulator-appendix"] as const).map((paper) => ({ paper, language, units: "metric" })),
		).documents;
		const text = documents
			.map(({ paper }) => renderText(paper))
			.join("\n")
			.replaceAll(/[\u00a0\u202f\u2009]/gu, " ");
		expect(text).toContain(head);
		expect(text).not.toMatch(other);
	});
});
