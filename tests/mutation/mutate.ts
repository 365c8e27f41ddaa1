import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { type Fault, faultsIn } from "./faults.ts";

/*
 * Puts small faults into `calc` and `rules`, one at a time, and sees whether a test fails. A fault that no test notices is
 * one that could be made tomorrow. The sources themselves are not touched: the fault is put in as vitest reads the file.
 */

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const CONFIG = ".config/vitest.mutation.config.ts";
/** What the last run found. */
const REPORT = join(ROOT, "out", "mutation-run.json");
/** Longer than any of these runs takes; a fault that makes a loop endless is noticed too [ms]. */
const PATIENCE = 900_000;

interface Placed extends Fault {
	readonly file: string;
}

/** Tests of whole wells too: results and verdicts of the starters among them. */
const WHOLE_WELLS = ["tests/calc/", "tests/rules/", "tests/golden.test.ts"];

/** What most faults that reach a paper change. */
const RESULTS = ["tests/golden.test.ts"];

/** Tests beside the code, then the starters' results, then all those of whole wells: the quickest first. */
const testsOf = (file: string): readonly (readonly string[])[] => {
	const [, room = "", topic = ""] = file.split("/");
	const near = room === "calc" && !topic.endsWith(".ts") ? `tests/calc/${topic}/` : `tests/${room}/`;
	return [[near, "tests/published.test.ts"], RESULTS, WHOLE_WELLS];
};

/** @throws Error if vitest itself does not run: that is no test that noticed */
const vitest = (tests: readonly string[], fault?: Placed): boolean => {
	mkdirSync(join(ROOT, "out"), { recursive: true });
	rmSync(REPORT, { force: true });
	const { status } = spawnSync("npx", ["vitest", "run", "--config", CONFIG, ...tests], {
		cwd: ROOT,
		encoding: "utf8",
		timeout: PATIENCE,
		env: { ...process.env, ...(fault === undefined ? {} : { FAULT: JSON.stringify(fault) }) },
	});
	// No status at all is a loop without end, which somebody would notice.
	if (status !== null && !existsSync(REPORT)) throw new Error(`vitest did not run ${tests.join(" ")}`);
	return status === 0;
};

interface Report {
	readonly testResults: readonly { readonly name: string; readonly status: string }[];
}

/** Files of tests that fail without any fault: they can notice nothing, and are left out. */
const failingAnyway = (): readonly string[] => {
	if (vitest([...WHOLE_WELLS, "tests/published.test.ts"])) return [];
	const { testResults } = JSON.parse(readFileSync(REPORT, "utf8")) as Report;
	return testResults.filter(({ status }) => status !== "passed").map(({ name }) => relative(ROOT, name));
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
 * Prints a row for each fault of the sample, and writes the table into `out/mutation.md`. Files of tests that fail without
 * any fault are left out, and named.
 *
 * @param asked  how many faults (40), the seed of the sample (1), a part of a path that the files must have, and `near` to
 *               stop at the tests beside the code
 */
export const mutate = ([count = "40", seed = "1", part = "", how = "whole"]: readonly string[]): void => {
	const say = (line: string) => process.stdout.write(`${line}\n`);
	const all = everyFault().filter(({ file }) => file.includes(part));
	const sample = drawn(all, Number(count), seed);
	const near = how === "near";
	const left = near ? [] : failingAnyway();
	for (const file of left) say(`left out, because it fails without a fault: ${file}`);
	const options = ["--bail", "1", ...left.flatMap((file) => ["--exclude", file])];
	const lines: string[] = [];
	const score = { near: 0, whole: 0 };
	for (const fault of sample) {
		const stages = testsOf(fault.file).slice(0, near ? 1 : undefined);
		const noticed = stages.findIndex((tests) => !vitest([...tests, ...options], fault));
		score.near += noticed === 0 ? 1 : 0;
		score.whole += noticed >= 0 ? 1 : 0;
		const by =
			["tests beside it", "the starters' results", "whole wells"][noticed] ??
			(near ? "not beside it" : "**none**");
		lines.push(
			`| \`${fault.file}:${fault.line}\` | \`${fault.what.replaceAll(/\s+/gu, " ").replaceAll("|", "\\|")}\` | ${by} |`,
		);
		say(lines.at(-1) ?? "");
	}
	const share = (n: number): string => `${n} of ${sample.length}, ${Math.round((100 * n) / sample.length)} %`;
	const head = [
		`${sample.length} of ${all.length} faults, seed ${seed}: noticed by the tests beside the code ${share(score.near)}${near ? "" : `; with whole wells ${share(score.whole)}`}`,
		"",
		"| place | fault | noticed by |",
		"|---|---|---|",
	];
	mkdirSync(join(ROOT, "out"), { recursive: true });
	writeFileSync(join(ROOT, "out", "mutation.md"), `${[...head, ...lines].join("\n")}\n`);
	say(head[0] ?? "");
};
