import { describe, expect, it } from "vitest";
import { DESIGNS, designAt, INK, SCALES } from "../../src/render/pdf/design.ts";

/** Relative luminance and contrast: WCAG 2.1, definitions of "relative luminance" and "contrast ratio". */
const luminance = (color: string): number => {
	const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
		const channel = Number.parseInt(color.slice(at, at + 2), 16) / 255;
		return channel <= 0.03928 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
	});
	return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const contrastWithWhite = (color: string): number => 1.05 / (luminance(color) + 0.05);

describe("the design", () => {
	it("reckons contrast as the guideline does", () => {
		// WCAG 2.1: black on white is 21:1. #767676 is the lightest grey that reaches 4.5:1 (common practice, no source).
		expect(contrastWithWhite("#000000")).toBeCloseTo(21, 10);
		expect(contrastWithWhite("#767676")).toBeGreaterThanOrEqual(4.5);
		expect(contrastWithWhite("#777777")).toBeLessThan(4.5);
	});

	it("prints in inks that read on white and stay black in a two-tone scan", () => {
		for (const ink of Object.values(INK)) {
			// WCAG 2.1, 1.4.6 (enhanced): 7:1.
			expect(contrastWithWhite(ink)).toBeGreaterThan(7);
			expect(luminance(ink)).toBeLessThan(0.18);
		}
	});

	it("keeps every reader's least sizes", () => {
		expect(DESIGNS.office.dense).toBeGreaterThanOrEqual(9);
		expect(DESIGNS.public.body).toBeGreaterThanOrEqual(12);
		// A sheet of a job has all of it on two pages: its type gives way to 8 points, its large figures never below 18.
		const least = designAt("field", Math.min(...SCALES));
		expect(least.body).toBeGreaterThanOrEqual(8);
		expect(least.table).toBeGreaterThanOrEqual(7.9);
		expect(Math.min(least.dense, least.note)).toBeGreaterThanOrEqual(7);
		expect(least.figure).toEqual(DESIGNS.field.figure);
		expect(least.figure.least).toBeGreaterThanOrEqual(18);
		expect(least.pencil / 72).toBeCloseTo(9 / 25.4, 10);
		for (const { rule } of Object.values(DESIGNS))
			expect(Math.min(...Object.values(rule))).toBeGreaterThanOrEqual(0.5);
	});
});
