import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import writeExcelFile from "write-excel-file/node";
import { loadCatalog } from "../src/catalog/load-catalog.ts";
import { printDiagnostics } from "../src/diagnostics/print.ts";
import { resultsLines } from "../src/render/json/results-lines.ts";
import { type Understanding, understand } from "../src/understand.ts";

const starter = readFileSync(new URL("../seeds/starters/horizontal.yaml", import.meta.url), "utf8");
const catalog = loadCatalog().value;
if (catalog === undefined) throw new Error("the shipped catalogue does not load");

const understood = (text: string, files: Readonly<Record<string, Uint8Array>>): Understanding =>
	understand(
		{ name: "well.yaml", bytes: Buffer.from(text) },
		{
			catalog,
			version: "0.0.0",
			ownRules: [],
			readFile: (file) => {
				const bytes = files[file];
				return bytes === undefined
					? { refused: "there is no such file", code: "file/not-found" }
					: { file, bytes };
			},
		},
	);

/** Every value with its origin, but for the words it was written in: `54.5 lb/ft` and `54.50 lb/ft` are one value. */
const valuesOf = ({ findings }: Understanding): readonly string[] => {
	if (findings === undefined) throw new Error("the definition has faults");
	return [...resultsLines(findings.index, { prefix: "results." })].filter((line) => line.includes('"value"'));
};
const told = ({ diagnostics, texts }: Understanding): string =>
	printDiagnostics(diagnostics, texts, { color: false, width: 100 });

const ADDITIVES = `id,name,purpose,supplier,rate (gal/1000gal),density (ppg),handling,ingredients.name,ingredients.cas,ingredients.max_share (%)
fr-1,Friction reducer FR-1 (fictional),friction reducer,Basalt Pumping (fictional),0.7,8.6,Gloves and eye protection. Spills are slippery.,Water,7732-18-5,60
,,,,,,,Anionic polyacrylamide,25085-02-3,30
,,,,,,,Petroleum distillate,64742-47-8,25
b-2,Biocide B-2 (fictional),biocide,Basalt Pumping (fictional),0.25,8.9,"Face shield, long gloves and apron. Stay upwind. Eyewash at the chemical trailer.",Glutaraldehyde,111-30-8,27
,,,,,,,Water,7732-18-5,75
acid-15,Hydrochloric acid 15 % (fictional),acid,Basalt Pumping (fictional),,8.96,Acid suit and face shield. Eyewash and shower at the acid tank.,Hydrogen chloride,7647-01-0,15
,,,,,,,Water,7732-18-5,85
`;

/** The starter with the surface pipe in a table. */
const surfacePipe =
	starter.split("\n").find((each) => each.includes("od: 13 3/8 in, weight: 54.5 lb/ft")) ?? "";
const withPipe = (file: string): string =>
	starter.replace(`pipe:\n${surfacePipe}`, `pipe: { table: ${file} }`);

describe("a list that a definition takes from a table", () => {
	it("gives the values that the same list gives when it is written out: pipe from CSV and from a workbook", async () => {
		const whole = understood(starter, {});
		expect(surfacePipe).toContain("from: surface, to: 1185 ft");
		const heads = [
			"od (in)",
			"weight (lb/ft)",
			"grade",
			"connection",
			"condition",
			"joint (ft)",
			"from (ft)",
			"to (ft)",
		];
		const cells = ["13 3/8", "54.5", "J55", "BTC", "new", "40", "surface", "1185"];
		const csv = Buffer.from(`${heads.join(",")}\n${cells.join(",")}\n`);
		const fromCsv = understood(withPipe("pipe.csv"), { "pipe.csv": csv });
		expect(told(fromCsv)).toBe(told(whole));
		expect(valuesOf(fromCsv)).toEqual(valuesOf(whole));
		const data = [["Surface casing"], heads, cells].map((row) => row.map((value) => ({ value })));
		const workbook = await writeExcelFile([{ data, sheet: "Pipe" }]).toBuffer();
		const fromWorkbook = understood(withPipe("pipe.xlsx"), { "pipe.xlsx": workbook });
		expect(valuesOf(fromWorkbook)).toEqual(valuesOf(whole));
		expect(fromWorkbook.findings?.digest).not.toBe(fromCsv.findings?.digest);
	});

	it("may hold a list in each entry: additives with what is in them", () => {
		const text = starter.replace(
			/ {2}additives:.*?(?=\n {2}annuli:)/su,
			"  additives: { table: additives.csv }",
		);
		expect(text).not.toContain("fr-1\n");
		const whole = understood(starter, {});
		const read = understood(text, { "additives.csv": Buffer.from(ADDITIVES) });
		expect(told(read)).toBe(told(whole));
		expect(valuesOf(read)).toEqual(valuesOf(whole));
		expect(JSON.stringify(read.findings?.written)).toBe(JSON.stringify(whole.findings?.written));
	});

	it("has its faults in the cell that they stand in", () => {
		const csv =
			"od (in),weight,grade,connection,condition,from (ft),to (ft)\n13 3/8,54.5,J55,BTC,new,surface,1185\n";
		const output = told(understood(withPipe("pipe.csv"), { "pipe.csv": Buffer.from(csv) }));
		expect(output).toMatch(/^pipe\.csv:2:8 +error +\S+\n/mu);
		expect(output).not.toMatch(/^well\.yaml/mu);
	});

	it("tells a table that is not there once, at its name", () => {
		const { diagnostics } = understood(withPipe("pipe.csv"), {});
		expect(diagnostics.map(({ code, at }) => [code, at.path.join(".")])).toEqual([
			["file/not-found", "casing.1.pipe.table"],
		]);
	});
});
