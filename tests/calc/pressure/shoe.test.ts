import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	kickHeight,
	kickLength,
	kickTolerance,
	kickToleranceFactor,
	kickVolumeAtBottom,
	kickVolumeAtShoe,
} from "../../../src/calc/pressure/kick-tolerance.ts";
import {
	adjustedAnnulusPressure,
	leakOffEquivalent,
	maximumAnnulusPressure,
	shoeTestSurfacePressure,
	weightUpSacks,
} from "../../../src/calc/pressure/shoe-strength.ts";
import { given } from "../given.ts";

const rho = (value: number) => given("density", value);
const tvd = (value: number) => given("true-vertical-depth", value);
const shoe = fc.double({ min: 200, max: 15_000, noNaN: true });
const mud = fc.double({ min: 8, max: 15, noNaN: true });
const above = fc.double({ min: 0, max: 5, noNaN: true });

describe("shoe tests", () => {
	test("the pressure a test asks for gives back its equivalent, and is the most the annulus may hold", () => {
		fc.assert(
			fc.property(shoe, mud, above, (deep, m, more) => {
				const [D_shoe, ρ, EMW] = [tvd(deep), rho(m), rho(m + more)];
				const P_s = shoeTestSurfacePressure.of({ EMW, ρ, D_shoe });
				expect(leakOffEquivalent.of({ ρ, P_s, D_shoe }).value).toBeCloseTo(m + more, 9);
				expect(maximumAnnulusPressure.of({ EMW, ρ, D_shoe }).value).toBeCloseTo(P_s.value, 9);
			}),
		);
	});

	test("heavier mud leaves the annulus less, by what the handbook takes off", () => {
		fc.assert(
			fc.property(shoe, mud, fc.double({ min: 1, max: 5, noNaN: true }), (deep, m, more) => {
				const D_shoe = tvd(deep);
				const most = (ρ: number) => maximumAnnulusPressure.of({ EMW: rho(m + more), ρ: rho(ρ), D_shoe });
				const adjusted = adjustedAnnulusPressure.of({ P_L: most(m), D_shoe, ρ_1: rho(m), ρ_2: rho(m + 0.5) });
				expect(adjusted.value).toBeCloseTo(most(m + 0.5).value, 7);
				expect(most(m + 0.5).value).toBeLessThan(most(m).value);
			}),
		);
	});

	test("mud beyond the shoe's strength leaves nothing, and says so", () => {
		const most = maximumAnnulusPressure.of({ EMW: rho(10), ρ: rho(11), D_shoe: tvd(2000) });
		expect(most.value).toBe(0);
		expect(most.from).toMatchObject({ branch: "the shoe cannot hold the mud itself" });
		expect(shoeTestSurfacePressure.of({ EMW: rho(10), ρ: rho(11), D_shoe: tvd(2000) }).value).toBeNaN();
	});

	test("barite mixed in makes the density asked for: 100 lb sacks of 35 lb/gal into 4,200 gal", () => {
		fc.assert(
			fc.property(mud, fc.double({ min: 0, max: 3, noNaN: true }), (m, more) => {
				const n = weightUpSacks.of({ W_1: rho(m), W_2: rho(m + more) }).value;
				expect((4200 * m + 100 * n) / (4200 + (100 * n) / 35)).toBeCloseTo(m + more, 6);
			}),
		);
		expect(weightUpSacks.of({ W_1: rho(12), W_2: rho(11) }).value).toBeNaN();
		expect(weightUpSacks.of({ W_1: rho(12), W_2: rho(35) }).value).toBeNaN();
	});
});

describe("kick tolerance", () => {
	const kick = (FG: number, more: { KI?: number; td?: number } = {}) =>
		kickHeight.of({
			FG: rho(FG),
			ρ: rho(10),
			KI: rho(more.KI ?? 0.5),
			g: given("pressure-gradient", 0.1),
			D_shoe: tvd(6000),
			D_td: tvd(more.td ?? 10_000),
		});

	test("with the bubble's top at the shoe, the shoe holds exactly its strength", () => {
		const h = kick(14).value;
		const formation = 0.052 * 10.5 * 10_000;
		const atShoe = formation - 0.052 * 10 * (10_000 - 6000 - h) - 0.1 * h;
		expect(atShoe).toBeCloseTo(0.052 * 14 * 6000, 6);
	});

	test("a stronger shoe holds more, a harder kick less", () => {
		expect(kick(14.2).value).toBeGreaterThan(kick(14).value);
		expect(kick(14, { KI: 0.7 }).value).toBeLessThan(kick(14).value);
	});

	test("it is never less than nothing nor more than the open hole", () => {
		expect(kick(10.1).value).toBe(0);
		expect(kick(10.1).from).toMatchObject({ branch: "no influx is held" });
		expect(kick(20).value).toBe(4000);
		expect(kick(20).from).toMatchObject({ branch: "the whole open hole" });
		expect(kick(14, { td: 5000 }).value).toBeNaN();
	});

	test("an influx at the pressure of the shoe takes as much room below", () => {
		const volume = kickVolumeAtBottom.of({
			V_shoe: given("volume", 50),
			FG: rho(10.5),
			ρ: rho(10),
			KI: rho(0.5),
			D_shoe: tvd(8000),
			D_td: tvd(8000),
		});
		expect(volume.value).toBeCloseTo(50, 12);
	});

	test("the lesser of the two volumes governs, and says which", () => {
		const of = (V_td: number) =>
			kickTolerance.of({
				h: given("length", 1000),
				C_bit: given("capacity", 0.05),
				V_td: given("volume", V_td),
			});
		expect(of(80)).toMatchObject({ value: 50, from: { branch: "limited with the influx at the bit" } });
		expect(of(30)).toMatchObject({ value: 30, from: { branch: "limited when the influx reaches the shoe" } });
		expect(kickVolumeAtShoe.of({ h: given("length", 1000), C: given("capacity", 0.05) }).value).toBe(50);
	});

	test("a slanting hole holds a longer influx, a level one has no such length", () => {
		const length = (I: number) => kickLength.of({ h: given("length", 100), I: given("angle", I) }).value;
		expect(length(0)).toBe(100);
		expect(length(60)).toBeCloseTo(200, 9);
		expect(length(90)).toBeNaN();
	});

	test("without any influx the factor is the whole margin where the well ends at the shoe", () => {
		const factor = (D_td: number) =>
			kickToleranceFactor.of({ D_shoe: tvd(5000), D_td: tvd(D_td), ρ_max: rho(13), ρ: rho(10) }).value;
		expect(factor(5000)).toBeCloseTo(3, 12);
		expect(factor(10_000)).toBeCloseTo(1.5, 12);
		expect(factor(4000)).toBeNaN();
	});
});
