import { describe, expect, it } from "vitest";
import { LANGUAGES, type Paper } from "../../src/document/document.ts";
import { jobName, jobsOfWell } from "../../src/paper/jobs.ts";
import { composeOnce } from "../run/compose-once.ts";
import { documentOf, EDITIONS, type Edition } from "../run/editions.ts";
import { setOnce } from "../run/set-once.ts";
import { findingsOf, STARTERS, type Starter } from "../starters.ts";

/** Pages that a reader is given: least and most. */
const BUDGETS: readonly (readonly [Paper, number, number])[] = [
	["landowner", 8, 13],
	["handout", 2, 2],
	["crew", 2, 2],
	["answers", 4, 7],
];

/** Pages of the regulator's attachment and of its appendices: most, by starter. */
const ATTACHMENT: Readonly<Record<Starter, { readonly body: number; readonly appendix: number }>> = {
	horizontal: { body: 14, appendix: 31 },
	"horizontal-as-built": { body: 14, appendix: 38 },
	"vertical-metric": { body: 12, appendix: 23 },
};
/** Spanish takes a tenth more words; no body is more than a reviewer is given. */
const SPANISH = { body: 1, appendix: 2 } as const;
const MOST = 14;

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

it.each(of("regulator", "regulator-appendix"))(
	"$title: has the pages that a reviewer is given, the answer on the first and what is signed on the second",
	async (edition) => {
		const document = documentOf(edition);
		const { body, appendix } = ATTACHMENT[edition.starter];
		const [most, more] = document.paper === "regulator" ? [body, SPANISH.body] : [appendix, SPANISH.appendix];
		const { pages, findings } = await setOnce(document);
		expect(findings).toEqual([]);
		expect(pages).toBeLessThanOrEqual(document.language === "es" ? most + more : most);
		if (document.paper === "regulator") expect(pages).toBeLessThanOrEqual(MOST);
		if (document.paper === "regulator-appendix") return;
		const [summary] = document.sections;
		const first = await setOnce({ ...document, sections: summary === undefined ? [] : [summary] });
		expect(first.pages).toBe(1);
	},
);

it.each(of("transmittal"))("$title: is one page", async (edition) => {
	const { pages, findings } = await setOnce(documentOf(edition));
	expect(findings).toEqual([]);
	expect(pages).toBe(1);
});

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
