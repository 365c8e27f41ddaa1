import { spawn } from "node:child_process";
import { rmSync, watch } from "node:fs";
import { describe, expect, it } from "vitest";
import { Figures, forMinutes, MINUTES, randomOf, SEED } from "./figures.ts";
import {
	args,
	bind,
	broken,
	definition,
	duration,
	ended,
	laidOut,
	MAIN,
	mixed,
	partsIn,
	withTwoRevisions,
} from "./revisions.ts";

const random = randomOf(SEED);
withTwoRevisions();

describe(`a binding that is ended in the middle (seed ${SEED})`, () => {
	it.each([
		["at any moment", "SIGKILL"],
		["while it writes", "SIGKILL"],
		["while it writes", "SIGTERM"],
		["while it writes", "SIGINT"],
	] as const)("%s, by %s", async (when, signal) => {
		const figures = new Figures(`ended ${when} by ${signal}`);
		await forMinutes(MINUTES / 8, async () => {
			const folder = laidOut();
			const child = bind("after", folder);
			const end = ended(child);
			const kill = (): void => void child.kill(signal);
			if (when === "at any moment") setTimeout(kill, random() * duration() * 1.1);
			else {
				let changes = 1 + Math.floor(random() * 30);
				const watcher = watch(folder, () => {
					changes -= 1;
					if (changes === 0) kill();
				});
				child.on("close", () => watcher.close());
			}
			const { code } = await end;
			figures.tried += 1;
			figures.see(code === null ? "ended by the signal" : "was done before");
			figures.failed.push(...broken(folder, signal === "SIGKILL"));
			const parts = partsIn(folder);
			if (parts.length > 0) figures.see("left parts");
			if (signal !== "SIGKILL" && parts.length > 0) figures.failed.push(`${signal} left ${parts.join(", ")}`);
			const old = mixed(folder);
			if (old.length > 0) figures.see("left papers of both revisions");
			if (parts.length > 0 || old.length > 0) {
				// The next run is of another kind of paper, so that it cannot heal by writing over.
				const next = spawn(process.execPath, [
					MAIN,
					"bind",
					definition("after"),
					"--for",
					"answers",
					"--out",
					folder,
				]);
				const { out } = await ended(next);
				for (const name of old) if (!out.includes(name)) figures.failed.push(`not told of: ${name}`);
				if (partsIn(folder).length > 0) figures.failed.push(`not cleared: ${partsIn(folder).join(", ")}`);
			}
			rmSync(folder, { recursive: true });
		});
		figures.tell();
		expect(figures.failed).toEqual([]);
	});

	it("by a limit on the size of files", async () => {
		const figures = new Figures("ended by a limit on the size of files");
		await forMinutes(MINUTES / 16, async () => {
			const folder = laidOut();
			const blocks = 1 + Math.floor(random() * 70);
			const line = `ulimit -f ${blocks}; exec "$@"`;
			const child = spawn("bash", ["--norc", "-c", line, "bash", process.execPath, ...args("after", folder)]);
			const { code, out } = await ended(child);
			figures.tried += 1;
			figures.see(code === 73 ? "told of" : code === 0 ? "large enough" : `ended with ${code}`);
			figures.failed.push(...broken(folder, false));
			if (out.includes("    at ")) figures.failed.push(out);
			rmSync(folder, { recursive: true });
		});
		figures.tell();
		expect(figures.failed).toEqual([]);
	});

	it("by nobody: two at once into one folder", async () => {
		const figures = new Figures("two at once into one folder");
		await forMinutes(MINUTES / 16, async () => {
			const folder = laidOut();
			const both = await Promise.all([ended(bind("after", folder)), ended(bind("before", folder))]);
			figures.tried += 1;
			for (const { code, out } of both) if (code !== 0) figures.failed.push(`${code}: ${out}`);
			figures.failed.push(...broken(folder, false), ...partsIn(folder));
			rmSync(folder, { recursive: true });
		});
		figures.tell();
		expect(figures.failed).toEqual([]);
	});
});
