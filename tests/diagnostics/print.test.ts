import { describe, expect, it } from "vitest";
import { diagnose } from "../../src/diagnostics/diagnose.ts";
import type { Diagnostic, Place } from "../../src/diagnostics/diagnostic.ts";
import { diagnosticsToJson } from "../../src/diagnostics/json.ts";
import type { Sources } from "../../src/diagnostics/locate.ts";
import { printDiagnostics } from "../../src/diagnostics/print.ts";
import { readYaml } from "../../src/source/read-yaml.ts";

const sourcesOf = (text: string, file = "well.yaml"): Sources => {
	const read = readYaml(text, file).value;
	return new Map([[file, read === undefined ? { text } : { text: read.text, positions: read.positions }]]);
};

const fault = (at: Place, more: Partial<Diagnostic> = {}): Diagnostic => ({
	...diagnose("syntax/yaml", at, {
		what: "something is wrong",
		expected: "something else",
		mend: "write it",
	}),
	...more,
});

const plain = { color: false, width: 80 };
const lines = (diagnostics: readonly Diagnostic[], sources: Sources, options = plain): string[] =>
	printDiagnostics(diagnostics, sources, options).split("\n");

const text = `casing:
  - id: surface
    pipe: [{ od: 13 3/8 in, weight: 54.5 lb/ft }]
`;

describe("printDiagnostics", () => {
	it("shows where, what, the line, expected, found, why, mend, related places, source", () => {
		const diagnostic = fault(
			{ path: ["casing", 0, "pipe", 0, "weight"] },
			{
				found: "54.5 lbs",
				why: "because",
				related: [{ at: { path: ["casing", 0, "id"] }, label: "the string is here" }],
				source: "api-5ct, table 1",
			},
		);
		expect(printDiagnostics([diagnostic], sourcesOf(text), plain)).toBe(
			`well.yaml:3:37  error  syntax/yaml
  casing › surface › pipe › item 1 › weight: something is wrong
  3 │     pipe: [{ od: 13 3/8 in, weight: 54.5 lb/ft }]
    │                                     ^^^^^^^^^^
  expected  something else
  found     54.5 lbs
  why       because
  mend      write it
  see       well.yaml:2:9  the string is here
  source    api-5ct, table 1
  more      casebound explain syntax/yaml

1 error
`,
		);
	});

	it("leaves out what the carets already show", () => {
		const printed = lines([fault({ path: ["casing", 0, "id"] }, { found: "surface" })], sourcesOf(text));
		expect(printed.join("\n")).not.toContain("found");
	});

	it("points at a key, at the parent of what is missing, at a range", () => {
		const frames = (place: Place) => lines([fault(place)], sourcesOf(text)).slice(2, 4);
		expect(frames({ path: ["casing"], key: true })).toEqual(["  1 │ casing:", "    │ ^^^^^^"]);
		expect(frames({ path: ["casing", 0, "shoe"] })[1]).toBe("    │     ^^^^^^^^^^^");
		expect(frames({ path: [], range: [0, 3] })[1]).toBe("    │ ^^^");
	});

	it("cuts a long line around the place and stays within the width", () => {
		const long = `a: { ${Array.from({ length: 60 }, (_, i) => `k${i}: ${i}`).join(", ")} }`;
		for (const width of [80, 60, 40]) {
			for (const key of ["k0", "k30", "k59"]) {
				const printed = lines([fault({ path: ["a", key], key: true })], sourcesOf(long), {
					color: false,
					width,
				});
				for (const line of printed) expect(line.length).toBeLessThanOrEqual(width);
				const [shown = "", carets = ""] = printed.slice(2, 4);
				const at = carets.indexOf("^");
				expect(shown.slice(at, at + key.length)).toBe(key);
			}
		}
	});

	it("wraps long sentences below their label", () => {
		const printed = lines([fault({ path: [] }, { mend: "word ".repeat(40).trim() })], sourcesOf(text));
		const start = printed.findIndex((line) => line.startsWith("  mend"));
		expect(printed[start + 1]).toMatch(/^ {12}word/);
		for (const line of printed) expect(line.length).toBeLessThanOrEqual(80);
	});

	it("goes by the order of the text, files in their own order", () => {
		const sources: Sources = new Map([...sourcesOf(text), ["survey.csv", { text: "md_ft\n1\n" }]]);
		const printed = lines(
			[
				fault({ file: "survey.csv", path: [], range: [6, 7] }),
				fault({ path: ["casing", 0, "pipe"] }),
				fault({ path: ["casing", 0, "id"] }, { severity: "warning" }),
				fault({ path: [] }),
			],
			sources,
		);
		expect(
			printed.filter((line) => line.includes("  syntax/yaml")).map((line) => line.split("  ")[0]),
		).toEqual(["well.yaml:1:1", "well.yaml:2:9", "well.yaml:3:11", "survey.csv:2:1"]);
		expect(printed.at(-2)).toBe("3 errors, 1 warning");
	});

	it("colors only when asked, and then prints the same text", () => {
		const diagnostics = [fault({ path: ["casing", 0, "id"] })];
		const colored = printDiagnostics(diagnostics, sourcesOf(text), { color: true, width: 80 });
		expect(colored).toContain("\u001b[31;1merror\u001b[0m");
		// biome-ignore lint/suspicious/noControlCharactersInRegex: terminal colors are control sequences
		expect(colored.replace(/\u001b\[[\d;]*m/g, "")).toBe(
			printDiagnostics(diagnostics, sourcesOf(text), plain),
		);
	});

	it("lets nothing in a file move the cursor", () => {
		const hostile = 'a: "x\\e[2J"\n"\u202e": 1\n';
		const printed = printDiagnostics(
			[fault({ path: ["a"] }, { found: "\u001b[2J\u0007", what: "\u202egnorts" })],
			sourcesOf(hostile),
			plain,
		);
		// biome-ignore lint/suspicious/noControlCharactersInRegex: they must not be there
		expect(printed).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e]/);
	});

	it("works without a source, with tabs and on a place past the end", () => {
		expect(lines([fault({ file: "gone.csv", path: [] })], new Map())[0]).toBe("gone.csv  error  syntax/yaml");
		expect(
			lines([fault({ path: [], range: [4, 5] })], new Map([["t.yaml", { text: "a:\tx y" }]])).slice(2, 4),
		).toEqual(["  1 │ a: x y", "    │     ^"]);
		expect(
			lines([fault({ path: [], range: [99, 120] })], new Map([["t.yaml", { text: "a: 1\n" }]]))[0],
		).toMatch(/^t\.yaml:2:1 /);
	});

	it("shows the first hundred of very many, and counts them all", () => {
		const many = Array.from({ length: 250 }, () => fault({ path: ["casing", 0, "id"] }));
		const printed = printDiagnostics(many, sourcesOf(text), plain);
		expect(printed.match(/something is wrong/g)).toHaveLength(100);
		expect(printed).toMatch(/\n250 errors; 150 of them not shown\n$/);
	});

	it("prints nothing for nothing", () => {
		expect(printDiagnostics([], sourcesOf(text), plain)).toBe("");
	});
});

describe("diagnosticsToJson", () => {
	it("gives places in lines, columns and result keys", () => {
		const diagnostic = fault(
			{ path: ["casing", 0, "pipe", 0, "od"] },
			{ found: "13", related: [{ at: { path: ["casing"], key: true }, label: "here" }] },
		);
		expect(diagnosticsToJson([diagnostic], sourcesOf(text))).toEqual([
			{
				code: "syntax/yaml",
				severity: "error",
				file: "well.yaml",
				line: 3,
				column: 18,
				end_line: 3,
				end_column: 27,
				path: "casing[0].pipe[0].od",
				what: "something is wrong",
				expected: "something else",
				found: "13",
				mend: "write it",
				related: [
					{
						file: "well.yaml",
						line: 1,
						column: 1,
						end_line: 1,
						end_column: 7,
						path: "casing",
						label: "here",
					},
				],
			},
		]);
	});
});
