import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	colebrookFrictionFactor,
	dragReduction,
	pipeFriction,
	reducedFrictionFactor,
	reynoldsNumber,
	smoothFrictionFactor,
	virkFrictionFactor,
} from "../../../src/calc/stimulation/pipe-friction.ts";
import { given } from "../given.ts";

const ratio = (value: number) => given("ratio", value);
const turbulent = fc.double({ min: 4000, max: 5e7, noNaN: true });
const d = given("diameter", 4.67);
const rough = (ε: number, Re: number) =>
	colebrookFrictionFactor.of({ Re: ratio(Re), ε: given("diameter", ε), d }).value;

describe("friction factors", () => {
	test("each satisfies the equation that it solves", () => {
		fc.assert(
			fc.property(turbulent, fc.double({ min: 0, max: 0.05, noNaN: true }), (Re, ε) => {
				const smooth = smoothFrictionFactor.of({ Re: ratio(Re) }).value;
				expect(1 / Math.sqrt(smooth)).toBeCloseTo(4 * Math.log10(Re * Math.sqrt(smooth)) - 0.4, 8);
				const f = rough(ε, Re);
				expect(1 / Math.sqrt(f)).toBeCloseTo(
					-4 * Math.log10(ε / (3.7065 * 4.67) + 1.2613 / (Re * Math.sqrt(f))),
					8,
				);
				const virk = virkFrictionFactor.of({ Re: ratio(Re) }).value;
				expect(1 / Math.sqrt(virk)).toBeCloseTo(19 * Math.log10(Re * Math.sqrt(virk)) - 32.4, 8);
			}),
		);
	});

	test("without roughness Colebrook's is the smooth pipe's, to the rounding of its constant", () => {
		fc.assert(
			fc.property(turbulent, (Re) => {
				expect(rough(0, Re) / smoothFrictionFactor.of({ Re: ratio(Re) }).value).toBeCloseTo(1, 2);
			}),
		);
	});

	test("rougher pipe rubs more, faster flow has the smaller factor", () => {
		fc.assert(
			fc.property(turbulent, fc.double({ min: 0, max: 0.02, noNaN: true }), (Re, ε) => {
				expect(rough(ε + 0.001, Re)).toBeGreaterThan(rough(ε, Re));
				expect(rough(ε, Re * 1.5)).toBeLessThanOrEqual(rough(ε, Re));
			}),
		);
	});

	test("the asymptote of drag reduction lies below every pipe of the chart", () => {
		fc.assert(
			fc.property(turbulent, (Re) => {
				expect(virkFrictionFactor.of({ Re: ratio(Re) }).value).toBeLessThan(rough(0, Re));
			}),
		);
	});

	test("at a million the power law that stands in for it elsewhere is more than two times too low", () => {
		expect(virkFrictionFactor.of({ Re: ratio(2e6) }).value / (0.59 * 2e6 ** -0.58)).toBeGreaterThan(2);
	});

	test("laminar flow is sixteen over Re, rough or smooth", () => {
		expect(rough(0.002, 1000)).toBeCloseTo(0.016, 12);
		expect(smoothFrictionFactor.of({ Re: ratio(1000) }).value).toBeCloseTo(0.016, 12);
	});

	test("outside their validity they give nothing", () => {
		expect(rough(1, 1e5)).toBeNaN();
		expect(rough(0.001, 0)).toBeNaN();
		expect(virkFrictionFactor.of({ Re: ratio(2000) }).value).toBeNaN();
	});
});

describe("drag reduction", () => {
	const reduced = (DR: number, f_v = 0.0004) =>
		reducedFrictionFactor.of({ f_w: ratio(0.004), DR: given("share", DR), f_v: ratio(f_v) });

	test("is taken off water's, until the asymptote holds it", () => {
		expect(reduced(0).value).toBe(0.004);
		expect(reduced(0.75).value).toBeCloseTo(0.001, 12);
		expect(reduced(0.75).from).toMatchObject({ branch: "as stated" });
		expect(reduced(0.95).value).toBe(0.0004);
		expect(reduced(0.95).from).toMatchObject({ branch: "held at the maximum drag reduction asymptote" });
		expect(reduced(1).value).toBeNaN();
	});

	test("is what two pressures show", () => {
		const p = (value: number) => given("pressure", value);
		expect(dragReduction.of({ ΔP: p(25), ΔP_w: p(100) }).value).toBe(0.75);
		expect(dragReduction.of({ ΔP: p(25), ΔP_w: p(0) }).value).toBeNaN();
	});

	test("friction goes by length, and by rate squared for one factor", () => {
		const of = { f: ratio(0.004), ρ: given("density", 8.4), d };
		const loss = (Q: number, L: number) =>
			pipeFriction.of({ ...of, Q: given("flow-rate", Q), L: given("length", L) }).value;
		expect(loss(80, 2000) / loss(80, 1000)).toBeCloseTo(2, 12);
		expect(loss(80, 1000) / loss(40, 1000)).toBeCloseTo(4, 12);
		const still = given("plastic-viscosity", 0);
		expect(reynoldsNumber.of({ ρ: of.ρ, Q: given("flow-rate", 1), d, μ: still }).value).toBeNaN();
	});
});
