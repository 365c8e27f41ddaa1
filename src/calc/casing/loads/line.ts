import type { KnownTable } from "../../../cite/known.ts";
import { pathStationsOf } from "../../trajectory/path.ts";
import { type LoadStation, loadStations, stationAt } from "./stations.ts";

/** A load beside the rating it is compared with. */
interface Loaded {
	readonly load: number;
	readonly rating: number;
}

/** Columns that every line begins with. */
export const LINE = { md: "measured-depth", tvd: "true-vertical-depth", section: "count" } as const;

type Row<L extends Loaded> = L & { readonly md: number; readonly tvd: number; readonly section: number };

/** Less than this is no load but the last bits of a difference [psi or lbf]. */
export const NO_LOAD = 1;

/** Rating over load; without end where nothing loads the pipe that way. */
export const factorOf = ({ load, rating }: Loaded): number =>
	load > NO_LOAD ? rating / load : Number.POSITIVE_INFINITY;

/** A low place this much above the lowest is sought out too: between two depths it may turn out the lower one. */
const NEAR = 1.02;
/** Where the factor is the same over a long way, every depth is a low place: this many are enough. */
const MOST_LOWS = 8;

/**
 * A load over depth, with the depth where rating over load is least among its rows. Between two depths where it is
 * worked the least may lie in between, so the intervals beside every low place are searched.
 *
 * @param evaluate  load and ratings at a station; numbers that are not finite leave no line
 */
export const lineOver = <L extends Loaded>(
	path: KnownTable,
	sections: KnownTable,
	profiles: readonly KnownTable[],
	evaluate: (station: LoadStation) => L,
): readonly Row<L>[] => {
	const rowOf = (station: LoadStation): Row<L> => ({
		md: station.md,
		tvd: station.tvd,
		section: station.number,
		...evaluate(station),
	});
	const stations = loadStations(path, sections, ...profiles);
	const rows = stations.map(rowOf);
	if (!rows.every((row) => Object.values(row).every(Number.isFinite))) return [];
	const along = pathStationsOf(path);
	const least = Math.min(...rows.map(factorOf));
	if (!Number.isFinite(least)) return rows;
	const found = intervalsToSearch(rows, least).flatMap(([upper, lower]) => {
		const station = stations[upper];
		const [from, to] = [rows[upper], rows[lower]];
		if (station === undefined || from === undefined || to === undefined) return [];
		const at = (md: number): Row<L> | undefined => {
			const place = stationAt(along, station, md);
			return place && rowOf(place);
		};
		const low = lowestBetween(from.md, to.md, at);
		const ends = Math.min(factorOf(from), factorOf(to));
		return low !== undefined && factorOf(low) < ends ? [low] : [];
	});
	return [...rows, ...found].sort((a, b) => a.section - b.section || a.md - b.md);
};

/** Neighboring rows of one section beside every low place, as pairs of indices. */
const intervalsToSearch = (
	rows: readonly Row<Loaded>[],
	least: number,
): readonly (readonly [upper: number, lower: number])[] => {
	const factors = rows.map(factorOf);
	const lows = factors
		.flatMap((factor, i) =>
			factor <= least * NEAR && factor <= (factors[i - 1] ?? factor) && factor <= (factors[i + 1] ?? factor)
				? [{ i, factor }]
				: [],
		)
		.sort((a, b) => a.factor - b.factor)
		.slice(0, MOST_LOWS);
	const upper = new Set(lows.flatMap(({ i }) => [i - 1, i]));
	return [...upper]
		.filter((i) => {
			const [a, b] = [rows[i], rows[i + 1]];
			return a !== undefined && b !== undefined && a.section === b.section && b.md > a.md;
		})
		.map((i) => [i, i + 1] as const);
};

const GOLDEN = (Math.sqrt(5) - 1) / 2;
/** Depths are told apart no finer than this [ft]. */
const FINE = 0.01;

/** The lowest place between two depths, by golden section: the factor falls to it and rises from it. */
const lowestBetween = <L extends Loaded>(
	from: number,
	to: number,
	at: (md: number) => Row<L> | undefined,
): Row<L> | undefined => {
	let [low, high] = [from, to];
	let [a, b] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
	let [rowA, rowB] = [at(a), at(b)];
	while (high - low > FINE && rowA !== undefined && rowB !== undefined) {
		if (factorOf(rowA) < factorOf(rowB)) {
			[high, b, rowB] = [b, a, rowA];
			a = high - GOLDEN * (high - low);
			rowA = at(a);
		} else {
			[low, a, rowA] = [a, b, rowB];
			b = low + GOLDEN * (high - low);
			rowB = at(b);
		}
	}
	return rowA !== undefined && rowB !== undefined && factorOf(rowB) < factorOf(rowA) ? rowB : rowA;
};
