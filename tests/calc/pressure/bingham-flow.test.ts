import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	annulusEffectiveViscosity,
	annulusFrictionGradient,
	annulusReynolds,
	annulusVelocity,
	CRITICAL_REYNOLDS,
	equivalentCirculatingDensity,
	frictionLoss,
	pipeEffectiveViscosity,
	pipeFrictionGradient,
	pipeReynolds,
	pipeVelocity,
	totalLoss,
} from "../../../src/calc/pressure/bingham-flow.ts";
import { given } from "../given.ts";

const inches = (value: number) => given("diameter", value);
const fluid = fc.record({
	ρ: fc.double({ min: 8, max: 17, noNaN: true }).map((v) => given("density", v)),
	PV: fc.double({ min: 3, max: 80, noNaN: true }).map((v) => given("plastic-viscosity", v)),
	YP: fc.double({ min: 0, max: 40, noNaN: true }).map((v) => given("yield-point", v)),
});
const rate = fc.double({ min: 0.05, max: 30, noNaN: true });
const bore = inches(4.276);
const ring = { D: inches(8.5), d: inches(5) };

describe("Bingham flow", () => {
	test("faster never loses less, across the turn from laminar to turbulent too", () => {
		fc.assert(
			fc.property(fluid, rate, fc.double({ min: 1.001, max: 3, noNaN: true }), (of, Q, faster) => {
				const inPipe = (q: number) =>
					pipeFrictionGradient.of({ ...of, Q: given("flow-rate", q), d: bore }).value;
				const inRing = (q: number) =>
					annulusFrictionGradient.of({ ...of, Q: given("flow-rate", q), ...ring }).value;
				expect(inPipe(Q * faster)).toBeGreaterThanOrEqual(inPipe(Q));
				expect(inRing(Q * faster)).toBeGreaterThanOrEqual(inRing(Q));
			}),
		);
	});

	test("the regime is the Reynolds number's, with the effective viscosity", () => {
		fc.assert(
			fc.property(fluid, rate, (of, q) => {
				const Q = given("flow-rate", q);
				const v = pipeVelocity.of({ Q, d: bore });
				const μ = pipeEffectiveViscosity.of({ PV: of.PV, YP: of.YP, d: bore, v });
				const laminar = pipeReynolds.of({ ρ: of.ρ, v, d: bore, μ }).value < CRITICAL_REYNOLDS;
				const { from } = pipeFrictionGradient.of({ ...of, Q, d: bore });
				expect(from.kind === "worked" && from.branch === "laminar").toBe(laminar);
			}),
		);
	});

	// Bourgoyne, Millheim, Chenevert and Young, Applied Drilling Engineering, SPE (1986), ch. 4: 2,100 in oilfield practice. From memory.
	test("flow turns turbulent at a Reynolds number of 2,100", () => {
		expect(CRITICAL_REYNOLDS).toBe(2100);
	});

	test("the effective viscosity is the Newtonian one of the same laminar loss", () => {
		fc.assert(
			fc.property(fluid, fc.double({ min: 0.01, max: 0.3, noNaN: true }), (of, q) => {
				const Q = given("flow-rate", q);
				const [vp, va] = [pipeVelocity.of({ Q, d: bore }), annulusVelocity.of({ Q, ...ring })];
				const inPipe = pipeEffectiveViscosity.of({ PV: of.PV, YP: of.YP, d: bore, v: vp }).value;
				const inRing = annulusEffectiveViscosity.of({ PV: of.PV, YP: of.YP, ...ring, v: va }).value;
				const gap = ring.D.value - ring.d.value;
				const lossInPipe =
					(of.PV.value * vp.value) / (1500 * bore.value ** 2) + of.YP.value / (225 * bore.value);
				const lossInRing = (of.PV.value * va.value) / (1000 * gap ** 2) + of.YP.value / (200 * gap);
				// 6.65 is the textbook's 1500/225 = 6.667, rounded.
				expect((inPipe * vp.value) / (1500 * bore.value ** 2) / lossInPipe).toBeCloseTo(1, 2);
				expect((inRing * va.value) / (1000 * gap ** 2) / lossInRing).toBeCloseTo(1, 9);
			}),
		);
	});

	test("a fluid without yield point is as thick as its plastic viscosity", () => {
		const [PV, YP] = [given("plastic-viscosity", 20), given("yield-point", 0)];
		const v = given("fluid-velocity", 3);
		expect(pipeEffectiveViscosity.of({ PV, YP, d: bore, v }).value).toBe(20);
		expect(annulusEffectiveViscosity.of({ PV, YP, ...ring, v }).value).toBe(20);
	});

	test("at rest nothing is lost; outside the slot form nothing is told", () => {
		const of = { ρ: given("density", 10), PV: given("plastic-viscosity", 20), YP: given("yield-point", 10) };
		const Q = given("flow-rate", 0);
		expect(annulusFrictionGradient.of({ ...of, Q, ...ring })).toMatchObject({
			value: 0,
			from: { branch: "at rest" },
		});
		expect(pipeFrictionGradient.of({ ...of, Q, d: bore }).value).toBe(0);
		const wide = { D: inches(20), d: inches(5) };
		expect(annulusFrictionGradient.of({ ...of, Q: given("flow-rate", 5), ...wide }).value).toBeNaN();
		expect(annulusReynolds.of({ ρ: of.ρ, v: given("fluid-velocity", 1), ...wide, μ: of.PV }).value).toBeNaN();
	});

	test("losses add up, and over the depth they are density", () => {
		const G = given("pressure-gradient", 0.02);
		const ΔP = totalLoss.of({
			ΔP_i: [
				frictionLoss.of({ G, L: given("length", 5000) }),
				frictionLoss.of({ G, L: given("length", 5400) }),
			],
		});
		expect(ΔP.value).toBeCloseTo(208, 9);
		const D = given("true-vertical-depth", 8000);
		expect(equivalentCirculatingDensity.of({ ρ: given("density", 10), ΔP, D }).value).toBeCloseTo(10.5, 9);
	});
});
