import type { CalendarDocument } from "../document/calendar.ts";
import { tellSaid } from "../messages/print.ts";
import type { Findings } from "./context.ts";
import { standingWords } from "./words/not-compared.ts";
import type { Words } from "./words/words.ts";

/** `us-tx.report.cement` of `Sorrel Bench Unit 3-16H` as one id, the same in every issue. */
const slug = (text: string): string =>
	text
		.toLowerCase()
		.replaceAll(/[^\p{L}\p{N}.]+/gu, "-")
		.replaceAll(/^-+|-+$/gu, "");

/** Deadlines of the rules and of the permit that are still open on the day of issue, as days of a calendar. */
export const deadlineCalendar = (findings: Findings, words: Words): CalendarDocument => {
	const label = words.label;
	const { identity } = findings.well;
	return {
		name: `${identity.name}: ${label("calendar.name")}`,
		language: words.language,
		issued: identity.issued,
		sequence: Math.max(0, (identity.revisions?.length ?? 1) - 1),
		entries: (findings.pad?.wells ?? [findings]).flatMap((of) => entriesOf(of, words)),
	};
};

/** The deadlines of one well. */
const entriesOf = ({ well: { identity }, due }: Findings, words: Words): CalendarDocument["entries"] => {
	const { label } = words;
	const reader = { language: words.language, units: "field" } as const;
	return due
		.filter(({ sent }) => sent === undefined)
		.map((item) => ({
			id: `${slug(item.rule)}.${item.number}.${slug(identity.api_number ?? identity.name)}@casebound`,
			day: item.due,
			summary: `${identity.name}: ${label(`calendar.${item.check}`)} (${tellSaid(item.citation, reader)})`,
			description: [
				words.requirement(item.rule, item.requirement),
				`${tellSaid(item.span, reader)} ${tellSaid(item.eventWords, reader)}, ${label(`calendar.${item.basis}`)} ${item.eventDate}.`,
				`${standingWords(item, words)}.`,
				label("calendar.caution"),
			]
				.filter((line) => line !== "")
				.join("\n"),
		}));
};
