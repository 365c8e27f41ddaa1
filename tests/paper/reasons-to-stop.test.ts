import { describe, expect, it } from "vitest";
import { jobName, jobsOfWell } from "../../src/paper/jobs.ts";
import { composePapers } from "../../src/pipeline.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { starterText, understandText } from "../starters.ts";

/* The box that keeps a job from starting, on the sheets of a plan with a fault in every job. */

const EDITS: readonly (readonly [from: string | RegExp, to: string])[] = [
	[/ {6}plugs: \[bottom, top\]\n/g, ""],
	["      line_test: 8000 psi\n", ""],
	["    line_test: 10500 psi", "    line_test: 9300 psi"],
	["maximum_pull: 400000 lbf", "maximum_pull: 900000 lbf"],
	["pump_kickouts: [8900 psi, 9000 psi, 9100 psi]", "pump_kickouts: [8900 psi, 9000 psi, 9450 psi]"],
	["status: planned }]", "status: being drilled }]"],
	[/ {4}- \{ over: surface, working.*\n/, ""],
	["oil-based mud, density: 11.8 ppg", "oil-based mud, density: 10.5 ppg"],
];

const faulty = (() => {
	const text = EDITS.reduce((said, [from, to]) => {
		const next = said.replace(from, to);
		if (next === said) throw new Error(`the starter has no ${String(from)}`);
		return next;
	}, starterText("horizontal"));
	const { findings } = understandText(text, "horizontal.yaml");
	if (findings === undefined) throw new Error("the plan is not understood");
	return findings;
})();

const jobs = jobsOfWell(faulty.well).map(jobName);

const sheet = (job: string, language: "en" | "es"): string =>
	composePapers(faulty, [{ paper: "crew", language, units: "field", job }])
		.documents.map(({ paper }) => renderText(paper))
		.join("\n")
		.replaceAll(/[\u00a0\u202f]/gu, " ");

/** Items of the boxes, without the last one, which is of the right to stop. */
const reasons = (text: string): readonly string[] =>
	text.split("\n").flatMap((line) => line.match(/^ {2}(?:- |\d+\. )(.+)$/u)?.[1] ?? []);

describe.each(["en", "es"] as const)("reasons to stop (%s)", (language) => {
	const sheets = jobs.map((job) => [job, sheet(job, language)] as const);

	it("are there", () => {
		expect(sheets.flatMap(([, text]) => reasons(text)).length).toBeGreaterThan(12);
	});

	it("are told once on a sheet, with every rule that asks for them", () => {
		for (const [job, text] of sheets) {
			const said = reasons(text).map((line) => line.replace(/ \([^()]*(?:\([^()]*\)[^()]*)*\)$/u, ""));
			expect([job, said]).toEqual([job, [...new Set(said)]]);
		}
	});

	it("stand under the word of their own language", () => {
		const [own, other] = language === "en" ? ["STOP", "ALTO"] : ["ALTO", "STOP"];
		for (const [job, text] of sheets) {
			expect([job, text]).toEqual([job, expect.stringContaining(`! ${own}:`)]);
			expect([job, text.match(new RegExp(`\\b${other}\\b`, "gu")) ?? []]).toEqual([job, []]);
		}
	});

	it("are said in that language", () => {
		const english = /\b(?:the|is required|is not given|are not given|of the|string)\b/u;
		const said = sheets.flatMap(([, text]) => reasons(text));
		const inEnglish = said.filter((line) => english.test(line));
		if (language === "es") expect(inEnglish).toEqual([]);
		else expect(inEnglish.length).toBeGreaterThan(6);
	});
});
