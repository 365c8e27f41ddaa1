import { describe, expect, test } from "vitest";
import {
	channelIndex,
	densityStep,
	frictionStep,
	greatestIndex,
	narrowSideDrive,
	turbulentRate,
} from "../../../src/calc/cement/mud-removal.ts";
import {
	annulusEffectiveViscosity,
	annulusReynolds,
	annulusVelocity,
} from "../../../src/calc/pressure/bingham-flow.ts";
import { starterText, understandText } from "../../starters.ts";
import { given } from "../given.ts";

const ppg = (value: number) => given("density", value);
const grade = (value: number) => given("pressure-gradient", value);

describe("mud removal", () => {
	test("one fluid behind itself is no step", () => {
		expect(densityStep.of({ x_1: ppg(10), x_2: ppg(10) }).value).toBe(0);
		expect(densityStep.of({ x_1: ppg(10), x_2: ppg(11) }).value).toBeCloseTo(0.1, 12);
		expect(frictionStep.of({ x_1: grade(0.01), x_2: grade(0.01) }).value).toBe(0);
		expect(frictionStep.of({ x_1: grade(0), x_2: grade(0.01) }).value).toBeNaN();
	});

	test("buoyancy helps in steep hole and not in level hole", () => {
		const at = (I: number) =>
			narrowSideDrive.of({
				G_2: grade(0.01),
				ρ_1: ppg(10),
				ρ_2: ppg(12),
				I: given("angle", I),
				G_y: grade(0.01),
			}).value;
		expect(at(90)).toBeCloseTo(1, 12);
		expect(at(0)).toBeCloseTo(1 + (0.052 * 2) / 0.01, 9);
	});

	test("at the turbulent rate the Reynolds number is critical", () => {
		const [D, d] = [given("diameter", 9.875), given("diameter", 7.625)];
		const [PV, YP] = [given("plastic-viscosity", 20), given("yield-point", 12)];
		const Q = turbulentRate.of({ ρ: ppg(10.5), PV, YP, D, d });
		const v = annulusVelocity.of({ Q, D, d });
		const μ = annulusEffectiveViscosity.of({ PV, YP, D, d, v });
		expect(annulusReynolds.of({ ρ: ppg(10.5), v, D, d, μ }).value).toBeCloseTo(2100, 6);
	});

	test("each criterion that is missed counts once, and turbulence leaves the standoff", () => {
		const index = (x_ρ: number, x_G: number, drive: number, S: number, Q = 5) =>
			channelIndex.of({
				x_ρ: given("share", x_ρ),
				x_G: given("share", x_G),
				drive: given("ratio", drive),
				S: given("share", S),
				Q: given("flow-rate", Q),
				Q_t: given("flow-rate", 10),
			});
		expect(index(0.1, 0.2, 1, 0.7).value).toBe(0);
		expect(index(0.09, 0.2, 1, 0.7).value).toBe(1);
		expect(index(0.09, 0.19, 0.9, 0.69).value).toBe(4);
		expect(index(0, 0, 0, 0.7, 10).value).toBe(0);
		expect(greatestIndex.of({ n_i: [index(0, 0, 1, 1), index(0, 0, 0, 0)] }).value).toBe(4);
	});

	test("the starters have a profile to the shoe, lowest where the hole leans and nothing holds the pipe", () => {
		const { findings } = understandText(starterText("horizontal-as-built"));
		for (const { id, standoff_profile: stations, mud_removal: pairs } of Object.values(
			findings?.results.cement ?? {},
		)) {
			if (id === "conductor") continue;
			const shoe = findings?.well.strings.find((string) => string.id === id)?.shoe.value;
			expect(stations.at(-1)?.at.md.value, id).toBeCloseTo(shoe ?? 0, 6);
			expect(pairs.length, id).toBeGreaterThan(0);
			for (const { index } of pairs) expect(index.value).toBeLessThanOrEqual(4);
		}
	});
});
