import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pipeCapacity } from "../../../src/calc/cement/capacity.ts";
import {
	filledTo,
	floatCollar,
	fluidWeight,
	netHoldDown,
	standingColumn,
	standingPressureAt,
} from "../../../src/calc/cement/column.ts";
import { given } from "../given.ts";

const tvd = (value: number) => given("true-vertical-depth", value);
const ρ = (value: number) => given("density", value);

describe("a column of fluids", () => {
	const column = standingColumn.of({
		D_top: [tvd(0), tvd(5000), tvd(7000)],
		D_bottom: [tvd(5000), tvd(7000), tvd(8000)],
		ρ_i: [ρ(10), ρ(13.8), ρ(15.8)],
	});

	test("adds up at every change, as the handbook's example does", () => {
		expect(column.rows.map((r) => Math.round(r.standing))).toEqual([0, 2600, 4035, 4857]);
	});

	test("is a straight line between changes, and nothing outside", () => {
		expect(standingPressureAt.of({ column, D: tvd(2500) }).value).toBeCloseTo(1300, 9);
		expect(standingPressureAt.of({ column, D: tvd(5000) }).value).toBeCloseTo(2600, 9);
		expect(standingPressureAt.of({ column, D: tvd(6000) }).value).toBeCloseTo(2600 + 717.6, 9);
		expect(standingPressureAt.of({ column, D: tvd(8001) }).value).toBeNaN();
	});

	test("of no fluid at all is empty", () => {
		expect(standingColumn.of({ D_top: [], D_bottom: [], ρ_i: [] }).rows).toEqual([]);
	});
});

describe("a volume in the annulus", () => {
	const cap = (...c: number[]) => c.map((v) => given("capacity", v));
	const len = (...l: number[]) => l.map((v) => given("length", v));
	const fill = (volume: number) =>
		filledTo.of({
			V: given("volume", volume),
			MD_bottom: given("measured-depth", 5000),
			C_i: cap(0.05, 0.1, 0.2),
			L_i: len(1000, 500, 100),
		});

	test("fills from the bottom up, and what it cannot hold stands at its top", () => {
		expect(fill(0).value).toBe(5000);
		expect(fill(50).value).toBeCloseTo(4000, 9);
		expect(fill(75).value).toBeCloseTo(3750, 9);
		expect(fill(1000).value).toBe(3400);
		expect(fill(1000).from).toMatchObject({ branch: "to the top of the annulus" });
	});

	test("rises with its volume", () => {
		fc.assert(
			fc.property(fc.double({ min: 0, max: 118, noNaN: true }), (volume) => {
				expect(fill(volume + 1).value).toBeLessThan(fill(volume).value);
			}),
		);
	});
});

describe("holding a string down", () => {
	test("fluid in pipe weighs its volume times its density", () => {
		const C = pipeCapacity.of({ d: given("diameter", 10) });
		const weight = fluidWeight.of({ ρ: ρ(8.33), C, D_top: tvd(0), D_bottom: tvd(1000) });
		expect(weight.value).toBeCloseTo(C.value * 1000 * 42 * 8.33, 6);
		const climbing = fluidWeight.of({ ρ: ρ(8.33), C, D_top: tvd(10), D_bottom: tvd(0) });
		expect(climbing.value).toBeCloseTo(-C.value * 10 * 42 * 8.33, 6);
	});

	test("weightless pipe full of the fluid it stands in neither rises nor sinks, but for the rounding of 0.052", () => {
		const D = given("diameter", 9);
		const W_i = [
			fluidWeight.of({ ρ: ρ(10), C: pipeCapacity.of({ d: D }), D_top: tvd(0), D_bottom: tvd(5000) }),
		];
		const force = netHoldDown.of({ W: given("force", 0), W_i, p: given("pressure", 0.052 * 10 * 5000), D });
		expect(Math.abs(force.value) / (W_i[0]?.value ?? 1)).toBeLessThan(0.0011);
	});

	test("a pressure over the end is what lifts", () => {
		const force = (p: number) =>
			netHoldDown.of({
				W: given("force", 50_000),
				W_i: [],
				p: given("pressure", p),
				D: given("diameter", 13.375),
			}).value;
		expect(force(0)).toBe(50_000);
		expect(force(400)).toBeLessThan(0);
	});

	test("the collar lies a shoe track above the shoe", () => {
		const MD_shoe = given("measured-depth", 1185);
		expect(floatCollar.of({ MD_shoe, L: given("length", 42) }).value).toBe(1143);
		expect(floatCollar.of({ MD_shoe, L: given("length", 2000) }).value).toBeNaN();
	});
});
