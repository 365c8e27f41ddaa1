import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";

/** The tool's name is not on a registry, so that whoever asks one for it would get what somebody else put there. */

const root = fileURLToPath(new URL("../..", import.meta.url));
const FETCHES =
	/\b(?:npx|npm (?:exec|init|create|i|install|add)|yarn (?:dlx|add)|pnpm (?:dlx|add))\b[^\n`]*\bcasebound\b(?!-[\d.]+\.tgz)/u;

const below = (folder: string): readonly string[] =>
	readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
		.filter((name) => /\.(?:md|ts|tsx|hbs|yaml)$/u.test(name))
		.map((name) => join(folder, name));

it("nothing in documents, messages or templates makes a person fetch the name from a registry", () => {
	const files = [
		"README.md",
		"DEVELOPERS.md",
		"CHANGELOG.md",
		...["src", "templates", "seeds"].flatMap(below),
	];
	expect(files.length).toBeGreaterThan(200);
	expect(files.filter((name) => FETCHES.test(readFileSync(join(root, name), "utf8")))).toEqual([]);
	for (const bad of ["npx casebound check x", "npm install -g casebound", "npm exec -- casebound"])
		expect(FETCHES.test(bad), bad).toBe(true);
	expect(FETCHES.test("npm install ./casebound-0.1.0.tgz")).toBe(false);
});

it("the package cannot be published by accident", () => {
	expect(JSON.parse(readFileSync(join(root, "package.json"), "utf8"))).toMatchObject({ private: true });
});
