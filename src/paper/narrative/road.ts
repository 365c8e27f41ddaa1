import type { PaperContext } from "../context.ts";
import { about, say, sayText } from "./say.ts";

/** Words about trucks and noise. */
export const roadWords = (context: PaperContext): Record<string, unknown> => {
	const { well, results } = context;
	const logistics = results.logistics;
	const phases = (well.schedule ?? []).map((phase) => ({
		name: context.words.label(`phases.${phase.phase}`),
		days: say(context, phase.days[phase.days.length === 1 ? 0 : 1], { unit: "d", decimals: 0 }),
	}));
	return {
		route: sayText(well.logistics?.route),
		total_loads: about(context, logistics?.total_loads),
		total_trips: about(context, logistics?.one_way_trips),
		total_loads_exact: say(context, logistics?.total_loads),
		total_trips_exact: say(context, logistics?.one_way_trips),
		has_schedule: phases.length > 0,
		phases,
		noise_level: about(context, well.safety?.noise?.source_level),
		noise_at: about(context, well.safety?.noise?.at),
		noise_home: about(context, results.safety?.noise_at_nearest_dwelling?.level),
		noise_home_name: sayText(results.safety?.noise_at_nearest_dwelling?.name),
	};
};
