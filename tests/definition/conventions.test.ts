import { describe, expect, it } from "vitest";
import { definitionSchema } from "../../src/definition/definition.ts";
import { everyField } from "../../src/definition/schema-walk.ts";
import { PAPERS } from "../../src/document/document.ts";
import { readYaml } from "../../src/source/read-yaml.ts";
import { DIMENSIONS } from "../../src/units/dimensions.ts";
import { told } from "../told.ts";

const all = everyField(definitionSchema);

describe("every field of the definition", () => {
	it("is seen by the walk", () => {
		expect(all.length).toBeGreaterThan(500);
		const patterns = all.map(({ pattern }) => pattern);
		// One of each way a field can lie: at the top, in a block, in a list, in a choice, under `actual`.
		for (const pattern of [
			"definition",
			"well.name",
			"casing[].pipe[].od",
			"casing[].loads.evacuation.fluid_level",
			"safety.gas_alarms[].low",
			"trajectory.plan.target.tvd",
			"casing[].cement.actual.pumped[].volume",
			"stimulation.stages.actual.records[].proppant_mass",
		])
			expect(patterns).toContain(pattern);
	});

	it("has a title, a reason and papers", () => {
		for (const { pattern, meta } of all) {
			expect([pattern, meta?.title]).toEqual([pattern, expect.stringMatching(/^[A-Z]/)]);
			expect([pattern, meta?.why]).toEqual([pattern, expect.stringMatching(/[.?]$/)]);
			expect([pattern, told(meta?.expected)]).toEqual([pattern, expect.stringMatching(/\S/)]);
			expect(meta?.papers.length, pattern).toBeGreaterThan(0);
			expect(
				meta?.papers.every((paper) => PAPERS.includes(paper)),
				pattern,
			).toBe(true);
		}
	});

	it("is shown nowhere that the entry around it is not", () => {
		for (const inner of all)
			for (const outer of all)
				if (inner.pattern.startsWith(`${outer.pattern}.`) || inner.pattern.startsWith(`${outer.pattern}[]`))
					expect([inner.pattern, outer.pattern, inner.meta?.papers]).toEqual([
						inner.pattern,
						outer.pattern,
						inner.meta?.papers.filter((paper) => outer.meta?.papers.includes(paper)),
					]);
	});

	it("has an example that it takes itself", () => {
		const shown = all.filter(({ meta }) => meta?.example !== undefined);
		expect(shown.length).toBeGreaterThan(250);
		for (const { pattern, schema, meta } of shown) {
			const read = readYaml(`example: ${meta?.example}\n`, "example.yaml");
			expect([pattern, read.diagnostics]).toEqual([pattern, []]);
			const { example } = (read.value?.value ?? {}) as { example?: unknown };
			const parsed = (schema as typeof definitionSchema).safeParse(example);
			expect([pattern, meta?.example, parsed.success]).toEqual([pattern, meta?.example, true]);
		}
	});

	it("is named as the rest are: lower case, words joined by underscores", () => {
		for (const { pattern } of all) expect(pattern).toMatch(/^[a-z][a-z_]*((\[\])?\.[a-z][a-z_]*)*$/);
	});

	it("names its dimension where it is a quantity", () => {
		const measured = all.filter(({ meta }) => meta?.dimension !== undefined);
		expect(measured.length).toBeGreaterThan(200);
		for (const { meta } of measured) expect(Object.keys(DIMENSIONS)).toContain(meta?.dimension);
	});
});
