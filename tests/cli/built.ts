import { type SpawnSyncReturns, spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { createSyncFn } from "synckit";

/** The built command's file. `npm test` builds first. */
export const MAIN = fileURLToPath(new URL("../../dist/main.js", import.meta.url));
export const starter = (name: string): string =>
	fileURLToPath(new URL(`../../seeds/starters/${name}.yaml`, import.meta.url));

type Environment = Readonly<Record<string, string>>;

const environment = (own: Environment = {}): Environment => ({ PATH: process.env["PATH"] ?? "", ...own });

/** What a run of the command came to. */
export interface Ran {
	readonly status: number | null;
	readonly stdout: string;
	readonly stderr: string;
}

const relayed = createSyncFn(new URL("../run/command-relay.mjs", import.meta.url), { timeout: 170_000 }) as (
	request: Environment | object,
) => Ran;

/**
 * The built command, run in a folder by a process that is kept from run to run.
 *
 * @throws Error if that process ends
 */
export const casebound = (folder: string, args: readonly string[], env?: Environment): Ran =>
	relayed({ args, folder, env: environment(env) });

/** The built command in a process of its own, as a shell would start it. */
export const started = (
	folder: string,
	args: readonly string[],
	options: {
		readonly input?: string | Uint8Array;
		readonly timeout?: number;
		readonly env?: Environment;
	} = {},
): SpawnSyncReturns<string> =>
	spawnSync(process.execPath, [MAIN, ...args], {
		encoding: "utf8",
		cwd: folder,
		maxBuffer: 1 << 28,
		...options,
		env: environment(options.env),
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
