import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { JOB_IDS } from "../../src/catalog/jobs.ts";
import { LANGUAGES, PAPERS } from "../../src/document/document.ts";
import { SHEET_VALUES } from "../../src/paper/crew/numbers.ts";
import { PARTS } from "../../src/paper/parts/index.ts";
import { leavesOf } from "../../src/paper/words/page-order.ts";
import { loadWords } from "../../src/paper/words/words.ts";
import { findingsOf } from "../starters.ts";

const TEMPLATES = new URL("../../templates/", import.meta.url);
const languages = LANGUAGES.filter((language) => readdirSync(TEMPLATES).includes(language));

describe.each(languages)("words in %s", (language) => {
	const words = loadWords(language);
	const files = readdirSync(new URL(`${language}/`, TEMPLATES), { recursive: true, encoding: "utf8" });
	const templates = files.filter((file) => file.endsWith(".md.hbs"));
	const papers = PAPERS.filter((paper) => files.includes(`${paper}/order.yaml`));

	it("has every paper", () => {
		expect(papers).toEqual([...PAPERS]);
	});

	it("names only parts and templates that exist, and every template is named", () => {
		const named = new Set<string>();
		let items = 0;
		for (const paper of papers)
			for (const section of words.order(paper).sections)
				for (const item of leavesOf(section.content)) {
					items += 1;
					if ("part" in item) expect(Object.keys(PARTS), `${paper}: ${item.part}`).toContain(item.part);
					else {
						const own = `${paper}/${item.words}.md.hbs`;
						named.add(templates.includes(own) ? own : `shared/${item.words}.md.hbs`);
					}
				}
		expect(items).toBeGreaterThan(50);
		expect([...named].sort()).toEqual([...templates].sort());
	});

	it("has steps for every job, and words for every number of its sheet", () => {
		const { jobs } = findingsOf("horizontal");
		expect(jobs.map(({ id }) => id)).toEqual([...JOB_IDS]);
		for (const job of jobs) {
			expect(job.steps.length, job.id).toBeGreaterThan(3);
			expect(words.findLabel(`jobs.${job.id}`), job.id).toBeDefined();
			for (const value of [...job.numbers.map((number) => number.value), ...job.site]) {
				expect(Object.keys(SHEET_VALUES), value).toContain(value);
				expect(words.findLabel(`crew.numbers.${value}`), value).toBeDefined();
			}
		}
	});

	it("never prints the word that promises a legal conclusion", () => {
		let read = 0;
		for (const file of files.filter((name) => /\.(?:hbs|yaml)$/u.test(name))) {
			read += 1;
			expect(readFileSync(new URL(`${language}/${file}`, TEMPLATES), "utf8"), file).not.toMatch(
				/complian(?:t|ce)/iu,
			);
		}
		expect(read).toBeGreaterThan(20);
	});
});
