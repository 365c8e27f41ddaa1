import type { EverydaySound } from "../../calc/results.ts";
import type { PaperContext } from "../context.ts";
import { ownWords } from "../own-words.ts";
import { about, say, sayDate } from "./say.ts";

/** Sound as it is said: in decibels. */
export const LOUD = { significant: 2, spoken: true } as const;

/** Topics of the operator's own words that slides and handout say. */
const OWN = [
	"spills",
	"emergency",
	"inspections",
	"water_testing",
	"cement_shortfall",
	"hauling_hours",
] as const;

/** Words of the packet's first page and of the pages that answer one fear each: what is asked before anything else. */
export const fearWords = (context: PaperContext): Record<string, unknown> => {
	const { well, results, words, neighbor } = context;
	const { safety, logistics, stimulation } = results;
	const sound = (each: EverydaySound | undefined): string | false =>
		each === undefined ? false : words.label(`sounds.${each.id}`);
	const home = safety?.noise_at_nearest_dwelling;
	const own = safety?.noise_at_neighbors.find(({ id }) => id === neighbor?.id);
	const busiest = (logistics?.by_phase ?? [])
		.filter(({ busiest_day_trips, phase }) => busiest_day_trips !== undefined && phase !== undefined)
		.toSorted((a, b) => (b.busiest_day_trips?.value ?? 0) - (a.busiest_day_trips?.value ?? 0))[0];
	const phases = well.schedule ?? [];
	const nights = phases.filter(({ hours }) => hours === "around the clock");
	return {
		noise_home_louder: sound(home?.as_loud_as),
		noise_home_softer: sound(home?.softer_than),
		own_noise: say(context, own?.level, LOUD),
		own_noise_louder: sound(own?.as_loud_as),
		own_noise_softer: sound(own?.softer_than),
		busiest_trips: about(context, busiest?.busiest_day_trips),
		busiest_phase: busiest?.phase === undefined ? false : words.label(`phases_in_words.${busiest.phase}`),
		work_starts: sayDate(context, phases.find(({ starts }) => starts !== undefined)?.starts),
		// The operator's answer to neighbors stands in the place of the crew's instruction.
		shortfall_answered: ownWords(context, "cement_shortfall") !== undefined,
		...Object.fromEntries(OWN.map((topic) => [`own_${topic}`, ownWords(context, topic) ?? false])),
		by_night: nights.length > 0,
		compares_pressure: context.units === "field",
		total_mass: say(context, stimulation?.disclosure?.total_mass),
	};
};
