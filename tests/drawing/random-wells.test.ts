import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Results } from "../../src/calc/results.ts";
import type { Drawing } from "../../src/document/shapes.ts";
import { NEVER_DROPPED } from "../../src/drawing/never-dropped.ts";
import type { Well } from "../../src/well/well.ts";
import { sampleOf, WHOLE } from "../run/sample.ts";
import { crossedLeaders, groupsOf, labelsOf, outside, overlaps } from "./boxes.ts";
import { everyDrawing } from "./every-drawing.ts";
import { randomWell } from "./random-well.ts";
import { withExtras } from "./synthetic-extras.ts";
import { syntheticWell } from "./synthetic-well.ts";

const asked = fc.record({
	spec: randomWell,
	seed: fc.integer({ min: 1, max: 1e6 }),
	units: fc.constantFrom("field" as const, "metric" as const),
	language: fc.constantFrom("en" as const, "es" as const),
});

/** Round depths down a drawing, with where they stand. */
const depthMarks = (drawing: Drawing) =>
	groupsOf(drawing)
		.filter(({ name }) => /^label depth -?[\d.]+$/.test(name))
		.map(({ name, bounds }) => ({ depth: Number(name.slice(12)), y: (bounds.top + bounds.bottom) / 2 }));

/** Depths grow down the page, and in proportion within each piece of the scale. */
const expectTrueDepths = (drawing: Drawing): void => {
	const marks = depthMarks(drawing);
	marks.slice(1).forEach((mark, i) => {
		expect(mark.depth, drawing.id).toBeGreaterThan(marks[i]?.depth ?? 0);
		expect(mark.y, drawing.id).toBeGreaterThan(marks[i]?.y ?? 0);
	});
	const breaks = groupsOf(drawing)
		.filter(({ name }) => name.startsWith("label break "))
		.map(({ bounds }) => bounds.top);
	expect(breaks.length, drawing.id).toBeLessThanOrEqual(/plain|section|close-up/.test(drawing.id) ? 0 : 2);
	const edges = [...breaks, Number.POSITIVE_INFINITY].sort((a, b) => a - b);
	edges.forEach((edge, i) => {
		const from = edges[i - 1] ?? Number.NEGATIVE_INFINITY;
		const piece = marks.filter(({ y }) => y > from && y < edge);
		const [first, last] = [piece[0], piece.at(-1)];
		if (first === undefined || last === undefined || first === last) return;
		const rate = (last.y - first.y) / (last.depth - first.depth);
		for (const { depth, y } of piece)
			expect(y, drawing.id).toBeCloseTo(first.y + (depth - first.depth) * rate, 1);
	});
};

/** Labels that the well gives a drawing of the whole well reason to bear, by the declared list. */
const due = (well: Well, results: Results, detail: "full" | "numbers" | "plain"): string[] => {
	const { stimulation, geology, cement, trajectory } = results;
	const strings = well.strings.map(({ id }) => id);
	// In the public's drawing of a lateral, the strings that end above the kickoff.
	const turn = trajectory.landing === undefined ? undefined : trajectory.kickoff?.md.value;
	const upright = well.strings
		.filter(({ shoe }) => turn === undefined || shoe.value <= turn)
		.map(({ id }) => id);
	const apart =
		stimulation !== undefined &&
		Math.abs(stimulation.top_perforation.md.value - stimulation.bottom_perforation.md.value) > 1;
	const all: Record<string, readonly string[]> = {
		"ground level": [""],
		"string ": detail === "plain" ? upright : strings,
		// Of its own only where the shoe lies in a curve or a lateral.
		"shoe ": [],
		"cement ": strings.filter((id) => cement[id]?.to_surface === false),
		"liner top ": well.strings.filter(({ kind }) => kind === "liner").map(({ id }) => id),
		"protected water": geology.protected_water_base === undefined ? [] : [""],
		"top perforation": stimulation === undefined ? [] : [""],
		"bottom perforation": apart ? [""] : [],
		"total depth": [""],
		"water well ": [],
		gap: [],
	};
	return NEVER_DROPPED[detail].flatMap((entry) => {
		const ends = all[entry];
		if (ends === undefined) throw new Error(`the list names ${entry}, which this test does not know`);
		return ends.map((end) => `label ${entry}${end}`);
	});
};

/** Of the close-up: what stands in its window for sure; of the section: what the well has. */
const dueInPart = (results: Results, of: "close-up" | "section"): string[] => {
	const { isolation, geology, stimulation } = results;
	const based = geology.protected_water_base === undefined ? [] : ["label protected water"];
	if (of === "section")
		return [...based, ...(stimulation === undefined ? [] : ["label top perforation"]), "label total depth"];
	const shoe = isolation.shoe_below_protected_water;
	return [
		"label ground level",
		...(based.length === 0 ? [] : [...based, "label depth of base"]),
		// A string that ends above the water is not what the close-up shows.
		...(isolation.protecting_string === undefined || shoe === undefined || shoe.value <= 0
			? []
			: [`label string ${isolation.protecting_string}`]),
	];
};

const seen = new Set<string>();

const ALL = fc.sample(asked, { numRuns: 200, seed: 20_260_504 });
const wells = sampleOf("random wells", ALL, 40);

describe(`every drawing of ${wells.length} random wells`, () => {
	it("keeps within its frame, sets no label on another, is true in depth, and drops no label of the list", () => {
		fc.assert(
			fc.property(asked, ({ spec, seed, units, language }) => {
				const { well, results } = withExtras(syntheticWell(spec), seed);
				for (const drawing of everyDrawing(well, results, units, language)) {
					seen.add(drawing.id.replace(/^(load-lines|hook-loads)-.*/u, "$1"));
					expect(outside(drawing), drawing.id).toEqual([]);
					expect(overlaps(drawing), drawing.id).toEqual([]);
					expectTrueDepths(drawing);
					if (/schematic|close-up|window|ladder/.test(drawing.id))
						expect(crossedLeaders(drawing), drawing.id).toEqual([]);
					const part = /close-up|section/.exec(drawing.id)?.[0] as "close-up" | "section" | undefined;
					if (part !== undefined)
						expect(
							labelsOf(drawing).map(({ name }) => name),
							drawing.id,
						).toEqual(expect.arrayContaining(dueInPart(results, part)));
					const [, detail] = /^schematic-(full|numbers|plain)$/.exec(drawing.id) ?? [];
					if (detail === undefined) continue;
					const names = labelsOf(drawing).map(({ name }) => name);
					expect(names, drawing.id).toEqual(
						expect.arrayContaining(due(well, results, detail as "full" | "numbers" | "plain")),
					);
				}
			}),
			{ numRuns: wells.length, examples: wells.map((each): [typeof each] => [each]) },
		);
		// The wells are such that everything there is is drawn, from small ones to large ones.
		const totals = ALL.map(({ spec }) => spec.total);
		expect(Math.min(...totals)).toBeLessThan(2000);
		expect(Math.max(...totals)).toBeGreaterThan(20_000);
		expect(Math.max(...ALL.map(({ spec }) => spec.stages?.count ?? 0))).toBeGreaterThan(90);
		if (!WHOLE) return;
		expect([...seen].sort()).toEqual([
			"hook-loads",
			"isolation-close-up",
			"isolation-close-up-plain",
			"load-lines",
			"plan",
			"plan-plain",
			"pressure-ladder",
			"pressure-window",
			"schematic-full",
			"schematic-numbers",
			"schematic-plain",
			"section",
			"stage-plan",
			"timeline",
			"timeline-plain",
			"treatment-plot",
		]);
	}, 600_000);
});
