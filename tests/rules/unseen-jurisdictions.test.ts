import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readJurisdictionText } from "../../src/catalog/jurisdictions.ts";
import { judge } from "../../src/rules/judge.ts";
import { told } from "../told.ts";
import { type Edit, set, wellWith, without } from "./builders.ts";

/*
 * Three jurisdictions that do not ship, written as data alone from public copies (the addresses stand in the files): at each of their
 * numbers, under it, over it, and without what it is judged on. The well is the round-numbered one; what a number comes to on it
 * is worked in the line.
 */

const load = (name: string) => {
	const { value, diagnostics } = readJurisdictionText(
		readFileSync(new URL(`../../fixtures/jurisdictions/${name}.yaml`, import.meta.url), "utf8"),
		`${name}.yaml`,
	);
	if (value === undefined || diagnostics.length > 0)
		throw new Error(diagnostics.map(({ what }) => told(what)).join("; "));
	return value;
};
const sets = ["us-az", "us-ms", "us-ok-okmulgee"].map(load);

const verdict = (rule: string, ...edits: readonly Edit[]): string => {
	const { well, results } = wellWith(...edits);
	const found = judge(well, results, sets).findings.filter(({ cite }) => cite.rule === rule);
	expect(found, rule).toHaveLength(1);
	return found[0]?.verdict ?? "none";
};

const SURFACE = "casing.1";
const PRODUCTION = "casing.3";
const shoe = (depth: string): readonly Edit[] => [
	set(`${SURFACE}.pipe.0.to`, depth),
	set("holes.1.to", `${Number.parseFloat(depth) + 10} ft`),
	set(`${SURFACE}.cement.slurries.1.to`, depth),
	set(`${SURFACE}.centralizers`, { bow_spring: [{ from: "surface", to: depth, every: "1 joints" }] }),
];
const event = (name: string, on: string): Edit =>
	set("site.events", [{ event: name, string: "surface", on }]);
const sent = (rule: string, on: string): Edit => set("site.notices", [{ to: "the agency", rule, sent: on }]);
const issued = set("well.issued", "2026-12-31");

interface Case {
	readonly rule: string;
	readonly at: readonly Edit[];
	readonly under: readonly Edit[];
	readonly over: readonly Edit[];
	/** Verdicts at, under and over. */
	readonly expect: readonly [string, string, string];
	readonly absent?: readonly Edit[];
}
const LEAST = ["met", "not met", "met"] as const;
const MOST = ["met", "met", "not met"] as const;
const one = (path: string, values: readonly [unknown, unknown, unknown]) => ({
	at: [set(path, values[0])],
	under: [set(path, values[1])],
	over: [set(path, values[2])],
});

const CASES: readonly Case[] = [
	{
		rule: "us-az.surf.woc",
		...one(`${SURFACE}.cement.wait_on_cement`, ["12 hr", "11.9 hr", "12.1 hr"]),
		expect: LEAST,
		absent: [without(`${SURFACE}.cement.wait_on_cement`)],
	},
	{
		// 1 psi/ft × 980 ft of pipe below the hanger, under 70 % of 2,735 psi.
		rule: "us-az.surf.test",
		...one(`${SURFACE}.pressure_test.pressure`, ["980 psi", "979 psi", "981 psi"]),
		expect: LEAST,
		absent: [without(`${SURFACE}.pressure_test`)],
	},
	{
		rule: "us-az.surf.test",
		...one(`${SURFACE}.pressure_test.hold`, ["30 min", "29 min", "31 min"]),
		expect: LEAST,
	},
	{
		rule: "us-az.surf.test",
		...one(`${SURFACE}.pressure_test.allowed_fall`, ["10 %", "9.9 %", "10.1 %"]),
		expect: MOST,
		absent: [without(`${SURFACE}.pressure_test.allowed_fall`)],
	},
	{
		rule: "us-az.surf.test.report",
		at: [issued, event("casing test", "2026-07-08"), sent("us-az.surf.test.report", "2026-07-23")],
		under: [issued, event("casing test", "2026-07-08"), sent("us-az.surf.test.report", "2026-07-22")],
		over: [issued, event("casing test", "2026-07-08"), sent("us-az.surf.test.report", "2026-07-24")],
		expect: MOST,
		absent: [],
	},
	{
		rule: "us-az.surf.notice",
		at: [issued, event("string set", "2026-07-05"), sent("us-az.surf.notice", "2026-07-03")],
		under: [issued, event("string set", "2026-07-05"), sent("us-az.surf.notice", "2026-07-02")],
		over: [issued, event("string set", "2026-07-05"), sent("us-az.surf.notice", "2026-07-04")],
		expect: MOST,
		absent: [],
	},
	{
		// 9,990 ft below ground: 930 ft + 25 % of 990 ft = 1,177.5 ft, at 20 ft above ground 1,197.5 ft along the hole.
		rule: "us-ms.surf.depth",
		at: shoe("1197.5 ft"),
		under: shoe("1197.4 ft"),
		over: shoe("1197.6 ft"),
		expect: LEAST,
	},
	{
		rule: "us-ms.prod.toc",
		...one(`${PRODUCTION}.cement.slurries.0.from`, ["9500 ft", "9500.1 ft", "9499.9 ft"]),
		expect: LEAST,
		absent: [without(`${PRODUCTION}.cement`)],
	},
	{
		rule: "us-ms.prod.woc",
		...one(`${PRODUCTION}.cement.wait_on_cement`, ["24 hr", "23.9 hr", "24.1 hr"]),
		expect: LEAST,
		absent: [without(`${PRODUCTION}.cement.wait_on_cement`)],
	},
	{
		// "A drop of ten percent or more" fails.
		rule: "us-ms.prod.test",
		...one(`${PRODUCTION}.pressure_test.allowed_fall`, ["10 %", "9.9 %", "10.1 %"]),
		expect: ["not met", "met", "not met"],
		absent: [without(`${PRODUCTION}.pressure_test`)],
	},
	{
		// 0.2 psi/ft × 9,980 ft would be 1,996 psi; the rule stops at 1,500 psi.
		rule: "us-ms.prod.test",
		at: [set(`${PRODUCTION}.pressure_test`, { pressure: "1500 psi", hold: "30 min", allowed_fall: "5 %" })],
		under: [
			set(`${PRODUCTION}.pressure_test`, { pressure: "1499 psi", hold: "30 min", allowed_fall: "5 %" }),
		],
		over: [set(`${PRODUCTION}.pressure_test`, { pressure: "1501 psi", hold: "30 min", allowed_fall: "5 %" })],
		expect: LEAST,
	},
	{
		rule: "us-ok-okmulgee.surf.depth",
		...one("geology.protected_water.base", ["950 ft TVD", "950.1 ft TVD", "949.9 ft TVD"]),
		expect: LEAST,
		absent: [without("geology.protected_water")],
	},
	{
		rule: "us-ok-okmulgee.surf.least",
		at: shoe("220 ft"),
		under: shoe("219.9 ft"),
		over: shoe("220.1 ft"),
		expect: LEAST,
	},
	{
		// Joints of 40 ft: 200 ft apart is every fifth joint.
		rule: "us-ok-okmulgee.surf.centralizers",
		at: [
			set(`${SURFACE}.centralizers`, {
				bow_spring: [
					{ from: "surface", to: "960 ft", every: "5 joints" },
					{ from: "960 ft", to: "1000 ft", every: "1 joints" },
				],
			}),
		],
		under: [
			set(`${SURFACE}.centralizers`, {
				bow_spring: [
					{ from: "surface", to: "960 ft", every: "4 joints" },
					{ from: "960 ft", to: "1000 ft", every: "1 joints" },
				],
			}),
		],
		over: [
			set(`${SURFACE}.centralizers`, {
				bow_spring: [
					{ from: "surface", to: "960 ft", every: "6 joints" },
					{ from: "960 ft", to: "1000 ft", every: "1 joints" },
				],
			}),
		],
		expect: MOST,
		absent: [without(`${SURFACE}.centralizers`)],
	},
];

describe.each(CASES.map((each, i) => [`${each.rule} (${i + 1})`, each] as const))("%s", (_, each) => {
	it("at, under and over", () => {
		expect([each.at, each.under, each.over].map((edits) => verdict(each.rule, ...edits))).toEqual([
			...each.expect,
		]);
	});
	if (each.absent !== undefined)
		it("cannot be told without what it is judged on", () => {
			expect(verdict(each.rule, ...(each.absent ?? []))).toBe("cannot tell");
		});
});

describe("three jurisdictions as data alone", () => {
	it("name what they were compared with, and every kind of file they may be", () => {
		expect(sets.map(({ kind }) => kind)).toEqual(["state", "state", "municipality"]);
		for (const { rules } of sets)
			for (const { standing, publicCopy } of rules) {
				expect(standing).toBe("compared with a public copy");
				expect(publicCopy?.read).not.toBe("");
			}
	});
	it("the Mississippi table comes out at each of its steps", () => {
		const lines = [
			[0, 200],
			[0.08, 0],
			[0.1, -120],
			[0.15, -470],
			[0.2, -870],
			[0.25, -1320],
		] as const;
		const table = (depth: number): number => {
			const steps = [
				[9000, 930, 0.25],
				[8000, 730, 0.2],
				[7000, 580, 0.15],
				[6000, 480, 0.1],
				[2500, 200, 0.08],
			] as const;
			const step = steps.find(([from]) => depth >= from);
			return step === undefined ? 200 : step[1] + step[2] * (depth - step[0]);
		};
		for (const depth of [1000, 2500, 4000, 6000, 6500, 7000, 7500, 8000, 8500, 9000, 12000])
			expect(Math.max(...lines.map(([k, c]) => k * depth + c))).toBeCloseTo(table(depth), 9);
	});
});
