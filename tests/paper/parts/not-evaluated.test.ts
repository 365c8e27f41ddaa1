import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { pathKey } from "../../../src/diagnostics/path.ts";
import { LANGUAGES } from "../../../src/document/document.ts";
import type { Findings, PaperContext } from "../../../src/paper/context.ts";
import { notEvaluatedInShort, notEvaluatedOf } from "../../../src/paper/parts/not-evaluated.ts";
import { loadWords } from "../../../src/paper/words/words.ts";
import { changed, starterTree } from "../../definition/starter-trees.ts";
import { sampleOf } from "../../run/sample.ts";
import { findingsOf, STARTERS, type Starter, understandText } from "../../starters.ts";

/*
 * Whatever could not be worked out has a name of the trade, in every language: no key of the results is printed. Wells are
 * robbed of one entry after another, so that what each of them was needed for is told.
 */

type Step = string | number;

const entriesOf = (
	node: unknown,
	depth: number,
	path: readonly Step[] = [],
): readonly (readonly Step[])[] => {
	if (depth === 0 || typeof node !== "object" || node === null) return [];
	const entries: readonly (readonly [Step, unknown])[] = Array.isArray(node)
		? node.map((item, i) => [i, item] as const)
		: Object.entries(node);
	return entries.flatMap(([step, child]) => [
		[...path, step],
		...entriesOf(child, depth - 1, [...path, step]),
	]);
};

interface Robbed {
	readonly starter: Starter;
	readonly path: readonly Step[];
}

const robbed: readonly Robbed[] = STARTERS.flatMap((starter) =>
	entriesOf(starterTree(starter), 5).map((path) => ({ starter, path })),
);

const contextOf = (findings: Findings, language: (typeof LANGUAGES)[number]): PaperContext => ({
	...findings,
	paper: "regulator-appendix",
	words: loadWords(language),
	units: "field",
});

const unnamed = (findings: Findings): readonly string[] =>
	LANGUAGES.flatMap((language) => {
		const context = contextOf(findings, language);
		return findings.results.undetermined
			.map(({ key }) => [key, notEvaluatedOf(context, key)] as const)
			.filter(([, name]) => name === undefined || name.of.some((each) => each === "" || /[_]/u.test(each)))
			.map(([key, name]) => `${language} ${key}: ${name?.of.join(" ") ?? "no name"}`);
	});

describe("results that could not be had", () => {
	it.each(STARTERS)("have a name in %s", (starter) => {
		expect(unnamed(findingsOf(starter))).toEqual([]);
	});

	it("have a name whatever a well lacks", () => {
		const nameless: string[] = [];
		const keys = new Set<string>();
		for (const { starter, path } of sampleOf("not evaluated", robbed, 12)) {
			const tree = changed(starterTree(starter), path, undefined);
			const { findings } = understandText(JSON.stringify(tree), `${starter}.yaml`);
			if (findings === undefined) continue;
			for (const { key } of findings.results.undetermined) keys.add(key);
			nameless.push(...unnamed(findings).map((name) => `without ${pathKey(path)}: ${name}`));
		}
		expect([...new Set(nameless)]).toEqual([]);
		expect(keys.size).toBeGreaterThan(1);
	});

	it("are named wherever the calculation leaves one out", () => {
		// Every key that is written down whole, as text or template, where a result is given up.
		const written = keysInSource();
		expect(written.length).toBeGreaterThan(25);
		const context = contextOf(findingsOf("horizontal"), "en");
		expect(written.filter((key) => notEvaluatedOf(context, key) === undefined)).toEqual([]);
	});

	it("are told once a quantity, with what they are of; of many the first few", () => {
		const findings = findingsOf("horizontal");
		const context = contextOf(findings, "en");
		const told = (keys: readonly string[]): string =>
			notEvaluatedInShort({
				...context,
				results: {
					...findings.results,
					undetermined: keys.map((key) => ({ key, because: "", needs: [] })),
				},
			});
		expect(
			told([
				"casing.conductor.sections.1.joint_strength",
				"casing.surface.sections.1.joint_strength",
				"casing.production.loads.burst-gas-kick",
				"trajectory.survey_error",
			]),
		).toBe(
			"Joint strength: conductor, surface; Load case: production burst, gas kick, shut in; " +
				"Survey uncertainty by the error model",
		);
		expect(told([1, 2, 3, 4, 5, 6].map((n) => `stimulation.stages.${n}.flush_volume`))).toBe(
			"Flush volume: stage 1, stage 2, stage 3, stage 4 and 2 more",
		);
	});
});

const CALC = new URL("../../../src/calc/", import.meta.url);

/** Keys that the calculation gives up, what is filled into them replaced by `1`. */
const keysInSource = (): readonly string[] =>
	readdirSync(CALC, { recursive: true, encoding: "utf8" }).flatMap((file) => {
		if (!file.endsWith(".ts")) return [];
		const text = readFileSync(new URL(file, CALC), "utf8");
		const whole =
			/(?:gaps\s*\.(?:missing|finite)\(\s*|const key = )(["`])((?:casing|cement|isolation|logistics|pressure|safety|site|stimulation|trajectory)\..+?)\1/gu;
		return (
			[...text.matchAll(whole)]
				.map(([, , key = ""]) => key.replaceAll(/\$\{[^}]+\}/gu, "1"))
				// What others are put together from.
				.filter(
					(key) =>
						!/^(?:cement\.1|cement\.1\.setting|casing\.1\.sections\.1|stimulation\.stages\.1)$/u.test(key),
				)
				.map((key) => (key === "logistics.1" ? "logistics.water_loads" : key))
		);
	});
