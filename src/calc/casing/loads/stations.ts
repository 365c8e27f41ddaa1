import type { KnownTable } from "../../../cite/known.ts";
import { placeAt } from "../../trajectory/at-depth.ts";
import { crossingsOn } from "../../trajectory/md-at-tvd.ts";
import { type PathStation, pathStationsOf } from "../../trajectory/path.ts";
import { type LoadSection, loadSectionsOf } from "./load-sections.ts";

/** A depth at which a load is worked: where it is, how the hole bends there, and which section stands there. */
export interface LoadStation {
	readonly md: number;
	readonly tvd: number;
	/** The sharper of the bends above and below, where they change. */
	readonly dogleg: number;
	readonly section: LoadSection;
	/** 1 is the uppermost. */
	readonly number: number;
}

/** Loads are worked no further apart than this [ft]. */
const SPACING = 100;

/**
 * The depths at which a load line is worked: both ends of every section, every station of the path between them, points
 * between no further apart than a hundred feet, and every depth where a profile kinks.
 */
export const loadStations = (
	path: KnownTable,
	sections: KnownTable,
	...profiles: readonly KnownTable[]
): readonly LoadStation[] => {
	const stations = pathStationsOf(path);
	const depths = new Set(profiles.flatMap((profile) => profile.rows.map((row) => row["tvd"] ?? Number.NaN)));
	const kinks = [...depths].flatMap((tvd) => crossingsOn(path, tvd));
	return laidOut(path, sections).flatMap((along) => {
		const [first, last] = [along[0], along.at(-1)];
		if (first === undefined || last === undefined) return [];
		const known = new Set(along.map(({ md }) => md));
		const added = kinks
			.filter((md) => md > first.md && md < last.md && !known.has(md))
			.flatMap((md) => stationAt(stations, first, md) ?? []);
		return added.length === 0 ? along : [...along, ...added].sort((a, b) => a.md - b.md);
	});
};

/** Dozens of lines are worked on one path and string, so what they share is laid out once. */
const layouts = new WeakMap<KnownTable, WeakMap<KnownTable, readonly (readonly LoadStation[])[]>>();
/** Stations of each section without those of any profile. */
const laidOut = (path: KnownTable, sections: KnownTable): readonly (readonly LoadStation[])[] => {
	const of = layouts.get(path) ?? new WeakMap<KnownTable, readonly (readonly LoadStation[])[]>();
	layouts.set(path, of);
	const found = of.get(sections) ?? layOut(pathStationsOf(path), loadSectionsOf(sections));
	of.set(sections, found);
	return found;
};

const layOut = (
	path: readonly PathStation[],
	sections: readonly LoadSection[],
): readonly (readonly LoadStation[])[] =>
	sections.map((section, i) => {
		const within = path.map(({ md }) => md).filter((md) => md > section.top && md < section.bottom);
		return filled([section.top, ...within, section.bottom]).flatMap(
			(md) => stationAt(path, { section, number: i + 1 }, md) ?? [],
		);
	});

const filled = (depths: readonly number[]): readonly number[] =>
	depths.flatMap((md, i) => {
		const next = depths[i + 1];
		if (next === undefined) return [md];
		const pieces = Math.max(1, Math.ceil((next - md) / SPACING));
		return Array.from({ length: pieces }, (_, k) => md + (k * (next - md)) / pieces);
	});

/** The station of a section at any depth of it; undefined above the path's first station. */
export const stationAt = (
	path: readonly PathStation[],
	of: Pick<LoadStation, "section" | "number">,
	md: number,
): LoadStation | undefined => {
	const place = placeAt(path, md);
	if (place === undefined) return undefined;
	return { ...of, md, tvd: place.tvd, dogleg: Math.max(place.dogleg, place.dogleg_above) };
};
