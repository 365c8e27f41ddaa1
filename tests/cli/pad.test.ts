import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { definitionsOf } from "../../src/cli/definitions-in.ts";
import { casebound } from "./built.ts";

let folder = "";
beforeAll(() => {
	folder = mkdtempSync(join(tmpdir(), "casebound-pad-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("a pad on the command line", () => {
	it("is written by new with the definitions of its wells, and a folder that holds it is that pad", () => {
		expect(casebound(folder, ["new", "site/pad.yaml", "--starter", "pad"]).status).toBe(0);
		expect(readdirSync(join(folder, "site"))).toHaveLength(4);
		expect(definitionsOf([join(folder, "site")])).toEqual([join(folder, "site", "pad.yaml")]);
	});

	it("is checked well by well, and then each two wells beside each other", () => {
		const { status, stdout, stderr } = casebound(folder, ["check", "site", "--quiet", "--strict"]);
		expect([status, stderr]).toEqual([0, ""]);
		for (const n of [1, 2, 3])
			expect(stdout).toContain(`site/bristle-creek-${n}-21h.yaml: Bristle Creek Unit ${n}-21H\n`);
		expect(stdout.replaceAll(/\s+/gu, " ")).toContain(
			"Bristle Creek pad (3 wells): how near each two of them come, by site/pad.yaml Bristle Creek Unit 1-21H and Bristle Creek Unit 2-21H: nearest 30 ft at 0 ft, separation factor 2.01 at 1,550 ft",
		);
	});

	it("is no single well: what works on one says so", () => {
		const { status, stderr } = casebound(folder, ["results", "site/pad.yaml"]);
		expect([status, stderr]).toEqual([
			66,
			"casebound: cannot read site/pad.yaml as one well: it is the file of a pad, which check and bind take whole\n",
		]);
	});
});
