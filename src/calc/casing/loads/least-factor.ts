import { formula } from "../../../cite/formula.ts";
import type { KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";

const inputs = { line: { table: "load and rating" } } as const;
const source = cite("definition");

interface Least {
	readonly md: number;
	readonly factor: number;
}

/** The row where the rating stands least above the load; none where nothing loads the pipe that way. */
const leastOn = (line: KnownTable): Least | undefined => {
	let least: Least | undefined;
	for (const row of line.rows) {
		const [md, load, rating] = [row["md"] ?? Number.NaN, row["load"] ?? 0, row["rating"] ?? Number.NaN];
		// Less than this is no load but the last bits of a difference.
		if (!(load > 1)) continue;
		const factor = rating / load;
		if (least === undefined || factor < least.factor) least = { md, factor };
	}
	return least;
};

/** Rating over load where that is least. */
export const leastFactor = formula({
	id: "casing/least-factor",
	name: "Least design factor",
	expression: "min (rating / load) over the depths that are loaded",
	source,
	inputs,
	gives: "ratio",
	validity: "some depth is loaded",
	compute: ({ line }) => leastOn(line)?.factor ?? Number.NaN,
});

export const leastFactorDepth = formula({
	id: "casing/least-factor-depth",
	name: "Depth of the least design factor",
	expression: "MD at which rating / load is least",
	source,
	inputs,
	gives: "measured-depth",
	validity: "some depth is loaded",
	compute: ({ line }) => leastOn(line)?.md ?? Number.NaN,
});
