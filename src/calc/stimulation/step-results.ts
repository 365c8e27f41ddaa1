import type { Known } from "../../cite/known.ts";
import { message } from "../../messages/message.ts";
import type { Stimulation, TreatmentStep } from "../../well/well.ts";
import { type Gaps, maybe } from "../gaps.ts";
import type { StepResults } from "../results.ts";
import { proppantMass, pumpingTime, slurryDensity, slurryVolume, totalMass } from "./slurry.ts";

/** Nothing, as a mass with an origin. */
const noProppant = (): Known<"mass"> => totalMass.of({ m_i: [] });

/**
 * One step: slurry from clean fluid and proppant, its mass, density and time.
 *
 * @param flush  what fills the casing to the uppermost cluster; the clean volume of a flush
 * @returns      undefined where the step has neither a volume nor a flush to go by
 */
export const stepResults = (
	stimulation: Stimulation,
	step: TreatmentStep,
	flush: Known<"volume"> | undefined,
	key: string,
	gaps: Gaps,
): StepResults | undefined => {
	const clean = step.cleanVolume ?? (step.flushTo === undefined ? undefined : flush);
	if (clean === undefined)
		return gaps.missing(key, message("calc/step-has-no-volume", { step: step.name }), [
			["stimulation", "stages"],
		]);
	const carried = proppantOf(stimulation, step, key, gaps);
	const fluid = fluidDensity(stimulation, step);
	const slurry = carried === undefined ? clean : slurryVolume.of({ V_c: clean, ...carried });
	const density = carried === undefined ? fluid : fluid && slurryDensity.of({ ρ_f: fluid, ...carried });
	return {
		name: step.name,
		...maybe("fluid", step.fluid),
		...maybe("proppant", carried && step.proppant),
		...maybe("concentration", carried?.c),
		rate: step.rate,
		clean_volume: clean,
		slurry_volume: slurry,
		...maybe("slurry_density", density),
		proppant_mass: carried === undefined ? noProppant() : proppantMass.of({ V_c: clean, c: carried.c }),
		time: pumpingTime.of({ V_s: slurry, Q: step.rate }),
	};
};

const proppantOf = (
	{ proppants }: Stimulation,
	{ name, proppant, concentration }: TreatmentStep,
	key: string,
	gaps: Gaps,
): { readonly c: Known<"proppant-concentration">; readonly SG: Known<"ratio"> } | undefined => {
	if (concentration === undefined) return undefined;
	const kind = proppants.find((p) => p.id === proppant);
	return kind === undefined
		? gaps.missing(key, message("calc/step-names-no-proppant-that-is", { name }), [
				["stimulation", "proppants"],
			])
		: { c: concentration, SG: kind.specificGravity };
};

const fluidDensity = ({ additives, baseFluid }: Stimulation, { fluid }: TreatmentStep) =>
	fluid === undefined ? baseFluid.density : additives.find((a) => a.id === fluid)?.density;
