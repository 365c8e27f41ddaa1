import { describe, expect, test } from "vitest";
import { drillPipeLength, drillStringResults } from "../../../src/calc/casing/drill-string.ts";
import type { Well } from "../../../src/well/well.ts";
import { hole, well } from "../a-well.ts";
import { given } from "../given.ts";

const drillString = (more: object = {}) =>
	({
		pipe: {
			od: given("diameter", 4.5),
			weight: given("linear-weight", 16.5),
			joint: given("length", 30),
			...more,
		},
	}) as unknown as NonNullable<Well["drillString"]>;

const holes = [
	hole("surface", 12.25, 20, 1200, { mud: 8.8 }),
	hole("production", 8.5, 1200, 10_500, { mud: 10 }),
];

describe("the drill string", () => {
	/* Common practice, no source: a little over 350 joints of 30 ft and about 495 lb, nearly 87 short tons, for 10,500 ft. */
	test("to 10,500 ft is 350 joints and nearly 87 short tons", () => {
		const results = drillStringResults(well(holes, [], { drillString: drillString() }));
		expect(results?.joint_mass?.value).toBeCloseTo(495, 9);
		const [surface, production] = results?.holes ?? [];
		expect(surface?.joints?.value).toBe(40);
		expect(production?.joints?.value).toBe(350);
		expect((production?.pipe_mass.value ?? 0) / 2000).toBeGreaterThan(86.5);
		expect((production?.pipe_mass.value ?? 0) / 2000).toBeLessThan(87);
		expect(production?.mass).toBeUndefined();
	});

	test("stands on its collars, which weigh too; a hole shorter than they are has no pipe", () => {
		const collars = {
			od: given("diameter", 6.5),
			length: given("length", 600),
			weight: given("linear-weight", 92),
		};
		const results = drillStringResults(
			well([hole("short", 12.25, 20, 500, {}), ...holes], [], {
				drillString: { ...drillString(), collars } as unknown as NonNullable<Well["drillString"]>,
			}),
		);
		expect(results?.holes.map(({ pipe_length }) => pipe_length.value)).toEqual([0, 600, 9900]);
		expect(results?.holes.at(-1)?.mass?.value).toBeCloseTo(9900 * 16.5 + 600 * 92, 6);
		expect(
			drillPipeLength.of({ MD: given("measured-depth", 100), L_collars: given("length", 180) }).value,
		).toBe(0);
	});

	test("that is not given has no results", () => {
		expect(drillStringResults(well(holes, []))).toBeUndefined();
	});
});
