import { describe, expect, it } from "vitest";
import { LANGUAGES, type PaperDocument } from "../../src/document/document.ts";
import { jobName, jobsOfWell } from "../../src/paper/jobs.ts";
import type { Laid, LaidPage } from "../../src/render/pdf/layout/laid.ts";
import { setPaper } from "../../src/render/pdf/set-paper.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { composeOnce } from "../run/compose-once.ts";
import { sampleOf } from "../run/sample.ts";
import { STARTERS, type Starter, starterText, understandText } from "../starters.ts";

/*
 * The sheet of a job: both sides of one sheet of paper, whatever the job, the language and the units; STOP on the front; the
 * type no smaller than stated, and nothing cut.
 */

const wordsOf = (item: Laid): string =>
	item.kind === "text" ? item.source : item.kind === "box" ? item.flow.map(wordsOf).join("\n") : "";
const pageWords = ({ children }: LaidPage): string => children.map(({ item }) => wordsOf(item)).join("\n");

const each = function* (item: Laid): Generator<Laid> {
	yield item;
	if (item.kind === "box") for (const child of item.flow) yield* each(child);
};

const itemsOf = ({ children }: LaidPage): readonly Laid[] => children.flatMap(({ item }) => [...each(item)]);

/** A well with every job that its plan has, whether or not it is asked for. */
const everyJob = (starter: Starter) => {
	const text = starterText(starter).replace(/^ {2}jobs: .*\n/mu, "");
	const { findings, diagnostics } = understandText(text, `${starter}.yaml`);
	if (findings === undefined) throw new Error(JSON.stringify(diagnostics));
	return findings;
};

const sheets = sampleOf(
	"crew sheets",
	STARTERS.flatMap((starter) =>
		LANGUAGES.flatMap((language) =>
			(["field", "metric"] as const).map((units) => ({ starter, language, units })),
		),
	),
	4,
);

describe.each(sheets)("sheets of $starter, $language, $units", ({ starter, language, units }) => {
	const findings = everyJob(starter);
	const jobs = jobsOfWell(findings.well).map(jobName);
	const papers = jobs.map((job): PaperDocument => {
		const [made] = composeOnce(findings, [{ paper: "crew", language, units, job }]).documents;
		if (made === undefined) throw new Error(`there is no sheet for ${job}`);
		return made.paper;
	});
	const stop = language === "en" ? "Anyone may stop this job" : "Cualquiera puede parar este trabajo";
	const until = language === "en" ? "Stop if" : "Pare si";

	it.each(jobs.map((job, i) => [job, i] as const))(
		"%s: two pages, STOP on the first, nothing cut",
		(job, i) => {
			const paper = papers[i];
			if (paper === undefined) throw new Error(job);
			const { pages, findings: faults } = setPaper(paper);
			expect(faults).toEqual([]);
			expect(pages.length).toBe(2);
			const [front, back] = pages;
			if (front === undefined || back === undefined) throw new Error(job);
			expect(pageWords(front)).toContain(stop);
			expect(pageWords(front).toLowerCase()).toContain(until.toLowerCase());
			// US letter; A4 where the reader thinks in meters.
			expect(Math.round(front.sheet.width)).toBe(units === "field" ? 612 : 595);
			// No type of the page itself is under 7 points, and the steps are of 7.9 at least.
			for (const item of pages.flatMap(itemsOf))
				if (item.kind === "text") expect(item.size, item.source).toBeGreaterThanOrEqual(7);
			// Lines to sign on: 9 mm.
			const lines = itemsOf(back).filter(
				({ style }) => style.minHeight !== undefined && style.minHeight > 20,
			);
			expect(lines.length).toBeGreaterThanOrEqual(60);
			for (const { height } of lines) expect(height).toBeGreaterThanOrEqual((9 / 25.4) * 72 - 0.001);
		},
	);

	it("have a title each", () => {
		expect(new Set(papers.map(({ imprint }) => imprint.title)).size).toBe(papers.length);
	});

	it("print every limit of their jobs", () => {
		for (const [i, paper] of papers.entries()) {
			const limits = paper.sections[0]?.blocks.find(
				(block) => block.kind === "table" && block.columns.some(({ id }) => id === "limit_of"),
			);
			if (limits?.kind !== "table") continue;
			const text = pageWords(setPaper(paper).pages[0] as LaidPage);
			for (const { cells } of limits.rows) {
				const { limit_of: what } = cells;
				expect(text, jobs[i]).toContain(what?.kind === "text" ? what.text : "?");
			}
		}
	});

	it("print no answer beside a question", () => {
		for (const paper of papers) {
			const text = renderText({ ...paper, sections: paper.sections.slice(1) });
			const [, asked = ""] = text.split(language === "en" ? "Ask the crew" : "Pregunte");
			expect(asked.split("[")[0]).not.toMatch(/\d+ (?:psi|ft|bbl|kPa|MPa)/u);
		}
	});
});
