import { describe, expect, test } from "vitest";
import { openGaps } from "../../../src/calc/gaps.ts";
import { pressureResults } from "../../../src/calc/pressure/index.ts";
import type { ShoeTest, Well } from "../../../src/well/well.ts";
import { hole, straightDown, string, well } from "../a-well.ts";
import { given } from "../given.ts";

const holes = [
	hole("surface", 12.25, 20, 2010, { mud: 9 }),
	hole("production", 8.5, 2010, 9000, { mud: 10 }),
] as const;

const drilled = (shoeTest: ShoeTest | undefined, more: Partial<Well> = {}): Well =>
	well(
		holes,
		[string("surface", holes[0], 22, [[9.625, 8.835, 2000]], shoeTest === undefined ? {} : { shoeTest })],
		{
			drillString: {
				pipe: { od: given("diameter", 5), weight: given("linear-weight", 19.5) },
				collars: { od: given("diameter", 6.5), length: given("length", 300) },
			},
			wellControl: {
				kick: { intensity: given("density", 0.5), gas_gradient: given("pressure-gradient", 0.1) },
			},
			geology: {
				formations: [
					{
						id: "rock",
						name: "Rock",
						top: given("true-vertical-depth", 20),
						lithology: "shale",
						porePressure: given("density", 8.6),
						fractureGradient: given("pressure-gradient", 0.78),
						confining: false,
						target: false,
					},
				],
				water: [],
			},
			...more,
		} as Partial<Well>,
	);

const production = (of: Well) => {
	const gaps = openGaps();
	const { holes: each, window } = pressureResults(of, straightDown, gaps);
	return { hole: each.find((h) => h.id === "production"), window, gaps: gaps.undetermined };
};

describe("the hole below a shoe", () => {
	test("has the strength of the test made, before that of the test planned, before that of the rock", () => {
		const fit = { kind: "FIT", equivalent: given("density", 14) } as const;
		const made = { ...fit, actual: { equivalent: given("density", 14.6) } };
		expect(production(drilled(made)).hole).toMatchObject({
			shoe: "surface",
			shoe_strength: { value: 14.6 },
			shoe_strength_basis: "tested",
		});
		expect(production(drilled(fit)).hole).toMatchObject({
			shoe_strength: { value: 14 },
			shoe_strength_basis: "planned test",
		});
		const untested = production(drilled(undefined)).hole;
		expect(untested?.shoe_strength_basis).toBe("fracture gradient");
		expect(untested?.shoe_strength?.value).toBeCloseTo((0.78 * 1980) / (0.052 * 2000), 9);
	});

	test("has its annulus pressure and its kick tolerance from that strength and its own mud", () => {
		const { hole: below, gaps } = production(drilled({ kind: "FIT", equivalent: given("density", 14) }));
		expect(below?.maximum_annulus_pressure?.value).toBeCloseTo(0.052 * 2000 * 4, 9);
		const h = (0.052 * 2000 * 4 - 0.5 * 0.052 * 9000) / (0.52 - 0.1);
		expect(below?.kick_height?.value).toBeCloseTo(h, 7);
		const perFoot = ((Math.PI / 4) * 12) / 9702;
		const atBit = h * perFoot * (8.5 ** 2 - 6.5 ** 2);
		const atShoe = (h * perFoot * (8.5 ** 2 - 5 ** 2) * (14 * 2000)) / (10.5 * 9000);
		expect(below?.kick_tolerance?.value).toBeCloseTo(Math.min(atBit, atShoe), 8);
		expect(gaps).toEqual([]);
	});

	test("the hole drilled first has no shoe above it", () => {
		const gaps = openGaps();
		const [surface] = pressureResults(drilled(undefined), straightDown, gaps).holes;
		expect(surface).not.toHaveProperty("shoe");
		expect(surface?.mud_hydrostatic_at_bottom?.value).toBeCloseTo(0.052 * 9 * 2010, 9);
	});

	test("the window goes down to the deepest hole where the last rock has no base", () => {
		expect(production(drilled(undefined)).window.rows.map((r) => r.tvd)).toEqual([20, 9000]);
	});
});
