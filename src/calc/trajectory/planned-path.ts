import type { Known, KnownTable } from "../../cite/known.ts";
import { constant } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Checked, Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Path } from "../../diagnostics/path.ts";
import { message, type Said } from "../../messages/message.ts";
import { quantity } from "../../units/quantity.ts";
import { choiceOf, measured } from "../../well/said.ts";
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
				what: message("calc/impossible-plan.what"),
				expected: message("calc/impossible-plan.expected"),
				mend: message("calc/impossible-plan.mend"),
			},
		);
	return diagnose("calc/impossible-plan", at, {
		what: message("calc/impossible-plan.no-hole-follows-this-plan"),
		expected: message("calc/impossible-plan.kickoff-below-datum-build-above"),
		mend: message("calc/impossible-plan.check-kickoff-build-and-landing"),
	});
};

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
				what: message("calc/impossible-plan.build-zero-reaches-no-target"),
				expected: message("calc/impossible-plan.build-above-zero"),
				mend: message("calc/impossible-plan.state-build-rate"),
			},
		);
	if (!(Z > 0))
		return diagnose("calc/impossible-plan", at, {
			what: message("calc/impossible-plan.target-lies-no-deeper-than", {
				kickoff: measured("measured-depth", kickoff),
			}),
			expected: message("calc/impossible-plan.target-below-kickoff"),
			found: message("well/true-vertical-depth", { depth: measured("true-vertical-depth", target) }),
			mend: message("calc/impossible-plan.kick-off-higher"),
		});
	const R = quantity("length", radiusOfCurvature.compute({ B: plan.build.value }) as number);
	const needed = leastBuild.compute({ Z, X: X.value }) as number;
	const height = leastHeight.compute({ R, X: X.value }) as number;
	// Rounded to the safe side, so that what is offered does fit.
	const offered: Said[] = [
		message("calc/build-at-or-more", { ceil: measured("dogleg", Math.ceil(needed * 100) / 100) }),
	];
	const highest = Math.floor(target - height);
	if (highest >= 0)
		offered.push(message("calc/kick-off-at-or-higher", { highest: measured("measured-depth", highest) }));
	return diagnose("calc/impossible-plan", at, {
		what: message("calc/impossible-plan.arc-from-cannot-reach-target", {
			build: measured("dogleg", build),
			kickoff: measured("measured-depth", kickoff),
		}),
		expected: message("calc/impossible-plan.target-outside-arc-reached-at"),
		found: message("calc/impossible-plan.found", {
			message: message("well/true-vertical-depth", { depth: measured("true-vertical-depth", target) }),
			x: measured("measured-depth", X.value),
		}),
		mend: message("well/any-of", { choices: choiceOf(offered) }),
	});
};
