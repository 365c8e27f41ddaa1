import { describe, expect, it } from "vitest";
import type { Paper } from "../src/document/document.ts";
import { jobName, jobsOfWell } from "../src/paper/jobs.ts";
import { counts, fleschKincaidGrade, runningText } from "./readability.ts";
import { composeOnce } from "./run/compose-once.ts";
import { findingsOf, STARTERS, type Starter } from "./starters.ts";

describe("the grade formula", () => {
	it("gives the published grade of the platypus sentence: 11.3 (encyclopedia article on the test, read)", () => {
		expect(fleschKincaidGrade({ words: 13, sentences: 1, syllables: 24 })).toBeCloseTo(11.26, 2);
	});
	it("gives the published least grade, −3.40, for sentences of one short word (same article)", () => {
		expect(fleschKincaidGrade({ words: 1, sentences: 1, syllables: 1 })).toBeCloseTo(-3.4, 2);
	});
	it("counts a plain passage and a stiff one as a person does", () => {
		const plain =
			"The steel pipe goes down past the water you drink. We fill the gap around it with cement. Then we wait for it to set. We test it with pressure before we drill on.";
		expect(counts(plain)).toEqual({ words: 34, sentences: 4, syllables: 39 });
		const stiff =
			"Surface casing is cemented from shoe to surface to provide hydraulic isolation of usable-quality groundwater prior to drill-out.";
		expect(fleschKincaidGrade(counts(stiff))).toBeGreaterThan(14);
	});
});

const sectionsOf = (starter: Starter, paper: Paper, job?: string) =>
	composeOnce(findingsOf(starter), [
		{ paper, language: "en", units: "field", ...(job === undefined ? {} : { job }) },
	]).documents.flatMap(({ paper: document }) => document.sections);

const median = (values: readonly number[]): number =>
	values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

/** Below this many words a grade says little. */
const ENOUGH = 20;

describe.each(STARTERS)("the words for the public, %s", (starter) => {
	it.each([
		["landowner", 8, 9.5],
		["handout", 7.5, 9],
		["slides", 8, 10.5],
	] as const)("%s: median grade of the sections at most %s, none above %s", (paper, middle, most) => {
		const grades = sectionsOf(starter, paper)
			.filter((section) => section.id !== "operator-answers")
			.map((section) => ({ id: section.id, counted: counts(runningText(section.blocks)) }))
			.filter(({ counted }) => counted.words >= ENOUGH)
			.map(({ id, counted }) => ({
				id,
				grade: fleschKincaidGrade(counted),
				mean: counted.words / counted.sentences,
			}));
		expect(grades.length).toBeGreaterThan(1);
		for (const { id, grade, mean } of grades) {
			expect(grade, id).toBeLessThanOrEqual(most);
			expect(mean, `${id}: words a sentence`).toBeLessThanOrEqual(16);
		}
		expect(median(grades.map(({ grade }) => grade))).toBeLessThanOrEqual(middle);
	});

	it("the crew's words: grade at most 5, in every pack", () => {
		for (const job of jobsOfWell(findingsOf(starter).well)) {
			const steps = sectionsOf(starter, "crew", jobName(job)).flatMap((section) =>
				section.blocks.flatMap((block) =>
					block.kind === "table" && block.id === "steps"
						? block.rows.flatMap((row) =>
								["control", "stop_if"].flatMap((id) =>
									row.cells[id]?.kind === "text" ? [row.cells[id].text] : [],
								),
							)
						: [],
				),
			);
			const text = steps.map((step) => (/[.?!]$/u.test(step) ? step : `${step}.`)).join(" ");
			expect(fleschKincaidGrade(counts(text)), jobName(job)).toBeLessThanOrEqual(5);
		}
	});
});
