import type { Known } from "../../cite/known.ts";
import { message } from "../../messages/message.ts";
import { columnPressure, DATUM_DEPTH } from "../pressure/hydrostatic.ts";
import { tvdAt } from "../trajectory/at-depth.ts";
import type { StageContext } from "./stage-results.ts";
import { surfaceOpeningPressure } from "./treating-pressure.ts";

const VALVE = "initiation valve";
const AT = ["stimulation", "toe"] as const;

/**
 * What must be read at the surface to open the initiation valve, under a column of base fluid where it is rated at its
 * own depth. A well that is plugged and perforated and does not say how its first stage is opened has a gap.
 */
export const toeOpening = ({ stimulation, path, gaps }: StageContext): Known<"pressure"> | undefined => {
	const { toe, method, baseFluid } = stimulation;
	if (toe === undefined)
		return method === "plug and perforate"
			? gaps.missing("stimulation.toe", message("calc/how-first-stage-is-opened-is"), [AT])
			: undefined;
	if (toe.kind !== VALVE) return undefined;
	if (toe.opensAt === undefined)
		return gaps.missing(
			"stimulation.toe_opens_at_surface",
			message("calc/initiation-valve-has-no-opening-pressure"),
			[[...AT, "opens_at"]],
		);
	return toe.opensAtMeasured === "valve"
		? surfaceOpeningPressure.of({
				P_v: toe.opensAt,
				P_h: columnPressure.of({
					ρ: baseFluid.density,
					D_top: DATUM_DEPTH,
					D_bottom: tvdAt(path, toe.depth),
				}),
			})
		: toe.opensAt;
};
