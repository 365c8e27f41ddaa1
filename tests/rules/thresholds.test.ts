import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { loadPractice } from "../../src/catalog/jurisdictions.ts";
import { CHECK_LIMITS, type CheckId } from "../../src/catalog/limits/checks.ts";
import type { Operator } from "../../src/catalog/limits/limit.ts";
import { MEASURE_NAMES, type MeasureName } from "../../src/catalog/limits/measures.ts";
import { wrongSide } from "../../src/catalog/limits/protective-side.ts";
import type { Verdict } from "../../src/document/verdict.ts";
import { told } from "../told.ts";
import { type Edit, finding, set, without } from "./builders.ts";

/**
 * Every measure that a limit may be put on: at the limit, just under it, just over it, and with its input missing. The
 * values are those of the round-numbered well, so each can be worked in the head; the verdicts at the boundary are what the
 * words *at least* and *at most* mean (common practice, no source).
 */
interface Case {
	readonly check: CheckId;
	readonly measure: MeasureName;
	readonly applies?: Readonly<Record<string, unknown>>;
	readonly parameters?: Readonly<Record<string, unknown>>;
	/** What the well has, and a hair less and more. */
	readonly at: string;
	readonly under: string;
	readonly over: string;
	/** Takes the input out; absent where the definition cannot be without it. */
	readonly missing?: readonly Edit[];
	/** Where the missing input may be written. */
	readonly path?: string;
	readonly edits?: readonly Edit[];
}

const surface = { string: "surface" };
const intermediate = { string: "intermediate" };
const production = { string: "production" };

const CASES: readonly Case[] = [
	{
		check: "surface-shoe-depth",
		measure: "shoe below protected water",
		applies: surface,
		at: "200 ft",
		under: "199.9 ft",
		over: "200.1 ft",
		missing: [without("geology.protected_water")],
		path: "geology.protected_water.base",
	},
	{
		check: "surface-shoe-depth",
		measure: "shoe below formation top",
		applies: surface,
		parameters: { formation: "Anvil Shale" },
		at: "100 ft",
		under: "99.9 ft",
		over: "100.1 ft",
		missing: [set("geology.formations.1.name", "Another Shale")],
		path: "geology.formations",
	},
	{
		check: "surface-shoe-depth",
		measure: "shoe below formation base",
		applies: surface,
		parameters: { formation: "Topsoil Sand" },
		at: "100 ft",
		under: "99.9 ft",
		over: "100.1 ft",
		missing: [set("geology.formations.0.name", "Other Sand")],
		path: "geology.formations",
	},
	{
		check: "surface-shoe-depth",
		measure: "shoe below top of competent rock",
		applies: surface,
		at: "100 ft",
		under: "99.9 ft",
		over: "100.1 ft",
		missing: [without("geology.formations.1.competent"), without("geology.formations.3.competent")],
		path: "geology.formations",
	},
	{
		// The water well is 300 ft deep below its own ground, so its bottom is at 320 ft from the datum.
		check: "surface-shoe-depth",
		measure: "shoe below nearby water wells",
		applies: surface,
		parameters: { within: "900 ft" },
		at: "680 ft",
		under: "679.9 ft",
		over: "680.1 ft",
		missing: [without("site.neighbors.1.depth")],
		path: "site.neighbors.1.depth",
	},
	{
		check: "shoe-depth",
		measure: "shoe below ground",
		applies: surface,
		at: "980 ft",
		under: "979.9 ft",
		over: "980.1 ft",
	},
	{
		check: "shoe-depth",
		measure: "shoe along the hole",
		applies: surface,
		at: "1000 ft",
		under: "999.9 ft",
		over: "1000.1 ft",
	},
	{
		check: "shoe-depth",
		measure: "shoe vertical depth",
		applies: surface,
		at: "1000 ft",
		under: "999.9 ft",
		over: "1000.1 ft",
	},
	{
		check: "shoe-test",
		measure: "new hole before shoe test",
		applies: surface,
		at: "20 ft",
		under: "19.9 ft",
		over: "20.1 ft",
		missing: [without("casing.1.shoe_test.new_hole")],
		path: "casing.1.shoe_test.new_hole",
	},
	{
		check: "shoe-test",
		measure: "shoe test equivalent",
		applies: surface,
		at: "12 ppg",
		under: "11.99 ppg",
		over: "12.01 ppg",
		missing: [without("casing.1.shoe_test")],
		path: "casing.1.shoe_test.equivalent",
	},
	{
		check: "cement-top",
		measure: "cement top above shoe",
		applies: intermediate,
		parameters: { along: "hole" },
		at: "1600 ft",
		under: "1599.9 ft",
		over: "1600.1 ft",
		missing: [without("casing.2.cement")],
		path: "casing.2.cement.slurries",
	},
	{
		check: "cement-top",
		measure: "cement top above flow zone",
		applies: intermediate,
		parameters: { along: "vertical" },
		at: "600 ft",
		under: "599.9 ft",
		over: "600.1 ft",
		missing: [without("casing.2.cement")],
		path: "casing.2.cement.slurries",
	},
	{
		check: "cement-top",
		measure: "cement top above previous shoe",
		applies: production,
		parameters: { along: "hole" },
		at: "500 ft",
		under: "499.9 ft",
		over: "500.1 ft",
		missing: [without("casing.3.cement")],
		path: "casing.3.cement.slurries",
	},
	{
		check: "cement-top",
		measure: "cement top above perforations",
		applies: production,
		parameters: { along: "hole" },
		at: "4700 ft",
		under: "4699.9 ft",
		over: "4700.1 ft",
		missing: [without("casing.3.cement")],
		path: "casing.3.cement.slurries",
	},
	{
		check: "cement-top",
		measure: "cement top above protected water",
		applies: surface,
		parameters: { along: "vertical" },
		at: "780 ft",
		under: "779.9 ft",
		over: "780.1 ft",
		missing: [without("geology.protected_water")],
		path: "geology.protected_water.base",
	},
	{
		// The intermediate cement's top lies at 3,400 ft, the sand from 4,000 to 4,100 ft.
		check: "cement-top",
		measure: "cement top above formation top",
		applies: intermediate,
		parameters: { along: "hole", formation: "Gas Sand" },
		at: "600 ft",
		under: "599.9 ft",
		over: "600.1 ft",
		missing: [set("geology.formations.2.name", "Another Sand")],
		path: "geology.formations",
	},
	{
		check: "cement-top",
		measure: "cement top above formation base",
		applies: intermediate,
		parameters: { along: "vertical", formation: "gas sand" },
		at: "700 ft",
		under: "699.9 ft",
		over: "700.1 ft",
		missing: [set("geology.formations.2.name", "Another Sand")],
		path: "geology.formations",
	},
	{
		// A column that ends 400 ft above the shoe of 1000 ft is 400 ft long.
		check: "critical-cement-length",
		measure: "shoe cement length",
		applies: surface,
		parameters: { along: "hole" },
		at: "400 ft",
		under: "399.9 ft",
		over: "400.1 ft",
		missing: [without("casing.1.cement")],
		path: "casing.1.cement.slurries",
	},
	{
		check: "wait-on-cement",
		measure: "wait on cement",
		applies: surface,
		at: "12 hr",
		under: "719 min",
		over: "721 min",
		missing: [without("casing.1.cement.wait_on_cement")],
		path: "casing.1.cement.wait_on_cement",
	},
	{
		check: "wait-on-cement",
		measure: "strength at drill-out",
		applies: surface,
		parameters: { zone: "shoe" },
		at: "500 psi",
		under: "499 psi",
		over: "501 psi",
		missing: [without("casing.1.cement.slurries.1.strength")],
		path: "casing.1.cement.slurries.1.strength",
	},
	{
		check: "cement-strength",
		measure: "strength",
		applies: surface,
		parameters: { zone: "whole", after: "72 hr", cured_at: "80 degF" },
		at: "400 psi",
		under: "399 psi",
		over: "401 psi",
		missing: [without("casing.1.cement.slurries.0.strength"), without("casing.1.cement.slurries.1.strength")],
		path: "casing.1.cement.slurries.1.strength",
	},
	{
		check: "free-fluid",
		measure: "free fluid",
		applies: surface,
		parameters: { zone: { bottom: "300 ft" } },
		at: "3 mL/250 mL",
		under: "2.9 mL/250 mL",
		over: "3.1 mL/250 mL",
		missing: [without("casing.1.cement.slurries.1.free_fluid")],
		path: "casing.1.cement.slurries.1.free_fluid",
	},
	{
		check: "casing-pressure-test",
		measure: "test pressure",
		applies: surface,
		at: "1500 psi",
		under: "1499 psi",
		over: "1501 psi",
		missing: [without("casing.1.pressure_test")],
		path: "casing.1.pressure_test.pressure",
	},
	{
		check: "casing-pressure-test",
		measure: "test hold",
		applies: surface,
		at: "30 min",
		under: "29 min",
		over: "31 min",
		missing: [without("casing.1.pressure_test")],
		path: "casing.1.pressure_test.hold",
	},
	{
		check: "casing-pressure-test",
		measure: "test fall",
		applies: surface,
		at: "10 %",
		under: "9.9 %",
		over: "10.1 %",
		missing: [without("casing.1.pressure_test.allowed_fall")],
		path: "casing.1.pressure_test.allowed_fall",
	},
	{
		// 10 % of 1,500 psi.
		check: "casing-pressure-test",
		measure: "test fall in pressure",
		applies: surface,
		at: "150 psi",
		under: "149 psi",
		over: "151 psi",
		missing: [without("casing.1.pressure_test.allowed_fall")],
		path: "casing.1.pressure_test.allowed_fall",
	},
	{
		check: "internal-yield-margin",
		measure: "maximum treating pressure",
		applies: { string: "treated through" },
		at: "8000 psi",
		under: "7999 psi",
		over: "8001 psi",
		missing: [without("stimulation.limits.maximum_treating_pressure")],
		path: "stimulation.limits.maximum_treating_pressure",
	},
	{
		check: "relief-valve",
		measure: "relief valve setting",
		applies: { string: "treated through" },
		at: "7800 psi",
		under: "7799 psi",
		over: "7801 psi",
		missing: [without("stimulation.limits.relief_valve")],
		path: "stimulation.limits.relief_valve",
	},
	{
		check: "annulus-limit",
		measure: "annulus stop pressure",
		applies: { annulus: { inside: "intermediate", outside: "surface" } },
		at: "200 psi",
		under: "199 psi",
		over: "201 psi",
		missing: [without("stimulation.annuli.1.stop_above")],
		path: "stimulation.annuli.1.stop_above",
	},
	{
		// API 5CT coupling of 9 5/8 in: 10.625 in; (12.25 - 10.625) / 2 (memory of API 5CT).
		check: "hole-clearance",
		measure: "clearance each side of coupling",
		applies: intermediate,
		at: "0.8125 in",
		under: "0.812 in",
		over: "0.813 in",
	},
	{
		check: "hole-clearance",
		measure: "clearance each side of pipe",
		applies: intermediate,
		at: "1.3125 in",
		under: "1.312 in",
		over: "1.313 in",
	},
	{
		// API 5CT coupling of 13 3/8 in: 14.375 in (memory of API 5CT).
		check: "hole-clearance",
		measure: "coupling clearance on diameter",
		applies: surface,
		at: "3.125 in",
		under: "3.124 in",
		over: "3.126 in",
	},
	{
		check: "hole-clearance",
		measure: "pipe clearance on diameter",
		applies: production,
		at: "3 in",
		under: "2.999 in",
		over: "3.001 in",
	},
	{
		check: "separation",
		measure: "protected water to perforations",
		at: "8400 ft",
		under: "8399.9 ft",
		over: "8400.1 ft",
		missing: [without("geology.protected_water")],
		path: "geology.protected_water.base",
	},
	{
		check: "setback",
		measure: "distance",
		applies: { neighbor: "dwelling" },
		parameters: { from: "wellhead" },
		at: "500 ft",
		under: "499.9 ft",
		over: "500.1 ft",
		missing: [without("site.neighbors.0.surveyed")],
		path: "site.neighbors.0.surveyed",
	},
	{
		check: "hydrogen-sulfide",
		measure: "hydrogen sulfide",
		at: "99 ppm",
		under: "98.9 ppm",
		over: "99.1 ppm",
		missing: [without("safety.hydrogen_sulfide.fraction")],
		path: "safety.hydrogen_sulfide.fraction",
	},
	{
		check: "treatment-volume",
		measure: "volume of the treatment",
		at: "200 bbl",
		under: "199.9 bbl",
		over: "200.1 bbl",
	},
	{
		check: "treatment-volume",
		measure: "volume of the greatest stage",
		at: "200 bbl",
		under: "199.9 bbl",
		over: "200.1 bbl",
	},
	{
		check: "shoe-strength",
		measure: "fracture pressure at the shoe",
		applies: surface,
		at: "784 psi",
		under: "783 psi",
		over: "785 psi",
		missing: [without("geology.formations.1.fracture_gradient")],
		path: "geology.formations",
	},
];

const OPERATORS: readonly (readonly [string, Readonly<Record<"at" | "under" | "over", Verdict>>])[] = [
	// The well's value against a limit at, under and over it.
	["at_least", { at: "met", under: "met", over: "not met" }],
	["more_than", { at: "not met", under: "met", over: "not met" }],
	["at_most", { at: "met", under: "not met", over: "met" }],
	["less_than", { at: "not met", under: "not met", over: "met" }],
];

const OPERATOR_WORDS: Readonly<Record<string, Operator>> = {
	at_least: "at least",
	more_than: "more than",
	at_most: "at most",
	less_than: "less than",
};

const rowOf = (each: Case, operator: string, amount: string) => ({
	check: each.check,
	applies_to: each.applies ?? {},
	limit: { measure: each.measure, ...each.parameters, [operator]: amount },
});

describe.each(CASES)("$check: $measure", (each) => {
	const reversed = (operator: string) =>
		wrongSide(each.measure, OPERATOR_WORDS[operator] ?? "at least") !== undefined;
	for (const [operator, expected] of OPERATORS)
		it(`${operator} at, under and over`, () => {
			if (reversed(operator)) {
				expect(() => finding(rowOf(each, operator, each.at))).toThrow(/protects nothing/);
				return;
			}
			for (const side of ["at", "under", "over"] as const) {
				const found = finding(rowOf(each, operator, each[side]), ...(each.edits ?? []));
				expect(`${side}: ${found.verdict}`, found.because).toBe(`${side}: ${expected[side]}`);
				expect(found.required).toBeDefined();
				expect(found.measured).toBeDefined();
				expect(found.missing).toBeUndefined();
				expect(found.because).toMatch(/^[A-Z].*\.$/);
			}
		});

	if (each.missing !== undefined)
		it("cannot be told without its input, and names it", () => {
			const found = finding(
				rowOf(each, reversed("at_least") ? "at_most" : "at_least", each.at),
				...(each.edits ?? []),
				...(each.missing ?? []),
			);
			expect(found.verdict, found.because).toBe("cannot tell");
			expect(found.missing?.map(({ at }) => at.join("."))).toContain(each.path);
			expect(found.missing?.every(({ what }) => told(what).startsWith("the "))).toBe(true);
		});
});

/**
 * Measures that a limit is taken from: the boundary moves with them. The compared value is set at, under and over it, and
 * the measure itself is taken out.
 */
interface Taken {
	readonly of: MeasureName;
	readonly check: CheckId;
	readonly applies: Readonly<Record<string, unknown>>;
	readonly measure: MeasureName;
	readonly times?: number | string;
	/** Sets the compared value. */
	readonly value: (amount: string) => Edit;
	readonly at: string;
	readonly under: string;
	readonly over: string;
	readonly missing?: readonly Edit[];
	readonly path?: string;
}

const TAKEN: readonly Taken[] = [
	{
		// 1,000 ft of hole less 20 ft of air gap, by 0.22 psi/ft.
		of: "string length",
		check: "casing-pressure-test",
		applies: surface,
		measure: "test pressure",
		times: "0.22 psi/ft",
		value: (amount) => set("casing.1.pressure_test.pressure", amount),
		at: "215.6 psi",
		under: "215.5 psi",
		over: "215.7 psi",
	},
	{
		// API 5C3's internal yield of 13 3/8 in 54.5 lb/ft J55: 0.875 · 2 · 55,000 · 0.380 / 13.375 (memory of API 5CT's wall).
		of: "internal yield",
		check: "casing-pressure-test",
		applies: surface,
		measure: "test pressure",
		times: 1,
		value: (amount) => set("casing.1.pressure_test.pressure", amount),
		at: `${(0.875 * 2 * 55_000 * 0.38) / 13.375} psi`,
		under: "2734 psi",
		over: "2735 psi",
	},
	{
		of: "maximum treating pressure",
		check: "casing-pressure-test",
		applies: { string: "treated through" },
		measure: "test pressure",
		value: (amount) => set("casing.3.pressure_test.pressure", amount),
		at: "8000 psi",
		under: "7999 psi",
		over: "8001 psi",
		missing: [without("stimulation.limits.maximum_treating_pressure")],
		path: "stimulation.limits.maximum_treating_pressure",
	},
	{
		of: "preventer working pressure",
		check: "casing-pressure-test",
		applies: surface,
		measure: "test pressure",
		value: (amount) => set("casing.1.pressure_test.pressure", amount),
		at: "5000 psi",
		under: "4999 psi",
		over: "5001 psi",
		missing: [without("well_control")],
		path: "well_control.preventers",
	},
	{
		of: "heaviest fluid below the shoe",
		check: "shoe-test",
		applies: surface,
		measure: "shoe test equivalent",
		value: (amount) => set("casing.1.shoe_test.equivalent", amount),
		at: "9.4 ppg",
		under: "9.39 ppg",
		over: "9.41 ppg",
		missing: [without("holes.2.fluid")],
		path: "holes.2.fluid.density",
	},
	{
		of: "predicted annulus rise",
		check: "annulus-limit",
		applies: { annulus: { inside: "production", outside: "intermediate" } },
		measure: "annulus stop pressure",
		value: (amount) => set("stimulation.annuli.0.stop_above", amount),
		at: "300 psi",
		under: "299 psi",
		over: "301 psi",
		missing: [without("stimulation.annuli.0.predicted_rise")],
		path: "stimulation.annuli.0.predicted_rise",
	},
	{
		// The surface shoe is 1,000 ft below the datum, straight down; 30 percent of its feet, in psi.
		of: "outer shoe vertical depth",
		check: "annulus-limit",
		applies: { annulus: { inside: "intermediate", outside: "surface" } },
		measure: "annulus stop pressure",
		times: "0.30 psi/ft",
		value: (amount) => set("stimulation.annuli.1.stop_above", amount),
		at: "300 psi",
		under: "299 psi",
		over: "301 psi",
	},
];

describe.each(TAKEN)("a limit taken from the $of", (each) => {
	const most = wrongSide(each.measure, "at least") !== undefined;
	const row = {
		check: each.check,
		applies_to: each.applies,
		limit: {
			measure: each.measure,
			[most ? "at_most" : "at_least"]: {
				...(each.times === undefined ? {} : { times: each.times }),
				of: each.of,
			},
		},
	};
	it("at, under and over", () => {
		const verdicts = [each.at, each.under, each.over].map(
			(amount) => finding(row, each.value(amount)).verdict,
		);
		expect(verdicts).toEqual(most ? ["met", "met", "not met"] : ["met", "not met", "met"]);
	});
	if (each.missing !== undefined)
		it("cannot be told without it, and names it", () => {
			const found = finding(row, ...(each.missing ?? []));
			expect(found.verdict, found.because).toBe("cannot tell");
			expect(found.missing?.map(({ at }) => at.join("."))).toContain(each.path);
		});
});

/** Every limit of practice, as text. */
const PRACTICE = JSON.stringify(
	(loadPractice().value ?? []).flatMap(({ rules }) => rules.map(({ limit, confirm }) => [limit, confirm])),
);

describe("the table", () => {
	/** Measured in `cement-and-depths.test.ts` and `forms.test.ts`, where they mean something. */
	const ELSEWHERE: readonly MeasureName[] = [
		"joint length",
		"liner lap",
		"cement top above kickoff",
		"cement pumped over calculated",
		"well depth below ground",
		"pipe diameter",
		"sacks of cement",
	];
	it("has every measure, or names where it is tested", () => {
		const here = CASES.map(({ measure }) => measure);
		const taken = TAKEN.map(({ of }) => of);
		// The solids of a zone are compared by the check itself, for every shipped row.
		// Those that only limits of practice are put on are tested beside those limits.
		const practice = MEASURE_NAMES.filter((name) => PRACTICE.includes(`"${name}"`));
		const all = new Set([...here, ...taken, ...ELSEWHERE, "dissolved solids", ...practice]);
		expect([...all].sort()).toEqual([...MEASURE_NAMES].sort());
		const written = ["cement-and-depths", "forms", "tables-and-places"]
			.map((name) => readFileSync(new URL(`${name}.test.ts`, import.meta.url), "utf8"))
			.join();
		for (const measure of ELSEWHERE) expect(written).toContain(`"${measure}"`);
	});
	it("puts each measure on a check that takes it", () => {
		for (const { check, measure } of CASES) expect(CHECK_LIMITS[check].measures).toContain(measure);
	});
});
