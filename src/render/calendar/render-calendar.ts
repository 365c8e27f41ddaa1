import ical from "ical-generator";
import type { CalendarDocument } from "../../document/calendar.ts";

/** A day at midnight UTC: whole days carry no hour and no zone, so this is never shifted. */
const midnight = (day: string): Date => new Date(`${day}T00:00:00Z`);

/** As RFC 5545 (3.3.11) has text. The library does so for every text but the name of a calendar. */
const escaped = (text: string): string => text.replace(/[\\;,]/gu, "\\$&").replace(/\r\n|\r|\n/gu, "\\n");

/** Sets days as iCalendar text (RFC 5545), whole days each; the same days give the same bytes. */
export const renderCalendar = ({ name, language, issued, sequence, entries }: CalendarDocument): string => {
	const calendar = ical({
		name: escaped(name),
		prodId: { company: "casebound", product: "deadlines", language: language.toUpperCase() },
	});
	for (const { id, day, summary, description } of entries)
		calendar.createEvent({
			id,
			sequence,
			stamp: midnight(issued),
			start: midnight(day),
			allDay: true,
			summary,
			description,
		});
	return `${calendar.toString()}\r\n`;
};
