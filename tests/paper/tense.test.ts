import { describe, expect, it, test } from "vitest";
import type { Findings } from "../../src/paper/context.ts";
import { composePapers } from "../../src/pipeline.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { told } from "../rules/told.ts";
import { findingsOf, type Starter, starterText, understandText } from "../starters.ts";

const PUBLIC = ["landowner", "handout", "answers"] as const;

const wordsOf = (findings: Findings, language: "en" | "es"): string =>
	composePapers(
		findings,
		PUBLIC.map((paper) => ({ paper, language, units: "field" as const })),
	)
		.documents.flatMap(({ paper }) => [paper.imprint.title, renderText(paper)])
		.join(" ")
		.replaceAll(/\s+/gu, " ");

/** What only a plan may say, and what only a record may. */
const WORDS = {
	en: {
		plan: [
			"A new well near you",
			"We then pump water",
			"We drill through the water zones first",
			"before we drill on",
			"We pump at no more than",
			"In all we expect about",
			"What we pump.",
			"What you will see and hear",
			"The plan is:",
			"The weakest part is the casing test",
			"Drilling, with casing and cement: 19 d.",
		],
		record: [
			"The new well near you, as built",
			"The plan was: Slow to 3 bbl/min",
			"The weakest part was the casing test",
			"Drilling, with casing and cement: 2025-11-03 to 2025-12-02.",
			"We then pumped water",
			"We drilled through the water zones first",
			"It was tested at 1,520 psi",
			"The highest pressure on record is 8,540 psi",
			"the work took about 610 truck loads",
			"What we pumped.",
			"What there was to see and hear",
		],
	},
	es: {
		plan: [
			"Un pozo nuevo cerca de usted",
			"Después bombeamos",
			"Primero perforamos por",
			"Bombeamos a no más de",
			"En total esperamos",
			"El plan es:",
		],
		record: [
			"El pozo nuevo cerca de usted, como quedó",
			"Después se bombeó agua",
			"Primero se perforó por",
			"La presión más alta registrada es 8,540 psi",
			"el trabajo llevó unas 610 cargas",
		],
	},
} as const;

describe.each(["en", "es"] as const)("words in %s", (language) => {
	const { plan, record } = WORDS[language];
	test.each([
		["horizontal", plan, record],
		["horizontal-as-built", record, plan],
	] as const)("of %s stand in the tense of what is done", (starter: Starter, said, unsaid) => {
		const words = wordsOf(findingsOf(starter), language);
		for (const each of said) expect(words).toContain(each);
		for (const each of unsaid) expect(words).not.toContain(each);
	});
});

describe("words after the record", () => {
	it("say where a limit was passed, and do not reassure", () => {
		const text = starterText("horizontal-as-built").replace(
			"maximum_treating_pressure: 9000 psi",
			"maximum_treating_pressure: 8500 psi",
		);
		const { findings } = understandText(text);
		if (findings === undefined) throw new Error("the well has faults");
		const words = wordsOf(findings, "en");
		expect(words).toContain(
			"The highest pressure on record is 8,540 psi. That is above our limit of 8,500 psi.",
		);
		expect(words).not.toContain("Our limit was");
	});
});

describe("centralizers at the shoe", () => {
	it("are there for the standoff where they are there for the rule", () => {
		const { results, judgement } = findingsOf("horizontal-as-built");
		const rule = judgement.findings
			.map(told)
			.find(({ because }) => because.startsWith("The lowest joint has a centralizer"));
		expect([rule?.subject, rule?.verdict]).toEqual(["surface", "met"]);
		expect(results.undetermined.filter(({ key }) => key === "cement.surface.standoff.shoe")).toEqual([]);
		expect(results.cement["surface"]?.standoff.map(({ at_name }) => at_name)).toContain("shoe");
	});
});

describe("the table of the work", () => {
	it.each(["en", "es"] as const)("has the dates on record beside those planned (%s)", (language) => {
		const words = wordsOf(findingsOf("horizontal-as-built"), language);
		expect(words).toContain(language === "en" ? "2026-01-12 to 2026-01-26" : "2026-01-12 a 2026-01-26");
		expect(words).toContain(language === "en" ? "2026-02-05 to 2026-02-27" : "2026-02-05 a 2026-02-27");
		expect(words).not.toMatch(/while we pump|mientras bombeamos/u);
	});
});

describe("a confining bed that a person still has to confirm", () => {
	it.each(["en", "es"] as const)("is not told to the public as what slows fluid (%s)", (language) => {
		const counted = language === "en" ? "The plan counts on it" : "El plan cuenta con ella";
		const asked = language === "en" ? "still has to confirm" : "todavía debe confirmar";
		const built = wordsOf(findingsOf("horizontal-as-built"), language);
		expect(built).toContain(asked);
		expect(built).not.toContain(counted);
		expect(wordsOf(findingsOf("horizontal"), language)).toContain(counted);
	});
});
