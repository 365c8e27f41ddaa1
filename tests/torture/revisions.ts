import { type ChildProcess, spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect } from "vitest";

/*
 * Papers of one revision lie in a folder, those of the next are bound over them, and the binding is hindered. Whatever is
 * done to it, every file must be whole and of one of the two, and nothing may be left lying that the next binding does
 * not clear away.
 */

export const MAIN = fileURLToPath(new URL("../../dist/main.js", import.meta.url));
let place = "";
let took = 0;

/** How long an unhindered binding takes [ms]. */
export const duration = (): number => took;
export const definition = (name: string): string => join(place, `${name}.yaml`);
export const args = (name: string, out: string): string[] => [
	...[MAIN, "bind", definition(name), "--for", "handout,crew", "--with", "html,csv,calendar"],
	...["--out", out, "--threads", "1"],
];

export const bind = (name: string, out: string): ChildProcess =>
	spawn(process.execPath, args(name, out), { stdio: ["ignore", "pipe", "pipe"] });
export const ended = (child: ChildProcess): Promise<{ readonly code: number | null; readonly out: string }> =>
	new Promise((resolve) => {
		let out = "";
		child.stdout?.on("data", (piece) => (out += String(piece)));
		child.stderr?.on("data", (piece) => (out += String(piece)));
		child.on("close", (code) => resolve({ code, out }));
	});

type Digests = Readonly<Record<string, string>>;

/** Digest of every file, folders by what is in them; the record of a folder is left out. */
const digestsIn = (folder: string): Digests =>
	Object.fromEntries(
		readdirSync(folder)
			.filter((name) => !name.endsWith(".papers.json") && !name.startsWith("."))
			.map((name) => {
				const hash = createHash("sha256");
				const at = join(folder, name);
				if (statSync(at).isDirectory())
					for (const each of readdirSync(at).sort()) hash.update(each).update(readFileSync(join(at, each)));
				else hash.update(readFileSync(at));
				return [name, hash.digest("hex")];
			}),
	);
export const partsIn = (folder: string): readonly string[] =>
	readdirSync(folder).filter((name) => name.endsWith(".part"));

let before: Digests = {};
let after: Digests = {};

/** Binds both revisions into folders of their own before the tests of a file, and clears up after them. */
export const withTwoRevisions = (): void => {
	beforeAll(async () => {
		place = mkdtempSync(join(tmpdir(), "casebound-torture-"));
		const text = readFileSync(new URL("../../seeds/starters/vertical-metric.yaml", import.meta.url), "utf8");
		writeFileSync(definition("before"), text);
		writeFileSync(definition("after"), `${text}\n# a remark gives it another fingerprint\n`);
		for (const name of ["before", "after"]) {
			const start = Date.now();
			const { code, out } = await ended(bind(name, join(place, name)));
			expect(out).not.toContain("casebound:");
			expect(code).toBe(0);
			if (name === "after") took = Date.now() - start;
		}
		before = digestsIn(join(place, "before"));
		after = digestsIn(join(place, "after"));
		expect(Object.keys(before)).toEqual(Object.keys(after));
	});
	afterAll(() => rmSync(place, { recursive: true, force: true }));
};

/** A folder with the papers of the first revision. */
export const laidOut = (): string => {
	const folder = mkdtempSync(join(place, "out-"));
	cpSync(join(place, "before"), folder, { recursive: true });
	return folder;
};

/** Files that are neither of the one nor of the other; a folder of tables may be missing while it is replaced. */
export const broken = (folder: string, mayLack: boolean): readonly string[] => {
	const found = digestsIn(folder);
	return [
		...Object.entries(found).flatMap(([name, digest]) =>
			digest === before[name] || digest === after[name]
				? []
				: [`${name} is neither of the one nor of the other`],
		),
		...Object.keys(before).flatMap((name) =>
			name in found || (mayLack && name.endsWith(".tables")) ? [] : [`${name} is gone`],
		),
	];
};

/** Files of the first revision, where the binding came to write any. Tables that are alike in both are of neither. */
export const mixed = (folder: string): readonly string[] => {
	const found = Object.entries(digestsIn(folder)).filter(([name]) => before[name] !== after[name]);
	const old = found.filter(([name, digest]) => digest === before[name]).map(([name]) => name);
	return old.length === found.length ? [] : old;
};
