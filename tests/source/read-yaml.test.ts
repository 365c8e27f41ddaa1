import { describe, expect, it } from "vitest";
import { readYaml } from "../../src/source/read-yaml.ts";
import { told } from "../told.ts";

const read = (text: string) => readYaml(text, "well.yaml");
const value = (text: string): unknown => read(text).value?.value;
/** Every diagnostic as `code line:column-width found`. */
const faults = (text: string): string[] => {
	const { diagnostics } = read(text);
	return diagnostics.map(({ code, at, mend }) => {
		return `${code} ${at.range?.join("-") ?? "file"} ${told(mend)}`;
	});
};
const codes = (text: string): string[] => read(text).diagnostics.map(({ code }) => code);

describe("readYaml keeps what was written", () => {
	it.each([
		["a: 9 5/8 in", "9 5/8 in"],
		["a: 3.5", 3.5],
		["a: .5", 0.5],
		["a: -7", -7],
		["a: 4.2e6", 4.2e6],
		["a: 2026-05-04", "2026-05-04"],
		["a: 007", "007"],
		["a: 0x1F", "0x1F"],
		["a: 0o17", "0o17"],
		["a: 1e999", "1e999"],
		["a: .nan", ".nan"],
		["a: 12:30", "12:30"],
		["a: 42000000000000000000", "42000000000000000000"],
		["a: 42000000000000", 42000000000000],
		["a: yes", "yes"],
		["a: on", "on"],
		["a: true", true],
		["a:", null],
		["a: ~", null],
		['a: "4"', "4"],
		["a: '911'", "911"],
		["a: 3,250 ft", "3,250 ft"],
		["a: 30 %", "30 %"],
		['a: 9 5/8"', '9 5/8"'],
		["a: Sorrel # a remark", "Sorrel"],
		["a: |\n  one\n  two\n", "one\ntwo\n"],
	])("%j", (text, expected) => {
		expect(read(text).diagnostics).toEqual([]);
		expect((value(text) as Record<string, unknown>)["a"]).toBe(expected);
	});

	it("maps, lists, CRLF and a byte order mark", () => {
		expect(value("\ufeffa:\r\n  - b: 1\r\n    c: x\r\n  - { d: [1, 2] }\r\n")).toEqual({
			a: [{ b: 1, c: "x" }, { d: [1, 2] }],
		});
	});

	it("gives maps no prototype to look things up in", () => {
		const map = value("a: 1") as Record<string, unknown>;
		expect("toString" in map).toBe(false);
	});

	it("repeats anchored entries", () => {
		expect(value("a: &x { b: 1 }\nc: *x\n")).toEqual({ a: { b: 1 }, c: { b: 1 } });
	});
});

describe("a comma inside { } or [ ] is one fault, and reading goes on as it was meant", () => {
	it.each([
		[
			"a: { to: 3,250 ft }",
			{ to: "3250 ft" },
			"syntax/comma-in-number 9-17 write `3250 ft`, or `3.250 ft` if the comma marks decimals",
		],
		[
			"a: { to: 1,250,000 psi, b: 2 }",
			{ to: "1250000 psi", b: 2 },
			"syntax/comma-in-number 9-22 write `1250000 psi`",
		],
		[
			"a: { to: -1,250 ft }",
			{ to: "-1250 ft" },
			"syntax/comma-in-number 9-18 write `-1250 ft`, or `-1.250 ft` if the comma marks decimals",
		],
		[
			"a: { n: 3,250 }",
			{ n: 3250 },
			"syntax/comma-in-number 8-13 write `3250`, or `3.250` if the comma marks decimals; with its unit, if it has one",
		],
		["a: { w: 43,5 lb/ft }", { w: "43.5 lb/ft" }, "syntax/comma-in-number 8-18 write `43.5 lb/ft`"],
		[
			"a: { t: about 3,250 ft }",
			{ t: "about 3250 ft" },
			"syntax/comma-in-number 8-22 write `about 3250 ft`, or `about 3.250 ft` if the comma marks decimals",
		],
		[
			"a: { water: produced water 40 %, pond water 60 % }",
			{ water: "produced water 40 %, pond water 60 %" },
			'syntax/comma-in-text 12-48 write `"produced water 40 %, pond water 60 %"` with double quotes',
		],
		[
			"a: { name: Smith, John, role: x }",
			{ name: "Smith, John", role: "x" },
			'syntax/comma-in-text 11-22 write `"Smith, John"` with double quotes',
		],
		[
			"a: { days: 3, 4, 5 }",
			{ days: "3, 4, 5" },
			'syntax/comma-in-text 11-18 write `"3, 4, 5"` if it is one text, or `[3, 4, 5]` if it is a list',
		],
		[
			"a: [1,200 ft]",
			["1200 ft"],
			"syntax/comma-in-number 4-12 write `1200 ft`, or `1.200 ft` if the comma marks decimals",
		],
		[
			"a: [ 1,250,000 psi, 2 psi ]",
			["1250000 psi", "2 psi"],
			"syntax/comma-in-number 5-18 write `1250000 psi`",
		],
		["a: [8,5 in]", ["8.5 in"], "syntax/comma-in-number 4-10 write `8.5 in`"],
	])("%s", (text, expected, fault) => {
		expect(faults(text)).toEqual([fault]);
		expect(value(text)).toEqual({ a: expected });
	});

	it("twice in a map, twice in a list: a message each, and no duplicate keys", () => {
		expect(codes("a: { from: 3,250 ft, to: 4,250 ft }")).toEqual([
			"syntax/comma-in-number",
			"syntax/comma-in-number",
		]);
		expect(value("a: { from: 3,250 ft, to: 4,250 ft }")).toEqual({ a: { from: "3250 ft", to: "4250 ft" } });
		expect(value("a: [8,900 psi, 9,000 psi]")).toEqual({ a: ["8900 psi", "9000 psi"] });
		expect(codes("a: [8,900 psi, 9,000 psi]")).toHaveLength(2);
	});

	it("over two lines", () => {
		expect(faults("a: { to: 3,\n  250 ft }")).toEqual([
			'syntax/comma-in-text 9-20 write `"3, 250 ft"` if it is one text, or `[3, 250 ft]` if it is a list',
		]);
	});

	it.each(["a: [100,200]", "a: [16,19,26]", "a: [1, 200 ft]", "a: [8900 psi, 9000 psi]", "a: { b: , c: 1 }"])(
		"%s is left as it stands",
		(text) => {
			expect(codes(text)).toEqual([]);
		},
	);

	it.each([
		["a: { to:3250 ft }", "syntax/no-value 5-15 write `to: 3250 ft`"],
		["a: { surface }", "syntax/no-value 5-12 write `surface: …` with its value, or take it away"],
		[
			"a: { name: Windmill, sampled }",
			'syntax/no-value 21-28 write `"Windmill, sampled"` in double quotes if it belongs to the text before the comma; else give `sampled: ` its value',
		],
		["a: { b: 1, to 3250 ft: 2, c d }", 'syntax/comma-in-text 23-29 write `"2, c d"` with double quotes'],
	])("%s", (text, fault) => {
		expect(faults(text)).toEqual([fault]);
	});
});

describe("a # that is part of a value", () => {
	it.each([
		[
			"a: 8.8 #/gal",
			"8.8 #/gal",
			"syntax/hash-in-value 3-12 write `8.8 lb/gal`, or put the value in double quotes",
		],
		[
			"a: Sorrel #3",
			"Sorrel #3",
			'syntax/hash-in-value 3-12 write `"Sorrel #3"` with double quotes, or put a space after the `#` if a remark is meant',
		],
		[
			"a: #4",
			"#4",
			'syntax/hash-in-value 3-5 write `"#4"` with double quotes, or put a space after the `#` if a remark is meant',
		],
	])("%s", (text, expected, fault) => {
		expect(faults(text)).toEqual([fault]);
		expect(value(text)).toEqual({ a: expected });
	});

	it("in { } the bracket it swallows is not reported as well", () => {
		expect(codes("a: { b: 8.8 #/gal }")).toEqual(["syntax/hash-in-value"]);
	});

	it.each(["a: 1 # 3 of them", "a: 1 #note", "#3 done\na: 1", "  #3\na: 1", 'a: "#3"', "a: x#3"])(
		"not %s",
		(text) => {
			expect(codes(text)).toEqual([]);
		},
	);
});

describe("each fault of form has one located message", () => {
	it.each([
		["", "syntax/empty file"],
		["# only a remark\n", "syntax/empty file"],
		["a: 1\na: 2\n", "syntax/duplicate-key 5-6"],
		["a: { b: 1, b: 2 }", "syntax/duplicate-key 11-12"],
		["x: &x { b: 1 }\na: { <<: *x, c: 2 }\n", "syntax/merge-key 20-22"],
		["a:\n\tb: 1\n", "syntax/tab 3-4"],
		["\ta: 1\n", "syntax/tab 0-1"],
		["a: {\n\tb: 1\n}\n", "syntax/tab 5-6"],
		["a: 1\n---\nb: 2\n", "syntax/several-documents 5-8"],
		["%YAML 1.1\n---\na: yes\n", "syntax/directive 0-9"],
		["%FOO x\n---\na: 1\n", "syntax/directive 0-6"],
		["a: !ref 3\n", "syntax/tag 3-9"],
		["a: !!binary aGk=\n", "syntax/tag 4-16"],
		["__proto__: 1\nb: 2\n", "syntax/reserved-key 0-9"],
		["a: { constructor: 1 }", "syntax/reserved-key 5-16"],
		["? [a, b]\n: 1\n", "syntax/key 2-8"],
		[": 1\n", "syntax/key 0-1"],
		["a: *nowhere\n", "syntax/alias 3-11"],
		["a: &a [ *a ]\n", "syntax/alias 8-10"],
		["a: 1\u0000\n", "syntax/not-text 4-5"],
		["PK\u0003\u0004", "syntax/not-text 2-3"],
		["a: caf\ufffd\n", "syntax/not-text 6-7"],
		["a: 'x\n", "syntax/yaml 3-4"],
		['a: "x \\q"\n', "syntax/yaml 6-8"],
		["a: [1, 2\n", "syntax/yaml 3-4"],
		["a: 1\n b: 2\n", "syntax/yaml 6-10"],
		["a: One: two\n", "syntax/yaml 3-11"],
		["a: 1\nto:3250 ft\nb: 2\n", "syntax/yaml 5-17"],
		["a: @x\n", "syntax/yaml 3-4"],
		["- 1\na: 2\n", "syntax/yaml 4-5"],
		["a: - b\n", "syntax/yaml 3-4"],
		['od: "9 5/8" in\n', "syntax/yaml 12-14"],
		["a: {b: 1,, c: 2}\n", "syntax/yaml 9-10"],
		["a: {x: 1}}\n", "syntax/yaml 9-10"],
	])("%j", (text, fault) => {
		expect(faults(text).map((each) => each.split(" ").slice(0, 2).join(" "))).toEqual([fault]);
	});

	it("a file too large", () => {
		expect(codes(`a: ${"x".repeat(5_000_001)}`)).toEqual(["syntax/too-large"]);
	});

	it.each([
		["[", "["],
		["{a: ", "{"],
		["- ", "-"],
		["? ", "?"],
	])("nesting by %j without end", (open) => {
		expect(codes(open.repeat(100_000))).toEqual(["syntax/nesting"]);
	});

	it("blocks without end", () => {
		const text = Array.from({ length: 500 }, (_, depth) => `${" ".repeat(depth)}a:`).join("\n");
		expect(codes(text)).toEqual(["syntax/nesting"]);
	});

	it("aliases that multiply", () => {
		const levels = Array.from(
			{ length: 12 },
			(_, i) => `a${i}: &a${i} [${Array(10).fill(i ? `*a${i - 1}` : "lol")}]`,
		);
		expect(codes(levels.join("\n"))).toEqual(["syntax/alias"]);
	});

	it("aliases that nest", () => {
		const levels = Array.from({ length: 3000 }, (_, i) => `a${i}: &a${i} [${i ? `*a${i - 1}` : "x"}]`);
		expect(codes(levels.join("\n"))).toEqual(["syntax/alias"]);
	});
});

describe("faults that are mended do not spread", () => {
	it("the first of two entries is kept", () => {
		expect(value("a: 1\na: 2\n")).toEqual({ a: 1 });
	});
	it("merged entries are there", () => {
		expect(value("x: &x { b: 1, c: 1 }\na: { <<: *x, c: 2 }\n")).toEqual({
			x: { b: 1, c: 1 },
			a: { b: 1, c: 2 },
		});
	});
	it("a duplicate names the first one", () => {
		expect(read("a: 1\na: 2\n").diagnostics[0]?.related?.[0]?.at.range).toEqual([0, 1]);
	});
	it("all of several faults are found", () => {
		expect(codes("a: { to: 3,250 ft }\nb: 1\nb: 2\nc: !x 3\n")).toEqual([
			"syntax/comma-in-number",
			"syntax/duplicate-key",
			"syntax/tag",
		]);
	});
	it("a text too broken to go on has no value", () => {
		expect(read("a: [1\nb: 2\n").value).toBeUndefined();
	});
});
