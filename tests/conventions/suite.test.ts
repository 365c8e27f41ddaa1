import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { sampleOf, WHOLE } from "../run/sample.ts";

const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");

describe("the run of every change", () => {
	it("is the README's command of two words, which the gate runs first, then lint, types and build", () => {
		const { scripts } = JSON.parse(read("package.json")) as { scripts: Readonly<Record<string, string>> };
		expect(read("README.md")).toContain("```sh\nnpm cit\n```");
		const steps = read(".ci/run")
			.split("\n")
			.filter((line) => line.startsWith("npm "));
		expect(steps).toEqual([
			"npm cit",
			"npm run --silent lint",
			"npm run --silent types",
			"npm run --silent build",
		]);
		expect(scripts["test"]).toBe("npm run --silent build && vitest run --config .config/vitest.config.ts");
		expect(scripts["test:all"]).toBe(scripts["test"]?.replace("vitest.config", "vitest.all.config"));
	});

	it("samples by what is swept and by the seed, in order, without looking at one twice", () => {
		const all = Array.from({ length: 200 }, (_, i) => i);
		const [one, again, other] = ["a", "a", "b"].map((what) => sampleOf(what, all, 40));
		expect(again).toEqual(one);
		expect(one).toEqual([...new Set(one)].sort((a, b) => a - b));
		expect(one).toHaveLength(WHOLE ? 200 : 40);
		if (!WHOLE) expect(other).not.toEqual(one);
		expect(sampleOf("few", [1, 2], 3)).toEqual([1, 2]);
	});
});
