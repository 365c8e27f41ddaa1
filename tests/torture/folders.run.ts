import { spawn, spawnSync } from "node:child_process";
import { chmodSync, chownSync, cpSync, mkdtempSync, readdirSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { getuid } from "node:process";
import { describe, expect, it } from "vitest";
import { Figures, forMinutes, MINUTES, randomOf, SEED } from "./figures.ts";
import { args, broken, ended, laidOut, partsIn, withTwoRevisions } from "./revisions.ts";

const random = randomOf(SEED + 1);
withTwoRevisions();

const isThere = (program: string): boolean => spawnSync("which", [program]).status === 0;
const isRoot = getuid?.() === 0;

/** Calls of the system by which papers come to lie in a folder; nothing else of the tool makes them. */
const CALLS = ["fsync", "rename", "unlink,unlinkat", "mkdir"];
const REFUSALS = ["EIO", "ENOSPC", "EACCES", "EDQUOT"];

const traced = (
	folder: string,
	inject: string,
): Promise<{ readonly code: number | null; readonly out: string }> => {
	const [call = ""] = inject.split(":");
	const strace = ["-f", "-qq", "-o", "/dev/null", "-e", `trace=${call}`, "-e", `inject=${inject}`];
	return ended(
		spawn("strace", [...strace, process.execPath, ...args("after", folder)], {
			stdio: ["ignore", "pipe", "pipe"],
		}),
	);
};

/** What a folder's files fill in pages of four kilobytes, and a page for the folder itself. */
const kilobytesIn = (folder: string): number =>
	readdirSync(folder, { recursive: true, withFileTypes: true }).reduce(
		(sum, entry) => sum + 4 * Math.ceil(statSync(join(entry.parentPath, entry.name)).size / 4096),
		4,
	);

describe(`a folder that resists (seed ${SEED})`, () => {
	it.runIf(isThere("strace"))("at every call of the system by which it is written", async () => {
		const refused = new Figures("a call of the system refused");
		const killed = new Figures("ended at a call of the system by SIGKILL");
		await forMinutes(MINUTES / 8, async (n) => {
			const call = CALLS[n % CALLS.length] ?? "fsync";
			const when = 1 + Math.floor(random() * 12);
			const how = REFUSALS[Math.floor(random() * REFUSALS.length)] ?? "EIO";
			for (const [figures, fault] of [
				[refused, `error=${how}`],
				[killed, "signal=SIGKILL"],
			] as const) {
				const folder = laidOut();
				const { code, out } = await traced(folder, `${call}:${fault}:when=${when}`);
				const what = `${call} ${when}, ${fault}`;
				figures.tried += 1;
				figures.see(code === 0 ? "done all the same" : `ended with ${code}`);
				figures.failed.push(...broken(folder, true).map((each) => `${what}: ${each}`));
				if (out.includes("    at ")) figures.failed.push(`${what}: ${out}`);
				rmSync(folder, { recursive: true });
			}
		});
		refused.tell();
		killed.tell();
		expect([...refused.failed, ...killed.failed]).toEqual([]);
	});

	it.runIf(isRoot)("of a file system of its own that is too small", async () => {
		const figures = new Figures("a file system too small for the papers");
		await forMinutes(MINUTES / 32, async () => {
			const before = laidOut();
			const folder = mkdtempSync(join(tmpdir(), "casebound-small-"));
			// Between what the first revision fills and two and a half times that: the second one beside it does not always fit.
			const size = `${Math.round(kilobytesIn(before) * (1 + 1.5 * random()))}k`;
			const mounted = spawnSync("mount", ["-t", "tmpfs", "-o", `size=${size}`, "tmpfs", folder]);
			if (mounted.status !== 0) {
				figures.see("no file system could be mounted");
				rmSync(folder, { recursive: true });
				return;
			}
			try {
				cpSync(before, folder, { recursive: true });
				const child = spawn(process.execPath, args("after", folder), { stdio: ["ignore", "pipe", "pipe"] });
				const { code, out } = await ended(child);
				figures.tried += 1;
				figures.see(code === 73 ? "told of" : code === 0 ? "large enough" : `ended with ${code}`);
				figures.failed.push(...broken(folder, false), ...partsIn(folder).map((name) => `left ${name}`));
				if (out.includes("    at ")) figures.failed.push(out);
			} catch (cause) {
				// The papers of the first revision themselves did not fit.
				if (!String(cause).includes("ENOSPC")) throw cause;
				figures.see("too small for the first revision");
			} finally {
				spawnSync("umount", [folder]);
				rmSync(folder, { recursive: true, force: true });
			}
		});
		figures.tell();
		expect(figures.failed).toEqual([]);
	});

	it("that may not be written", async () => {
		const figures = new Figures("a folder that may not be written");
		await forMinutes(MINUTES / 64, async () => {
			const folder = laidOut();
			chmodSync(folder, 0o555);
			// The system lets root write everywhere; somebody else is asked to.
			const nobody = isRoot ? { uid: 65534, gid: 65534 } : {};
			if (isRoot) chownSync(folder, 65534, 65534);
			const child = spawn(process.execPath, args("after", folder), {
				stdio: ["ignore", "pipe", "pipe"],
				...nobody,
			});
			const { code, out } = await ended(child);
			figures.tried += 1;
			figures.see(`ended with ${code}`);
			if (code !== 73 && code !== 66) figures.failed.push(`ended with ${code}: ${out}`);
			figures.failed.push(...broken(folder, false));
			if (out.includes("    at ")) figures.failed.push(out);
			chmodSync(folder, 0o755);
			rmSync(folder, { recursive: true });
		});
		figures.tell();
		expect(figures.failed).toEqual([]);
	});
});
