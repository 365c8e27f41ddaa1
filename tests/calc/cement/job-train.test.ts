import { describe, expect, test } from "vitest";
import type { JobContext } from "../../../src/calc/cement/cement-results.ts";
import { scheduleOf, trainOf } from "../../../src/calc/cement/job-train.ts";
import type { SlurryResults } from "../../../src/calc/results.ts";
import type { CementJob } from "../../../src/well/well.ts";
import { hole, job, slurry, string } from "../a-well.ts";
import { given } from "../given.ts";

const bbl = (volume: number) => given("volume", volume);
const bpm = (rate: number) => given("flow-rate", rate);
const ppg = (density: number) => given("density", density);

const only = hole("surface", 12.25, 20, 2000, { mud: 9 });
const slurries = [slurry("lead", 20, 1500, { density: 12.5 }), slurry("tail", 1500, 2000, { density: 15.6 })];
const made = [
	{ id: "lead", volume: bbl(100) },
	{ id: "tail", volume: bbl(40) },
] as unknown as readonly SlurryResults[];

const train = (more: Partial<CementJob>, volumes = made, displacement: number | "none" = 150) => {
	const of = job(slurries, more);
	const context = { job: of, string: string("surface", only, 22, [[9.625, 8.921, 2000]]) };
	return trainOf(context as unknown as JobContext, {
		slurries: volumes,
		displacement: displacement === "none" ? undefined : bbl(displacement),
	})?.map(({ id, V, Q }) => [id, V.value, Q.value]);
};
const pushed = { density: ppg(9), rate: bpm(6) };

describe("the train of a cement job", () => {
	test("is spacer, slurries and displacement, in order, each at its own rate or the displacement's", () => {
		const spacer = { volume: bbl(50), density: ppg(11) };
		expect(train({ spacer, displacement: pushed })).toEqual([
			["spacer", 50, 6],
			["lead", 100, 6],
			["tail", 40, 6],
			["displacement", 150, 6],
		]);
		const own = slurries.map((each) => (each.id === "tail" ? { ...each, rate: bpm(4) } : each));
		expect(train({ slurries: own, displacement: pushed })?.[1]).toEqual(["tail", 40, 4]);
		// Where the displacement has no rate the first slurry's that has one serves.
		expect(train({ slurries: own, displacement: { density: ppg(9) } })?.[0]).toEqual(["lead", 100, 4]);
		const both = own.map((each) => (each.id === "lead" ? { ...each, rate: bpm(5) } : each));
		const last = train({ slurries: both, displacement: { density: ppg(9) } })?.at(-1);
		expect(last).toEqual(["displacement", 150, 5]);
	});

	test("ends slowly by the volume that is kept for it, unless that is all of it", () => {
		const last = (volume: number) => ({ ...pushed, last: { volume: bbl(volume), rate: bpm(2) } });
		expect(train({ displacement: last(20) })?.slice(-2)).toEqual([
			["displacement", 130, 6],
			["last displacement", 20, 2],
		]);
		expect(train({ displacement: last(150) })?.slice(-1)).toEqual([["displacement", 150, 6]]);
		expect(train({ displacement: last(200) })?.slice(-1)).toEqual([["displacement", 150, 6]]);
	});

	test("leaves out a slurry of no volume, and is none without rate, displacement or the spacer's density", () => {
		const none = [{ id: "lead", volume: bbl(0) }, made[1]] as unknown as readonly SlurryResults[];
		expect(train({ displacement: pushed }, none)?.map(([id]) => id)).toEqual(["tail", "displacement"]);
		const little = [{ id: "lead", volume: bbl(0.5) }] as unknown as readonly SlurryResults[];
		expect(train({ displacement: pushed }, little)?.[0]).toEqual(["lead", 0.5, 6]);
		expect(train({ displacement: { density: ppg(9) } })).toBeUndefined();
		expect(train({})).toBeUndefined();
		expect(train({ displacement: pushed }, made, "none")).toBeUndefined();
		expect(train({ spacer: { volume: bbl(50) }, displacement: pushed })).toBeUndefined();
	});

	test("is timed fluid by fluid: volume over rate, added up", () => {
		const fluid = (id: string, V: number, Q: number) => ({
			id,
			V: bbl(V),
			Q: bpm(Q),
			ρ: ppg(10),
			PV: undefined,
			YP: undefined,
		});
		const pumped = scheduleOf([fluid("a", 60, 6), fluid("b", 20, 4)]);
		expect(pumped.map(({ time }) => time.value)).toEqual([10, 5]);
		expect(pumped.map(({ elapsed }) => elapsed.value)).toEqual([10, 15]);
		expect(pumped.map(({ cumulative }) => cumulative.value)).toEqual([60, 80]);
	});
});
