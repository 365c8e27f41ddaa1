import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { arcPoint, type Station } from "../../../src/calc/trajectory/arc.ts";
import { placeAt } from "../../../src/calc/trajectory/at-depth.ts";
import { doglegAngle, ratioFactorOf } from "../../../src/calc/trajectory/dogleg.ts";
import { minimumCurvaturePath, type PathStation, pathStationsOf } from "../../../src/calc/trajectory/path.ts";
import { radians, tangent } from "../../../src/calc/trajectory/tangent.ts";
import { given, stationTable } from "../given.ts";

const pathThrough = (
	stations: readonly (readonly [number, number, number])[],
	{ TD = 0, Avs = 0 } = {},
): readonly PathStation[] =>
	pathStationsOf(
		minimumCurvaturePath.of({
			stations: stationTable(stations),
			TD: given("measured-depth", TD),
			Avs: given("angle", Avs),
		}),
	);

/** A survey that a rig could have made: courses of 20 to 300 ft, no dogleg near a half turn. */
const surveys = fc
	.array(
		fc.record({
			course: fc.double({ min: 20, max: 300, noNaN: true }),
			inclination: fc.double({ min: 0, max: 110, noNaN: true }),
			azimuth: fc.double({ min: 0, max: 360, noNaN: true }),
		}),
		{ minLength: 1, maxLength: 12 },
	)
	.map((courses) => {
		let md = 0;
		return [
			[0, 0, 0] as const,
			...courses.map(({ course, inclination, azimuth }) => {
				md += course;
				return [md, inclination, azimuth] as const;
			}),
		];
	})
	.filter((stations) =>
		stations.every((s, i) => {
			const above = stations[i - 1];
			return above === undefined || doglegAngle(above[1], above[2], s[1], s[2]) < 3;
		}),
	);

describe("minimum curvature path", () => {
	test("a vertical hole is as deep as it is long", () => {
		const path = pathThrough([
			[0, 0, 0],
			[5000, 0, 0],
		]);
		expect(path.at(-1)).toMatchObject({ tvd: 5000, north: 0, east: 0, dogleg: 0 });
	});

	test("a quarter circle gives its radius both ways", () => {
		const radius = (100 * 180) / (Math.PI * 10);
		const path = pathThrough([
			[0, 0, 90],
			[900, 90, 90],
		]);
		expect(path.at(-1)?.tvd).toBeCloseTo(radius, 9);
		expect(path.at(-1)?.east).toBeCloseTo(radius, 9);
		expect(path.at(-1)?.north).toBeCloseTo(0, 9);
		expect(path.at(-1)?.dogleg).toBeCloseTo(10, 12);
	});

	test("the position is the integral of the direction along the arc, by Simpson's rule", () => {
		fc.assert(
			fc.property(surveys, (stations) => {
				const path = pathThrough(stations);
				const end = path.at(-1);
				let sum = [0, 0, 0];
				for (const [i, lower] of path.entries()) {
					const upper = path[i - 1];
					if (upper === undefined) continue;
					sum = sum.map((value, axis) => value + integral(upper, lower, axis as 0 | 1 | 2));
				}
				expect(end?.north).toBeCloseTo(sum[0] ?? Number.NaN, 5);
				expect(end?.east).toBeCloseTo(sum[1] ?? Number.NaN, 5);
				expect(end?.tvd).toBeCloseTo(sum[2] ?? Number.NaN, 5);
			}),
			{ numRuns: 50 },
		);
	});

	test("splitting an interval at a point of its own arc changes nothing", () => {
		fc.assert(
			fc.property(surveys, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (stations, part) => {
				const whole = pathThrough(stations);
				const [upper, lower] = [whole.at(-2), whole.at(-1)];
				if (upper === undefined || lower === undefined) return;
				const s = part * (lower.md - upper.md);
				const { inclination, azimuth } = arcPoint(upper, lower, s);
				const split = pathThrough([
					...stations.slice(0, -1),
					[upper.md + s, inclination, azimuth],
					...stations.slice(-1),
				]).at(-1);
				expect(split?.tvd).toBeCloseTo(lower.tvd, 6);
				expect(split?.north).toBeCloseTo(lower.north, 6);
				expect(split?.east).toBeCloseTo(lower.east, 6);
			}),
		);
	});

	test("turning north turns the path, and leaves depths and doglegs alone", () => {
		fc.assert(
			fc.property(surveys, fc.double({ min: 0, max: 360, noNaN: true }), (stations, turn) => {
				const path = pathThrough(stations).at(-1);
				const turned = pathThrough(stations.map(([md, i, a]) => [md, i, a + turn])).at(-1);
				if (path === undefined || turned === undefined) throw new Error("no path");
				expect(turned.tvd).toBeCloseTo(path.tvd, 7);
				expect(turned.dogleg).toBeCloseTo(path.dogleg, 7);
				const [c, s] = [Math.cos(radians(turn)), Math.sin(radians(turn))];
				expect(turned.north).toBeCloseTo(c * path.north - s * path.east, 6);
				expect(turned.east).toBeCloseTo(s * path.north + c * path.east, 6);
			}),
		);
	});

	test("no hole is deeper or further away than it is long", () => {
		fc.assert(
			fc.property(surveys, (stations) => {
				for (const { md, tvd, north, east } of pathThrough(stations))
					expect(Math.hypot(tvd, north, east)).toBeLessThanOrEqual(md + 1e-6);
			}),
		);
	});

	test("the vertical section toward the closure is the closure", () => {
		const path = pathThrough(
			[
				[0, 0, 0],
				[1000, 30, 40],
				[2000, 30, 40],
			],
			{ Avs: 40 },
		);
		const end = path.at(-1);
		expect(end?.vertical_section).toBeCloseTo(Math.hypot(end?.north ?? 0, end?.east ?? 0), 9);
	});

	test("a tie-in below the datum hangs from a vertical start there", () => {
		expect(pathThrough([[500, 0, 120]])).toMatchObject([
			{ md: 0, tvd: 0 },
			{ md: 500, tvd: 500 },
		]);
	});

	test("past the last station the hole goes straight on", () => {
		const path = pathThrough(
			[
				[0, 0, 0],
				[1000, 60, 0],
			],
			{ TD: 1200 },
		);
		const [last, end] = [path.at(-2), path.at(-1)];
		expect(end).toMatchObject({ md: 1200, inclination: 60, dogleg: 0 });
		expect((end?.tvd ?? 0) - (last?.tvd ?? 0)).toBeCloseTo(100, 9);
	});

	test("stations out of order, or a hole that turns right back, give no path", () => {
		expect(
			pathThrough([
				[0, 0, 0],
				[900, 5, 0],
				[900, 6, 0],
			]),
		).toEqual([]);
		expect(
			pathThrough([
				[0, 0, 0],
				[100, 180, 0],
			]),
		).toEqual([]);
	});
});

const integral = (upper: Station, lower: Station, axis: 0 | 1 | 2): number => {
	const steps = 64;
	const length = lower.md - upper.md;
	let sum = 0;
	for (let i = 0; i <= steps; i += 1) {
		const { inclination, azimuth } = arcPoint(upper, lower, (i / steps) * length);
		const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
		sum += weight * tangent(inclination, azimuth)[axis];
	}
	return (sum * length) / (3 * steps);
};

describe("interpolation", () => {
	test("at a station it is the station", () => {
		fc.assert(
			fc.property(surveys, (stations) => {
				const path = pathThrough(stations);
				for (const station of path) {
					const place = placeAt(path, station.md);
					expect(place?.tvd).toBeCloseTo(station.tvd, 7);
					expect(place?.north).toBeCloseTo(station.north, 7);
					expect(place?.inclination).toBeCloseTo(station.inclination, 6);
				}
			}),
		);
	});

	test("half-way up a plane arc the inclination is half-way", () => {
		const path = pathThrough([
			[0, 0, 75],
			[600, 60, 75],
		]);
		expect(placeAt(path, 300)?.inclination).toBeCloseTo(30, 10);
		expect(placeAt(path, 300)?.azimuth).toBeCloseTo(75, 10);
	});

	test("above the first station there is no hole", () => {
		expect(
			placeAt(
				pathThrough([
					[0, 0, 0],
					[100, 0, 0],
				]),
				-1,
			),
		).toBeUndefined();
	});

	test("a vertical hole keeps the azimuth it was given", () => {
		const path = pathThrough([
			[0, 0, 0],
			[100, 0, 211],
		]);
		expect(placeAt(path, 80)?.azimuth).toBeCloseTo(211, 10);
	});
});

describe("ratio factor", () => {
	test("the series meets the closed form where it takes over", () => {
		const β = 1e-3;
		expect(ratioFactorOf(β * (1 - 1e-12))).toBeCloseTo((2 / β) * Math.tan(β / 2), 14);
	});

	test("grows from 1 with the dogleg, and has no value at a half turn", () => {
		fc.assert(
			fc.property(fc.double({ min: 0, max: 3, noNaN: true }), (β) => {
				expect(ratioFactorOf(β)).toBeGreaterThanOrEqual(1);
				expect(ratioFactorOf(β + 0.01)).toBeGreaterThan(ratioFactorOf(β));
			}),
		);
		expect(ratioFactorOf(Math.PI)).toBeNaN();
	});
});

describe("dogleg", () => {
	test("keeps its digits where the arccosine loses them", () => {
		const small = 1e-5;
		expect(doglegAngle(45, 0, 45 + small, 0)).toBeCloseTo(radians(small), 15);
		const byArccosine = Math.acos(
			Math.cos(radians(45)) * Math.cos(radians(45 + small)) +
				Math.sin(radians(45)) * Math.sin(radians(45 + small)),
		);
		expect(Math.abs(byArccosine - radians(small)) / radians(small)).toBeGreaterThan(1e-4);
	});
});
