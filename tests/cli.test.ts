import { createHash } from "node:crypto";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import * as built from "./cli/built.ts";
import { WHOLE } from "./run/sample.ts";

const STARTERS = fileURLToPath(new URL("../seeds/starters/", import.meta.url));
const HORIZONTAL = join(STARTERS, "horizontal.yaml");

let folder = "";
beforeAll(() => {
	folder = mkdtempSync(join(tmpdir(), "casebound-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const casebound = (args: readonly string[], env?: Readonly<Record<string, string>>) =>
	built.casebound(folder, args, env);

const put = (name: string, text: string): string => {
	const file = join(folder, name);
	writeFileSync(file, text);
	return file;
};

describe("the built command", () => {
	it("gives help with an example for every command", () => {
		const help = built.started(folder, ["--help"]);
		expect(help.status).toBe(0);
		for (const command of [
			"new",
			"check",
			"bind",
			"compare",
			"results",
			"draw",
			"explain",
			"list",
			"schema",
		]) {
			expect(help.stdout).toContain(command);
			const own = casebound([command, "--help"]);
			expect(own.status, command).toBe(0);
			expect(own.stdout, command).toMatch(/Examples?:/u);
		}
	});

	it("speaks of a wrong use on stderr, with exit code 64", () => {
		for (const args of [
			["bnid"],
			["bind"],
			["list", "nothing"],
			["bind", HORIZONTAL, "--for", "nobody"],
			["bind", HORIZONTAL, "--for", "landowner", "--neighbor", "ww-9"],
			["bind", HORIZONTAL, "--for", "crew", "--neighbor", "ww-1"],
			["check", "--format", "xml", HORIZONTAL],
		]) {
			const { status, stdout, stderr } = casebound(args);
			expect(status, args.join(" ")).toBe(64);
			expect(stdout, args.join(" ")).toBe("");
			expect(stderr, args.join(" ")).not.toBe("");
			expect(stderr, args.join(" ")).not.toContain("    at ");
		}
	});

	it("refuses a definition with an error: exit code 65, located, nothing written", () => {
		const file = put(
			"broken.yaml",
			readFileSync(HORIZONTAL, "utf8").replace("weight: 54.5 lb/ft", "weigth: 54.5 lb/ft"),
		);
		const out = join(folder, "none");
		const { status, stdout, stderr } = built.started(folder, ["bind", file, "--out", out]);
		expect(status).toBe(65);
		expect(stdout).toBe("");
		expect(stderr).toMatch(/broken\.yaml:\d+:\d+/u);
		expect(stderr).toContain("weigth");
		expect(existsSync(out)).toBe(false);
	});

	it("says which file cannot be read (66) or written (73)", () => {
		const missing = built.started(folder, ["check", "nowhere.yaml"]);
		expect(missing.status).toBe(66);
		expect(missing.stderr).toContain("nowhere.yaml");
		const taken = put("taken", "a file where a folder is asked for");
		expect(casebound(["draw", HORIZONTAL, "--out", join(taken, "x")]).status).toBe(73);
	});

	it("refuses a bad rules file with 78", () => {
		const rules = put("rules.yaml", "jurisdiction: xx-yy\nname: Nowhere\n");
		expect(casebound(["check", HORIZONTAL, "--rules", rules]).status).toBe(78);
	});

	it("ends a batch with the greatest code, and goes on past a bad file", () => {
		const bad = put("bad.yaml", "definition: 1\nwell: { name: 3 }\n");
		const { status, stdout } = casebound(["check", bad, HORIZONTAL]);
		expect(status).toBe(65);
		expect(stdout).toContain(HORIZONTAL);
	});

	it("says under --strict that a check is not met or cannot be told", () => {
		const plain = casebound(["check", HORIZONTAL]);
		const strict = casebound(["check", HORIZONTAL, "--strict"]);
		expect(plain.status).toBe(0);
		const open = /^(?:DOES NOT MEET|INSUFFICIENT DATA) \(/mu.test(plain.stdout);
		expect(strict.status).toBe(open ? 2 : 0);
	});

	it("writes a starter that it then accepts, and never over a file", () => {
		const target = join(folder, "mine", "well.yaml");
		const made = casebound(["new", target, "--starter", "horizontal-as-built"]);
		expect(made.status).toBe(0);
		expect(casebound(["check", target]).status).toBe(0);
		expect(casebound(["new", target]).status).toBe(73);
	});

	it("sets a paper by the reference engine where asked to, under a name that says so", () => {
		const out = join(folder, "by-reference");
		const asked = ["bind", HORIZONTAL, "--for", "handout", "--engine", "reference", "--out", out];
		const { status, stdout } = casebound(asked);
		expect(status).toBe(0);
		expect(stdout).toContain("by the reference engine, to compare with");
		const [file, ...more] = readdirSync(out).filter((name) => name.endsWith(".pdf"));
		expect([file, more]).toEqual([expect.stringMatching(/\.handout\.reference\.pdf$/u), []]);
		expect(
			readFileSync(join(out, file ?? ""))
				.subarray(0, 5)
				.toString(),
		).toBe("%PDF-");
		expect(casebound(["bind", HORIZONTAL, "--engine", "other"]).status).toBe(64);
	});

	it("binds the default papers with their HTML editions, names them, and gives the same bytes twice, whatever the time zone and locale", () => {
		const bind = (out: string, env: Readonly<Record<string, string>>, ...papers: readonly string[]) => {
			const asked = ["bind", HORIZONTAL, "--with", "html", "--out", join(folder, out), ...papers];
			const bound = built.started(folder, asked, { env });
			expect(bound.stderr).toBe("");
			expect(bound.status).toBe(0);
			return {
				stdout: bound.stdout,
				digests: Object.fromEntries(
					readdirSync(join(folder, out))
						.filter((name) => !name.endsWith(".papers.json"))
						.map((name) => [
							name,
							createHash("sha256")
								.update(readFileSync(join(folder, out, name)))
								.digest("hex"),
						]),
				),
			};
		};
		const first = bind("first", { TZ: "UTC", LANG: "C" });
		const elsewhere = { TZ: "America/Denver", LANG: "es_ES.UTF-8", NODE_ENV: "development" };
		const second = bind("second", elsewhere, ...(WHOLE ? [] : ["--for", "crew"]));
		expect(Object.keys(first.digests)).toHaveLength(8);
		expect(Object.keys(second.digests)).toHaveLength(WHOLE ? 8 : 2);
		expect(first.digests).toMatchObject(second.digests);
		for (const name of Object.keys(first.digests)) {
			expect(name).toMatch(/\.(?:regulator|regulator-appendix|landowner|crew\.[a-z-]+)\.(?:pdf|html)$/u);
			expect(first.stdout).toContain(name);
		}
		expect(first.stdout).toMatch(/Does not meet \d+ · .*\bMeets \d+/u);
		expect(readdirSync(join(folder, "first")).some((name) => name.endsWith(".part"))).toBe(false);
	});

	it("prints results, drawings, schema and lists", () => {
		const results = JSON.parse(casebound(["results", HORIZONTAL]).stdout) as { values: object };
		expect(Object.keys(results.values).length).toBeGreaterThan(300);
		const drawn = casebound(["draw", HORIZONTAL, "--out", join(folder, "drawn")]);
		expect(drawn.status).toBe(0);
		expect(readFileSync(drawn.stdout.trim().split("\n")[0] ?? "", "utf8")).toMatch(/^<svg|^<\?xml/u);
		expect(JSON.parse(casebound(["schema"]).stdout)).toHaveProperty("$schema");
		for (const what of [
			"jurisdictions",
			"checks",
			"pipe",
			"grades",
			"cements",
			"sources",
			"starters",
			"papers",
			"jobs",
		])
			expect(casebound(["list", what]).stdout.split("\n").length, what).toBeGreaterThan(3);
	});

	it("explains codes, checks, formulas and computed values", () => {
		expect(casebound(["explain", "definition/unknown-key"]).stdout).toContain("definition/unknown-key");
		const value = casebound(["explain", "results.casing.surface.shoe.tvd", "--in", HORIZONTAL]);
		expect(value.status).toBe(0);
		expect(value.stdout).toContain("casing");
		expect(casebound(["explain", "no-such-thing"]).status).toBe(64);
	});

	it("prints no color where none is wanted", () => {
		const { stderr } = built.started(folder, ["check", put("c.yaml", "definition: 1\nwel: {}\n")], {
			env: { NO_COLOR: "1", FORCE_COLOR: "1" },
		});
		expect(stderr).not.toContain("\u001b[");
	});
});
