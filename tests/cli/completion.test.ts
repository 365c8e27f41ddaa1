import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { COMMANDS } from "../../src/cli/commands.ts";
import { EXIT } from "../../src/cli/exit-codes.ts";
import { PAPERS } from "../../src/document/document.ts";
import { casebound } from "./built.ts";

let folder = "";
beforeAll(() => {
	folder = mkdtempSync(join(tmpdir(), "casebound-completion-"));
	mkdirSync(join(folder, "wells"));
	for (const name of ["my-well.yaml", "wells/second.yml", "notes.txt"]) writeFileSync(join(folder, name), "");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** What is offered for the last of the words. */
const offered = (...words: readonly string[]): readonly string[] => {
	const { stdout, status } = casebound(folder, ["complete", "--", ...words]);
	expect(status).toBe(0);
	return stdout
		.split("\n")
		.filter((line) => line.includes("\t"))
		.map((line) => line.split("\t")[0] ?? "");
};

describe("completion", () => {
	it("prints a script for each shell that asks the program, and no other shell's", () => {
		for (const shell of ["bash", "zsh", "fish"]) {
			const { stdout, status } = casebound(folder, ["completion", shell]);
			expect([status, stdout.includes("complete --")], shell).toEqual([0, true]);
		}
		const { stdout } = casebound(folder, ["completion", "bash"]);
		expect(spawnSync("bash", ["-n"], { input: stdout, encoding: "utf8" }).stderr).toBe("");
		expect(casebound(folder, ["completion", "sh"]).status).toBe(EXIT.usage);
	});
	it("offers commands, options, their words, and files that could be read", () => {
		expect(offered("")).toEqual(expect.arrayContaining(COMMANDS.map(({ name }) => name)));
		expect(offered("bind", "my-well.yaml", "--fo")).toEqual(["--for"]);
		expect(offered("check", "--lang", "")).toEqual(["en", "es"]);
		expect(offered("list", "ju")).toEqual(["jurisdictions"]);
		expect(offered("check", "wells/")).toEqual(["wells/second.yml"]);
		expect(offered("check", "")).toEqual(["my-well.yaml", "wells/"]);
		expect(offered("check", "my-well.yaml", "--rules", "w")).toEqual(["wells/"]);
		expect(offered("check", "nowhere/")).toEqual([]);
	});
});

describe("the manual page", () => {
	const { stdout: page, status } = casebound(tmpdir(), ["manual"]);
	it("has every command, every option and every exit code that the program has", async () => {
		expect(status).toBe(0);
		for (const { name, load } of COMMANDS) {
			expect(page).toContain(`.SS casebound ${name}`);
			for (const { flags } of (await load({ end: () => undefined })).options)
				expect(page).toContain(`.B ${flags.replaceAll("-", "\\-")}`);
		}
		for (const code of Object.values(EXIT)) expect(page).toContain(`\n.B ${code}\n`);
		for (const paper of PAPERS.slice(0, 1)) expect(page).toContain(paper);
	});
	it("has no command to troff but those of the man macros", () => {
		const commands = new Set(page.split("\n").flatMap((line) => /^[.']\S*/u.exec(line) ?? []));
		expect([...commands].sort()).toEqual(
			[".B", ".I", ".PP", ".RE", ".RS", ".SH", ".SS", ".TH", ".TP", ".br", ".fi", ".nf"].sort(),
		);
	});
});
