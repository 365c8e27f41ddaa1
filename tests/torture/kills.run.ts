import { type ChildProcess, spawn } from "node:child_process";
import { createHash } from "node:crypto";
import {
	cpSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	rmSync,
	statSync,
	watch,
	writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { Figures, forMinutes, MINUTES, randomOf, SEED } from "./figures.ts";

/*
 * Papers of one revision lie in a folder, those of the next are bound over them, and the binding is ended in the middle.
 * Whatever moment that is, every file must be whole and of one of the two, and nothing may be left lying that the next
 * binding does not clear away.
 */

const MAIN = fileURLToPath(new URL("../../dist/main.js", import.meta.url));
const random = randomOf(SEED);

let place = "";
const definition = (name: string): string => join(place, `${name}.yaml`);
const args = (name: string, out: string): string[] => [
	...[MAIN, "bind", definition(name), "--for", "handout,crew", "--with", "html,csv,calendar"],
	...["--out", out, "--threads", "1"],
];

const bind = (name: string, out: string): ChildProcess =>
	spawn(process.execPath, args(name, out), { stdio: ["ignore", "pipe", "pipe"] });
const ended = (child: ChildProcess): Promise<{ readonly code: number | null; readonly out: string }> =>
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
const partsIn = (folder: string): readonly string[] =>
	readdirSync(folder).filter((name) => name.endsWith(".part"));

let before: Digests = {};
let after: Digests = {};
let duration = 0;
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
		duration = Date.now() - start;
	}
	before = digestsIn(join(place, "before"));
	after = digestsIn(join(place, "after"));
	expect(Object.keys(before)).toEqual(Object.keys(after));
});
afterAll(() => rmSync(place, { recursive: true, force: true }));

/** A folder with the papers of the first revision. */
const laidOut = (): string => {
	const folder = mkdtempSync(join(place, "out-"));
	cpSync(join(place, "before"), folder, { recursive: true });
	return folder;
};

/** Files that are neither of the one nor of the other; a folder of tables may be missing while it is replaced. */
const broken = (folder: string, mayLack: boolean): readonly string[] => {
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
const mixed = (folder: string): readonly string[] => {
	const found = Object.entries(digestsIn(folder)).filter(([name]) => before[name] !== after[name]);
	const old = found.filter(([name, digest]) => digest === before[name]).map(([name]) => name);
	return old.length === found.length ? [] : old;
};

describe(`a binding that is ended in the middle (seed ${SEED})`, () => {
	it.each([
		["at any moment", "SIGKILL"],
		["while it writes", "SIGKILL"],
		["while it writes", "SIGTERM"],
		["while it writes", "SIGINT"],
	] as const)("%s, by %s", async (when, signal) => {
		const figures = new Figures(`ended ${when} by ${signal}`);
		await forMinutes(MINUTES / 8, async () => {
			const folder = laidOut();
			const child = bind("after", folder);
			const end = ended(child);
			const kill = (): void => void child.kill(signal);
			if (when === "at any moment") setTimeout(kill, random() * duration * 1.1);
			else {
				let changes = 1 + Math.floor(random() * 30);
				const watcher = watch(folder, () => {
					changes -= 1;
					if (changes === 0) kill();
				});
				child.on("close", () => watcher.close());
			}
			const { code } = await end;
			figures.tried += 1;
			figures.see(code === null ? "ended by the signal" : "was done before");
			figures.failed.push(...broken(folder, signal === "SIGKILL"));
			const parts = partsIn(folder);
			if (parts.length > 0) figures.see("left parts");
			if (signal !== "SIGKILL" && parts.length > 0) figures.failed.push(`${signal} left ${parts.join(", ")}`);
			const old = mixed(folder);
			if (old.length > 0) figures.see("left papers of both revisions");
			if (parts.length > 0 || old.length > 0) {
				// The next run is of another kind of paper, so that it cannot heal by writing over.
				const next = spawn(process.execPath, [
					MAIN,
					"bind",
					definition("after"),
					"--for",
					"answers",
					"--out",
					folder,
				]);
				const { out } = await ended(next);
				for (const name of old) if (!out.includes(name)) figures.failed.push(`not told of: ${name}`);
				if (partsIn(folder).length > 0) figures.failed.push(`not cleared: ${partsIn(folder).join(", ")}`);
			}
			rmSync(folder, { recursive: true });
		});
		figures.tell();
		expect(figures.failed).toEqual([]);
	});

	it("by a limit on the size of files", async () => {
		const figures = new Figures("ended by a limit on the size of files");
		await forMinutes(MINUTES / 16, async () => {
			const folder = laidOut();
			const blocks = 1 + Math.floor(random() * 70);
			const line = `ulimit -f ${blocks}; exec "$@"`;
			const child = spawn("bash", ["--norc", "-c", line, "bash", process.execPath, ...args("after", folder)]);
			const { code, out } = await ended(child);
			figures.tried += 1;
			figures.see(code === 73 ? "told of" : code === 0 ? "large enough" : `ended with ${code}`);
			figures.failed.push(...broken(folder, false));
			if (out.includes("    at ")) figures.failed.push(out);
			rmSync(folder, { recursive: true });
		});
		figures.tell();
		expect(figures.failed).toEqual([]);
	});

	it("by nobody: two at once into one folder", async () => {
		const figures = new Figures("two at once into one folder");
		await forMinutes(MINUTES / 16, async () => {
			const folder = laidOut();
			const both = await Promise.all([ended(bind("after", folder)), ended(bind("before", folder))]);
			figures.tried += 1;
			for (const { code, out } of both) if (code !== 0) figures.failed.push(`${code}: ${out}`);
			figures.failed.push(...broken(folder, false), ...partsIn(folder));
			rmSync(folder, { recursive: true });
		});
		figures.tell();
		expect(figures.failed).toEqual([]);
	});
});
