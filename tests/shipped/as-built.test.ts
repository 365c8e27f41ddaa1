import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { makeShipped } from "../../src/build/make-shipped.ts";
import { JURISDICTION_CODES, PRACTICE_TOPICS } from "../../src/catalog/jurisdictions.ts";
import * as fromSources from "../../src/catalog/shipped.ts";
import * as asBuilt from "../../src/catalog/shipped-as-built.ts";
import { LANGUAGES } from "../../src/document/document.ts";
import * as wordsFromSources from "../../src/paper/words/word-files.ts";
import * as wordsAsBuilt from "../../src/paper/words/word-files-as-built.ts";
import { packageFile } from "../../src/shipped/package-file.ts";

/** The shipped tool reads what the build made of seeds/ and templates/; `npm test` builds first. */

const made = makeShipped();
const built = (name: string): string => readFileSync(packageFile(`dist/shipped/${name}`), "utf8");

describe("shipped data as built", () => {
	it("is what the sources give now", () => {
		expect(made.size).toBeGreaterThan(JURISDICTION_CODES.length + 4);
		for (const [name, text] of made) expect(built(name) === text, name).toBe(true);
	});

	it("gives the same tables, and finds the same rows in them", () => {
		const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));
		const [one, other] = [fromSources.shippedCatalog().value, asBuilt.shippedCatalog().value];
		expect(plain(other)).toEqual(plain(one));
		// Nothing is lost on the way that the writer of JSON cannot say: no value is undefined, infinite or a map.
		const { casing, grades, threads, cementClasses, bowSprings, plausibility, jobs, glossary } = one ?? {};
		expect({ ...other }).toMatchObject({
			casing,
			grades,
			threads,
			cementClasses,
			bowSprings,
			plausibility,
			jobs,
			glossary,
		});
		expect(other?.findCasing(5.5, 23)).toEqual(one?.findCasing(5.5, 23));
		expect(other?.findGrade("l80 type 1")).toEqual(one?.findGrade("l80 type 1"));
	});

	it("gives the same limits of law and of practice, and none for a name that does not ship", () => {
		for (const name of [
			...JURISDICTION_CODES.map((code) => `jurisdictions/${code}.yaml`),
			...PRACTICE_TOPICS.map((topic) => `practice/${topic}.yaml`),
		]) {
			expect(asBuilt.shippedRuleSet(name)?.value?.rules.length, name).toBeGreaterThan(0);
			expect(asBuilt.shippedRuleSet(name)?.value, name).toEqual(fromSources.shippedRuleSet(name)?.value);
		}
		expect(asBuilt.shippedRuleSet("jurisdictions/zz-top.yaml")).toBeUndefined();
	});

	it.each(LANGUAGES)("gives the same words, compiled and not, in %s", (language) => {
		const [one, other] = [wordsFromSources.wordFiles(language), wordsAsBuilt.wordFiles(language)];
		const data = JSON.parse(made.get(`words-${language}.json`) ?? "") as Readonly<Record<string, unknown>>;
		expect(Object.keys(data)).toContain("labels.yaml");
		for (const name of Object.keys(data)) expect(other.data(name), name).toEqual(one.data(name));
		expect(other.hasTemplate("regulator/cement")).toBe(one.hasTemplate("regulator/cement"));
		expect(other.hasTemplate("regulator/nothing")).toBe(false);
		expect(() => other.data("nothing.yaml")).toThrow("nothing.yaml");
		expect(() => other.template("nothing")).toThrow("nothing");
		for (const name of templatesIn(made.get(`words-${language}.cjs`) ?? ""))
			if (!name.includes(":"))
				expect(outcome(other.template(name)), name).toEqual(outcome(one.template(name)));
	});
});

const templatesIn = (program: string): readonly string[] =>
	[...program.matchAll(/^"([^"\n]+)": \{/gmu)].map(([, name = ""]) => name);

/** With no data at all a template gives words, or says which name it lacks: both ways must agree. */
const outcome = (template: (data: Readonly<Record<string, unknown>>) => unknown): unknown => {
	try {
		return template({});
	} catch (cause) {
		return cause instanceof Error ? cause.message : cause;
	}
};
