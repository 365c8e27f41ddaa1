import type { Known } from "../cite/known.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { placeOfDepth } from "./check-stages.ts";
import { type Desk, fault, placeOf, SAME_DEPTH } from "./desk.ts";
import { measured } from "./said.ts";
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
		what:
			above.length === 1
				? message("well/stage-above-landing.what", { number: String(first.number) })
				: message("well/stage-above-landing.stages-to-are-opened-above", {
						number: String(first.number),
						number2: String(last?.number),
					}),
		expected: message("well/stage-above-landing.expected", {
			landing: measured("measured-depth", landing, opening(first).value),
		}),
		found: measured("measured-depth", opening(first).value, landing),
		mend: message("well/stage-above-landing.mend"),
		related: [
			{ at: placeOf(plan.kickoff, ["trajectory", "plan"]), label: message("well/stage-above-landing.label") },
		],
	});
};
