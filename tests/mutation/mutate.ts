import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Fault, faultsIn } from "./faults.ts";

/*
 * Puts small faults into `calc` and `rules`, one at a time, and sees whether a test fails. A fault that no test notices is
 * one that could be made tomorrow. The sources themselves are not touched: the fault is put in as vitest reads the file.
 */

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const CONFIG = ".config/vitest.mutation.config.ts";
/** Longer than any of these runs takes; a fault that makes a loop endless is noticed too [ms]. */
const PATIENCE = 900_000;

interface Placed extends Fault {
	readonly file: string;
}

/** Tests beside the code, then those of whole wells: results and verdicts of the starters among them. */
const testsOf = (file: string): readonly (readonly string[])[] => {
	const [, room = "", topic = ""] = file.split("/");
	const near = room === "calc" && !topic.endsWith(".ts") ? `tests/calc/${topic}/` : `tests/${room}/`;
	return [
		[near, "tests/published.test.ts"],
		["tests/calc/", "tests/rules/", "tests/golden.test.ts"],
	];
};

const passes = (tests: readonly string[], fault?: Placed): boolean => {
	const { status } = spawnSync("npx", ["vitest", "run", "--config", CONFIG, "--bail", "1", ...tests], {
		cwd: ROOT,
		encoding: "utf8",
		timeout: PATIENCE,
		env: { ...process.env, ...(fault === undefined ? {} : { FAULT: JSON.stringify(fault) }) },
	});
	return status === 0;
};

const everyFault = (): readonly Placed[] =>
	["calc", "rules"].flatMap((room) =>
		readdirSync(join(ROOT, "src", room), { recursive: true, encoding: "utf8" })
			.filter((name) => name.endsWith(".ts"))
			.sort()
			.flatMap((name) => {
				const file = join("src", room, name);
				return faultsIn(readFileSync(join(ROOT, file), "utf8")).map((fault) => ({ ...fault, file }));
			}),
	);

const drawn = (all: readonly Placed[], count: number, seed: string): readonly Placed[] =>
	all
		.map((fault, i) => ({ fault, lot: createHash("sha256").update(`${seed} ${i}`).digest("hex") }))
		.sort((a, b) => (a.lot < b.lot ? -1 : 1))
		.slice(0, count)
		.map(({ fault }) => fault);

/**
 * @param asked  how many faults (40), the seed of the sample (1), and a part of a path that the files must have
 * @throws Error if the tests fail without any fault
 */
export const mutate = ([count = "40", seed = "1", part = ""]: readonly string[]): void => {
	const say = (line: string) => process.stdout.write(`${line}\n`);
	const all = everyFault().filter(({ file }) => file.includes(part));
	const sample = drawn(all, Number(count), seed);
	const sets = new Set(sample.flatMap(({ file }) => testsOf(file).map((tests) => tests.join(" "))));
	for (const set of sets) if (!passes(set.split(" "))) throw new Error(`without a fault, ${set} fails`);
	const lines: string[] = [];
	const score = { near: 0, whole: 0 };
	for (const fault of sample) {
		const stages = testsOf(fault.file);
		const noticed = stages.findIndex((tests) => !passes(tests, fault));
		score.near += noticed === 0 ? 1 : 0;
		score.whole += noticed >= 0 ? 1 : 0;
		const by = ["tests beside it", "whole wells"][noticed] ?? "**none**";
		lines.push(`| \`${fault.file}:${fault.line}\` | \`${fault.what.replaceAll(/\s+/gu, " ")}\` | ${by} |`);
		say(lines.at(-1) ?? "");
	}
	const share = (n: number): string => `${n} of ${sample.length}, ${Math.round((100 * n) / sample.length)} %`;
	const head = [
		`${sample.length} of ${all.length} faults, seed ${seed}: noticed by the tests beside the code ${share(score.near)}; with whole wells ${share(score.whole)}`,
		"",
		"| place | fault | noticed by |",
		"|---|---|---|",
	];
	mkdirSync(join(ROOT, "out"), { recursive: true });
	writeFileSync(join(ROOT, "out", "mutation.md"), `${[...head, ...lines].join("\n")}\n`);
	say(head[0] ?? "");
};
