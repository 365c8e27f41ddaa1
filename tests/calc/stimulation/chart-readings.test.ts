import { describe, expect, test } from "vitest";
import { chartVolume, greatestApart, volumeApart } from "../../../src/calc/stimulation/chart-readings.ts";
import { thinned } from "../../../src/drawing/charts/thinned.ts";
import { starterText, understandText } from "../../starters.ts";
import { given } from "../given.ts";

const minutes = (...list: readonly number[]) => list.map((t) => given("duration", t));
const rates = (...list: readonly number[]) => list.map((Q) => given("flow-rate", Q));

describe("a treatment chart", () => {
	test("a steady rate comes to rate times time, a straight rise to half of it", () => {
		expect(chartVolume.of({ t_i: minutes(0, 1, 10), Q_i: rates(60, 60, 60) }).value).toBeCloseTo(600, 9);
		expect(chartVolume.of({ t_i: minutes(0, 10), Q_i: rates(0, 60) }).value).toBeCloseTo(300, 9);
		expect(chartVolume.of({ t_i: minutes(0, 10), Q_i: rates(60) }).value).toBeNaN();
	});

	test("one volume is not apart from itself, twice it is all of it apart", () => {
		const V = given("volume", 500);
		expect(volumeApart.of({ V, V_r: V }).value).toBe(0);
		expect(volumeApart.of({ V: given("volume", 1000), V_r: V }).value).toBe(1);
		const s_i = [0.01, 0.04, 0.02].map((s) => given("share", s));
		expect(greatestApart.of({ s_i }).value).toBe(0.04);
		expect(greatestApart.of({ s_i: [] }).value).toBeNaN();
	});

	test("ten thousand readings a second apart are thinned, and each spike of one second stays", () => {
		const spikes = new Map([
			[1234, 9400],
			[6007, 12],
			[9999, 9100],
		]);
		const readings = Array.from(
			{ length: 10_000 },
			(_, i) => [i / 60, spikes.get(i) ?? 6000 + 50 * Math.sin(i / 90)] as const,
		);
		const few = thinned(readings, 300);
		expect(few.length).toBeLessThanOrEqual(1200);
		for (const [i, value] of spikes) expect(few).toContainEqual([i / 60, value]);
		expect(few[0]).toEqual(readings[0]);
		expect(few.map(([t]) => t)).toEqual(few.map(([t]) => t).toSorted((a, b) => a - b));
		expect(thinned(readings.slice(0, 5), 300)).toHaveLength(5);
	});

	test("the chart of the stage that ended early agrees with its record", () => {
		const { findings } = understandText(starterText("horizontal-as-built"));
		const stage = findings?.results.stimulation?.stages.find(({ number }) => number === 17);
		expect(stage?.chart?.highest_pressure.value).toBe(8540);
		expect(stage?.chart?.apart?.value).toBeLessThan(0.02);
		const row = findings?.judgement.findings.find(({ cite: { rule } }) => rule === "practice.records.chart");
		expect(row?.verdict).toBe("met");
	});
});
