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
			"We drill through the water zones first",
			"before we drill on",
			"We pump at no more than",
			"In all we expect about",
			"What we pump.",
			"What you will see and hear",
			"The weakest part is the casing test",
			"Drilling, with casing and cement: 19 days.",
		],
		record: [
			"The new well near you, as built",
			"The plan was: Slow to 3 bbl/min",
			"The weakest part was the casing test",
			"Drilling, with casing and cement: November 3, 2025 to December 2, 2025.",
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
			"Primero perforamos por",
			"Bombeamos a no más de",
			"En total esperamos",
		],
		record: [
			"El pozo nuevo cerca de usted, como quedó",
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
			"The highest pressure on record is 8,540 psi (a car tire holds about 32). That is above our limit of 8,500 psi.",
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
		expect(words).toContain(
			language === "en"
				? "January 12, 2026 to January 26, 2026"
				: "12 de enero de 2026 a 26 de enero de 2026",
		);
		expect(words).toContain(
			language === "en"
				? "February 5, 2026 to February 27, 2026"
				: "5 de febrero de 2026 a 27 de febrero de 2026",
		);
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
