import { describe, expect, it } from "vitest";
import { composePapers } from "../../src/pipeline.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { starterText, understandText } from "../starters.ts";

/* How rules stand on paper: by what was judged, on page one; what is open in columns; forms with the tables that fill them. */

const COMPARED = `  compared:
    - { rule: us-tx.surf.3500, by: A. Nobody, license: PE 1, on: 2026-04-28, against: the certified section, dated: 2026-04-01 }
  conditions:
    - { check: shoe-depth, string: surface, cite: condition 9, limit: { measure: shoe along the hole, at_least: 2640 ft } }
`;
const papers = (language: "en" | "es") => {
	const text = starterText("horizontal").replace(/ {2}conditions:.*\n/u, COMPARED);
	const { findings, diagnostics } = understandText(text);
	if (findings === undefined || !text.includes("A. Nobody"))
		throw new Error(diagnostics.map(({ code, at }) => `${code} ${at.path.join(".")}`).join("; "));
	const made = composePapers(
		findings,
		(["regulator", "regulator-appendix"] as const).map((paper) => ({ paper, language, units: "field" })),
	).documents.map(({ paper }) => paper);
	return (paper: 0 | 1, id: string): string => {
		const whole = made[paper];
		if (whole === undefined) throw new Error("no paper");
		const sections = whole.sections.filter((section) => section.id === id);
		expect(sections, id).toHaveLength(1);
		return renderText({ ...whole, sections }).replaceAll(/\s+/gu, " ");
	};
};

describe("rules on paper", () => {
	const of = papers("en");

	it("are named on page one, each set with its source and how far it was compared, practice too", () => {
		expect(of(0, "summary")).toMatch(/us-tx \(shipped [\d.]+\): \d+ of \d+ limits compared, 1 by A\. Nobody/);
		expect(of(0, "certification")).toMatch(
			/us-tx \(Texas, shipped [\d.]+\): \d+ limits, compared: .*; practice \(shipped [\d.]+\): \d+, not law/,
		);
		expect(papers("es")(0, "summary")).toMatch(/us-tx \(programa [\d.]+\): \d+ de \d+ límites comparados/);
	});

	it("say of a row that a person compared by whom, on what day and against what", () => {
		expect(of(1, "rule-checks")).toContain(
			"Compared by A. Nobody, PE 1 on 2026-04-28 against the certified section of 2026-04-01.",
		);
	});

	it("list the copies that limits were compared with", () => {
		expect(of(1, "rule-checks")).toMatch(/Copies that limits were compared with.*scribd\.com.*2012-12-11/);
	});

	it("have limit, this well and margin beside what is not met, worst first", () => {
		const rules = of(0, "rules");
		expect(rules).toMatch(/Does not meet: 1.*condition 9.*≥ 2,640 ft.*1,185 ft.*−1,455 ft/);
		expect(rules.indexOf("Does not meet: 1")).toBeLessThan(rules.indexOf("Rules met"));
	});

	it("have each form once, with the tables that fill it and its day", () => {
		const notices = of(0, "deadlines");
		expect(notices).toMatch(
			/W-15, cementing report.*the well \(section 1\), casing \(Table \d+\), holes \(Table \d+\), cement \(Table \d+\), slurries \(Table C-\d+\).*2026-09-18/,
		);
		expect(notices.match(/W-15/gu)).toHaveLength(1);
		expect(notices).not.toContain("W-3, plugging record");
	});
});
