import { describe, expect, it } from "vitest";
import type { Drawing } from "../../src/document/shapes.ts";
import { isolationCloseUp } from "../../src/drawing/close-up/isolation-close-up.ts";
import { DRAWING_WORDS } from "../../src/drawing/drawing-words.ts";
import { planView } from "../../src/drawing/maps/plan-view.ts";
import { sectionView } from "../../src/drawing/maps/section-view.ts";
import { contrast, GROUND } from "../../src/drawing/palette.ts";
import { wellboreSchematic } from "../../src/drawing/schematic/wellbore-schematic.ts";
import { missingGlyphs } from "../../src/measure/text-width.ts";
import { findingsOf, STARTERS, type Starter } from "../starters.ts";
import { crossedLeaders, labelsOf, outside, overlaps, textsOf } from "./boxes.ts";

const UNITS = ["field", "metric"] as const;
const LANGUAGES = ["en", "es"] as const;

/** Every drawing of a starter, at the sizes papers use. */
const drawingsOf = (starter: Starter): Drawing[] => {
	const { well, results, index } = findingsOf(starter);
	return UNITS.flatMap((units) =>
		LANGUAGES.flatMap((language) => {
			const options = { units, words: DRAWING_WORDS[language], keyOf: index.keyOf };
			return [
				wellboreSchematic(well, results, { ...options, width: 504, height: 610, detail: "full" }),
				wellboreSchematic(well, results, { ...options, width: 500, height: 560, detail: "plain" }),
				wellboreSchematic(well, results, { ...options, width: 500, height: 400, detail: "plain" }),
				wellboreSchematic(well, results, { ...options, width: 500, height: 640, detail: "numbers" }),
				isolationCloseUp(well, results, { ...options, width: 500, height: 440 }),
				isolationCloseUp(well, results, { ...options, width: 500, height: 440, detail: "plain" }),
				sectionView(well, results, { ...options, width: 500, height: 480 }),
				planView(well, results, { ...options, width: 500, height: 440 }),
			];
		}),
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

	it("set words that can be read on paper and on the ground's tint", () => {
		for (const drawing of all)
			for (const text of textsOf(drawing.shapes)) {
				expect(contrast(text.color, GROUND), text.text).toBeGreaterThanOrEqual(4.5);
				expect(text.size, text.text).toBeGreaterThanOrEqual(7);
			}
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
