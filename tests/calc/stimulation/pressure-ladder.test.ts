import { describe, expect, test } from "vitest";
import { pressureLadder } from "../../../src/calc/stimulation/pressure-ladder.ts";
import type { Stimulation } from "../../../src/well/well.ts";
import { given } from "../given.ts";
import { planned, results } from "./a-stimulation.ts";

const psi = (value: number) => given("pressure", value);

interface Limits {
	readonly expected?: number;
	readonly kickouts?: readonly number[];
	readonly relief?: number;
	readonly maximum?: number;
	readonly test?: number;
	readonly line?: number;
}

const ORDERED = {
	expected: 7000,
	kickouts: [8000, 8100],
	relief: 8500,
	maximum: 9000,
	test: 9500,
	line: 10_000,
};

const broken = (changed: Limits) => {
	const { expected, kickouts, relief, maximum, test: tested, line } = { ...ORDERED, ...changed };
	const limits = {
		maximumTreatingPressure: psi(maximum),
		pumpKickouts: kickouts.map(psi),
		reliefValve: psi(relief),
		lineTest: psi(line),
	};
	const boundary = [{ id: "casing-test", element: "casing test", rating: psi(tested), allowed: psi(tested) }];
	return pressureLadder({ limits } as unknown as Stimulation, boundary, psi(expected))?.broken.map(
		({ id }) => id,
	);
};

describe("the ladder of pressures", () => {
	test("in order, nothing is broken", () => expect(broken({})).toEqual([]));

	test("expected, kickouts and relief must be below the next; the maximum and the elements may be equal", () => {
		expect(broken({ relief: 9000, maximum: 9000, test: 9000, line: 9000 })).toEqual([]);
		expect(broken({ kickouts: [8000, 8500] })).toEqual(["kickout-2-above-relief"]);
		expect(broken({ expected: 8000 })).toEqual(["expected-above-kickout-1"]);
	});

	test("every pair is named, not the first alone", () => {
		expect(broken({ test: 8050 })).toEqual([
			"kickout-2-above-casing-test",
			"relief-above-casing-test",
			"maximum-above-casing-test",
		]);
	});

	test("the line test is held against the maximum alone", () => {
		expect(broken({ line: 8999 })).toEqual(["maximum-above-line-test"]);
	});

	test("says by how much", () => {
		const over = results(
			planned({ limits: { maximumTreatingPressure: psi(9700), pumpKickouts: [] } }),
		).found?.ladder?.broken.find(({ id }) => id === "maximum-above-casing")?.over;
		// 12,000 psi · 0.8 is 9,600 psi.
		expect(over?.value).toBeCloseTo(100, 9);
	});

	test("is not there where there is nothing to compare", () => {
		expect(pressureLadder({} as unknown as Stimulation, [], psi(7000))).toBeUndefined();
	});
});
