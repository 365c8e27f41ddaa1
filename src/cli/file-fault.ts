import type { ExitCode } from "./exit-codes.ts";

/** A file that could not be read or written; says which and why, in the system's words. */
export class FileFault extends Error {
	readonly exit: ExitCode;
	constructor(message: string, exit: ExitCode) {
		super(message);
		this.exit = exit;
	}
}

const REASONS: Readonly<Record<string, string>> = {
	ENOENT: "there is no such file",
	EACCES: "permission is denied",
	EPERM: "permission is denied",
	EISDIR: "it is a folder",
	ENOTDIR: "a part of the path is not a folder",
	EEXIST: "it exists already",
	ENOSPC: "the disk is full",
	EDQUOT: "the quota of the disk is used up",
	EROFS: "the disk cannot be written to",
	ENAMETOOLONG: "the name is too long for the disk",
	ELOOP: "its links lead in a circle",
	ENXIO: "it is a device or a socket",
};

export const reasonOf = (cause: unknown): string => {
	const code = cause instanceof Error && "code" in cause ? String(cause.code) : "";
	return REASONS[code] ?? (cause instanceof Error ? cause.message : String(cause));
};
