import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { placeInOrder } from "../../src/drawing/label-column.ts";

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
