import { expect, test } from "vitest";
import { criticalGel, overbalanceGelled, pressureRestriction } from "../../../src/calc/cement/gas-flow.ts";
import { given } from "../given.ts";

const column = {
	L: given("length", 4000),
	D_h: given("diameter", 8.75),
	D_c: given("diameter", 5.5),
};
const OBP = given("pressure-difference", 420);
const left = (SGS: number) => overbalanceGelled.of({ ...column, OBP, SGS: given("yield-point", SGS) }).value;

test("at the critical gel strength nothing is left, and none is lost without gel", () => {
	const critical = criticalGel.of({ ...column, OBP });
	expect(left(critical.value)).toBeCloseTo(0, 9);
	expect(left(0)).toBe(420);
	expect(criticalGel.of({ ...column, OBP: given("pressure-difference", -1) }).value).toBeNaN();
});

test("at 500 lbf/100 ft² the loss is the greatest restriction of the gas flow potential", () => {
	expect(420 - left(500)).toBeCloseTo(pressureRestriction.of(column).value, -1);
});
