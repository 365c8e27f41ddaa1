import { createHash, randomBytes } from "node:crypto";
import { lstatSync, readdirSync, rmSync } from "node:fs";
import { mkdir, open } from "node:fs/promises";
import { hostname } from "node:os";
import { basename, dirname, join } from "node:path";
import process from "node:process";

/*
 * What is being written lies beside its place, under a name that begins with a dot and ends with `.part`, until it is
 * whole. The name says which process of which machine writes it, so that another can tell what was left lying.
 */

const machine = createHash("sha256").update(hostname()).digest("hex").slice(0, 6);
const PART = /^\..+\.([0-9a-f]{6})-(\d+)-[0-9a-f]{8}\.part$/u;
/** Of names as they were written before they told of the process. */
const OLD_PART = /^\..+\.[0-9a-f]{8}\.part$/u;

/** A name beside `file` to write it under. */
export const partOf = (file: string): string =>
	join(dirname(file), `.${basename(file)}.${machine}-${process.pid}-${randomBytes(4).toString("hex")}.part`);

const AN_HOUR = 3_600_000;

/** Takes away what processes that are no longer there have left lying in a folder. */
export const clearParts = (folder: string, now: number = Date.now()): void => {
	for (const name of namesIn(folder)) {
		const [, by, id] = PART.exec(name) ?? [];
		if (by === undefined && !OLD_PART.test(name)) continue;
		const left = by === machine ? !isAlive(Number(id)) : now - timeOf(join(folder, name)) > AN_HOUR;
		if (left) attempted(() => rmSync(join(folder, name), { recursive: true, force: true }));
	}
};

/** What may not be removed now is in nobody's way: it lies there hidden, and the next run tries again. */
const attempted = (remove: () => void): void => {
	try {
		remove();
	} catch {
		return;
	}
};

const namesIn = (folder: string): readonly string[] => {
	try {
		return readdirSync(folder);
	} catch {
		return [];
	}
};

const isAlive = (id: number): boolean => {
	try {
		process.kill(id, 0);
		return true;
	} catch (cause) {
		// It is there, and belongs to somebody else.
		return cause instanceof Error && "code" in cause && cause.code === "EPERM";
	}
};

const timeOf = (file: string): number => {
	try {
		return lstatSync(file).mtimeMs;
	} catch {
		return Number.POSITIVE_INFINITY;
	}
};

/** Writes a new file to the disk, whole. */
export const writeToDisk = async (file: string, content: Uint8Array | string): Promise<void> => {
	const handle = await open(file, "wx");
	try {
		await handle.writeFile(content);
		await handle.sync();
	} finally {
		await handle.close();
	}
};

/** Writes a new folder of files to the disk, whole. */
export const writeFolderToDisk = async (
	folder: string,
	files: readonly { readonly name: string; readonly content: Uint8Array | string }[],
): Promise<void> => {
	await mkdir(folder);
	for (const { name, content } of files) await writeToDisk(join(folder, name), content);
};
