import { formula } from "../../cite/formula.ts";
import { constant, type Known, type KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { OffsetWell } from "../../definition/definition.ts";
import { message } from "../../messages/message.ts";
import type { OffsetPath, Well } from "../../well/well.ts";
import type { Gaps } from "../gaps.ts";
import type { OffsetPlaceResults, PlaceResults } from "../results.ts";
import { approachInPlan, movedPath, straightPath } from "../trajectory/approach.ts";
import { northOfTrue, turnBetweenNorths, turnedStations } from "../trajectory/north.ts";
import { minimumCurvaturePath } from "../trajectory/path.ts";
import { pathEnd } from "../trajectory/path-summary.ts";
import { GEODESICS } from "./distance.ts";
import { azimuthFromPathNorth, eastOfWellhead, northOfWellhead } from "./local-plane.ts";

/** What takes a depth from another well's datum to this well's [ft]. */
export const datumShift = formula({
	id: "site/datum-shift",
	name: "This depth datum above the other well's",
	expression: "ΔE_d = E_g + h − E_d",
	source: cite("definition", "both elevations above one sea level"),
	inputs: { E_g: "elevation", h: "length", E_d: "elevation" },
	gives: "offset",
	compute: ({ E_g, h, E_d }) => E_g + h - E_d,
});

const NO_SHIFT = constant(
	"offset",
	0,
	"depth datum of the other well taken at this one's",
	cite("definition"),
);
const ANY_SECTION = constant("angle", 0, "the vertical section is not used", cite("definition"));

/** A well's place with the path of its hole from this wellhead, where the definition says where it goes. */
export const withPath = (
	well: Well,
	own: KnownTable,
	entry: OffsetWell,
	place: PlaceResults,
	north: Known<"angle"> | undefined,
	gaps: Gaps,
): OffsetPlaceResults => {
	const given = well.offsetPaths.paths.find(({ id }) => id === entry.id);
	const at = ["site", "offset_wells", well.offsetWells.indexOf(entry), "path"] as const;
	const key = `site.offset_wells.${entry.id}.path`;
	if (given === undefined) {
		gaps.missing(key, message("calc/path-is-not-given-its-distance", { entry: entry.name }), [at]);
		return place;
	}
	if (place.north === undefined || place.east === undefined || north === undefined) return place;
	const { depth_datum_elevation: E_d } = entry;
	const ΔE_d =
		E_d === undefined
			? NO_SHIFT
			: datumShift.of({ E_g: well.datum.groundElevation, h: well.datum.aboveGround, E_d });
	const path = pathOf(well, entry, given, { N_w: place.north, E_w: place.east, ΔE_d }, north);
	if (path === undefined || path.rows.length === 0) {
		gaps.missing(key, message("calc/path-cannot-be-worked-out-its", { entry: entry.name }), [
			at,
			["site", "north"],
		]);
		return place;
	}
	const { nearest: _ofItsWellhead, ...rest } = place;
	return {
		...rest,
		from_path: approachInPlan.of({ path: own, other: path }),
		path,
		path_given_by: given.kind,
	};
};

interface Shift {
	readonly N_w: Known<"offset">;
	readonly E_w: Known<"offset">;
	readonly ΔE_d: Known<"offset">;
}

const pathOf = (
	well: Well,
	entry: OffsetWell,
	given: OffsetPath,
	shift: Shift,
	north: Known<"angle">,
): KnownTable | undefined => {
	const { N_w, E_w } = shift;
	switch (given.kind) {
		case "vertical":
			return straightPath.of({ ...shift, N_b: N_w, E_b: E_w, TVD_b: given.depth });
		case "bottom hole": {
			const bottom = bottomOf(well, entry, given, north);
			return bottom && straightPath.of({ ...shift, ...bottom, TVD_b: given.depth });
		}
		case "surveyed": {
			const stations = stationsFrom(well, given, north);
			if (stations === undefined) return undefined;
			const path = minimumCurvaturePath.of({
				stations,
				TD: pathEnd.of({ path: stations }),
				Avs: ANY_SECTION,
			});
			return movedPath.of({ path, ...shift });
		}
	}
};

/** Where the bottom of the other hole lies from this wellhead, in the north of this well's path. */
const bottomOf = (
	{ site }: Well,
	entry: OffsetWell,
	{ latitude, longitude }: Extract<OffsetPath, { kind: "bottom hole" }>,
	γ: Known<"angle">,
) => {
	const home = site.surface_location;
	if (home === undefined) return undefined;
	const on = GEODESICS[entry.datum ?? home.datum];
	const ends = { φ_1: home.latitude, λ_1: home.longitude, φ_2: latitude, λ_2: longitude };
	const s = on.distance.of(ends);
	const A = azimuthFromPathNorth.of({ A_true: on.azimuth.of(ends), γ });
	return { N_b: northOfWellhead.of({ s, A }), E_b: eastOfWellhead.of({ s, A }) };
};

/** The other survey's stations, counted from this well's north; nothing where the turn between the two is not known. */
const stationsFrom = (
	{ site }: Well,
	{ stations, north }: Extract<OffsetPath, { kind: "surveyed" }>,
	own: Known<"angle">,
): KnownTable | undefined => {
	if (north === undefined || north === site.north?.reference) return stations;
	const theirs = northOfTrue(north, site);
	return theirs && turnedStations.of({ stations, turn: turnBetweenNorths.of({ δ_from: theirs, δ_to: own }) });
};
