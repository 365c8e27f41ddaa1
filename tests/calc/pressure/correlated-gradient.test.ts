import { describe, expect, test } from "vitest";
import { correlate } from "../../../src/calc/pressure/correlated-gradient.ts";
import type { Formation } from "../../../src/well/well.ts";
import { toldPlainly } from "../../told.ts";
import { given } from "../given.ts";

const S = given("pressure-gradient", 1);
const AT = ["geology", "formations", 0];

const rock = (
	fractureFrom: NonNullable<Formation["fractureFrom"]>,
	more: Partial<Formation> = {},
): Formation => ({
	id: "a",
	name: "Rushford Sand",
	top: given("true-vertical-depth", 20),
	lithology: "sandstone",
	confining: false,
	target: false,
	porePressure: given("density", 9),
	fractureFrom,
	...more,
});

const whyNot = (of: Formation, overburden: typeof S | undefined = S) => {
	const { value, diagnostics } = correlate(of, overburden, AT);
	expect(value).toBeUndefined();
	expect(diagnostics.map(({ code, at }) => [code, at.path])).toEqual([
		["calc/fracture-correlation", [...AT, "fracture_from"]],
	]);
	return toldPlainly(diagnostics[0]?.what);
};

describe("a fracture gradient by correlation", () => {
	test("is none, and nothing is told, where none is asked for", () => {
		const { fractureFrom: _, ...bare } = rock({ method: "Eaton" });
		expect(correlate(bare, S, AT)).toEqual({ diagnostics: [] });
	});

	test("needs no overburden by Hubbert and Willis", () => {
		for (const method of ["Hubbert-Willis lower", "Hubbert-Willis upper"] as const) {
			const { value, diagnostics } = correlate(rock({ method }), undefined, AT);
			expect(diagnostics).toEqual([]);
			expect(value?.value).toBeGreaterThan(9 * 0.052);
		}
	});

	test("names every input that its method lacks, and no other", () => {
		const { porePressure: _, ...dry } = rock({ method: "Hubbert-Willis lower" });
		expect(whyNot(dry, undefined)).toBe(
			"the Hubbert-Willis lower gradient of Rushford Sand lacks pore_pressure",
		);
		expect(whyNot(rock({ method: "Eaton" }))).toBe(
			"the Eaton gradient of Rushford Sand lacks poissons_ratio",
		);
		const eaton = rock({ method: "Eaton", poissonsRatio: given("ratio", 0.25) });
		expect(toldPlainly(correlate(eaton, undefined, AT).diagnostics[0]?.what)).toMatch(/lacks overburden$/u);
		const matthews = rock({ method: "Matthews-Kelly" });
		expect(toldPlainly(correlate(matthews, undefined, AT).diagnostics[0]?.what)).toMatch(
			/lacks overburden and matrix_stress_coefficient$/u,
		);
	});

	test("outside the method's range is refused with that reason", () => {
		const eaton = rock(
			{ method: "Eaton", poissonsRatio: given("ratio", 0.25) },
			{ porePressure: given("density", 25) },
		);
		expect(whyNot(eaton)).toMatch(/are outside the range of the method$/u);
	});
});
