import type { Known } from "../../cite/known.ts";
import type { Stage, Stimulation } from "../../well/well.ts";
import { maybe } from "../gaps.ts";
import type { StageAsPumped, StageResults } from "../results.ts";
import {
	massByPlan,
	massOfPlan,
	massOverPlan,
	slurryPumped,
	volumeOfPlan,
	volumeOverPlan,
} from "./pumped.ts";
import { pumpingTime, totalMass } from "./slurry.ts";

type Worked = Pick<StageResults, "steps" | "clean_volume" | "proppant_mass">;

/**
 * What the record of a stage comes to, beside its plan. A quantity that the record leaves out is absent, and nothing is
 * put in its place.
 */
export const asPumped = (
	{ proppants }: Pick<Stimulation, "proppants">,
	{ actual }: Stage,
	planned: Worked,
): StageAsPumped | undefined => {
	if (actual === undefined) return undefined;
	const { cleanVolume, proppantMass, averageRate } = actual;
	const placed = proppantMass && proppantMass.value > 0 ? byKind(proppants, planned, proppantMass) : [];
	const slurry =
		cleanVolume &&
		proppantMass &&
		slurryPumped.of({
			V_c: cleanVolume,
			m_i: placed.map(({ mass }) => mass),
			SG_i: placed.map(({ gravity }) => gravity),
		});
	const { clean_volume: V_p, proppant_mass: m_p } = planned;
	return {
		...maybe("clean_volume", cleanVolume),
		...maybe("proppant_mass", proppantMass),
		proppant_by_type: placed.map(({ id, mass }) => ({ id, mass })),
		...maybe("slurry_volume", slurry),
		...maybe("pumping_time", slurry && averageRate && pumpingTime.of({ V_s: slurry, Q: averageRate })),
		...maybe("clean_difference", cleanVolume && volumeOverPlan.of({ V: cleanVolume, V_p })),
		...maybe(
			"clean_of_plan",
			cleanVolume && V_p.value > 0 ? volumeOfPlan.of({ V: cleanVolume, V_p }) : undefined,
		),
		...maybe("proppant_difference", proppantMass && massOverPlan.of({ m: proppantMass, m_p })),
		...maybe(
			"proppant_of_plan",
			proppantMass && m_p.value > 0 ? massOfPlan.of({ m: proppantMass, m_p }) : undefined,
		),
	};
};

/** One mass a stage, divided between the kinds as the plan of the stage divides them. */
const byKind = (proppants: Stimulation["proppants"], planned: Worked, M: Known<"mass">) =>
	proppants.flatMap(({ id, specificGravity: gravity }) => {
		const m_i = planned.steps.filter((s) => s.proppant === id).map((s) => s.proppant_mass);
		if (m_i.length === 0) return [];
		return [
			{ id, gravity, mass: massByPlan.of({ M, m_p: totalMass.of({ m_i }), M_p: planned.proppant_mass }) },
		];
	});
