import { describe, expect, test } from "vitest";
import { depthBelowGround } from "../../../src/calc/depths/marks.ts";
import {
	azimuthAt,
	eastAtMd,
	inclinationAt,
	northAtMd,
	tvdAt,
} from "../../../src/calc/trajectory/at-depth.ts";
import { buildRate, turnRate } from "../../../src/calc/trajectory/dogleg.ts";
import { closure, closureAzimuth, verticalSection } from "../../../src/calc/trajectory/horizontal.ts";
import { passesAtTvd } from "../../../src/calc/trajectory/md-at-tvd.ts";
import { minimumCurvaturePath } from "../../../src/calc/trajectory/path.ts";
import { maximumDogleg, maximumInclination, pathEnd } from "../../../src/calc/trajectory/path-summary.ts";
import {
	arcDeparture,
	arcDepth,
	arcLength,
	holdInclination,
	holdLength,
	landingDepth,
} from "../../../src/calc/trajectory/plan-geometry.ts";
import { groundLevel, tvdOfDepthBelowGround } from "../../../src/well/datum.ts";
import { given, stationTable } from "../given.ts";

const md = (value: number) => given("measured-depth", value);
const angle = (value: number) => given("angle", value);
const offset = (value: number) => given("offset", value);
const length = (value: number) => given("length", value);

describe("rates", () => {
	test("build is the change of inclination over a hundred feet", () => {
		expect(buildRate.of({ MD1: md(1000), I1: angle(10), MD2: md(1050), I2: angle(14) }).value).toBe(8);
		expect(buildRate.of({ MD1: md(1000), I1: angle(14), MD2: md(1050), I2: angle(10) }).value).toBe(-8);
		expect(buildRate.of({ MD1: md(1000), I1: angle(14), MD2: md(1000), I2: angle(10) }).value).toBeNaN();
	});

	test("turn goes the shorter way round north", () => {
		const turn = (A1: number, A2: number) =>
			turnRate.of({ MD1: md(0), A1: angle(A1), MD2: md(100), A2: angle(A2) }).value;
		expect([turn(359, 1), turn(1, 359), turn(10, 40), turn(90, 90)]).toEqual([2, -2, 30, 0]);
	});
});

describe("on the map", () => {
	test("a vertical section along north is the northing, along east the easting, across the way nothing", () => {
		const along = (Avs: number) =>
			verticalSection.of({ N: offset(300), E: offset(400), Avs: angle(Avs) }).value;
		expect(along(0)).toBeCloseTo(300, 9);
		expect(along(90)).toBeCloseTo(400, 9);
		expect(along(closureAzimuth.of({ N: offset(300), E: offset(400) }).value + 90)).toBeCloseTo(0, 9);
	});

	test("closure of 300 and 400 is 500, in each quarter", () => {
		const azimuth = (N: number, E: number) => closureAzimuth.of({ N: offset(N), E: offset(E) }).value;
		expect(closure.of({ N: offset(300), E: offset(-400) }).value).toBe(500);
		expect([azimuth(1, 1), azimuth(-1, 1), azimuth(-1, -1), azimuth(1, -1)].map(Math.round)).toEqual([
			45, 135, 225, 315,
		]);
	});
});

describe("plan geometry", () => {
	test("a quarter turn at 10°/100 ft is 900 ft long, a radius deep and a radius away", () => {
		const quarter = { R: length(573), I1: angle(0), I2: angle(90) };
		expect(arcLength.of({ I1: angle(0), I2: angle(90), B: given("dogleg", 10) }).value).toBe(900);
		expect(arcDepth.of(quarter).value).toBeCloseTo(573, 9);
		expect(arcDeparture.of(quarter).value).toBeCloseTo(573, 9);
		expect(landingDepth.of({ KOP: md(8360), I_L: angle(90), B: given("dogleg", 10) }).value).toBe(9260);
		expect(landingDepth.of({ KOP: md(8360), I_L: angle(90), B: given("dogleg", 0) }).value).toBeNaN();
	});

	test("an endlessly sharp build points straight at the target; a target on the arc needs no hold", () => {
		const sharp = { R: length(1e-9), Z: offset(1000), X: length(1000) };
		expect(holdInclination.of(sharp).value).toBeCloseTo(45, 6);
		expect(holdLength.of(sharp).value).toBeCloseTo(1000 * Math.SQRT2, 6);
		const onArc = { R: length(1000), Z: offset(1000 * Math.sin(1)), X: length(1000 * (1 - Math.cos(1))) };
		expect(holdLength.of(onArc).value).toBeCloseTo(0, 4);
		expect(holdInclination.of(onArc).value).toBeCloseTo(180 / Math.PI, 4);
		expect(holdInclination.of({ ...onArc, Z: offset(-1) }).value).toBeNaN();
	});
});

describe("a path of one straight slope", () => {
	const path = minimumCurvaturePath.of({
		stations: stationTable([
			[0, 60, 30],
			[1000, 60, 30],
		]),
		TD: md(0),
		Avs: angle(30),
	});

	test("is read by trigonometry at any depth", () => {
		expect(tvdAt(path, md(400)).value).toBeCloseTo(200, 9);
		expect(inclinationAt(path, md(400)).value).toBeCloseTo(60, 9);
		expect(azimuthAt(path, md(400)).value).toBeCloseTo(30, 9);
		expect(northAtMd.of({ path, MD: md(400) }).value).toBeCloseTo(300, 9);
		expect(eastAtMd.of({ path, MD: md(400) }).value).toBeCloseTo(200 * Math.sin(Math.PI / 3), 9);
		expect(tvdAt(path, md(-1)).value).toBeNaN();
	});

	test("has no dogleg, one inclination, one end, and passes each depth once", () => {
		expect(maximumDogleg.of({ path }).value).toBeCloseTo(0, 9);
		expect(maximumInclination.of({ path }).value).toBe(60);
		expect(pathEnd.of({ path }).value).toBe(1000);
		expect(passesAtTvd.of({ path, TVD: given("true-vertical-depth", 250) }).value).toBe(1);
		expect(passesAtTvd.of({ path, TVD: given("true-vertical-depth", 501) }).value).toBe(0);
	});
});

describe("datums", () => {
	test("there and back", () => {
		const height = length(26);
		const TVD = tvdOfDepthBelowGround.of({ z_ground: given("depth-below-ground", 984), h: height });
		expect(TVD.value).toBe(1010);
		expect(depthBelowGround.of({ TVD, height }).value).toBe(984);
		const ground = groundLevel.of({ h: height });
		expect(depthBelowGround.of({ TVD: given("true-vertical-depth", ground.value), height }).value).toBe(0);
	});
});
