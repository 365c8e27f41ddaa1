import { describe, expect, it } from "vitest";
import type { Shape } from "../../src/document/shapes.ts";
import {
	BLUE,
	BLUISH_GREEN,
	CEMENT_BUILT,
	CEMENT_GRAIN,
	CEMENT_PLANNED,
	contrast,
	GROUND,
	INK,
	LEADER,
	ORANGE,
	PAPER,
	ROCK_LINE,
	RULING,
	SECOND_INK,
	SKY_BLUE,
	TARGET_TINT,
	VERMILLION,
	WALL,
	WATER_TINT,
} from "../../src/drawing/palette.ts";
import { findingsOf, STARTERS } from "../starters.ts";
import { textsOf } from "./boxes.ts";
import { everyDrawing } from "./every-drawing.ts";

const all = STARTERS.flatMap((starter) => {
	const { well, results } = findingsOf(starter);
	return everyDrawing(well, results, "field", "en");
});

const paths = (shapes: readonly Shape[]): Exclude<Shape, { kind: "group" | "text" }>[] =>
	shapes.flatMap((shape) =>
		shape.kind === "group" ? paths(shape.children) : shape.kind === "text" ? [] : [shape],
	);

/** Fills that say nothing alone: each lies within a line, or bears a pattern, that does. */
const ACCOMPANIED = new Set([
	PAPER,
	GROUND,
	WATER_TINT,
	TARGET_TINT,
	CEMENT_PLANNED,
	CEMENT_BUILT,
	SKY_BLUE,
	ORANGE,
]);

/** Which mark is told from which ground. */
const TOLD: readonly (readonly [mark: string, grounds: readonly string[]])[] = [
	[INK, [PAPER, GROUND, WATER_TINT, TARGET_TINT, CEMENT_PLANNED, CEMENT_BUILT]],
	[SECOND_INK, [PAPER, GROUND, WATER_TINT, TARGET_TINT]],
	[LEADER, [PAPER, GROUND, WATER_TINT, TARGET_TINT, CEMENT_PLANNED, CEMENT_BUILT]],
	[WALL, [PAPER, GROUND, WATER_TINT, TARGET_TINT]],
	[RULING, [PAPER, GROUND]],
	[ROCK_LINE, [PAPER, TARGET_TINT]],
	[CEMENT_GRAIN, [CEMENT_PLANNED, CEMENT_BUILT]],
	[BLUE, [PAPER, GROUND, WATER_TINT]],
	[VERMILLION, [PAPER, GROUND, TARGET_TINT]],
	[BLUISH_GREEN, [PAPER, GROUND]],
];

/** WCAG 2.1, success criteria 1.4.3 (text) and 1.4.11 (graphics). */
describe("contrast", () => {
	it("is 21 of black on white, and 1 of a color on itself", () => {
		expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 9);
		expect(contrast("#777777", "#ffffff")).toBeCloseTo(4.48, 2);
		expect(contrast(BLUE, BLUE)).toBe(1);
	});

	it("of a mark on each ground that it is told from is 3 at least", () => {
		for (const [mark, grounds] of TOLD)
			for (const ground of grounds)
				expect(contrast(mark, ground), `${mark} on ${ground}`).toBeGreaterThanOrEqual(3);
	});

	it("holds for every line and every fill of the drawings", () => {
		const marks = new Set(TOLD.map(([mark]) => mark));
		for (const drawing of all)
			for (const shape of paths(drawing.shapes)) {
				const { stroke } = shape;
				if (stroke !== undefined && stroke.color !== PAPER) expect(marks, drawing.id).toContain(stroke.color);
				if (shape.kind === "path" && shape.fill !== undefined && !ACCOMPANIED.has(shape.fill))
					expect(marks, drawing.id).toContain(shape.fill);
			}
	});

	it("of words is 4.5 at least, on whatever they stand", () => {
		for (const drawing of all)
			for (const text of textsOf(drawing.shapes)) {
				const grounds = text.color === PAPER ? [INK] : [PAPER, GROUND];
				for (const ground of grounds)
					expect(contrast(text.color, ground), text.text).toBeGreaterThanOrEqual(4.5);
			}
	});

	it("keeps lines that carry meaning wide enough for a scan in two tones", () => {
		for (const drawing of all)
			for (const { stroke } of paths(drawing.shapes))
				if (stroke !== undefined) expect(stroke.width, drawing.id).toBeGreaterThanOrEqual(0.5);
	});
});
