import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { Proppant, Stage, TreatmentStep } from "../../well/well.ts";
import {
	addedConcentration,
	cleanOfSlurry,
	padFraction,
	rampBound,
	rampEndConcentration,
	rampMeanConcentration,
	rampPad,
	volumeBetween,
} from "./schedule.ts";

/** The steps of a stage, with the pad and the proppant steps of its ramp, where it has one, before the flush. */
export const stepsOf = (
	{ steps, ramp, rate }: Stage,
	proppants: readonly Proppant[],
): readonly TreatmentStep[] => {
	const SG = proppants.find(({ id }) => id === ramp?.proppant)?.specificGravity;
	const Q = rate ?? steps[0]?.rate;
	if (ramp === undefined || SG === undefined || Q === undefined) return steps;
	const flush = steps.findIndex((step) => step.flushTo !== undefined);
	const at = flush < 0 ? steps.length : flush;
	return [...steps.slice(0, at), ...rampSteps(ramp, SG, Q), ...steps.slice(at)];
};

const rampSteps = (
	{ slurryVolume: V, mass: m, efficiency: η, steps, proppant }: NonNullable<Stage["ramp"]>,
	SG: Known<"ratio">,
	rate: Known<"flow-rate">,
): readonly TreatmentStep[] => {
	const ε = padFraction.of({ η });
	const V_pad = rampPad.of({ f_pad: ε, V });
	const c_end = rampEndConcentration.of({ m, V_total: V, η });
	const bound = (i: number) =>
		rampBound.of({
			V_pad,
			V_total: V,
			i: constant("count", i, "steps of the ramp so far", cite("definition")),
			n: steps,
		});
	return [
		{ name: "pad", cleanVolume: V_pad, rate },
		...Array.from({ length: steps.value }, (_, k): TreatmentStep => {
			const [V_1, V_2] = [bound(k), bound(k + 1)];
			const c = rampMeanConcentration.of({ c_end, ε, V_1, V_2, V_pad, V_total: V });
			const concentration = addedConcentration.of({ c, SG });
			return {
				name: `ramp ${k + 1}`,
				proppant,
				concentration,
				cleanVolume: cleanOfSlurry.of({ V_s: volumeBetween.of({ V_1, V_2 }), c: concentration, SG }),
				rate,
			};
		}),
	];
};
