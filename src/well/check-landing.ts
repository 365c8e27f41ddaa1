import type { Known } from "../cite/known.ts";
import type { Path } from "../diagnostics/path.ts";
import { placeOfDepth } from "./check-stages.ts";
import { type Desk, fault, placeOf, SAME_DEPTH } from "./desk.ts";
import type { Stimulation, Trajectory } from "./well.ts";

const AT: Path = ["stimulation", "stages"];

/**
 * Stages of a horizontal well lie in its lateral. By the plan only: once the hole is surveyed, where it was landed is for
 * the calculation to say.
 */
export const checkLanding = ({ stages }: Stimulation, { plan, survey }: Trajectory, desk: Desk): void => {
	if (plan?.kind !== "build-and-land" || survey !== undefined) return;
	// An angle that is no inclination is told of already.
	if (plan.landingInclination.value > 180) return;
	const landing = plan.kickoff.value + (100 * plan.landingInclination.value) / plan.build.value;
	const opening = (stage: (typeof stages)[number]): Known<"measured-depth"> =>
		stage.clusters.at(-1) ?? stage.top;
	const above = stages.filter((stage) => opening(stage).value < landing - SAME_DEPTH);
	const [first] = above;
	if (first === undefined) return;
	const last = above.at(-1);
	fault(desk, "well/stage-above-landing", placeOfDepth(opening(first), AT), {
		what: `${above.length === 1 ? `stage ${first.number} is` : `stages ${first.number} to ${last?.number} are`} opened above the landing of the planned path`,
		expected: `openings below ${Number(landing.toFixed(0))} ft, where the path is landed`,
		found: `${Number(opening(first).value.toFixed(1))} ft`,
		mend: "fewer or shorter stages, or correct the bottom of the first; leave it if it is meant",
		related: [{ at: placeOf(plan.kickoff, ["trajectory", "plan"]), label: "the planned path" }],
	});
};
