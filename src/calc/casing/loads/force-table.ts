import type { KnownTable } from "../../../cite/known.ts";
import type { LoadStation } from "./stations.ts";

/** `section` tells the two sides of a change of size apart. */
export const FORCE = {
	md: "measured-depth",
	tvd: "true-vertical-depth",
	section: "count",
	force: "force",
} as const;

export interface ForceRow {
	readonly md: number;
	readonly tvd: number;
	readonly section: number;
	readonly force: number;
}

/** Rows of each section, sorted out once for a table: a line asks for thousands of depths. */
const sorted = new WeakMap<KnownTable, ReadonlyMap<number, readonly ForceRow[]>>();

const bySection = (forces: KnownTable): ReadonlyMap<number, readonly ForceRow[]> => {
	const known = sorted.get(forces);
	if (known !== undefined) return known;
	const rows = new Map<number, ForceRow[]>();
	for (const row of forces.rows as unknown as readonly ForceRow[]) {
		const own = rows.get(row.section);
		if (own === undefined) rows.set(row.section, [row]);
		else own.push(row);
	}
	sorted.set(forces, rows);
	return rows;
};

/** Index of the first row at or below a depth. */
const firstAtOrBelow = (rows: readonly ForceRow[], md: number): number => {
	let [low, high] = [0, rows.length];
	while (low < high) {
		const middle = (low + high) >> 1;
		if ((rows[middle]?.md ?? Number.POSITIVE_INFINITY) < md) low = middle + 1;
		else high = middle;
	}
	return low;
};

/**
 * Force at a station, between the table's rows of the same section. Weight and pressure go by the vertical, so it is
 * straight in vertical depth; where the hole is level, along the hole.
 */
export const forceAt = (
	forces: KnownTable,
	{ md, tvd, number }: Pick<LoadStation, "md" | "tvd" | "number">,
): number => {
	const own = bySection(forces).get(number) ?? [];
	const i = firstAtOrBelow(own, md);
	const [upper, lower] = [own[i - 1] ?? own[i], own[i]];
	if (upper === undefined || lower === undefined) return Number.NaN;
	if (lower.md === upper.md) return lower.force;
	const down = (tvd - upper.tvd) / (lower.tvd - upper.tvd);
	const along = (md - upper.md) / (lower.md - upper.md);
	const level = Math.abs(lower.tvd - upper.tvd) < 1e-3 * (lower.md - upper.md);
	const part = level || !(down >= 0 && down <= 1) ? along : down;
	return upper.force + (lower.force - upper.force) * part;
};
