import { spawn } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { watch } from "../../src/cli/watch.ts";
import { MAIN, starter } from "./built.ts";

let folder = "";
beforeAll(() => {
	folder = mkdtempSync(join(tmpdir(), "casebound-watch-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const until = async (holds: () => boolean, most: number): Promise<number> => {
	const begun = performance.now();
	while (!holds()) {
		if (performance.now() - begun > most) throw new Error(`not within ${most} ms`);
		await new Promise((resolve) => setTimeout(resolve, 20));
	}
	return performance.now() - begun;
};

describe("watching definitions", () => {
	it("works again on what changed, and on nothing else, within two seconds", async () => {
		const [a, b, beside] = ["a.yaml", "b.yaml", "survey.csv"].map((name) => join(folder, name)) as [
			string,
			string,
			string,
		];
		for (const file of [a, b, beside]) writeFileSync(file, "1");
		const definitions = [a];
		const runs: (readonly string[])[] = [];
		let goesOn = true;
		const ended = watch({
			definitions: () => definitions,
			run: async (due) => {
				runs.push([...due]);
				return new Map(due.map((file) => [file, file === a ? [beside] : []]));
			},
			goesOn: () => goesOn,
		});
		await until(() => runs.length === 1, 1000);
		writeFileSync(a, "22");
		expect(await until(() => runs.length === 2, 2000)).toBeLessThan(2000);
		writeFileSync(beside, "22");
		await until(() => runs.length === 3, 2000);
		definitions.push(b);
		await until(() => runs.length === 4, 2000);
		rmSync(a);
		await until(() => runs.length === 5, 2000);
		writeFileSync(a, "333");
		await until(() => runs.length === 6, 2000);
		await new Promise((resolve) => setTimeout(resolve, 1000));
		goesOn = false;
		await ended;
		expect(runs).toEqual([[a], [a], [a], [b], [a], [a]]);
	});

	it("the command goes on over faults, and binds what was mended", async () => {
		const text = readFileSync(starter("vertical-metric"), "utf8");
		const well = join(folder, "well.yaml");
		writeFileSync(well, text);
		const child = spawn(
			process.execPath,
			[MAIN, "bind", "well.yaml", "--for", "handout", "--out", "papers", "--watch"],
			{
				cwd: folder,
				stdio: ["ignore", "pipe", "pipe"],
			},
		);
		let said = "";
		let out = "";
		child.stderr.on("data", (data) => (said += data));
		child.stdout.on("data", (data) => (out += data));
		const times = (word: string) => said.split(word).length - 1;
		try {
			await until(() => times("watching") === 1, 60_000);
			const made = out.length;
			expect(out).toContain("handout.pdf");
			writeFileSync(well, text.replace("definition: 1", "definition: 1\nwell: ["));
			await until(() => times("watching") === 2, 60_000);
			expect(said).toMatch(/well\.yaml:\d+:\d+ {2}error/u);
			expect(out.length).toBe(made);
			writeFileSync(well, text.replace(/^ {2}name: .*$/mu, "  name: Renamed 1V"));
			await until(() => times("watching") === 3, 60_000);
			expect(existsSync(join(folder, "papers", "renamed-1v.handout.pdf"))).toBe(true);
			// Nobody watches a pipe: no line is written anew, and no screen is emptied.
			for (const sign of ["\r", "\u001b"]) expect(out + said).not.toContain(sign);
			expect(child.exitCode).toBe(null);
		} finally {
			child.kill("SIGTERM");
		}
	}, 240_000);
});
