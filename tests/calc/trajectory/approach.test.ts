import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	approachInPlan,
	deepestOfPath,
	deepStretchApproachInPlan,
	movedPath,
	nearestApproach,
	nearestApproachDepth,
	nearestApproachOtherDepth,
	straightPath,
	stretchApproach,
	stretchApproachInPlan,
} from "../../../src/calc/trajectory/approach.ts";
import { minimumCurvaturePath } from "../../../src/calc/trajectory/path.ts";
import type { KnownTable } from "../../../src/cite/known.ts";
import { md, straightDown } from "../a-well.ts";
import { given, stationTable } from "../given.ts";

const pathOf = (rows: readonly (readonly [number, number, number])[]) =>
	minimumCurvaturePath.of({
		stations: stationTable(rows),
		TD: given("measured-depth", rows.at(-1)?.[0] ?? 0),
		Avs: given("angle", 0),
	});

const lateral = pathOf([
	[0, 0, 0],
	[8000, 0, 0],
	[8900, 90, 0],
	[13900, 90, 0],
]);
const radius = 900 / (Math.PI / 2);
const level = 8000 + radius;

const straight = (from: readonly [number, number], to: readonly [number, number, number]) =>
	straightPath.of({
		N_w: given("offset", from[0]),
		E_w: given("offset", from[1]),
		N_b: given("offset", to[0]),
		E_b: given("offset", to[1]),
		TVD_b: given("true-vertical-depth", to[2]),
		ΔE_d: given("offset", 0),
	});
const upright = (N: number, E: number, TVD: number) => straight([N, E], [N, E, TVD]);
const space = (other: KnownTable, path: KnownTable = lateral) => nearestApproach.of({ path, other }).value;

describe("nearest approach of two holes", () => {
	test("a bore past the lateral's depth is as far as it is square to it; a shallower one is farther by Pythagoras", () => {
		expect(space(upright(3000, 200, 9000))).toBeCloseTo(200, 6);
		expect(space(upright(3000, 200, level - 150))).toBeCloseTo(250, 6);
		expect(space(upright(radius + 5000 + 30, 40, 9500))).toBeCloseTo(50, 6);
	});

	test("beside a vertical bore it is the distance between the wellheads", () => {
		expect(space(upright(300, 400, 5000), straightDown)).toBeCloseTo(500, 9);
		expect(space(upright(-30, 40, 100))).toBeCloseTo(50, 6);
	});

	test("follows the arc between stations, not the chord", () => {
		// A bore at the inside of the curve, level with its middle: the arc is one radius from its center.
		const center = straight([radius - 1, 0], [radius - 1, 0, 8000]);
		expect(space(center)).toBeCloseTo(radius - 1, 1);
	});

	test("two laterals side by side are their spacing apart, and a crossing pair touches", () => {
		const beside = movedPath.of({
			path: lateral,
			N_w: given("offset", 0),
			E_w: given("offset", 880),
			ΔE_d: given("offset", 0),
		});
		expect(space(beside)).toBeCloseTo(880, 6);
		const across = straight([2500, -600], [2500, 600, 2 * level]);
		expect(space(across)).toBeCloseTo(0, 6);
	});

	test("is the same from either hole, and no more than in plan and depth together", () => {
		const place = fc.double({ min: -8000, max: 8000, noNaN: true });
		const deep = fc.double({ min: 10, max: 12_000, noNaN: true });
		fc.assert(
			fc.property(place, place, place, place, deep, (N, E, n, e, TVD) => {
				const other = straight([N, E], [n, e, TVD]);
				const found = space(other);
				expect(found).toBeCloseTo(space(lateral, other), 4);
				expect(found).toBeLessThanOrEqual(Math.hypot(N, E) + 1e-6);
				expect(found).toBeGreaterThanOrEqual(approachInPlan.of({ path: lateral, other }).value - 1e-6);
			}),
			{ numRuns: 40 },
		);
	});

	test("tells where along both holes", () => {
		const other = upright(radius + 1000, 200, 9000);
		expect(nearestApproachDepth.of({ path: lateral, other }).value).toBeCloseTo(9900, 6);
		expect(nearestApproachOtherDepth.of({ path: lateral, other }).value).toBeCloseTo(level, 6);
	});

	test("a stretch is no nearer than the whole, and as near as its ends allow", () => {
		const stretch = (other: KnownTable, from: number, to: number) =>
			stretchApproach.of({ path: lateral, other, MD_top: md(from), MD_bottom: md(to) }).value;
		expect(stretch(upright(radius + 1000, 200, 9000), 9900, 10_900)).toBeCloseTo(200, 6);
		// Another 400 ft along the lateral from where it is square to the bore: 3, 4, 5.
		expect(stretch(upright(radius + 1000, 300, 9000), 10_300, 10_900)).toBeCloseTo(500, 6);
		expect(stretch(upright(3000, 300, 4000), 9000, 13_900)).toBeCloseTo(Math.hypot(300, level - 4000), 6);
	});

	test("on the map depth counts for nothing", () => {
		const other = upright(3000, 300, 4000);
		const treated = { path: lateral, other, MD_top: md(9000), MD_bottom: md(13_900) };
		expect(stretchApproachInPlan.of(treated).value).toBeCloseTo(300, 6);
		expect(approachInPlan.of({ path: lateral, other }).value).toBeCloseTo(300, 6);
	});

	test("of the other hole only what goes deep enough counts", () => {
		// Straight from right above the lateral, out and down: at 7,000 ft it is 700 ft to the side.
		const other = straight([3000, 0], [3000, 1000, 10_000]);
		const deep = (TVD: number) =>
			deepStretchApproachInPlan.of({
				path: lateral,
				other,
				MD_top: md(9000),
				MD_bottom: md(13_900),
				TVD_top: given("true-vertical-depth", TVD),
			}).value;
		expect([deep(0), deep(7000), deep(10_000)].map((each) => Math.round(each * 1e6) / 1e6)).toEqual([
			0, 700, 1000,
		]);
		expect(deep(10_001)).toBeNaN();
	});

	test("another path is moved to its wellhead and to this datum", () => {
		const moved = movedPath.of({
			path: lateral,
			N_w: given("offset", 10),
			E_w: given("offset", -20),
			ΔE_d: given("offset", 30),
		});
		expect(moved.rows[0]).toMatchObject({ md: 0, north: 10, east: -20, tvd: 30 });
		expect(deepestOfPath.of({ path: moved }).value).toBeCloseTo(level + 30, 6);
	});

	test("of two slanting pieces it is the least over both, as a search over them finds it", () => {
		const coordinate = fc.double({ min: -3000, max: 3000, noNaN: true });
		const depth = fc.double({ min: 10, max: 9000, noNaN: true });
		fc.assert(
			fc.property(coordinate, coordinate, depth, coordinate, coordinate, depth, (n, e, down, N, E, TVD) => {
				const found = space(upright(N, E, TVD), straight([0, 0], [n, e, down]));
				const toBore = (s: number): number => {
					const z = Math.min(Math.max(s * down, 0), TVD);
					return Math.hypot(s * n - N, s * e - E, s * down - z);
				};
				// The distance to a straight piece is convex along another.
				let [low, high] = [0, 1];
				for (let k = 0; k < 200; k += 1) {
					const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
					if (toBore(a) < toBore(b)) high = b;
					else low = a;
				}
				expect(found).toBeCloseTo(toBore((low + high) / 2), 3);
			}),
			{ numRuns: 60 },
		);
	});
});
