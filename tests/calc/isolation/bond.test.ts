import { describe, expect, test } from "vitest";
import { capacityWithExcess, capacityWithTwiceExcess } from "../../../src/calc/cement/record.ts";
import {
	bondIndex,
	lengthWithin,
	longestWithin,
	pressureRebuilt,
	zonesUnsealed,
} from "../../../src/calc/isolation/bond.ts";
import { given } from "../given.ts";

const md = (value: number) => given("measured-depth", value);
const mv = (value: number) => given("sonic-amplitude", value);
const stretches = (...list: readonly (readonly [number, number])[]) => ({
	MD_top: list.map(([top]) => md(top)),
	MD_bottom: list.map(([, bottom]) => md(bottom)),
});

describe("a bond log", () => {
	test("index falls as amplitude grows, and is not read outside its two ends", () => {
		const at = (A: number) => bondIndex.of({ A: mv(A), A_0: mv(60), A_100: mv(2) }).value;
		expect(at(2)).toBe(1);
		expect(at(60)).toBe(0);
		expect(at(1)).toBe(1);
		expect(at(90)).toBe(0);
		expect(at(Math.sqrt(120))).toBeCloseTo(0.5, 12);
		expect(bondIndex.of({ A: mv(4), A_0: mv(2), A_100: mv(60) }).value).toBeNaN();
	});

	test("lengths are cut at the two depths, and stretches that meet are one", () => {
		const within = {
			top: md(100),
			bottom: md(500),
			...stretches([0, 150], [150, 200], [300, 450], [480, 900]),
		};
		expect(lengthWithin.of(within).value).toBe(50 + 50 + 150 + 20);
		expect(longestWithin.of(within).value).toBe(150);
		expect(longestWithin.of({ top: md(0), bottom: md(500), ...stretches([0, 150], [150, 200]) }).value).toBe(
			200,
		);
		expect(longestWithin.of({ top: md(0), bottom: md(500), ...stretches() }).value).toBe(0);
	});
});

test("pressure that was bled and stayed away has not come back", () => {
	const psi = (value: number) => given("pressure", value);
	expect(pressureRebuilt.of({ p_rebuilt: psi(0), p_bled: psi(0) }).value).toBe(0);
	expect(pressureRebuilt.of({ p_rebuilt: psi(240), p_bled: psi(40) }).value).toBe(200);
	expect(pressureRebuilt.of({ p_rebuilt: psi(10), p_bled: psi(40) }).value).toBe(0);
});

test("a zone without one verified sheath is unsealed", () => {
	const n = (value: number) => given("count", value);
	expect(zonesUnsealed.of({ n_i: [n(0), n(1), n(2), n(0)] }).value).toBe(2);
});

test("twice no excess is no excess", () => {
	const [C, none, some] = [given("capacity", 0.05), given("share", 0), given("share", 0.3)];
	expect(capacityWithTwiceExcess.of({ C, e: none }).value).toBe(capacityWithExcess.of({ C, e: none }).value);
	expect(capacityWithTwiceExcess.of({ C, e: some }).value).toBeCloseTo(0.05 * 1.6, 12);
});
