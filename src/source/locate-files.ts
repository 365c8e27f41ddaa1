import type { Code } from "../diagnostics/codes.ts";
import { message, type Said } from "../messages/message.ts";

/** The only ways in which this folder touches a disk; `cli/` gives them. */
export interface FileAccess {
	/** The path with every link in it followed, or undefined where nothing stands there. */
	readonly realPath: (path: string) => string | undefined;
	/** May throw; the message then says why. */
	readonly readBytes: (path: string) => Uint8Array;
}

export type FileBeside =
	| { readonly file: string; readonly bytes: Uint8Array }
	/** One clause that says why it cannot be had, and the code that explains it. */
	| { readonly refused: Said; readonly code: Extract<Code, `file/${string}`> };

/** Why a name cannot be a file beside or below the definition, judged by the name alone. */
export const nameFault = (name: string): Said | undefined => {
	if (name.trim() === "") return message("file/name.empty");
	// biome-ignore lint/suspicious/noControlCharactersInRegex: no file is meant to have them in its name
	if (/[\u0000-\u001f\u007f]/.test(name)) return message("file/name.control");
	if (/^[a-z][a-z0-9+.-]+:\/\//i.test(name)) return message("file/name.network");
	if (/^(?:[/\\~]|[a-z]:)/i.test(name)) return message("file/name.root");
	if (name.includes("\\")) return message("file/name.backslash");
	const steps = name.split("/");
	if (steps.includes("..")) return message("file/name.upward");
	if (steps.includes("") || steps.includes(".")) return message("file/name.empty-step");
	return undefined;
};

/** The folder a file lies in, as the user named the file; `.` where the name has none. */
const folderOf = (file: string): string => /^(.*)[/\\][^/\\]*$/.exec(file)?.[1] ?? ".";

const slashed = (path: string): string => path.replaceAll("\\", "/").replace(/\/$/, "");

/**
 * Gives files that a definition names: only beside it or below it, and never by way of a link, so that the fingerprint
 * over them holds and no definition reaches into other folders. Never throws.
 */
export const filesBeside =
	(definition: string, { realPath, readBytes }: FileAccess) =>
	(written: string): FileBeside => {
		const name = written.replace(/^(?:\.\/)+/, "");
		const fault = nameFault(name);
		if (fault !== undefined) return { refused: fault, code: "file/not-beside" };
		const given = folderOf(definition);
		const folder = realPath(given === "" ? "/" : given);
		const file = given === "." ? name : `${given}/${name}`;
		const real = realPath(file);
		if (folder === undefined || real === undefined)
			return { refused: message("file/not-found.refused"), code: "file/not-found" };
		// Letter case may differ where the disk does not tell it apart.
		if (slashed(real).toLowerCase() !== `${slashed(folder)}/${name}`.toLowerCase())
			return { refused: message("file/link.refused"), code: "file/link" };
		try {
			return { file, bytes: readBytes(real) };
		} catch (cause) {
			const reason = cause instanceof Error ? cause.message : String(cause);
			return { refused: message("file/not-found.unreadable", { reason }), code: "file/not-found" };
		}
	};
