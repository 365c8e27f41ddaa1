import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { TestProject } from "vitest/node";

declare module "vitest" {
	interface ProvidedContext {
		/** The folder where the papers of this run are kept once they are set. */
		readonly shelf: string;
	}
}

/** Before all tests: says which sample this run takes, and makes room for the papers that several tests read. */
export default (project: TestProject): (() => void) => {
	const { SAMPLE_SEED, WHOLE_SUITE } = project.config.env as Readonly<Record<string, string | undefined>>;
	const told =
		WHOLE_SUITE === "1"
			? "Every sweep is run in whole.\n"
			: `Long sweeps are sampled by seed ${SAMPLE_SEED}; the same sample again: SAMPLE_SEED=${SAMPLE_SEED} npm test\n`;
	process.stdout.write(told);
	const shelf = mkdtempSync(join(tmpdir(), "casebound-papers-"));
	project.provide("shelf", shelf);
	return () => {
		rmSync(shelf, { recursive: true, force: true });
		process.stdout.write(told);
	};
};
