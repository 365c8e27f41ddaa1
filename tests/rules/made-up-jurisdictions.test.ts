import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
	JURISDICTION_CODES,
	loadJurisdictions,
	loadPractice,
	readJurisdictionText,
} from "../../src/catalog/jurisdictions.ts";
import { CHECK_IDS, CHECK_LIMITS } from "../../src/catalog/limits/checks.ts";
import type { Amount, CentralizerPattern, Limit } from "../../src/catalog/limits/limit.ts";
import { wellWith } from "./builders.ts";
import { judged as judge } from "./told.ts";

const load = (name: string) =>
	readJurisdictionText(
		readFileSync(new URL(`../../fixtures/jurisdictions/${name}.yaml`, import.meta.url), "utf8"),
		`fixtures/jurisdictions/${name}.yaml`,
	);
const loaded = ["xx-one", "xx-two", "xx-three"].map(load);
const all = loaded.flatMap(({ value }) => (value === undefined ? [] : [value]));
const jurisdictions = all.slice(0, 2);
const rules = jurisdictions.flatMap((each) => each.rules);
const everyRule = all.flatMap((each) => each.rules);

const checksOf = (set: { readonly rules: readonly { readonly check: string }[] }): readonly string[] =>
	set.rules.map(({ check }) => check);

const limitsIn = (limit: Limit): readonly Limit[] => {
	if (limit.form === "all of" || limit.form === "any of") return [limit, ...limit.parts.flatMap(limitsIn)];
	return limit.form === "if" ? [limit, ...limitsIn(limit.limit)] : [limit];
};
const amountsIn = (amount: Amount): readonly Amount[] => {
	switch (amount.kind) {
		case "greatest of":
		case "least of":
		case "sum of":
			return [amount, ...amount.among.flatMap(amountsIn)];
		case "clamp":
			return [amount, ...[amount.amount, amount.from, amount.to].flatMap(amountsIn)];
		case "steps":
			return [amount, ...[...amount.steps.map((step) => step.amount), amount.beyond].flatMap(amountsIn)];
		case "by method":
			return [amount, ...Object.values(amount.cases).flatMap(amountsIn)];
		default:
			return [amount];
	}
};

describe("two made-up jurisdictions", () => {
	it("read without fault", () => {
		expect(loaded.flatMap(({ diagnostics }) => diagnostics)).toEqual([]);
		expect(all).toHaveLength(3);
	});

	it("use every check, every form of limit, every form of amount and every pattern", () => {
		// Checks that only engineering practice asks for are tested with its own rows.
		const law = new Set((loadJurisdictions(JURISDICTION_CODES).value ?? []).flatMap(checksOf));
		const practice = new Set((loadPractice().value ?? []).flatMap(checksOf).filter((id) => !law.has(id)));
		const used = new Set(everyRule.map(({ check }) => check));
		expect(CHECK_IDS.filter((id) => !practice.has(id) && !used.has(id))).toEqual([]);
		const limits = everyRule.flatMap(({ limit }) => limitsIn(limit));
		const lawForms = new Set<string>(
			CHECK_IDS.filter((id) => !practice.has(id)).flatMap((id) => CHECK_LIMITS[id].forms),
		);
		const forms = new Set<string>(limits.map(({ form }) => form));
		expect([...lawForms, "all of", "any of", "if"].filter((form) => !forms.has(form))).toEqual([]);
		const amounts = limits.flatMap((limit) => (limit.form === "threshold" ? amountsIn(limit.amount) : []));
		const zones = limits.flatMap((limit) =>
			limit.form === "threshold" && limit.zone && "height" in limit.zone ? amountsIn(limit.zone.height) : [],
		);
		const kinds: readonly Amount["kind"][] = [
			"by method",
			"clamp",
			"constant",
			"greatest of",
			"least of",
			"measure",
			"steps",
			"sum of",
			"times",
		];
		expect([...new Set([...amounts, ...zones].map(({ kind }) => kind))].sort()).toEqual(kinds);
		const patterns = limits.flatMap((limit) => (limit.form === "pattern" ? [limit.pattern.kind] : []));
		const all: readonly CentralizerPattern["kind"][] = [
			"bottom joints",
			"every joints",
			"first and then",
			"through protected water",
		];
		expect([...new Set(patterns)].sort()).toEqual(all);
	});

	it("come to these verdicts on the round-numbered well", () => {
		const { well, results } = wellWith();
		const { findings } = judge(well, results, jurisdictions);
		expect(
			findings.map(({ cite, subject, verdict }) => `${cite.rule} ${subject}: ${verdict}`),
		).toMatchInlineSnapshot(`
			[
			  "xx-one.shoe.constant surface: met",
			  "xx-one.depth.clamp surface: met",
			  "xx-one.seat surface: needs judgement",
			  "xx-one.seat intermediate: needs judgement",
			  "xx-one.seat production: needs judgement",
			  "xx-one.fit surface: met",
			  "xx-one.lap liner: does not apply",
			  "xx-one.surface surface: met",
			  "xx-one.top intermediate: met",
			  "xx-one.cover well: met",
			  "xx-one.class surface: met",
			  "xx-one.strength surface: met",
			  "xx-one.free surface: met",
			  "xx-one.critical surface: met",
			  "xx-one.woc surface: met",
			  "xx-one.plugs surface: met",
			  "xx-one.spud well: does not apply",
			  "xx-one.report well: does not apply",
			  "xx-one.compared well: met",
			  "xx-two.test surface: met",
			  "xx-two.test intermediate: met",
			  "xx-two.test production: met",
			  "xx-two.test.depth surface: met",
			  "xx-two.yield production: met",
			  "xx-two.relief production: met",
			  "xx-two.annulus intermediate × surface annulus: not met",
			  "xx-two.annulus production × intermediate annulus: met",
			  "xx-two.hole surface: met",
			  "xx-two.hole intermediate: met",
			  "xx-two.hole production: met",
			  "xx-two.condition intermediate: met",
			  "xx-two.condition production: met",
			  "xx-two.centralizers surface: met",
			  "xx-two.fluid surface: met",
			  "xx-two.water well: met",
			  "xx-two.samples well: met",
			  "xx-two.setback The house: not met",
			  "xx-two.setback The water well: met",
			  "xx-two.offset well: met",
			  "xx-two.gas well: needs judgement",
			  "xx-two.list well: met",
			  "xx-two.fields well: met",
			  "xx-two.notice well: does not apply",
			  "xx-two.report well: does not apply",
			  "xx-two.document well: needs judgement",
			  "xx-two.judgement well: does not apply",
			  "xx-two.string production: needs judgement",
			  "xx-two.ended well: does not apply",
			  "xx-two.coming well: does not apply",
			  "xx-two.about surface: needs judgement",
			  "xx-two.consent The house: not met",
			  "xx-two.sum surface: not met",
			  "xx-two.volume well: met",
			  "xx-two.strength surface: met",
			  "xx-two.set surface: cannot tell",
			  "xx-two.tested surface: cannot tell",
			]
		`);
	});

	it("keep the order of the files, a finding for each thing, and counts that add up", () => {
		const { well, results } = wellWith();
		const { findings, counts } = judge(well, results, jurisdictions);
		const order = findings.map(({ cite }) => rules.findIndex(({ id }) => id === cite.rule));
		expect(order).toEqual([...order].sort((a, b) => a - b));
		expect(Object.values(counts).reduce((sum, count) => sum + count, 0)).toBe(findings.length);
		for (const rule of rules)
			expect(
				findings.some(({ cite }) => cite.rule === rule.id),
				rule.id,
			).toBe(true);
	});

	it("a compared row keeps its text and date; the others say how they were known", () => {
		const { well, results } = wellWith();
		const { findings } = judge(well, results, jurisdictions);
		const compared = findings.find(({ cite }) => cite.rule === "xx-one.compared");
		expect(compared?.cite).toMatchObject({
			standing: "compared",
			textAsOf: "2026-01-01",
			inForceFrom: "2025-01-01",
		});
		const low = findings.find(({ cite }) => cite.rule === "xx-two.string");
		expect(low?.cite).toMatchObject({
			standing: "not compared",
			howKnown: { way: "memory", confidence: "low" },
		});
	});
});
