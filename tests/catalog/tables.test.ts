import { describe, expect, test } from "vitest";
import type { Catalog } from "../../src/catalog/catalog.ts";
import { loadCatalog } from "../../src/catalog/load-catalog.ts";

const catalog = loadCatalog().value as Catalog;

/*
 * Drift by the rule of API 5CT: inside diameter less 1/8 in up to 8 5/8 in, 5/32 in from 9 5/8 to 13 3/8 in, and
 * 3/16 in above (mandrel table read; the rows themselves are memory, so the rule is an outside check on them).
 */
const driftAllowance = (od: number): number => (od <= 8.625 ? 1 / 8 : od <= 13.375 ? 5 / 32 : 3 / 16);

/*
 * Plain-end mass of API 5CT, 10.69 (D - t) t: the nominal weight is a label close above it. A digit exchanged in a wall
 * would show here.
 */
const plainEndMass = (D: number, t: number): number => 10.69 * (D - t) * t;

describe("every row of casing", () => {
	test.each(catalog.casing.map((row) => [row.id, row] as const))("%s", (_, row) => {
		const D = row.outsideDiameter.value;
		const t = row.wall.value;
		expect(Math.abs(row.drift.value - (D - 2 * t - driftAllowance(D)))).toBeLessThan(0.0011);
		const share = plainEndMass(D, t) / row.nominalWeight.value;
		expect(share).toBeGreaterThan(0.95);
		expect(share).toBeLessThan(1.003);
		expect(row.grades.every((grade) => catalog.findGrade(grade) !== undefined)).toBe(true);
		const half = (length: number) => length / 2 - 0.5;
		const threads = catalog.threadsFor(D);
		expect(threads?.round.short.L4.value).toBeCloseTo(half(row.couplingLength.short.value), 6);
		if (row.couplingLength.long !== undefined)
			expect(threads?.round.long?.L4.value).toBeCloseTo(half(row.couplingLength.long.value), 6);
	});
});

describe("threads", () => {
	const rows = catalog.threads.flatMap(({ usual, light }) =>
		light === undefined ? [usual] : [usual, light.row],
	);
	test.each(rows.map((row) => [row.id, row] as const))(
		"%s: L1 = L4 - M - A, as API 5B has it",
		(_, { round }) => {
			for (const { L1, L4 } of round.long === undefined ? [round.short] : [round.short, round.long])
				expect(Math.abs(L4.value - round.M.value - round.A.value - L1.value)).toBeLessThan(0.00061);
		},
	);
	test.each(rows.map((row) => [row.id, row] as const))("%s: E7 as API 5B has it", (_, row) => {
		const less = row.outsideDiameter >= 16 ? 0.062 : 0.046;
		expect(row.buttress.E7.value).toBeCloseTo(row.outsideDiameter - less, 6);
		expect(row.buttress.taper.value).toBeCloseTo(row.outsideDiameter >= 16 ? 1 / 12 : 1 / 16, 9);
	});
});

describe("lookups", () => {
	test("by size and weight, each value with its place in the table and its source", () => {
		// 9 5/8 in 53.50 lb/ft: wall 0.545, drift 8.379 (API 5CT Table E.1; row of a size and drift chart that was read).
		const row = catalog.findCasing(9.625, 53.5);
		expect(row?.wall).toEqual({
			dimension: "diameter",
			value: 0.545,
			from: {
				kind: "catalogue",
				table: "casing",
				row: "9 5/8 in 53.5 lb/ft",
				column: "wall",
				source: { key: "api-5ct", at: "Table E.1" },
			},
		});
		expect(row?.drift.value).toBe(8.379);
		expect(row?.alternateDrift?.value).toBe(8.5);
	});
	test("by metric labels, within their rounding", () => {
		// 244.48 mm, 79.62 kg/m: the metric label of 9 5/8 in 53.50 lb/ft (API 5CT Table C.1, memory).
		expect(catalog.findCasing(244.48 / 25.4, 79.62 / 1.48816394)?.id).toBe("9 5/8 in 53.5 lb/ft");
	});
	test("nothing between the listed sizes and weights", () => {
		expect(catalog.findCasing(9.625, 45)).toBeUndefined();
		expect(catalog.findCasing(9.5, 40)).toBeUndefined();
		expect(catalog.casingOfSize(9.625).length).toBe(11);
	});
	test("by wall", () => expect(catalog.findCasingByWall(5.5, 0.415)?.nominalWeight.value).toBe(23));
	test.each(["L80", "l-80", "L80 Type 1", "L80-13Cr"])("grade written %s", (written) => {
		expect(catalog.findGrade(written)?.minimumYield.value).toBe(80_000);
	});
	test("no grade of another name", () => expect(catalog.findGrade("X52")).toBeUndefined());
	test("cement class, however written", () => {
		expect(catalog.cementClass("class H")?.water.value).toBe(4.3);
		expect(catalog.cementClass("h")?.waterShare.value).toBeCloseTo(0.38, 12);
	});
	test("threads of a light weight", () => {
		expect(catalog.threadsFor(7)?.round.short.L4.value).toBe(3.125);
		expect(catalog.threadsFor(7, 17)?.round.short.L4.value).toBe(2.375);
		expect(catalog.threadsFor(13.375)?.round.long).toBeUndefined();
	});
	test("how a figure was known", () => {
		expect(catalog.howKnown("casing", "5 1/2 in 23 lb/ft", "coupling_diameter_round")).toBe("read");
		expect(catalog.howKnown("casing", "7 in 35 lb/ft", "coupling_diameter_round")).toMatch(
			/^memory;.*7\.875/,
		);
		expect(catalog.howKnown("casing", "16 in 84 lb/ft", "coupling_diameter_round")).toBe("memory");
		expect(catalog.howKnown("cement additives", "hematite", "specific_gravity")).toBe("read");
	});
});

/*
 * Neat slurry by absolute volumes (Lapeyrouse, cement chapter): cement 94 lb at 3.14, water at 8.33 lb/gal. The printed
 * density and yield (memory) must follow from the water (read).
 */
describe("neat cement", () => {
	test.each(catalog.cementClasses.map((row) => [row.id, row] as const))("class %s", (_, row) => {
		const gallons = row.sack.value / (8.33 * row.specificGravity.value) + row.water.value;
		const pounds = row.sack.value + 8.33 * row.water.value;
		expect(Math.abs(pounds / gallons - row.density.value)).toBeLessThan(0.06);
		expect(Math.abs(gallons / 7.4805 - row.yield.value)).toBeLessThan(0.006);
	});
});
