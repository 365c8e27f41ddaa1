import type { PaperContext } from "../context.ts";
import { asGiven } from "../parts/part.ts";
import { LOUD } from "./fears.ts";
import { about, say, sayDate, sayText } from "./say.ts";

/** Words about trucks and noise. */
export const roadWords = (context: PaperContext): Record<string, unknown> => {
	const { well, results } = context;
	const logistics = results.logistics;
	const comparisons = logistics?.comparisons;
	// Of a small job the comparison would be with one or two people, which tells nobody anything.
	const compared = (comparisons?.people_for_a_year.value ?? 0) < 10 ? undefined : comparisons;
	const phases = (well.schedule ?? []).map((phase) => ({
		name: context.words.label(`phases.${phase.phase}`),
		// Once a phase has its days on record, its plan is no answer to how long it took.
		started: sayDate(context, phase.actual?.ended === undefined ? undefined : phase.actual.started),
		ended: sayDate(context, phase.actual?.started === undefined ? undefined : phase.actual.ended),
		days: say(context, phase.days[phase.days.length === 1 ? 0 : 1], { unit: "d", decimals: 0 }),
	}));
	return {
		route: sayText(well.logistics?.route),
		total_loads: about(context, logistics?.total_loads),
		total_trips: about(context, logistics?.one_way_trips),
		total_loads_exact: say(context, logistics?.total_loads),
		total_trips_exact: say(context, logistics?.one_way_trips),
		water_people: about(context, compared?.people_for_a_year),
		water_ground: about(context, compared?.ground_under_an_inch),
		has_schedule: phases.length > 0,
		phases,
		phase_hours: (well.schedule ?? []).flatMap(({ phase, hours }) =>
			hours === undefined
				? []
				: [{ name: context.words.label(`phases.${phase}`), hours: asGiven(context, hours) }],
		),
		noise_level: say(context, well.safety?.noise?.source_level, LOUD),
		noise_at: about(context, well.safety?.noise?.at),
		noise_home: say(context, results.safety?.noise_at_nearest_dwelling?.level, LOUD),
		noise_limit: say(context, well.safety?.noise?.limit?.level, LOUD),
		noise_limit_source: sayText(well.safety?.noise?.limit?.source),
		noise_home_name: sayText(results.safety?.noise_at_nearest_dwelling?.name),
	};
};
