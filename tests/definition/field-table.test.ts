import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { definitionSchema } from "../../src/definition/definition.ts";
import { FIELD_TABLE_BEGIN, FIELD_TABLE_END, fieldTable } from "../../src/definition/field-table.ts";
import { everyField } from "../../src/definition/schema-walk.ts";

const FIELDS = new URL("../../src/definition/FIELDS.md", import.meta.url);
const REBASE =
	"GOLDEN=write npx vitest run --config .config/vitest.config.ts tests/definition/field-table.test.ts";

const block = (text: string): readonly [before: string, table: string, after: string] | undefined => {
	const begin = text.indexOf(FIELD_TABLE_BEGIN);
	const end = text.indexOf(FIELD_TABLE_END);
	if (begin < 0 || end < begin) return undefined;
	const start = begin + FIELD_TABLE_BEGIN.length;
	return [text.slice(0, start), text.slice(start, end), text.slice(end)];
};

describe("the table of fields", () => {
	it("has a row for each field and nothing else", () => {
		const rows = fieldTable()
			.split("\n")
			.filter((line) => line.startsWith("| `"));
		expect(rows.length).toBe(everyField(definitionSchema).length);
		// Five bars make four cells; a bar inside a cell is escaped.
		for (const row of rows) expect([row, row.match(/(?<!\\)\|/g)?.length]).toEqual([row, 5]);
	});

	it("stands in FIELDS.md as it is", () => {
		const found = block(readFileSync(FIELDS, "utf8"));
		if (found === undefined) throw new Error("the marks around the table are gone");
		const [before, table, after] = found;
		const due = `\n\n${fieldTable()}\n\n`;
		if (process.env["GOLDEN"] === "write") {
			writeFileSync(FIELDS, `${before}${due}${after}`);
			return;
		}
		expect(table === due, `the table of fields is out of date; write it anew with: ${REBASE}`).toBe(true);
	});
});
