import { readFileSync } from "node:fs";
import { describe, expect, it, test } from "vitest";
import { loadJurisdictions } from "../../src/catalog/jurisdictions.ts";
import { readYaml } from "../../src/source/read-yaml.ts";
import { starterText, understandText } from "../starters.ts";
import { set, wellWith } from "./builders.ts";
import { judged as judge } from "./told.ts";

interface Case {
	readonly name: string;
	readonly edits: readonly { readonly at: string; readonly to: unknown }[];
	readonly rules: readonly string[];
	readonly expect: readonly {
		readonly rule: string;
		readonly subject: string;
		readonly verdict: string;
		readonly citation?: string;
		readonly says: string;
	}[];
}

const text = readFileSync(new URL("../../fixtures/wells/verdicts.yaml", import.meta.url), "utf8");
const read = readYaml(text, "verdicts.yaml");
const { cases } = structuredClone(JSON.parse(JSON.stringify(read.value?.value))) as {
	readonly cases: readonly Case[];
};

/** Numbers stand before their units with a space that does not break. */
const plain = (words = ""): string => words.replaceAll(/[\u00a0\u202f]/g, " ").toLowerCase();

const byRule = (codes: readonly string[]) => loadJurisdictions(codes).value ?? [];

describe("wells with one thing wrong", () => {
	it("are all read", () => {
		expect(read.diagnostics).toEqual([]);
		expect(cases.length).toBeGreaterThanOrEqual(6);
	});

	test.each(cases.map((each) => [each.name, each] as const))(
		"%s",
		(_, { edits, rules, expect: expected }) => {
			const { well, results } = wellWith(...edits.map(({ at, to }) => set(at, to)));
			const { findings } = judge(well, results, byRule(rules));
			for (const { rule, subject, verdict, citation, says } of expected) {
				const found = findings.find(({ cite, subject: of }) => cite.rule === rule && of === subject);
				expect(found, `${rule} of ${subject}`).toBeDefined();
				expect(found?.verdict, `${rule}: ${found?.because}`).toBe(verdict);
				expect(plain(found?.because)).toContain(plain(says));
				if (citation !== undefined) expect(found?.cite.citation).toBe(citation);
			}
		},
	);
});

describe("an old well 200 ft from the trace of a lateral", () => {
	// 5,000 ft out along the trace (azimuth 158° from grid north, 0.80° east of true), then 200 ft square to it.
	const place = "latitude: 31.4697024, longitude: -98.7660028";
	const written = (evidence: string) =>
		starterText("horizontal").replace(
			/ {4}- id: ow-1\n(?: {6}.*\n)+/,
			`    - { id: ow-1, name: Sorrel 1, status: plugged 1981, ${place}, total_depth: 8900 ft TVD, path: { vertical: true }, position_uncertainty: 150 ft${evidence} }\n`,
		);
	const judged = (evidence: string) => {
		const { findings, diagnostics } = understandText(written(evidence));
		if (findings === undefined) throw new Error(diagnostics.map(({ what }) => what).join("; "));
		const { well, results } = findings;
		const finding = judge(well, results, byRule(["us-pa"])).findings.find(
			({ cite }) => cite.rule === "us-pa.offset",
		);
		return { well, results, finding };
	};

	it("is found there, in plan and in space, with nothing deducted", () => {
		const { results } = judged("");
		const [plan] = results.site.offset_wells;
		const [bore] = results.isolation.offset_wells;
		expect(plan?.from_path?.value).toBeCloseTo(200, 0);
		const depth = (results.stimulation?.top_perforation.tvd.value ?? 0) - 8900;
		expect(bore?.treated_in_space?.value).toBeCloseTo(Math.hypot(200, depth), 0);
		expect(bore?.in_space?.value).toBeLessThanOrEqual(bore?.treated_in_space?.value ?? 0);
	});

	it("cannot be told while nothing speaks for its state, and the evidence is named when it does", () => {
		const without = judged("").finding;
		expect(without).toMatchObject({ verdict: "cannot tell", cite: { citation: "25 Pa. Code § 78a.52a(a)" } });
		expect(without?.missing?.map(({ at }) => at)).toEqual([["site", "offset_wells", 0, "evidence"]]);
		const withIt = judged(", evidence: plugging record on file").finding;
		expect(withIt).toMatchObject({ verdict: "met" });
		expect(plain(withIt?.because)).toMatch(
			/200 ft from the wellbore; evidence of its condition: plugging record on file/,
		);
	});
});
