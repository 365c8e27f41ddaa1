import { tableFormula } from "../../cite/formula.ts";
import type { KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { arcStep, type Station } from "./arc.ts";
import { buildBetween, doglegAngle, shorterTurn } from "./dogleg.ts";
import { along } from "./horizontal.ts";
import { degrees, radians } from "./tangent.ts";

/** Columns of a path, in the order a survey listing prints them. */
export const PATH_COLUMNS = {
	md: "measured-depth",
	inclination: "angle",
	azimuth: "angle",
	tvd: "true-vertical-depth",
	north: "offset",
	east: "offset",
	vertical_section: "offset",
	dogleg: "dogleg",
	build: "dogleg",
	turn: "dogleg",
} as const;

/** A station with its place. Dogleg, build and turn are of the interval that ends here. */
export interface PathStation extends Station {
	readonly tvd: number;
	readonly north: number;
	readonly east: number;
	readonly vertical_section: number;
	readonly dogleg: number;
	readonly build: number;
	/** None where the hole is vertical at either end: there it has no azimuth to turn from. */
	readonly turn: number;
}

/**
 * The path through stations by minimum curvature: from the depth datum, above the first station straight up, below the
 * last one straight on to `TD`.
 *
 * @param stations  md strictly increasing [ft], inclination and azimuth [°], all azimuths from one north
 * @param TD        depth the path is carried to, where that is below the last station [ft]
 * @param Avs       direction of the vertical section [°]
 * @returns         a station a row; none where the stations do not increase or the hole turns right back
 * @source          taylor-mason-1972; sawaryn-thorogood-2005 for the straight extension
 */
export const minimumCurvaturePath = tableFormula({
	id: "trajectory/path",
	name: "Well path by minimum curvature",
	expression: "Σ (ΔMD/2) · RF · (t1 + t2); straight past the last station",
	source: cite("taylor-mason-1972", "minimum curvature"),
	inputs: {
		stations: { table: "md, inclination, azimuth" },
		TD: "measured-depth",
		Avs: "angle",
	},
	gives: PATH_COLUMNS,
	validity: "measured depth strictly increasing; each dogleg below 180°",
	compute: ({ stations, TD, Avs }) => pathThrough(stationsOf(stations), TD, Avs),
});

/** The md, inclination and azimuth columns of a table. */
export const stationsOf = (table: KnownTable): readonly Station[] =>
	table.rows.map(({ md, inclination, azimuth }) => ({
		md: md ?? Number.NaN,
		inclination: inclination ?? Number.NaN,
		azimuth: azimuth ?? Number.NaN,
	}));

/** The rows of a path table, as stations with a place. */
export const pathStationsOf = (path: KnownTable): readonly PathStation[] =>
	path.rows as unknown as readonly PathStation[];

const pathThrough = (given: readonly Station[], TD: number, Avs: number): readonly PathStation[] => {
	const stations = carriedTo(TD, fromDatum(given));
	const path: PathStation[] = [];
	for (const station of stations) {
		const above = path.at(-1);
		if (above === undefined) {
			path.push({
				...station,
				tvd: 0,
				north: 0,
				east: 0,
				vertical_section: 0,
				dogleg: 0,
				build: 0,
				turn: 0,
			});
			continue;
		}
		const [dN, dE, dV] = arcStep(above, station);
		if (!(station.md > above.md) || !Number.isFinite(dN + dE + dV)) return [];
		const β = doglegAngle(above.inclination, above.azimuth, station.inclination, station.azimuth);
		const [north, east] = [above.north + dN, above.east + dE];
		path.push({
			...station,
			tvd: above.tvd + dV,
			north,
			east,
			vertical_section: along(north, east, Avs),
			dogleg: (100 * degrees(β)) / (station.md - above.md),
			...ratesBetween(above, station),
		});
	}
	return path;
};

const ratesBetween = (above: Station, station: Station): Pick<PathStation, "build" | "turn"> => {
	const per = 100 / (station.md - above.md);
	const vertical = Math.sin(radians(above.inclination)) === 0 || Math.sin(radians(station.inclination)) === 0;
	return {
		build: buildBetween(above.md, above.inclination, station.md, station.inclination),
		turn: vertical ? 0 : shorterTurn(above.azimuth, station.azimuth) * per,
	};
};

/** A tie-in below the datum hangs from a vertical start at the datum. */
const fromDatum = (stations: readonly Station[]): readonly Station[] => {
	const [first] = stations;
	if (first === undefined || first.md <= 0) return stations;
	return [{ md: 0, inclination: 0, azimuth: first.azimuth }, ...stations];
};

const carriedTo = (TD: number, stations: readonly Station[]): readonly Station[] => {
	const last = stations.at(-1);
	return last === undefined || last.md >= TD ? stations : [...stations, { ...last, md: TD }];
};
