import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

/*
 * The package as a user gets it: packed, laid into an empty folder with the libraries that npm installs beside it and no
 * others, and run. `npm test` builds first.
 */

const root = fileURLToPath(new URL("../..", import.meta.url));

interface Locked {
	readonly packages: Readonly<Record<string, { readonly dev?: boolean; readonly devOptional?: boolean }>>;
}

let folder = "";
let files: readonly string[] = [];
beforeAll(() => {
	folder = mkdtempSync(join(tmpdir(), "casebound-packed-"));
	const told = execFileSync("npm", ["pack", "--json", "--pack-destination", folder], {
		cwd: root,
		encoding: "utf8",
	});
	const [packed] = JSON.parse(told) as readonly { filename: string; files: readonly { path: string }[] }[];
	files = packed?.files.map(({ path }) => path) ?? [];
	const place = join(folder, "node_modules", "casebound");
	mkdirSync(place, { recursive: true });
	execFileSync("tar", ["-xzf", join(folder, packed?.filename ?? ""), "-C", place, "--strip-components=1"]);
	const { packages } = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8")) as Locked;
	// What lies within another package comes with it.
	for (const [path, { dev }] of Object.entries(packages))
		if (/^node_modules\/(?:@[^/]+\/)?[^/]+$/u.test(path) && dev !== true && existsSync(join(root, path))) {
			mkdirSync(dirname(join(folder, path)), { recursive: true });
			symlinkSync(join(root, path), join(folder, path));
		}
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const casebound = (...args: readonly string[]) =>
	spawnSync(process.execPath, [join(folder, "node_modules/casebound/dist/main.js"), ...args], {
		cwd: folder,
		encoding: "utf8",
		env: { PATH: process.env["PATH"] ?? "" },
		maxBuffer: 1 << 28,
	});

describe("the packed tool", () => {
	it("holds what it needs, and neither sources nor tests", () => {
		expect(files).toContain("dist/main.js");
		expect(files).toContain("dist/shipped/tables.json");
		expect(files).toContain("seeds/starters/horizontal.yaml");
		expect(files.filter((name) => /^(?:src|tests|fixtures|templates|\.)/u.test(name))).toEqual([]);
		expect(existsSync(join(folder, "node_modules", "zod"))).toBe(false);
	});

	it("writes a starter, checks it and binds its papers in an empty folder", () => {
		expect(casebound("new", "well.yaml").stderr).toBe("");
		expect(casebound("check", "well.yaml")).toMatchObject({ stderr: "", status: 0 });
		const bound = casebound(
			"bind",
			"well.yaml",
			"--for",
			"handout,crew",
			"--lang",
			"es",
			"--with",
			"html,csv,json,calendar",
		);
		expect(bound).toMatchObject({ stderr: "", status: 0 });
		expect(readdirSync(join(folder, "papers")).some((name) => name.endsWith(".handout.es.pdf"))).toBe(true);
		expect(casebound("draw", "well.yaml", "--png")).toMatchObject({ stderr: "", status: 0 });
		expect(casebound("results", "well.yaml").status).toBe(0);
		expect(casebound("schema").status).toBe(0);
		expect(casebound("--version").stdout.trim()).toBe(
			(JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { version: string }).version,
		);
	});
});
