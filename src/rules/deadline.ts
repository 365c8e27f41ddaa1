import type { Deadline, SpanUnit } from "../catalog/limits/limit.ts";
import type { EventName } from "../catalog/limits/vocabulary.ts";
import { message, type Said } from "../messages/message.ts";
import { addBusinessDays, addDays, daysBetween, monthsBefore, yearOf } from "./calendar.ts";
import { type Case, missingAt } from "./case.ts";
import { EVENT_WORDS, eventDate } from "./events.ts";
import type { MissingInput } from "./finding.ts";
import { cannotTell, doesNotApply, met, notMet, type Outcome } from "./outcome.ts";

/** The day by which something is due, and what it is counted from. */
interface DueDate {
	readonly due: string;
	readonly event: EventName;
	/** `2 business days before`, `30 days after`. */
	readonly span: Said;
	readonly eventDate: string;
	readonly basis: "recorded" | "planned";
}

type DueOrNot =
	| DueDate
	| {
			readonly missing: readonly MissingInput[];
			readonly because?: Said;
			/** Why nothing will ever be due, as far as the definition goes. */
			readonly never?: Said;
	  };

const HOURS_A_DAY = 24;

const SPANS = {
	"calendar days before": "rules/days-before",
	"calendar days after": "rules/days-after",
	"calendar hours before": "rules/hours-before",
	"calendar hours after": "rules/hours-after",
	"business days before": "rules/business-days-before",
	"business days after": "rules/business-days-after",
	"business hours before": "rules/business-hours-before",
	"business hours after": "rules/business-hours-after",
	"calendar weeks before": "rules/weeks-before",
	"calendar weeks after": "rules/weeks-after",
	"calendar months before": "rules/months-before",
	"calendar months after": "rules/months-after",
	"calendar years before": "rules/years-before",
	"calendar years after": "rules/years-after",
} as const satisfies Readonly<Partial<Record<SpanKey, string>>>;

type SpanKey = `${Deadline["days"]} ${SpanUnit} ${Deadline["side"]}`;

/** A span of time before or after an event, as a deadline counts it. */
interface Span {
	readonly count: number;
	readonly unit: SpanUnit;
	readonly side: Deadline["side"];
	readonly days: Deadline["days"];
}

/** The words for a span, `30 days after`; the reader of rules files lets business days be counted in days and hours only. */
export const spanWords = ({ count, unit, side, days }: Span): Said => {
	const key: SpanKey = `${days} ${unit} ${side}`;
	const code = (SPANS as Readonly<Partial<Record<SpanKey, (typeof SPANS)[keyof typeof SPANS]>>>)[key];
	if (code === undefined) throw new RangeError(`no words for ${key}`);
	return message(code, { count });
};

const DAYS_A_WEEK = 7;
const MONTHS_A_YEAR = 12;

/** Whole days of a span of hours, on the safe side: a notice the day before, a report not a day later. */
const daysOfHours = (hours: number, side: Deadline["side"]): number =>
	side === "before" ? Math.ceil(hours / HOURS_A_DAY) : Math.floor(hours / HOURS_A_DAY);

/** The calendar day so long before or after another. */
const away = (date: string, count: number, unit: SpanUnit, side: Deadline["side"]): string => {
	const sign = side === "before" ? -1 : 1;
	switch (unit) {
		case "hours":
			return addDays(date, sign * daysOfHours(count, side));
		case "days":
			return addDays(date, sign * count);
		case "weeks":
			return addDays(date, sign * count * DAYS_A_WEEK);
		case "months":
			return monthsBefore(date, -sign * count);
		case "years":
			return monthsBefore(date, -sign * count * MONTHS_A_YEAR);
	}
};

/** Works a due date; of several, the earliest counts. Business days need a list of holidays that covers the years. */
export const dueDate = (
	{ well, jurisdiction }: Pick<Case, "well" | "jurisdiction">,
	limit: Deadline,
	string?: string,
): DueOrNot => {
	const sign = limit.side === "before" ? -1 : 1;
	const dated = limit.of.map(({ event, count, unit }): DueOrNot => {
		const at = eventDate(well, event, string);
		if ("missing" in at)
			return { missing: [at.missing], ...(at.never === undefined ? {} : { never: at.never }) };
		const span = spanWords({ count: count.value, unit, side: limit.side, days: limit.days });
		const common = { event, span, eventDate: at.date, basis: at.basis };
		if (limit.days === "calendar") return { ...common, due: away(at.date, count.value, unit, limit.side) };
		const days = unit === "hours" ? daysOfHours(count.value, limit.side) : count.value;
		const { holidays } = jurisdiction;
		if (holidays === undefined || !holidays.covers.includes(yearOf(at.date)))
			return {
				missing: [],
				because: message("rules/dated.because", { eventWords: EVENT_WORDS[event] }),
			};
		const due = addBusinessDays(at.date, sign * days, holidays.dates);
		return holidays.covers.includes(yearOf(due))
			? { ...common, due }
			: { missing: [], because: message("rules/dated.because-2") };
	});
	const unknown = dated.filter((each) => "missing" in each);
	const [first, ...rest] = dated.filter((each) => "due" in each);
	if (first === undefined || unknown.length > 0)
		return {
			missing: unknown.flatMap(({ missing }) => missing),
			...(unknown[0]?.because === undefined ? {} : { because: unknown[0].because }),
			...(unknown[0]?.never === undefined ? {} : { never: unknown[0].never }),
		};
	return rest.reduce((early, each) => (daysBetween(early.due, each.due) < 0 ? each : early), first);
};

/** A notice or report that the definition records as answering this rule. */
const noticeFor = ({ well, rule }: Case) =>
	(well.site.notices ?? []).findIndex((notice) => notice.rule === rule.id);

/**
 * A deadline on the date of this issue. What is not yet due is not asked; what is past due has to be recorded as sent.
 */
export const judgeDeadline = (the: Case, limit: Deadline): Outcome => {
	const found = dueDate(the, limit, the.subject.kind === "string" ? the.subject.string.id : undefined);
	if (!("due" in found) && found.never !== undefined) return doesNotApply({ parts: [found.never, "."] });
	if (!("due" in found))
		return cannotTell(found.missing, ...(found.because === undefined ? [] : [found.because, "."]));
	const { due, span, event, eventDate: on, basis } = found;
	const facts = { due, span, event: EVENT_WORDS[event], on };
	const said =
		basis === "planned" ? message("rules/due-by-planned", facts) : message("rules/due-by-recorded", facts);
	const index = noticeFor(the);
	const sent = index < 0 ? undefined : the.well.site.notices?.[index]?.sent;
	const earliest = limit.noSooner && away(on, limit.noSooner.count.value, limit.noSooner.unit, limit.side);
	if (sent !== undefined && earliest !== undefined && daysBetween(sent, earliest) > 0)
		return notMet(message("rules/sent-on-sooner-than-that", { said, sent, earliest }));
	if (sent !== undefined)
		return daysBetween(sent, due) >= 0
			? met(message("rules/sent-on", { said, sent }))
			: notMet(message("rules/sent-on-later-than-that", { said, sent }));
	const { issued } = the.well.identity;
	if (daysBetween(issued, due) >= 0)
		return doesNotApply(message("rules/not-yet-due-when-this-was-issued", { said, issued }));
	const at = ["site", "notices", ...(index < 0 ? [] : [index, "sent"])];
	return cannotTell(
		[missingAt(message("rules/date-sent-in-notice-or-report", { rule: the.rule.id }), ...at)],
		message("rules/before-this-was-issued-on-definition-records", { said, issued }),
	);
};
