import { describe, expect, it } from "vitest";
import type { Section } from "../../src/document/blocks.ts";
import { LANGUAGES, type Paper, type PaperDocument } from "../../src/document/document.ts";
import { jobName, jobsOfWell } from "../../src/paper/jobs.ts";
import { composePapers } from "../../src/pipeline.ts";
import { setPaper } from "../../src/render/pdf/layout.ts";
import { findingsOf, STARTERS, type Starter } from "../starters.ts";

const UNITS = ["field", "metric"] as const;

/** Pages that a reader is given: least and most. */
const BUDGETS: readonly (readonly [Paper, number, number])[] = [
	["landowner", 8, 12],
	["handout", 2, 2],
	["answers", 2, 4],
];

/** Pages of the regulator paper before its appendix, and those that stages and chemicals may exceed it by beyond. */
const BODY = { least: 14, most: { en: 20, es: 22 }, stages: 3, fluids: 2 } as const; // Spanish takes a tenth more words.

const pagesOf = async (document: PaperDocument, keep: (section: Section) => boolean): Promise<number> => {
	const { pages, findings } = await setPaper({ ...document, sections: document.sections.filter(keep) });
	expect(findings).toEqual([]);
	return pages.length;
};

/** A crew pack: numbers, steps, site, sign-in, a page each. */
const CREW_PAGES = 4;

const documentsOf = (
	starter: Starter,
	paper: Paper,
	language: PaperDocument["language"],
	units: (typeof UNITS)[number],
	job?: string,
): readonly PaperDocument[] =>
	composePapers(findingsOf(starter), [
		{ paper, language, units, ...(job === undefined ? {} : { job }) },
	]).documents.map(({ paper: document }) => document);

describe.each(STARTERS)("pages of %s", (starter) => {
	describe.each(LANGUAGES)("in %s", (language) => {
		it.each(BUDGETS)("%s: %i to %i", async (paper, least, most) => {
			for (const units of UNITS)
				for (const document of documentsOf(starter, paper, language, units)) {
					const { pages, findings } = await setPaper(document);
					expect(findings, units).toEqual([]);
					expect(pages.length, units).toBeGreaterThanOrEqual(least);
					expect(pages.length, units).toBeLessThanOrEqual(most);
				}
		});

		it(`regulator: ${BODY.least} to ${BODY.most[language]} before the appendix, but for long tables of stages and chemicals`, async () => {
			for (const units of UNITS)
				for (const document of documentsOf(starter, "regulator", language, units)) {
					const body = await pagesOf(document, ({ appendix }) => appendix !== true);
					const stages = await pagesOf(document, ({ id }) => id === "stages");
					const fluids = await pagesOf(document, ({ id }) => id === "fluids");
					const beyond = Math.max(0, stages - BODY.stages) + Math.max(0, fluids - BODY.fluids);
					expect(body, units).toBeGreaterThanOrEqual(BODY.least);
					expect(body - beyond, units).toBeLessThanOrEqual(BODY.most[language]);
				}
		});

		it("every crew pack says of which string its job is", () => {
			const jobs = jobsOfWell(findingsOf(starter).well).map(jobName);
			const titles = jobs.flatMap((job) =>
				documentsOf(starter, "crew", language, "field", job).map(({ imprint }) => imprint.title),
			);
			expect(new Set(titles).size).toBe(jobs.length);
		});

		it("every crew pack: four, its numbers on the first alone", async () => {
			const found: string[] = [];
			let packs = 0;
			for (const job of jobsOfWell(findingsOf(starter).well).map(jobName))
				for (const units of UNITS)
					for (const document of documentsOf(starter, "crew", language, units, job)) {
						packs += 1;
						const numbers = await setPaper({ ...document, sections: document.sections.slice(0, 1) });
						const whole = await setPaper(document);
						if (numbers.pages.length !== 1 || whole.pages.length !== CREW_PAGES)
							found.push(`${job} ${units}: ${numbers.pages.length} of ${whole.pages.length} pages`);
						if (whole.findings.length > 0) found.push(`${job} ${units}: ${whole.findings[0]?.kind}`);
					}
			expect(packs).toBeGreaterThan(2);
			expect(found).toEqual([]);
		});
	});
});
