import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { casebound, starter } from "./built.ts";

const OLD = readFileSync(starter("horizontal"), "utf8");
const NEW = OLD.replace(
	"joint: 40 ft, from: surface, to: 1185 ft",
	"joint: 40 ft, from: surface, to: 1190 ft",
).replace("          to: 1185 ft", "          to: 1190 ft");

let folder = "";
beforeAll(() => {
	folder = mkdtempSync(join(tmpdir(), "casebound-compare-"));
	writeFileSync(join(folder, "old.yaml"), OLD);
	writeFileSync(join(folder, "new.yaml"), NEW);
	writeFileSync(join(folder, "broken.yaml"), OLD.replace("1185 ft", "1185"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("casebound compare", () => {
	it("tells inputs by name as they were written, then results with the inputs that they rest on", () => {
		const { status, stdout, stderr } = casebound(folder, ["compare", "old.yaml", "new.yaml"]);
		expect([status, stderr]).toEqual([0, ""]);
		expect(stdout).not.toContain("[object");
		expect(stdout).toContain(
			"INPUTS CHANGED (2)\n  1. casing › surface › pipe › 1 › to (Bottom): 1185 ft → 1190 ft\n",
		);
		expect(stdout).toMatch(
			/ {2}casing\.surface\.shoe\.tvd: 1,185.ft → 1,190.ft \(\+5.ft, \+0\.4 %\), from 1\n/u,
		);
		expect(stdout).toMatch(/\d+ more results moved that the regulator's paper does not print: add --all\./u);
	});

	it("gives the same as data, and says nothing where nothing differs", () => {
		const { stdout } = casebound(folder, ["compare", "old.yaml", "new.yaml", "--format", "json"]);
		const read = JSON.parse(stdout);
		expect(read.inputs.map((input: { after_at: string }) => input.after_at)).toEqual([
			"casing[1].pipe[0].to",
			"casing[1].cement.slurries[1].to",
		]);
		const shoe = read.results.find(({ key }: { key: string }) => key === "results.casing.surface.shoe.tvd");
		expect(shoe).toMatchObject({
			before: { value: 1185, unit: "ft" },
			after: { value: 1190 },
			from_inputs: [1],
		});
		expect(casebound(folder, ["compare", "old.yaml", "old.yaml"]).stdout).toContain(
			"No input, result, finding or deadline differs.",
		);
	});

	it("ends with 2 under --strict where a finding came open, and with 0 where one was closed", () => {
		const worse = OLD.replace("pressure_test: { pressure: 1000 psi", "pressure_test: { pressure: 100 psi");
		writeFileSync(join(folder, "worse.yaml"), worse);
		const there = casebound(folder, ["compare", "old.yaml", "worse.yaml", "--strict"]);
		expect(there.status).toBe(2);
		expect(there.stdout).toMatch(
			/WORST FIRST\n {2}Meets → DOES NOT MEET: [\s\S]* {2}Meets → DOES NOT MEET: 16 TAC/u,
		);
		expect(casebound(folder, ["compare", "worse.yaml", "old.yaml", "--strict"]).status).toBe(0);
	});

	it("speaks of a wrong use with 64, of a definition with errors with 65, of what cannot be read with 66", () => {
		expect(casebound(folder, ["compare", "old.yaml"]).status).toBe(64);
		expect(casebound(folder, ["compare", "old.yaml", "new.yaml", "--since", "old.yaml"]).status).toBe(64);
		expect(casebound(folder, ["compare", "old.yaml", "new.yaml", "old.yaml"]).status).toBe(64);
		expect(casebound(folder, ["compare", "broken.yaml", "new.yaml"]).status).toBe(65);
		const gone = casebound(folder, ["compare", "new.yaml", "--since", "no-such"]);
		expect(gone.status).toBe(66);
		expect(gone.stderr).toContain(
			"cannot read no-such: there is no such file, and git knows no revision of that name",
		);
	});

	it("writes the paper of changes, and its HTML edition", () => {
		const made = casebound(folder, ["compare", "old.yaml", "new.yaml", "--out", "papers", "--with", "html"]);
		expect(made.status).toBe(0);
		expect(readdirSync(join(folder, "papers")).sort()).toEqual([
			"sorrel-bench-unit-3-16h.changes.html",
			"sorrel-bench-unit-3-16h.changes.pdf",
			"sorrel-bench-unit-3-16h.papers.json",
		]);
		const html = readFileSync(join(folder, "papers", "sorrel-bench-unit-3-16h.changes.html"), "utf8");
		expect(html).toContain("casing › surface › pipe › 1 › to");
		expect(html).not.toContain("neighbors ›");
		expect(html).not.toContain("[object");
	});
});

describe("an earlier state in git", () => {
	const git = (...args: readonly string[]) =>
		execFileSync("git", ["-c", "user.name=Test", "-c", "user.email=test@example.org", ...args], {
			cwd: join(folder, "repo"),
			stdio: "ignore",
		});
	beforeAll(() => {
		const place = join(folder, "repo", "wells");
		mkdirSync(place, { recursive: true });
		const built = readFileSync(starter("horizontal-as-built"), "utf8");
		const beside = readdirSync(dirname(starter("horizontal-as-built"))).filter((name) =>
			/^horizontal-as-built-.*\.csv$/u.test(name),
		);
		git("init", "--quiet");
		writeFileSync(join(place, "well.yaml"), built);
		for (const name of beside)
			writeFileSync(join(place, name), readFileSync(starter("horizontal").replace("horizontal.yaml", name)));
		git("add", ".");
		git("commit", "--quiet", "-m", "first");
		const survey = join(place, "horizontal-as-built-survey.csv");
		const rows = readFileSync(survey, "utf8").split("\n");
		const at = rows.length - 10;
		const cells = (rows[at] ?? "").split(",");
		cells[1] = String(Number(cells[1]) + 0.3);
		rows[at] = cells.join(",");
		writeFileSync(survey, rows.join("\n"));
		git("add", ".");
		git("commit", "--quiet", "-m", "second");
	});

	it("is read with the files beside it as they were", () => {
		const { status, stdout, stderr } = casebound(folder, [
			"compare",
			"repo/wells/well.yaml",
			"--since",
			"HEAD~1",
		]);
		expect([status, stderr]).toEqual([0, ""]);
		expect(stdout).toContain("earlier: repo/wells/well.yaml at HEAD~1, revision");
		expect(stdout).toMatch(
			/INPUTS CHANGED \(1\)\n {2}1\. .*horizontal-as-built-survey\.csv: 1 row\s+differs/u,
		);
		expect(stdout).toMatch(/weight_in_air: .*, from 1\n/u);
	});

	it("is refused where the revision or the file in it is not known", () => {
		for (const revision of ["HEAD~7", "--output=x", "HEAD..HEAD"])
			expect(
				casebound(folder, ["compare", "repo/wells/well.yaml", `--since=${revision}`]).status,
				revision,
			).toBe(66);
		writeFileSync(join(folder, "repo", "wells", "late.yaml"), OLD);
		const late = casebound(folder, ["compare", "repo/wells/late.yaml", "--since", "HEAD"]);
		expect([late.status, late.stderr]).toEqual([
			66,
			"casebound: cannot read repo/wells/late.yaml at HEAD: the revision has no such file\n",
		]);
	});
});

describe("casebound bind --since", () => {
	it("binds the paper of changes as well, and goes by one definition", () => {
		const made = casebound(folder, [
			"bind",
			"new.yaml",
			"--for",
			"regulator",
			"--since",
			"old.yaml",
			"--out",
			"since",
			"--with",
			"html",
		]);
		expect(made.status).toBe(0);
		expect(readdirSync(join(folder, "since"))).toContain("sorrel-bench-unit-3-16h.changes.pdf");
		const html = readFileSync(join(folder, "since", "sorrel-bench-unit-3-16h.regulator.html"), "utf8");
		expect(html).toContain("Changed since revision B");
		expect(html).toMatch(/<th[^>]*>Δ Surface/u);
		expect(html).not.toMatch(/<th[^>]*>Δ Production/u);
		expect(casebound(folder, ["bind", "new.yaml", "old.yaml", "--since", "old.yaml"]).status).toBe(64);
	});
});
