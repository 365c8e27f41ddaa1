import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { JURISDICTION_CODES, loadJurisdictions, loadPractice } from "../../../src/catalog/jurisdictions.ts";
import { message } from "../../../src/messages/message.ts";
import type { PaperContext } from "../../../src/paper/context.ts";
import { ruleTable } from "../../../src/paper/parts/rule-table.ts";
import { loadWords } from "../../../src/paper/words/words.ts";
import { EVERY_FORMULA } from "../../../src/rules/every-formula.ts";
import type { Finding } from "../../../src/rules/finding.ts";
import { readYaml } from "../../../src/source/read-yaml.ts";

const listOf = (name: string): ReadonlyMap<string, string> => {
	const url = new URL(`../../../templates/es/${name}`, import.meta.url);
	const { value, diagnostics } = readYaml(readFileSync(url, "utf8"), name);
	expect(diagnostics).toEqual([]);
	return new Map(Object.entries(value?.value as Record<string, string>));
};

const numbersOf = (text: string) => [...text.matchAll(/\d[\d,.]*\d|\d/g)].map(([number]) => number).sort();

const sets = [...(loadJurisdictions(JURISDICTION_CODES).value ?? []), ...(loadPractice().value ?? [])];
const rules = sets.flatMap((set) => set.rules);

describe("what rules require, in Spanish", () => {
	const spanish = listOf("requirements.yaml");
	it("names no rule that there is not", () => {
		const ids = new Set(rules.map(({ id }) => id));
		expect([...spanish.keys()].filter((id) => !ids.has(id))).toEqual([]);
	});
	it.each(sets.map(({ code }) => code))("has every rule of %s, with the numbers of the English", (code) => {
		for (const { id, requirement } of sets.find((set) => set.code === code)?.rules ?? []) {
			const words = spanish.get(id);
			expect(words, id).toBeDefined();
			expect(numbersOf(words ?? ""), id).toEqual(numbersOf(String(requirement)));
		}
	});
	it("is what a Spanish paper prints; a rule of the user's own is printed as written", () => {
		const { requirement } = loadWords("es");
		expect(requirement("practice.cement.top", "Cement comes …")).toMatch(/^El cemento sube/);
		expect(requirement("xx-one.rule", "As I wrote it.")).toBe("As I wrote it.");
		// A company's own reason stands in for the practice's words, also where the rule has Spanish ones.
		const own = message("limits/basis.requirement", { why: "Cemento a 300 m, por nuestros pozos." });
		expect(requirement("practice.cement.top", own)).toBe("Cemento a 300 m, por nuestros pozos.");
		expect(loadWords("en").requirement("practice.cement.top", "Cement comes …")).toBe("Cement comes …");
	});
	it("is what the rule table of a Spanish paper prints", () => {
		const rule = rules.find(({ id }) => id === "us-co.surf.cement");
		const finding = {
			check: "cement-to-surface",
			subject: "surface",
			// What is met has a row only where it has a number.
			verdict: "needs judgement",
			reason: [],
			requirement: rule?.requirement,
		};
		const context = {
			paper: "regulator",
			words: loadWords("es"),
			units: "field",
			judgement: {
				unknownJurisdictions: [],
				findings: [{ ...finding, cite: { ...rule, kind: "state", rule: rule?.id } } as unknown as Finding],
			},
		} as unknown as PaperContext;
		const printed = JSON.stringify(ruleTable(context));
		expect(printed).toContain("La TR superficial se cementa hasta la superficie.");
		expect(printed).not.toContain(rule?.requirement);
	});
});

describe("names of formulas, in Spanish", () => {
	it("name formulas that there are", () => {
		expect([...listOf("formulas.yaml").keys()].filter((id) => !EVERY_FORMULA.has(id))).toEqual([]);
	});
	it("name every formula, with the numbers of the English", () => {
		const spanish = listOf("formulas.yaml");
		expect([...EVERY_FORMULA.keys()].filter((id) => !spanish.has(id))).toEqual([]);
		for (const [id, { name }] of EVERY_FORMULA)
			expect(numbersOf(spanish.get(id) ?? ""), id).toEqual(numbersOf(name));
	});
});
