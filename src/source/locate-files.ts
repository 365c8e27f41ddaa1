import type { Code } from "../diagnostics/codes.ts";

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
	| { readonly refused: string; readonly code: Extract<Code, `file/${string}`> };

/** Why a name cannot be a file beside or below the definition, judged by the name alone. */
export const nameFault = (name: string): string | undefined => {
	if (name.trim() === "") return "the name is empty";
	// biome-ignore lint/suspicious/noControlCharactersInRegex: no file is meant to have them in its name
	if (/[\u0000-\u001f\u007f]/.test(name)) return "the name contains a control character";
	if (/^[a-z][a-z0-9+.-]+:\/\//i.test(name)) return "an address on the network is never fetched";
	if (/^(?:[/\\~]|[a-z]:)/i.test(name)) return "the name starts at the root of a disk or at a home folder";
	if (name.includes("\\")) return "folders are separated by `/`, not by `\\`";
	const steps = name.split("/");
	if (steps.includes("..")) return "the name leads up out of the definition's folder";
	if (steps.includes("") || steps.includes(".")) return "the name has an empty step in it";
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
			return { refused: "there is no such file", code: "file/not-found" };
		// Letter case may differ where the disk does not tell it apart.
		if (slashed(real).toLowerCase() !== `${slashed(folder)}/${name}`.toLowerCase())
			return { refused: "it is a link, or lies behind one", code: "file/link" };
		try {
			return { file, bytes: readBytes(real) };
		} catch (cause) {
			const reason = cause instanceof Error ? cause.message : String(cause);
			return { refused: `it cannot be read: ${reason}`, code: "file/not-found" };
		}
	};
