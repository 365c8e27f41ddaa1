import { describe, expect, test } from "vitest";
import type { LoadCaseResults } from "../../../src/calc/results.ts";
import { say } from "../../../src/rules/reason.ts";
import { toldPlainly } from "../../told.ts";
import { resultsOfWell, understandWell } from "../../wells.ts";

const WEAK = "weak-string";
const BEFORE =
	"{ od: 7 in, weight: 29 lb/ft, grade: P110, connection: BTC, condition: new, joint: 40 ft, from: 6500 ft";
const STRONG = [BEFORE, BEFORE.replace("weight: 29", "weight: 32")] as const;

type Edits = readonly (readonly [string, string])[];

const loadsOf = (...edits: Edits): readonly LoadCaseResults[] =>
	Object.values(resultsOfWell(WEAK, ...edits).casing).flatMap(({ loads }) => loads);

const short = (...edits: Edits) =>
	loadsOf(...edits)
		.filter(({ reached }) => reached === false)
		.map(({ id, at, governed_by }) => [id, Math.round(at?.md.value ?? Number.NaN), governed_by]);

const warned = (...edits: Edits) =>
	(understandWell(WEAK, ...edits).findings?.judgement.findings ?? [])
		.filter(({ cite, verdict }) => cite.rule.startsWith("practice.strings.") && verdict === "not met")
		.map(({ cite, subject, reason }) => [
			cite.rule,
			toldPlainly(subject),
			say(reason).replaceAll("\u00a0", " "),
		]);

describe("a weak string", () => {
	test("is caught: collapse where salt creeps, at the foot of the salt, and nothing else", () => {
		expect(short()).toEqual([["collapse-mobile-salt", 7800, "plastic"]]);
	});

	test("by as much as arithmetic of our own, written apart from the tool, says", () => {
		// Y_p at 186.7 °F is 106,149 psi. Below 7,800 ft hang 2,200 ft of 29 lb/ft; the shoe is pushed up by 5,304 psi on
		// 8.449 in²; 18,984 lbf of tension leave 8,313 psi of collapse against 7,780 ft of salt at 1 psi/ft.
		const salt = loadsOf().find(({ id }) => id === "collapse-mobile-salt");
		expect(salt?.load?.value).toBeCloseTo(7780, 6);
		expect(salt?.rating?.value).toBeCloseTo(8313.28, 1);
		expect(salt?.least_factor?.value).toBeCloseTo(1.06855, 4);
		expect(salt?.required).toMatchObject({ value: 1.125, from: { kind: "definition" } });
	});

	test("is told once, with the case, the depth and the factor asked for", () => {
		expect(warned()).toEqual([
			[
				"practice.strings.collapse",
				"production",
				"The collapse safety factor of the production string is 1.07 under mobile salt at 7,800 ft, 0.95 × the design factor of 1.125; at least 1.00 is required.",
			],
		]);
	});

	test("with the next heavier pipe nothing is short, and nothing is told", () => {
		expect(short(STRONG)).toEqual([]);
		expect(warned(STRONG)).toEqual([]);
	});

	test.each([
		[
			"a coupling that is cut down, in the pressure test",
			[
				[
					"connection: BTC, condition: new, joint: 40 ft, from: surface, to: 6500 ft",
					"connection: BTC special clearance, condition: new, joint: 40 ft, from: surface, to: 6500 ft",
				],
				["pressure_test: { pressure: 4500 psi", "pressure_test: { pressure: 5000 psi"],
			],
			["tension-pressure-test", 20, "connection"],
		],
		[
			"light pipe at the bottom, emptied",
			[
				["weight: 29 lb/ft, grade: L80", "weight: 23 lb/ft, grade: L80"],
				["from: 8500 ft, to: 10000 ft }", "from: 8500 ft, to: 10000 ft }"],
			],
			["collapse-evacuation", 10000, "plastic"],
		],
		[
			"a heavy pull on a string that is stuck",
			[["overpull: 100000 lbf", "overpull: 300000 lbf"]],
			["tension-overpull", 20, "pipe"],
		],
		[
			"pipe let down too fast",
			[["overpull: 100000 lbf", "overpull: 100000 lbf\n  running_speed: 12 ft/s"]],
			["tension-shock", 20, "pipe"],
		],
		[
			"tubing pressure on heavy packer fluid",
			[["packer_fluid: 8.6 ppg", "packer_fluid: 12.5 ppg, tubing_pressure: 5000 psi"]],
			["burst-tubing-leak", 6500, "pipe"],
		],
	] as const)("%s, is caught where it is weakest", (_, edits, caught) => {
		expect(short(STRONG, ...edits)).toContainEqual(caught);
	});

	test("worn pipe is weaker, and the wear of one string is not another's", () => {
		const worn = short(STRONG, ["loads:\n      production", "loads:\n      wear: 15 %\n      production"]);
		expect(worn.map(([id]) => id)).toContain("collapse-mobile-salt");
		const surface = loadsOf(STRONG, [
			"loads:\n      production",
			"loads:\n      wear: 15 %\n      production",
		]);
		const plain = loadsOf(STRONG);
		expect(surface[0]?.least_factor?.value).toBe(plain[0]?.least_factor?.value);
	});

	test("less outside in burst lowers the factors of burst, and only those", () => {
		const help = [
			"loads:\n      production",
			"loads:\n      burst_backup: 0 psi/ft\n      production",
		] as const;
		const [with_, without] = [loadsOf(STRONG), loadsOf(STRONG, help)];
		for (const [i, { id, kind, least_factor }] of without.entries()) {
			const before = with_[i]?.least_factor?.value ?? Number.NaN;
			if (kind === "burst" && id !== "burst-bumped-plug" && i > with_.length / 2)
				expect(least_factor?.value, id).toBeLessThanOrEqual(before);
			if (kind === "collapse") expect(least_factor?.value, id).toBe(before);
		}
	});
});

describe("what is not stated is asked for", () => {
	const gapsOf = (...edits: Edits) => resultsOfWell(WEAK, ...edits).undetermined;

	test("salt of which it is not said whether it creeps", () => {
		const [gap] = gapsOf(["lithology: salt, mobile: true", "lithology: salt"]).filter(({ key }) =>
			key.startsWith("casing.mobile_salt"),
		);
		expect(gap?.needs).toEqual([["geology", "formations", 2, "mobile"]]);
		expect(
			loadsOf(["lithology: salt, mobile: true", "lithology: salt, mobile: false"]).map(({ id }) => id),
		).not.toContain("collapse-mobile-salt");
	});

	test("the packer of the string that is produced through", () => {
		const without = [
			"    loads:\n      production: { packer: 9300 ft, packer_fluid: 8.6 ppg }\n",
			"",
		] as const;
		const gap = gapsOf(without).find(({ key }) => key === "casing.production.loads.tubing-leak");
		expect(gap?.needs).toEqual([["casing", 1, "loads", "production"]]);
		expect(gapsOf().map(({ key }) => key)).not.toContain("casing.production.loads.tubing-leak");
	});
});
