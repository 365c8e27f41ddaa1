import type { Known } from "../../cite/known.ts";
import type { Stage } from "../../well/well.ts";
import type { BoreInterval } from "../cement/bore.ts";
import { verticalMark } from "../depths/marks.ts";
import { maybe } from "../gaps.ts";
import { columnPressure } from "../pressure/hydrostatic.ts";
import type { StageAsPumped, StageRecordedPressure } from "../results.ts";
import { tvdAt } from "../trajectory/at-depth.ts";
import {
	frictionHad,
	meanSlurryDensity,
	netAtShutIn,
	reductionHad,
	shutInGradient,
} from "./recorded-pressures.ts";
import { closureAt, frictionDown, pressureInputs } from "./stage-pressure.ts";
import { type StageContext, uppermost } from "./stage-results.ts";
import { perforationFriction } from "./treating-pressure.ts";

/**
 * What the pressures of a stage's record say: gradient and net pressure at shut-in, friction that the stage had, and the
 * reduction that this leaves for the pipe. Nothing without a shut-in pressure; friction needs an average pressure as well.
 */
export const recordedPressure = (
	context: StageContext,
	stage: Stage,
	down: readonly BoreInterval[],
	perforations: Known<"count"> | undefined,
	pumped: StageAsPumped | undefined,
): StageRecordedPressure | undefined => {
	const { well, stimulation, path } = context;
	const [first, ISIP] = [down[0], stage.actual?.instantaneousShutIn];
	if (ISIP === undefined || first === undefined) return undefined;
	const cluster = tvdAt(path, uppermost(stage));
	const D = verticalMark(path, cluster, well.datum).below_ground;
	const column = (ρ: Known<"density">) =>
		columnPressure.of({ ρ, D_top: tvdAt(path, first.top), D_bottom: cluster });
	const { density: ρ_f } = stimulation.baseFluid;
	const P_h = column(ρ_f);
	const G_c = closureAt(well, cluster.value);
	const mean =
		pumped?.clean_volume &&
		pumped.proppant_mass &&
		pumped.slurry_volume &&
		meanSlurryDensity.of({
			ρ_f,
			V_c: pumped.clean_volume,
			m: pumped.proppant_mass,
			V_s: pumped.slurry_volume,
		});
	const P_avg = stage.actual?.averagePressure;
	const friction = P_avg && mean && frictionHad.of({ P_avg, P_hm: column(mean), ISIP, P_h });
	return {
		gradient: shutInGradient.of({ ISIP, P_h, D }),
		...maybe("net", G_c && netAtShutIn.of({ ISIP, P_h, G_c, D })),
		...maybe("mean_density", mean),
		...maybe("friction", friction),
		...(friction === undefined ? {} : reductions(context, stage, down, perforations, friction)),
	};
};

/** Of the recorded friction the part in the pipe, with fresh and with worn perforations, at the average rate. */
const reductions = (
	context: StageContext,
	stage: Stage,
	down: readonly BoreInterval[],
	perforations: Known<"count"> | undefined,
	ΔP: Known<"pressure-difference">,
): Partial<StageRecordedPressure> => {
	const rate = stage.actual?.averageRate;
	const inputs = rate && pressureInputs(context, { ...stage, rate }, perforations);
	if (inputs === undefined) return {};
	const { density: ρ } = context.stimulation.baseFluid;
	const { water: ΔP_w } = frictionDown(down, { ...inputs, ρ });
	const [fresh, worn] = inputs.discharge.map((C_d) => {
		const ΔP_perf = perforationFriction.of({
			Q: inputs.rate,
			ρ,
			N: inputs.perforations,
			d: inputs.shot,
			C_d,
		});
		return reductionHad.of({ ΔP, ΔP_perf, ΔP_nwb: inputs.nearWellbore, ΔP_w });
	});
	return { ...maybe("reduction_fresh", fresh), ...maybe("reduction_worn", worn) };
};
