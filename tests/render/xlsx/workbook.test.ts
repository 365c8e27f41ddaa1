import readExcelFile from "read-excel-file/node";
import { expect, it } from "vitest";
import { boundWith } from "../../../src/document/document.ts";
import { renderTablesAsJson, renderWorkbook } from "../../../src/pipeline.ts";
import { composeOnce } from "../../run/compose-once.ts";
import { findingsOf, STARTERS } from "../../starters.ts";

interface Tables {
	readonly tables: readonly {
		readonly caption: string;
		readonly columns: readonly { readonly id: string; readonly head: string; readonly unit?: string }[];
		readonly rows: readonly Readonly<Record<string, string | number | null>>[];
	}[];
}

it.each(STARTERS)(
	"the workbook of %s has a sheet a table, numbers as numbers, units in the heads",
	async (starter) => {
		const papers = boundWith("regulator");
		const { documents } = composeOnce(
			findingsOf(starter),
			papers.map((paper) => ({ paper, language: "en", units: "field" }) as const),
		);
		expect(documents).toHaveLength(papers.length);
		let numbers = 0;
		for (const { paper } of documents) {
			const bytes = await renderWorkbook(paper);
			expect(Buffer.from(await renderWorkbook(paper)).equals(Buffer.from(bytes))).toBe(true);
			const { tables }: Tables = JSON.parse(await renderTablesAsJson(paper));
			const sheets = await readExcelFile(Buffer.from(bytes));
			const names = sheets.map(({ sheet }) => sheet);
			expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(tables.length + 1);
			for (const name of names) expect(name).toMatch(/^[^[\]:*?/\\']{1,31}$/u);
			expect(sheets[0]?.data.flat().join("\n")).toContain(paper.imprint.digest);
			for (const [i, table] of tables.entries()) {
				const [head, ...rows] = sheets[i + 1]?.data ?? [];
				expect(head).toEqual(
					table.columns.map(({ head: words, unit }) => (unit === undefined ? words : `${words}, ${unit}`)),
				);
				for (const [r, row] of table.rows.entries())
					for (const [c, { id }] of table.columns.entries()) {
						const value = row[id] ?? null;
						expect(rows[r]?.[c] ?? null, `${table.caption} ${id}`).toEqual(
							typeof value === "string" ? (value.trim() === "" ? null : value.trim()) : value,
						);
						if (typeof value === "number") numbers++;
					}
			}
		}
		expect(numbers).toBeGreaterThan(300);
	},
);
