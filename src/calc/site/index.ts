/**
 * How near things are.
 *
 * takes  coordinates in one datum, the path in plan and the north that it is counted from
 * gives  horizontal distances from the wellhead and from the well path; the places of the path on the map; the paths of
 *        other wells, and the separation factor to them
 * may not convert between datums, or stand before a surveyed distance
 */
import type { AnyFormula } from "../../cite/formula.ts";
import { formulasIn } from "../formulas-in.ts";
import * as distance from "./distance.ts";
import * as lines from "./lines.ts";
import * as localPlane from "./local-plane.ts";
import * as offsetPath from "./offset-path.ts";
import * as placeOfStation from "./place-of-station.ts";
import * as separationFactor from "./separation-factor.ts";
import * as wellsOfPad from "./wells-of-pad.ts";

export { siteResults } from "./site-results.ts";
export { amongPad, type PadWell, padWell } from "./wells-of-pad.ts";

export const siteFormulas: readonly AnyFormula[] = formulasIn(
	distance,
	localPlane,
	lines,
	placeOfStation,
	offsetPath,
	separationFactor,
	wellsOfPad,
);
