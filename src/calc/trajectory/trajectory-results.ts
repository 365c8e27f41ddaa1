import { constant, type Known, type KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Checked, Diagnostic } from "../../diagnostics/diagnostic.ts";
import { message, type Said } from "../../messages/message.ts";
import { measured } from "../../well/said.ts";
import type { TrajectoryPlan, Well } from "../../well/well.ts";
import { intervalLength } from "../cement/capacity.ts";
import { holeMark } from "../depths/marks.ts";
import { maybe } from "../gaps.ts";
import type { TrajectoryResults, WellPath } from "../results.ts";
import { eastAtMd, northAtMd } from "./at-depth.ts";
import { curveResults } from "./curve.ts";
import { closure, closureAzimuth } from "./horizontal.ts";
import { minimumCurvaturePath, stationsOf } from "./path.ts";
import {
	kickoffOnPath,
	landingOnPath,
	longestInterval,
	maximumDogleg,
	maximumInclination,
	pathEnd,
} from "./path-summary.ts";
import { landingDepth } from "./plan-geometry.ts";
import { planAzimuth, plannedStations } from "./planned-path.ts";
import { sectionFromOrigin } from "./section-origin.ts";
import { outOfTheGround, surveyedStations, unknownStart, unusable } from "./survey.ts";

type Stations = KnownTable<"md" | "inclination" | "azimuth">;

/** A hole carried further than this past its last station is worth a warning [ft]. */
const LONG_EXTENSION = 200;
/** A hole that ends at this inclination or above has landed [°]. */
const LATERAL = 80;

/**
 * The well's path, surveyed where there is a survey, else planned, and what is read from it.
 *
 * Impossible plans and unusable surveys are errors: without a path nothing else can be calculated.
 */
export const trajectoryResults = (well: Well): Checked<TrajectoryResults> => {
	const { plan, survey } = well.trajectory;
	const planned = plan === undefined ? undefined : plannedStations(plan);
	const diagnostics: Diagnostic[] = [...(planned?.diagnostics ?? [])];
	const surveyed = survey && surveyedStations(well, survey);
	if (surveyed !== undefined && "code" in surveyed) return { diagnostics: [...diagnostics, surveyed] };
	const stations = surveyed ?? planned?.value;
	if (stations === undefined) return { diagnostics };
	if (survey !== undefined) diagnostics.push(...unusable(survey.stations), ...unknownStart(survey.stations));
	const to = totalDepthOf(well, stations);
	const Avs = sectionAzimuth(well, stations, to);
	const path = sectioned(well, minimumCurvaturePath.of({ stations, TD: to, Avs }), Avs);
	if (path.rows.length === 0) return { diagnostics };
	const out = outOfTheGround(path, stations, surveyed !== undefined);
	if (out.length > 0) return { diagnostics: [...diagnostics, ...out] };
	diagnostics.push(...extended(stations, to, survey !== undefined));
	const plannedPath =
		survey === undefined || planned?.value === undefined
			? undefined
			: sectioned(
					well,
					minimumCurvaturePath.of({ stations: planned.value, TD: pathEnd.of({ path: planned.value }), Avs }),
					Avs,
				);
	const last = pathEnd.of({ path: stations });
	return {
		value: {
			...summary(well, path, to, Avs, plannedPath),
			...maybe("last_station", last.value < to.value ? holeMark(path, last, well.datum) : undefined),
		},
		diagnostics,
	};
};

const summary = (
	well: Well,
	path: WellPath,
	to: Known<"measured-depth">,
	Avs: Known<"angle">,
	plannedPath: WellPath | undefined,
): TrajectoryResults => {
	const surveyed = well.trajectory.survey !== undefined;
	const [N, E] = [northAtMd.of({ path, MD: to }), eastAtMd.of({ path, MD: to })];
	const mark = (md: Known<"measured-depth"> | undefined) =>
		md === undefined || !Number.isFinite(md.value) ? undefined : holeMark(path, md, well.datum);
	const kickoff = mark(kickoffOf(well.trajectory.plan, path));
	const landing = mark(landingOf(well.trajectory.plan, surveyed, path));
	return {
		basis: surveyed ? "surveyed" : "planned",
		path,
		...maybe("planned", plannedPath),
		vertical_section_azimuth: Avs,
		total_depth: holeMark(path, to, well.datum),
		...maybe("kickoff", kickoff),
		...maybe("landing", landing),
		...maybe("curve", curveResults(path, kickoff, landing)),
		...maybe("lateral_length", landing && intervalLength.of({ MD_top: landing.md, MD_bottom: to })),
		maximum_dogleg: maximumDogleg.of({ path }),
		maximum_inclination: maximumInclination.of({ path }),
		closure: closure.of({ N, E }),
		closure_azimuth: closureAzimuth.of({ N, E }),
		...maybe("longest_interval", surveyed ? finite(longestInterval.of({ path })) : undefined),
		...maybe("uncertainty_radius", well.trajectory.uncertainty?.radius),
	};
};

const finite = <K extends { readonly value: number }>(known: K): K | undefined =>
	Number.isFinite(known.value) ? known : undefined;

/** The vertical section counted from its stated origin, or from the wellhead. */
const sectioned = ({ trajectory }: Well, path: WellPath, Avs: Known<"angle">): WellPath => {
	const { verticalSectionOrigin: origin } = trajectory;
	return origin === undefined
		? path
		: sectionFromOrigin.of({ path, N_0: origin.north, E_0: origin.east, Avs });
};

/** The deepest hole; a well without holes ends where its stations do. */
const totalDepthOf = (well: Well, stations: Stations): Known<"measured-depth"> => {
	const bottoms = well.holes.map((hole) => hole.bottom);
	const [first, ...rest] = bottoms;
	if (first === undefined) return pathEnd.of({ path: stations });
	return rest.reduce((deepest, bottom) => (bottom.value > deepest.value ? bottom : deepest), first);
};

const sectionAzimuth = (well: Well, stations: Stations, TD: Known<"measured-depth">): Known<"angle"> => {
	const { verticalSectionAzimuth, plan } = well.trajectory;
	if (verticalSectionAzimuth !== undefined) return verticalSectionAzimuth;
	if (plan !== undefined) return planAzimuth(plan);
	const north = constant("angle", 0, "north, until the closure is known", cite("definition"));
	const path = minimumCurvaturePath.of({ stations, TD, Avs: north });
	const azimuth = closureAzimuth.of({
		N: northAtMd.of({ path, MD: TD }),
		E: eastAtMd.of({ path, MD: TD }),
	});
	return Number.isFinite(azimuth.value) ? azimuth : north;
};

const kickoffOf = (plan: TrajectoryPlan | undefined, path: WellPath): Known<"measured-depth"> | undefined => {
	if (plan === undefined || plan.kind === "vertical") return undefined;
	return plan.kind === "segments" ? kickoffOnPath.of({ path }) : plan.kickoff;
};

const landingOf = (
	plan: TrajectoryPlan | undefined,
	surveyed: boolean,
	path: WellPath,
): Known<"measured-depth"> | undefined => {
	const inclination = landingInclination(plan);
	if (plan === undefined || inclination === undefined) return undefined;
	if (!surveyed && plan.kind === "build-and-land")
		return landingDepth.of({ KOP: plan.kickoff, I_L: inclination, B: plan.build });
	const margin = surveyed
		? constant("angle", 2, "a surveyed hole has landed within 2°", cite("common-practice"))
		: constant("angle", 0, "a planned hole lands at its inclination", cite("definition"));
	return landingOnPath.of({ path, I_L: inclination, margin });
};

const landingInclination = (plan: TrajectoryPlan | undefined): Known<"angle"> | undefined => {
	if (plan?.kind === "build-and-land") return plan.landingInclination;
	if (plan?.kind !== "segments") return undefined;
	const last = plan.segments.at(-1)?.inclination;
	return last !== undefined && last.value >= LATERAL ? last : undefined;
};

const extended = (
	stations: Stations,
	to: Known<"measured-depth">,
	surveyed: boolean,
): readonly Diagnostic[] => {
	const last = stationsOf(stations).at(-1)?.md ?? 0;
	if (to.value - last <= LONG_EXTENSION) return [];
	const of: Said = message(surveyed ? "calc/the-survey" : "calc/the-plan");
	const reached = measured("measured-depth", last);
	return [
		diagnose(
			"calc/past-the-path",
			{ path: to.from.kind === "definition" ? to.from.at : ["holes"] },
			{
				what: message("calc/past-the-path.what", { to: measured("length", to.value - last), ofWord: of }),
				expected: message("calc/past-the-path.expected", { ofWord: of }),
				found: message("calc/past-the-path.found", { reached, to: measured("measured-depth", to.value) }),
				why: message("calc/past-the-path.why"),
				mend: message("calc/past-the-path.mend", { ofWord: of }),
			},
		),
	];
};
