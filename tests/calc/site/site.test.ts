import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { holeMark } from "../../../src/calc/depths/index.ts";
import { openGaps } from "../../../src/calc/gaps.ts";
import { GEODESICS } from "../../../src/calc/site/distance.ts";
import { siteResults } from "../../../src/calc/site/index.ts";
import { cornersOf, LINES, pathToLine, wellheadToLine } from "../../../src/calc/site/lines.ts";
import {
	azimuthFromPathNorth,
	distanceToPath,
	eastOfWellhead,
	nearestMeasuredDepth,
	northOfWellhead,
} from "../../../src/calc/site/local-plane.ts";
import { PLACES, trueAzimuth } from "../../../src/calc/site/place-of-station.ts";
import { minimumCurvaturePath } from "../../../src/calc/trajectory/path.ts";
import type { Well } from "../../../src/well/well.ts";
import { toldPlainly } from "../../told.ts";
import { well } from "../a-well.ts";
import { given, stationTable } from "../given.ts";

const deg = (value: number) => given("angle", value);

/** Radii of curvature of GRS 80, for short distances: an independent way to them. */
const shortDistance = (lat1: number, lon1: number, lat2: number, lon2: number): number => {
	const [a, f] = [6_378_137, 1 / 298.257222101];
	const e2 = f * (2 - f);
	const middle = (((lat1 + lat2) / 2) * Math.PI) / 180;
	const W = Math.sqrt(1 - e2 * Math.sin(middle) ** 2);
	const north = (((lat2 - lat1) * Math.PI) / 180) * ((a * (1 - e2)) / W ** 3);
	const east = (((lon2 - lon1) * Math.PI) / 180) * (a / W) * Math.cos(middle);
	return Math.hypot(north, east) / 0.3048;
};

const latitude = fc.double({ min: 25, max: 70, noNaN: true });
const offset = fc.double({ min: -0.05, max: 0.05, noNaN: true });

describe("horizontal distances", () => {
	test("agree with the radii of curvature over a few miles", () => {
		fc.assert(
			fc.property(latitude, offset, offset, (φ, dφ, dλ) => {
				const ends = { φ_1: deg(φ), λ_1: deg(-98), φ_2: deg(φ + dφ), λ_2: deg(-98 + dλ) };
				const near = shortDistance(φ, -98, φ + dφ, -98 + dλ);
				expect(Math.abs(GEODESICS.NAD83.distance.of(ends).value - near)).toBeLessThan(0.01 + 1e-5 * near);
			}),
		);
	});

	test("are the same both ways, in whatever datum, and nothing from a place to itself", () => {
		fc.assert(
			fc.property(latitude, offset, offset, (φ, dφ, dλ) => {
				const [one, other] = [
					{ φ_1: deg(φ), λ_1: deg(-98), φ_2: deg(φ + dφ), λ_2: deg(-98 + dλ) },
					{ φ_1: deg(φ + dφ), λ_1: deg(-98 + dλ), φ_2: deg(φ), λ_2: deg(-98) },
				];
				for (const { distance } of Object.values(GEODESICS))
					expect(distance.of(one).value).toBeCloseTo(distance.of(other).value, 6);
				const nowhere = { φ_1: deg(φ), λ_1: deg(-98), φ_2: deg(φ), λ_2: deg(-98) };
				expect(GEODESICS.WGS84.distance.of(nowhere).value).toBeCloseTo(0, 9);
			}),
		);
	});

	test("the older ellipsoid makes the same degrees another length, by less than a part in five thousand", () => {
		const ends = { φ_1: deg(31.48), λ_1: deg(-98.77), φ_2: deg(31.5), λ_2: deg(-98.75) };
		const [now, before] = [GEODESICS.NAD83.distance.of(ends).value, GEODESICS.NAD27.distance.of(ends).value];
		expect(before).not.toBe(now);
		expect(Math.abs(before / now - 1)).toBeLessThan(2e-4);
	});
});

describe("the plane at the wellhead", () => {
	test("keeps distance and direction", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 0, max: 50_000, noNaN: true }),
				fc.double({ min: 0, max: 359.9, noNaN: true }),
				(far, az) => {
					const [s, A] = [given("distance", far), deg(az)];
					const [N, E] = [northOfWellhead.of({ s, A }).value, eastOfWellhead.of({ s, A }).value];
					expect(Math.hypot(N, E)).toBeCloseTo(far, 6);
					if (far > 1) expect((((Math.atan2(E, N) * 180) / Math.PI + 360) % 360) - az).toBeCloseTo(0, 6);
				},
			),
		);
	});

	test("grid north east of true north takes its convergence off a direction", () => {
		expect(azimuthFromPathNorth.of({ A_true: deg(158), γ: deg(0.8) }).value).toBeCloseTo(157.2, 12);
		expect(azimuthFromPathNorth.of({ A_true: deg(0.3), γ: deg(0.8) }).value).toBeCloseTo(359.5, 12);
		expect(azimuthFromPathNorth.of({ A_true: deg(359.9), γ: deg(-0.8) }).value).toBeCloseTo(0.7, 9);
	});
});

/** Straight down 1,000 ft, then level to the north for 5,000 ft, past a short curve. */
const level = minimumCurvaturePath.of({
	stations: stationTable([
		[0, 0, 0],
		[1000, 0, 0],
		[1100, 90, 0],
		[6100, 90, 0],
	]),
	TD: given("measured-depth", 6100),
	Avs: deg(0),
});
const reach = level.rows.at(-1)?.north ?? Number.NaN;

describe("the way to the well path", () => {
	const to = (N: number, E: number) => {
		const place = { path: level, N: given("offset", N), E: given("offset", E) };
		return { distance: distanceToPath.of(place).value, md: nearestMeasuredDepth.of(place).value };
	};

	test("is square to a lateral, and straight to its ends", () => {
		expect(to(2500, 300).distance).toBeCloseTo(300, 9);
		expect(to(2500, 300).md).toBeCloseTo(6100 - (reach - 2500), 6);
		expect(to(reach + 400, 300).distance).toBeCloseTo(500, 6);
		expect(to(reach + 400, 300).md).toBeCloseTo(6100, 9);
		expect(to(-30, -40)).toEqual({ distance: 50, md: 0 });
	});

	test("is never more than the way to the wellhead", () => {
		const place = fc.double({ min: -9000, max: 9000, noNaN: true });
		fc.assert(
			fc.property(place, place, (N, E) => {
				expect(to(N, E).distance).toBeLessThanOrEqual(Math.hypot(N, E) + 1e-9);
			}),
		);
	});
});

describe("lines on the ground", () => {
	const home = { φ_1: deg(31.482716), λ_1: deg(-98.771204) };
	/** A corner so far [ft] from the wellhead, at so many degrees from true north. */
	const corner = (feet: number, azimuth: number, datum: keyof typeof PLACES = "NAD83") => {
		const at = { φ_0: home.φ_1, λ_0: home.λ_1, s: given("length", feet), A_true: deg(azimuth) };
		return { latitude: PLACES[datum].latitude.of(at), longitude: PLACES[datum].longitude.of(at) };
	};
	/** A corner so far [ft] north and east of the wellhead. */
	const place = (N: number, E: number) => corner(Math.hypot(N, E), (Math.atan2(E, N) * 180) / Math.PI);
	const lineOf = (
		corners: readonly ReturnType<typeof corner>[],
		γ = 0,
		datum: keyof typeof LINES = "NAD83",
	) => LINES[datum].of({ corners: cornersOf(corners, []), φ_0: home.φ_1, λ_0: home.λ_1, γ: deg(γ) });

	test.each(["NAD83", "WGS84", "NAD27"] as const)(
		"keep their corners' distance and direction in %s",
		(datum) => {
			const [first, second] = lineOf([corner(1000, 90, datum), corner(2000, 200, datum)], 20, datum).rows;
			expect(Math.hypot(first?.north ?? 0, first?.east ?? 0)).toBeCloseTo(1000, 4);
			expect(first?.north).toBeCloseTo(1000 * Math.cos((70 * Math.PI) / 180), 4);
			expect(second?.north).toBeCloseTo(-2000, 4);
			expect(second?.east).toBeCloseTo(0, 4);
		},
	);

	test("are as far from the wellhead as their nearest part, between corners too", () => {
		const line = lineOf([
			corner(Math.hypot(600, 800), (Math.atan2(-800, 600) * 180) / Math.PI),
			corner(600, 0),
		]);
		expect(wellheadToLine.of({ line }).value).toBeCloseTo(600, 3);
		const across = lineOf([place(0, -500), place(500, 0)]);
		expect(wellheadToLine.of({ line: across }).value).toBeCloseTo(500 / Math.SQRT2, 3);
	});

	test("are as far from a lateral as the nearest of both, and nowhere where it crosses", () => {
		const beside = lineOf([place(-500, 660), place(9000, 660)]);
		expect(pathToLine.of({ path: level, line: beside }).value).toBeCloseTo(660, 2);
		const crossing = lineOf([place(2500, -900), place(2500, 900)]);
		expect(pathToLine.of({ path: level, line: crossing }).value).toBeCloseTo(0, 6);
		const beyond = lineOf([place(reach + 300, -900), place(reach + 300, 900)]);
		expect(pathToLine.of({ path: level, line: beyond }).value).toBeCloseTo(300, 2);
	});
});

const marksOf = (of: Well) => ({
	landing: holeMark(level, given("measured-depth", 1100), of.datum),
	total_depth: holeMark(level, given("measured-depth", 6100), of.datum),
	closure: given("length", reach),
});

describe("neighbors", () => {
	const home = { latitude: deg(31.482716), longitude: deg(-98.771204), datum: "NAD83" as const };
	const north = { reference: "true" as const };
	const neighbor = (more: object) => ({ id: "n", kind: "dwelling", name: "House", ...more });
	const results = (site: object, neighbors: object[]) => {
		const gaps = openGaps();
		const of = well([], [], {
			site: { jurisdictions: [], ...site },
			neighbors,
			trajectory: {},
		} as unknown as Partial<Well>);
		return { found: siteResults(of, level, marksOf(of), gaps), gaps: gaps.undetermined };
	};
	const placed = neighbor({ latitude: deg(31.485), longitude: deg(-98.771204) });

	test("due north lies due north", () => {
		const { found, gaps } = results({ surface_location: home, north }, [placed]);
		expect(gaps).toEqual([]);
		expect(found.neighbors[0]?.direction?.value).toBeCloseTo(0, 9);
		expect(found.neighbors[0]?.east?.value).toBeCloseTo(0, 6);
		// The lateral goes due north, right under it.
		expect(found.neighbors[0]?.from_path?.value).toBeCloseTo(0, 6);
	});

	test("a line is measured to its nearest part, and has no single place", () => {
		const ends = { latitude: deg(31.485), longitude: deg(-98.78) };
		const road = neighbor({ corners: [ends, { ...ends, longitude: deg(-98.76) }] });
		const { found, gaps } = results({ surface_location: home, north }, [road]);
		expect(gaps).toEqual([]);
		const [place] = found.neighbors;
		expect(place?.from_wellhead?.value).toBeCloseTo(
			shortDistance(31.482716, -98.771204, 31.485, -98.771204),
			0,
		);
		// The lateral goes due north, right under it.
		expect(place?.from_path?.value).toBeCloseTo(0, 6);
		expect(place?.north).toBeUndefined();
		const elsewhere = results({ surface_location: home, north }, [{ ...road, datum: "NAD27" }]);
		expect(elsewhere.found.neighbors[0]).toEqual({ id: "n", name: "House" });
	});

	test("one datum is not mixed with another", () => {
		const { found, gaps } = results({ surface_location: home, north }, [{ ...placed, datum: "NAD27" }]);
		expect(found.neighbors[0]).toEqual({ id: "n", name: "House" });
		expect(toldPlainly(gaps[0]?.because)).toContain("do not mix");
	});

	test("without coordinates, or without the well's own, there is no distance, and it is said", () => {
		expect(results({ surface_location: home, north }, [neighbor({})]).gaps).toHaveLength(1);
		expect(results({ north }, [placed]).gaps).toHaveLength(2);
	});

	test("without grid convergence there is a distance to the wellhead, but none to the path", () => {
		const { found, gaps } = results({ surface_location: home, north: { reference: "grid" } }, [placed]);
		expect(found.neighbors[0]?.from_wellhead?.value).toBeGreaterThan(800);
		expect(found.neighbors[0]?.from_path).toBeUndefined();
		expect(gaps.map((g) => g.needs)).toEqual([[["site", "north", "convergence"]]]);
	});

	test("a well without a place is asked for one, and for nothing else", () => {
		expect(results({}, []).gaps.map((g) => g.needs)).toEqual([[["site", "surface_location"]]]);
	});
});

describe("places of the path on the map", () => {
	const home = { latitude: deg(31.482716), longitude: deg(-98.771204), datum: "NAD83" as const };
	const placesWith = (north: object) => {
		const gaps = openGaps();
		const of = well([], [], {
			site: { jurisdictions: [], surface_location: home, north },
			trajectory: {},
		} as unknown as Partial<Well>);
		return { ...siteResults(of, level, marksOf(of), gaps), gaps: gaps.undetermined };
	};

	test("the geodesic back to the wellhead has the length and the direction laid off", () => {
		for (const [north, azimuth] of [
			[{ reference: "true" }, 0],
			[{ reference: "grid", convergence: deg(0.8) }, 0.8],
			[{ reference: "magnetic", declination: deg(-3.5) }, 356.5],
		] as const) {
			const { total_depth, stations } = placesWith(north);
			if (total_depth === undefined) throw new Error("unplaced");
			const ends = {
				φ_1: home.latitude,
				λ_1: home.longitude,
				φ_2: total_depth.latitude,
				λ_2: total_depth.longitude,
			};
			expect(GEODESICS.NAD83.distance.of(ends).value).toBeCloseTo(reach, 4);
			expect(GEODESICS.NAD83.azimuth.of(ends).value).toBeCloseTo(azimuth, 6);
			const last = stations?.rows.at(-1);
			expect(last?.latitude).toBeCloseTo(total_depth.latitude.value, 12);
			expect(last?.longitude).toBeCloseTo(total_depth.longitude.value, 12);
			expect(stations?.rows[0]?.latitude).toBeCloseTo(home.latitude.value, 12);
			expect(stations?.rows[0]?.longitude).toBeCloseTo(home.longitude.value, 12);
			expect(stations?.rows).toHaveLength(level.rows.length);
		}
	});

	test("a lateral with grid azimuths and no convergence has no place, and asks for it", () => {
		const { total_depth, gaps } = placesWith({ reference: "grid" });
		expect(total_depth).toBeUndefined();
		expect(gaps.map((g) => g.needs)).toEqual([[["site", "north", "convergence"]]]);
	});

	test("every ellipsoid lays its own line off, and by nearly the same degrees", () => {
		const line = { φ_0: home.latitude, λ_0: home.longitude, s: given("length", 8573), A_true: deg(158.8) };
		const places = Object.entries(PLACES).map(([datum, on]) => ({
			datum: datum as keyof typeof PLACES,
			latitude: on.latitude.of(line),
			longitude: on.longitude.of(line),
		}));
		for (const { datum, latitude: φ_2, longitude: λ_2 } of places) {
			const back = GEODESICS[datum].distance.of({ φ_1: line.φ_0, λ_1: line.λ_0, φ_2, λ_2 });
			expect(back.value).toBeCloseTo(8573, 4);
			expect(Math.abs(φ_2.value - (places[0]?.latitude.value ?? 0))).toBeLessThan(1e-5);
		}
	});

	test("turned to true and back is where it began", () => {
		fc.assert(
			fc.property(fc.double({ min: 0, max: 359.99, noNaN: true }), offset, (A, γ) => {
				const there = trueAzimuth.of({ A: deg(A), γ: deg(γ) });
				const back = azimuthFromPathNorth.of({ A_true: there, γ: deg(γ) }).value;
				expect(Math.cos(((back - A) * Math.PI) / 180)).toBeCloseTo(1, 12);
			}),
		);
	});
});
