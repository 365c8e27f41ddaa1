import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Shape } from "../../src/document/shapes.ts";
import { type Label, labelColumn, labelRow, type Placed } from "../../src/drawing/label.ts";
import { placeInOrder } from "../../src/drawing/label-column.ts";
import { lineText, run } from "../../src/drawing/line-of-text.ts";

const boxes = fc
	.array(
		fc.record({
			anchor: fc.integer({ min: 0, max: 500 }),
			size: fc.integer({ min: 5, max: 40 }),
			weight: fc.integer({ min: 1, max: 4 }),
		}),
		{ minLength: 1, maxLength: 12 },
	)
	.map((list) => list.sort((a, b) => a.anchor - b.anchor));

const cost = (list: readonly { anchor: number; size: number; weight: number }[], starts: readonly number[]) =>
	list.reduce((sum, box, i) => sum + box.weight * ((starts[i] ?? 0) + box.size / 2 - box.anchor) ** 2, 0);

describe("labels in a column", () => {
	it("never overlap, keep their order, and stay within bounds", () => {
		fc.assert(
			fc.property(boxes, (list) => {
				const starts = placeInOrder(list, -20, 600);
				starts.forEach((start, i) => {
					expect(start).toBeGreaterThanOrEqual(-20 - 1e-9);
					expect(start + (list[i]?.size ?? 0)).toBeLessThanOrEqual(600 + 1e-9);
					if (i > 0)
						expect(start).toBeGreaterThanOrEqual((starts[i - 1] ?? 0) + (list[i - 1]?.size ?? 0) - 1e-9);
				});
			}),
		);
	});

	it("stand as near their places as can be: no small move of any run of labels does better", () => {
		fc.assert(
			fc.property(boxes, fc.nat(11), fc.nat(11), fc.constantFrom(-0.5, 0.5), (list, a, b, move) => {
				const starts = placeInOrder(list, -20, 600);
				const [from, to] = [Math.min(a, b), Math.max(a, b)];
				const moved = starts.map((start, i) => (i >= from && i <= to ? start + move : start));
				const legal = moved.every(
					(start, i) =>
						start >= -20 &&
						start + (list[i]?.size ?? 0) <= 600 &&
						(i === 0 || start >= (moved[i - 1] ?? 0) + (list[i - 1]?.size ?? 0)),
				);
				if (legal) expect(cost(list, moved)).toBeGreaterThanOrEqual(cost(list, starts) - 1e-6);
			}),
		);
	});

	it("leave alone what does not collide", () => {
		expect(
			placeInOrder(
				[
					{ anchor: 50, size: 10 },
					{ anchor: 100, size: 20 },
				],
				0,
				200,
			),
		).toEqual([45, 90]);
		expect(
			placeInOrder(
				[
					{ anchor: 50, size: 10 },
					{ anchor: 50, size: 10 },
				],
				0,
				200,
			),
		).toEqual([40, 50]);
	});
});

const word = fc.stringMatching(/^[a-z]{1,14}$/);
const lineOfWords = fc.array(word, { minLength: 1, maxLength: 7 }).map((words) => words.join(" "));
const anyLabel = fc.record({
	lines: fc.array(lineOfWords, { minLength: 1, maxLength: 5 }),
	y: fc.double({ min: 0, max: 300, noNaN: true }),
	weight: fc.integer({ min: 1, max: 9 }),
	keep: fc.boolean(),
});
type Asked = typeof anyLabel extends fc.Arbitrary<infer L> ? L : never;
const bare = (text: string): string => text.replaceAll(/[\s…]+/gu, "");
const drawnText = (shapes: readonly Shape[]): string =>
	shapes
		.map((shape) =>
			shape.kind === "group" ? drawnText(shape.children) : shape.kind === "text" ? shape.text : "",
		)
		.join("");

describe("what a column or a row of labels has no room for", () => {
	const labelsOf = (given: readonly Asked[]): Label[] =>
		given.map(({ lines, y, weight, keep }, i) => ({
			id: `label ${i}`,
			anchor: [y, y],
			lines: lines.map((text) => [run(text)]),
			weight,
			keep,
		}));
	const told = (labels: readonly Label[], { shapes, lost }: Placed): void => {
		for (const label of labels) {
			const group = shapes.filter((shape) => shape.kind === "group" && shape.name === `label ${label.id}`);
			const drawn = bare(drawnText(group));
			for (const line of label.lines) {
				const text = bare(lineText(line));
				const listed = lost.some(({ name, says }) => bare(name).includes(text) || bare(says).includes(text));
				expect(drawn.includes(text) || listed, `"${lineText(line)}" is neither drawn nor listed`).toBe(true);
			}
		}
	};

	it("is listed, line by line", () => {
		fc.assert(
			fc.property(
				fc.array(anyLabel, { minLength: 1, maxLength: 14 }),
				fc.double({ min: 30, max: 140, noNaN: true }),
				(given, width) => {
					const labels = labelsOf(given);
					const column = { side: "right", x: 300, width, edge: 280, low: 0, high: 220, size: 8 } as const;
					told(labels, labelColumn(labels, column));
					const across = { left: 0, right: 400, top: 300, bottom: 340, edge: 290, widest: width, size: 8 };
					told(labels, labelRow(labels, across));
				},
			),
		);
	});
});
