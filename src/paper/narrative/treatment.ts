import type { PaperContext } from "../context.ts";
import { asGiven } from "../parts/part.ts";
import { about, say, sayText } from "./say.ts";

/** Words about what is pumped, how much, how hard, and where it goes afterwards. */
export const treatmentWords = (context: PaperContext): Record<string, unknown> => {
	const plan = context.well.stimulation;
	const totals = context.results.stimulation;
	const disclosure = totals?.disclosure;
	const sandShare = disclosure?.proppant_share;
	const additiveShare = disclosure?.additive_share;
	const gallons = context.units === "metric" ? undefined : "gal";
	return {
		treated: plan !== undefined && totals !== undefined,
		one_stage: totals?.stages.length === 1,
		stages: say(context, totals?.stage_count),
		top_perforation: about(context, totals?.top_perforation.below_ground),
		water: about(context, totals?.water_volume, 2, gallons),
		water_exact: say(
			context,
			totals?.water_volume,
			gallons === undefined ? undefined : { unit: gallons, decimals: 0 },
		),
		sand_exact: say(context, totals?.proppant_mass),
		recycled_water: about(context, totals?.recycled_water_volume, 2, gallons),
		recycles: totals?.recycled_water_volume !== undefined && totals.recycled_water_volume.value > 0,
		water_sources: (plan?.waterSources ?? []).map((source) => ({
			name: source.name,
			share: say(context, source.share, { decimals: 0 }),
		})),
		sand: about(context, totals?.proppant_mass),
		water_share: say(context, disclosure?.base_fluid.share, { decimals: 1 }),
		sand_share: say(context, sandShare, { decimals: 1 }),
		additive_share: say(context, additiveShare, { decimals: 2 }),
		expected_pressure: about(context, totals?.expected_treating_pressure),
		plugs: say(context, totals?.plugs.value === 0 ? undefined : totals?.plugs),
		returned_volume_low: about(context, totals?.returned?.low, 2, gallons),
		returned_volume_high: about(context, totals?.returned?.high, 2, gallons),
		additives: (plan?.additives ?? []).map((additive) => ({
			name: additive.name,
			purpose: asGiven(context, additive.purpose),
			plain:
				context.words.findLabel(`purposes_plain.${additive.purpose}`) ?? asGiven(context, additive.purpose),
		})),
		has_additives: (plan?.additives ?? []).length > 0,
		maximum_pressure: say(context, plan?.limits?.maximumTreatingPressure),
		relief_pressure: say(context, plan?.limits?.reliefValve),
		limiting_element: sayText(asGiven(context, totals?.limiting?.element)),
		limiting_pressure: say(context, totals?.limiting?.allowed, { nearest: 10 }),
		pumping_hours: about(context, totals?.pumping_time, 2, "hr"),
		returned_low: say(context, plan?.flowback?.returned?.[0], { decimals: 0 }),
		returned_high: say(context, plan?.flowback?.returned?.[1], { decimals: 0 }),
		flowback_goes_to: sayText(plan?.flowback?.goesTo),
	};
};
