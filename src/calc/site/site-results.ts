import { constant, type Known, type KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { Neighbor, OffsetWell } from "../../definition/definition.ts";
import type { Well } from "../../well/well.ts";
import { holeMark } from "../depths/marks.ts";
import type { Gaps } from "../gaps.ts";
import type { PlaceResults, SiteResults } from "../results.ts";
import { GEODESICS } from "./distance.ts";
import {
	azimuthFromPathNorth,
	distanceToPath,
	eastOfWellhead,
	nearestMeasuredDepth,
	northOfWellhead,
} from "./local-plane.ts";

/** How far each neighbor and offset well is from the wellhead, and from the well path in plan. */
export const siteResults = (well: Well, path: KnownTable, gaps: Gaps): SiteResults => {
	const north = northOf(well, gaps);
	const place = (list: string) => (thing: Neighbor | OffsetWell, i: number) =>
		placeResults(well, path, thing, { north, key: `site.${list}.${thing.id}`, at: ["site", list, i], gaps });
	return {
		neighbors: well.neighbors.map(place("neighbors")),
		offset_wells: well.offsetWells.map(place("offset_wells")),
	};
};

interface Context {
	readonly north: Known<"angle"> | undefined;
	readonly key: string;
	readonly at: readonly (string | number)[];
	readonly gaps: Gaps;
}

const placeResults = (
	well: Well,
	path: KnownTable,
	thing: Neighbor | OffsetWell,
	{ north, key, at, gaps }: Context,
): PlaceResults => {
	const { id, name, latitude, longitude } = thing;
	const home = well.site.surface_location;
	const unplaced = (because: string) => {
		gaps.missing(`${key}.from_wellhead`, because, [at]);
		return { id, name };
	};
	if (home === undefined) return unplaced("The well's surface location is not given.");
	if (latitude === undefined || longitude === undefined)
		return unplaced(`The coordinates of ${name} are not given.`);
	const datum = thing.datum ?? home.datum;
	if (datum !== home.datum)
		return unplaced(`${name} is placed in ${datum} and the well in ${home.datum}; the two do not mix.`);
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
	return {
		north: N,
		east: E,
		from_path: distanceToPath.of({ path, N, E }),
		nearest: holeMark(path, nearestMeasuredDepth.of({ path, N, E }), well.datum),
	};
};

const TRUE_NORTH = constant("angle", 0, "azimuths are counted from true north", cite("definition"));

/** How far east of true north the path's north lies. Only wanted where there is something to place. */
const northOf = ({ site, neighbors, offsetWells }: Well, gaps: Gaps): Known<"angle"> | undefined => {
	if (neighbors.length + offsetWells.length === 0) return undefined;
	const { north } = site;
	if (north?.reference === "true") return TRUE_NORTH;
	const turn = north?.reference === "grid" ? north.convergence : north?.declination;
	if (north !== undefined && turn !== undefined) return turn;
	const [what, at] =
		north === undefined
			? ["The north that azimuths are counted from is not given.", "north"]
			: north.reference === "grid"
				? ["Grid convergence is not given.", "convergence"]
				: ["Magnetic declination is not given.", "declination"];
	return gaps.missing("site.from_path", `${what} Distances to the well path need it.`, [
		at === "north" ? ["site", "north"] : ["site", "north", at],
	]);
};
