import { randomBytes } from "node:crypto";
import {
	closeSync,
	fsyncSync,
	lstatSync,
	mkdirSync,
	openSync,
	readFileSync,
	renameSync,
	rmSync,
	writeSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import { EXIT, type ExitCode } from "./exit-codes.ts";

/** A file that could not be read or written; says which and why, in the system's words. */
export class FileFault extends Error {
	readonly exit: ExitCode;
	constructor(message: string, exit: ExitCode) {
		super(message);
		this.exit = exit;
	}
}

const reasonOf = (cause: unknown): string => {
	const code = cause instanceof Error && "code" in cause ? String(cause.code) : "";
	const words: Record<string, string> = {
		ENOENT: "there is no such file",
		EACCES: "permission is denied",
		EPERM: "permission is denied",
		EISDIR: "it is a folder",
		ENOTDIR: "a part of the path is not a folder",
		EEXIST: "it exists already",
		ENOSPC: "the disk is full",
		EROFS: "the disk cannot be written to",
	};
	return words[code] ?? (cause instanceof Error ? cause.message : String(cause));
};

/** @throws FileFault */
export const readBytes = (file: string): Uint8Array => {
	try {
		return readFileSync(file);
	} catch (cause) {
		throw new FileFault(`cannot read ${file}: ${reasonOf(cause)}`, EXIT.cannotRead);
	}
};

/**
 * Writes a file whole or not at all: into a temporary file beside it, then renamed over it.
 *
 * @throws FileFault
 */
export const writeWhole = (
	file: string,
	content: Uint8Array | string,
	options: { readonly mayReplace: boolean },
): void => {
	const temporary = join(dirname(file), `.${basename(file)}.${randomBytes(4).toString("hex")}.part`);
	try {
		mkdirSync(dirname(file), { recursive: true });
		if (!options.mayReplace && exists(file)) throw Object.assign(new Error("exists"), { code: "EEXIST" });
		const handle = openSync(temporary, "wx");
		try {
			writeAll(handle, typeof content === "string" ? Buffer.from(content) : content);
			fsyncSync(handle);
		} finally {
			closeSync(handle);
		}
		renameSync(temporary, file);
	} catch (cause) {
		if (exists(temporary)) rmSync(temporary, { force: true });
		throw new FileFault(`cannot write ${file}: ${reasonOf(cause)}`, EXIT.cannotWrite);
	}
};

const exists = (file: string): boolean => {
	try {
		lstatSync(file);
		return true;
	} catch {
		return false;
	}
};

/** One call may write less than all of it. */
const writeAll = (handle: number, content: Uint8Array): void => {
	for (let written = 0; written < content.length; ) written += writeSync(handle, content, written);
};
