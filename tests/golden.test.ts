import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { PAPERS } from "../src/document/document.ts";
import { findingsFor } from "../src/paper/findings-for.ts";
import { toldFrames } from "../src/paper/sequence/frames.ts";
import { frameDrawings } from "../src/paper/sequence/sequence.ts";
import { loadWords } from "../src/paper/words/words.ts";
import { drawings } from "../src/pipeline.ts";
import { printInline } from "../src/render/print/print-text.ts";
import { renderSvg } from "../src/render/svg/render-svg.ts";
import { renderText } from "../src/render/text/render-text.ts";
import { resultsInFull } from "./results-in-full.ts";
import { told } from "./rules/told.ts";
import { composeOnce } from "./run/compose-once.ts";
import { findingsOf, STARTERS } from "./starters.ts";

const GOLDEN = new URL("../fixtures/golden/", import.meta.url);
const rebase = process.env["GOLDEN"] === "write";
const HOW = "after looking at what changed, re-base with: npm run golden";

const compare = (name: string, made: string): void => {
	const file = new URL(name, GOLDEN);
	if (rebase) {
		mkdirSync(GOLDEN, { recursive: true });
		writeFileSync(file, made);
		return;
	}
	expect(existsSync(file), `fixtures/golden/${name} is missing; ${HOW}`).toBe(true);
	expect(made, `fixtures/golden/${name} differs; ${HOW}`).toBe(readFileSync(file, "utf8"));
};

/** Of the steps one with cement on its way and one with a close-up of the treated rock. */
const GOLDEN_STEPS: ReadonlySet<string> = new Set(["step-cement-surface", "step-stage"]);

/** Values to 9 significant digits: enough to see a change, not the last bit of an engine's sine. */
const steady = (_: string, value: unknown): unknown =>
	typeof value === "number" ? Number(value.toPrecision(9)) : value;

describe.each(STARTERS)("goldens of %s", (starter) => {
	it("results", () => {
		const json = resultsInFull(findingsOf(starter).index, "results.");
		const short = Object.fromEntries(
			Object.entries(json).map(([key, value]) => {
				const { inputs: _, rows, ...rest } = value as Record<string, unknown>;
				return [key, rows === undefined ? rest : { ...rest, rows: (rows as unknown[]).length }];
			}),
		);
		compare(`${starter}.results.json`, `${JSON.stringify(short, steady, 1)}\n`);
	});

	it("verdicts", () => {
		const lines = findingsOf(starter)
			.judgement.findings.map(told)
			.map(({ cite, subject, verdict, because }) => `${cite.rule} | ${subject} | ${verdict} | ${because}`);
		compare(`${starter}.verdicts.txt`, `${lines.join("\n")}\n`);
	});

	it.each(PAPERS)("%s paper", (paper) => {
		const { documents } = composeOnce(findingsOf(starter), [{ paper, language: "en", units: "field" }]);
		for (const document of documents) compare(`${starter}.${paper}.txt`, renderText(document.paper));
	});

	it("the well being built", () => {
		const findings = findingsOf(starter);
		const context = {
			...findingsFor(findings, "landowner"),
			paper: "landowner" as const,
			words: loadWords("en"),
			units: "field" as const,
		};
		const lines = toldFrames(context).map(
			({ step, title, say, shows }) =>
				`${step.id} | ${title} | ${printInline(say, { units: "field", language: "en" })} | ${shows}`,
		);
		compare(`${starter}.sequence.txt`, `${lines.join("\n")}\n`);
		for (const drawing of frameDrawings(context).filter(({ id }) => GOLDEN_STEPS.has(id)))
			compare(`${starter}.${drawing.id}.svg`, renderSvg(drawing, { embedFonts: false }));
	});

	it("drawings", () => {
		const made = drawings(findingsOf(starter), "field");
		expect(made.length).toBeGreaterThan(0);
		for (const { drawing } of made)
			compare(`${starter}.${drawing.id}.svg`, renderSvg(drawing, { embedFonts: false }));
	});
});
