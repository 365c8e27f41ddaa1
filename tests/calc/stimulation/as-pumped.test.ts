import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { composePapers } from "../../../src/pipeline.ts";
import { findingsOf } from "../../starters.ts";
import { given } from "../given.ts";
import { planned, results, stage } from "./a-stimulation.ts";

const recorded = (clean: number, mass: number) => ({
	cleanVolume: given("volume", clean),
	proppantMass: given("mass", mass),
	averageRate: given("flow-rate", 50),
	maximumPressure: given("pressure", 7000 + clean),
});

describe("a treatment with records", () => {
	const whole = planned({
		stages: [
			stage(1, 8900, { actual: recorded(2400, 100_000) }),
			stage(2, 8700, { actual: recorded(1800, 81_900) }),
		],
	});
	const { found } = results(whole);

	test("is the sum of its records, and the plan is kept beside it", () => {
		expect(found?.clean_volume.value).toBe(4200);
		expect(found?.proppant_mass.value).toBe(181_900);
		expect(found?.water_volume.value).toBe(4200 - 40);
		const plan = results(planned()).found;
		expect(found?.as_pumped?.planned.clean_volume.value).toBe(plan?.clean_volume.value);
		expect(found?.as_pumped?.planned.proppant_mass.value).toBe(218_400);
		expect(found?.as_pumped?.complete).toBe(true);
		expect(found?.as_pumped?.stages_recorded.value).toBe(2);
		expect(found?.as_pumped?.highest_pressure?.value).toBe(9400);
		expect(found?.as_pumped?.highest_pressure_stage).toBe(1);
	});

	test("averages, disclosure and returned water rest on it", () => {
		expect(found?.averages?.proppant_per_stage.value).toBe(90_950);
		expect(found?.disclosure?.proppants[0]?.mass.value).toBe(181_900);
		expect(found?.disclosure?.base_fluid.mass.value).toBeCloseTo(42 * 4160 * 8.4, 6);
	});

	test("each stage as a part of its plan, less its plan", () => {
		const two = found?.stages[1]?.as_pumped;
		expect(two?.proppant_of_plan?.value).toBeCloseTo(0.75, 12);
		expect(two?.proppant_difference?.value).toBe(81_900 - 109_200);
		expect(two?.clean_difference?.value).toBeCloseTo(1800 - (found?.stages[1]?.clean_volume.value ?? 0), 9);
	});

	test("slurry takes the room of its proppant, and time its recorded rate", () => {
		const one = found?.stages[0]?.as_pumped;
		expect(one?.slurry_volume?.value).toBeCloseTo(2400 + 100_000 / (42 * 8.33 * 2.65), 9);
		expect(one?.pumping_time?.value).toBeCloseTo((one?.slurry_volume?.value ?? 0) / 50, 9);
	});

	test("a stage pumped as planned differs in nothing", () => {
		const plan = results(planned()).found?.stages[0];
		const record = { cleanVolume: plan?.clean_volume, proppantMass: plan?.proppant_mass };
		const same = results(planned({ stages: [stage(1, 8900, { actual: record as never })] })).found;
		expect(same?.as_pumped?.clean_difference.value).toBe(0);
		expect(same?.as_pumped?.proppant_difference.value).toBe(0);
		expect(same?.as_pumped?.clean_of_plan?.value).toBe(1);
		expect(same?.slurry_volume.value).toBeCloseTo(plan?.slurry_volume.value ?? 0, 9);
	});

	test("a stage without a record is as planned, and it is said that one is missing", () => {
		const half = results(
			planned({ stages: [stage(1, 8900, { actual: recorded(2400, 100_000) }), stage(2, 8700)] }),
		).found;
		expect(half?.proppant_mass.value).toBe(100_000 + 109_200);
		expect(half?.as_pumped?.complete).toBe(false);
	});

	test("a record that leaves a quantity out leaves the plan's, and nothing is called recorded", () => {
		const one = results(
			planned({ stages: [stage(1, 8900, { actual: { averageRate: given("flow-rate", 50) } })] }),
		).found;
		expect(one?.stages[0]?.as_pumped?.clean_volume).toBeUndefined();
		expect(one?.as_pumped?.complete).toBe(false);
		expect(one?.proppant_mass.value).toBe(109_200);
	});
});

describe("the treated starter", () => {
	const findings = findingsOf("horizontal-as-built");
	const rows = readFileSync(
		new URL("../../../seeds/starters/horizontal-as-built-stages.csv", import.meta.url),
		"utf8",
	)
		.trim()
		.split("\n")
		.slice(1)
		.map((line) => line.split(",").map(Number));
	const sum = (column: number) => rows.reduce((all, row) => all + (row[column] ?? Number.NaN), 0);

	test("totals are those of its file of records", () => {
		const { stimulation, logistics } = findings.results;
		expect(stimulation?.clean_volume.value).toBe(sum(7));
		expect(stimulation?.proppant_mass.value).toBe(sum(8));
		expect(stimulation?.disclosure?.proppants.reduce((all, { mass }) => all + mass.value, 0)).toBeCloseTo(
			sum(8),
			4,
		);
		expect(logistics?.proppant_loads?.value).toBe(Math.ceil(sum(8) / 48_000));
	});

	test("its paper has plan and record side by side, stage by stage and in total", () => {
		// The totals stand in the attachment, each stage in its appendices.
		const { documents } = composePapers(
			findings,
			(["regulator", "regulator-appendix"] as const).map((paper) => ({
				paper,
				language: "en",
				units: "field",
			})),
		);
		const tables = documents.flatMap(({ paper }) =>
			paper.sections.flatMap(({ blocks }) => blocks.flatMap((b) => (b.kind === "table" ? [b] : []))),
		);
		const volumes = tables.find(({ caption }) => caption.startsWith("Stages as pumped: volume"));
		const short = volumes?.rows[16];
		expect(short?.cells["proppant_of_plan"]).toMatchObject({ value: expect.closeTo(0.749, 3) });
		expect(volumes?.rows.at(-1)?.cells["clean_pumped"]).toMatchObject({ value: sum(7) });
		const totals = tables.find(({ caption }) => caption === "Treatment: plan and record");
		expect(totals?.rows[0]?.cells["difference"]).toMatchObject({
			value: expect.closeTo(sum(7) - 252_245, 0),
		});
	});
});
