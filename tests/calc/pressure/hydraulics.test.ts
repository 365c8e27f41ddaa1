import { describe, expect, test } from "vitest";
import { drillPipeFoot } from "../../../src/calc/casing/drill-string.ts";
import { annulusFrictionGradient } from "../../../src/calc/pressure/bingham-flow.ts";
import { annulusYieldFriction, yieldGradient } from "../../../src/calc/pressure/herschel-bulkley.ts";
import {
	columnDensityAt,
	loadedDensity,
	movingColumn,
	rateOfVelocity,
	swabbedColumn,
} from "../../../src/calc/pressure/moving-pipe.ts";
import {
	plasticViscosityOfReadings,
	yieldPointOfReadings,
	yieldStress,
} from "../../../src/calc/pressure/rheometer.ts";
import { minimumCurvaturePath } from "../../../src/calc/trajectory/path.ts";
import { given, stationTable } from "../given.ts";

const lateral = minimumCurvaturePath.of({
	stations: stationTable([
		[0, 0, 0],
		[8000, 0, 0],
		[9000, 90, 0],
		[17_000, 90, 0],
	]),
	TD: given("measured-depth", 0),
	Avs: given("angle", 0),
});

describe("fluid in an annulus", () => {
	const mud = { τ_y: 5, n: 0.86, k: 0.127, ρ: 11.8 };

	test("friction of a Herschel–Bulkley fluid never falls where the flow turns", () => {
		const losses = Array.from({ length: 120 }, (_, i) => {
			const found = yieldGradient(mud, 0.25 * (i + 1), 3.5, 1);
			return typeof found === "number" ? found : found.value;
		});
		expect(losses).toEqual(losses.toSorted((a, b) => a - b));
	});

	test("500 gal/min in the production hole: about 12.6 lb/gal by Bingham, somewhat less by the readings", () => {
		const annuli = [
			{ D: 8.755, d: 5, L: 6480 },
			{ D: 8.5, d: 5, L: 10_600 },
			{ D: 8.5, d: 6.5, L: 180 },
		];
		const shared = { ρ: given("density", 11.8), Q: given("flow-rate", 500 / 42) };
		const ecd = (gradient: (D: number, d: number) => number) =>
			11.8 + annuli.reduce((sum, { D, d, L }) => sum + gradient(D, d) * L, 0) / (0.052 * 8933);
		const bingham = ecd(
			(D, d) =>
				annulusFrictionGradient.of({
					...shared,
					PV: given("plastic-viscosity", 22),
					YP: given("yield-point", 10),
					D: given("diameter", D),
					d: given("diameter", d),
				}).value,
		);
		const read = ecd(
			(D, d) =>
				annulusYieldFriction.of({
					...shared,
					τ_y: given("yield-point", 5),
					n: given("ratio", 0.8593),
					k: given("ratio", 0.127),
					D: given("diameter", D),
					d: given("diameter", d),
				}).value,
		);
		expect(bingham).toBeGreaterThan(12.5);
		expect(bingham).toBeLessThan(12.8);
		expect(read).toBeCloseTo(12.49, 1);
	});

	test("a fluid that moves adds its friction, along a lateral too; pulled pipe takes it", () => {
		const ρ = loadedDensity.of({ ρ: given("density", 9.9), Δρ: given("density", 0.1) });
		const column = {
			path: lateral,
			ρ,
			MD_bottom: [given("measured-depth", 6000), given("measured-depth", 17_000)],
			G: [given("pressure-gradient", 0.01), given("pressure-gradient", 0.02)],
		};
		const [run, pulled] = [movingColumn.of(column), swabbedColumn.of(column)];
		const tvd = 8000 + (1000 * 2) / Math.PI;
		expect(ρ.value).toBeCloseTo(10, 9);
		expect(run.rows.at(-1)?.pressure).toBeCloseTo(0.052 * 10 * tvd + 60 + 220, 3);
		expect(pulled.rows.at(-1)?.pressure).toBeCloseTo(0.052 * 10 * tvd - 60 - 220, 3);
		const at = (md: number) => columnDensityAt.of({ column: run, MD: given("measured-depth", md) }).value;
		expect(at(17_000)).toBeCloseTo(10 + 280 / (0.052 * tvd), 6);
		expect(at(17_000) - at(9000)).toBeCloseTo(160 / (0.052 * tvd), 6);
		const v = given("fluid-velocity", 17.157);
		expect(
			rateOfVelocity.of({ v, D: given("diameter", 2), d: given("diameter", Math.sqrt(3)) }).value,
		).toBeCloseTo(1, 3);
	});

	test("a Newtonian fluid reads twice as much at twice the speed, and has no yield", () => {
		const [R_600, R_300, R_6, R_3] = [
			given("ratio", 200),
			given("ratio", 100),
			given("ratio", 2),
			given("ratio", 1),
		];
		expect(plasticViscosityOfReadings.of({ R_600, R_300 }).value).toBe(100);
		expect(yieldPointOfReadings.of({ R_600, R_300 }).value).toBe(0);
		expect(yieldStress.of({ R_6, R_3 }).value).toBe(0);
	});

	test("collars stand below the pipe", () => {
		expect(
			drillPipeFoot.of({ MD: given("measured-depth", 1000), L_collars: given("length", 180) }).value,
		).toBe(820);
		expect(
			drillPipeFoot.of({ MD: given("measured-depth", 100), L_collars: given("length", 180) }).value,
		).toBe(0);
	});
});
