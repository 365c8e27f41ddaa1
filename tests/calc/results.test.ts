import { describe, expect, test } from "vitest";
import { leastFactor } from "../../src/calc/casing/loads/least-factor.ts";
import type { CasingResults, LoadCaseResults, Results } from "../../src/calc/results.ts";
import { type Given, isKnown, isTable, type Known } from "../../src/cite/known.ts";
import { EVERY_FORMULA } from "../../src/rules/every-formula.ts";
import { findingsOf, STARTERS, starterText, understandText } from "../starters.ts";
import { toldPlainly } from "../told.ts";

const resultsOf = (starter: (typeof STARTERS)[number]): Results => findingsOf(starter).results;

const changed = (from: string | RegExp, to: string, starter: (typeof STARTERS)[number] = "horizontal") => {
	const text = starterText(starter);
	const edited = text.replace(from, to);
	if (edited === text) throw new Error(`${from} is not in ${starter}`);
	const { findings, diagnostics } = understandText(edited);
	if (findings === undefined) throw new Error(diagnostics.map(({ what }) => toldPlainly(what)).join("; "));
	return findings.results;
};

const casingOf = (results: Results, id: string): CasingResults => {
	const string = results.casing[id];
	if (string === undefined) throw new Error(`no string ${id}`);
	return string;
};

const loadOf = (results: Results, id: string, load: string): LoadCaseResults => {
	const found = casingOf(results, id).loads.find((each) => each.id === load);
	if (found === undefined) throw new Error(`${id} has no load case ${load}`);
	return found;
};

const branchOf = ({ from }: Known): string | undefined => (from.kind === "worked" ? from.branch : undefined);

describe.each(STARTERS)("starter %s", (starter) => {
	test("no value that any result rests on is without a number, a formula or a source", () => {
		const seen = new Set<unknown>();
		const visit = (given: Given): void => {
			if (seen.has(given)) return;
			seen.add(given);
			if (Array.isArray(given)) {
				for (const each of given as readonly Known[]) visit(each);
				return;
			}
			const one = given as Exclude<Given, readonly Known[]>;
			if (isTable(one)) {
				for (const row of one.rows) for (const cell of Object.values(row)) expect(cell).toBeTypeOf("number");
				for (const row of one.rows)
					expect(Object.values(row).every(Number.isFinite), label(one.from)).toBe(true);
			} else expect(Number.isFinite(one.value), label(one.from)).toBe(true);
			if (one.from.kind !== "worked") return;
			expect(EVERY_FORMULA.has(one.from.formula), one.from.formula).toBe(true);
			for (const input of Object.values(one.from.inputs)) visit(input);
		};
		const walk = (node: unknown): void => {
			if (typeof node !== "object" || node === null) return;
			if (isKnown(node) || ("rows" in node && "columns" in node)) visit(node as Given);
			else for (const child of Object.values(node)) walk(child);
		};
		walk(resultsOf(starter));
		expect(seen.size).toBeGreaterThan(800);
	});

	test("what could not be had says why, in a sentence, under a key of its own", () => {
		const { undetermined } = resultsOf(starter);
		const keys = undetermined.map(({ key }) => key);
		expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
		for (const { because } of undetermined) expect(toldPlainly(because)).toMatch(/^[A-Z].*\.$/);
	});

	test("a load case's least factor is the least of its line, and stands where it says", () => {
		for (const { loads } of Object.values(resultsOf(starter).casing))
			for (const { line, least_factor, at } of loads) {
				if (least_factor === undefined || at === undefined) continue;
				const factors = line.rows.filter(({ load }) => load > 1).map(({ load, rating }) => rating / load);
				expect(least_factor.value).toBe(Math.min(...factors));
				expect(line.rows.some(({ md }) => md === at.md.value)).toBe(true);
				expect(leastFactor.of({ line }).value).toBe(least_factor.value);
			}
	});

	test("ratings of a string are the least of its sections'", () => {
		for (const string of Object.values(resultsOf(starter).casing)) {
			const inside = string.sections.flatMap((s) => [
				s.internal_yield,
				s.coupling_internal_yield ?? s.internal_yield,
			]);
			expect(string.least_internal_yield.value).toBe(Math.min(...inside.map(({ value }) => value)));
			expect(string.least_collapse.value).toBe(Math.min(...string.sections.map((s) => s.collapse.value)));
		}
	});
});

const label = (from: Known["from"]): string => (from.kind === "worked" ? from.formula : from.kind);

describe("trajectory of the horizontal starter", () => {
	const { trajectory } = resultsOf("horizontal");
	const radius = 18_000 / Math.PI / 10;

	test("kickoff, landing and end stand where the plan's circle puts them", () => {
		expect(trajectory.basis).toBe("planned");
		expect(trajectory.kickoff?.md.value).toBe(8360);
		expect(trajectory.landing?.md.value).toBe(9260);
		expect(trajectory.landing?.tvd.value).toBeCloseTo(8360 + radius, 6);
		expect(trajectory.landing?.below_ground.value).toBeCloseTo(8360 + radius - 26, 6);
		expect(trajectory.total_depth.md.value).toBe(17_260);
		expect(trajectory.lateral_length?.value).toBe(8000);
		expect(trajectory.closure.value).toBeCloseTo(radius + 8000, 4);
		expect(trajectory.closure_azimuth.value).toBeCloseTo(158, 9);
		expect(trajectory.maximum_dogleg.value).toBeCloseTo(10, 9);
	});

	test("formations stand on the hole where it is still vertical", () => {
		const { formations, protected_water_base } = resultsOf("horizontal").geology;
		for (const { top } of formations)
			if (top.tvd.value < 8360) expect(top.md?.value).toBeCloseTo(top.tvd.value, 6);
		expect(protected_water_base?.tvd.value).toBe(1010);
		expect(protected_water_base?.below_ground.value).toBe(984);
	});
});

describe("other paths", () => {
	test("a surveyed well keeps its plan beside the survey, and lands where the survey does", () => {
		const { trajectory } = resultsOf("horizontal-as-built");
		expect(trajectory.basis).toBe("surveyed");
		expect(trajectory.planned?.rows.length).toBeGreaterThan(50);
		const landing = trajectory.landing?.md.value ?? Number.NaN;
		const [above, below] = [
			trajectory.path.rows.findLast(({ md }) => md < landing),
			trajectory.path.rows.find(({ md }) => md >= landing),
		];
		expect(above?.inclination).toBeLessThan(88);
		expect(below?.inclination).toBeGreaterThanOrEqual(88);
	});

	test("a vertical well has no kickoff, no landing, no departure", () => {
		const { trajectory } = resultsOf("vertical-metric");
		expect(trajectory.kickoff).toBeUndefined();
		expect(trajectory.landing).toBeUndefined();
		expect(trajectory.closure.value).toBe(0);
		expect(trajectory.total_depth.tvd.value).toBe(trajectory.total_depth.md.value);
	});
});

describe("casing of the horizontal starter", () => {
	const results = resultsOf("horizontal");

	test("the coupling of the production string is its weakest place, by its yield", () => {
		const production = casingOf(results, "production");
		const [section] = production.sections;
		expect(section?.internal_yield.value).toBeCloseTo(14_525, 6);
		const coupling = section?.coupling_internal_yield;
		expect(coupling?.value).toBeCloseTo(12_369.3, 1);
		expect(coupling && branchOf(coupling)).toBe("coupling yield");
		expect(production.least_internal_yield.value).toBe(coupling?.value);
	});

	test("a string weighs by the vertical and is trucked by its length", () => {
		const production = casingOf(results, "production");
		const vertical = production.shoe.tvd.value - production.top.tvd.value;
		expect(production.weight_in_air.value).toBeCloseTo(23 * vertical, 6);
		expect(production.pipe_mass.value).toBeCloseTo(23 * production.length.value, 6);
		expect(production.weight_in_mud?.value).toBeCloseTo(23 * vertical * (1 - 11.8 / 65.5), 6);
	});

	test("held while treated, it shares its change of force over the whole length that hangs free", () => {
		const treated = casingOf(results, "production").loads.find(({ id }) => id === "tension-stimulation");
		const free = (treated?.line.rows ?? []).filter(({ md }) => md >= 28 && md <= 5400);
		const [hanger] = free;
		expect(free.length).toBeGreaterThan(50);
		// Between hanger and cement the force falls by the weight of the steel alone, 23 lb/ft: what cools and swells is shared.
		for (const row of free) expect(row.load).toBeCloseTo((hanger?.load ?? 0) - 23 * (row.md - 28), 2);
		expect(hanger?.load).toBeCloseTo(289_392, 0);
		expect(treated?.least_factor?.value).toBeCloseTo(724_140.14 / 289_392.16, 4);
	});

	test("pressures at the surface shoe", () => {
		const surface = casingOf(results, "surface");
		expect(surface.mud_hydrostatic_at_shoe?.value).toBeCloseTo(0.052 * 8.8 * 1185, 6);
		expect(surface.fracture_pressure_at_shoe?.value).toBeCloseTo(0.82 * (1185 - 26), 6);
		// Drilled out with the mud of the hole below.
		expect(surface.shoe_test_surface_pressure?.value).toBeCloseTo(0.052 * 1185 * (15 - 9.4), 6);
		const pressure = surface.maximum_surface_pressure;
		expect(pressure?.value).toBeCloseTo(0.82 * 1159 - 0.1 * 1185, 6);
		expect(pressure && branchOf(pressure)).toBe("limited by the shoe");
	});

	test("clearances: coupling in the hole, and in the string it was run through", () => {
		const surface = casingOf(results, "surface");
		expect(surface.hole_clearance?.value).toBeCloseTo((17.5 - 14.375) / 2, 9);
		expect(surface.drift_clearance?.value).toBeCloseTo((18.937 - 14.375) / 2, 3);
	});

	test("the stimulation presses with the greatest pressure allowed, on the heaviest slurry, with no friction", () => {
		const { line } = loadOf(results, "production", "burst-stimulation");
		const top = line.rows[0];
		const casingTop = 28;
		expect(top?.load).toBeGreaterThan(9500);
		expect(top?.load).toBeLessThan(9500 + 0.052 * 11 * casingTop);
		const heaviest = (8.4 + 1.75) / (1 + 1.75 / (8.33 * 2.65));
		const bottom = line.rows.findLast(({ tvd }) => tvd > 8900);
		const backup = 0.465 * ((bottom?.tvd ?? 0) - 26);
		expect(bottom?.load).toBeCloseTo(9500 + 0.052 * heaviest * (bottom?.tvd ?? 0) - backup, 6);
	});

	test("each load case asks the factor of its kind; overpull its own", () => {
		const required = (load: string) => loadOf(results, "intermediate", load).required.value;
		expect(required("burst-gas-kick")).toBe(1.1);
		expect(required("collapse-evacuation")).toBe(1.125);
		expect(required("tension-running")).toBe(1.6);
		expect(required("triaxial-gas-kick")).toBe(1.25);
		expect(required("tension-overpull")).toBe(1.1);
	});

	test("a fluid level left in the pipe helps against collapse", () => {
		const full = loadOf(results, "intermediate", "collapse-evacuation").least_factor?.value ?? Number.NaN;
		const partly = changed(
			/(shoe_test: \{ kind: FIT, equivalent: 14\.0 ppg.*\n\s*loads: )\{ evacuation: full \}/,
			"$1{ evacuation: { fluid_level: 3000 ft TVD, fluid: 9.4 ppg } }",
		);
		expect(loadOf(partly, "intermediate", "collapse-evacuation").least_factor?.value).toBeGreaterThan(full);
	});

	test("wear lowers every factor of a string", () => {
		const worn = changed("wear: 0 %", "wear: 10 %");
		for (const load of casingOf(results, "intermediate").loads) {
			const factor = loadOf(worn, "intermediate", load.id).least_factor?.value;
			expect(factor, load.id).toBeLessThan(load.least_factor?.value ?? Number.NaN);
		}
	});

	test("a string drilled with air has no loads, and says so", () => {
		expect(casingOf(results, "conductor").loads).toEqual([]);
		expect(results.undetermined.map(({ key }) => key)).toContain("casing.conductor.loads");
	});
});
