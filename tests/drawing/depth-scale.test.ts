import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { BREAK_GAP, depthScale, graduations } from "../../src/drawing/depth-scale.ts";

const anyScale = fc
	.record({
		deep: fc.integer({ min: 300, max: 25_000 }),
		cuts: fc.array(
			fc.record({
				share: fc.double({ min: 0.02, max: 0.95, noNaN: true }),
				least: fc.double({ min: 0.1, max: 0.4, noNaN: true }),
			}),
			{ maxLength: 2 },
		),
		below: fc.double({ min: 0.1, max: 0.3, noNaN: true }),
	})
	.map(({ deep, cuts, below }) => ({
		deep,
		scale: depthScale(
			[0, deep],
			[40, 540],
			cuts.map(({ share, least }) => ({ at: share * deep, least })),
			below,
		),
	}));

describe("depth scale", () => {
	it("draws depth in proportion within each piece, and never backward", () => {
		fc.assert(
			fc.property(
				anyScale,
				fc.double({ min: 0, max: 1, noNaN: true }),
				fc.double({ min: 0, max: 1, noNaN: true }),
				({ scale }, a, b) => {
					for (const piece of scale.pieces) {
						const span = piece.to - piece.from;
						const perFoot = (piece.bottom - piece.top) / span;
						const depth = piece.from + Math.max(a, 1e-6) * span;
						expect(scale.y(depth)).toBeCloseTo(piece.top + (depth - piece.from) * perFoot, 6);
					}
					const [from, to] = [scale.pieces[0]?.from ?? 0, scale.pieces.at(-1)?.to ?? 0];
					const [low, high] = [Math.min(a, b), Math.max(a, b)].map((share) => from + share * (to - from));
					expect(scale.y(high ?? 0)).toBeGreaterThanOrEqual(scale.y(low ?? 0));
				},
			),
		);
	});

	it("leaves no depth out and fills its height", () => {
		fc.assert(
			fc.property(anyScale, ({ scale, deep }) => {
				expect(scale.pieces[0]).toMatchObject({ from: 0, top: 40 });
				expect(scale.pieces.at(-1)).toMatchObject({ to: deep, bottom: 540 });
				scale.pieces.slice(1).forEach((piece, i) => {
					expect(piece.from).toBe(scale.pieces[i]?.to);
					expect(piece.top).toBeCloseTo((scale.pieces[i]?.bottom ?? 0) + BREAK_GAP, 9);
				});
			}),
		);
	});

	it("breaks only where that is worth it", () => {
		fc.assert(
			fc.property(anyScale, ({ scale }) => {
				for (const { ratio } of scale.breaks) expect(Math.max(ratio, 1 / ratio)).toBeGreaterThanOrEqual(1.6);
			}),
		);
		expect(depthScale([0, 1000], [0, 500], [{ at: 400, least: 0.4 }], 0.3).pieces).toHaveLength(1);
	});

	it("graduates in round numbers, in order, each at its depth", () => {
		fc.assert(
			fc.property(
				anyScale,
				fc.constantFrom(1, 0.3048),
				fc.integer({ min: 0, max: 40 }),
				({ scale }, perFoot, zero) => {
					const ticks = graduations(scale, perFoot, zero, 26);
					ticks.forEach((tick, i) => {
						expect(tick.y).toBeCloseTo(scale.y(tick.value / perFoot + zero), 3);
						if (i > 0) expect(tick.value).toBeGreaterThan(ticks[i - 1]?.value ?? 0);
					});
					expect(ticks.filter((tick) => tick.numbered).length).toBeGreaterThan(0);
				},
			),
		);
	});
});
