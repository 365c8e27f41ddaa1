import { constant, type Known, type KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { Neighbor, OffsetWell } from "../../definition/definition.ts";
import { message, type Said } from "../../messages/message.ts";
import type { Well } from "../../well/well.ts";
import { holeMark } from "../depths/marks.ts";
import { type Gaps, maybe } from "../gaps.ts";
import type { HoleMark, PlaceOnMap, PlaceResults, SiteResults, TrajectoryResults } from "../results.ts";
import { eastAtMd, northAtMd } from "../trajectory/at-depth.ts";
import { closure, closureAzimuth } from "../trajectory/horizontal.ts";
import { northOfTrue, turnOf } from "../trajectory/north.ts";
import { GEODESICS } from "./distance.ts";
import { cornersOf, LINES, pathToLine, wellheadToLine } from "./lines.ts";
import {
	azimuthFromPathNorth,
	distanceToPath,
	eastOfWellhead,
	nearestMeasuredDepth,
	northOfWellhead,
} from "./local-plane.ts";
import { withPath } from "./offset-path.ts";
import { PLACES, trueAzimuth } from "./place-of-station.ts";

/** Places of the path that are wanted on the map. */
type PathMarks = Pick<TrajectoryResults, "landing" | "total_depth" | "closure">;

/** How far each neighbor and offset well is from the wellhead, and from the well path in plan. */
export const siteResults = (well: Well, path: KnownTable, marks: PathMarks, gaps: Gaps): SiteResults => {
	const north = northOf(well, marks, gaps);
	const place = (list: string) => (thing: Neighbor | OffsetWell, i: number) =>
		placeResults(well, path, thing, { north, key: `site.${list}.${thing.id}`, at: ["site", list, i], gaps });
	return {
		neighbors: well.neighbors.map(place("neighbors")),
		offset_wells: well.offsetWells.map((entry, i) =>
			withPath(well, path, entry, place("offset_wells")(entry, i), north, gaps),
		),
		...onTheMap(well, path, marks, north, gaps),
	};
};

/** The way made good, laid off from the surface location. */
const onTheMap = (
	{ site }: Well,
	path: KnownTable,
	{ landing, total_depth }: PathMarks,
	north: Known<"angle"> | undefined,
	gaps: Gaps,
): Pick<SiteResults, "stations" | "landing" | "total_depth"> => {
	const home = site.surface_location;
	if (home === undefined) {
		gaps.missing("site.total_depth", message("calc/wells-surface-location-is-not-given"), [
			["site", "surface_location"],
		]);
		return {};
	}
	if (north === undefined) return {};
	const on = PLACES[home.datum];
	const start = { φ_0: home.latitude, λ_0: home.longitude };
	const place = (mark: HoleMark): PlaceOnMap => {
		const at = { path, MD: mark.md };
		const [N, E] = [northAtMd.of(at), eastAtMd.of(at)];
		const line = {
			...start,
			s: closure.of({ N, E }),
			A_true: trueAzimuth.of({ A: closureAzimuth.of({ N, E }), γ: north }),
		};
		return { latitude: on.latitude.of(line), longitude: on.longitude.of(line) };
	};
	return {
		stations: on.stations.of({ path, ...start, γ: north }),
		...maybe("landing", landing && place(landing)),
		total_depth: place(total_depth),
	};
};

interface Context {
	readonly north: Known<"angle"> | undefined;
	readonly key: string;
	readonly at: readonly (string | number)[];
	readonly gaps: Gaps;
}

const ANY_NORTH = constant("angle", 0, "distance to the wellhead, alike in every north", cite("definition"));

const placeResults = (
	well: Well,
	path: KnownTable,
	thing: Neighbor | OffsetWell,
	{ north, key, at, gaps }: Context,
): PlaceResults => {
	const { id, name, latitude, longitude } = thing;
	const corners = "corners" in thing ? thing.corners : undefined;
	const home = well.site.surface_location;
	const unplaced = (because: Said) => {
		gaps.missing(`${key}.from_wellhead`, because, [at]);
		return { id, name };
	};
	if (home === undefined) return unplaced(message("calc/wells-surface-location-is-not-given"));
	const datum = thing.datum ?? home.datum;
	const elsewhere = message("calc/is-placed-in-and-well-in", { name, datum, datum2: home.datum });
	if (corners !== undefined) {
		if (datum !== home.datum) return unplaced(elsewhere);
		const line = LINES[datum].of({
			corners: cornersOf(corners, [...at, "corners"]),
			φ_0: home.latitude,
			λ_0: home.longitude,
			γ: north ?? ANY_NORTH,
		});
		const from_wellhead = wellheadToLine.of({ line });
		return north === undefined
			? { id, name, from_wellhead }
			: { id, name, from_wellhead, from_path: pathToLine.of({ path, line }), line };
	}
	if (latitude === undefined || longitude === undefined)
		return unplaced(message("calc/coordinates-are-not-given", { name }));
	if (datum !== home.datum) return unplaced(elsewhere);
	const ends = { φ_1: home.latitude, λ_1: home.longitude, φ_2: latitude, λ_2: longitude };
	const distance = GEODESICS[datum].distance.of(ends);
	const direction = GEODESICS[datum].azimuth.of(ends);
	return {
		id,
		name,
		from_wellhead: distance,
		direction,
		...(north === undefined
			? {}
			: planResults(well, path, distance, azimuthFromPathNorth.of({ A_true: direction, γ: north }))),
	};
};

const planResults = (well: Well, path: KnownTable, s: Known<"distance">, A: Known<"angle">) => {
	const [N, E] = [northOfWellhead.of({ s, A }), eastOfWellhead.of({ s, A })];
	const from = distanceToPath.of({ path, N, E });
	return {
		north: N,
		east: E,
		from_path: from,
		nearest: holeMark(path, nearestMeasuredDepth.of({ path, N, E }), well.datum),
	};
};

/** Nearer to the wellhead than this, which north it is makes no difference [ft]. */
const NOWHERE = 1;

/** How far east of true north the path's north lies. Only wanted where there is something to place. */
const northOf = (
	{ site, neighbors, offsetWells }: Well,
	{ closure: away }: PathMarks,
	gaps: Gaps,
): Known<"angle"> | undefined => {
	const placed = site.surface_location !== undefined;
	if (neighbors.length + offsetWells.length === 0 && !placed) return undefined;
	const { north } = site;
	const turn = north === undefined ? undefined : northOfTrue(north.reference, site);
	if (turn !== undefined) return turn;
	if (away.value < NOWHERE)
		return constant("angle", 0, "a hole straight down goes to no side", cite("definition"));
	const [what, at] =
		north === undefined || north.reference === "true"
			? ([message("calc/north.of-azimuths"), "north"] as const)
			: turnOf(north.reference);
	return gaps.missing("site.from_path", message("calc/is-not-given-places-on-map", { what }), [
		at === "north" ? ["site", "north"] : ["site", "north", at],
	]);
};
