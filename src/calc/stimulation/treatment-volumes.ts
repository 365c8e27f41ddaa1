import type { Known } from "../../cite/known.ts";
import type { Stimulation } from "../../well/well.ts";
import { totalVolume } from "../cement/capacity.ts";
import { maybe } from "../gaps.ts";
import type { StageResults, StimulationAverages, StimulationResults } from "../results.ts";
import { massPerLength, massPerStage, volumePerLength, volumePerStage } from "./averages.ts";
import { brineDensityOfSolids } from "./brine.ts";
import { sharedVolume, totalMass, totalTime, volumeLess } from "./slurry.ts";

export type TreatmentVolumes = Pick<
	StimulationResults,
	| "clean_volume"
	| "water_volume"
	| "recycled_water_volume"
	| "water_by_source"
	| "neat_volumes"
	| "slurry_volume"
	| "proppant_mass"
	| "proppant_by_type"
	| "pumping_time"
>;

/** The quantities of one stage that the totals are made of. */
type StageVolumes = Pick<
	StageResults,
	"steps" | "clean_volume" | "slurry_volume" | "proppant_mass" | "pumping_time"
> & { readonly placed?: readonly { readonly id: string; readonly mass: Known<"mass"> }[] };

/** As planned, whatever was recorded. */
export const volumesAsPlanned = (
	stimulation: Stimulation,
	stages: readonly StageResults[],
): TreatmentVolumes => volumesOf(stimulation, stages);

/**
 * As recorded, quantity by quantity; what a record leaves out is as planned. Fluids that are pumped neat (acid) are not
 * metered apart in the records of stages and stay as planned; water is the rest of the clean volume.
 */
export const volumesAsPumped = (
	stimulation: Stimulation,
	stages: readonly StageResults[],
): TreatmentVolumes =>
	volumesOf(
		stimulation,
		stages.map(({ as_pumped: record, ...planned }) => {
			if (record === undefined) return planned;
			const { proppant_by_type: kinds, proppant_mass: mass } = record;
			return {
				...planned,
				...maybe("clean_volume", record.clean_volume),
				...maybe("slurry_volume", record.slurry_volume),
				...maybe("proppant_mass", mass),
				...maybe("pumping_time", record.pumping_time),
				...maybe("placed", mass && kinds),
			};
		}),
	);

const volumesOf = (
	{ waterSources, proppants }: Stimulation,
	stages: readonly StageVolumes[],
): TreatmentVolumes => {
	const steps = stages.flatMap((s) => s.steps);
	const clean = totalVolume.of({ V_i: stages.map((s) => s.clean_volume) });
	const neat = [...new Set(steps.flatMap((s) => s.fluid ?? []))].map((id) => ({
		id,
		volume: totalVolume.of({ V_i: steps.filter((s) => s.fluid === id).map((s) => s.clean_volume) }),
	}));
	const water = volumeLess.of({ V: clean, V_i: neat.map((n) => n.volume) });
	const sources = waterSources.map(({ name, share, recycled, dissolvedSolids: C }) => ({
		id: name
			.trim()
			.toLowerCase()
			.replace(/[^a-z0-9]+/g, "-"),
		name,
		recycled,
		volume: sharedVolume.of({ V: water, s: share }),
		...maybe("density", C && brineDensityOfSolids.of({ C })),
	}));
	const recycled = sources.filter((s) => s.recycled).map((s) => s.volume);
	return {
		clean_volume: clean,
		water_volume: water,
		...maybe("recycled_water_volume", sources.length === 0 ? undefined : totalVolume.of({ V_i: recycled })),
		water_by_source: sources,
		neat_volumes: neat,
		slurry_volume: totalVolume.of({ V_i: stages.map((s) => s.slurry_volume) }),
		proppant_mass: totalMass.of({ m_i: stages.map((s) => s.proppant_mass) }),
		proppant_by_type: proppants.map(({ id }) => ({
			id,
			mass: totalMass.of({ m_i: stages.flatMap((stage) => massesOf(stage, id)) }),
		})),
		pumping_time: totalTime.of({ t_i: stages.map((s) => s.pumping_time) }),
	};
};

/** Of one kind of proppant in one stage. */
const massesOf = ({ placed, steps }: StageVolumes, kind: string): readonly Known<"mass">[] =>
	placed === undefined
		? steps.filter((s) => s.proppant === kind).map((s) => s.proppant_mass)
		: placed.filter(({ id }) => id === kind).map(({ mass }) => mass);

export const averagesOf = (
	{ clean_volume, proppant_mass }: Pick<TreatmentVolumes, "clean_volume" | "proppant_mass">,
	N: Known<"count">,
	L: Known<"length">,
): StimulationAverages => ({
	treated_length: L,
	clean_per_stage: volumePerStage.of({ V: clean_volume, N }),
	proppant_per_stage: massPerStage.of({ m: proppant_mass, N }),
	clean_per_length: volumePerLength.of({ V: clean_volume, L }),
	proppant_per_length: massPerLength.of({ m: proppant_mass, L }),
});
