import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { JURISDICTION_CODES, loadJurisdictions, loadPractice } from "../../src/catalog/jurisdictions.ts";
import { CHECK_IDS, CHECK_LIMITS } from "../../src/catalog/limits/checks.ts";
import type { Condition, Limit } from "../../src/catalog/limits/limit.ts";
import { MEASURES } from "../../src/catalog/limits/measures.ts";
import { LIMIT_FORMS, SETBACK_KINDS } from "../../src/catalog/limits/vocabulary.ts";
import { NEIGHBOR_KINDS } from "../../src/definition/neighbors.ts";
import { read, row } from "../rules/builders.ts";
import { told } from "../told.ts";

const seeds = new URL("../../seeds/jurisdictions/", import.meta.url);
const loaded = loadJurisdictions(JURISDICTION_CODES);
const jurisdictions = loaded.value ?? [];
const rules = jurisdictions.flatMap(({ rules: each }) => each);

describe("the shipped jurisdictions", () => {
	it("are the files that lie there", () => {
		const files = readdirSync(seeds)
			.filter((name) => name.endsWith(".yaml"))
			.map((name) => name.replace(/\.yaml$/, ""));
		expect(files.sort()).toEqual([...JURISDICTION_CODES].sort());
		expect(files.length).toBeGreaterThan(9);
	});
	it("read without fault", () => {
		expect(loaded.diagnostics).toEqual([]);
		expect(jurisdictions.map(({ code }) => code)).toEqual([...JURISDICTION_CODES]);
		expect(rules.length).toBeGreaterThan(200);
	});
	it("have ids of their own", () => {
		expect(new Set(rules.map(({ id }) => id)).size).toBe(rules.length);
	});
});

describe.each(rules)("$id", (rule) => {
	it("says what it requires in one sentence, whose it is, and how it was known", () => {
		expect(rule.requirement).toMatch(/^[A-Z].*\.$/);
		expect(rule.requirement).not.toMatch(/complian| {2}/i);
		expect(rule.citation).toMatch(/.{6}/);
		expect(rule.howKnown.way).not.toBe("");
		// What was not read itself says whose words it rests on, or how sure the memory is.
		if (rule.howKnown.way !== "read") expect(rule.howKnown.of ?? rule.howKnown.confidence).toBeDefined();
		if (rule.howKnown.way === "memory") expect(rule.howKnown.confidence).toBeDefined();
	});
	it("claims to be compared only where it names what with: an address, a date, and what was read", () => {
		expect(rule.standing).not.toBe("compared");
		expect(rule.officialText).toBeUndefined();
		expect(rule.standing === "compared with a public copy").toBe(rule.publicCopy !== undefined);
		expect(rule.textAsOf).toBe(rule.publicCopy?.dated ?? "unknown");
		if (rule.publicCopy !== undefined) expect(rule.publicCopy.at).toMatch(/\.[a-z]{2,}/);
		if (rule.publicCopy?.kind === "draft") expect(rule.howKnown.way).toBe("draft");
	});
});

describe("the figures that sides by side differ", () => {
	const of = (id: string) => rules.find((rule) => rule.id === id);
	const numbers = (limit: Limit | undefined): string =>
		JSON.stringify(limit, (key, value) => (key === "from" && typeof value === "object" ? undefined : value));
	it.each([
		["us-tx.hf.rating", "1.1"],
		["us-pa.casing.rating", "1.2"],
		["us-nd.hf.intermediate", "0.85"],
		["us-blm.clearance", "0.422"],
		["us-nd.casing.test", "150"],
	])("%s carries %s", (id, figure) => {
		expect(of(id)).toBeDefined();
		expect(numbers(of(id)?.limit)).toContain(`"value":${figure}`);
	});
	it("a margin of 1.20 on the yield is stricter than 0.85 of it, as 1 / 1.20 = 0.833", () => {
		expect(1 / 1.2).toBeLessThan(0.85);
	});
});

describe("the vocabulary", () => {
	it("has kinds of neighbor that a definition can have", () => {
		for (const kind of SETBACK_KINDS) expect(NEIGHBOR_KINDS).toContain(kind);
	});
	it("puts thresholds only on checks that name their measures", () => {
		for (const id of CHECK_IDS) {
			const { forms, measures } = CHECK_LIMITS[id];
			expect(forms.length).toBeGreaterThan(0);
			expect((forms as readonly string[]).includes("threshold")).toBe(measures.length > 0);
			for (const form of forms) expect(LIMIT_FORMS).toContain(form);
			for (const measure of measures) expect(MEASURES[measure]).toBeDefined();
		}
	});
	it("is used: every check that ships has a rule somewhere, or is named here", () => {
		const practice = (loadPractice().value ?? []).flatMap((set) => set.rules);
		const used = new Set([...rules, ...practice].map(({ check }) => check));
		const UNUSED: readonly string[] = ["shoe-strength", "string-report"];
		expect(CHECK_IDS.filter((id) => !used.has(id))).toEqual(UNUSED);
	});
	it("conditions of the shipped rows are facts, comparisons, events, or one of several", () => {
		const kinds = rules.flatMap(({ appliesTo }) => appliesTo.when).map(({ kind }: Condition) => kind);
		expect(new Set(kinds)).toEqual(new Set(["any", "dated", "fact", "threshold"]));
	});
});

describe("what is refused", () => {
	const shoe = { check: "surface-shoe-depth", applies_to: { string: "surface" } };
	const limit = { measure: "shoe below protected water", at_least: "50 ft" };
	const faults = (parts: Readonly<Record<string, unknown>>, more = {}) =>
		read([row({ ...shoe, limit, ...parts })], more).diagnostics.map(
			({ code, at }) => `${code} ${at.path.join(".")}`,
		);
	const leaf = (changed: Readonly<Record<string, unknown>>) => faults({ limit: { ...limit, ...changed } });
	const leafExpected = (at_least: string) =>
		read([row({ ...shoe, limit: { ...limit, at_least } })]).diagnostics.map(({ expected }) => told(expected));
	const instead = (other: unknown, check?: string) =>
		faults({ limit: other, ...(check === undefined ? {} : { check }) });

	it("nothing, in a row that is right", () => {
		expect(faults({})).toEqual([]);
	});
	it.each(["citation", "requirement", "standing", "how_known", "text_as_of", "in_force"])(
		"a row without its %s",
		(key) => {
			const { [key]: _, ...rest } = row({ ...shoe, limit });
			expect(read([rest]).diagnostics.map(({ code, at }) => `${code} ${at.path.join(".")}`)).toEqual([
				`rules/file-shape rules.0.${key}`,
			]);
		},
	);
	it("says what is due by name, and lists the choices", () => {
		const due = (parts: Readonly<Record<string, unknown>>, more = {}) =>
			read([row({ ...shoe, limit, ...parts })], more).diagnostics.map(({ expected }) => told(expected));
		const { limit: _limit, ...rest } = row({ ...shoe, limit });
		expect(read([rest]).diagnostics.map(({ expected }) => told(expected))).toEqual([
			"a limit, such as { measure: …, at_least: … }",
		]);
		expect(due({ standing: "checked" })).toEqual([
			"one of: compared, compared with a public copy, not compared",
		]);
		expect(due({}, { kind: "parish" })).toEqual([
			"one of: federal, state, province, county, municipality, tribe, field, company",
		]);
		expect(leafExpected("50")).toEqual(["a value such as 120 ft"]);
	});
	it("compared without the whole text and its date", () => {
		expect(faults({ standing: "compared" })).toEqual(["rules/standing rules.0.standing"]);
		expect(faults({ standing: "compared", official_text: { text: "Whole." } })).toEqual([
			"rules/file-shape rules.0.official_text.dated",
		]);
		expect(
			faults({ standing: "compared", official_text: { text: "Whole.", dated: "unknown" } }),
		).toHaveLength(1);
		expect(faults({ standing: "compared", official_text: { text: "Whole.", dated: "2026-01-01" } })).toEqual(
			[],
		);
	});
	it("a check nobody wrote", () => {
		expect(faults({ check: "surface-shoe-deepness" })).toEqual(["rules/unknown-check rules.0.check"]);
	});
	it("dates that are no dates, and keys that mean nothing", () => {
		expect(faults({ text_as_of: "last year" })).toEqual(["rules/file-shape rules.0.text_as_of"]);
		expect(faults({ in_force: { from: "2026-13-01" } })).toEqual(["rules/file-shape rules.0.in_force.from"]);
		expect(faults({ severity: "high" })).toEqual(["rules/file-shape rules.0.severity"]);
	});
	it("an id of another jurisdiction, and one that is taken", () => {
		expect(faults({ id: "xx-two.rule" })).toEqual(["rules/id rules.0.id"]);
		const twice = read([row({ ...shoe, limit }), row({ ...shoe, limit })]);
		expect(twice.diagnostics.map(({ at }) => at.path)).toEqual([["rules", 1, "id"]]);
		expect(twice.value?.rules).toHaveLength(1);
	});
	it("a rule that does not say which string or neighbor", () => {
		expect(faults({ applies_to: {} })).toEqual(["rules/file-shape rules.0.applies_to"]);
		expect(faults({ applies_to: { string: "mudline" } })).toEqual([
			"rules/limit-form rules.0.applies_to.string",
		]);
	});
	it.each([
		["without its unit", { at_least: "50" }, "rules/limit-unit rules.0.limit.at_least"],
		["as a bare number", { at_least: 50 }, "rules/limit-unit rules.0.limit.at_least"],
		["of another kind", { at_least: "50 psi" }, "rules/limit-unit rules.0.limit.at_least"],
		["with a comma", { at_least: "1,000 ft" }, "rules/limit-unit rules.0.limit.at_least"],
		["with two boundaries", { at_most: "60 ft" }, "rules/limit-form rules.0.limit"],
		["on a measure of another check", { measure: "test pressure" }, "rules/limit-form rules.0.limit.measure"],
		["with a word that the measure does not take", { zone: "shoe" }, "rules/limit-form rules.0.limit.zone"],
		[
			"by a factor on what gives no length",
			{ at_least: { times: 2, of: "internal yield" } },
			"rules/limit-form rules.0.limit.at_least.of",
		],
		[
			"by a factor of the wrong kind",
			{ at_least: { times: "0.2 psi/ft", of: "string length" } },
			"rules/limit-unit rules.0.limit.at_least.times",
		],
		[
			"as another measure that is not of its kind",
			{ at_least: { of: "test pressure" } },
			"rules/limit-form rules.0.limit.at_least",
		],
		[
			"as the greatest of one",
			{ at_least: { greatest_of: ["1 ft"] } },
			"rules/limit-form rules.0.limit.at_least.greatest_of",
		],
		[
			"by a method nobody uses",
			{ at_least: { by_method: { guessed: "1 ft" } } },
			"rules/limit-form rules.0.limit.at_least.by_method.guessed",
		],
	])("a number %s", (_, changed, fault) => {
		expect(leaf(changed)).toEqual([fault]);
	});
	it.each([
		["a form that the check does not take", { at: "surface" }, "rules/limit-form rules.0.limit"],
		["no form at all", { depth: "50 ft" }, "rules/limit-form rules.0.limit"],
		["text", "50 ft", "rules/limit-form rules.0.limit"],
		["one limit called several", { all_of: [limit] }, "rules/limit-form rules.0.limit.all_of"],
		["a condition that is no fact", { if: "it rains", require: limit }, "rules/limit-form rules.0.limit.if"],
	])("%s", (_, other, fault) => {
		expect(instead(other)).toEqual([fault]);
	});
	it("a measure or a fact of a string, in a rule on the well or an annulus", () => {
		const well = {
			check: "separation",
			limit: { measure: "protected water to perforations", at_least: "1 ft" },
		};
		const codes = (parts: object) =>
			read([row(parts as Record<string, unknown>)]).diagnostics.map(
				({ code, at }) => `${code} ${at.path.join(".")}`,
			);
		expect(codes(well)).toEqual([]);
		expect(codes({ ...well, applies_to: { when: "flow zone open above the shoe" } })).toEqual([
			"rules/limit-form rules.0.applies_to.when",
		]);
		expect(codes({ ...well, applies_to: { when: { measure: "wait on cement", at_least: "8 hr" } } })).toEqual(
			["rules/limit-form rules.0.applies_to.when.measure"],
		);
		const annulus = {
			check: "annulus-limit",
			limit: { measure: "annulus stop pressure", at_most: { times: 1, of: "internal yield" } },
		};
		expect(codes(annulus)).toEqual(["rules/limit-form rules.0.limit.at_most.of"]);
	});
	it("each of two faults, each at its own place", () => {
		expect(
			faults({
				limit: {
					all_of: [
						{ ...limit, at_least: "50" },
						{ ...limit, at_least: "60 psi" },
					],
				},
			}),
		).toEqual([
			"rules/limit-unit rules.0.limit.all_of.0.at_least",
			"rules/limit-unit rules.0.limit.all_of.1.at_least",
		]);
	});
	it("a file that is not one", () => {
		expect(read([], {}).diagnostics.map(({ code }) => code)).toEqual(["rules/file-shape"]);
		expect(
			read([row({ ...shoe, limit })], { kind: "city" }).diagnostics.map(
				({ code, at }) => `${code} ${at.path.join(".")}`,
			),
		).toEqual(["rules/file-shape kind"]);
	});
	it("every fault says what was expected and how to mend it, and stops nothing else", () => {
		const { value, diagnostics } = read([
			row({ ...shoe, limit, id: "xx-one.good" }),
			row({ ...shoe, limit: { at: "surface" } }),
		]);
		expect(value?.rules.map(({ id }) => id)).toEqual(["xx-one.good"]);
		for (const { what, expected, mend, at } of diagnostics) {
			expect(told(what)).not.toBe("");
			expect(told(expected)).not.toBe("");
			expect(told(mend)).not.toBe(told(what));
			expect(at.file).toBe("made-up.yaml");
		}
	});
	it("a jurisdiction without a file is a warning in the definition, and only that", () => {
		const { value, diagnostics } = loadJurisdictions(["us-nm", "zz-top", "us-nm"]);
		expect(value?.map(({ code }) => code)).toEqual(["us-nm"]);
		expect(diagnostics).toMatchObject([
			{ code: "rules/unknown-jurisdiction", severity: "warning", at: { path: ["site", "jurisdictions", 1] } },
		]);
		expect(loadJurisdictions(["../us-nm"]).value).toEqual([]);
	});
});
