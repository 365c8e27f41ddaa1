import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { Stimulation } from "../../well/well.ts";
import { maybe } from "../gaps.ts";
import type { StageResults, TreatmentAsPumped } from "../results.ts";
import { greatestRecorded, massOfPlan, massOverPlan, volumeOfPlan, volumeOverPlan } from "./pumped.ts";
import { countOf } from "./slurry.ts";
import { averagesOf, type TreatmentVolumes } from "./treatment-volumes.ts";

/** The treatment as recorded beside the treatment as planned; nothing before a stage has its record. */
export const treatmentAsPumped = (
	{ stages: written }: Stimulation,
	stages: readonly StageResults[],
	pumped: TreatmentVolumes,
	planned: TreatmentVolumes & { readonly count: Known<"count">; readonly length: Known<"length"> },
): TreatmentAsPumped | undefined => {
	const records = stages.flatMap(({ number, as_pumped: record }) =>
		record === undefined ? [] : [{ number, record }],
	);
	if (records.length === 0) return undefined;
	const pressures = written.flatMap(({ number, actual }) =>
		actual?.maximumPressure === undefined ? [] : [{ number, p: actual.maximumPressure }],
	);
	const highest =
		pressures.length === 0 ? undefined : greatestRecorded.of({ p_i: pressures.map(({ p }) => p) });
	const { clean_volume: V, proppant_mass: m } = pumped;
	const { clean_volume: V_p, proppant_mass: m_p, count, length } = planned;
	return {
		stages_recorded: countOf.of({
			number: records.map(({ number }) =>
				constant("count", number, "number of the stage", cite("definition")),
			),
		}),
		complete:
			records.length === stages.length &&
			records.every(
				({ record: { clean_volume, proppant_mass } }) =>
					clean_volume !== undefined && proppant_mass !== undefined,
			),
		...maybe("highest_pressure", highest),
		...maybe("highest_pressure_stage", pressures.find(({ p }) => p.value === highest?.value)?.number),
		planned: {
			clean_volume: V_p,
			water_volume: planned.water_volume,
			slurry_volume: planned.slurry_volume,
			proppant_mass: m_p,
			pumping_time: planned.pumping_time,
			proppant_by_type: planned.proppant_by_type,
			averages: averagesOf(planned, count, length),
		},
		clean_difference: volumeOverPlan.of({ V, V_p }),
		water_difference: volumeOverPlan.of({ V: pumped.water_volume, V_p: planned.water_volume }),
		slurry_difference: volumeOverPlan.of({ V: pumped.slurry_volume, V_p: planned.slurry_volume }),
		proppant_difference: massOverPlan.of({ m, m_p }),
		...maybe("clean_of_plan", V_p.value > 0 ? volumeOfPlan.of({ V, V_p }) : undefined),
		...maybe("proppant_of_plan", m_p.value > 0 ? massOfPlan.of({ m, m_p }) : undefined),
	};
};
