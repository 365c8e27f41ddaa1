import { tellSaid } from "../../messages/print.ts";
import { readerOf, textCell } from "../context.ts";
import { citationText } from "../words/citation.ts";
import { type Part, row, table, textColumn } from "./part.ts";

/** Every due date that the schedule gives, earliest first, with what is recorded as sent. */
export const deadlinesTable: Part = (context) =>
	table(
		context,
		"deadlines",
		[
			textColumn(context, "due", { width: 0.8, rowHead: true }),
			textColumn(context, "requirement", { width: 4.4 }),
			textColumn(context, "counted_from", { width: 3 }),
			textColumn(context, "citation", { width: 1.3 }),
			textColumn(context, "sent", { width: 0.8 }),
		],
		context.due.map((item) =>
			row({
				due: textCell(item.due),
				requirement: textCell(context.words.requirement(item.rule, item.requirement)),
				counted_from: textCell(
					`${tellSaid(item.span, readerOf(context))} ${tellSaid(item.eventWords, readerOf(context))}, ${context.words.label(`calendar.${item.basis}`)} ${item.eventDate}`,
				),
				citation: textCell(citationText(context, item.citation)),
				sent: textCell(item.sent),
			}),
		),
		{ dense: true, note: "deadlines" },
	);
