import { describe, expect, it } from "vitest";
import { forPaper } from "../../../src/paper/for-paper.ts";
import { composeOnce } from "../../run/compose-once.ts";
import { findingsOf } from "../../starters.ts";

const findings = findingsOf("horizontal");
const [landowner, crew] = (["landowner", "crew"] as const).map(
	(paper) =>
		composeOnce(findings, [
			{ paper, language: "en", units: "field", ...(paper === "crew" ? { job: "pumping" } : {}) },
		]).documents[0]?.paper,
);
const tables = (paper: typeof landowner) =>
	(paper?.sections ?? []).flatMap(({ blocks }) =>
		blocks.flatMap((block) => (block.kind === "table" ? [block] : [])),
	);

describe("what a paper leaves out does not part an entry from its results", () => {
	it("a neighbor keeps the short name that joins it, and its depth stands beside the rock below it", () => {
		expect(forPaper(findings.well, "landowner").neighbors.map(({ id }) => id)).toEqual(
			findings.well.neighbors.map(({ id }) => id),
		);
		const rows =
			tables(landowner).find(({ rows: [row] }) => row?.cells["well_depth"] !== undefined)?.rows ?? [];
		expect(
			rows.map(({ cells: { well_depth } }) => well_depth?.kind === "quantity" && well_depth.value),
		).toEqual([285, 340]);
	});

	it("the short name itself is not printed for the public", () => {
		expect(JSON.stringify(tables(landowner).map(({ rows }) => rows))).not.toMatch(
			/"text":"(ww-|home-|ow-)\d/,
		);
	});
});

describe("what today may not break", () => {
	it("is every limit of the job, each line with its limit and whose it is, none of it a laboratory's record", () => {
		const limits = tables(crew).find(({ rows: [row] }) => row?.cells["limit_of"] !== undefined);
		// The list is not cut: what the page lacks room for would be the limit that is broken.
		expect(limits?.rows.length).toBeGreaterThanOrEqual(5);
		for (const row of limits?.rows ?? []) {
			expect(row.cells["limit"]?.kind).toMatch(/^(?:rich|text)$/u);
			expect(JSON.stringify(row.cells["whose"])).toMatch(/"text":"[^"]*\S/u);
		}
		const lines = limits?.rows.map(({ cells }) => JSON.stringify(cells)) ?? [];
		expect(new Set(lines).size).toBe(lines.length);
		const said = JSON.stringify(limits?.rows);
		expect(said).toContain("16 TAC § 3.13(a)(7)(A)");
		const stops = findings.well.stimulation?.annuli?.flatMap(({ stopAbove }) => stopAbove?.value ?? []) ?? [];
		expect(stops.length).toBeGreaterThan(1);
		for (const value of stops) expect(said).toContain(`"value":${value},`);
	});
});
