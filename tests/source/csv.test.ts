import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lineColumn, lineStarts } from "../../src/diagnostics/source-text.ts";
import { readCsv } from "../../src/source/csv.ts";

const texts = (text: string): string[][] | undefined => {
	const { value } = readCsv(text, "survey.csv");
	return value && [value.header, ...value.rows].map((row) => row.map((cell) => cell.text));
};
const codes = (text: string): string[] => readCsv(text, "survey.csv").diagnostics.map(({ code }) => code);

describe("readCsv", () => {
	it.each<[string, string[][]]>([
		[
			"a,b\n1,2\n",
			[
				["a", "b"],
				["1", "2"],
			],
		],
		[
			"a,b\r\n1,2",
			[
				["a", "b"],
				["1", "2"],
			],
		],
		[
			"a,b\r1,2\r",
			[
				["a", "b"],
				["1", "2"],
			],
		],
		[
			"\ufeffa,b\n1,2\n",
			[
				["a", "b"],
				["1", "2"],
			],
		],
		[
			"a , b\n 1 ,\t2\n",
			[
				["a", "b"],
				["1", "2"],
			],
		],
		[
			"a,b\n\n1,2\n\n",
			[
				["a", "b"],
				["1", "2"],
			],
		],
		[
			"a,b\n,2\n1,\n",
			[
				["a", "b"],
				["", "2"],
				["1", ""],
			],
		],
		[
			'a,b\n"x, y",2\n',
			[
				["a", "b"],
				["x, y", "2"],
			],
		],
		[
			'a,b\n"say ""stop""",2\n',
			[
				["a", "b"],
				['say "stop"', "2"],
			],
		],
		[
			'a,b\n "x" ,2\n',
			[
				["a", "b"],
				["x", "2"],
			],
		],
		[
			'a,b\n"two\nlines",2\n',
			[
				["a", "b"],
				["two\nlines", "2"],
			],
		],
		[
			'a,b\n"",2\n',
			[
				["a", "b"],
				["", "2"],
			],
		],
		[
			'a,b\n9 5/8",2\n',
			[
				["a", "b"],
				['9 5/8"', "2"],
			],
		],
		["a\n1\n2\n", [["a"], ["1"], ["2"]]],
	])("%j", (text, expected) => {
		expect(codes(text)).toEqual([]);
		expect(texts(text)).toEqual(expected);
	});

	it("knows the line and column of a cell", () => {
		const text = 'md_ft,inclination_deg\r\n0,0\r\n"100", 1.25\r\n';
		const { value } = readCsv(text, "survey.csv");
		const place = (row: number, column: number) => {
			const cell = value?.rows[row]?.[column];
			return cell && { ...lineColumn(lineStarts(text), cell.range[0]), text: text.slice(...cell.range) };
		};
		expect(place(1, 0)).toEqual({ line: 3, column: 1, text: '"100"' });
		expect(place(1, 1)).toEqual({ line: 3, column: 8, text: "1.25" });
	});

	it.each([
		["", "csv/empty"],
		["a,b\n", "csv/empty"],
		["a,,c\n1,2,3\n", "csv/header"],
		["md,MD\n1,2\n", "csv/header"],
		["a;b\n1,5;2\n", "csv/separator"],
		["a\tb\n1\t2\n", "csv/separator"],
		['a,b\n"x,2\n', "csv/quote"],
		['a,b\n"x" y,2\n', "csv/quote"],
		["a,b\n1,2\u0000\n", "syntax/not-text"],
	])("refuses %j: %s", (text, code) => {
		expect(codes(text)).toEqual([code]);
		expect(texts(text)).toBeUndefined();
	});

	it("reports every row of the wrong length and keeps the others", () => {
		const text = "md_ft,inc\n1,185.0,2\n100,1\n7\n";
		expect(codes(text)).toEqual(["csv/row-length", "csv/row-length"]);
		expect(texts(text)).toEqual([
			["md_ft", "inc"],
			["100", "1"],
		]);
		expect(readCsv(text, "s.csv").diagnostics[0]?.at).toEqual({ file: "s.csv", path: [], range: [10, 19] });
	});

	it("reads back any table written by RFC 4180", () => {
		const cell = fc
			.string({ unit: fc.constantFrom("a", "1", ",", '"', "\n", " ", ".", "é") })
			.map((each) => each.trim());
		const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;
		fc.assert(
			fc.property(fc.array(fc.tuple(cell, cell, fc.nat()), { minLength: 1, maxLength: 8 }), (rows) => {
				const written = [["one", "two", "n"], ...rows]
					.map((row) => row.map((each) => quoted(String(each))).join(","))
					.join("\r\n");
				expect(texts(written)?.slice(1)).toEqual(rows.map((row) => row.map(String)));
			}),
		);
	});

	it("never throws, and places faults inside the text", () => {
		const piece = fc.constantFrom("a", "1", ",", '"', "\n", "\r", ";", "\t", " ", '""', "\u0000");
		fc.assert(
			fc.property(fc.array(piece, { maxLength: 30 }), (pieces) => {
				const text = pieces.join("");
				const { value, diagnostics } = readCsv(text, "s.csv");
				expect(value !== undefined || diagnostics.length > 0).toBe(true);
				for (const { at } of diagnostics) {
					const [start, end] = at.range ?? [-1, -1];
					expect(start).toBeGreaterThanOrEqual(0);
					expect(end).toBeGreaterThanOrEqual(start);
					expect(end).toBeLessThanOrEqual(text.length);
				}
			}),
			{ numRuns: 2000 },
		);
	});
});
