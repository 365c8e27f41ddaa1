import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("../..", import.meta.url));
export const outFolder = join(root, "out", "judges");

/** Debian's own Python, which its packages belong to. */
export const PYTHON = "/usr/bin/python3";

/** Runs a program and gives what it printed; a program that is not there gives status 127. */
export const run = (program, args, options = {}) => {
	const { status, stdout, stderr, error } = spawnSync(program, args, {
		encoding: "utf8",
		maxBuffer: 1 << 28,
		cwd: root,
		...options,
	});
	if (error?.code === "ENOENT") return { status: 127, stdout: "", stderr: `${program} is not there` };
	if (error !== undefined) throw error;
	return { status: status ?? 1, stdout, stderr };
};

/** The built tool itself; a bind that fails stops the judging, since nothing would be judged. */
export const casebound = (args, options = {}) => {
	const done = run(process.execPath, [join(root, "dist/main.js"), ...args], options);
	if (done.status !== 0)
		throw new Error(`casebound ${args.join(" ")} ended with ${done.status}\n${done.stderr}`);
	return done;
};

export const isThere = (program) => run("which", [program]).status === 0;

/** First line that a program prints of its version. */
export const versionOf = (program, flag = "--version") => {
	const { stdout, stderr } = run(program, [flag]);
	return /\d+(\.\d+)+/.exec(stdout + stderr)?.[0] ?? "version not told";
};

/** Version of a package that is installed for the judges alone. */
export const versionInstalled = (name) =>
	JSON.parse(readFileSync(new URL(`node_modules/${name}/package.json`, import.meta.url), "utf8")).version;
