/**
 * The hole in space.
 *
 * takes  a plan's arcs and straights, or surveyed stations
 * gives  the path as a table, and where the hole is at any depth
 * may not judge a plan against a rule, or know what stands in the hole
 */
import type { AnyFormula } from "../../cite/formula.ts";
import { formulasIn } from "../formulas-in.ts";
import * as approach from "./approach.ts";
import * as atDepth from "./at-depth.ts";
import * as curve from "./curve.ts";
import * as dogleg from "./dogleg.ts";
import * as horizontal from "./horizontal.ts";
import * as mdAtTvd from "./md-at-tvd.ts";
import * as minimumCurvature from "./minimum-curvature.ts";
import * as north from "./north.ts";
import * as path from "./path.ts";
import * as pathSummary from "./path-summary.ts";
import * as planGeometry from "./plan-geometry.ts";
import * as plannedStations from "./planned-stations.ts";
import * as sectionOrigin from "./section-origin.ts";
import * as surveyError from "./survey-error.ts";
import * as surveyErrorResults from "./survey-error-results.ts";

export { azimuthAt, inclinationAt, placeAt, tvdAt } from "./at-depth.ts";
export { mdAtTvd } from "./md-at-tvd.ts";
export { northOfTrue, turnOf } from "./north.ts";
export { pathStationsOf } from "./path.ts";
export { surveyErrorOf } from "./survey-error-results.ts";
export { trajectoryResults } from "./trajectory-results.ts";

export const trajectoryFormulas: readonly AnyFormula[] = formulasIn(
	approach,
	dogleg,
	minimumCurvature,
	horizontal,
	path,
	pathSummary,
	planGeometry,
	plannedStations,
	atDepth,
	mdAtTvd,
	north,
	sectionOrigin,
	surveyError,
	surveyErrorResults,
	curve,
);
