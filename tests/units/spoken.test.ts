import { describe, expect, it } from "vitest";
import { quantityString } from "../../src/units/format.ts";

const said = (
	value: number,
	dimension: "volume" | "pressure" | "length" | "count",
	unit: string | undefined,
	language: "en" | "es",
) =>
	quantityString(
		{ dimension, value, style: { spoken: true, significant: 2, ...(unit === undefined ? {} : { unit }) } },
		"field",
		language,
	).replaceAll("\u00a0", " ");

describe("a number as it is said", () => {
	it("has round millions in words, and whole unit words", () => {
		// 42 gallons to the barrel (common practice).
		expect(said(15_000_000 / 42, "volume", "gal", "en")).toBe("15 million gallons");
		expect(said(1_500_000 / 42, "volume", "gal", "es")).toBe("1.5 millones de galones");
		expect(said(1_000_000 / 42, "volume", "gal", "es")).toBe("1 millón de galones");
		expect(said(2_000_000, "count", undefined, "es")).toBe("2 millones");
		expect(said(1, "length", undefined, "en")).toBe("1 foot");
	});

	it("rounds nothing that was not rounded", () => {
		const style = { spoken: true } as const;
		expect(
			quantityString(
				{ dimension: "volume", value: 12_345_678 / 42, style: { ...style, unit: "gal" } },
				"field",
			),
		).toMatch(/^12,345,678/u);
		expect(quantityString({ dimension: "length", value: 1185, style }, "field")).toBe("1,185\u00a0feet");
	});
});
