import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	bumpPressure,
	factoredYield,
	finalCirculatingPressure,
	fractureMargins,
	freeFallFrom,
	greatestEmpty,
	greatestPumpPressure,
	leastLimit,
	leastNetForce,
	leastNetForceWhen,
	lostFrom,
	placement,
	poreMargins,
	tightestAt,
	tightestMargin,
	tightestWhen,
	timeAtPlace,
} from "../../../src/calc/cement/placement.ts";
import {
	type Cell,
	fillOf,
	runJob,
	startsOf,
	type Train,
	whereabouts,
} from "../../../src/calc/cement/plug-flow.ts";
import { given } from "../given.ts";

const cell = (side: Cell["side"], top: number, bottom: number, D: number, d: number): Cell => ({
	side,
	length: bottom - top,
	volume: ((bottom - top) * (D ** 2 - d ** 2)) / 1029.4,
	tvdIn: side === "pipe" ? top : bottom,
	tvdOut: side === "pipe" ? bottom : top,
	D,
	d: side === "pipe" ? 0 : d,
});

const fluid = fc.record({
	V: fc.double({ min: 1, max: 300, noNaN: true }),
	Q: fc.double({ min: 1, max: 10, noNaN: true }),
	ρ: fc.double({ min: 7, max: 18, noNaN: true }),
	PV: fc.double({ min: 1, max: 60, noNaN: true }),
	YP: fc.double({ min: 0, max: 25, noNaN: true }),
});
const wells = fc.record({
	depth: fc.double({ min: 500, max: 9000, noNaN: true }),
	od: fc.constantFrom(5.5, 7, 9.625),
	hole: fc.double({ min: 11, max: 16, noNaN: true }),
	below: fc.double({ min: 0, max: 20, noNaN: true }),
	mud: fc.double({ min: 8, max: 16, noNaN: true }),
	fluids: fc.array(fluid, { minLength: 1, maxLength: 5 }),
});

describe("conservation on random wells", () => {
	test("fluids pumped = volumes filled + returned, at every step", () => {
		fc.assert(
			fc.property(wells, ({ depth, od, hole, below, mud, fluids }) => {
				const cells: readonly Cell[] = [
					cell("pipe", 0, depth, od - 0.8, 0),
					{ side: "rathole", length: 0, volume: below, tvdIn: 0, tvdOut: 0, D: 0, d: 0 },
					cell("annulus", depth / 2, depth, hole, od),
					cell("annulus", 0, depth / 2, hole + 1, od),
				];
				const train: Train = { mud: { ρ: mud, PV: 12, YP: 8 }, fluids };
				const total = fluids.reduce((sum, { V }) => sum + V, 0);
				const starts = startsOf(cells);
				const way = cells.reduce((sum, { volume }) => sum + volume, 0);
				for (const moment of runJob(cells, train, [0, total / 3, total / 2, total])) {
					const { inPlace, returned, mudReturned } = whereabouts(cells, train, moment);
					// What was pumped is in place or came back.
					const sum = [...inPlace, ...returned].reduce((a, b) => a + b, 0);
					expect(sum).toBeCloseTo(moment.pumped, 6);
					// What came back, with the mud, is what went round.
					expect(returned.reduce((a, b) => a + b, mudReturned)).toBeCloseTo(moment.displaced, 6);
					// The cells are full, but for the pipe that stands empty.
					const filled = cells.reduce(
						(all, each, i) =>
							all +
							fillOf(each, starts[i] ?? 0, train, moment).reduce(
								(part, { from, to }) => part + (to - from) * each.volume,
								0,
							),
						0,
					);
					expect(filled + (moment.displaced - moment.pumped)).toBeCloseTo(way, 5);
					expect(moment.displaced).toBeGreaterThanOrEqual(moment.pumped - 1e-9);
				}
			}),
			{ numRuns: 60 },
		);
	});
});

const many = <D extends Parameters<typeof given>[0]>(dimension: D, ...values: readonly number[]) =>
	values.map((value) => given(dimension, value));

/** A thousand feet of pipe of 100 bbl in an annulus of 200 bbl, mud of 10 lb/gal, no friction. */
const straight = (train: readonly (readonly [V: number, Q: number, ρ: number])[]) => ({
	D_pipe: many("true-vertical-depth", 0, 1000),
	L_pipe: many("length", 1000),
	V_pipe: many("volume", 100),
	d_pipe: many("diameter", 10),
	V_below: given("volume", 0),
	D_annulus: many("true-vertical-depth", 1000, 500, 0),
	L_annulus: many("length", 500, 500),
	V_annulus: many("volume", 100, 100),
	D_hole: many("diameter", 18, 18),
	d_inner: many("diameter", 12, 12),
	ρ_i: many("density", 10, ...train.map(([, , ρ]) => ρ)),
	PV_i: many("plastic-viscosity", 0, ...train.map(() => 0)),
	YP_i: many("yield-point", 0, ...train.map(() => 0)),
	V_i: many("volume", ...train.map(([V]) => V)),
	Q_i: many("flow-rate", ...train.map(([, Q]) => Q)),
});
const jobOf = (train: Parameters<typeof straight>[0]) =>
	placement.of({ ...straight(train), W: given("force", 50_000), D_end: given("diameter", 12) });

describe("a job in steps", () => {
	test("one fluid throughout presses nowhere and falls nowhere", () => {
		const job = jobOf([[150, 5, 10]]);
		for (const row of job.rows) {
			expect(row.pump).toBeCloseTo(0, 9);
			expect(row.empty).toBe(0);
			expect(row.standing).toBeCloseTo(520, 9);
		}
		expect(job.rows.at(-1)?.time).toBeCloseTo(30, 9);
		expect(freeFallFrom.of({ job }).value).toBeNaN();
		expect(greatestEmpty.of({ job }).value).toBe(0);
	});

	test("cement in the annulus and water behind it: the pump holds the difference of the columns", () => {
		// 200 bbl of cement fill the annulus, 100 bbl of water the pipe: 0.052 · 1000 · (15 − 8.33) psi.
		const job = jobOf([
			[200, 5, 15],
			[100, 5, 8.33],
		]);
		expect(finalCirculatingPressure.of({ job }).value).toBeCloseTo(0.052 * 1000 * (15 - 8.33), 6);
		expect(greatestPumpPressure.of({ job }).value).toBeCloseTo(0.052 * 1000 * (15 - 8.33), 6);
		// What holds it down then: steel, water in the pipe, less the column's push on the end.
		const area = (d: number) => (Math.PI / 4) * d ** 2;
		const force = 50_000 + 0.052 * 8.33 * 1000 * area(10) - 0.052 * 15 * 1000 * area(12);
		expect(leastNetForce.of({ job }).value).toBeCloseTo(force, 5);
		expect(leastNetForceWhen.of({ job }).value).toBeCloseTo(300, 9);
	});

	test("cement heavier than the mud falls ahead of the pump: the pipe stands empty until the columns balance", () => {
		const job = jobOf([[100, 5, 15]]);
		const at50 = job.rows.find((row) => Math.abs(row.pumped - 50) < 1e-6);
		// h ft of cement and x ft of empty pipe over mud: 15 h + 10 (1000 − h − x) = 10 000, so x = h / 2.
		expect(at50?.empty).toBeCloseTo(25, 3);
		expect(at50?.pump).toBe(0);
		expect(freeFallFrom.of({ job }).value).toBeLessThan(5);
	});

	test("margins are those of the weakest place at the worst step", () => {
		const train = [
			[200, 5, 15],
			[100, 5, 8.33],
		] as const;
		const job = jobOf(train);
		const rock = {
			...straight(train),
			job,
			n_j: many("count", 1, 2),
			D_j: many("true-vertical-depth", 500, 1000),
			u_j: many("pressure", 0, 0),
			p_j: many("pressure", 380, 790),
		};
		const fracture = fractureMargins.of(rock);
		expect(fracture.rows).toHaveLength(job.rows.length);
		// At 500 ft 0.052 · 15 · 500 = 390 of 380; at 1000 ft 780 of 790.
		expect(tightestMargin.of({ margins: fracture }).value).toBeCloseTo(-10, 6);
		expect(tightestAt.of({ margins: fracture }).value).toBe(500);
		expect(tightestWhen.of({ margins: fracture }).value).toBeCloseTo(300, 6);
		const lost = lostFrom.of({ margins: fracture }).value;
		expect(lost).toBeGreaterThan(100);
		expect(lost).toBeLessThanOrEqual(300);
		const pore = poreMargins.of({ ...rock, p_j: many("pressure", 200, 500) });
		expect(tightestMargin.of({ margins: pore }).value).toBeCloseTo(20, 6);
		expect(tightestWhen.of({ margins: pore }).value).toBe(0);
		// 100 ft of still mud under the lower end: 0.052 · 10 · 100 = 52 psi more, in both ways.
		const below = {
			...rock,
			n_j: many("count", 2),
			D_j: many("true-vertical-depth", 1100),
			u_j: many("pressure", 52),
		};
		const lower = fractureMargins.of({ ...below, p_j: many("pressure", 850) });
		expect(tightestMargin.of({ margins: lower }).value).toBeCloseTo(850 - 780 - 52, 6);
		expect(tightestAt.of({ margins: lower }).value).toBe(1100);
		const held = poreMargins.of({ ...below, p_j: many("pressure", 500) });
		expect(tightestMargin.of({ margins: held }).value).toBeCloseTo(520 + 52 - 500, 6);
	});

	test("moving, rock at the shoe bears what circulates there, friction and all; at rest it bears the column", () => {
		const way = {
			...straight([[250, 5, 12]]),
			PV_i: many("plastic-viscosity", 20, 20),
			YP_i: many("yield-point", 10, 10),
		};
		const narrow = { ...way, D_hole: many("diameter", 14, 14) };
		const job = placement.of({ ...narrow, W: given("force", 50_000), D_end: given("diameter", 12) });
		const rock = {
			...narrow,
			job,
			n_j: many("count", 2),
			D_j: many("true-vertical-depth", 1000),
			u_j: many("pressure", 0),
			p_j: many("pressure", 900),
		};
		const moving = fractureMargins.of(rock).rows;
		const resting = poreMargins.of(rock).rows;
		for (const [i, row] of job.rows.entries()) {
			expect(moving[i]?.pressure).toBeCloseTo(row.circulating, 6);
			expect(resting[i]?.pressure).toBeCloseTo(row.standing, 6);
			expect(row.circulating).toBeGreaterThan(row.standing);
		}
	});

	test("a fluid flows past a place for its volume over the rate", () => {
		const job = jobOf([
			[20, 4, 10],
			[60, 4, 10],
			[300, 4, 10],
		]);
		const spacer = timeAtPlace.of({
			job,
			X: given("volume", 150),
			S_1: given("volume", 0),
			S_2: given("volume", 20),
		});
		expect(spacer.value).toBeCloseTo(5, 6);
		const never = timeAtPlace.of({
			job,
			X: given("volume", 1000),
			S_1: given("volume", 0),
			S_2: given("volume", 20),
		});
		expect(never.value).toBe(0);
	});

	test("the bump is over the final pressure, and the least limit governs", () => {
		expect(bumpPressure.of({ p_final: given("pressure", 400), Δp: given("pressure", 500) }).value).toBe(900);
		expect(leastLimit.of({ p_i: many("pressure", 3000, 1200, 5000) }).value).toBe(1200);
		expect(factoredYield.of({ p_yield: given("pressure", 3300), DF: given("ratio", 1.1) }).value).toBeCloseTo(
			3000,
			9,
		);
	});
});
