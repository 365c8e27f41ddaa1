import { tableFormula } from "../../cite/formula.ts";
import { constant, type Known, type KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { message } from "../../messages/message.ts";
import type { Well } from "../../well/well.ts";
import { type Gaps, maybe } from "../gaps.ts";
import type { SurveyErrorResults } from "../results.ts";
import { placeAt } from "./at-depth.ts";
import { northOfTrue, turnBetweenNorths } from "./north.ts";
import { pathStationsOf } from "./path.ts";
import {
	ellipseAzimuth,
	ellipseMajor,
	ellipseMinor,
	planarFactor,
	radiusAtConfidence,
	surveyCovariance,
	verticalSigma,
} from "./survey-error.ts";

/** A plan is taken to be surveyed at least so often [ft]. */
const EVERY = 100;

/** A plan's stations, and between them those that a survey of it would have. */
export const plannedSurvey = tableFormula({
	id: "trajectory/planned-survey",
	name: "Stations that the plan will be surveyed at",
	expression: "the plan's own stations, and between them at most 100 ft apart",
	source: cite("common-practice"),
	inputs: { path: { table: "path" } },
	gives: {
		md: "measured-depth",
		inclination: "angle",
		azimuth: "angle",
		tvd: "true-vertical-depth",
		north: "offset",
		east: "offset",
	},
	compute: ({ path }) => {
		const stations = pathStationsOf(path);
		const depths = stations.flatMap(({ md }, i) => {
			const next = stations[i + 1]?.md ?? md;
			const pieces = Math.max(1, Math.ceil((next - md) / EVERY - 1e-9));
			return Array.from({ length: pieces }, (_, k) => md + (k * (next - md)) / pieces);
		});
		return depths.flatMap((md) => {
			const place = placeAt(stations, md);
			if (place === undefined) return [];
			const { inclination, azimuth, tvd, north, east } = place;
			return [{ md, inclination, azimuth, tvd, north, east }];
		});
	},
});

const TRUE_NORTH = constant("angle", 0, "true north", cite("definition"));
/** Of a radius stated without one, and of none stated. */
const CONFIDENCE = constant("share", 0.95, "confidence of the ellipse", cite("common-practice"));

/** Where the hole is by what its survey tool errs by; nothing where no tool is stated. */
export const surveyErrorOf = (well: Well, path: KnownTable, gaps: Gaps): SurveyErrorResults | undefined => {
	const { errorModel: model, uncertainty, survey } = well.trajectory;
	if (model === undefined) return undefined;
	const { north } = well.site;
	const missing = (key: "reference" | "convergence" | "declination"): undefined =>
		gaps.missing("trajectory.survey_error", message("calc/norths-for-survey-error"), [
			["site", "north", key],
		]);
	if (north?.reference === undefined) return missing("reference");
	const δ = north.declination;
	if (δ === undefined) return missing("declination");
	const own = northOfTrue(north.reference, well.site);
	if (own === undefined) return missing(north.reference === "grid" ? "convergence" : "declination");
	const turn = turnBetweenNorths.of({ δ_from: own, δ_to: TRUE_NORTH });
	const covariance = surveyCovariance.of({
		path: survey === undefined ? plannedSurvey.of({ path }) : path,
		model: model.table,
		B: model.field,
		Θ: model.dip,
		δ,
		turn,
	});
	if (covariance.rows.length === 0) return undefined;
	const confidence: Known<"share"> = uncertainty?.confidence ?? CONFIDENCE;
	const k = planarFactor.of({ p: confidence });
	const major = ellipseMajor.of({ covariance });
	return {
		covariance,
		turn,
		confidence,
		semi_major: radiusAtConfidence.of({ k, a: major }),
		semi_minor: radiusAtConfidence.of({ k, a: ellipseMinor.of({ covariance }) }),
		major_azimuth: ellipseAzimuth.of({ covariance }),
		vertical_sigma: verticalSigma.of({ covariance }),
		...maybe("stated", uncertainty?.radius),
	};
};
