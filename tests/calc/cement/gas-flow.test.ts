import { expect, test } from "vitest";
import { wornRating } from "../../../src/calc/casing/internal-yield.ts";
import {
	criticalGel,
	gasFlowPotential,
	overbalanceGelled,
	pressureRestriction,
} from "../../../src/calc/cement/gas-flow.ts";
import { nearestTest } from "../../../src/calc/cement/strength-tests.ts";
import { given } from "../given.ts";

const restriction = (L: number, D_h = 8.5) =>
	pressureRestriction.of({
		L: given("length", L),
		D_h: given("diameter", D_h),
		D_c: given("diameter", 5.5),
	}).value;

test("a gel of 500 lbf/100 ft² holds up 500 L / (300 (D_h − D_c)), and its potential is that over the overbalance", () => {
	expect(restriction(3000)).toBeCloseTo((500 * 3000) / (300 * 3), -1);
	expect(restriction(0)).toBe(0);
	expect(restriction(3000, 5.5)).toBeNaN();
	const potential = (OBP: number) =>
		gasFlowPotential.of({ MPR: given("pressure", 1200), OBP: given("pressure-difference", OBP) }).value;
	expect(potential(400)).toBe(3);
	expect(potential(0)).toBeNaN();
});

test("the critical gel is 300 OBP (D_h − D_c) / L over any length, and takes just the overbalance away", () => {
	const column = (L: number, OBP = 400, D_c = 5.5) => ({
		OBP: given("pressure-difference", OBP),
		D_h: given("diameter", 8.5),
		D_c: given("diameter", D_c),
		L: given("length", L),
	});
	const critical = (L: number, OBP?: number, D_c?: number) => criticalGel.of(column(L, OBP, D_c)).value;
	expect(critical(3000)).toBe((300 * 400 * 3) / 3000);
	expect(critical(0.5)).toBe((300 * 400 * 3) / 0.5);
	for (const outside of [critical(0), critical(3000, 0), critical(3000, 400, 8.5)]) expect(outside).toBeNaN();
	const left = (SGS: number, D_c?: number) =>
		overbalanceGelled.of({ ...column(3000, 400, D_c), SGS: given("yield-point", SGS) }).value;
	expect(left(0)).toBe(400);
	expect(left(critical(3000))).toBeCloseTo(0, 9);
	expect(left(100, 8.5)).toBeNaN();
});

test("a strength test within the rock's temperatures is off by nothing, one outside by its distance", () => {
	const off = (...tests: readonly number[]) =>
		nearestTest.of({
			T_i: tests.map((t) => given("temperature", t)),
			T_top: given("temperature", 80),
			T_bottom: given("temperature", 150),
		}).value;
	expect(off(110)).toBe(0);
	expect(off(60)).toBe(20);
	expect(off(60, 160)).toBe(10);
	expect(off()).toBeNaN();
});

test("wear takes the same share of pipe and coupling, and never more than all", () => {
	const worn = (wear: number) =>
		wornRating.of({ P: given("pressure", 10_000), wear: given("share", wear) }).value;
	expect(worn(0)).toBe(10_000);
	expect(worn(0.1)).toBeCloseTo(9000, 9);
	expect(worn(1)).toBeNaN();
});
