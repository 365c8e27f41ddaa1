import { describe, expect, test } from "vitest";
import {
	holeRadius,
	leastSeparationDepth,
	leastSeparationDistance,
	leastSeparationFactor,
	oneSigma,
	separationAlong,
	separationFactor,
} from "../../../src/calc/site/separation-factor.ts";
import { movedPath } from "../../../src/calc/trajectory/approach.ts";
import { straightDown } from "../a-well.ts";
import { given } from "../given.ts";

const feet = (value: number) => given("distance", value);
const factor = (D: number, σ: number, R = 0) =>
	separationFactor.of({ D: feet(D), R_r: given("length", R), R_o: given("length", R), σ_s: feet(σ) }).value;

describe("separation factor", () => {
	test("is the distance left over a multiple of the combined standard deviation", () => {
		// Uncertainty far above the half meter ahead of the bit: (D − 0.3 m) / 3.5 σ.
		expect(factor(1000, 100)).toBeCloseTo((1000 - 0.984252) / (3.5 * Math.hypot(100, 1.64042)), 9);
		// Nothing uncertain: the half meter alone remains.
		expect(factor(10, 0)).toBeCloseTo((10 - 0.984252) / (3.5 * 1.64042), 5);
		expect(factor(0.984252 + 2 * holeRadius.of({ d: given("diameter", 12) }).value, 5, 0.5)).toBeCloseTo(
			0,
			6,
		);
		expect(Number.isNaN(factor(10, -1))).toBe(true);
	});

	test("of a circle of 95 % the standard deviation is the radius over 2.448", () => {
		expect(oneSigma.of({ r: feet(105), p: given("share", 0.95) }).value).toBeCloseTo(105 / 2.447747, 5);
		expect(Number.isNaN(oneSigma.of({ r: feet(105), p: given("share", 1) }).value)).toBe(true);
	});

	/*
	 * Two holes 0.58 ft apart, each known to 105 ft: a factor of 0.006 is the plain ratio of distance to one radius
	 * (0.58 / 105 = 0.0055). The rule takes hole radii and the surface margin off first, so that holes nearer than these
	 * have a factor below nothing; both say that the pair may be one hole.
	 */
	test("of two holes that may be one it is next to nothing", () => {
		const σ = Math.SQRT2 * oneSigma.of({ r: feet(105), p: given("share", 0.95) }).value;
		expect(0.58 / 105).toBeCloseTo(0.006, 3);
		expect((0.58 / 3.5) * (1 / σ)).toBeCloseTo(0.0027, 4);
		expect(factor(0.58, σ, 0.28)).toBeCloseTo(-0.0045, 3);
	});

	test("of two parallel holes falls as their uncertainty grows, and is least at the bottom", () => {
		const beside = movedPath.of({
			path: straightDown,
			N_w: given("offset", 0),
			E_w: given("offset", 50),
			ΔE_d: given("offset", 0),
		});
		const separation = separationAlong.of({
			path: straightDown,
			other: beside,
			R_r: given("length", 0.5),
			R_o: given("length", 0.5),
			σ_r: feet(30),
			σ_o: feet(40),
			σ_w: feet(0),
		});
		const factors = separation.rows.map((row) => row.factor);
		expect(factors[0]).toBeCloseTo((50 - 1 - 0.984252) / (3.5 * 1.64042), 5);
		expect(factors.every((each, i) => each <= (factors[i - 1] ?? Number.POSITIVE_INFINITY) + 1e-9)).toBe(
			true,
		);
		expect(leastSeparationFactor.of({ separation }).value).toBeCloseTo(
			(50 - 1 - 0.984252) / (3.5 * Math.hypot(50, 1.64042)),
			6,
		);
		expect(leastSeparationDepth.of({ separation }).value).toBe(30_000);
		expect(leastSeparationDistance.of({ separation }).value).toBeCloseTo(50, 9);
	});
});
