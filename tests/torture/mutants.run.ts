import fc from "fast-check";
import { expect, it } from "vitest";
import { anyCase } from "../fuzz/cases.ts";
import { runCase } from "../fuzz/run-case.ts";
import { Figures, forMinutes, MINUTES, SEED } from "./figures.ts";

/** A third of the time: definitions and tables damaged at random, through everything but the setting of pages. */
it("nothing that a definition holds breaks, hangs or is told without a place", async () => {
	const figures = new Figures("damaged definitions");
	await forMinutes(MINUTES / 3, (n) => {
		for (const each of fc.sample(anyCase, { seed: SEED + n, numRuns: 20 })) {
			const { faults, refused } = runCase(each, { timed: true });
			figures.tried += 1;
			figures.see(refused ? "refused" : "taken");
			figures.failed.push(...faults.map((fault) => `seed ${SEED + n}: ${fault}`));
		}
	});
	figures.tell();
	expect(figures.failed).toEqual([]);
});
