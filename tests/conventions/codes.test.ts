import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { CODES, type Code } from "../../src/diagnostics/codes.ts";
import { brokenCases, ROOT } from "../broken/broken-case.ts";

const codes = Object.keys(CODES) as Code[];

/** Codes that no file can show, each with its reason. */
const NOT_SHOWN: Partial<Record<Code, string>> = {
	"internal/fault": "stands for defects of the tool; a file that raised it would be mended, not kept",
};

const CATALOGUE = /^diagnostics\/codes(?:\.ts|\/)/;

const source = new URL("src/", ROOT);
const modules = readdirSync(source, { recursive: true, encoding: "utf8" })
	.map((file) => file.replaceAll("\\", "/"))
	.filter((file) => /\.tsx?$/.test(file) && !CATALOGUE.test(file));
const texts = modules.map((file) => readFileSync(new URL(file, source), "utf8"));

const cases = brokenCases();

describe("the conventions have something to look at", () => {
	it("codes, modules and cases", () => {
		expect(codes.length).toBeGreaterThan(80);
		expect(modules.length).toBeGreaterThan(50);
		expect(cases.length).toBeGreaterThan(20);
	});
});

describe("every code", () => {
	it.each(codes)("%s is an area and a slug, with a title and an explanation", (code) => {
		const { title, explain } = CODES[code];
		expect(code).toMatch(/^[a-z]+\/[a-z][a-z-]*[a-z]$/);
		expect(title).toMatch(/^["A-Z`<].*[^.]$/);
		const sentences = explain.split(/(?<=[.?!])\s+(?=["A-Z`<])/);
		expect(sentences.length).toBeGreaterThanOrEqual(2);
		expect(sentences.length).toBeLessThanOrEqual(5);
		expect(explain).toMatch(/[.?!]$/);
		expect(explain).not.toMatch(/ {2}|compliant/);
	});

	it.each(codes)("%s is raised in src", (code) => {
		const named = new RegExp(`(?<![\\w/])${code}(?![\\w-])`);
		expect(texts.some((text) => named.test(text))).toBe(true);
	});

	it.each(codes.filter((code) => NOT_SHOWN[code] === undefined))("%s is shown by a broken file", (code) => {
		expect(cases.filter((each) => each.code === code).map(({ name }) => name)).not.toEqual([]);
	});
});

describe("every broken file", () => {
	it.each(cases)("$name is named after a code", ({ code }) => {
		expect(codes).toContain(code);
	});
	it("no code is excused that is shown", () => {
		const shown = new Set(cases.map(({ code }) => code));
		expect(Object.keys(NOT_SHOWN).filter((code) => shown.has(code))).toEqual([]);
	});
});
