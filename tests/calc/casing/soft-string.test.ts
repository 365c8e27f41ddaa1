import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { hangingForce } from "../../../src/calc/casing/loads/axial-force.ts";
import {
	hookLoadFree,
	hookLoadPulledGreatest,
	hookLoadPulledLeast,
	hookLoads,
} from "../../../src/calc/casing/loads/hook-loads.ts";
import { loadSections, loadSectionsOf } from "../../../src/calc/casing/loads/load-sections.ts";
import { pressureProfile, uniformPressure } from "../../../src/calc/casing/loads/profiles.ts";
import { slackOffHookLoad } from "../../../src/calc/casing/loads/slack-off.ts";
import { laidOut, pulledForce, slidingForce } from "../../../src/calc/casing/loads/soft-string.ts";
import { minimumCurvaturePath } from "../../../src/calc/trajectory/path.ts";
import type { KnownTable } from "../../../src/cite/known.ts";
import { given, stationTable } from "../given.ts";

const D = 5.5;
const t = 0.415;
const steel = Math.PI * (D - t) * t;

const pathOf = (rows: readonly (readonly [number, number, number])[]) =>
	minimumCurvaturePath.of({
		stations: stationTable(rows),
		TD: given("measured-depth", 0),
		Avs: given("angle", 0),
	});

const sectionsOf = (runs: readonly (readonly [top: number, bottom: number, w: number])[]) =>
	loadSections.of({
		top: runs.map(([top]) => given("measured-depth", top)),
		bottom: runs.map(([, bottom]) => given("measured-depth", bottom)),
		D: runs.map(() => given("diameter", D)),
		t: runs.map(() => given("diameter", t)),
		Y_p: runs.map(() => given("pressure", 110_000)),
		w: runs.map(([, , w]) => given("linear-weight", w)),
		P_pipe: runs.map(() => given("pressure", 14_000)),
		P_connection: runs.map(() => given("pressure", 12_000)),
		P_c: runs.map(() => given("pressure", 14_500)),
		F_pipe: runs.map(() => given("force", 729_000)),
		F_connection: runs.map(() => given("force", 724_000)),
		wear: given("share", 0),
	});

const air = uniformPressure.of({ p: given("pressure", 0) });
const mud = (ppg: number) =>
	pressureProfile.of({
		p_0: given("pressure", 0),
		D_0: given("true-vertical-depth", 0),
		g: [given("pressure-gradient", 0.052 * ppg)],
		D_bottom: [given("true-vertical-depth", 10_000)],
	});

interface Slide {
	readonly path: KnownTable;
	readonly sections: KnownTable;
	readonly fluid?: KnownTable;
	readonly cased?: number;
	readonly on: number;
	readonly rock?: number;
}

const slide = ({ path, sections, fluid = air, cased = 0, on, rock = on }: Slide) => ({
	path,
	sections,
	inside: fluid,
	outside: fluid,
	MD_cased: given("measured-depth", cased),
	μ_cased: given("ratio", on),
	μ_open: given("ratio", rock),
	MD_collar: [],
});

/** Let down, whatever its sign: pipe that nothing coils. */
const inOf = (given_: Slide, on = given_.on): number => {
	const all = slide({ ...given_, on });
	const laid = laidOut(all.path, loadSectionsOf(all.sections), all.MD_cased.value, []);
	return (
		slidingForce(laid, {
			...all,
			MD_cased: all.MD_cased.value,
			MD_collar: [],
			μ_cased: on,
			μ_open: on,
			way: -1,
		})[0]?.force ?? Number.NaN
	);
};

const hookOf = (given_: Slide): number => pulledForce.of(slide(given_)).rows[0]?.force ?? Number.NaN;

const bottomOf = (given_: Slide & { readonly least?: number }) => {
	const { μ_cased, μ_open, ...rest } = slide(given_);
	const least = given("ratio", given_.least ?? 0);
	const hook_loads = hookLoads.of({ ...rest, μ_cased: [least, μ_cased], μ_open: [least, μ_open] });
	return {
		free: hookLoadFree.of({ hook_loads }).value,
		inLeast: inOf(given_, given_.least ?? 0),
		inGreatest: inOf(given_),
		outLeast: hookLoadPulledLeast.of({ hook_loads }).value,
		outGreatest: hookLoadPulledGreatest.of({ hook_loads }).value,
	};
};

const lateral = pathOf([
	[0, 0, 158],
	[8000, 0, 158],
	[8900, 90, 158],
	[16_000, 90, 158],
]);
const whole = sectionsOf([[0, 16_000, 23]]);

describe("the soft string", () => {
	test("without friction it is the hanging string, in air and in mud, tapered or not", () => {
		const tapered = sectionsOf([
			[0, 7000, 23],
			[7000, 16_000, 20],
		]);
		for (const sections of [whole, tapered])
			for (const fluid of [air, mud(11.8)]) {
				const hanging = hangingForce.of({ path: lateral, sections, inside: fluid, outside: fluid });
				expect(hookOf({ path: lateral, sections, fluid, on: 0 })).toBeCloseTo(
					hanging.rows[0]?.force ?? Number.NaN,
					3,
				);
			}
	});

	test("on a straight slope it is a block on an inclined plane", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 5, max: 85, noNaN: true }),
				fc.double({ min: 0.05, max: 0.5, noNaN: true }),
				(inclination, μ) => {
					const path = pathOf([
						[0, inclination, 40],
						[5000, inclination, 40],
					]);
					const sections = sectionsOf([[0, 5000, 23]]);
					const [cos, sin] = [
						Math.cos((inclination * Math.PI) / 180),
						Math.sin((inclination * Math.PI) / 180),
					];
					const { free, inGreatest, outGreatest } = bottomOf({ path, sections, on: μ });
					const weight = 23 * 5000;
					expect(free / (weight * cos)).toBeCloseTo(1, 9);
					expect(outGreatest / (weight * (cos + μ * sin))).toBeCloseTo(1, 9);
					expect(inGreatest - weight * (cos - μ * sin)).toBeCloseTo(0, 4);
				},
			),
			{ numRuns: 15 },
		);
	});

	test("buoyancy is that of the steel", () => {
		const path = pathOf([
			[0, 90, 0],
			[5000, 90, 0],
		]);
		// Level, and 0.052 psi per ft per lb/gal: what the steel displaces weighs 0.052 ρ A.
		const buoyed = 23 - 0.052 * 10 * steel;
		expect(hookOf({ path, sections: sectionsOf([[0, 5000, 23]]), fluid: mud(10), on: 0.3 })).toBeCloseTo(
			0.3 * buoyed * 5000,
			2,
		);
	});

	test("pulled round a bend without weight it is a rope round a post, in plane or out of it", () => {
		// Nearly weightless pipe in the bend, a heavy piece hung below it: T2 = T1 exp(μ β).
		for (const [path, angle] of [
			[
				pathOf([
					[0, 90, 0],
					[1000, 90, 0],
					[1900, 0, 0],
					[5000, 0, 0],
				]),
				Math.PI / 2,
			],
			[
				pathOf([
					[0, 90, 0],
					[900, 90, 90],
					[1900, 90, 90],
					[2800, 0, 90],
					[6000, 0, 90],
				]),
				Math.PI,
			],
		] as const) {
			const end = path.rows.at(-1)?.md ?? 0;
			const sections = sectionsOf([
				[0, end - 2000, 1e-6],
				[end - 2000, end, 25],
			]);
			expect(hookOf({ path, sections, on: 0.3 }) / (50_000 * Math.exp(0.3 * angle))).toBeCloseTo(1, 3);
		}
	});

	test("drag adds to pipe pulled, takes from pipe let down, and grows with friction", () => {
		const { free, inLeast, inGreatest, outLeast, outGreatest } = bottomOf({
			path: lateral,
			sections: whole,
			fluid: mud(11.8),
			on: 0.4,
			least: 0.2,
		});
		expect([inGreatest, inLeast, free, outLeast, outGreatest]).toEqual(
			[inGreatest, inLeast, free, outLeast, outGreatest].toSorted((a, b) => a - b),
		);
		const buoyed = 23 - 0.052 * 11.8 * steel;
		// Let down, the lateral alone takes its buoyed weight times the friction.
		expect(free - inGreatest).toBeGreaterThan(0.4 * buoyed * 7100);
		// The deeper the shoe in the lateral, the less is left on the hook.
		const room = { D_cased: given("diameter", 5.6), D_open: given("diameter", 5.6) };
		const line = slackOffHookLoad.of({
			...slide({ path: lateral, sections: whole, fluid: mud(11.8), on: 0.4 }),
			...room,
		});
		expect(line.rows.at(-1)?.md).toBe(16_000);
		const deep = line.rows.filter(({ md }) => md > 9000).map(({ hook_load }) => hook_load);
		expect(deep.length).toBeGreaterThan(5);
		expect(deep).toEqual(deep.toSorted((a, b) => b - a));
	});

	test("steel and rock each have their friction", () => {
		const base = { path: lateral, sections: whole };
		const [slick, rough] = [hookOf({ ...base, on: 0.2 }), hookOf({ ...base, on: 0.4 })];
		const mixed = hookOf({ ...base, cased: 8000, on: 0.2, rock: 0.4 });
		expect(hookOf({ ...base, cased: 16_000, on: 0.2, rock: 0.4 })).toBeCloseTo(slick, 6);
		// Above 8,000 ft the hole is vertical: there is nothing to rub on.
		expect(mixed).toBeCloseTo(rough, 6);
		expect(slick).toBeLessThan(mixed);
	});
});
