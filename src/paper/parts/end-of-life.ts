import { cell, textCell } from "../context.ts";
import { asGiven, facts, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

/** Each plug of the plan of abandonment, from the bottom up as it was written. */
export const plugsTable: Part = (context) =>
	table(
		context,
		"abandonment_plugs",
		[
			textColumn(context, "plug_closes", { width: 2.2, rowHead: true }),
			quantityColumn(context, "top_md", "measured-depth"),
			quantityColumn(context, "bottom_md", "measured-depth"),
			quantityColumn(context, "bottom_tvd", "true-vertical-depth"),
			quantityColumn(context, "volume", "volume", { style: { decimals: 1 } }),
			quantityColumn(context, "sacks", "count"),
			textColumn(context, "set_on", { width: 1.2 }),
			textColumn(context, "tagged", { width: 0.7 }),
			textColumn(context, "asked_by", { width: 1.4 }),
		],
		(context.results.isolation.end_of_life?.plugs ?? []).map((plug, i) => {
			const written = context.well.endOfLife?.plugs[i];
			return row({
				plug_closes: textCell(asGiven(context, plug.what)),
				top_md: cell(context, plug.top.md),
				bottom_md: cell(context, plug.bottom.md),
				bottom_tvd: cell(context, plug.bottom.tvd),
				volume: cell(context, plug.volume),
				sacks: cell(context, plug.sacks),
				set_on: textCell(asGiven(context, written?.on)),
				tagged: textCell(
					written?.tagged === undefined
						? undefined
						: context.words.label(written.tagged ? "phrases.yes" : "phrases.no"),
				),
				asked_by: textCell(asGiven(context, written?.rule)),
			});
		}),
		{ dense: true, note: "abandonment_plugs" },
	);

export const endOfLifeFacts: Part = (context) => {
	const { endOfLife } = context.well;
	return facts(context, [
		["cut_below_ground", cell(context, endOfLife?.cutBelowGround)],
		["restoration", textCell(asGiven(context, endOfLife?.restoration))],
		["paid_by", textCell(asGiven(context, endOfLife?.paidBy))],
		["bond", textCell(asGiven(context, endOfLife?.bond))],
		["plugging_density", cell(context, endOfLife?.density)],
		["plugging_yield", cell(context, endOfLife?.yield)],
	]);
};

/** Dates of the after-care, one line a visit, in order of time. */
export const afterCareTable: Part = (context) =>
	table(
		context,
		"after_care",
		[
			textColumn(context, "care_date", { width: 1, rowHead: true }),
			textColumn(context, "care_what", { width: 4 }),
			textColumn(context, "care_by", { width: 1.6 }),
		],
		(context.well.endOfLife?.afterCare ?? [])
			.flatMap(({ what, first, everyMonths, times, by }) =>
				Array.from({ length: everyMonths === undefined ? 1 : (times?.value ?? 1) }, (_, i) => ({
					date: monthsAfter(first, i * (everyMonths?.value ?? 0)),
					what,
					by,
				})),
			)
			.sort((a, b) => a.date.localeCompare(b.date))
			.map(({ date, what, by }) =>
				row({
					care_date: textCell(date),
					care_what: textCell(asGiven(context, what)),
					care_by: textCell(asGiven(context, by)),
				}),
			),
		{ dense: true },
	);

/** The same day so many months later, or the last of that month. */
const monthsAfter = (date: string, months: number): string => {
	const [year = 0, month = 1, day = 1] = date.split("-").map(Number);
	const last = new Date(Date.UTC(year, month + months, 0)).getUTCDate();
	return new Date(Date.UTC(year, month - 1 + months, Math.min(day, last))).toISOString().slice(0, 10);
};
