import type { KnownTable } from "../../../cite/known.ts";
import { placeAt } from "../../trajectory/at-depth.ts";
import { crossingsOf } from "../../trajectory/md-at-tvd.ts";
import { pathStationsOf } from "../../trajectory/path.ts";
import { type LoadSection, loadSectionsOf } from "./load-sections.ts";

/** A depth at which a load is worked: where it is, how the hole bends there, and which section stands there. */
export interface LoadStation {
	readonly md: number;
	readonly tvd: number;
	readonly dogleg: number;
	readonly section: LoadSection;
	/** 1 is the uppermost. */
	readonly number: number;
}

/**
 * The depths at which a load line is worked: both ends of every section, every station of the path between them, and
 * every depth where a profile kinks. Loads run straight between these, so nothing greater hides in between.
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
	return loadSectionsOf(sections).flatMap((section, i) => {
		const within = [...stations.map(({ md }) => md), ...kinks].filter(
			(md) => md > section.top && md < section.bottom,
		);
		const depths = [section.top, ...new Set(within.sort((a, b) => a - b)), section.bottom];
		return depths.flatMap((md) => {
			const place = placeAt(stations, md);
			return place === undefined
				? []
				: [{ md, tvd: place.tvd, dogleg: place.dogleg, section, number: i + 1 }];
		});
	});
};
