import * as z from "zod";
import type { Known } from "../cite/known.ts";
import { message } from "../messages/message.ts";
import { EVERY, PUBLIC } from "./audience.ts";
import { date, entry, field, group, list, oneOf, optional, text } from "./field.ts";
import { tally, typed } from "./quantity-field.ts";

const MINUTES_A_DAY = 1440;

/** One value, or low, base and high, in days as written; kept as durations. */
export type Days =
	| readonly [Known<"duration">]
	| readonly [Known<"duration">, Known<"duration">, Known<"duration">];

const day = z
	.number()
	.positive()
	.transform((days) => typed("duration", days * MINUTES_A_DAY, `${days} days`));

const days = field(
	z.union([day.transform((only): Days => [only]), z.tuple([day, day, day]).transform((all): Days => all)]),
	{
		title: "Days",
		why: "How long it lasts; a range is honest.",
		papers: EVERY,
		dimension: "duration",
		expected: message("definition/expected.days"),
		example: "[12, 16, 22]",
	},
);

export const PHASES = [
	"location",
	"rig move",
	"drilling",
	"casing and cementing",
	"waiting",
	"stimulation",
	"plug drill-out",
	"flowback",
	"facilities",
	"production",
	"reclamation",
] as const;

const phase = entry("Phase", "One part of the work as a neighbor sees it.", EVERY, {
	phase: oneOf(PHASES, "Phase", "Names the part of the work.", EVERY),
	starts: optional(date("Starts", "Of a phase without one: when the one before ends.", EVERY)),
	days,
	hours: optional(text("Hours of work", "Neighbors ask about nights.", EVERY, "around the clock")),
	stages_per_day: optional(tally("Stages a day", "Spreads trucks and noise over the days.", EVERY)),
	actual: optional(
		group("As it went", "Shown beside the plan.", PUBLIC, {
			started: date("Started", "First day.", PUBLIC),
			ended: optional(date("Ended", "Last day.", PUBLIC)),
		}),
	),
});

/** Phases in order. */
export const schedule = list("Schedule", "Phases of the work, in order.", EVERY, phase);

export type Schedule = z.output<typeof schedule>;
