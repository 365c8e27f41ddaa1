import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { afterAll, describe, expect, it } from "vitest";
import type { FindingKind } from "../../src/render/pdf/findings.ts";
import { setPaper } from "../../src/render/pdf/set-paper.ts";
import { sampleOf, WHOLE } from "../run/sample.ts";
import { anyCase } from "./cases.ts";
import { type Case, papersOfCase, runCase } from "./run-case.ts";

/*
 * Definitions and tables damaged at random, from a seed. Every test run tries a sample of the first of them, `npm run test:all`
 * tries all of those, and `npm run fuzz` is the long one, which is timed as well. A case that fails is kept in `out/fuzz/`, to
 * be made a fixture.
 */

const LONG = process.env["FUZZ_CASES"] !== undefined;
const CASES = Number(process.env["FUZZ_CASES"] ?? 250);
const SEED = Number(process.env["FUZZ_SEED"] ?? 20260504);
/** How many of the cases a run of every change tries. */
const SHORT = { cases: 60, papers: 3 };
/** Parts, so that a long run shows how far it has come and a failure does not end the rest. */
const PARTS = LONG ? Math.max(1, Math.ceil(CASES / 500)) : 1;
/** The built command is slow to start; one in so many cases goes through it too. */
const COMMAND_SHARE = LONG ? 100 : 50;

const KEPT = fileURLToPath(new URL("../../out/fuzz/", import.meta.url));
const MAIN = fileURLToPath(new URL("../../dist/main.js", import.meta.url));
/** Setting pages is slow as well; one in so many cases, of which most are refused before. */
const SETTING_SHARE = LONG ? 20 : 25;
/** What a page that does not set may be blamed on the definition for: a word wider than a page, a sign without a glyph. */
const OWN_FAULTS: readonly FindingKind[] = ["too-wide", "missing-glyph"];

/** What the command may end with for a file that can be read: done, checks not met, bad definition. */
const ALLOWED = [0, 2, 65];

const keep = ({ bytes, beside }: Case, name: string): void => {
	const folder = join(KEPT, name);
	mkdirSync(folder, { recursive: true });
	writeFileSync(join(folder, "well.yaml"), bytes);
	for (const [file, content] of beside) writeFileSync(join(folder, file), content);
};

/** What is wrong, without the figures of the case, so that one defect is told once. */
const kindOf = (fault: string): string =>
	fault
		.split("\n")
		.slice(0, 3)
		.join(" ")
		.replaceAll(/[\d.]+/g, "#");

/** Cases of the run; a long one makes them as it goes. */
const tried = LONG ? [] : sampleOf("fuzz", fc.sample(anyCase, { seed: SEED, numRuns: CASES }), SHORT.cases);

describe(`whatever a definition holds (${LONG ? CASES : tried.length} cases, seed ${SEED})`, () => {
	it.each(Array.from({ length: PARTS }, (_, n) => n))(
		"nothing breaks, hangs, or is told without a place; part %i",
		{ timeout: 3_600_000 },
		(n) => {
			const seen = { cases: 0, refused: 0, papers: 0 };
			const failed = new Map<string, string>();
			fc.assert(
				fc.property(anyCase, (each) => {
					if (LONG) keep(each, `running-${n}`);
					const outcome = runCase(each, { timed: LONG });
					seen.cases += 1;
					seen.refused += outcome.refused ? 1 : 0;
					seen.papers += outcome.papers;
					for (const fault of outcome.faults) {
						if (failed.has(kindOf(fault))) continue;
						const name = `failed-${SEED + n}-${seen.cases}`;
						keep(each, name);
						failed.set(kindOf(fault), `out/fuzz/${name}: ${fault}`);
					}
				}),
				LONG
					? { seed: SEED + n, numRuns: Math.ceil(CASES / PARTS) }
					: { numRuns: tried.length, examples: tried.map((each): [Case] => [each]) },
			);
			if (LONG) rmSync(join(KEPT, `running-${n}`), { recursive: true, force: true });
			expect([...failed.values()]).toEqual([]);
			// Damage that is always refused, or never, would try little.
			if (LONG || WHOLE) expect(seen.refused / seen.cases).toBeGreaterThan(0.2);
			expect(seen.papers).toBeGreaterThan(0);
		},
	);
});

describe("the papers of the same", () => {
	it("set into pages without a word lost, pressed or broken", { timeout: 3_600_000 }, async () => {
		const found: string[] = [];
		const cases = fc.sample(anyCase, { seed: SEED + 1, numRuns: Math.floor(CASES / SETTING_SHARE) });
		const papers = cases.flatMap((each, i) => papersOfCase(each).map((paper) => ({ i, each, paper })));
		for (const { i, each, paper } of LONG ? papers : sampleOf("fuzzed papers", papers, SHORT.papers)) {
			const { findings } = await setPaper(paper);
			const faults = findings.filter(({ kind }) => !OWN_FAULTS.includes(kind));
			if (faults.length > 0) keep(each, `set-${i}`);
			found.push(
				...faults.map(({ kind, page, text, detail }) => `set-${i} ${kind} ${page}: ${text} ${detail}`),
			);
		}
		expect(found).toEqual([]);
		expect(papers.length).toBeGreaterThan(0);
	});
});

describe("the built command, given the same", () => {
	const folder = mkdtempSync(join(tmpdir(), "casebound-fuzz-"));
	afterAll(() => rmSync(folder, { recursive: true, force: true }));

	it("ends with a code that is documented, and never with a fault of its own", { timeout: 3_600_000 }, () => {
		const count = Math.max(3, Math.floor(CASES / COMMAND_SHARE));
		for (const [i, each] of fc.sample(anyCase, { seed: SEED, numRuns: count }).entries()) {
			writeFileSync(join(folder, "well.yaml"), each.bytes);
			for (const [file, content] of each.beside) writeFileSync(join(folder, file), content);
			const format = i % 2 === 0 ? "text" : "json";
			const { status, signal, stdout, stderr } = spawnSync(
				process.execPath,
				[MAIN, "check", "well.yaml", "--strict", "--format", format],
				{ encoding: "utf8", cwd: folder, timeout: 60_000, maxBuffer: 1 << 28 },
			);
			const { refused } = runCase(each, { timed: false });
			const sound =
				ALLOWED.includes(status ?? -1) && !stderr.includes("internal/fault") && refused === (status === 65);
			if (!sound) keep(each, `command-${i}`);
			expect({ status, signal, refused, stderr: stderr.includes("internal/fault") }).toEqual({
				status: refused ? 65 : expect.toSatisfy((code: unknown) => code === 0 || code === 2),
				signal: null,
				refused,
				stderr: false,
			});
			if (format === "json") expect(() => JSON.parse(stdout)).not.toThrow();
		}
	});
});
