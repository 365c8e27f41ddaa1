import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { PAPERS } from "../../src/document/document.ts";
import { casebound, starter } from "./built.ts";

let folder = "";
beforeAll(() => {
	folder = mkdtempSync(join(tmpdir(), "casebound-usage-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("a wrong use", () => {
	it("is told in two lines: what is wrong and what may have been meant, and where to look", () => {
		for (const [args, first] of [
			[["bnid", "x.yaml"], "error: unknown command 'bnid' (Did you mean bind?)"],
			[["bind", "x.yaml", "--oot", "y"], "error: unknown option '--oot' (Did you mean --out?)"],
			[
				["bind", "x.yaml", "--for", "regulater"],
				/no paper; write regulator, .*\. Did you mean regulator\?$/u,
			],
			[["bind"], "error: missing required argument 'file'"],
			[["check", "x.yaml", "--format", "xml"], /Allowed choices are text, json\.$/u],
		] as const) {
			const { status, stdout, stderr } = casebound(folder, args);
			const lines = stderr.trimEnd().split("\n");
			expect([status, stdout, lines.length], stderr).toEqual([64, "", 2]);
			if (typeof first === "string") expect(lines[0]).toBe(first);
			else expect(lines[0]).toMatch(first);
			expect(lines[1]).toMatch(/^Run casebound (?:\w+ )?--help /u);
		}
	});
});

describe("results --only", () => {
	const well = starter("vertical-metric");
	it("takes a key as explain does, without its room", () => {
		const { status, stdout } = casebound(folder, ["results", well, "--only", "casing.surface.shoe"]);
		expect(status).toBe(0);
		expect(Object.keys(JSON.parse(stdout).values)).toContain("results.casing.surface.shoe.tvd");
	});
	it("that finds nothing says so, and what may have been meant", () => {
		const near = casebound(folder, ["results", well, "--only", "casing.surfase"]);
		expect([near.status, near.stdout, near.stderr]).toEqual([
			64,
			"",
			'casebound: no result\'s key begins with "casing.surfase"; did you mean "casing.surface"?\n',
		]);
		const far = casebound(folder, ["results", well, "--only", "qqqqqqqqqqqq"]);
		expect(far.status).toBe(64);
		expect(far.stderr).toMatch(/keys begin with .*casing, .*cement/u);
	});
});

it("bind writes a workbook and maps beside the papers where they are asked for, and says so", () => {
	const args = [
		"bind",
		starter("vertical-metric"),
		"--for",
		"handout",
		"--with",
		"xlsx,geojson,kml",
		"--out",
		"papers",
	];
	const { status, stdout, stderr } = casebound(folder, args);
	expect([status, stderr]).toEqual([0, ""]);
	const slug = /papers\/(.*)\.handout\.pdf/u.exec(stdout)?.[1];
	expect(readdirSync(join(folder, "papers")).sort()).toEqual(
		["handout.pdf", "handout.xlsx", "map.geojson", "map.kml", "papers.json"].map((name) => `${slug}.${name}`),
	);
	expect(stdout).toContain("map.kml  with what the regulator's paper may show");
});

it("list papers has every paper that --for takes, and says what each is", () => {
	const lines = casebound(folder, ["list", "papers"]).stdout.trimEnd().split("\n");
	expect(lines.map((line) => line.split(/\s+/u)[0])).toEqual([...PAPERS, "changes"]);
	for (const line of lines) expect(line).toMatch(/^[\w-]+ {2,}\S.{15,}$/u);
});
