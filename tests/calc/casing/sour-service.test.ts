import { describe, expect, test } from "vitest";
import { greatestGasSeen, sulfidePartialPressure } from "../../../src/calc/casing/sour-service.ts";
import { loadCatalog } from "../../../src/catalog/load-catalog.ts";
import { resultsOfWell } from "../../wells.ts";
import { given } from "../given.ts";

const STATED = "hydrogen_sulfide: { expected: true, fraction: 100 ppm, stated_by: (fictional) }";

const sectionsOf = (...edits: readonly (readonly [string, string])[]) =>
	(resultsOfWell("weak-string", ...edits).casing["production"]?.sections ?? []).map(
		({ sour_service }) => sour_service,
	);
const findings = (...edits: readonly (readonly [string, string])[]) =>
	sectionsOf(...edits).map(({ finding, missing }) =>
		missing === undefined ? finding : `${finding}: ${missing}`,
	);

describe("partial pressure of hydrogen sulfide", () => {
	test("is its share of the absolute pressure", () => {
		const of = (ppm: number, psi: number) =>
			sulfidePartialPressure.of({ y: given("gas-fraction", ppm), P: given("pressure", psi) }).value;
		expect(of(1e6, 985.3)).toBeCloseTo(1000, 9);
		expect(of(100, 4985.3)).toBeCloseTo(0.5, 9);
		expect(of(0, 5000)).toBe(0);
	});

	test("rests on the greatest pressure of the rock open to the string", () => {
		expect(greatestGasSeen.of({ P: [given("pressure", 1), given("pressure", 3)] }).value).toBe(3);
		expect(greatestGasSeen.of({ P: [] }).value).toBeNaN();
		// 10.0 lb/gal at the bottom of the hole, 9,990 ft below ground.
		const [upper] = sectionsOf();
		expect(upper?.partial_pressure?.value).toBeCloseTo(1e-4 * (0.52 * 9990 + 14.7), 6);
		expect(upper?.threshold?.value).toBe(0.05);
	});
});

describe("steel in sour service, by stated data", () => {
	test("L80 is taken at any temperature, P110 only where it is hot enough: here it is not", () => {
		expect(findings()).toEqual(["within the limits", "outside the limits", "within the limits"]);
		const [, hot] = sectionsOf();
		expect(hot?.lowest_temperature?.value).toBe(175);
		expect(hot?.coldest?.value).toBeCloseTo(70 + 1.5 * 64.8, 6);
	});

	test("P110 is taken where the section's top is warmer than the limit", () => {
		expect(findings(["gradient: 1.5 degF/100 ft", "gradient: 1.7 degF/100 ft"])[1]).toBe("within the limits");
	});

	test("a little of it, or none, is not sour service", () => {
		expect(findings([STATED, STATED.replace("100 ppm", "5 ppm")])).toEqual([
			"not sour",
			"not sour",
			"not sour",
		]);
		expect(findings([STATED, "hydrogen_sulfide: { expected: false }"])).toEqual([
			"not sour",
			"not sour",
			"not sour",
		]);
	});

	test("what is missing is named, and nothing is guessed", () => {
		const all = (missing: string) => Array.from({ length: 3 }, () => `cannot tell: ${missing}`);
		expect(findings([`safety:\n  ${STATED}\n`, ""])).toEqual(all("hydrogen sulfide"));
		expect(findings([STATED, "hydrogen_sulfide: { expected: true }"])).toEqual(all("fraction"));
		expect(findings(["  temperature: { surface: 70 degF, gradient: 1.5 degF/100 ft }\n", ""])).toEqual([
			"within the limits",
			"cannot tell: temperature",
			"within the limits",
		]);
		const grade = (name: string) =>
			[
				"grade: L80, connection: BTC, condition: new, joint: 40 ft, from: surface, to: 6500 ft",
				`grade: ${name}, connection: BTC, condition: new, joint: 40 ft, from: surface, to: 6500 ft`,
			] as const;
		expect(findings(grade("C110"))[0]).toBe("cannot tell: grade");
		expect(findings(grade("L80-13Cr"))[0]).toBe("cannot tell: grade");
		expect(findings(grade("L80 type 1"))[0]).toBe("within the limits");
	});

	test("a maker's own connection is as its maker states, and else cannot be told", () => {
		const own = (more: string) =>
			findings([
				"grade: L80, connection: BTC, condition: new, joint: 40 ft, from: surface, to: 6500 ft",
				`grade: L80, connection: Wedgelock (fictional), condition: new, joint: 40 ft, from: surface, to: 6500 ft, ratings: { internal_yield: 7240 psi, tension: 604000 lbf${more}, source: data sheet of 2025-01 (fictional) }`,
			])[0];
		expect(own("")).toBe("cannot tell: connection");
		expect(own(", sour_service: true")).toBe("stated fit");
		expect(own(", sour_service: false")).toBe("stated unfit");
	});
});

describe("the shipped rows", () => {
	const { value: catalog } = loadCatalog();

	test("name grades of the catalogue, stronger steel only where it is hotter", () => {
		const rows = catalog?.sourService.grades ?? [];
		expect(rows.length).toBeGreaterThan(10);
		const strengths = rows.map((row) => ({
			limit: row.lowestTemperature?.value ?? 0,
			yield: catalog?.findGrade(row.id)?.minimumYield.value ?? Number.NaN,
		}));
		for (const { yield: strength } of strengths) expect(strength).toBeGreaterThan(0);
		const at = (grade: string) => catalog?.findSourService(grade)?.lowestTemperature?.value ?? 0;
		expect([at("J55"), at("n80q"), at("N-80"), at("P110"), at("Q125 Type 1")]).toEqual([
			0, 150, 175, 175, 225,
		]);
	});
});
