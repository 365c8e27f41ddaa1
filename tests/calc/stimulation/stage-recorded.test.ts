import { describe, expect, test } from "vitest";
import {
	frictionHad,
	netAtShutIn,
	reductionHad,
	shutInGradient,
} from "../../../src/calc/stimulation/recorded-pressures.ts";
import { starterText, understandText } from "../../starters.ts";
import { given } from "../given.ts";

const psi = (value: number) => given("pressure", value);
const D = given("depth-below-ground", 8000);

describe("pressures on a stage's record", () => {
	test("with no surface pressure the gradient is that of the fluid", () => {
		expect(shutInGradient.of({ ISIP: psi(0), P_h: psi(0.433 * 8000), D }).value).toBeCloseTo(0.433, 12);
		expect(
			shutInGradient.of({ ISIP: psi(0), P_h: psi(0), D: given("depth-below-ground", 0) }).value,
		).toBeNaN();
	});

	test("shut in at closure there is no net pressure", () => {
		const G_c = given("pressure-gradient", 0.73);
		expect(netAtShutIn.of({ ISIP: psi(0.73 * 8000 - 3500), P_h: psi(3500), G_c, D }).value).toBeCloseTo(0, 9);
	});

	test("a stage pumped as clean fluid loses its average less its shut-in pressure", () => {
		const column = psi(3500);
		expect(frictionHad.of({ P_avg: psi(6900), P_hm: column, ISIP: psi(2700), P_h: column }).value).toBe(4200);
	});

	test("friction of water is no reduction, none is all of it", () => {
		const at = (friction: number) =>
			reductionHad.of({
				ΔP: given("pressure-difference", friction),
				ΔP_perf: psi(400),
				ΔP_nwb: psi(250),
				ΔP_w: psi(10_000),
			}).value;
		expect(at(10_650)).toBeCloseTo(0, 12);
		expect(at(650)).toBeCloseTo(1, 12);
		expect(at(3650)).toBeCloseTo(0.7, 12);
	});

	test("the treated starter had the reduction that it was designed for, and one stage ended early", () => {
		const { findings } = understandText(starterText("horizontal-as-built"));
		const stages = findings?.results.stimulation?.stages ?? [];
		for (const { number, recorded_pressure: found } of stages) {
			expect(found?.gradient.value, `stage ${number}`).toBeGreaterThan(0.6);
			expect(found?.gradient.value, `stage ${number}`).toBeLessThan(1);
			expect(found?.reduction_fresh?.value, `stage ${number}`).toBeGreaterThan(0.4);
			expect(found?.reduction_fresh?.value, `stage ${number}`).toBeLessThan(0.85);
			expect(found?.reduction_worn?.value).toBeLessThan(found?.reduction_fresh?.value ?? 0);
		}
		const early = findings?.well.stimulation?.stages.filter(({ actual }) => actual?.endedBy === "screen-out");
		expect(early?.map(({ number }) => number)).toEqual([17]);
	});
});
