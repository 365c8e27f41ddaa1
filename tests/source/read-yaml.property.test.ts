import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readYaml } from "../../src/source/read-yaml.ts";
import { told } from "../told.ts";

const pieces = [
	"casing:",
	"\n",
	"\n  ",
	"\n  - ",
	"- ",
	"{ ",
	" }",
	"[",
	"]",
	", ",
	",",
	": ",
	":",
	"id: surface",
	"to: 3,250 ft",
	"od: 9 5/8 in",
	'"',
	"'",
	"#",
	" #3",
	"&a ",
	"*a",
	"<<: *a",
	"!x ",
	"|",
	">",
	"? ",
	"\t",
	"---\n",
	"...\n",
	"%YAML 1.1\n",
	"@",
	"`",
	"\r\n",
	"\r",
	"\ufeff",
	"\\",
	"null",
	"~",
	"1",
	"250 ft",
	"é",
	"\u2028",
	"__proto__: 1",
	"\u0000",
];

const text = fc.array(fc.constantFrom(...pieces), { maxLength: 40 }).map((parts) => parts.join(""));

describe("readYaml, whatever it is given", () => {
	it("never throws, and places every fault inside the text", () => {
		let faulty = 0;
		fc.assert(
			fc.property(
				fc.oneof(text, fc.string({ unit: "grapheme" }), fc.string({ unit: "binary" })),
				(written) => {
					const { value, diagnostics } = readYaml(written, "well.yaml");
					if (value === undefined) expect(diagnostics.length).toBeGreaterThan(0);
					faulty += diagnostics.length;
					for (const { at, what, mend, expected } of diagnostics) {
						const [start, end] = at.range ?? [0, 0];
						expect(start).toBeGreaterThanOrEqual(0);
						expect(start).toBeLessThanOrEqual(written.length);
						expect(end).toBeGreaterThanOrEqual(start);
						expect(told(what).length * told(mend).length * told(expected).length).toBeGreaterThan(0);
					}
				},
			),
			{ numRuns: 3000 },
		);
		expect(faulty).toBeGreaterThan(100);
	});

	it("gives back every flat map of quantities it is shown, in block and in flow style", () => {
		const quantity = fc.constantFrom(
			"9 5/8 in",
			"8750 ft TVD",
			"54.5 lb/ft",
			"30 %",
			"10 deg/100 ft",
			"2026-05-04",
			"4.2e6 psi",
		);
		const map = fc.dictionary(fc.stringMatching(/^[a-z][a-z_]{0,9}x$/), quantity, { minKeys: 1, maxKeys: 8 });
		fc.assert(
			fc.property(map, (entries) => {
				const lines = Object.entries(entries).map(([name, value]) => `${name}: ${value}`);
				for (const written of [lines.join("\n"), `{ ${lines.join(", ")} }`, lines.join("\r\n")]) {
					const read = readYaml(written, "well.yaml");
					expect(read.diagnostics).toEqual([]);
					expect(read.value?.value).toEqual(entries);
					for (const [name, value] of Object.entries(entries))
						expect(read.value?.positions.written([name])).toBe(value);
				}
			}),
		);
	});
});
