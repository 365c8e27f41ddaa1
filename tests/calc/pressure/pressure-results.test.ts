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
		// The rock is at 8.6 lb/gal from the ground, 20 ft below the datum; the kick is half a pound over that.
		const pore = (8.6 * 8980) / 9000;
		expect(below?.highest_pore).toMatchObject({ formation: "Rock", at: { tvd: { value: 9000 } } });
		expect(below?.highest_pore?.density.value).toBeCloseTo(pore, 9);
		const over = pore + 0.5 - 10;
		expect(below?.kick_over_mud?.value).toBeCloseTo(over, 9);
		const h = (0.052 * 2000 * 4 - over * 0.052 * 9000) / (0.52 - 0.1);
		expect(below?.kick_height?.value).toBeCloseTo(h, 7);
		const perFoot = ((Math.PI / 4) * 12) / 9702;
		const atBit = h * perFoot * (8.5 ** 2 - 6.5 ** 2);
		const atShoe = (h * perFoot * (8.5 ** 2 - 5 ** 2) * (14 * 2000)) / ((pore + 0.5) * 9000);
		expect(below?.kick_tolerance?.value).toBeCloseTo(Math.min(atBit, atShoe), 8);
		expect(gaps).toEqual([]);
	});

	test("lighter mud never holds the larger kick, and mud lighter than the rock has a margin below zero", () => {
		const fit = { kind: "FIT", equivalent: given("density", 14) } as const;
		const inMud = (mud: number) => {
			const of = drilled(fit);
			const lighter = hole("production", 8.5, 2010, 9000, { mud });
			return production({ ...of, holes: [holes[0], lighter] }).hole;
		};
		const [heavy, light] = [inMud(9.2), inMud(8.2)];
		expect(light?.kick_tolerance?.value).toBeLessThan(heavy?.kick_tolerance?.value ?? 0);
		expect(heavy?.mud_over_pore?.value).toBeCloseTo(9.2 - (8.6 * 8980) / 9000, 9);
		expect(light?.mud_over_pore?.value).toBeCloseTo(8.2 - (8.6 * 8980) / 9000, 9);
	});

	test("without a pore pressure the kick counts from the mud", () => {
		const of = drilled({ kind: "FIT", equivalent: given("density", 14) });
		const [rock] = of.geology.formations;
		const { porePressure: _, ...unknown } = rock ?? {};
		const { hole: below } = production({
			...of,
			geology: { ...of.geology, formations: [unknown as NonNullable<typeof rock>] },
		});
		expect(below).not.toHaveProperty("highest_pore");
		expect(below?.kick_height?.value).toBeCloseTo((0.052 * 2000 * 4 - 0.5 * 0.052 * 9000) / (0.52 - 0.1), 7);
	});

	test("a planned test to more than the rock bears gives way to the rock, one that was made does not", () => {
		const fit = { kind: "FIT", equivalent: given("density", 16) } as const;
		expect(production(drilled(fit)).hole).toMatchObject({ shoe_strength_basis: "fracture gradient" });
		const made = { ...fit, actual: { equivalent: given("density", 16) } };
		expect(production(drilled(made)).hole).toMatchObject({ shoe_strength: { value: 16 } });
	});

	test("weaker rock below the shoe limits the kick before the shoe does", () => {
		const of = drilled({ kind: "FIT", equivalent: given("density", 14) });
		const [rock] = of.geology.formations;
		if (rock === undefined) throw new Error("no rock");
		const weak = {
			...rock,
			id: "weak",
			name: "Weak sand",
			top: given("true-vertical-depth", 5000),
			fractureGradient: given("pressure-gradient", 0.56),
		};
		const { hole: below } = production({ ...of, geology: { ...of.geology, formations: [rock, weak] } });
		expect(below?.kick_limited_by).toBe("Weak sand");
		expect(below?.weakest_over_mud?.place).toBe("Weak sand");
		expect(below?.weakest_over_mud?.margin.value).toBeCloseTo((0.56 * 4980) / (0.052 * 5000) - 10, 9);
		expect(below?.kick_height?.value).toBeLessThan(production(of).hole?.kick_height?.value ?? 0);
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
