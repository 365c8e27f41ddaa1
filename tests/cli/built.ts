import { type SpawnSyncReturns, spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

/** The built command's file. `npm test` builds first. */
export const MAIN = fileURLToPath(new URL("../../dist/main.js", import.meta.url));
export const starter = (name: string): string =>
	fileURLToPath(new URL(`../../seeds/starters/${name}.yaml`, import.meta.url));

/** The built command as a shell would run it, in a folder. */
export const casebound = (
	folder: string,
	args: readonly string[],
	options: { readonly input?: string | Uint8Array; readonly timeout?: number } = {},
): SpawnSyncReturns<string> =>
	spawnSync(process.execPath, [MAIN, ...args], {
		encoding: "utf8",
		cwd: folder,
		env: { PATH: process.env["PATH"] ?? "" },
		maxBuffer: 1 << 28,
		...options,
	});

/** A line of shell, with `$TOOL` as the built command. */
export const shell = (folder: string, line: string): SpawnSyncReturns<string> =>
	spawnSync("bash", ["--norc", "-c", line], {
		encoding: "utf8",
		cwd: folder,
		env: { PATH: process.env["PATH"] ?? "", TOOL: `${process.execPath} ${MAIN}` },
		maxBuffer: 1 << 28,
		timeout: 120_000,
	});
