import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { arcPoint } from "./arc.ts";
import { placeAt } from "./at-depth.ts";
import { bisect } from "./bisect.ts";
import { type PathStation, pathStationsOf } from "./path.ts";

const inputs = { path: { table: "path" } } as const;
const source = cite("definition");

export const maximumDogleg = formula({
	id: "trajectory/maximum-dogleg",
	name: "Greatest dogleg severity",
	expression: "max DLS over the path's intervals",
	source,
	inputs,
	gives: "dogleg",
	validity: "a path with stations",
	compute: ({ path }) => greatest(pathStationsOf(path).map((s) => s.dogleg)),
});

export const maximumInclination = formula({
	id: "trajectory/maximum-inclination",
	name: "Greatest inclination",
	expression: "max I over the path's stations",
	source,
	inputs,
	gives: "angle",
	validity: "a path with stations",
	compute: ({ path }) => greatest(pathStationsOf(path).map((s) => s.inclination)),
});

export const pathEnd = formula({
	id: "trajectory/path-end",
	name: "End of the path",
	expression: "MD of the last station",
	source,
	inputs,
	gives: "measured-depth",
	validity: "a path with stations",
	compute: ({ path }) => pathStationsOf(path).at(-1)?.md ?? Number.NaN,
});

/** The deepest the hole comes down to a measured depth: a hole past level climbs again. */
export const maximumTvd = formula({
	id: "trajectory/maximum-tvd",
	name: "Greatest true vertical depth",
	expression: "max TVD over the path down to MD: at MD, at a station, or where the hole is level",
	source,
	inputs: { path: { table: "path" }, MD: "measured-depth" },
	gives: "true-vertical-depth",
	validity: "MD at or below the path's first station",
	compute: ({ path, MD }) => {
		const stations = pathStationsOf(path);
		const there = placeAt(stations, MD)?.tvd ?? Number.NaN;
		return stations.reduce((deepest, upper, i) => {
			if (upper.md > MD) return deepest;
			const level = levelBelow(upper, stations[i + 1]);
			return Math.max(deepest, upper.tvd, level !== undefined && level.md <= MD ? level.tvd : upper.tvd);
		}, there);
	},
});

/** Where an arc that goes down at its upper station and up at its lower one is level. */
const levelBelow = (upper: PathStation, lower: PathStation | undefined) => {
	if (lower === undefined || upper.inclination >= 90 || lower.inclination <= 90) return undefined;
	const s = bisect(0, lower.md - upper.md, (along) => arcPoint(upper, lower, along).vertical);
	return { md: upper.md + s, tvd: upper.tvd + arcPoint(upper, lower, s).step[2] };
};

/** Where the hole leaves vertical: the last station above its first inclined one. */
export const kickoffOnPath = formula({
	id: "trajectory/kickoff",
	name: "Kickoff of the path",
	expression: "last MD with I = 0 above the first with I > 0",
	source,
	inputs,
	gives: "measured-depth",
	validity: "the hole leaves vertical",
	compute: ({ path }) => {
		const stations = pathStationsOf(path);
		const i = stations.findIndex((s) => s.inclination > 0);
		return i < 1 ? Number.NaN : (stations[i - 1]?.md ?? Number.NaN);
	},
});

/** Where a path first comes within a margin of the inclination it is to land at. */
export const landingOnPath = formula({
	id: "trajectory/landing",
	name: "Landing on the path",
	expression: "first MD with I ≥ I_L − margin",
	source: cite("common-practice", "landing of a surveyed hole"),
	inputs: { path: { table: "path" }, I_L: "angle", margin: "angle" },
	gives: "measured-depth",
	validity: "the hole reaches that inclination",
	compute: ({ path, I_L, margin }) => {
		const stations = pathStationsOf(path);
		const i = stations.findIndex((s) => s.inclination >= I_L - margin);
		const [upper, lower] = [stations[i - 1], stations[i]];
		if (lower === undefined) return Number.NaN;
		return upper === undefined ? lower.md : firstReaching(upper, lower, I_L - margin);
	},
});

const firstReaching = (upper: PathStation, lower: PathStation, inclination: number): number =>
	upper.md + bisect(0, lower.md - upper.md, (s) => arcPoint(upper, lower, s).inclination - inclination);

/** An interval of a hole inclined by less than this at both ends is of its vertical part [°]. */
const INCLINED = 5;

/** Longest interval between stations of the build and the lateral, the projection to the end of the hole left out [ft]. */
export const longestInterval = formula({
	id: "trajectory/longest-interval",
	name: "Longest survey interval in the build and the lateral",
	expression: "max ΔMD where I ≥ 5° at either end, but for the last interval",
	source: cite("common-practice", "interval of survey stations"),
	inputs,
	gives: "length",
	validity: "a hole inclined by 5° or more between two stations",
	compute: ({ path }) => {
		const stations = pathStationsOf(path);
		return greatest(
			stations.slice(1, -1).flatMap((lower, i) => {
				const upper = stations[i];
				const inclined = Math.max(upper?.inclination ?? 0, lower.inclination) >= INCLINED;
				return upper === undefined || !inclined ? [] : [lower.md - upper.md];
			}),
		);
	},
});

const greatest = (values: readonly number[]): number =>
	values.length === 0 ? Number.NaN : Math.max(...values);
