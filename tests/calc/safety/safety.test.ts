import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { openGaps } from "../../../src/calc/gaps.ts";
import type { SiteResults } from "../../../src/calc/results.ts";
import {
	continuousRadiusDay,
	continuousRadiusNight,
	hydrogenSulfideRate,
	puffRadiusDay,
	ruleRadius100,
	ruleRadius500,
} from "../../../src/calc/safety/hydrogen-sulfide.ts";
import { safetyResults } from "../../../src/calc/safety/index.ts";
import { soundLevelAtDistance, totalSoundLevel } from "../../../src/calc/safety/noise.ts";
import { silicaTimeWeightedAverage } from "../../../src/calc/safety/silica.ts";
import type { Well } from "../../../src/well/well.ts";
import { well } from "../a-well.ts";
import { given } from "../given.ts";

const ft = (value: number) => given("distance", value);
const dBA = (value: number) => given("sound-level", value);

describe("radius of exposure to hydrogen sulfide", () => {
	const gas = fc.double({ min: 1e4, max: 1e9, noNaN: true });
	const part = (ppm: number) => given("gas-fraction", ppm);
	const scfd = (value: number) => given("gas-rate", value);

	test("by rule: only what is released counts, and 100 ppm reaches farther than 500", () => {
		fc.assert(
			fc.property(gas, fc.double({ min: 100, max: 50_000, noNaN: true }), (Q, ppm) => {
				const far = ruleRadius100.of({ MF: part(ppm), Q: scfd(Q) }).value;
				expect(ruleRadius100.of({ MF: part(ppm * 2), Q: scfd(Q / 2) }).value).toBeCloseTo(far, 6);
				expect(ruleRadius500.of({ MF: part(ppm), Q: scfd(Q) }).value).toBeLessThan(far);
				expect(ruleRadius100.of({ MF: part(ppm), Q: scfd(Q * 1.1) }).value).toBeGreaterThan(far);
			}),
		);
		expect(ruleRadius100.of({ MF: part(0), Q: scfd(1e7) }).value).toBe(0);
		// The numbers of the rule's own text (memory), written once more: of one part in a thousand in a million cubic feet a day.
		const log = (radius: number) => Math.log(radius) / 0.6258;
		const [near, far] = [ruleRadius500, ruleRadius100].map(
			(of) => of.of({ MF: part(1000), Q: scfd(1e6) }).value,
		);
		expect(Math.exp(log(far ?? 0))).toBeCloseTo(1.589 * 1000, 6);
		expect(Math.exp(log(near ?? 0))).toBeCloseTo(0.4546 * 1000, 6);
		expect(ruleRadius500.of({ MF: part(-1), Q: scfd(1e7) }).value).toBeNaN();
	});

	test("by Annex C: the night carries it farther than the day, and more gas farther than less", () => {
		fc.assert(
			fc.property(fc.double({ min: 1000, max: 1e7, noNaN: true }), (q) => {
				const day = continuousRadiusDay.of({ q: scfd(q) }).value;
				expect(continuousRadiusNight.of({ q: scfd(q) }).value).toBeGreaterThan(day);
				expect(continuousRadiusDay.of({ q: scfd(q * 1.1) }).value).toBeGreaterThan(day);
			}),
		);
		// one scf an hour: the constant of the formula itself
		expect(continuousRadiusDay.of({ q: scfd(24) }).value).toBeCloseTo(10 ** 0.45, 9);
		expect(continuousRadiusNight.of({ q: scfd(24) }).value).toBeCloseTo(10 ** 0.69, 9);
		// ten times the gas: the exponents themselves
		expect(continuousRadiusDay.of({ q: scfd(240) }).value).toBeCloseTo(10 ** (0.58 + 0.45), 9);
		expect(continuousRadiusNight.of({ q: scfd(240) }).value).toBeCloseTo(10 ** (0.66 + 0.69), 9);
		expect(continuousRadiusDay.of({ q: scfd(0) }).value).toBeNaN();
		expect(puffRadiusDay.of({ q: given("gas-volume", 0) }).value).toBeNaN();
	});

	test("the two methods differ: neither stands in for the other", () => {
		const q = hydrogenSulfideRate.of({ Q: scfd(1e7), ppm: part(5000) });
		const ratio =
			continuousRadiusDay.of({ q }).value / ruleRadius100.of({ MF: part(5000), Q: scfd(1e7) }).value;
		expect(Math.abs(ratio - 1)).toBeGreaterThan(0.3);
	});
});

describe("noise", () => {
	const level = fc.double({ min: 40, max: 120, noNaN: true });

	test("at the distance of the measurement is what was measured, and falls from there", () => {
		fc.assert(
			fc.property(level, fc.double({ min: 10, max: 5000, noNaN: true }), (L, r) => {
				const at = (far: number) => soundLevelAtDistance.of({ L_1: dBA(L), r_1: ft(r), r_2: ft(far) }).value;
				expect(at(r)).toBeCloseTo(L, 12);
				expect(at(r * 10)).toBeCloseTo(L - 20, 9);
				expect(at(r * 1.1)).toBeLessThan(L);
			}),
		);
		expect(soundLevelAtDistance.of({ L_1: dBA(90), r_1: ft(0), r_2: ft(10) }).value).toBeNaN();
	});

	test("one source alone is itself; ten alike are 10 dB more", () => {
		expect(totalSoundLevel.of({ L_i: [dBA(85)] }).value).toBeCloseTo(85, 12);
		expect(totalSoundLevel.of({ L_i: Array.from({ length: 10 }, () => dBA(85)) }).value).toBeCloseTo(95, 9);
		expect(totalSoundLevel.of({ L_i: [] }).value).toBeNaN();
	});

	const home = { id: "home", kind: "dwelling", name: "Home" };
	const place = (id: string, feet?: number) => ({
		id,
		name: id,
		...(feet === undefined ? {} : { from_wellhead: ft(feet) }),
	});
	const results = (neighbors: object[], places: object[]) => {
		const gaps = openGaps();
		const of = well([], [], {
			neighbors,
			safety: { noise: { source_level: dBA(92), at: ft(100), source: "a survey" } },
		} as unknown as Partial<Well>);
		const site = { neighbors: places, offset_wells: [] } as unknown as SiteResults;
		return { found: safetyResults(of, site, gaps), gaps: gaps.undetermined };
	};

	test("at the nearest dwelling goes by the shorter of what was surveyed and what is computed", () => {
		const surveyed = { ...home, surveyed: [{ from: "pad edge", distance: ft(1000) }] };
		expect(
			results([surveyed], [place("home", 1200)]).found?.noise_at_nearest_dwelling?.level.value,
		).toBeCloseTo(72, 9);
		expect(
			results([home], [place("home", 10_000)]).found?.noise_at_nearest_dwelling?.level.value,
		).toBeCloseTo(52, 9);
	});

	test("without a dwelling whose distance is known, it is said", () => {
		expect(results([home], [place("home")]).gaps.map((g) => g.key)).toEqual([
			"safety.noise_at_nearest_dwelling",
		]);
		expect(results([{ ...home, kind: "road" }], [place("home", 500)]).found?.noise_at_neighbors).toHaveLength(
			1,
		);
	});

	test("does not come by a distance from the hole under the ground", () => {
		const line = {
			id: "line",
			kind: "lease line",
			name: "Line",
			surveyed: [{ from: "wellbore", distance: ft(600) }],
		};
		expect(results([line], [place("line")]).found?.noise_at_neighbors).toEqual([]);
	});

	test("without a level there is nothing", () => {
		expect(safetyResults(well([], []), { neighbors: [], offset_wells: [] }, openGaps())).toBeUndefined();
	});
});

describe("silica", () => {
	test("a steady eight hours are their own average; a longer shift at it is more", () => {
		const C_i = [given("dust-concentration", 40)];
		const average = (hours: number) =>
			silicaTimeWeightedAverage.of({ C_i, t_i: [given("duration", hours * 60)] }).value;
		expect(average(8)).toBeCloseTo(40, 12);
		expect(average(12)).toBeCloseTo(60, 12);
		expect(silicaTimeWeightedAverage.of({ C_i, t_i: [] }).value).toBeNaN();
	});
});

describe("radius of exposure of a well", () => {
	const found = (gas: object) => {
		const gaps = openGaps();
		const of = well([], [], {
			safety: { hydrogen_sulfide: { expected: true, ...gas } },
		} as unknown as Partial<Well>);
		return { results: safetyResults(of, { neighbors: [], offset_wells: [] }, gaps), gaps: gaps.undetermined };
	};
	const fraction = given("gas-fraction", 5000);
	const gas_rate = given("gas-rate", 1e7);

	// 1,165 and 533 ft for 10 MMscf/d at 5,000 ppm: our own arithmetic on the rule's form.
	test("is worked by both methods, each whole, from the fraction and the rate stated", () => {
		const radii = found({ fraction, gas_rate }).results?.hydrogen_sulfide;
		expect(Math.round(radii?.rule.to_100_ppm.value ?? 0)).toBe(1165);
		expect(Math.round(radii?.rule.to_500_ppm.value ?? 0)).toBe(533);
		expect(radii?.practice.released.value).toBe(50_000);
		expect(radii?.practice.by_day.value).toBe(continuousRadiusDay.of({ q: given("gas-rate", 50_000) }).value);
		const formulas = [
			radii?.rule.to_100_ppm,
			radii?.rule.to_500_ppm,
			radii?.practice.by_day,
			radii?.practice.at_night,
		];
		expect(formulas.map((known) => known?.from.kind === "worked" && known.from.formula)).toEqual([
			"safety/h2s-radius-100-rule",
			"safety/h2s-radius-500-rule",
			"safety/h2s-radius-annex-c-day",
			"safety/h2s-radius-annex-c-night",
		]);
	});

	test("is not guessed: without a rate it is wanting, and gas that carries none has none", () => {
		expect(found({ fraction }).gaps.map(({ needs }) => needs)).toEqual([
			[["safety", "hydrogen_sulfide", "gas_rate"]],
		]);
		expect(found({ fraction: given("gas-fraction", 0), gas_rate })).toEqual({ results: undefined, gaps: [] });
		expect(found({ gas_rate }).results).toBeUndefined();
	});
});
