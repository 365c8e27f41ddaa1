import { describe, expect, test } from "vitest";
import { separationByModel } from "../../../src/calc/site/separation-factor.ts";
import { movedPath } from "../../../src/calc/trajectory/approach.ts";
import { minimumCurvaturePath } from "../../../src/calc/trajectory/path.ts";
import {
	ellipseAzimuth,
	ellipseMajor,
	ellipseMinor,
	planarFactor,
	radiusAtConfidence,
	surveyCovariance,
	verticalSigma,
} from "../../../src/calc/trajectory/survey-error.ts";
import { plannedSurvey } from "../../../src/calc/trajectory/survey-error-results.ts";
import { WEIGHTS } from "../../../src/calc/trajectory/survey-weights.ts";
import { loadCatalog } from "../../../src/catalog/load-catalog.ts";
import { WEIGHTING_FUNCTIONS } from "../../../src/cite/weighting-functions.ts";
import { given, stationTable } from "../given.ts";

const path = minimumCurvaturePath.of({
	stations: stationTable([
		[0, 0, 0],
		[8000, 0, 0],
		[9000, 90, 90],
		[17_000, 90, 90],
	]),
	TD: given("measured-depth", 0),
	Avs: given("angle", 0),
});

const { value: catalog } = loadCatalog();
const [model] = catalog?.errorModels ?? [];
if (model === undefined) throw new Error("no error model ships");

const earth = {
	B: given("magnetic-field", 48_000),
	Θ: given("angle", 60),
	δ: given("angle", 0),
	turn: given("angle", 0),
};

const table = (rows: readonly (readonly number[])[]) =>
	({
		columns: {
			md: "measured-depth",
			nn: "covariance",
			ee: "covariance",
			vv: "covariance",
			ne: "covariance",
			nv: "covariance",
			ev: "covariance",
		},
		rows: rows.map(([md = 0, nn = 0, ee = 0, vv = 0, ne = 0]) => ({ md, nn, ee, vv, ne, nv: 0, ev: 0 })),
		from: path.from,
	}) as const;

describe("survey error", () => {
	test("every weighting function of the catalogue is worked", () => {
		expect(WEIGHTING_FUNCTIONS.filter((name) => !(name in WEIGHTS))).toEqual(["XCLA", "XCLH"]);
	});

	test("an ellipse has the axes of its covariance, and at 95 % they are 2.448 standard deviations", () => {
		const covariance = table([[0], [100, 900, 400, 49]]);
		expect(ellipseMajor.of({ covariance }).value).toBeCloseTo(30, 9);
		expect(ellipseMinor.of({ covariance }).value).toBeCloseTo(20, 9);
		expect(ellipseAzimuth.of({ covariance }).value).toBeCloseTo(0, 9);
		expect(verticalSigma.of({ covariance }).value).toBeCloseTo(7, 9);
		const slant = table([[100, 650, 650, 0, 250]]);
		expect(ellipseMajor.of({ covariance: slant }).value).toBeCloseTo(30, 9);
		expect(ellipseAzimuth.of({ covariance: slant }).value).toBeCloseTo(45, 9);
		const k = planarFactor.of({ p: given("share", 0.95) });
		expect(k.value).toBeCloseTo(2.4477, 4);
		expect(radiusAtConfidence.of({ k, a: given("distance", 10) }).value).toBeCloseTo(24.477, 3);
	});

	test("a plan is surveyed at its own stations and every 100 ft between", () => {
		const stations = plannedSurvey.of({ path }).rows.map(({ md }) => md);
		expect(stations).toEqual(expect.arrayContaining([0, 8000, 9000, 17_000]));
		expect(Math.max(...stations.slice(1).map((md, i) => md - (stations[i] ?? 0)))).toBeLessThanOrEqual(100);
	});

	test("a lateral to the east errs most to north and south, and the more the longer it is", () => {
		const covariance = surveyCovariance.of({
			path: plannedSurvey.of({ path }),
			model: model.table,
			...earth,
		});
		const axis = ellipseAzimuth.of({ covariance }).value;
		expect(Math.min(axis, 180 - axis)).toBeLessThan(3);
		const northings = covariance.rows.filter(({ md }) => md > 9500).map(({ nn }) => nn);
		expect(northings).toEqual(northings.toSorted((a, b) => a - b));
		expect(ellipseMajor.of({ covariance }).value).toBeGreaterThan(3 * ellipseMinor.of({ covariance }).value);
	});

	test("across the hole the model counts its long axis, along it the short one", () => {
		const covariance = table([
			[0, 900, 4, 4],
			[17_000, 900, 4, 4],
		]);
		const beside = (N: number, E: number) =>
			movedPath.of({ path, N_w: given("offset", N), E_w: given("offset", E), ΔE_d: given("offset", 0) });
		const sigma = (N: number, E: number, turn = 0) =>
			separationByModel.of({
				path,
				other: beside(N, E),
				covariance,
				turn: given("angle", turn),
				R_r: given("length", 0.4),
				R_o: given("length", 0.4),
				σ_o: given("distance", 0),
				σ_w: given("distance", 0),
			}).rows[0]?.standard_deviation;
		expect(sigma(100, 0)).toBeCloseTo(30, 6);
		expect(sigma(0, -100)).toBeCloseTo(2, 6);
		expect(sigma(0, -100, 90)).toBeCloseTo(30, 6);
	});
});
