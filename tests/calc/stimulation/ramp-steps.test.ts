import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { given } from "../given.ts";
import { planned, results, stage, step } from "./a-stimulation.ts";

const ramped = (volume: number, mass: number, efficiency: number, steps: number) =>
	results(
		planned({
			stages: [
				stage(1, 8900, {
					steps: [step("acid", 20, { fluid: "acid" }), step("flush", "flush")],
					ramp: {
						slurryVolume: given("volume", volume),
						proppant: "sand",
						mass: given("mass", mass),
						efficiency: given("share", efficiency),
						steps: given("count", steps),
					},
				}),
			],
		}),
	).found?.stages[0];

describe("a ramp asked for", () => {
	test("goes in before the flush, pad first, richer step by step", () => {
		const found = ramped(3000, 120_000, 0.4, 4);
		expect(found?.steps.map(({ name }) => name)).toEqual([
			"acid",
			"pad",
			"ramp 1",
			"ramp 2",
			"ramp 3",
			"ramp 4",
			"flush",
		]);
		const c = found?.steps.flatMap(({ concentration }) => concentration?.value ?? []) ?? [];
		expect([...c].sort((a, b) => a - b)).toEqual(c);
		// (1 − 0.4)/(1 + 0.4) of 3,000 bbl.
		expect(found?.steps[1]?.clean_volume.value).toBeCloseTo((0.6 / 1.4) * 3000, 9);
	});

	test("places the mass and the slurry asked for, however it is cut", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 200, max: 8000, noNaN: true }),
				fc.double({ min: 0.1, max: 3, noNaN: true }),
				fc.double({ min: 0.1, max: 0.95, noNaN: true }),
				fc.integer({ min: 1, max: 12 }),
				(volume, perGallon, efficiency, steps) => {
					const mass = perGallon * 42 * volume * efficiency;
					const found = ramped(volume, mass, efficiency, steps);
					expect(Math.abs((found?.proppant_mass.value ?? 0) / mass - 1)).toBeLessThan(1e-9);
					const slurry = found?.steps.slice(1, -1).reduce((sum, s) => sum + s.slurry_volume.value, 0) ?? 0;
					expect(Math.abs(slurry / volume - 1)).toBeLessThan(1e-9);
				},
			),
			{ numRuns: 100 },
		);
	});
});
