import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readYaml } from "../../src/source/read-yaml.ts";
import { writeYaml } from "../../src/source/write-yaml.ts";

const again = (tree: unknown): unknown => {
	const { value, diagnostics } = readYaml(writeYaml(tree), "again.yaml");
	expect(diagnostics).toEqual([]);
	return JSON.parse(JSON.stringify(value?.value));
};

describe("writeYaml", () => {
	it("keeps text that looks like something else as text", () => {
		const tree = {
			phone: "911",
			permit: "0012",
			issued: "2026-05-04",
			answer: "true",
			count: 3,
			complete: true,
			pipe: "9 5/8 in",
			hash: "Well # 4",
			remark: "first line\nsecond: line",
			none: [],
		};
		expect(again(tree)).toEqual(tree);
	});

	it("is read back as it was, whatever the words", () => {
		const word = fc
			.string({ unit: "grapheme-ascii", minLength: 1, maxLength: 30 })
			.filter((s) => s.trim() === s);
		fc.assert(
			fc.property(
				fc.dictionary(
					fc.stringMatching(/^[a-z][a-z_]{0,9}$/u),
					fc.oneof(word, fc.array(word, { minLength: 1 })),
					{
						minKeys: 1,
					},
				),
				(tree) => {
					expect(again(tree)).toEqual({ ...tree });
				},
			),
			{ numRuns: 200 },
		);
	});
});
