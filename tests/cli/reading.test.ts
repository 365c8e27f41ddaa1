import { execFileSync } from "node:child_process";
import {
	existsSync,
	mkdirSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	rmSync,
	symlinkSync,
	writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { casebound, shell, started, starter } from "./built.ts";

const WELL = starter("vertical-metric");
let folder = "";
beforeAll(() => {
	folder = mkdtempSync(join(tmpdir(), "casebound-reading-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = (...args: readonly string[]) => casebound(folder, args);

describe("what is no file of text", () => {
	it.each([
		["a device without an end", "/dev/zero", "it is a device or a socket, not a file"],
		["a folder", ".", "it is a folder"],
		["a pipe that nobody writes into", "pipe", "it is a pipe; write - in its place"],
		["nothing", "nowhere.yaml", "there is no such file"],
	])("%s is not read", (_, file, why) => {
		if (file === "pipe" && !existsSync(join(folder, file))) execFileSync("mkfifo", [join(folder, file)]);
		for (const args of [
			// A folder stands for the definitions in it where several are taken: tests/cli/folders.test.ts.
			...(file === "."
				? [["results", file]]
				: [
						["check", file],
						["bind", file],
					]),
			["check", WELL, "--rules", file],
		]) {
			const { status, stdout, stderr } = run(...args);
			expect(stderr, args.join(" ")).toContain(`casebound: cannot read ${file}: ${why}`);
			expect(status, args.join(" ")).toBe(66);
			expect(stdout).toBe("");
		}
	});

	it("is not read as a table beside a definition either", () => {
		const well = readFileSync(starter("horizontal-as-built"), "utf8");
		const table = /file: ([\w-]+\.csv)/u.exec(well)?.[1] ?? "";
		expect(table).not.toBe("");
		mkdirSync(join(folder, "tables"));
		writeFileSync(join(folder, "tables", "well.yaml"), well);
		execFileSync("mkfifo", [join(folder, "tables", table)]);
		const { status, stderr } = run("check", join("tables", "well.yaml"));
		expect(stderr.replaceAll(/\s+/gu, " ")).toContain("it cannot be read: it is a pipe");
		expect(status).toBe(65);
	});

	it("is not read beyond what any well needs", () => {
		writeFileSync(join(folder, "large.yaml"), `definition: 1\n# ${"x".repeat(3_000_000)}\n`);
		const { status, stderr } = run("check", "large.yaml");
		expect(stderr).toContain("syntax/too-large");
		expect(stderr).toContain("more than that");
		expect(status).toBe(65);
	});
});

describe("standard input", () => {
	it("stands for a file under the name -, and through what a shell puts in a file's place", () => {
		const direct = run("check", WELL, "--quiet").stdout.split("\n").slice(1);
		for (const line of [
			`cat ${WELL} | $TOOL check - --quiet`,
			`$TOOL check --quiet <(cat ${WELL})`,
			`$TOOL check --quiet /dev/stdin < ${WELL}`,
		]) {
			const { status, stdout, stderr } = shell(folder, line);
			expect(stderr, line).toBe("");
			expect(status, line).toBe(0);
			expect(stdout.split("\n").slice(1), line).toEqual(direct);
		}
	});

	it("is named where it has a fault", () => {
		const { status, stderr } = started(folder, ["check", "-"], { input: "definition: 1\nwell: [\n" });
		expect(stderr).toMatch(/^<standard input>:\d+:\d+ {2}error/u);
		expect(status).toBe(65);
	});
});

describe("a batch", () => {
	it("goes on past a file that cannot be read, and ends with the greatest code", () => {
		writeFileSync(join(folder, "bad.yaml"), "definition: 1\n");
		const checked = run("check", "bad.yaml", "nowhere.yaml", ".", WELL);
		expect(checked.status).toBe(66);
		expect(checked.stderr).toContain("cannot read nowhere.yaml");
		expect(checked.stdout).toContain("Osterby 11-6");
		const bound = run("bind", "nowhere.yaml", WELL, "bad.yaml", "--for", "handout", "--out", "batch");
		expect(bound.status).toBe(66);
		expect(bound.stderr.indexOf("nowhere.yaml")).toBeLessThan(bound.stderr.indexOf("bad.yaml"));
		expect(readdirSync(join(folder, "batch")).sort()).toEqual([
			"osterby-11-6.handout.pdf",
			"osterby-11-6.papers.json",
		]);
	});

	it("refuses a second well that would take the first one's names, and binds the first", () => {
		writeFileSync(join(folder, "again.yaml"), readFileSync(WELL));
		const { status, stderr, stdout } = run("bind", WELL, "again.yaml", "--for", "handout", "--out", "twice");
		expect(stderr).toContain("again.yaml: its papers would take the names of those of");
		expect(status).toBe(73);
		expect(stdout.match(/handout\.pdf/gu)).toHaveLength(1);
	});

	it("gives the same bytes, words and order, whatever the number of threads", () => {
		const bind = (threads: string) => {
			const out = `threads-${threads}`;
			const { stdout, stderr, status } = run(
				...[
					"bind",
					WELL,
					starter("horizontal"),
					"--for",
					"handout,crew",
					"--with",
					"csv",
					"--threads",
					threads,
				],
				...["--out", out],
			);
			expect(stderr).toBe("");
			expect(status).toBe(0);
			const names = readdirSync(join(folder, out), { recursive: true, withFileTypes: true }).filter((each) =>
				each.isFile(),
			);
			return {
				stdout: stdout.replaceAll(out, "out"),
				files: names
					.map(({ name, parentPath }) => [name, readFileSync(join(parentPath, name), "base64")])
					.sort(),
			};
		};
		const one = bind("1");
		expect(one.files.length).toBeGreaterThan(8);
		expect(bind("2")).toEqual(one);
	});
});

describe("new", () => {
	it("leaves nothing behind where a file is in its way", () => {
		const side = /file: ([\w-]+\.csv)/u.exec(readFileSync(starter("horizontal-as-built"), "utf8"))?.[1] ?? "";
		mkdirSync(join(folder, "half"));
		writeFileSync(join(folder, "half", side), "mine");
		const { status, stderr } = run("new", join("half", "well.yaml"), "--starter", "horizontal-as-built");
		expect(status).toBe(73);
		expect(stderr).toContain(`${side}: it exists already`);
		expect(readdirSync(join(folder, "half"))).toEqual([side]);
		expect(readFileSync(join(folder, "half", side), "utf8")).toBe("mine");
		symlinkSync("nowhere", join(folder, "link.yaml"));
		expect(run("new", "link.yaml").status).toBe(73);
		writeFileSync(join(folder, "file"), "");
		expect(run("new", join("deep", "er", "x".repeat(300))).status).toBe(73);
		expect(existsSync(join(folder, "deep"))).toBe(false);
	});
});
