import { readFileSync } from "node:fs";
import process from "node:process";

/*
 * The built command in a process that stays: each request is one run, in a folder and with an environment of its own.
 * What a process costs to start is paid once; what a run leaves behind for the next one would show here.
 */

const DIST = new URL("../../dist/", import.meta.url);
const [, program] =
	/import\("\.\/(chunks\/program-[^"]+)"\)/u.exec(readFileSync(new URL("main.js", DIST), "utf8")) ?? [];
if (program === undefined) throw new Error("dist/main.js does not name its program");
const { run } = await import(new URL(program, DIST).href);

/** @type {(stream: NodeJS.WriteStream, take: (piece: Uint8Array) => void) => void} */
const caught = (stream, take) => {
	stream.write = (piece, encoding, done) => {
		take(
			typeof piece === "string"
				? Buffer.from(piece, typeof encoding === "string" ? encoding : "utf8")
				: piece,
		);
		const then = typeof encoding === "function" ? encoding : done;
		if (then !== undefined) queueMicrotask(() => then());
		return true;
	};
};

let out = [];
let err = [];
caught(process.stdout, (piece) => out.push(piece));
caught(process.stderr, (piece) => err.push(piece));

process.on("message", async ({ args, folder, env }) => {
	out = [];
	err = [];
	process.chdir(folder);
	for (const name of Object.keys(process.env)) if (!(name in env)) delete process.env[name];
	Object.assign(process.env, env);
	const status = await run([process.execPath, "casebound", ...args]);
	process.send?.({ status, stdout: Buffer.concat(out).toString(), stderr: Buffer.concat(err).toString() });
});
process.send?.("ready");
