import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const DOCUMENTS = execFileSync("git", ["ls-files", "*.md", "--cached", "--others", "--exclude-standard"], {
	cwd: ROOT,
	encoding: "utf8",
})
	.split("\n")
	.filter((path) => path !== "" && existsSync(join(ROOT, path)));

/** Links to places outside are not followed: the tests have no network. */
const linksIn = (text: string): readonly string[] =>
	[...text.matchAll(/\]\((?<to>[^)\s]+)\)/g)].flatMap(({ groups }) => {
		const to = groups?.["to"]?.split("#")[0] ?? "";
		return to === "" || /^[a-z]+:/.test(to) ? [] : [to];
	});

/** `src/calc/<topic>/` and `tests/*.test.ts` are patterns; only whole paths are looked for. */
const pathsIn = (text: string): readonly string[] =>
	[...text.matchAll(/`(?<path>(?:src|tests|seeds|fixtures|templates|\.config|\.ci)\/[\w./-]+)`/g)].flatMap(
		({ groups }) => (groups?.["path"] === undefined ? [] : [groups["path"]]),
	);

describe.each(DOCUMENTS)("%s", (document) => {
	const text = readFileSync(join(ROOT, document), "utf8");
	it("links to files that there are", () => {
		const missing = linksIn(text).filter((to) => !existsSync(join(ROOT, dirname(document), to)));
		expect(missing).toEqual([]);
	});
	it("names paths that there are", () => {
		expect(pathsIn(text).filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
	});
	it("never makes a person fetch a package of another's from a registry", () => {
		expect(text).not.toMatch(/\bnpx casebound|npm (?:i|install)(?: -g)? casebound/);
	});
});

describe("the documents", () => {
	it("are short enough to be read", () => {
		const lines = (name: string) => readFileSync(join(ROOT, name), "utf8").split("\n").length;
		expect(DOCUMENTS.length).toBeGreaterThan(4);
		expect(lines("README.md")).toBeLessThanOrEqual(150);
	});
});

describe("the page for contributors", () => {
	const lines = readFileSync(join(ROOT, "DEVELOPERS.md"), "utf8").trimEnd().split("\n");
	it("is read in one sitting: 200 lines at most, none wider than 120 columns", () => {
		expect(lines.length).toBeGreaterThan(100);
		expect(lines.length).toBeLessThanOrEqual(200);
		expect(lines.filter((line) => line.length > 120)).toEqual([]);
	});
});
