import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Drawing } from "../../src/document/shapes.ts";
import { wellboreSchematic } from "../../src/drawing/schematic/wellbore-schematic.ts";
import { ENGLISH } from "../../src/drawing/words-en.ts";
import { crossedLeaders, groupsOf, outside, overlaps } from "./boxes.ts";
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

const seen = new Set<string>();

describe("every drawing of 200 random wells", () => {
	it("keeps within its frame, sets no label on another, and counts depth downward", () => {
		fc.assert(
			fc.property(asked, ({ spec, seed, units, language }) => {
				const { well, results } = withExtras(syntheticWell(spec), seed);
				for (const drawing of everyDrawing(well, results, units, language)) {
					seen.add(drawing.id.replace(/^load-lines-.*/u, "load-lines"));
					expect(outside(drawing), drawing.id).toEqual([]);
					expect(overlaps(drawing), drawing.id).toEqual([]);
					if (/schematic|close-up/.test(drawing.id)) expect(crossedLeaders(drawing), drawing.id).toEqual([]);
					const marks = depthMarks(drawing);
					marks.slice(1).forEach((mark, i) => {
						expect(mark.depth, drawing.id).toBeGreaterThan(marks[i]?.depth ?? 0);
						expect(mark.y, drawing.id).toBeGreaterThan(marks[i]?.y ?? 0);
					});
				}
			}),
			{ numRuns: 200 },
		);
		// The wells were such that everything there is was drawn.
		expect([...seen].sort()).toEqual([
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
	});

	it("draws depth in proportion within each piece of the scale", () => {
		fc.assert(
			fc.property(
				asked,
				fc.constantFrom("full" as const, "numbers" as const, "plain" as const),
				({ spec, seed, units }, detail) => {
					const { well, results } = withExtras(syntheticWell(spec), seed);
					const drawing = wellboreSchematic(well, results, {
						units,
						width: 504,
						height: 570,
						detail,
						words: ENGLISH,
					});
					const marks = depthMarks(drawing);
					const breaks = groupsOf(drawing)
						.filter(({ name }) => name.startsWith("label break "))
						.map(({ bounds }) => bounds.top);
					expect(breaks.length).toBeLessThanOrEqual(detail === "plain" ? 0 : 2);
					const edges = [...breaks, Number.POSITIVE_INFINITY].sort((a, b) => a - b);
					for (const [i, edge] of edges.entries()) {
						const from = edges[i - 1] ?? Number.NEGATIVE_INFINITY;
						const piece = marks.filter(({ y }) => y > from && y < edge);
						const [first, last] = [piece[0], piece.at(-1)];
						if (first === undefined || last === undefined || first === last) continue;
						const rate = (last.y - first.y) / (last.depth - first.depth);
						for (const { depth, y } of piece)
							expect(y).toBeCloseTo(first.y + (depth - first.depth) * rate, 1);
					}
				},
			),
			{ numRuns: 200 },
		);
	});
});
