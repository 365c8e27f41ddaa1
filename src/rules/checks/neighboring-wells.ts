import { message } from "../../messages/message.ts";
import { type Case, missingAt } from "../case.ts";
import { offsetOf, pathMissing } from "../measures/neighboring-wells.ts";
import { fractureNeeds } from "../measures/treatment.ts";
import { cannotTell, met, needsJudgement, notMet, type Outcome } from "../outcome.ts";
import type { Reason } from "../reason.ts";
import type { Check } from "./check.ts";

/** Whether the fractures may reach another hole, and what shows that it is shut off beside them. */
const besideFractures = (the: Case): Outcome => {
	const { entry, found, at } = offsetOf(the);
	const { name } = entry;
	const path = pathMissing(the);
	if (path !== undefined) return cannotTell([path]);
	const { above_fractures: above, fracture_reach: reach, treated_in_plan: plan } = found ?? {};
	if (above === undefined || reach === undefined || plan === undefined) return cannotTell(fractureNeeds(the));
	if (above.value > 0) {
		const where: Reason = [message("rules/ends-above-highest-modeled-top-fractures", { name, above })];
		if (plan.value > reach.value)
			return met(
				message("rules/and-is-from-treated-interval-horizontally", { where: { parts: where }, plan }),
			);
		if (entry.barriers !== undefined || entry.evidence !== undefined)
			return met(
				message("rules/its-condition-rests-on", {
					where: { parts: where },
					evidence: entry.evidence ?? entry.barriers?.[0]?.shown_by ?? "",
				}),
			);
		return needsJudgement(
			message("rules/and-is-from-treated-interval-horizontally-within", {
				where: { parts: where },
				plan,
				reach,
			}),
		);
	}
	const {
		treated_in_plan_at_depth: near,
		clear_of_fractures: clear,
		shut_off_beside_fractures: shut,
	} = found ?? {};
	if (near === undefined || clear === undefined)
		return cannotTell([missingAt(message("rules/path-2", { name }), ...at, "path")]);
	const where: Reason = [message("rules/goes-as-deep-as-fractures-from-treated", { name, near, reach })];
	if (clear.value >= 0) return met(...where, ".");
	if (shut === true)
		return met(
			message("rules/and-it-is-shut-off-there-by", {
				where: { parts: where },
				barriers: (entry.barriers ?? []).map(({ what }) => what).join(", "),
			}),
		);
	return notMet(message("rules/and-nothing-shows-that-it-is-shut", { where: { parts: where } }));
};

export const neighboringWellChecks = {
	"separation-factor": {
		title: "Separation from another well",
		looksAt: "least separation factor along this well to each other well",
		explain:
			"The factor is the distance between the two holes, less their radii and a margin, over a number of standard deviations of both places, as the source of the formula says. Below " +
			"the lesser limit no hole goes on; between the two limits an engineer confirms. Without the path of the other well, or how well it is known, " +
			"the check cannot tell.",
	},
	"fracture-reach": {
		title: "Other wells within reach of the fractures",
		looksAt:
			"each other well that goes as deep as the fractures may rise, and what shows that it is shut off there",
		explain:
			"An old hole that the fractures reach is the way past every bed of rock. Reach is the longest half-length of the simple models plus the " +
			"uncertainties of both places, judged on the map because fractures stand upright. A hole within it needs barriers shown from the highest " +
			"modeled top to the lowest bottom.",
		forms: { "evidence beside": besideFractures },
	},
	"survey-radius": {
		title: "Survey uncertainty stated",
		looksAt:
			"radius stated for the end of the hole, against the long half axis of the ellipse by the survey tool's error model",
		explain:
			"The committee's model for a magnetic tool on a fixed rig, without corrections for interference or sag and with the local field as stated. A tool that is corrected has a smaller ellipse than the model here gives.",
	},
	"survey-interval": {
		title: "Survey interval",
		looksAt: "longest interval between stations of the build and the lateral",
		explain:
			"Between stations the hole is taken as one arc, so that its place is only as good as the interval is short. The piece from the last station " +
			"to the end of the hole is a projection and is not counted.",
	},
} as const satisfies Readonly<Record<string, Check>>;
