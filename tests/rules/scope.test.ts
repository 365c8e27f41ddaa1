import { describe, expect, it } from "vitest";
import { composePapers } from "../../src/pipeline.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { eventDate } from "../../src/rules/events.ts";
import { starterText, understandText } from "../starters.ts";
import { told } from "./told.ts";

const HORIZONTAL = starterText("horizontal");

const understood = (text: string) => {
	const { findings, diagnostics } = understandText(text);
	if (findings === undefined) throw new Error(diagnostics.map(({ what }) => what).join("; "));
	return findings;
};
const regulator = (findings: ReturnType<typeof understood>, language: "en" | "es" = "en") =>
	composePapers(findings, [{ paper: "regulator", language, units: "field" }]).documents.map(
		({ paper }) => paper,
	)[0];

describe("a rule on the lease line", () => {
	it("lacks its distance where no lease line is listed: every lease has one, however complete the list", () => {
		const without = HORIZONTAL.replace(/ {4}- \{ id: lease, .*\n(?: {8}.*\n)+/u, "");
		expect(without).not.toBe(HORIZONTAL);
		const { judgement, missing } = understood(without);
		const found = judgement.findings.map(told).find(({ cite }) => cite.rule === "us-tx.setback.lease");
		expect(found).toMatchObject({
			verdict: "cannot tell",
			because: "No lease line is listed; every well has one.",
		});
		expect(missing.map(({ at }) => at)).toContainEqual(["site", "neighbors"]);
	});

	it("is judged where it is", () => {
		const { judgement } = understood(HORIZONTAL);
		expect(judgement.findings.find(({ cite }) => cite.rule === "us-tx.setback.lease")?.verdict).toBe("met");
	});
});

describe("a state without rules here", () => {
	const findings = understood(
		HORIZONTAL.replace("jurisdictions: [us-tx] ", "jurisdictions: [us-ut] ")
			.replace(/latitude: 31\./gu, "latitude: 39.")
			.replace(/longitude: -98\./gu, "longitude: -110.")
			.replace(/42-000-/gu, "43-000-")
			.replace(/rule: us-tx[^,}]*, /gu, ""),
	);
	it.each(["en", "es"] as const)(
		"is said on page one and in the rules, and nothing is called complete (%s)",
		(language) => {
			const paper = regulator(findings, language);
			if (paper === undefined) throw new Error("no paper");
			const of = (id: string) =>
				renderText({ ...paper, sections: paper.sections.filter((section) => section.id === id) });
			const said = language === "en" ? "nothing was checked against it" : "nada se revisó contra ella";
			expect(of("summary").replaceAll(/\s+/gu, " ")).toContain(said);
			expect(of("summary").replaceAll(/\s+/gu, " ")).toContain(
				language === "en"
					? "us-ut (no rules known here; nothing checked)"
					: "us-ut (aquí no se conocen sus reglas; nada se juzgó)",
			);
			expect(of("rules").replaceAll(/\s+/gu, " ")).toContain(said);
			expect(of("summary")).not.toMatch(/Nothing that the rule sets ask for|de lo que piden las reglas\.$/u);
		},
	);
});

describe("the date of spud", () => {
	it("is one day in the schedule, on the drawings and for deadlines", () => {
		const { well } = understood(HORIZONTAL);
		expect(well.schedule.find(({ phase }) => phase === "drilling")?.starts).toBe(well.identity.spud);
		expect(eventDate(well, "spud")).toEqual({ date: well.identity.spud, basis: "planned" });
	});

	it("written twice on two days is refused", () => {
		const twice = HORIZONTAL.replace("phase: drilling, days:", "phase: drilling, starts: 2026-06-25, days:");
		expect(understandText(twice).diagnostics.map(({ code }) => code)).toEqual([
			"definition/spud-and-schedule",
		]);
	});

	it("far in the future is doubted", () => {
		const far = HORIZONTAL.replace("spud: 2026-06-20", "spud: 2062-06-20");
		expect(understandText(far).diagnostics.map(({ code, severity }) => [code, severity])).toContainEqual([
			"definition/date-implausible",
			"warning",
		]);
	});
});
