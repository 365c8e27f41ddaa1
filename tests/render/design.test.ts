import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
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
		const { hair, ...inks } = INK;
		for (const ink of Object.values(inks)) {
			// WCAG 2.1, 1.4.6 (enhanced): 7:1.
			expect(contrastWithWhite(ink)).toBeGreaterThan(7);
			expect(luminance(ink)).toBeLessThan(0.18);
		}
		// WCAG 2.1, 1.4.11 (graphics): 3:1, which a line that only guides the eye need not have, and has.
		expect(contrastWithWhite(hair)).toBeGreaterThan(3);
	});

	it("draws hairlines in gray, and sets no type in it", () => {
		const uses = readdirSync("src/render", { recursive: true, encoding: "utf8" })
			.filter((file) => /\.tsx?$/u.test(file))
			.flatMap((file) => readFileSync(join("src/render", file), "utf8").split("\n"))
			.filter((line) => line.includes("INK.hair"));
		expect(uses.length).toBeGreaterThan(2);
		expect(uses.filter((line) => !line.trim().startsWith("borderColor: "))).toEqual([]);
	});

	it("keeps every reader's least sizes", () => {
		// Read at a desk: text of 9.5 points; tables that are looked things up in, and notes, of no less than 8.5.
		expect(DESIGNS.office.body).toBeGreaterThanOrEqual(9.5);
		expect(DESIGNS.office.table).toBeGreaterThanOrEqual(9);
		expect(Math.min(DESIGNS.office.dense, DESIGNS.office.note)).toBeGreaterThanOrEqual(8.5);
		expect(DESIGNS.office.running).toBeGreaterThanOrEqual(8);
		// Looked up: no less than 7.5, and text that is read of 9.
		expect(DESIGNS.reference.body).toBeGreaterThanOrEqual(9);
		expect(Math.min(DESIGNS.reference.dense, DESIGNS.reference.note)).toBeGreaterThanOrEqual(7.5);
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
