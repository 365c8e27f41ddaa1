import { describe, expect, it } from "vitest";
import { findingsJson } from "../src/cli/findings-json.ts";
import { findingsText } from "../src/cli/findings-text.ts";
import { ENGLISH_READER } from "../src/messages/print.ts";
import { worstFirst } from "../src/rules/index.ts";
import { starterText, understandText } from "./starters.ts";

/** The planned starter with a relief valve that opens above the greatest treating pressure. */
const understanding = understandText(
	starterText("horizontal").replace(/relief_valve: \d+ psi/, "relief_valve: 9600 psi"),
);
const { findings } = understanding;
if (findings === undefined) throw new Error("the changed starter is refused");
const text = (more: Partial<Parameters<typeof findingsText>[2]> = {}) =>
	findingsText("well.yaml", findings, { width: 80, reader: ENGLISH_READER, ...more }).replaceAll(/\s+/g, " ");

describe("findings on the terminal", () => {
	it("begin with the totals, then what does not meet its limit, with number, limit, margin and place", () => {
		const [, totals, rest, , first] = findingsText("well.yaml", findings, {
			width: 80,
			reader: ENGLISH_READER,
		}).split("\n");
		expect(totals).toMatch(/^Does not meet 1 · Insufficient data \d+ · Engineer to confirm \d+ · Meets \d+/);
		expect(rest).toMatch(/^(?:Not )?applicable \d+$/);
		expect(first).toBe("DOES NOT MEET (1)");
		expect(text()).toContain(
			"practice, well: The relief valve setting is 9,600 psi; at most 9,500 psi is allowed",
		);
		expect(text()).toContain("Margin −100 psi. Stops: pumping. At stimulation › limits › relief_valve.");
		expect(text()).toContain("[practice.treatment.relief-below-maximum]");
	});
	it("tell a margin that is missed by little, and none where nothing is allowed", () => {
		const told = (found: NonNullable<typeof findings>): string =>
			findingsText("well.yaml", found, { width: 2000, reader: ENGLISH_READER }).replaceAll(
				/[ \u00a0]+/gu,
				" ",
			);
		const near = understandText(starterText("vertical-metric")).findings;
		expect(near === undefined ? "" : told(near)).toMatch(
			/spacer contact time of the surface string is 9\.8 min.*Margin −0\.2 min\./u,
		);
		const line = text({ width: 2000 });
		const ladder = understandText(
			starterText("horizontal").replace("line_test: 10500 psi", "line_test: 9000 psi"),
		).findings;
		expect(line).toContain("Margin");
		expect(ladder === undefined ? "" : told(ladder)).toMatch(/none is allowed\. Stops: pumping/u);
	});
	it("answer in the units asked for", () => {
		expect(text({ reader: { language: "en", units: "metric" } })).toMatch(
			/setting is 66[.,\d]* MPa; at most 65[.,\d]* MPa/,
		);
	});
	it("list what is met only when asked, and nothing but totals when quiet", () => {
		expect(text()).not.toContain(" MEETS (");
		expect(text({ all: true })).toContain("MEETS (");
		expect(text({ quiet: true })).not.toContain("(1)");
	});
	it("keep every line within the width", () => {
		for (const line of findingsText("well.yaml", findings, { width: 60, reader: ENGLISH_READER, all: true })
			.split("\n")
			.slice(2, -2))
			expect(line.length).toBeLessThanOrEqual(60);
	});
});

describe("findings as JSON", () => {
	const json = findingsJson("well.yaml", understanding, ENGLISH_READER) as {
		readonly verdicts: readonly Record<string, unknown>[];
	};
	it("carry rule, kind, numbers, margin, place and text", () => {
		expect(json.verdicts[0]).toMatchObject({
			rule: "practice.treatment.relief-below-maximum",
			kind: "practice",
			verdict: "not met",
			measured: { value: 9600, unit: "psi" },
			comparison: "at most",
			required: { value: 9500, unit: "psi" },
			margin: { value: -100, unit: "psi" },
			at: "stimulation.limits.relief_valve",
			stops: ["pumping"],
		});
	});
	it("name no margin where there is no number to compare", () => {
		for (const each of json.verdicts)
			expect("margin" in each).toBe(
				"measured" in each && "required" in each && each["comparison"] !== "present",
			);
	});
});

describe("the worst first", () => {
	it("is by verdict, then by what stops a job, then by the share that is missed", () => {
		const sorted = worstFirst(findings.judgement.findings);
		const order = ["not met", "cannot tell", "needs judgement", "met", "does not apply"];
		const ranks = sorted.map(({ verdict }) => order.indexOf(verdict));
		expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
		expect(sorted).toHaveLength(findings.judgement.findings.length);
	});
});
