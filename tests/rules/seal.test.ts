import { describe, expect, test } from "vitest";
import { type Change, foundOf, judgedStarter } from "./changed-starter.ts";
import type { Told } from "./told.ts";

const judged = (...changes: readonly Change[]): readonly Told[] =>
	judgedStarter("horizontal-as-built", ...changes);
const found = (findings: readonly Told[], rule: string, subject: string): Told =>
	foundOf(findings, `practice.isolation.${rule}`, subject);

const FILE = "free_pipe: 74 mV, full_bond: 2 mV, file: horizontal-as-built-bond-log.csv";
const log = (to: number) => [FILE, `intervals: [{ from: 7100 ft, to: ${to} ft, bond_index: 80 % }]`] as const;
const readings = (rebuilt: string) =>
	["bled_to: 0 psi, bled_in: 4 min, rebuilt_to: 0 psi, rebuilt_in: 24 hr", rebuilt] as const;
const SQUEEZE = ", held: true, tested_by: shoe test to 13.8 ppg";

describe("what shows that cement seals", () => {
	const asBuilt = judged();

	test("the treated starter meets practice", () => {
		for (const [rule, subject] of [
			["water-seal", "well"],
			["bonded-interval", "production"],
			["bonded-interval", "intermediate"],
			["squeeze", "intermediate"],
			["sustained-pressure", "production"],
		] as const)
			expect(found(asBuilt, rule, subject).verdict, `${rule} ${subject}`).toBe("met");
	});

	test("at the limits they are met; past them an engineer, and then nobody, can pass them", () => {
		const at = judged(log(7154), readings("bled_to: 0 psi, rebuilt_to: 0 psi"));
		expect(found(at, "bonded-interval", "production").verdict).toBe("met");
		expect(found(at, "sustained-pressure", "production").verdict).toBe("met");
		const between = judged(log(7153), readings("bled_to: 10 psi, rebuilt_to: 110 psi"));
		expect(found(between, "bonded-interval", "production").verdict).toBe("needs judgement");
		expect(found(between, "sustained-pressure", "production").verdict).toBe("needs judgement");
		const past = judged(log(7114), readings("bled_to: 0 psi, rebuilt_to: 101 psi"), [
			SQUEEZE,
			", held: false",
		]);
		expect(found(past, "bonded-interval", "production").verdict).toBe("not met");
		expect(found(past, "sustained-pressure", "production").verdict).toBe("not met");
		expect(found(past, "squeeze", "intermediate").verdict).toBe("not met");
	});

	test("pressure that nobody watched, and a squeeze that nobody tested, cannot be told", () => {
		const open = judged(readings("bled_to: 0 psi"), [SQUEEZE, ""]);
		expect(found(open, "sustained-pressure", "production").verdict).toBe("cannot tell");
		expect(found(open, "squeeze", "intermediate").verdict).toBe("cannot tell");
	});

	test("protected water behind cement that is only planned, or that a log found unbonded, is not shown sealed", () => {
		const surface = "returns: { to_surface: 62 bbl }\n        top: { depth: surface, method: returns seen }";
		const intermediate =
			"returns: { to_surface: 52 bbl }\n        top: { depth: surface, method: returns seen }";
		const unseen = judged(
			[surface, "returns: { while_pumping: full }"],
			[intermediate, "returns: { while_pumping: full }"],
			[
				"        evaluation_log: bond log of 2025-11-18 shows cement from the shoe to 140 ft; nothing above was logged\n",
				"",
			],
		);
		expect(found(unseen, "water-seal", "well").verdict).toBe("not met");
	});
});
