import { describe, expect, it } from "vitest";
import { pressureAfterPackerLeak } from "../../src/calc/barriers/barrier-formulas.ts";
import { quantity } from "../../src/units/quantity.ts";
import { findingsOf } from "../starters.ts";

const { barriers } = findingsOf("horizontal").results;
const phase = (id: string) => barriers.phases.find((each) => each.id === id);
const names = (elements: readonly { readonly element: string; readonly string?: string }[] | undefined) =>
	(elements ?? []).map(({ element, string }) => (string === undefined ? element : `${string} ${element}`));

describe("barriers of the planned well", () => {
	it("are told for each phase but the hole that has no casing to close in on", () => {
		expect(barriers.phases.map(({ id }) => id)).toEqual([
			"drilling-surface",
			"cementing-surface",
			"drilling-intermediate",
			"cementing-intermediate",
			"drilling-production",
			"cementing-production",
			"treating",
			"producing",
			"shut-in",
		]);
	});

	it("are two where gas or abnormal pressure may flow, one above", () => {
		expect(barriers.phases.map(({ required }) => required.value)).toEqual([1, 1, 2, 2, 2, 2, 2, 2, 2]);
		expect(barriers.phases.every(({ short }) => short.value === 0)).toBe(true);
	});

	it("come element by element from strings, cement, wellhead, packer, and what is stated apart", () => {
		expect(names(phase("treating")?.primary)).toEqual([
			"production casing",
			"production casing cement",
			"wellhead",
		]);
		expect(names(phase("treating")?.secondary)).toEqual([
			"intermediate casing",
			"intermediate casing cement",
			"wellhead",
		]);
		expect(names(phase("producing")?.primary)).toEqual([
			"production casing",
			"production casing cement",
			"production packer",
			"production tubing",
			"production tree",
		]);
		// Stated for producing, and lent to the well shut in.
		expect(phase("shut-in")?.primary.at(-1)).toMatchObject({ element: "production tree", state: "holds" });
	});

	it("a plan is not called tested", () => {
		expect(
			barriers.phases.flatMap(({ primary, secondary }) => [...primary, ...secondary]).some((e) => e.tested),
		).toBe(false);
	});
});

describe("single failures", () => {
	const failure = (kind: string) => barriers.failures.find((each) => each.failure === kind);

	it("9,500 psi leaking onto the 6,330 psi string leaves 0.67, unless a valve relieves it", () => {
		const leak = failure("treated-string");
		expect(leak?.held_by).toBe("intermediate");
		expect(leak?.factor?.value).toBeCloseTo(0.67, 2);
		expect(leak?.factor_relieved?.value).toBeGreaterThan(1);
	});

	it("leaking floats bring the difference of the columns to the cementing head", () => {
		const { cement } = findingsOf("horizontal").results;
		const lifts = Object.values(cement).map(({ final_lift }) => final_lift?.value);
		expect(lifts).toContain(failure("floats")?.load.value);
		expect(failure("floats")?.load.dimension).toBe("pressure");
	});

	it("a packer leak is walked through at the surface of its annulus", () => {
		expect(failure("packer")?.factor?.value).toBeGreaterThan(1);
	});
});

describe("annulus pressure after a packer leak", () => {
	const leak = (p_t: number, g: number, ρ: number, D: number) =>
		pressureAfterPackerLeak.compute({
			p_t: quantity("pressure", p_t),
			g: quantity("pressure-gradient", g),
			ρ: quantity("density", ρ),
			D: quantity("true-vertical-depth", D),
		});

	it("is the tubing's own where the fluids weigh alike, or the packer is at surface", () => {
		expect(leak(3000, 0.052 * 8.6, 8.6, 8000)).toBeCloseTo(3000, 9);
		expect(leak(3000, 0.1, 8.6, 0)).toBe(3000);
	});

	it("is less by the heavier fluid above, and never below zero", () => {
		expect(leak(3000, 0.1, 10, 5000)).toBeCloseTo(3000 - (0.52 - 0.1) * 5000, 9);
		expect(leak(100, 0.1, 10, 9000)).toBe(0);
	});
});
