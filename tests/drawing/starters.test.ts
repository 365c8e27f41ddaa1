import { describe, expect, it } from "vitest";
import type { Drawing } from "../../src/document/shapes.ts";
import { missingGlyphs } from "../../src/measure/text-width.ts";
import { findingsOf, STARTERS, type Starter } from "../starters.ts";
import { crossedLeaders, cutAway, labelsOf, outside, overlaps, textsOf } from "./boxes.ts";
import { everyDrawing } from "./every-drawing.ts";

const UNITS = ["field", "metric"] as const;
const LANGUAGES = ["en", "es"] as const;

/** Every drawing of a starter, in both systems and both languages. */
const drawingsOf = (starter: Starter): Drawing[] => {
	const { well, results, index } = findingsOf(starter);
	return UNITS.flatMap((units) =>
		LANGUAGES.flatMap((language) => everyDrawing(well, results, units, language, index.keyOf)),
	);
};

describe.each(STARTERS)("drawings of %s", (starter) => {
	const all = drawingsOf(starter);

	it("keep to their frames, with no label on another and no leaders crossing", () => {
		for (const drawing of all) {
			expect(outside(drawing), drawing.title).toEqual([]);
			expect(overlaps(drawing), drawing.title).toEqual([]);
			if (drawing.id !== "section") expect(crossedLeaders(drawing), drawing.title).toEqual([]);
		}
	});

	it("draw no path that its clip cuts away whole", () => {
		for (const drawing of all) expect(cutAway(drawing.shapes), drawing.title).toEqual([]);
	});

	it("say nothing that is not a word, in letters that the face has", () => {
		for (const drawing of all)
			for (const said of [
				drawing.title,
				drawing.alternative,
				drawing.scale,
				...textsOf(drawing.shapes).map((text) => text.text),
			]) {
				expect(said).not.toMatch(/undefined|NaN|null|[{}]/);
				expect(missingGlyphs(said), said).toEqual([]);
			}
	});

	it("set words in 7 points or more", () => {
		for (const drawing of all)
			for (const text of textsOf(drawing.shapes)) expect(text.size, text.text).toBeGreaterThanOrEqual(7);
	});

	it("print values under the keys of the index", () => {
		const { index } = findingsOf(starter);
		const keys = all.flatMap((drawing) =>
			textsOf(drawing.shapes).flatMap((text) => (text.key === undefined ? [] : [text.key])),
		);
		expect(keys).toContain("results.trajectory.total_depth.tvd");
		for (const key of keys) expect(index.byKey.has(key), key).toBe(true);
	});

	it("say whether they are to scale", () => {
		for (const drawing of all) expect(drawing.scale).toMatch(/scale|escala/);
	});

	it("name every string of the well in the full schematic", () => {
		const { well } = findingsOf(starter);
		const names = labelsOf(all[0] as Drawing).map(({ name }) => name);
		for (const string of well.strings) expect(names).toContain(`label string ${string.id}`);
	});
});
