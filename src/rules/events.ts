import type { EventName } from "../catalog/limits/vocabulary.ts";
import type { Schedule } from "../definition/definition.ts";
import type { Well } from "../well/well.ts";
import { addDays } from "./calendar.ts";
import { missingAt } from "./case.ts";
import type { MissingInput } from "./finding.ts";

export type EventDate =
	| { readonly date: string; readonly basis: "recorded" | "planned" }
	| { readonly missing: MissingInput };

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

const EVENT_PHASES: Readonly<Record<EventName, readonly [Phase["phase"], "starts" | "ends"]>> = {
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
};

/** When something happened, or is planned to, by the schedule; the date of spud may also be stated by itself. */
export const eventDate = (well: Pick<Well, "schedule" | "identity">, event: EventName): EventDate => {
	const [phase, side] = EVENT_PHASES[event];
	const span = spans(well.schedule ?? []).find((each) => each.phase === phase);
	const recorded = side === "starts" ? span?.begun : span?.over;
	const date = span?.[side];
	if (event === "spud" && !recorded && well.identity.spud !== undefined)
		return { date: well.identity.spud, basis: "planned" };
	if (date === undefined) return { missing: missingAt(`date of the ${phase} phase`, "schedule") };
	return { date, basis: recorded ? "recorded" : "planned" };
};
