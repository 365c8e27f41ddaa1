import type { Known } from "../../cite/known.ts";
import { message } from "../../messages/message.ts";
import type { StimulationResults } from "../results.ts";
import { tvdAt } from "../trajectory/at-depth.ts";
import { fractureHeight, heightGrowth, payHeight } from "./fracture-height.ts";
import type { StageContext } from "./stage-results.ts";

/**
 * Height of a fracture in the treated formation between like barriers: an illustration, and so silent where the model
 * has nothing to go by, but a gap where its net pressure leaves it without a bound.
 */
export const illustrativeHeight = (
	{ well, stimulation, path, gaps }: StageContext,
	top: Known<"measured-depth">,
): StimulationResults["illustrative_height"] => {
	const tvd = tvdAt(path, top).value;
	const formation = well.geology.formations.findLast((f) => f.top.value <= tvd);
	const net = stimulation.pressureModel?.net;
	const contrast = formation?.mechanical?.stressContrast;
	if (formation?.base === undefined || net === undefined || contrast === undefined) return undefined;
	const pay = payHeight.of({ TVD_top: formation.top, TVD_base: formation.base });
	const height = gaps.finite(
		"stimulation.illustrative_height",
		fractureHeight.of({ h_pay: pay, p_net: net, Δσ: contrast }),
		message("calc/net-pressure-reaches-stress-contrast-this"),
		[["stimulation", "pressure_model", "net"]],
	);
	return (
		height && {
			formation: formation.name,
			pay,
			height,
			growth_above: heightGrowth.of({ h: height, h_pay: pay }),
		}
	);
};
