import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	annularCapacity,
	intervalLength,
	pipeCapacity,
	totalVolume,
	volumeWithExcess,
	washedOutDiameter,
} from "../../../src/calc/cement/capacity.ts";
import { md } from "../a-well.ts";
import { given } from "../given.ts";

const d = (value: number) => given("diameter", value);
const size = fc.double({ min: 1, max: 40, noNaN: true });

describe("capacity", () => {
	test("a ring and the pipe in it make the whole bore", () => {
		fc.assert(
			fc.property(size, size, (a, b) => {
				const [inner, outer] = a < b ? [a, b] : [b, a];
				const ring = annularCapacity.of({ D: d(outer), d: d(inner) }).value;
				expect(ring + pipeCapacity.of({ d: d(inner) }).value).toBeCloseTo(
					pipeCapacity.of({ d: d(outer) }).value,
					12,
				);
			}),
		);
	});

	test("a ring shrinks as the pipe in it grows, and is nothing when it fills the hole", () => {
		fc.assert(
			fc.property(size, fc.double({ min: 0.01, max: 0.98, noNaN: true }), (outer, part) => {
				const ring = (inner: number) => annularCapacity.of({ D: d(outer), d: d(inner) }).value;
				expect(ring(outer * part)).toBeGreaterThan(ring(outer * (part + 0.01)));
				expect(ring(outer)).toBe(0);
			}),
		);
	});

	test("pipe larger than its hole has no annulus", () => {
		expect(annularCapacity.of({ D: d(8), d: d(9) }).value).toBeNaN();
		expect(pipeCapacity.of({ d: d(-1) }).value).toBeNaN();
	});

	test("no washout leaves the hole at gauge; washout is on diameter", () => {
		expect(washedOutDiameter.of({ D: d(12.25), w: given("share", 0) }).value).toBe(12.25);
		expect(washedOutDiameter.of({ D: d(12.25), w: given("share", 0.08) }).value).toBeCloseTo(13.23, 12);
		expect(washedOutDiameter.of({ D: d(12.25), w: given("share", -0.1) }).value).toBeNaN();
	});

	test("8 % of washout on 12 1/4 in around 9 5/8 in is 43 % more annulus; 15 % on 17 1/2 in around 13 3/8 in is 78 %", () => {
		const more = (D: number, pipe: number, w: number) =>
			annularCapacity.of({ D: washedOutDiameter.of({ D: d(D), w: given("share", w) }), d: d(pipe) }).value /
				annularCapacity.of({ D: d(D), d: d(pipe) }).value -
			1;
		expect(more(12.25, 9.625, 0.08)).toBeCloseTo(0.43, 2);
		expect(more(17.5, 13.375, 0.15)).toBeCloseTo(0.78, 1);
	});

	test("excess multiplies, and a negative one is refused", () => {
		const V = given("volume", 100);
		expect(volumeWithExcess.of({ V, e: given("share", 0) }).value).toBe(100);
		expect(volumeWithExcess.of({ V, e: given("share", 0.3) }).value).toBeCloseTo(130, 12);
		expect(volumeWithExcess.of({ V, e: given("share", -0.1) }).value).toBeNaN();
	});

	test("lengths are counted downward only; an empty sum is nothing", () => {
		expect(intervalLength.of({ MD_top: md(100), MD_bottom: md(350) }).value).toBe(250);
		expect(intervalLength.of({ MD_top: md(350), MD_bottom: md(100) }).value).toBeNaN();
		expect(totalVolume.of({ V_i: [] }).value).toBe(0);
		expect(totalVolume.of({ V_i: [given("volume", 1.5), given("volume", 2.25)] }).value).toBe(3.75);
	});
});
