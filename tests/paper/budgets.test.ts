import { describe, expect, it } from "vitest";
import type { Section } from "../../src/document/blocks.ts";
import { LANGUAGES, type Paper, type PaperDocument } from "../../src/document/document.ts";
import { jobName, jobsOfWell } from "../../src/paper/jobs.ts";
import { composeOnce } from "../run/compose-once.ts";
import { documentOf, EDITIONS, type Edition } from "../run/editions.ts";
import { setOnce } from "../run/set-once.ts";
import { findingsOf, STARTERS } from "../starters.ts";

/** Pages that a reader is given: least and most. */
const BUDGETS: readonly (readonly [Paper, number, number])[] = [
	["landowner", 8, 12],
	["handout", 2, 2],
	["crew", 2, 2],
	["answers", 2, 4],
];

/** Pages of the regulator paper before its appendix, and those that stages and chemicals may exceed it by beyond. */
const BODY = { least: 14, most: { en: 20, es: 22 }, stages: 3, fluids: 2 } as const; // Spanish takes a tenth more words.

const pagesOf = async (document: PaperDocument, keep: (section: Section) => boolean): Promise<number> => {
	const { pages, findings } = await setOnce({ ...document, sections: document.sections.filter(keep) });
	expect(findings).toEqual([]);
	return pages;
};

const of = (...papers: readonly Paper[]): readonly Edition[] =>
	EDITIONS.filter(({ request }) => papers.includes(request.paper));

it.each(of("landowner", "handout", "crew", "answers"))(
	"$title: has the pages that its readers are given",
	async (edition) => {
		const document = documentOf(edition);
		const [, least, most] = BUDGETS.find(([paper]) => paper === document.paper) ?? [document.paper, 0, 0];
		const { pages, findings } = await setOnce(document);
		expect(findings).toEqual([]);
		expect(pages).toBeGreaterThanOrEqual(least);
		expect(pages).toBeLessThanOrEqual(most);
	},
);

it.each(of("regulator"))(
	`$title: ${BODY.least} to ${BODY.most.en} or ${BODY.most.es} pages before the appendix, but for long tables of stages and chemicals`,
	async (edition) => {
		const document = documentOf(edition);
		const body = await pagesOf(document, ({ appendix }) => appendix !== true);
		const stages = await pagesOf(document, ({ id }) => id === "stages");
		const fluids = await pagesOf(document, ({ id }) => id === "fluids");
		const beyond = Math.max(0, stages - BODY.stages) + Math.max(0, fluids - BODY.fluids);
		expect(body).toBeGreaterThanOrEqual(BODY.least);
		expect(body - beyond).toBeLessThanOrEqual(BODY.most[document.language]);
	},
);

describe.each(STARTERS)("crew packs of %s", (starter) => {
	it.each(LANGUAGES)("say in %s of which string each job is", (language) => {
		const findings = findingsOf(starter);
		const jobs = jobsOfWell(findings.well).map(jobName);
		expect(jobs.length).toBeGreaterThan(0);
		const titles = composeOnce(
			findings,
			jobs.map((job) => ({ paper: "crew", language, units: "field", job })),
		).documents.map(({ paper }) => paper.imprint.title);
		expect(new Set(titles).size).toBe(jobs.length);
	});
});
