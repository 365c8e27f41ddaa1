import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { toCanonical } from "../../src/units/convert.ts";
import { DIMENSIONS, type Dimension } from "../../src/units/dimensions.ts";
import { formatQuantity, quantityString } from "../../src/units/format.ts";
import { parseQuantity } from "../../src/units/parse.ts";
import { definitionOf } from "../../src/units/units-of.ts";

const everyUnit = (Object.keys(DIMENSIONS) as Dimension[]).flatMap((dimension) =>
	definitionOf(dimension).units.map(({ symbol }) => [dimension, symbol] as const),
);

/** Papers group thousands with commas; definitions may not. It is the only difference. */
const ungrouped = (printed: string): string => printed.replaceAll(",", "");

describe("what is printed can be read back", () => {
	it.each(everyUnit)("%s in %s", (dimension, unit) => {
		const { signed = false } = definitionOf(dimension);
		const written = fc.double({ min: signed ? -1e7 : 0, max: 1e7, noNaN: true });
		fc.assert(
			fc.property(written, fc.boolean(), (number, sign) => {
				const value = toCanonical(number, dimension, unit);
				if (value < 0 && !signed) return;
				const printed = quantityString({ dimension, value, style: { unit, decimals: 8, sign } }, "field");
				const read = parseQuantity(ungrouped(printed), dimension);
				expect(read).toMatchObject({ ok: true, unit });
				const half = Math.abs(toCanonical(1e-8, dimension, unit) - toCanonical(0, dimension, unit));
				expect(read.ok && Math.abs(read.value - value)).toBeLessThanOrEqual(half + 1e-13 * Math.abs(value));
			}),
		);
	});

	it("sixteenths, as pipe sizes", () => {
		fc.assert(
			fc.property(fc.integer({ min: 1, max: 16 * 40 }), (sixteenths) => {
				const value = sixteenths / 16;
				const printed = quantityString({ dimension: "diameter", value, style: { pipeSize: true } }, "field");
				expect(printed).not.toContain(".");
				expect(parseQuantity(printed, "diameter")).toEqual({ ok: true, value, unit: "in" });
			}),
		);
	});

	it("rounding moves a number by half of its last place at most", () => {
		fc.assert(
			fc.property(
				fc.double({ min: -1e6, max: 1e6, noNaN: true }),
				fc.integer({ min: 0, max: 6 }),
				(value, decimals) => {
					const { number } = formatQuantity(
						{ dimension: "offset", value, style: { unit: "ft", decimals } },
						"field",
					);
					const back = Number(number.replaceAll(",", "").replace("\u2212", "-"));
					expect(Math.abs(back - value)).toBeLessThanOrEqual(
						0.5 * 10 ** -decimals * (1 + 1e-9) + 1e-9 * Math.abs(value),
					);
					expect(Object.is(back, -0)).toBe(false);
				},
			),
		);
	});
});
