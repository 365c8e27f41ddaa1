import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { casebound, starter } from "../cli/built.ts";

const file = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const check = (...rules: readonly string[]) =>
	casebound(tmpdir(), [
		"check",
		starter("horizontal"),
		"--format",
		"json",
		...rules.flatMap((each) => ["--rules", each]),
	]);

interface Told {
	readonly verdicts: readonly {
		readonly rule: string;
		readonly citation: string;
		readonly verdict: string;
		readonly because: string;
	}[];
}
const told = (out: string): Told["verdicts"] =>
	(JSON.parse(out) as { readonly files: readonly Told[] }).files.flatMap(({ verdicts }) => verdicts);

describe("a made-up jurisdiction, data alone, through `--rules`", () => {
	const folder = mkdtempSync(join(tmpdir(), "casebound-"));
	const mine = join(folder, "mine.yaml");
	const made = readFileSync(file("fixtures/jurisdictions/xx-one.yaml"), "utf8");
	beforeAll(() => writeFileSync(mine, made));
	afterAll(() => rmSync(folder, { recursive: true, force: true }));

	it("is judged beside the shipped rules, none of which it changes", () => {
		const [alone, beside] = [check(), check(mine, file("fixtures/jurisdictions/xx-two.yaml"))];
		expect([alone.status, beside.status]).toEqual([0, 0]);
		const own = told(beside.stdout).filter(({ rule }) => rule.startsWith("xx-"));
		const shipped = told(beside.stdout).filter(({ rule }) => !rule.startsWith("xx-"));
		expect(shipped).toEqual(told(alone.stdout));
		expect(new Set(own.map(({ rule }) => rule.slice(0, "xx-one".length)))).toEqual(
			new Set(["xx-one", "xx-two"]),
		);
	});

	it("uses a clamp, one of two ways, a distance by method and a deadline in business days", () => {
		const own = told(check(mine).stdout);
		const because = (rule: string) =>
			own.find((each) => each.rule === rule)?.because.replaceAll(/[\u00a0\u202f]/g, " ") ?? "none";
		expect(because("xx-one.depth.clamp")).toMatch(/but not less than 100 ft or more than 980 ft/);
		expect(because("xx-one.surface")).toMatch(/reaches ground level/);
		expect(because("xx-one.top")).toMatch(/no distance for a top known by returns/);
		expect(because("xx-one.spud")).toMatch(/Due by 2026-06-18, 2 business days before spud/);
	});

	it("with a fault is refused with the place in it", () => {
		writeFileSync(mine, made.replace("at_least: 200 ft", "at_least: 200 psi"));
		const { status, stdout } = check(mine);
		expect(status).toBe(78);
		// JSON was asked for, so the fault of the rules file is told as JSON too.
		const { files, rules_files: faults } = JSON.parse(stdout) as Readonly<Record<string, readonly object[]>>;
		expect(files).toEqual([]);
		expect(faults?.[0]).toMatchObject({
			code: "rules/limit-unit",
			file: expect.stringMatching(/mine\.yaml$/),
			line: 12,
			what: expect.stringMatching(/not the kind\s+of value/),
		});
	});
});
