import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { describe, expect, it } from "vitest";
import { COMMANDS } from "../../src/cli/commands.ts";
import { readableStack } from "../../src/cli/readable-stack.ts";

/** The built tool, as it lies in dist/. `npm test` builds first. */

const dist = fileURLToPath(new URL("../../dist", import.meta.url));
const chunks = readdirSync(join(dist, "chunks")).filter((name) => name.endsWith(".js"));
const chunk = (name: string): string => {
	const found = chunks.find((each) => new RegExp(`^${name}-[\\w-]{8}\\.js$`, "u").test(each));
	if (found === undefined) throw new Error(`no chunk ${name}`);
	return join(dist, "chunks", found);
};

/** Files and libraries that a file loads before its first line runs, itself included. */
const loadedBy = (file: string, seen = new Set<string>()): ReadonlySet<string> => {
	if (seen.has(file)) return seen;
	seen.add(file);
	if (!file.startsWith(dist)) return seen;
	for (const [, specifier = ""] of readFileSync(file, "utf8").matchAll(
		/^(?:import|export)\b[^"']*?["']([^"'\n]+)["'];?$/gmu,
	))
		loadedBy(specifier.startsWith(".") ? join(dirname(file), specifier) : specifier, seen);
	return seen;
};
const bytesOf = (loaded: ReadonlySet<string>): number =>
	[...loaded]
		.filter((file) => file.startsWith(dist))
		.reduce((sum, file) => sum + readFileSync(file).length, 0);
const libraries = (loaded: ReadonlySet<string>): readonly string[] =>
	[...loaded].filter((file) => !file.startsWith(dist) && !file.startsWith("node:"));

describe("the bundle", () => {
	it("loads for help what reads the command line, and nothing else", () => {
		const loaded = loadedBy(chunk("program"));
		expect(loaded.size).toBeGreaterThan(2);
		expect(libraries(loaded)).toEqual([]);
		expect(bytesOf(loaded)).toBeLessThan(150_000);
	});

	it("has a command for every one that is listed, with the words of the list", async () => {
		for (const { name, takes, load } of COMMANDS) {
			const command = await load({ end: () => undefined });
			expect(command.name()).toBe(name);
			expect(command.usage(), name).toBe(takes);
		}
	});

	it("tells places of the sources in a stack", () => {
		const file = chunk("check");
		const lines = readFileSync(file, "utf8").split("\n");
		const line = lines.findIndex((text) => text.includes("const checkCommand"));
		const column = lines[line]?.indexOf("checkCommand") ?? 0;
		const told = readableStack(
			`Error: x\n    at checkCommand (${pathToFileURL(file).href}:${line + 1}:${column + 1})`,
		);
		const [, place] = told.split("\n");
		expect(place).toMatch(/^ {4}at checkCommand \(src\/cli\/check\.ts:\d+:\d+\)$/u);
		const source = readFileSync(new URL("../../src/cli/check.ts", import.meta.url), "utf8").split("\n");
		expect(source[Number(/:(\d+):/u.exec(place ?? "")?.[1]) - 1]).toContain("const checkCommand");
		expect(readableStack("at x (file:///nowhere/y.js:1:2)")).toBe("at x (file:///nowhere/y.js:1:2)");
	});
});
