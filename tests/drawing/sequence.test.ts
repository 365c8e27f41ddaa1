import { describe, expect, it } from "vitest";
import type { Language } from "../../src/document/document.ts";
import type { Drawing } from "../../src/document/shapes.ts";
import { everyStep, stepOfJob, toldSteps } from "../../src/drawing/sequence/steps.ts";
import { missingGlyphs } from "../../src/measure/text-width.ts";
import { findingsFor } from "../../src/paper/findings-for.ts";
import { jobsOfWell } from "../../src/paper/jobs.ts";
import { toldFrames } from "../../src/paper/sequence/frames.ts";
import { frameDrawings, frameForJob, sequenceStrip } from "../../src/paper/sequence/sequence.ts";
import { loadWords } from "../../src/paper/words/words.ts";
import { printInline } from "../../src/render/print/print-text.ts";
import { formatQuantity, type UnitSystem } from "../../src/units/format.ts";
import { findingsOf, STARTERS, type Starter, starterText, understandText } from "../starters.ts";
import { cutAway, groupsOf, outside, overlaps, textsOf } from "./boxes.ts";

const contextOf = (
	starter: Starter,
	language: Language = "en",
	units: UnitSystem = "field",
	findings = findingsOf(starter),
) => ({
	...findingsFor(findings, "landowner"),
	paper: "landowner" as const,
	words: loadWords(language),
	units,
});

const EDITIONS = (["en", "es"] as const).flatMap((language) =>
	(["field", "metric"] as const).map((units) => [language, units] as const),
);

const sentenceOf = (context: ReturnType<typeof contextOf>, say: Parameters<typeof printInline>[0]): string =>
	printInline(say, { units: context.units, language: context.words.language }).replaceAll("\u00a0", " ");

describe.each(STARTERS)("the well being built, %s", (starter) => {
	it("has each step of the work, in its order", () => {
		const { well, results } = findingsOf(starter);
		const kinds = toldSteps(well, results).map(({ kind }) => kind);
		const horizontal = starter !== "vertical-metric";
		expect(kinds).toEqual([
			"pad",
			...["hole", "pipe", "cement", "returns", "test", "preventers"],
			...(horizontal ? ["string"] : []),
			...["hole", "pipe", "cement", "wellhead", "perforate", "stage"],
			...(horizontal ? ["plug", "stages", "drill-out"] : []),
			...["flowback", "producing", "plugged"],
		]);
		const ids = everyStep(well, results).map(({ id }) => id);
		expect(new Set(ids).size).toBe(ids.length);
	});

	it.each(EDITIONS)("keeps to its frame, in %s, %s: no word over another, none lost", (language, units) => {
		const context = contextOf(starter, language, units);
		for (const drawing of [...frameDrawings(context), ...sequenceStrip(context)]) {
			expect(outside(drawing), drawing.id).toEqual([]);
			if (drawing.id.startsWith("step-")) expect(overlaps(drawing), drawing.id).toEqual([]);
			expect(cutAway(drawing.shapes), drawing.id).toEqual([]);
			expect(drawing.scale).toMatch(/scale|escala/u);
			for (const text of textsOf(drawing.shapes)) {
				expect(text.text).not.toMatch(/undefined|NaN|null|[{}…]/u);
				expect(missingGlyphs(text.text), text.text).toEqual([]);
				expect(text.size, text.text).toBeGreaterThanOrEqual(7);
			}
		}
	});

	it("has one depth scale: a depth stands at one height in every picture", () => {
		const heights = new Map<string, Set<number>>();
		for (const drawing of frameDrawings(contextOf(starter)))
			for (const { name, bounds } of groupsOf(drawing))
				if (/^label (?:depth|ruler|protected)/u.test(name))
					heights.set(name, (heights.get(name) ?? new Set()).add(Math.round(bounds.top * 100)));
		expect(heights.size).toBeGreaterThan(3);
		for (const [name, found] of heights) expect([name, found.size]).toEqual([name, 1]);
	});

	it.each(EDITIONS)(
		"says one sentence a step, in %s, %s, of values that the index has",
		(language, units) => {
			const context = contextOf(starter, language, units);
			let values = 0;
			for (const { step, say } of toldFrames(context)) {
				const sentence = sentenceOf(context, say);
				expect(sentence, step.id).toMatch(/^\p{Lu}[^.]*(?:\.\d[^.]*)*\.$/u);
				expect(sentence.split(/\s/u).length, sentence).toBeLessThanOrEqual(36);
				for (const inline of say) {
					if (inline.kind !== "quantity") continue;
					values += 1;
					const known = context.index.byKey.get(inline.key ?? "");
					expect(known, `${step.id}: ${inline.key}`).toMatchObject({ value: inline.value });
				}
			}
			expect(values).toBeGreaterThan(15);
		},
	);

	it("prints the number that the packet prints: spoken, and otherwise the same digits", () => {
		const context = contextOf(starter);
		for (const { say } of toldFrames(context))
			for (const inline of say) {
				if (inline.kind !== "quantity") continue;
				const { number } = formatQuantity(inline, "field");
				const said = sentenceOf(context, [inline]).replace(/ million /u, "00,000 ");
				expect(said.replaceAll(/\D/gu, "")).toContain(number.replaceAll(/\D|\.0+$/gu, "").slice(0, 2));
			}
	});

	it.each(EDITIONS)("compares each pressure with a tire's, in %s, %s: in psi alone", (language, units) => {
		let compared = 0;
		for (const { step, say } of toldFrames(contextOf(starter, language, units))) {
			const pressures = say.filter((inline) => inline.kind === "quantity" && inline.dimension === "pressure");
			if (pressures.length === 0) continue;
			const sentence = sentenceOf(contextOf(starter, language, units), say);
			if (units === "field") expect(sentence, step.id).toMatch(/a car tire holds|una llanta de auto lleva/u);
			else expect(sentence, step.id).not.toMatch(/tire|llanta/u);
			compared += 1;
		}
		expect(compared).toBeGreaterThan(2);
	});

	it("has a picture for every job of the crews", () => {
		const context = contextOf(starter);
		for (const job of jobsOfWell(findingsOf(starter).well)) {
			const drawing = frameForJob(context, job) as Drawing;
			expect(drawing, job.id).toBeDefined();
			expect(outside(drawing), job.id).toEqual([]);
			const step = stepOfJob(context.well, context.results, job);
			if (job.string !== undefined && step?.kind !== "pad") expect(step?.string).toBe(job.string);
		}
	});
});

describe("the words of the steps", () => {
	const told = (starter: Starter, id: string, findings = findingsOf(starter), language: Language = "en") => {
		const context = contextOf(starter, language, "field", findings);
		const found = toldFrames(context).find(({ step }) => step.id === id);
		return found === undefined ? undefined : sentenceOf(context, found.say);
	};

	it("follow the record: planned in the present, recorded in the past", () => {
		expect(told("horizontal", "cement-surface")).toMatch(/^We pump about/u);
		expect(told("horizontal-as-built", "cement-surface")).toMatch(/^We pumped about/u);
		expect(told("horizontal", "stages")).toMatch(/^We do this/u);
		expect(told("horizontal-as-built", "stages")).toMatch(/^We did this/u);
	});

	it("tell how far a pipe passes the water only where no verdict on the water is open", () => {
		expect(told("horizontal", "pipe-surface")).toContain("deeper than the protected water");
		const shallow = understandText(
			starterText("horizontal").replace("base: 984 ft below ground", "base: 1300 ft below ground"),
		).findings;
		expect(shallow).toBeDefined();
		if (shallow !== undefined)
			expect(told("horizontal", "pipe-surface", shallow)).not.toContain("deeper than the protected water");
	});

	it("do not say how cement came back where that is not on record", () => {
		const silent = understandText(
			starterText("horizontal-as-built").replace(/\n\s+returns: \{ to_surface: 62 bbl \}/u, ""),
		).findings;
		expect(silent).toBeDefined();
		if (silent !== undefined) {
			const said = told("horizontal-as-built", "returns-surface", silent);
			expect(said === undefined || said.includes("not on record")).toBe(true);
		}
	});

	it("keep from the public what the definition keeps from it", () => {
		const all = toldFrames(contextOf("horizontal")).map(({ say }) =>
			sentenceOf(contextOf("horizontal"), say),
		);
		expect(all.join(" ")).not.toContain("5,000 psi");
		const regulator = {
			...findingsOf("horizontal"),
			paper: "regulator" as const,
			words: loadWords("en"),
			units: "field" as const,
		};
		const preventers = toldFrames(regulator).find(({ step }) => step.id === "preventers-surface");
		expect(sentenceOf(contextOf("horizontal"), preventers?.say ?? [])).toContain("5,000 psi");
	});
});
