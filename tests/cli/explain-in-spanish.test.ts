import { describe, expect, it } from "vitest";
import { JURISDICTION_CODES, loadJurisdictions } from "../../src/catalog/jurisdictions.ts";
import type { Known, KnownTable } from "../../src/cite/known.ts";
import { explained, originOf } from "../../src/cli/explain.ts";
import { comparisonSheet } from "../../src/cli/limits-list.ts";
import { KINDS, listed } from "../../src/cli/list.ts";
import { openShipped } from "../../src/cli/shipped.ts";
import { CODES } from "../../src/diagnostics/codes.ts";
import { EXPLAINED_CHECKS, EXPLAINED_CODES } from "../../src/messages/explained.ts";
import { declaredText, ENGLISH_READER, type Reader, tellPhrase, tellSaid } from "../../src/messages/print.ts";
import { EVERY_FORMULA } from "../../src/rules/every-formula.ts";
import { CHECKS } from "../../src/rules/index.ts";
import { ENGLISH } from "../paper/words/english-words.ts";
import { findingsOf, STARTERS } from "../starters.ts";

/*
 * What `explain` and `list` print for who reads Spanish has no English sentence in it. Names of the data stay as they are
 * written in a definition or a rules file, and titles and citations as they were published.
 */

const shipped = openShipped();
const reader: Reader = { language: "es", units: "metric" };
const numbersOf = (text: string) => [...text.matchAll(/\d[\d,.]*\d|\d/g)].map(([number]) => number).sort();

/** Titles and citations of what was published, the longest first. */
const published = [
	...Object.values(shipped.catalog.sources).flatMap(({ authors, publisher, title }) => [
		authors ?? publisher ?? title,
		title,
	]),
	...(loadJurisdictions(JURISDICTION_CODES).value ?? []).flatMap(({ name }) => [name]),
].sort((a, b) => b.length - a.length);

/** Words of a rules file: between braces, after a key, and in lists of its words. */
const RULE_WORDS = [
	/\{[^{}]*(?:\{[^{}]*\}[^{}]*)*\}/gu,
	/^ {2,4}(?:- )?[a-z_]+: .*$/gmu,
	/^ {2}[\p{L} -]+:/gmu,
	/[½¼¾⅛⅜⅝⅞]\sin/gu,
	/^when, if {2}.*$/gmu,
	/^events {4}.*$/gmu,
	/; con [a-z_, ]+/gu,
	/`[^`]*`/gu,
];

const withoutNames = (text: string): string =>
	[...published, ...RULE_WORDS].reduce<string>(
		(left, each) => (typeof each === "string" ? left.replaceAll(each, "·") : left.replaceAll(each, "·")),
		text,
	);

const englishIn = (lines: readonly string[]): readonly string[] =>
	lines.filter((line) => withoutNames(line).search(ENGLISH) >= 0);

const spanishOf = (what: string): string => {
	const text = explained(what, shipped, "es");
	expect(text, what).toBeDefined();
	return text ?? "";
};

describe("a code, in Spanish", () => {
	it("is there for every one, and for no other", () => {
		expect(Object.keys(EXPLAINED_CODES).sort()).toEqual(Object.keys(CODES).sort());
	});
	it.each(Object.entries(CODES))("%s is explained, with the numbers of the English", (code, english) => {
		const text = spanishOf(code);
		expect(englishIn([text])).toEqual([]);
		expect(text).toMatch(/\((?:error|advertencia)\)\n/u);
		expect(text).not.toContain(english.title);
		expect(numbersOf(text)).toEqual(numbersOf(explained(code, shipped, "en") ?? ""));
	});
});

describe("a check, in Spanish", () => {
	it("is there for every one, and for no other", () => {
		expect(Object.keys(EXPLAINED_CHECKS).sort()).toEqual(CHECKS.map(({ id }) => id).sort());
	});
	it.each(CHECKS.map(({ id }) => id))("%s is explained, with the numbers of the English", (id) => {
		const text = spanishOf(id);
		expect(englishIn([text])).toEqual([]);
		expect(text).toContain("(revisión)");
		expect(numbersOf(text)).toEqual(numbersOf(explained(id, shipped, "en") ?? ""));
	});
});

describe("a formula, in Spanish", () => {
	it.each([...EVERY_FORMULA.keys()])("%s", (id) => {
		expect(englishIn(spanishOf(id).split("\n"))).toEqual([]);
	});
});

describe("where a value comes from, in Spanish", () => {
	it.each(STARTERS)("is told of every value of %s", (starter) => {
		const values = new Set<Known | KnownTable>();
		const lines = new Set<string>();
		const take = (value: Known | KnownTable): void => {
			if (values.has(value)) return;
			values.add(value);
			// Paths of the definition, rows of tables and ids are names.
			if (value.from.kind === "constant" || value.from.kind === "worked")
				lines.add(tellPhrase(originOf(value, { shipped, reader }), reader));
			if (value.from.kind !== "worked") return;
			for (const [symbol, input] of Object.entries(value.from.inputs)) {
				lines.add(declaredText(symbol, reader));
				for (const each of [input].flat()) take(each as Known | KnownTable);
			}
		};
		for (const value of findingsOf(starter).index.byKey.values()) take(value);
		expect(values.size).toBeGreaterThan(1000);
		expect(englishIn([...lines])).toEqual([]);
	});
});

describe("a list, in Spanish", () => {
	it.each(KINDS.filter((kind) => kind !== "sources"))("of %s", (kind) => {
		const lines = listed(kind, { shipped, own: [], reader });
		expect(lines.length).toBeGreaterThan(2);
		expect(englishIn(lines)).toEqual([]);
	});
	it.each(["limits", "checks", "papers", "jobs", "jurisdictions", "grades"] as const)(
		"of %s differs from the English",
		(kind) => {
			const english = listed(kind, { shipped, own: [], reader: ENGLISH_READER });
			expect(listed(kind, { shipped, own: [], reader })).not.toEqual(english);
		},
	);
	it.each(STARTERS)("is the sheet to compare, for %s", (starter) => {
		const findings = findingsOf(starter);
		const typed = findings.judgement.findings.flatMap(({ cite }) => [
			tellSaid(cite.citation, reader),
			cite.publicCopy?.read ?? cite.rule,
			cite.publicCopy?.at ?? cite.rule,
			cite.publicCopy?.dated ?? cite.rule,
			...(cite.forms ?? []),
		]);
		const said = comparisonSheet(findings, reader).map((line) =>
			typed.sort((a, b) => b.length - a.length).reduce((left, each) => left.replaceAll(each, "·"), line),
		);
		expect(said.length).toBeGreaterThan(50);
		expect(englishIn(said)).toEqual([]);
	});
});
