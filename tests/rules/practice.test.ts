import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { applyDesignBasis, loadPractice, PRACTICE_TOPICS } from "../../src/catalog/jurisdictions.ts";
import { readJurisdiction } from "../../src/catalog/limits/read-jurisdiction.ts";
import { stopsOf, toldIn } from "../../src/rules/finding.ts";
import { told } from "../told.ts";
import { type Edit, row, set, wellWith, without } from "./builders.ts";
import { judged as judge } from "./told.ts";

const seeds = new URL("../../seeds/", import.meta.url);
const practice = loadPractice();
const rules = (practice.value ?? []).flatMap((each) => each.rules);

describe("the shipped practice sets", () => {
	it("are the files that lie there, and read without fault", () => {
		const files = readdirSync(new URL("practice/", seeds)).map((name) => name.replace(/\.yaml$/, ""));
		expect(files.sort()).toEqual([...PRACTICE_TOPICS].sort());
		expect(practice.diagnostics).toEqual([]);
		expect(rules.length).toBeGreaterThan(0);
	});
	it("are printed as practice, never as law", () => {
		for (const { kind, name, code } of practice.value ?? [])
			expect([kind, name, code.startsWith("practice.")]).toEqual(["practice", "Engineering practice", true]);
	});
	it("stop jobs that there are", () => {
		const jobs = readdirSync(new URL("jobs/", seeds)).map((name) => name.replace(/\.yaml$/, ""));
		for (const { stop = [] } of rules) for (const job of stop) expect(jobs).toContain(job);
	});
	it.each(rules)("$id says how it is known", ({ howKnown, requirement }) => {
		expect(howKnown.of ?? howKnown.confidence).toBeDefined();
		expect(requirement).toMatch(/^[A-Z].*\.$/);
	});
});

const made = (parts: Readonly<Record<string, unknown>>) => {
	const { value, diagnostics } = readJurisdiction(
		{
			practice: "made-up",
			kind: "practice",
			rules: [row({ id: "practice.made-up.rule", ...parts })],
		},
		"made-up.yaml",
	);
	if (value === undefined || value.rules.length === 0)
		throw new Error(diagnostics.map(({ what }) => told(what)).join("; "));
	return value;
};
const judged = (parts: Readonly<Record<string, unknown>>, ...edits: readonly Edit[]) => {
	const { well, results } = wellWith(...edits);
	const [first] = judge(well, results, [made(parts)]).findings;
	if (first === undefined) throw new Error("no finding");
	return first;
};

const FLAT = {
	check: "relief-below-maximum",
	limit: { measure: "relief valve setting", at_most: "9000 psi" },
	confirm: { measure: "relief valve setting", at_most: "9500 psi" },
	stop: ["pumping"],
	tell: ["crew"],
};
const relief = (pressure: string): Edit => set("stimulation.limits.relief_valve", pressure);

describe("a limit of practice", () => {
	it.each([
		["9000 psi", "met"],
		["9001 psi", "needs judgement"],
		["9500 psi", "needs judgement"],
		["9501 psi", "not met"],
	])("with a lesser limit to confirm: %s is %s", (pressure, verdict) => {
		expect(judged(FLAT, relief(pressure)).verdict).toBe(verdict);
	});
	it("that is open keeps its job from starting, and one to confirm does not", () => {
		const open = judged(FLAT, relief("9501 psi"));
		const lacking = judged(FLAT, without("stimulation.limits.relief_valve"));
		const confirm = judged(FLAT, relief("9400 psi"));
		expect(lacking.verdict).toBe("cannot tell");
		expect(stopsOf([open, lacking, confirm], "pumping")).toEqual([open, lacking]);
		expect(stopsOf([open], "casing")).toEqual([]);
		expect(toldIn([open, lacking, confirm], "crew")).toEqual([open, lacking, confirm]);
		expect(toldIn([open, judged(FLAT, relief("9000 psi"))], "landowner")).toEqual([]);
	});
	it("is cited as practice", () => {
		expect(judged(FLAT, relief("9000 psi")).cite.kind).toBe("practice");
	});
});

describe("a company's design basis", () => {
	const basis = { by: "Larkspur drilling", why: "Valves are set at 8,500 psi" };
	const replaces = "practice.made-up.rule";
	const limit = { measure: "relief valve setting", at_most: "8500 psi" };
	it("stands in for the practice rule that it names", () => {
		const { value, diagnostics } = applyDesignBasis([made(FLAT)], [{ ...basis, replaces, limit }]);
		expect(diagnostics).toEqual([]);
		const { well, results } = wellWith(relief("8900 psi"));
		const [finding] = judge(well, results, value ?? []).findings;
		expect(finding?.verdict).toBe("not met");
		expect(told(finding?.cite.citation)).toBe(
			"Larkspur drilling’s design basis, in place of: Made-up Code § 1",
		);
		expect(told(finding?.requirement)).toBe("Valves are set at 8,500 psi.");
	});
	it("cannot replace what is not practice", () => {
		const { diagnostics } = applyDesignBasis(
			[made(FLAT)],
			[{ ...basis, replaces: "us-tx.hf.rating", limit }],
		);
		expect(diagnostics.map(({ code, at }) => [code, at.path])).toEqual([
			["rules/unknown-rule", ["design_basis", "limits", 0, "replaces"]],
		]);
	});
	it("is read with the forms of the rule's own check", () => {
		const { diagnostics } = applyDesignBasis(
			[made(FLAT)],
			[{ ...basis, replaces, limit: { at: "surface" } }],
		);
		expect(diagnostics.map(({ at }) => at.path.slice(0, 3))).toEqual([["design_basis", "limits", 0]]);
	});
});
