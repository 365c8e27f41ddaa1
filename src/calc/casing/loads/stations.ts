import type { KnownTable } from "../../../cite/known.ts";
import { placeAt } from "../../trajectory/at-depth.ts";
import { crossingsOf } from "../../trajectory/md-at-tvd.ts";
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
 * The depths at which a load line is worked: both ends of every section, every station of the path between them, every
 * depth where a profile kinks, and points between no further apart than a hundred feet.
 */
export const loadStations = (
	path: KnownTable,
	sections: KnownTable,
	...profiles: readonly KnownTable[]
): readonly LoadStation[] => {
	const stations = pathStationsOf(path);
	const kinks = profiles
		.flatMap((profile) => profile.rows.map((row) => row["tvd"] ?? Number.NaN))
		.flatMap((tvd) => crossingsOf(stations, tvd));
	const marks = [...stations.map(({ md }) => md), ...kinks];
	return loadSectionsOf(sections).flatMap((section, i) => {
		const within = marks.filter((md) => md > section.top && md < section.bottom);
		const depths = filled([section.top, ...new Set(within.sort((a, b) => a - b)), section.bottom]);
		return depths.flatMap((md) => stationAt(stations, { section, number: i + 1 }, md) ?? []);
	});
};

const filled = (depths: readonly number[]): readonly number[] =>
	depths.flatMap((md, i) => {
		const next = depths[i + 1];
		if (next === undefined) return [md];
		const pieces = Math.ceil((next - md) / SPACING);
		return Array.from(
			{ length: Math.max(1, pieces) },
			(_, k) => md + (k * (next - md)) / Math.max(1, pieces),
		);
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
