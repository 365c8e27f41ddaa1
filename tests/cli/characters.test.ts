import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { casebound, shell, starter } from "./built.ts";

let folder = "";
beforeAll(() => {
	folder = mkdtempSync(join(tmpdir(), "casebound-characters-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const RAW = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e]/u;

it("a file's name never reaches the terminal with what would move its cursor", () => {
	const name = "a\u001b[2J\u202eb.yaml";
	for (const args of [
		["check", name],
		["bind", name],
		["check", starter("vertical-metric"), "--rules", name],
		["new", join(name, "x", "y".repeat(300))],
	]) {
		const { stdout, stderr, status } = casebound(folder, args);
		expect(status).not.toBe(0);
		expect(`${stdout}${stderr}`, args.join(" ")).not.toMatch(RAW);
	}
});

it.each([
	[
		"the definition of a well",
		() => readFileSync(starter("horizontal"), "utf8"),
		"it is the definition of a well",
	],
	["a text", () => "Dear all,\nplease find the rules attached.\n", "holds no entries with names"],
	["a list", () => "- a\n- b\n", "holds no entries with names"],
	["something else with entries", () => "name: x\n", "it has no entry `rules:`"],
])("%s is no rules file, and is told so in one line", (_, content, why) => {
	writeFileSync(join(folder, "other.yaml"), content());
	const { status, stderr, stdout } = casebound(folder, [
		"check",
		starter("vertical-metric"),
		"--rules",
		"other.yaml",
	]);
	expect(stderr).toMatch(/^casebound: other\.yaml is not a rules file: [^\n]+\n$/u);
	expect(stderr).toContain(why);
	expect(stdout).toBe("");
	expect(status).toBe(78);
});

it("a rules file in letters that no paper can show is refused like a definition", () => {
	const rules = readFileSync(new URL("../../seeds/jurisdictions/us-nv.yaml", import.meta.url), "utf8");
	writeFileSync(join(folder, "letters.yaml"), rules.replace(/^name: .*$/mu, "name: 内华达"));
	const { status, stderr } = casebound(folder, [
		"check",
		starter("vertical-metric"),
		"--rules",
		"letters.yaml",
	]);
	expect(stderr).toMatch(/^letters\.yaml:\d+:\d+ {2}error {2}syntax\/no-such-letter/mu);
	expect(status).toBe(78);
	const asked = ["check", starter("vertical-metric"), "--rules", "letters.yaml", "--format", "json"];
	const json = casebound(folder, asked);
	expect(JSON.parse(json.stdout)).toMatchObject({
		files: [],
		rules_files: [{ code: "syntax/no-such-letter", file: "letters.yaml", path: "name" }],
	});
	expect(json.status).toBe(78);
});

it("a character written as an escape is refused with its line and name, in a value and in a name", () => {
	const text = readFileSync(starter("vertical-metric"), "utf8");
	for (const [from, to] of [
		[/^ {2}name: .*$/mu, '  name: "Osterby\\u202e 11-6"'],
		[/^ {2}name: /mu, '  "na\\u0007me": '],
	] as const) {
		writeFileSync(join(folder, "escaped.yaml"), text.replace(from, to));
		const { status, stderr } = casebound(folder, ["check", "escaped.yaml"]);
		expect(stderr).toMatch(/^escaped\.yaml:\d+:\d+ {2}error {2}syntax\/hidden-character/mu);
		expect(stderr).toMatch(/U\+202E, RIGHT-TO-LEFT OVERRIDE|U\+0007, BELL/u);
		expect(status).toBe(65);
	}
});

it("a soft hyphen is left out of papers and names of files, with a notice", () => {
	const text = readFileSync(starter("vertical-metric"), "utf8");
	writeFileSync(join(folder, "soft.yaml"), text.replace("name: Osterby 11-6", "name: Oster\u00adby 11-6"));
	const { status, stderr, stdout } = shell(folder, "$TOOL bind soft.yaml --for handout --out soft");
	expect(stderr).toContain("syntax/invisible-character");
	expect(stdout).toContain("soft/osterby-11-6.handout.pdf");
	expect(status).toBe(0);
});
