import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { understandText } from "../starters.ts";
import { Figures, forMinutes, MINUTES, randomOf, SEED } from "./figures.ts";
import { MAIN } from "./revisions.ts";
import { soundWell } from "./sound-well.ts";

const STARTERS = ["horizontal", "vertical-metric"].map((name) =>
	readFileSync(new URL(`../../seeds/starters/${name}.yaml`, import.meta.url), "utf8"),
);
const BATCH = 6;

/** What a page's setting may not print, whatever the well. */
const SLIPS = /NaN|Infinity|undefined|\[object /;

it(`wells drawn at random are bound whole, in both languages, and audited (seed ${SEED})`, async () => {
	const figures = new Figures("whole wells drawn at random, bound with audit");
	const random = randomOf(SEED + 5);
	await forMinutes(MINUTES / 6, (n) => {
		const folder = mkdtempSync(join(tmpdir(), "casebound-wells-"));
		const files: string[] = [];
		for (let i = 0; i < BATCH; i += 1) {
			const base = STARTERS[(n + i) % STARTERS.length] ?? "";
			const text = soundWell(base, random).replace(
				/"name": "(?:Sorrel Bench Unit 3-16H|Osterby 11-6)/,
				`$& ${n}-${i}`,
			);
			if (understandText(text, "well.yaml").findings === undefined) {
				figures.see("refused");
				continue;
			}
			const file = join(folder, `well-${n}-${i}.yaml`);
			writeFileSync(file, text);
			files.push(file);
		}
		if (files.length > 0) {
			const out = join(folder, "papers");
			const language = n % 2 === 0 ? "en" : "es";
			const papers = "regulator,landowner,handout,answers,crew";
			const made = ["--with", "html,csv,json,calendar", "--lang", language, "--out", out];
			const { status, stderr } = spawnSync(
				process.execPath,
				[MAIN, "bind", ...files, "--for", papers, ...made],
				{
					encoding: "utf8",
				},
			);
			figures.tried += files.length;
			const html = readdirSync(out).filter((name) => name.endsWith(".html"));
			figures.see(`bound in ${language}`);
			if (status !== 0) {
				const kept = join(process.cwd(), "out", "torture-failed", `${SEED}-${n}`);
				cpSync(folder, kept, { recursive: true, filter: (name) => !name.startsWith(out) });
				figures.failed.push(
					`seed ${SEED}, batch ${n}, ${language}: ended with ${status}: ${stderr.slice(-2000)}`,
				);
			}
			for (const name of html) {
				const slip = SLIPS.exec(readFileSync(join(out, name), "utf8").replace(/<[^>]*>/g, " "));
				if (slip !== null) figures.failed.push(`seed ${SEED}, batch ${n}: ${name} prints ${slip[0]}`);
			}
		}
		rmSync(folder, { recursive: true });
	});
	figures.tell();
	expect(figures.failed).toEqual([]);
});
