import { CONTINGENT_EVENTS, type EventName } from "../catalog/limits/vocabulary.ts";
import type { Schedule } from "../definition/definition.ts";
import type { Well } from "../well/well.ts";
import { addDays } from "./calendar.ts";
import { missingAt } from "./case.ts";
import type { MissingInput } from "./finding.ts";

export type EventDate =
	| { readonly date: string; readonly basis: "recorded" | "planned" }
	| { readonly missing: MissingInput; readonly never?: string };

type Phase = Schedule[number];

/** First and last day of each phase: as recorded, as stated, or following on from the phase before with base durations. */
const spans = (schedule: Schedule) => {
	let follows: string | undefined;
	return schedule.map((phase: Phase) => {
		const started = phase.actual?.started;
		const starts = started ?? phase.starts ?? follows;
		const [first, base = first] = phase.days;
		const days = Math.ceil(base.value / MINUTES_A_DAY);
		const ends = phase.actual?.ended ?? (starts === undefined ? undefined : addDays(starts, days));
		follows = ends;
		return {
			phase: phase.phase,
			starts,
			ends,
			begun: started !== undefined,
			over: phase.actual?.ended !== undefined,
		};
	});
};

const MINUTES_A_DAY = 1440;

/** Events that the schedule has a phase for. */
const EVENT_PHASES: Readonly<Partial<Record<EventName, readonly [Phase["phase"], "starts" | "ends"]>>> = {
	"location work": ["location", "starts"],
	spud: ["drilling", "starts"],
	"drilling ends": ["drilling", "ends"],
	"stimulation starts": ["stimulation", "starts"],
	"stimulation ends": ["stimulation", "ends"],
	completion: ["flowback", "ends"],
};

/** How an event is said. Completion is taken as the end of flowback: the schedule has no day of its own for it. */
export const EVENT_WORDS: Readonly<Record<EventName, string>> = {
	"location work": "the start of location work",
	spud: "spud",
	"drilling ends": "the end of drilling",
	"stimulation starts": "the start of the stimulation",
	"stimulation ends": "the end of the stimulation",
	completion: "completion (the end of flowback)",
	"permit issued": "the day the permit was issued",
	"water withdrawal": "the start of the water withdrawal",
	"pad rig release": "rig release from the last well of the pad",
	"drilling suspended": "the day drilling was suspended",
	"physical change": "the physical change of the well",
	"string set": "setting the string",
	"string cemented": "cementing the string",
	"casing test": "the pressure test of the string",
};

/** `day the permit was issued`, `date of the start of the water withdrawal`. */
const dayOf = (event: EventName, string?: string): string => {
	const words = EVENT_WORDS[event];
	const day = words.startsWith("the day ") ? words.slice("the ".length) : `date of ${words}`;
	return string === undefined ? day : day.replace(/\bthe string\b/, `the ${string} string`);
};

/** When something happened, or is planned to: by the dated events of the definition, else by the schedule. */
export const eventDate = (
	well: Pick<Well, "schedule" | "identity" | "site">,
	event: EventName,
	string?: string,
): EventDate => {
	const stated = (well.site.events ?? []).find(
		(each) => each.event === event && (string === undefined || each.string === string),
	);
	if (stated !== undefined)
		return { date: stated.on, basis: stated.recorded === true ? "recorded" : "planned" };
	const phased = EVENT_PHASES[event];
	if (phased === undefined)
		return {
			missing: missingAt(dayOf(event, string), "site", "events"),
			...(CONTINGENT_EVENTS.includes(event) ? { never: `the definition dates no ${event}` } : {}),
		};
	const [phase, side] = phased;
	const span = spans(well.schedule ?? []).find((each) => each.phase === phase);
	const recorded = side === "starts" ? span?.begun : span?.over;
	const date = span?.[side];
	if (event === "spud" && !recorded && well.identity.spud !== undefined)
		return { date: well.identity.spud, basis: "planned" };
	if (date === undefined) return { missing: missingAt(`date of the ${phase} phase`, "schedule") };
	return { date, basis: recorded ? "recorded" : "planned" };
};
