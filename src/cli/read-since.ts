import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { basename, dirname, relative, resolve } from "node:path";
import { LARGEST_TABLE } from "../source/decode-text.ts";
import { type FileAccess, filesBeside } from "../source/locate-files.ts";
import { type Surroundings, type Understanding, understand } from "../understand.ts";
import { EXIT } from "./exit-codes.ts";
import { FileFault } from "./file-fault.ts";
import { nameOf, STANDARD_INPUT } from "./read-bytes.ts";
import { understandFile } from "./read-well.ts";
import type { ShippedData } from "./shipped.ts";

/** An earlier state of a definition, with the name that it is told under. */
interface Earlier {
	readonly name: string;
	readonly understanding: Understanding;
}

/**
 * The state of a definition to compare with: another file, or the same file as a git revision has it, with the files
 * beside it as that revision has them. What is there as a file is taken for one.
 *
 * @param since  a file, or a revision such as `HEAD~1` or a tag
 * @throws FileFault
 */
export const understandSince = (
	file: string,
	since: string,
	ownRules: Surroundings["ownRules"],
	shipped: ShippedData,
): Earlier => {
	if (since === STANDARD_INPUT || existsSync(since))
		return { name: nameOf(since), understanding: understandFile(since, ownRules, shipped) };
	const { catalog, version } = shipped;
	const folder = dirname(resolve(file));
	const commit = commitOf(since, file, folder);
	const stored = (path: string): Uint8Array => {
		const place = relative(folder, path).replaceAll("\\", "/");
		const found = git(folder, ["cat-file", "blob", `${commit}:./${place}`]);
		if (found === undefined) throw new Error("the revision does not have it");
		return found;
	};
	const access: FileAccess = {
		realPath: (path) => {
			const real = resolve(path);
			if (real === folder) return real;
			const place = relative(folder, real).replaceAll("\\", "/");
			return git(folder, ["cat-file", "-e", `${commit}:./${place}`]) === undefined ? undefined : real;
		},
		readBytes: stored,
	};
	const name = `${file} at ${since}`;
	let bytes: Uint8Array;
	try {
		bytes = stored(resolve(folder, basename(file)));
	} catch {
		throw new FileFault(`cannot read ${name}: the revision has no such file`, EXIT.cannotRead);
	}
	const readFile = filesBeside(file, access);
	return { name, understanding: understand({ name, bytes }, { catalog, version, readFile, ownRules }) };
};

/** The full id of a revision, so that nothing that follows can be taken for an option or a range. */
const commitOf = (since: string, file: string, folder: string): string => {
	const refuse = (why: string): never => {
		throw new FileFault(`cannot read ${since}: ${why}`, EXIT.cannotRead);
	};
	if (file === STANDARD_INPUT)
		return refuse("there is no such file, and standard input has no revisions; name two files");
	const found = git(folder, ["rev-parse", "--verify", "--quiet", "--end-of-options", `${since}^{commit}`]);
	const commit = found === undefined ? "" : Buffer.from(found).toString("utf8").trim();
	return /^[0-9a-f]{40,64}$/.test(commit)
		? commit
		: refuse(`there is no such file, and git knows no revision of that name in ${folder}`);
};

/** What git says; nothing where it fails or is not installed. */
const git = (folder: string, args: readonly string[]): Uint8Array | undefined => {
	const { status, stdout } = spawnSync("git", ["-C", folder, ...args], {
		maxBuffer: LARGEST_TABLE + 1,
		stdio: ["ignore", "pipe", "ignore"],
	});
	return status === 0 ? stdout : undefined;
};
