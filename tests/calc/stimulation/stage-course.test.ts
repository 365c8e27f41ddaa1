import { describe, expect, test } from "vitest";
import { given } from "../given.ts";
import { planned, results, sand, stage, step } from "./a-stimulation.ts";

const rows = (steps: ReturnType<typeof step>[], more = {}) => {
	const { found } = results(planned({ stages: [stage(1, 8900, { steps })], ...more }));
	return { found, course: found?.hardest_stage?.course.rows ?? [], pressure: found?.stages[0]?.pressure };
};

describe("the surface pressure through a stage", () => {
	test("of clean fluid at one rate stands still, and is that of the stage with fresh perforations", () => {
		const { course, pressure } = rows([step("pad", 900), step("flush", "flush")]);
		expect(course.length).toBeGreaterThan(8);
		for (const { surface, pipe_friction, hydrostatic } of course) {
			expect(surface).toBeCloseTo(pressure?.treating_fresh.value ?? Number.NaN, 6);
			expect(pipe_friction).toBeCloseTo(pressure?.pipe_friction.value ?? Number.NaN, 6);
			expect(hydrostatic).toBeCloseTo(pressure?.hydrostatic.value ?? Number.NaN, 6);
		}
	});

	test("slurry makes the column heavier until it fills the casing, and the flush takes it back", () => {
		const { course, pressure } = rows([step("pad", 400), step("sand", 900, sand(2)), step("flush", "flush")]);
		const column = (n: number) => course.filter((row) => row.step === n).map((row) => row.hydrostatic);
		expect([...column(2)].sort((a, b) => a - b)).toEqual(column(2));
		expect([...column(3)].sort((a, b) => b - a)).toEqual(column(3));
		expect(column(3).at(-1)).toBeCloseTo(pressure?.hydrostatic.value ?? Number.NaN, 6);
		// (8.4 + 2) / (1 + 2/(8.33 · 2.65)) = 9.536 lb/gal over 8,788 ft, 8,810 ft less the casing's top at 22 ft.
		expect(Math.max(...column(2))).toBeCloseTo(0.052 * (10.4 / (1 + 2 / (8.33 * 2.65))) * 8788, 6);
	});

	test("perforations wear from fresh to worn as the proppant passes, no sooner and no further", () => {
		const { found, course, pressure } = rows([
			step("pad", 400),
			step("sand", 900, sand(2)),
			step("flush", "flush"),
		]);
		expect(course[0]?.perforation_friction).toBeCloseTo(pressure?.perforation_friction_fresh.value ?? 0, 8);
		// When the flush is in, all the sand has passed and clean fluid stands at worn holes.
		const worn = pressure?.perforation_friction_worn.value ?? Number.NaN;
		expect(course.at(-1)?.perforation_friction).toBeCloseTo(worn, 6);
		// Before the first sand arrives they are fresh.
		const arrival = 400 + (found?.stages[0]?.flush_volume?.value ?? Number.NaN);
		for (const row of course.filter(({ slurry }) => slurry < arrival - 1e-6))
			expect(row.perforation_friction).toBeCloseTo(pressure?.perforation_friction_fresh.value ?? 0, 8);
	});

	test("rates sum to volumes: the time is the stage's own", () => {
		const { found, course } = rows([
			step("acid", 20, { fluid: "acid", rate: given("flow-rate", 10) }),
			step("sand", 900, sand(1)),
			step("flush", "flush"),
		]);
		expect(course.at(-1)?.time).toBeCloseTo(found?.stages[0]?.pumping_time.value ?? Number.NaN, 8);
		expect(course.at(-1)?.slurry).toBeCloseTo(found?.stages[0]?.slurry_volume.value ?? Number.NaN, 8);
	});

	test("the greatest of it is what is expected, and the power goes by it", () => {
		const { found, course } = rows([step("pad", 400), step("sand", 900, sand(2)), step("flush", "flush")]);
		const greatest = Math.max(...course.map(({ surface }) => surface));
		expect(found?.expected_treating_pressure?.value).toBe(greatest);
		expect(found?.expected_horsepower?.value).toBeCloseTo((greatest * 60) / 40.8, 8);
	});

	test("a screen-out leaves the casing full of the richest slurry", () => {
		const { found } = rows(
			[step("pad", 400), step("sand 1", 500, sand(1)), step("sand 2", 900, sand(2)), step("flush", "flush")],
			{
				limits: { pumpKickouts: [given("pressure", 8000), given("pressure", 7900)] },
			},
		);
		const flush = found?.stages[0]?.flush_volume?.value ?? Number.NaN;
		const out = found?.hardest_stage?.screen_out;
		expect(out?.proppant_in_pipe.value).toBeCloseTo((42 * flush * 2) / (1 + 2 / (8.33 * 2.65)), 6);
		expect(out?.room_to_first_kickout?.value).toBeCloseTo(
			7900 - (found?.expected_treating_pressure?.value ?? 0),
			8,
		);
	});

	test("pumps: power over what each may give, rounded up, and the spare ones", () => {
		const { found } = rows([step("pad", 400), step("flush", "flush")], {
			pumps: {
				horsepowerEach: given("hydraulic-power", 2000),
				load: given("share", 0.8),
				spare: given("count", 2),
			},
		});
		expect(found?.pumps?.value).toBe(Math.ceil((found?.expected_horsepower?.value ?? 0) / 1600) + 2);
	});
});
