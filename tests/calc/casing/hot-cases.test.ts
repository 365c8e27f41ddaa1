import { describe, expect, test } from "vitest";
import type { Results } from "../../../src/calc/results.ts";
import { findingsOf, starterText, understandText } from "../../starters.ts";
import { toldPlainly } from "../../told.ts";

const production = (of: Results) =>
	Object.values(of.casing).find(({ situations }) => situations.some(({ id }) => id === "tubing-leak"));
const planned = () => production(findingsOf("horizontal").results);

const changed = (from: string, to: string) => {
	const text = starterText("horizontal");
	expect(text).toContain(from);
	const { findings, diagnostics } = understandText(text.replace(from, to));
	if (findings === undefined) throw new Error(diagnostics.map(({ code }) => code).join());
	return findings;
};

/*
 * Arithmetic of our own, written apart from the tool; no source. 5½ in 23 lb/ft, hung at 28 ft, cement from 5,400 ft, hole
 * vertical to 8,200 ft and below, foot at 8,933 ft TVD. Set with 8.4 ppg inside; outside 11.8 ppg mud, 80 bbl of 12.2 ppg
 * spacer (1,775 ft inside 8.755 in), 12.6 ppg lead to 8,200 ft and 13.8 ppg tail. Backup 0.465 psi/ft below 26 ft.
 */
const [D, d] = [5.5, 4.67];
const [bore, full] = [(Math.PI / 4) * d ** 2, (Math.PI / 4) * D ** 2];
const steel = full - bore;
const PPG = 0.0519481;
const [hanger, top, tail, foot, spacer] = [28, 5400, 8200, 8932.96, 1775];
const rock = (z: number) => 72 + 0.015 * Math.max(0, z - 26);
const setInside = (z: number) => PPG * 8.4 * z;
const setOutside = (z: number) =>
	PPG * (11.8 * Math.min(z, top - spacer) + 12.2 * Math.max(0, z - (top - spacer)));
const backup = (z: number) => 0.465 * Math.max(0, z - 26);
const cemented = setOutside(top) + PPG * (12.6 * (tail - top) + 13.8 * (foot - tail));

type At = (z: number) => number;
const forceSet = (z: number) => 23 * (foot - z) + setInside(foot) * bore - cemented * full;
/** Held at hanger and cement: the mean of ballooning and temperature between them. */
const change = (inside: At, temperature: At) => {
	const steps = 2000;
	let sum = 0;
	for (let i = 0; i < steps; i += 1) {
		const z = hanger + ((top - hanger) * (i + 0.5)) / steps;
		sum +=
			0.56 * (bore * (inside(z) - setInside(z)) - full * (backup(z) - setOutside(z))) -
			207 * steel * (temperature(z) - rock(z));
	}
	return sum / steps;
};

describe("a string over its life, by plain arithmetic", () => {
	test("treated cold it is pulled by 289 klbf at the hanger", () => {
		const treated =
			forceSet(hanger) +
			change(
				(z) => 9500 + 0.48903 * z,
				() => 72,
			);
		expect(treated / 1000).toBeCloseTo(289, -0.5);
		const load = planned()?.loads.find(({ id }) => id === "tension-stimulation")?.line.rows[0]?.["load"];
		expect(Math.abs((load ?? 0) - treated)).toBeLessThan(300);
	});

	test("leaking hot at 150 °F its effective force at the cement top is −70 klbf", () => {
		const leaking = (z: number) => 4201.5 + PPG * 8.6 * z;
		const hot = (z: number) => 150 + ((rock(foot) - 150) * z) / foot;
		const effective = forceSet(top) + change(leaking, hot) - leaking(top) * bore + backup(top) * full;
		expect(effective / 1000).toBeCloseTo(-70, -0.5);
		const leak = planned()?.situations.find(({ id }) => id === "tubing-leak-hot");
		expect(Math.abs((leak?.effective_force?.value ?? 0) - effective)).toBeLessThan(300);
		expect(leak?.effective_force_at?.md.value).toBe(top);
	});

	test("hot steel is weaker: the rating follows the producing temperature", () => {
		const rating = (id: string) =>
			planned()?.loads.find((each) => each.id === id)?.line.rows[0]?.["rating"] ?? 0;
		expect(rating("burst-shut-in-hot")).toBeLessThan(rating("burst-shut-in-gas"));
		expect(rating("burst-tubing-leak-hot")).toBeLessThan(rating("burst-tubing-leak"));
	});

	test("a wellhead as cold as the rock leaves the tubing leak as it is cold", () => {
		// 72 °F on top, straight to the rock's temperature: only the air gap's 26 ft tell the two profiles apart.
		const { results } = changed("producing_temperature: 150 degF", "producing_temperature: 72 degF");
		const loads = production(results)?.loads ?? [];
		const factor = (id: string) => loads.find((each) => each.id === id)?.least_factor?.value ?? Number.NaN;
		expect(factor("triaxial-tubing-leak-hot")).toBeCloseTo(factor("triaxial-tubing-leak"), 2);
		expect(factor("collapse-producing-hot")).toBeCloseTo(factor("collapse-drawdown"), 2);
	});
});

describe("what a hot case lacks", () => {
	const gaps = (from: string, to: string) =>
		changed(from, to)
			.results.undetermined.filter(({ key }) => key.endsWith("-hot"))
			.map(({ key, because }) => [key, toldPlainly(because)]);

	test("without a producing temperature each says so, and none is worked", () => {
		expect(gaps(", producing_temperature: 150 degF", "")).toEqual(
			["producing-hot", "shut-in-hot", "tubing-leak-hot"].map((each) => [
				`casing.production.loads.${each}`,
				"No flowing wellhead temperature is given, so the hot case is not evaluated.",
			]),
		);
	});

	test("without the rock's temperature each says so", () => {
		expect(
			gaps("  temperature: { surface: 72 degF, gradient: 1.5 degF/100 ft }\n", "").map(([, why]) => why),
		).toEqual(Array(3).fill("No formation temperature is given, so the hot case is not evaluated."));
	});
});
