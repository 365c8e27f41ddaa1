import * as z from "zod";
import type { Known } from "../cite/known.ts";
import { columnsSchema, type KnownOverride, tableCells } from "./columns.ts";

const DIMENSIONS = {
	M: "diameter",
	E1: "diameter",
	A: "diameter",
	L1: "diameter",
	L4: "diameter",
	L7: "diameter",
	E7: "diameter",
	I: "diameter",
	taper: "ratio",
	leak_turns: "ratio",
} as const;

const positive = z.number().positive();
const lengths = z.strictObject({ short: positive, long: positive.optional() });

const size = z.strictObject({
	size: z.string(),
	outside_diameter: positive,
	round: z.strictObject({
		M: positive,
		E1: positive,
		A: positive,
		L1: lengths,
		L4: lengths,
		light: z.strictObject({ weight: positive, L1: positive, L4: positive }).optional(),
	}),
	buttress: z.strictObject({
		L7: positive,
		E7: positive,
		I: positive,
		taper: positive,
		leak_turns: positive,
	}),
});

/** Form of `seeds/pipe/threads.yaml`. */
export const threadSchema = z.strictObject({
	columns: columnsSchema(DIMENSIONS),
	sizes: z.array(size).min(1),
});

/** End of pipe to the hand-tight plane (L1) and to the vanish point (L4). */
interface RoundLengths {
	readonly L1: Known<"diameter">;
	readonly L4: Known<"diameter">;
}

/** Thread dimensions of one size, under the symbols of API 5B [in; taper and turns without unit]. */
export interface ThreadRow {
	/** `5 1/2 in`. */
	readonly id: string;
	/** [in] */
	readonly outsideDiameter: number;
	readonly round: {
		/** Face of the coupling to the hand-tight plane. */
		readonly M: Known<"diameter">;
		/** Pitch diameter at the hand-tight plane. */
		readonly E1: Known<"diameter">;
		/** Hand-tight standoff. */
		readonly A: Known<"diameter">;
		readonly short: RoundLengths;
		/** Absent where the size has no long thread. */
		readonly long?: RoundLengths;
	};
	readonly buttress: {
		/** Length of perfect threads. */
		readonly L7: Known<"diameter">;
		/** Pitch diameter. */
		readonly E7: Known<"diameter">;
		/** Face of the coupling to the base of the triangle, hand tight. */
		readonly I: Known<"diameter">;
		/** On diameter. */
		readonly taper: Known<"ratio">;
		/** Turns of make-up for leak resistance. */
		readonly leakTurns: Known<"ratio">;
	};
	readonly known: KnownOverride;
}

const THREAD_TABLE = "threads";

/** A size's threads; `ofWeight` gives the row of a light weight that has its own short thread. */
export interface SizeThreads {
	readonly usual: ThreadRow;
	readonly light?: { readonly weight: number; readonly row: ThreadRow };
}

export const threadRows = (seed: z.infer<typeof threadSchema>): readonly SizeThreads[] => {
	const { value } = tableCells(THREAD_TABLE, DIMENSIONS, seed.columns);
	const known = Object.fromEntries(
		Object.entries(seed.columns).map(([name, column]) => [name, column.known]),
	);
	const roundLengths = (id: string, l1: number, l4: number): RoundLengths => ({
		L1: value(id, "L1", l1),
		L4: value(id, "L4", l4),
	});
	return seed.sizes.map(({ size: id, outside_diameter, round, buttress }) => {
		const row = (shortId: string, l1: number, l4: number): ThreadRow => ({
			id: shortId,
			outsideDiameter: outside_diameter,
			round: {
				M: value(id, "M", round.M),
				E1: value(id, "E1", round.E1),
				A: value(id, "A", round.A),
				short: roundLengths(shortId, l1, l4),
				...(round.L1.long === undefined || round.L4.long === undefined
					? {}
					: { long: roundLengths(`${id} long`, round.L1.long, round.L4.long) }),
			},
			buttress: {
				L7: value(id, "L7", buttress.L7),
				E7: value(id, "E7", buttress.E7),
				I: value(id, "I", buttress.I),
				taper: value(id, "taper", buttress.taper),
				leakTurns: value(id, "leak_turns", buttress.leak_turns),
			},
			known,
		});
		return {
			usual: row(id, round.L1.short, round.L4.short),
			...(round.light === undefined
				? {}
				: {
						light: {
							weight: round.light.weight,
							row: row(`${id} ${round.light.weight} lb/ft`, round.light.L1, round.light.L4),
						},
					}),
		};
	});
};
