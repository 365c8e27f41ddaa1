import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { loadCatalog } from "../../src/catalog/load-catalog.ts";
import { SOURCE_KEYS } from "../../src/cite/source-keys.ts";

const shipped = (name: string): string | undefined => {
	try {
		return readFileSync(new URL(`../../seeds/${name}`, import.meta.url), "utf8");
	} catch {
		return undefined;
	}
};

/** The shipped seeds with one of them changed. */
const planted = (file: string, change: (text: string) => string | undefined) =>
	loadCatalog((name) => (name === file ? change(shipped(name) ?? "") : shipped(name)));

const replaced = (from: string, to: string) => (text: string) => {
	expect(text).toContain(from);
	return text.replace(from, to);
};

describe("the shipped tables", () => {
	const { value, diagnostics } = loadCatalog();

	test("are read without a fault, and are all there", () => {
		expect(diagnostics).toEqual([]);
		expect(value?.casing).toHaveLength(88);
		expect(value?.threads).toHaveLength(14);
		expect(value?.grades).toHaveLength(13);
		expect(value?.cementClasses.map(({ id }) => id)).toEqual(["A", "B", "C", "G", "H"]);
		expect(value?.glossary.length).toBeGreaterThan(50);
		expect(value?.plausibility.length).toBeGreaterThan(50);
	});

	test("hold a bibliography entry for every key, and no other", () => {
		expect(Object.keys(value?.sources ?? {})).toEqual([...SOURCE_KEYS]);
	});
});

describe("a bad seed is a located diagnostic, never a crash", () => {
	test("missing", () => {
		const { value, diagnostics } = planted("pipe/grades.yaml", () => undefined);
		expect(value).toBeUndefined();
		expect(diagnostics.map(({ code, at }) => [code, at.file])).toEqual([
			["seed/unreadable", "seeds/pipe/grades.yaml"],
		]);
	});

	test("not YAML", () => {
		const { diagnostics } = planted("pipe/grades.yaml", (text) => `${text}\n  - [`);
		expect(diagnostics.map(({ code }) => code)).toEqual(["seed/unreadable"]);
	});

	test("a figure that is a word", () => {
		const { value, diagnostics } = planted("pipe/casing.yaml", replaced("wall: 0.415", "wall: thick"));
		expect(value).toBeUndefined();
		expect(diagnostics).toHaveLength(1);
		expect(diagnostics[0]).toMatchObject({
			code: "seed/shape",
			at: { file: "seeds/pipe/casing.yaml", path: ["sizes", 2, "pipe", 4, "wall"] },
			found: '"thick"',
		});
	});

	test("a column that is not known, and one that is missing", () => {
		expect(
			planted("pipe/grades.yaml", replaced("minimum_tensile: 60000", "least_tensile: 60000")).diagnostics.map(
				({ code, at }) => [code, at.path.at(-1)],
			),
		).toEqual([
			["seed/shape", "minimum_tensile"],
			["seed/shape", "least_tensile"],
		]);
	});

	test("a unit that the column's dimension does not have", () => {
		const { diagnostics } = planted("pipe/casing.yaml", replaced("wall: { unit: in", "wall: { unit: psi"));
		expect(diagnostics.map(({ code, at }) => [code, at.path])).toEqual([
			["seed/shape", ["columns", "wall", "unit"]],
		]);
	});

	test("a drift wider than the pipe", () => {
		const { diagnostics } = planted("pipe/casing.yaml", replaced("drift: 4.545", "drift: 5.545"));
		expect(diagnostics.map(({ code, at }) => [code, at.path.at(-1)])).toEqual([
			["seed/inconsistent", "drift"],
		]);
	});

	test("a greatest yield below the least", () => {
		const { diagnostics } = planted(
			"pipe/grades.yaml",
			replaced("grade: P110, minimum_yield: 110000", "grade: P110, minimum_yield: 150000"),
		);
		expect(new Set(diagnostics.map(({ code }) => code))).toEqual(new Set(["seed/inconsistent"]));
	});

	test("a grade listed twice", () => {
		const { diagnostics } = planted("pipe/grades.yaml", replaced("grade: K55", "grade: J-55"));
		expect(diagnostics.map(({ code, related }) => [code, related?.[0]?.at.path])).toEqual([
			["seed/repeated", ["grades", 1]],
		]);
	});

	test("a source that the code does not know", () => {
		const { diagnostics } = planted(
			"plausibility.yaml",
			replaced("source: trade-surveys", "source: hearsay"),
		);
		expect(diagnostics.map(({ code, at }) => [code, at.path.at(-1)])).toEqual([["seed/shape", "source"]]);
	});

	test("a band without its unit", () => {
		const { diagnostics } = planted("plausibility.yaml", replaced("low: 2 ft", "low: 2 psi"));
		expect(diagnostics.map(({ code, at }) => [code, at.path.at(-1)])).toEqual([["seed/shape", "low"]]);
	});
});
