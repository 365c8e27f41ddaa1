import { createHash } from "node:crypto";

/*
 * The run of every change looks at a sample of the long sweeps, the long run (`npm run test:all`) at the whole of them. What
 * is swept over is always the same, so that whatever a sample meets was met by the long run too: a failing sample is a defect.
 */

/** True in the long run. */
export const WHOLE = process.env["WHOLE_SUITE"] === "1";

/** Of the samples of this run: a known one, unless `SAMPLE_SEED` asks for another. */
const SEED = process.env["SAMPLE_SEED"] ?? "0";

/** All items in the long run, else `count` of them in their order, chosen by the seed and by what they are. */
export const sampleOf = <T>(what: string, all: readonly T[], count: number): readonly T[] => {
	if (WHOLE || count >= all.length) return all;
	const drawn = all
		.map((_, i) => ({ i, lot: createHash("sha256").update(`${SEED} ${what} ${i}`).digest("hex") }))
		.sort((a, b) => (a.lot < b.lot ? -1 : 1))
		.slice(0, count);
	const chosen = new Set(drawn.map(({ i }) => i));
	return all.filter((_, i) => chosen.has(i));
};
