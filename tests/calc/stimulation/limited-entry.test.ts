import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { clusterRate } from "../../../src/calc/stimulation/limited-entry.ts";
import { perforationFriction } from "../../../src/calc/stimulation/treating-pressure.ts";
import { given } from "../given.ts";

const ratesOf = (Q: number, stresses: readonly number[], N = 8, d = 0.38, C_d = 0.65) =>
	stresses.map(
		(_, i) =>
			clusterRate.of({
				Q: given("flow-rate", Q),
				ρ: given("density", 8.4),
				N: given("count", N),
				d: given("diameter", d),
				C_d: given("ratio", C_d),
				Δσ: stresses.map((s) => given("pressure", s)),
				k: given("count", i + 1),
			}).value as number,
	);
const sum = (values: readonly number[]) => values.reduce((total, q) => total + q, 0);

describe("limited entry", () => {
	test("like clusters share alike", () => {
		for (const q of ratesOf(75, [0, 0, 0, 0, 0])) expect(q).toBeCloseTo(15, 9);
	});

	test("cluster rates sum to the pump rate, harder rock takes less, and all share one pressure", () => {
		fc.assert(
			fc.property(
				fc.array(fc.double({ min: 0, max: 3000, noNaN: true }), { minLength: 1, maxLength: 15 }),
				fc.double({ min: 5, max: 120, noNaN: true }),
				fc.integer({ min: 2, max: 20 }),
				(stresses, Q, N) => {
					const rates = ratesOf(Q, stresses, N);
					expect(Math.abs(sum(rates) - Q)).toBeLessThanOrEqual(1e-9 * Q);
					const pressures = rates.flatMap((q, i) =>
						q > 1e-3 * Q
							? [
									(stresses[i] ?? 0) +
										(perforationFriction.of({
											Q: given("flow-rate", q),
											ρ: given("density", 8.4),
											N: given("count", N),
											d: given("diameter", 0.38),
											C_d: given("ratio", 0.65),
										}).value as number),
								]
							: [],
					);
					for (const p of pressures)
						expect(Math.abs(p - (pressures[0] ?? 0))).toBeLessThan(1e-4 * Math.max(1, p));
					stresses.forEach((s, i) => {
						stresses.forEach((t, j) => {
							if (s < t) expect(rates[i] ?? 0).toBeGreaterThanOrEqual(rates[j] ?? 0);
						});
					});
				},
			),
			{ numRuns: 200 },
		);
	});

	test("a cluster in rock too hard to open takes nothing", () => {
		expect(ratesOf(10, [0, 5000])[1]).toBe(0);
	});

	test("worn holes even out less", () => {
		const fresh = ratesOf(75, [0, 200, 100], 8, 0.38, 0.65);
		const worn = ratesOf(75, [0, 200, 100], 8, 0.38, 0.85);
		expect((worn[0] ?? 0) - (worn[1] ?? 0)).toBeGreaterThan((fresh[0] ?? 0) - (fresh[1] ?? 0));
	});
});
