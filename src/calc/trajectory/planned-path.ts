import type { Known, KnownTable } from "../../cite/known.ts";
import { constant } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Checked, Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Path } from "../../diagnostics/path.ts";
import { quantity } from "../../units/quantity.ts";
import type { TrajectoryPlan } from "../../well/well.ts";
import { leastBuild, leastHeight, radiusOfCurvature } from "./plan-geometry.ts";
import {
	buildAndHoldStations,
	buildAndLandStations,
	segmentStations,
	verticalStations,
} from "./planned-stations.ts";

const PLAN: Path = ["trajectory", "plan"];

/** The stations of a plan, or why there is no such hole and what would fit. */
export const plannedStations = (
	plan: TrajectoryPlan,
): Checked<KnownTable<"md" | "inclination" | "azimuth">> => {
	const stations = stationsOfPlan(plan);
	if (stations.rows.length > 0) return { value: stations, diagnostics: [] };
	return { diagnostics: [whyImpossible(plan)] };
};

const stationsOfPlan = (plan: TrajectoryPlan): KnownTable<"md" | "inclination" | "azimuth"> => {
	switch (plan.kind) {
		case "vertical":
			return verticalStations.of({ TD: plan.to });
		case "build-and-land":
			return buildAndLandStations.of({
				KOP: plan.kickoff,
				B: plan.build,
				A: plan.azimuth,
				I_L: plan.landingInclination,
				L: plan.lateral,
			});
		case "build-and-hold":
			return buildAndHoldStations.of({
				KOP: plan.kickoff,
				B: plan.build,
				A: plan.azimuth,
				TVD: plan.target.tvd,
				X: plan.target.departure,
			});
		case "segments":
			return segmentStations.of({
				L: plan.segments.map((s) => s.length),
				I: plan.segments.map((s) => s.inclination),
				A: plan.segments.map((s) => s.azimuth),
			});
	}
};

/** The direction a plan makes for, which its vertical section is drawn in unless another is stated. */
export const planAzimuth = (plan: TrajectoryPlan): Known<"angle"> => {
	if (plan.kind === "vertical") return constant("angle", 0, "north, of a vertical hole", cite("definition"));
	if (plan.kind !== "segments") return plan.azimuth;
	return plan.segments.at(-1)?.azimuth ?? constant("angle", 0, "north", cite("definition"));
};

const whyImpossible = (plan: TrajectoryPlan): Diagnostic => {
	const at = { path: PLAN };
	if (plan.kind === "build-and-hold") return whyNotHeld(plan);
	if (plan.kind === "segments")
		return diagnose(
			"calc/impossible-plan",
			{ path: [...PLAN, "segments"] },
			{
				what: "no hole follows these segments: one has no length, or turns right back on the one before",
				expected: "lengths above zero, and less than a half turn in each segment",
				mend: "split the turn over several segments",
			},
		);
	return diagnose("calc/impossible-plan", at, {
		what: "no hole follows this plan",
		expected:
			"a kickoff below the datum, a build above zero, and a landing inclination between 0 and 180 degrees",
		mend: "check the kickoff, the build and the landing inclination",
	});
};

const written = (value: number, decimals: number, unit: string): string =>
	`${value.toFixed(decimals)} ${unit}`;

const whyNotHeld = (plan: Extract<TrajectoryPlan, { kind: "build-and-hold" }>): Diagnostic => {
	const [kickoff, build] = [plan.kickoff.value, plan.build.value];
	const [target, X] = [plan.target.tvd.value, plan.target.departure];
	const Z = quantity("offset", target - kickoff);
	const at = { path: [...PLAN, "target"] };
	if (!(build > 0))
		return diagnose(
			"calc/impossible-plan",
			{ path: [...PLAN, "build"] },
			{
				what: "a build of zero reaches no target to the side",
				expected: "a build above zero",
				mend: "state the build rate",
			},
		);
	if (!(Z > 0))
		return diagnose("calc/impossible-plan", at, {
			what: `the target lies no deeper than the kickoff, ${written(kickoff, 0, "ft")}`,
			expected: "a target below the kickoff",
			found: written(target, 0, "ft TVD"),
			mend: "kick off higher",
		});
	const R = quantity("length", radiusOfCurvature.compute({ B: plan.build.value }) as number);
	const needed = leastBuild.compute({ Z, X: X.value }) as number;
	const height = leastHeight.compute({ R, X: X.value }) as number;
	// Rounded to the safe side, so that what is offered does fit.
	const offered = [`build at ${written(Math.ceil(needed * 100) / 100, 2, "deg/100 ft")} or more`];
	const highest = Math.floor(target - height);
	if (highest >= 0) offered.push(`kick off at ${written(highest, 0, "ft")} or higher`);
	return diagnose("calc/impossible-plan", at, {
		what: `an arc of ${written(build, 2, "deg/100 ft")} from ${written(kickoff, 0, "ft")} cannot reach the target before it is level`,
		expected: "a target outside the arc, reached at 90 degrees or less",
		found: `${written(target, 0, "ft TVD")}, ${written(X.value, 0, "ft")} away`,
		mend: offered.join(", or "),
	});
};
