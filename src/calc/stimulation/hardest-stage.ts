import { constant, type Known, type KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { message } from "../../messages/message.ts";
import type { Stage } from "../../well/well.ts";
import { type BoreInterval, boreVolume } from "../cement/bore.ts";
import { maybe } from "../gaps.ts";
import type { HardestStage, StagePressure, StageResults } from "../results.ts";
import { clusterRate } from "./limited-entry.ts";
import { proppantPerSlurry } from "./slurry.ts";
import {
	boresDown,
	greatestSurfacePressure,
	proppantInPipe,
	roomBelow,
	stageCourse,
	stepsPumped,
} from "./stage-course.ts";
import type { pressureInputs } from "./stage-pressure.ts";
import type { StageContext } from "./stage-results.ts";

interface Hard {
	readonly stage: Stage;
	readonly worked: StageResults;
	readonly down: readonly BoreInterval[];
	readonly inputs: NonNullable<ReturnType<typeof pressureInputs>>;
	readonly pressure: StagePressure;
}

/** The stage that needs the greatest pressure, from its first barrel to its last; nothing where a density is missing. */
export const hardestStage = (context: StageContext, hard: Hard): HardestStage | undefined => {
	const { stage, worked, down, inputs, pressure } = hard;
	const batches = batchesOf(worked);
	if (batches === undefined) return undefined;
	const [fresh, worn] = inputs.discharge;
	const course = stageCourse.of({
		bores: boresOf(down),
		batches,
		path: context.path,
		P_frac: pressure.fracturing,
		ΔP_nwb: inputs.nearWellbore,
		ρ_0: context.stimulation.baseFluid.density,
		μ: inputs.viscosity,
		ε: inputs.roughness,
		DR: inputs.reduction,
		N: inputs.perforations,
		d: inputs.shot,
		C_1: fresh,
		C_2: worn,
	});
	const greatest = greatestSurfacePressure.of({ course });
	if (!Number.isFinite(greatest.value)) return undefined;
	return {
		number: stage.number,
		course,
		greatest,
		...maybe("screen_out", screenOut(context, hard, greatest)),
		...maybe("limited_entry", limitedEntry(context, hard)),
	};
};

/** Steps as a table, in the order pumped; nothing where one has no density or rate. */
const batchesOf = ({ steps }: StageResults): KnownTable | undefined => {
	const densities = steps.flatMap((step) => step.slurry_density ?? []);
	if (densities.length < steps.length || steps.some(({ rate }) => !(rate.value > 0))) return undefined;
	return stepsPumped.of({
		V_s: steps.map((step) => step.slurry_volume),
		Q: steps.map((step) => step.rate),
		ρ: densities,
		m: steps.map((step) => step.proppant_mass),
	});
};

const boresOf = (down: readonly BoreInterval[]): KnownTable =>
	boresDown.of({
		MD_top: down.map((bore) => bore.top),
		MD_bottom: down.map((bore) => bore.bottom),
		d: down.map((bore) => bore.insideDiameter),
	});

const screenOut = (
	{ stimulation }: StageContext,
	{ worked, down }: Hard,
	expected: Known<"pressure">,
): HardestStage["screen_out"] => {
	const richest = worked.steps.reduce<StageResults["steps"][number] | undefined>(
		(most, step) => ((step.concentration?.value ?? 0) > (most?.concentration?.value ?? 0) ? step : most),
		undefined,
	);
	const SG = stimulation.proppants.find(({ id }) => id === richest?.proppant)?.specificGravity;
	if (richest?.concentration === undefined || SG === undefined) return undefined;
	const [first] = [...(stimulation.limits?.pumpKickouts ?? [])].sort((a, b) => a.value - b.value);
	return {
		proppant_in_pipe: proppantInPipe.of({
			V: boreVolume(down),
			c: proppantPerSlurry.of({ c: richest.concentration, SG }),
		}),
		...maybe("room_to_first_kickout", first && roomBelow.of({ p_limit: first, p: expected })),
	};
};

/** Rates of the clusters, where the stresses stated are as many as they. */
const limitedEntry = (
	{ stimulation, gaps }: StageContext,
	{ stage, inputs }: Hard,
): HardestStage["limited_entry"] => {
	const Δσ = stimulation.pressureModel?.clusterStress;
	const { shotsPerCluster: N, clusters } = stage;
	if (Δσ === undefined || N === undefined || clusters.length === 0) return undefined;
	if (Δσ.length !== clusters.length)
		return gaps.missing(
			"stimulation.hardest_stage.limited_entry",
			message("calc/stresses-are-stated-for-clusters-and", {
				value: String(Δσ.length),
				number: String(stage.number),
				clusters: String(clusters.length),
			}),
			[["stimulation", "pressure_model", "cluster_stress"]],
		);
	const ρ = stimulation.baseFluid.density;
	return Δσ.map((stress, i) => {
		const k = constant("count", i + 1, "number of the cluster, deepest first", cite("definition"));
		const into = (C_d: Known<"ratio">) =>
			clusterRate.of({ Q: inputs.rate, ρ, N, d: inputs.shot, C_d, Δσ, k });
		const [fresh, worn] = inputs.discharge;
		return { id: `cluster-${i + 1}`, cluster: i + 1, stress, fresh: into(fresh), worn: into(worn) };
	});
};
