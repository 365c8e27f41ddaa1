import { describe, expect, test } from "vitest";
import { kgdGrowth, kgdLength, kgdPressure } from "../../../src/calc/stimulation/kgd.ts";
import {
	kgdLeakingLength,
	kgdNetPressure,
	netPressureOfWidth,
	pknLeakingLength,
	planarEfficiency,
	radialEfficiency,
	radialLeakingRadius,
	radialMeanWidth,
	radialNetPressure,
	radialWidthAtRadius,
} from "../../../src/calc/stimulation/leaking-fracture.ts";
import {
	pknGrowthConstantRate,
	pknLengthConstantRate,
	pknPressureConstantRate,
	pknWidthConstantRate,
} from "../../../src/calc/stimulation/pkn.ts";
import { radialRadius, radialWidth } from "../../../src/calc/stimulation/radial.ts";
import type { Well } from "../../../src/well/well.ts";
import { toldPlainly } from "../../told.ts";
import { given } from "../given.ts";
import { geology, planned, results } from "./a-stimulation.ts";

const rock = {
	q: given("flow-rate", 6),
	μ: given("plastic-viscosity", 2),
	"E'": given("pressure", 4.5e6),
	t: given("duration", 100),
};
const h = given("length", 160);
const tight = given("leakoff", 1e-9);
const leaky = given("leakoff", 0.001);

describe("one fracture with leakoff", () => {
	test("as the rock grows tight, each model goes to its published length without leakoff", () => {
		const near = (found: { readonly value: number }, due: { readonly value: number }) =>
			expect(Math.abs(found.value / due.value - 1)).toBeLessThan(0.005);
		near(pknLeakingLength.of({ ...rock, h, C: tight }), pknLengthConstantRate.of({ ...rock, h }));
		near(kgdLeakingLength.of({ ...rock, h, C: tight }), kgdLength.of({ ...rock, h }));
		near(radialLeakingRadius.of({ ...rock, C: tight }), radialRadius.of(rock));
	});

	test("and all that went in is still there", () => {
		const { q, t } = rock;
		const x_f = pknLeakingLength.of({ ...rock, h, C: tight });
		const w = pknWidthConstantRate.of({ ...rock, x_f });
		expect(planarEfficiency.of({ x_f, h, w, q, t }).value).toBeCloseTo(1, 4);
		const R = radialLeakingRadius.of({ ...rock, C: tight });
		const mean = radialMeanWidth.of({ w_0: radialWidthAtRadius.of({ ...rock, R }) });
		expect(radialEfficiency.of({ R, w: mean, q, t }).value).toBeCloseTo(1, 4);
	});

	test("the radial width at a radius is the published one in time", () => {
		const R = radialRadius.of(rock);
		expect(radialWidthAtRadius.of({ ...rock, R }).value / radialWidth.of(rock).value).toBeCloseTo(1, 9);
	});

	test("net pressure from the width is the published law of net pressure, to its printed digits", () => {
		const E = { "E'": rock["E'"] };
		const mean = (inches: { readonly value: number }, part: number) => given("diameter", inches.value * part);
		const pkn = netPressureOfWidth.of({ ...E, w: mean(pknGrowthConstantRate.of({ ...rock, h }), 0.628), h });
		expect(pkn.value / pknPressureConstantRate.of({ ...rock, h }).value).toBeCloseTo(1, 2);
		const x_f = kgdLength.of({ ...rock, h });
		const kgd = kgdNetPressure.of({ ...E, w: mean(kgdGrowth.of({ ...rock, h }), Math.PI / 4), x_f });
		expect(Math.abs(kgd.value / kgdPressure.of(rock).value - 1)).toBeLessThan(0.006);
		// A disk: p = π E' w_0 / (8 R), so that with w = 8/15 w_0 the two factors undo each other.
		const w_0 = radialWidth.of(rock);
		const R = radialRadius.of(rock);
		const disk = radialNetPressure.of({ ...E, w: radialMeanWidth.of({ w_0 }), R });
		expect(disk.value).toBeCloseTo((Math.PI * 4.5e6 * (w_0.value / 12)) / (8 * R.value), 6);
	});

	test("leakoff shortens every one of them", () => {
		for (const of of [pknLeakingLength.of, kgdLeakingLength.of])
			expect(of({ ...rock, h, C: leaky }).value).toBeLessThan(of({ ...rock, h, C: tight }).value);
		expect(radialLeakingRadius.of({ ...rock, C: leaky }).value).toBeLessThan(
			radialLeakingRadius.of({ ...rock, C: tight }).value,
		);
	});
});

describe("the range of models", () => {
	const [cap, pay] = geology.formations;
	const stiff = {
		...geology,
		protectedWater: { base: given("true-vertical-depth", 1000) },
	} as Well["geology"];
	const range = results(planned(), { geology: stiff }).found?.fractures;

	test("has every model, the shallowest top of them, and the rock to protected water", () => {
		expect(range?.models.map(({ id }) => id)).toEqual(["pkn", "kgd", "pkn-grown", "radial"]);
		const tops = range?.models.map(({ top }) => top.value) ?? [];
		expect(range?.highest_top.value).toBe(Math.min(...tops));
		expect(range?.least_below_protected_water?.value).toBeCloseTo(Math.min(...tops) - 1000, 9);
		const radial = range?.models.find(({ id }) => id === "radial");
		expect(radial?.height.value).toBeCloseTo(2 * (radial?.half_length.value ?? 0), 9);
	});

	test("each cluster takes an even share in two wings", () => {
		const q = range?.models[0]?.half_length.from;
		const wing = q?.kind === "worked" ? q.inputs["q"] : undefined;
		expect(wing !== undefined && "value" in wing ? wing.value : undefined).toBeCloseTo(60 / 3 / 2, 9);
	});

	test("names what is not given of the rock or the fluid, and where it is written", () => {
		const { closure, stressContrast } = pay?.mechanical ?? {};
		const soft = { ...geology, formations: [cap, { ...pay, mechanical: { closure, stressContrast } }] };
		const { found, gaps } = results(planned(), { geology: soft as unknown as Well["geology"] });
		expect(found?.fractures).toBeUndefined();
		expect(gaps).toHaveLength(1);
		expect(toldPlainly(gaps[0]?.because)).toBe(
			"The fracture models need the Young's modulus of the Pay, the Poisson's ratio of the Pay and the leakoff of the Pay.",
		);
		expect(gaps[0]?.needs.map((at) => at.join("."))).toEqual(
			["youngs_modulus", "poissons_ratio", "leakoff"].map((key) => `geology.formations.1.mechanical.${key}`),
		);
	});
});
