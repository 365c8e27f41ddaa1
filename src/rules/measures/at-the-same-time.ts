import { constant } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { message } from "../../messages/message.ts";
import type { Well } from "../../well/well.ts";
import { daysBetween } from "../calendar.ts";
import { eventDate } from "../events.ts";
import { absent, type Measure } from "./reading.ts";

type PadWell = NonNullable<NonNullable<Well["site"]["pad"]>["other_wells"]>[number];

/** A status that says that work goes on there now: "being drilled", "drilling", "treating". A drilled well is at rest. */
const AT_WORK = /\b(being|drilling|treating|pumping|fracturing|completing|perforating|under way)\b/iu;

/** Whether work goes on at a well of the pad while this one is drilled or treated, as far as the definition says. */
const isAtWork = ({ status, work }: PadWell): boolean =>
	work !== undefined || (status !== undefined && AT_WORK.test(status));

const padWells = ({ site }: Well): readonly PadWell[] => site.pad?.other_wells ?? [];

/** Wells of the pad that are worked on at the same time and of which nobody is named with whom that is agreed. */
const notAgreed = (well: Well): readonly PadWell[] =>
	padWells(well).filter((each) => isAtWork(each) && each.agreed_with === undefined);

export const atTheSameTimeMeasures = {
	"simultaneous work not agreed": {
		noun: message("rules/simultaneous-work-not-agreed"),
		read: ({ well }) =>
			padWells(well).some(isAtWork)
				? {
						state: "known",
						value: constant("count", notAgreed(well).length, "wells of the pad at work", cite("definition")),
					}
				: absent(message("rules/no-work-on-the-pad-at-the-same-time")),
		say: (_, { well }) => {
			const open = notAgreed(well);
			return open.length === 0
				? [
						message("rules/work-at-the-same-time-is-agreed", {
							wells: padWells(well)
								.filter(isAtWork)
								.map(({ name }) => name)
								.join(", "),
							who: padWells(well)
								.flatMap((each) => (isAtWork(each) ? (each.agreed_with ?? []) : []))
								.join(", "),
						}),
					]
				: [
						message("rules/work-at-the-same-time-is-not-agreed", {
							wells: open.map(({ name, work, status }) => `${name} (${work ?? status ?? ""})`).join(", "),
						}),
					];
		},
	},
	"treatment before drilling ends": {
		noun: message("rules/treatment-before-drilling-ends"),
		read: ({ well }) => {
			const [over, starts] = [eventDate(well, "drilling ends"), eventDate(well, "stimulation starts")];
			if ("missing" in over || "missing" in starts) return absent(message("rules/no-dates-to-hold-together"));
			const early = daysBetween(over.date, starts.date) < 0;
			return {
				state: "known",
				value: constant("count", early ? 1 : 0, "phases out of order", cite("definition")),
			};
		},
		say: ({ value }, { well }) => {
			const [over, starts] = [eventDate(well, "drilling ends"), eventDate(well, "stimulation starts")];
			const facts = {
				starts: "date" in starts ? starts.date : "",
				over: "date" in over ? over.date : "",
			};
			return [
				value.value > 0
					? message("rules/treatment-starts-before-drilling-ends", facts)
					: message("rules/treatment-starts-after-drilling-ends", facts),
			];
		},
	},
} as const satisfies Readonly<Record<string, Measure>>;
