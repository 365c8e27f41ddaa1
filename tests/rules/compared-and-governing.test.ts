import { describe, expect, it } from "vitest";
import { JURISDICTION_CODES, loadJurisdictions } from "../../src/catalog/jurisdictions.ts";
import { CHECK_IDS } from "../../src/catalog/limits/checks.ts";
import { comparisonSheet, limitsTable } from "../../src/cli/limits-list.ts";
import { ENGLISH_READER } from "../../src/messages/print.ts";
import type { Findings } from "../../src/paper/context.ts";
import { standingWords } from "../../src/paper/words/not-compared.ts";
import { loadWords } from "../../src/paper/words/words.ts";
import { limitsOfCheck } from "../../src/rules/index.ts";
import { judge } from "../../src/rules/judge.ts";
import { readYaml } from "../../src/source/read-yaml.ts";
import { told } from "../told.ts";
import { read, rule, set, wellWith } from "./builders.ts";

const shoe = { check: "surface-shoe-depth", applies_to: { string: "surface" } };
const asks = (id: string, at_least: string) =>
	rule({ id: `xx-one.${id}`, ...shoe, limit: { measure: "shoe below protected water", at_least } });
const compared = set("site.compared", [
	{
		rule: "xx-one.a",
		by: "A. Nobody",
		license: "PE 1 (fictional)",
		on: "2026-04-01",
		against: "the certified section",
		dated: "2026-03-15",
	},
]);

describe("a row that a person has compared", () => {
	it("says so, by whom, when and against what, and is counted", () => {
		const { well, results } = wellWith(compared);
		const judged = judge(well, results, [asks("a", "50 ft"), asks("b", "60 ft")]);
		const [first, second] = judged.findings;
		const words = loadWords("en");
		expect(first && standingWords(first.cite, words)).toBe(
			"compared by A. Nobody, PE 1 (fictional) on 2026-04-01 against the certified section of 2026-03-15",
		);
		expect(second && standingWords(second.cite, words)).toMatch(/^text not compared/);
		expect(judged.ruleSets.map(({ byPerson }) => byPerson)).toEqual([[{ by: "A. Nobody", rules: 1 }], []]);
	});
	it("of a public copy and of a draft says which and of when", () => {
		const { well, results } = wellWith();
		const copy = (kind: string, dated: string) =>
			judge(well, results, [
				rule({
					...shoe,
					limit: { measure: "shoe below protected water", at_least: "50 ft" },
					standing: "compared with a public copy",
					public_copy: { at: "law.example/1", dated, kind, read: "subsection (b)" },
				}),
			]).findings[0];
		const said = (kind: string, dated: string) => {
			const found = copy(kind, dated);
			return found && standingWords(found.cite, loadWords("en"));
		};
		expect(said("third-party copy", "2024-12-06")).toBe("compared with a public copy of 2024-12-06");
		expect(said("draft", "unknown")).toBe("compared with a public draft of unknown date");
	});
	it("the sheet to fill has the citation, our words, our number and lines for what is not compared", () => {
		const { well, results } = wellWith(compared);
		const judgement = judge(well, results, [asks("a", "50 ft"), asks("b", "60 ft")]);
		const sheet = comparisonSheet({ well, judgement } as Findings, ENGLISH_READER);
		expect(sheet[1]).toBe("2 limits; 1 compared by a person named in the definition");
		expect(sheet.filter((line) => line.includes("number in the text ____"))).toHaveLength(1);
		expect(sheet.join("\n")).toMatch(
			/our number {2}depth of the shoe below protected water: at least 60 ft\n/,
		);
		expect(sheet.join("\n")).toMatch(/this well {3}The shoe is 200.ft below the base of protected water/);
	});
});

describe("several limits on the same thing", () => {
	it("have the one marked that asks most; one alone carries no mark", () => {
		const { well, results } = wellWith();
		const marks = (...sets: Parameters<typeof judge>[2]) =>
			judge(well, results, sets).findings.map(({ cite, governing }) => `${cite.rule} ${governing ?? "-"}`);
		expect(marks(asks("a", "50 ft"), asks("b", "60 ft"), asks("c", "30 ft"))).toEqual([
			"xx-one.a -",
			"xx-one.b true",
			"xx-one.c -",
		]);
		expect(marks(asks("a", "50 ft"))).toEqual(["xx-one.a -"]);
	});
});

describe("the share compared", () => {
	const table = limitsTable(loadJurisdictions(JURISDICTION_CODES).value ?? [], ENGLISH_READER);
	it("has a line for each set and one for all, and adds up", () => {
		expect(table).toHaveLength(JURISDICTION_CODES.length + 2);
		const [, ...lines] = table;
		const all = lines.at(-1);
		for (const column of [1, 2, 4, 5, 6]) {
			const sum = lines.slice(0, -1).reduce((total, line) => total + Number(line[column]), 0);
			expect(sum).toBe(Number(all?.[column]));
		}
	});
});

describe("the row that explaining a check prints", () => {
	// Checks of engineering practice have forms that a jurisdiction's row has no example of here.
	it.each(CHECK_IDS)("%s reads, or is of practice", (id) => {
		const lines = limitsOfCheck(id, ENGLISH_READER);
		const start = lines.indexOf("a row to begin from");
		const text = lines.slice(start + 1).map((line) => line.replace(/^ {2}/, ""));
		const rows = readYaml(text.join("\n").replaceAll("us-tx.mine", "xx-one"), "row.yaml").value?.value;
		expect(Array.isArray(rows), text.join("\n")).toBe(true);
		const { diagnostics } = read(structuredClone(JSON.parse(JSON.stringify(rows))));
		expect(diagnostics.map(({ what, found }) => `${told(what)} ${told(found)}`)).toEqual([]);
	});
});
