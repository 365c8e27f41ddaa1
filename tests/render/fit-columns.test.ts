import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitColumns } from "../../src/render/pdf/fit-columns.ts";

const sum = (widths: readonly number[]): number => widths.reduce((total, width) => total + width, 0);

describe("fitColumns", () => {
	it("divides by shares where nobody needs more", () => {
		expect(
			fitColumns(
				[
					{ share: 1, least: 10 },
					{ share: 3, least: 10 },
				],
				100,
			),
		).toEqual([25, 75]);
	});
	it("gives what is needed and takes it from the others in proportion", () => {
		expect(
			fitColumns(
				[
					{ share: 1, least: 40 },
					{ share: 1, least: 0 },
					{ share: 2, least: 0 },
				],
				100,
			),
		).toEqual([40, 20, 40]);
	});
	it("fills the width, or exceeds it by need alone", () => {
		const wish = fc.record({
			share: fc.integer({ min: 1, max: 9 }),
			least: fc.integer({ min: 0, max: 200 }),
		});
		fc.assert(
			fc.property(
				fc.array(wish, { minLength: 1, maxLength: 9 }),
				fc.integer({ min: 50, max: 600 }),
				(wishes, total) => {
					const widths = fitColumns(wishes, total);
					const needed = wishes.reduce((n, { least }) => n + least, 0);
					expect(sum(widths)).toBeCloseTo(Math.max(needed, total), 6);
					for (const [i, { least }] of wishes.entries())
						expect(widths[i]).toBeGreaterThanOrEqual(least - 1e-9);
				},
			),
		);
	});
});
