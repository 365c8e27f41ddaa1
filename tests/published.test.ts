/*
 * Runs every row of `fixtures/published/*.yaml` (values from outside the project) and of `fixtures/computed/*.yaml`
 * (our own arithmetic, kept apart: it guards against change, it proves nothing). A file is `rows:` and a list of
 *
 *   - id: directional-01                     unique over all files
 *     title: Minimum curvature, two stations
 *     source: lapeyrouse                     key of seeds/sources.yaml
 *     at: Minimum Curvature Method           table, row, example, page
 *     how_known: read                        read | memory | common practice   (computed in fixtures/computed)
 *     note: anything a reader should know    optional
 *     inputs: { MD1: 3500 ft, I1: 15 deg }   symbols of the formula, each with its unit; ratios and counts bare
 *     formula: trajectory/north-step         id in the register
 *     expected: 27.22 ft                     as published, with its unit
 *     tolerance: 0.01                        in the unit of `expected`; half the last printed digit unless there is reason
 *
 * Further keys of a check, all optional:
 *     rounded_to: 10                         the result is rounded so (exact halves up) before it is compared
 *     branch: plastic                        the branch of the method that must have governed
 *     row: -1, column: tvd                   which cell, where the formula gives a table (-1 is the last row)
 *     name: reduced                          lets a later check of the row take this result as an input: { from: reduced };
 *                                            a named check may leave `expected` out
 *     inputs: { … }                          adds to or replaces the row's inputs for this check
 * Where the published value and the formula disagree, both are kept:
 *     formula_gives: 4750 psi, why: …        then the disagreement itself is tested: it must be larger than the tolerance,
 *     within: 10                             and no larger than this
 *
 * A row with several outputs writes `checks:` and a list of such checks instead of formula, expected and tolerance.
 * An input may also be a list (`[1200 psi, 900 psi]`) or a table:
 *     stations: { columns: { md: [measured-depth, ft], inclination: [angle, deg] }, rows: [[0, 0], [100, 3]] }
 */
import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { isSourceKey } from "../src/cite/source-keys.ts";
import { HOW_KNOWN, type Row, readRows } from "./published/rows.ts";
import { runRow } from "./published/run-row.ts";
import { publishedTable } from "./published/table.ts";

const published = readRows("published");
const computed = readRows("computed");

const isSaid = (text: unknown): boolean => typeof text === "string" && text.trim() !== "";

const provenance = (row: Row, howKnown: readonly string[]): void => {
	expect(isSourceKey(row.source), `source: ${row.source}`).toBe(true);
	expect(isSaid(row.at), "at").toBe(true);
	expect(howKnown, "how_known").toContain(row.how_known);
};

describe("published values", () => {
	const ran: string[] = [];
	test.each(published.map((row) => [`${row.file}: ${row.id}`, row] as const))("%s", (_, row) => {
		provenance(row, HOW_KNOWN);
		ran.push(...runRow(row));
	});

	test("every row was run", () => {
		const checks = published.flatMap((row) => row.checks.filter((c) => c.expected !== undefined));
		expect(ran.length).toBe(checks.length);
		expect(published.length).toBeGreaterThanOrEqual(160);
		expect(checks.length).toBeGreaterThanOrEqual(1500);
	});

	test("a row that disagrees with its formula fails", () => {
		const [row] = published.filter((r) => r.checks.length === 1 && r.checks[0]?.formula_gives === undefined);
		if (row === undefined) throw new Error("no row with one check");
		const [check] = row.checks;
		const spoiled = {
			...row,
			checks: [{ ...check, expected: `1e9 ${unitOf(check?.expected)}` }],
		} as Row;
		expect(() => runRow(spoiled)).toThrow(/published 1e9/);
	});

	test("a row without a source, a place or a way of knowing is refused", () => {
		const [row] = published as [Row];
		expect(() => provenance({ ...row, source: "somebody" }, HOW_KNOWN)).toThrow();
		expect(() => provenance({ ...row, at: " " }, HOW_KNOWN)).toThrow();
		expect(() => provenance({ ...row, how_known: "computed" }, HOW_KNOWN)).toThrow();
	});
});

const unitOf = (written: unknown): string => String(written).replace(/^[-+\d./e ]+/, "");

describe("our own arithmetic", () => {
	test.each(computed.map((row) => [`${row.file}: ${row.id}`, row] as const))("%s", (_, row) => {
		provenance(row, ["computed"]);
		runRow(row);
	});
});

test("no two rows share an id", () => {
	const ids = [...published, ...computed].map((row) => row.id);
	expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
});

describe("the table of published values among the outside judges", () => {
	test("says what the rows say", () => {
		const page = new URL("judges/README.md", import.meta.url);
		const [before, table, after] = readFileSync(page, "utf8").split(
			/<!-- published -->|<!-- end of published -->/,
		);
		const due = `\n\n${publishedTable()}\n\n`;
		if (process.env["GOLDEN"] === "write") {
			writeFileSync(page, `${before}<!-- published -->${due}<!-- end of published -->${after}`);
			return;
		}
		expect(table, "write it anew with: npm run golden").toBe(due);
	});
});
