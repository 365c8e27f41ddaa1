import { describe, expect, it } from "vitest";
import { LANGUAGES, PAPERS, type Paper, type PaperDocument } from "../../../src/document/document.ts";
import { renderTableFiles, renderTablesAsJson } from "../../../src/pipeline.ts";
import { renderText } from "../../../src/render/text/render-text.ts";
import { composeOnce } from "../../run/compose-once.ts";
import { findingsOf, STARTERS, type Starter } from "../../starters.ts";

const documentsOf = (
	starter: Starter,
	paper: Paper,
	language: PaperDocument["language"],
	units: PaperDocument["units"] = "field",
): readonly PaperDocument[] =>
	composeOnce(findingsOf(starter), [{ paper, language, units }]).documents.map((each) => each.paper);

/** A reader of CSV after RFC 4180, not the one that wrote it. */
const readCsv = (text: string): string[][] => {
	const rows: string[][] = [[""]];
	let quoted = false;
	for (let i = 0; i < text.length; i += 1) {
		const sign = text[i] ?? "";
		const row = rows.at(-1) ?? [];
		const last = row.length - 1;
		if (quoted) {
			if (sign !== '"') row[last] += sign;
			else if (text[i + 1] === '"') {
				row[last] += '"';
				i += 1;
			} else quoted = false;
		} else if (sign === '"') quoted = true;
		else if (sign === ",") row.push("");
		else if (sign === "\r" && text[i + 1] === "\n") {
			rows.push([""]);
			i += 1;
		} else row[last] += sign;
	}
	return rows.slice(0, -1);
};

interface Tables {
	readonly operator: string;
	readonly caution: string;
	readonly tables: readonly {
		readonly caption: string;
		readonly columns: readonly { readonly id: string; readonly head: string; readonly unit?: string }[];
		readonly rows: readonly Readonly<Record<string, string | number | null>>[];
	}[];
}

describe.each(STARTERS)("tables of %s", (starter) => {
	it.each(PAPERS)("of the %s say in CSV, in JSON and on paper the same", async (paper) => {
		for (const language of LANGUAGES)
			for (const document of documentsOf(starter, paper, language)) {
				const [csv, json] = [await renderTableFiles(document), await renderTablesAsJson(document)];
				const { tables, caution }: Tables = JSON.parse(json);
				expect(caution).toBe(document.imprint.caution);
				expect(csv.length).toBe(tables.length);
				expect(new Set(csv.map(({ name }) => name)).size).toBe(csv.length);
				const printed = renderText(document).replaceAll(/[\s,]/gu, "").replaceAll("\u2212", "-");
				for (const [i, table] of tables.entries()) {
					const { text, name } = csv[i] ?? { text: "", name: "" };
					expect(name).toMatch(/^\d{2,3}-[a-z0-9-]+$/);
					expect(text.startsWith("\uFEFF")).toBe(true);
					const [head, ...rows] = readCsv(text.slice(1));
					expect(head).toEqual(
						table.columns.map(({ head: words, unit }) => (unit === undefined ? words : `${words}, ${unit}`)),
					);
					expect(rows.length).toBe(table.rows.length);
					for (const [r, row] of table.rows.entries())
						for (const [c, column] of table.columns.entries()) {
							const value = row[column.id];
							const cell = rows[r]?.[c]?.replace(/^'/, "");
							expect(cell, `${table.caption} ${column.head}`).toBe(
								value === null || value === undefined ? "" : String(value).replace(/^'/, ""),
							);
							if (typeof value === "string")
								expect(printed).toContain(value.replaceAll(/[\s,]/gu, "").replaceAll("\u2212", "-"));
						}
				}
			}
	});
});

describe("numbers of tables", () => {
	it("are numbers in the unit of their head, also in metric", async () => {
		const of = async (units: PaperDocument["units"]) => {
			const [document] = documentsOf("horizontal", "regulator", "en", units);
			if (document === undefined) throw new Error("no paper");
			const { tables }: Tables = JSON.parse(await renderTablesAsJson(document));
			const casing = tables.find(({ columns }) => columns.some(({ id }) => id === "drift"));
			const column = (id: string) => ({
				unit: casing?.columns.find((each) => each.id === id)?.unit,
				values: casing?.rows.map((row) => row[id]),
			});
			return { od: column("od"), drift: column("drift") };
		};
		// API 5CT drift of 5 1/2 in, 23.00 lb/ft: 4.545 in; a pipe size is a decimal here, not a fraction.
		const field = await of("field");
		expect(field.od.unit).toBe("in");
		expect(field.od.values?.at(-1)).toBe(5.5);
		expect(field.drift.values?.at(-1)).toBe(4.545);
		const metric = await of("metric");
		expect(metric.od).toEqual({ unit: "mm", values: [508, 339.7, 244.5, 139.7] });
	});
});
