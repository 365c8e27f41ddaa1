import { CONTINGENT_EVENTS, type EventName } from "../catalog/limits/vocabulary.ts";
import type { Schedule } from "../definition/definition.ts";
import { message, type Said } from "../messages/message.ts";
import type { Well } from "../well/well.ts";
import { addDays } from "./calendar.ts";
import { missingAt } from "./case.ts";
import type { MissingInput } from "./finding.ts";

type EventDate =
	| { readonly date: string; readonly basis: "recorded" | "planned" }
	| { readonly missing: MissingInput; readonly never?: Said };

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
export const EVENT_WORDS: Readonly<Record<EventName, Said>> = {
	"location work": message("rules/start-location-work"),
	spud: "spud",
	"drilling ends": message("rules/end-drilling"),
	"stimulation starts": message("rules/start-stimulation"),
	"stimulation ends": message("rules/end-stimulation"),
	completion: message("rules/completion-end-flowback"),
	"permit issued": message("rules/day-permit-was-issued"),
	"water withdrawal": message("rules/start-water-withdrawal"),
	"pad rig release": message("rules/rig-release-from-last-well-pad"),
	"drilling suspended": message("rules/day-drilling-was-suspended"),
	"physical change": message("rules/physical-change-well"),
	"pressure test failed": message("rules/failed-pressure-test"),
	"well plugged": message("rules/plugging-of-well"),
	"fresh-water flow": message("rules/flow-of-fresh-water"),
	"adverse communication": message("rules/adverse-communication"),
	"information requested": message("rules/request-for-information"),
	"long rotation in casing": message("rules/long-rotation-in-casing"),
	"well idle": message("rules/day-well-fell-idle"),
	"string set": message("rules/setting-string"),
	"string cemented": message("rules/cementing-string"),
	"casing test": message("rules/pressure-test-string"),
};

/** Events that are days themselves. */
const DAYS: Readonly<Partial<Record<EventName, Said>>> = {
	"permit issued": message("rules/day-permit-issued"),
	"drilling suspended": message("rules/day-drilling-suspended"),
};

/** Events of one string. */
const OF_STRING: Readonly<
	Partial<
		Record<EventName, "rules/date-string-set" | "rules/date-string-cemented" | "rules/date-casing-test">
	>
> = {
	"string set": "rules/date-string-set",
	"string cemented": "rules/date-string-cemented",
	"casing test": "rules/date-casing-test",
};

/** `day the permit was issued`, `date of the start of the water withdrawal`. */
const dayOf = (event: EventName, string?: string): Said => {
	const ofString = OF_STRING[event];
	if (ofString !== undefined && string !== undefined) return message(ofString, { string });
	return DAYS[event] ?? message("rules/date-of-event", { event: EVENT_WORDS[event] });
};

/** When something happened, or is planned to: by the dated events of the definition, else by the schedule. */
export const eventDate = (
	well: Pick<Well, "schedule" | "identity" | "site">,
	event: EventName,
	string?: string,
): EventDate => {
	// What befalls the whole well befalls each of its strings; only a string's own event has to name it.
	const ofWell = OF_STRING[event] === undefined;
	const stated = (well.site.events ?? []).find(
		(each) =>
			each.event === event &&
			(string === undefined || each.string === string || (ofWell && each.string === undefined)),
	);
	if (stated !== undefined)
		return { date: stated.on, basis: stated.recorded === true ? "recorded" : "planned" };
	const phased = EVENT_PHASES[event];
	if (phased === undefined)
		return {
			missing: missingAt(dayOf(event, string), "site", "events"),
			...(CONTINGENT_EVENTS.includes(event)
				? { never: message("rules/event-not-dated", { event: EVENT_WORDS[event] }) }
				: {}),
		};
	const [phase, side] = phased;
	const span = spans(well.schedule ?? []).find((each) => each.phase === phase);
	const recorded = side === "starts" ? span?.begun : span?.over;
	const date = span?.[side];
	if (event === "spud" && !recorded && well.identity.spud !== undefined)
		return { date: well.identity.spud, basis: "planned" };
	if (date === undefined) return { missing: missingAt(message("rules/date-phase", { phase }), "schedule") };
	return { date, basis: recorded ? "recorded" : "planned" };
};
