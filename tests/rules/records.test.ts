import { describe, expect, it, test } from "vitest";
import { densityOver } from "../../src/rules/formulas.ts";
import { given } from "../calc/given.ts";
import { findingsOf, starterText } from "../starters.ts";
import { type Change, foundOf, judgedStarter } from "./changed-starter.ts";
import { type Told, told } from "./told.ts";

const TEXT = starterText("horizontal-as-built");

const judged = (...changes: readonly Change[]): readonly Told[] =>
	judgedStarter("horizontal-as-built", ...changes);
const found = (findings: readonly Told[], rule: string, subject: string): Told =>
	foundOf(findings, `practice.records.${rule}`, subject);
const because = (findings: readonly Told[], rule: string, subject: string): string =>
	found(findings, rule, subject).because.replaceAll("\u00a0", " ");

/** What each rule is asked of here. */
const SUBJECTS = {
	"slurry-volume": "production",
	"slurry-density": "production",
	"stated-density-window": "production",
	lift: "production",
	floats: "production",
	returns: "production",
	"cement-top": "production",
	bump: "production",
	"shoe-test": "intermediate",
	"shoe-test-over-fluid": "intermediate",
	"casing-test-pressure": "production",
	"casing-test-hold": "production",
	"casing-test-fall": "production",
	"preventer-test": "surface",
	"treating-maximum": "well",
	"treating-relief": "well",
	"treating-line-test": "well",
	"treating-element": "well",
	"stage-proppant": "well",
	"stage-volume": "well",
	annulus: "production",
} as const;
type Rule = keyof typeof SUBJECTS;

const TAIL = "{ fluid: tail, volume: 214.5 bbl, density: 13.6 ppg }";
const WINDOW = "top_method: bond log\n      actual:";
/** The file of every stage, and the chart of one. */
const [STAGES] = /^ {4}actual:\n {6}file: horizontal-as-built-stages\.csv\n(?: {6}.*\n)*/mu.exec(TEXT) ?? [
	"the records of the stages",
];
/** Where each record is written in the starter. */
const records = (to: {
	readonly stage: string;
	readonly tail: string;
	readonly lift: string;
	readonly floats: string;
	readonly returns: string;
	readonly top: string;
	readonly shoe: string;
	readonly test: string;
	readonly stack: string;
	readonly annulus: string;
	readonly window?: string;
}): readonly Change[] => [
	[STAGES, `    actual: { records: [{ stage: 17, average_rate: 63 bbl/min${to.stage} }] }\n`],
	[TAIL, `{ fluid: tail${to.tail} }`],
	["        lift: 1360 psi\n        bump: 2100 psi\n        floats_held: true\n", `${to.lift}${to.floats}`],
	["        returns: { while_pumping: full }\n", to.returns],
	["        top: { depth: 5870 ft, method: bond log }\n", to.top],
	["equivalent: 13.8 ppg, outcome: held", to.shoe],
	["pressure: 9560 psi, hold: 30 min, fall: 0.8 %", to.test],
	["high: 3050 psi, held: true", to.stack],
	[", actual: { highest: 470 psi }", to.annulus],
	[WINDOW, WINDOW.replace("actual:", `${to.window ?? ""}actual:`)],
];

const AT = records({
	stage: ", maximum_pressure: 8900 psi, clean_volume: 6312 bbl, proppant_mass: 238140 lb",
	tail: ", volume: 204.1 bbl, density: 13.8 ppg",
	lift: "        lift: 1208 psi\n        bump: 9500 psi\n",
	floats: "        floats_held: true\n",
	returns: "        returns: { while_pumping: full }\n",
	top: "        top: { depth: 6050 ft, method: bond log }\n",
	shoe: "equivalent: 13.8 ppg, outcome: held",
	test: "pressure: 9500 psi, hold: 30 min, fall: 10 %",
	stack: "high: 3000 psi, held: true",
	annulus: ", actual: { highest: 500 psi }",
	window: "density_window: 0.2 ppg\n      ",
});
const BETWEEN = records({
	stage: ", maximum_pressure: 9001 psi, clean_volume: 6300 bbl, proppant_mass: 238000 lb",
	tail: ", volume: 204.0 bbl, density: 13.39 ppg",
	lift: "        lift: 1180 psi\n        bump: 9501 psi\n",
	floats: "        floats_held: false\n",
	returns: "        returns: { while_pumping: partial }\n",
	top: "        top: { depth: 6051 ft, method: bond log }\n",
	shoe: "equivalent: 11.9 ppg, outcome: leaked off",
	test: "pressure: 9499 psi, hold: 29 min, fall: 10.1 %",
	stack: "high: 2999 psi, held: true",
	annulus: ", actual: { highest: 501 psi }",
	window: "density_window: 0.1 ppg\n      ",
});
const OVER = records({
	stage: ", maximum_pressure: 10001 psi, clean_volume: 2000 bbl, proppant_mass: 1000 lb",
	tail: ", volume: 150 bbl, density: 12.9 ppg",
	lift: "        lift: 400 psi\n        bump: 9600 psi\n",
	floats: "        floats_held: false\n",
	returns: "        returns: { while_pumping: none }\n",
	top: "",
	shoe: "equivalent: 11.7 ppg, outcome: leaked off",
	test: "pressure: 100 psi, hold: 1 min, fall: 50 %",
	stack: "high: 3050 psi, held: false",
	annulus: ", actual: { highest: 5000 psi }",
});
const WITHOUT = records({
	stage: "",
	tail: "",
	lift: "",
	floats: "",
	returns: "",
	top: "",
	shoe: "equivalent: 13.8 ppg",
	test: "pressure: 9560 psi",
	stack: "high: 3050 psi",
	annulus: "",
}).map(([from, to]): Change => [from, to === "{ fluid: tail }" ? "{ fluid: wash, volume: 1 bbl }" : to]);

const verdicts = (findings: readonly Told[]) =>
	Object.fromEntries(
		(Object.keys(SUBJECTS) as Rule[]).map((rule) => [rule, found(findings, rule, SUBJECTS[rule]).verdict]),
	);
const each = (verdict: string, but: Partial<Record<Rule, string>> = {}) => ({
	...Object.fromEntries(Object.keys(SUBJECTS).map((rule) => [rule, verdict])),
	...but,
});

describe("records held against what was designed", () => {
	test("at their limits are met", () => {
		expect(verdicts(judged(...AT))).toEqual(each("met"));
	});

	test("a little beyond them are not met, or for an engineer to confirm where there is a band", () => {
		const findings = judged(...BETWEEN);
		const confirm = "needs judgement";
		expect(verdicts(findings)).toEqual(
			each("not met", {
				"slurry-volume": confirm,
				"slurry-density": confirm,
				lift: confirm,
				"cement-top": confirm,
				"shoe-test-over-fluid": confirm,
				"stage-proppant": confirm,
				"stage-volume": confirm,
				"treating-line-test": "met",
				"treating-element": "met",
			}),
		);
		expect(because(findings, "treating-maximum", "well")).toBe(
			"Stage 17 reached 9,001 psi; at most 9,000 psi is allowed: the maximum treating pressure.",
		);
		expect(found(findings, "treating-maximum", "well").tell).toContain("landowner");
		expect(because(findings, "shoe-test", "intermediate")).toBe(
			"The recorded shoe test is 11.90 lb/gal; at least 13.80 lb/gal is required: the planned equivalent density of the shoe test.",
		);
		expect(because(findings, "floats", "production")).toBe("The record shows that the floats did not hold.");
	});

	test("far beyond them are not met, and a cement top is worked from what was pumped", () => {
		const findings = judged(...OVER);
		expect(verdicts(findings)).toEqual(
			each("not met", {
				"stated-density-window": "does not apply",
				"stage-proppant": "needs judgement",
				"stage-volume": "needs judgement",
			}),
		);
		expect(because(findings, "slurry-volume", "production")).toBe(
			"The tail slurry was pumped to 69.8 % of its calculated volume; at least 95.0 % is required.",
		);
		expect(because(findings, "slurry-density", "production")).toBe(
			"The tail slurry was weighed at 12.90 lb/gal, 0.70 lb/gal off design; at most 0.20 lb/gal is allowed.",
		);
		expect(because(findings, "lift", "production")).toMatch(
			/^The recorded lift pressure is 400 psi and the static columns give/,
		);
		expect(because(findings, "cement-top", "production")).toBe(
			"The cement top calculated from pumped volumes is 2,917 ft below plan, along the hole; at most 50 ft is allowed.",
		);
	});

	test("that leave a figure out cannot be told", () => {
		expect(verdicts(judged(...WITHOUT))).toEqual(
			each("cannot tell", {
				"stated-density-window": "does not apply",
				"shoe-test": "met",
				"shoe-test-over-fluid": "met",
				"casing-test-pressure": "met",
			}),
		);
	});

	test("a job without returns at the surface is not met", () => {
		const findings = judged(["to_surface: 62 bbl", "to_surface: 0 bbl"]);
		expect(because(findings, "returns", "surface")).toBe(
			"1.07 times the calculated cement was pumped, and the record shows no cement returns at surface.",
		);
	});

	it("the shoe test over the fluid below is their difference", () => {
		const compared = { EMW: given("density", 13).value, ρ: given("density", 9.6).value };
		expect(densityOver.compute(compared)).toBeCloseTo(3.4, 12);
	});
});

describe("the starters", () => {
	const of = (starter: "horizontal" | "horizontal-as-built") =>
		findingsOf(starter)
			.judgement.findings.map(told)
			.filter((f) => f.cite.rule.startsWith("practice.records."));
	it("treated: no record out of its limits, and one stage that an engineer reviews", () => {
		const open = of("horizontal-as-built").filter(
			({ verdict }) => verdict === "not met" || verdict === "cannot tell",
		);
		expect(open.map((finding) => finding.because)).toEqual([]);
		const review = of("horizontal-as-built").filter(({ verdict }) => verdict === "needs judgement");
		expect(review.map((finding) => finding.because.replaceAll("\u00a0", " ").split(";")[0])).toEqual([
			"Stage 17 received 74.9 % of its planned proppant",
			"Stage 17 was pumped with 79.2 % of its planned clean volume",
		]);
	});
	it("planned: no record to hold against anything", () => {
		expect([...new Set(of("horizontal").map(({ verdict }) => verdict))]).toEqual(["does not apply"]);
	});
});
