import type { Block } from "../../document/blocks.ts";
import { type Inline, text } from "../../document/inline.ts";
import { capital } from "../../messages/print.ts";
import { cell, type PaperContext, textCell } from "../context.ts";
import { isFinished } from "../narrative/done.ts";
import { sayDate } from "../narrative/say.ts";
import { asGiven, type Part, quantityColumn, row, table, textColumn, titled } from "./part.ts";

const ROUNDED = { significant: 2 } as const;

/** Each water well on the list: how deep it is, and how much rock lies between its bottom and the treated rock. */
export const neighborWellsPlain: Part = (context) => {
	const neighbors = new Map(context.well.neighbors.map((neighbor) => [neighbor.id, neighbor]));
	return table(
		context,
		"neighbor_wells",
		[
			textColumn(context, "neighbor", { width: 2, rowHead: true }),
			quantityColumn(context, "well_depth", "depth-below-ground"),
			quantityColumn(context, "above_perforation", "offset", { style: ROUNDED, width: 1.4 }),
			textColumn(context, "sampled", { width: 1.2 }),
		],
		context.results.isolation.neighbor_wells.map((well) => {
			const neighbor = neighbors.get(well.id);
			return row({
				neighbor: textCell(well.name),
				well_depth: cell(context, neighbor?.depth?.depth),
				above_perforation: cell(context, well.above_top_perforation),
				sampled: textCell(sayDate(context, neighbor?.sampled) || undefined),
			});
		}),
	);
};

const DAYS = { unit: "d", decimals: 0 } as const;

const scheduleRows = (context: Parameters<Part>[0]) =>
	(context.well.schedule ?? []).map((phase) => {
		const [low, base, high] = phase.days.length === 1 ? [undefined, phase.days[0], undefined] : phase.days;
		return row({
			phase: textCell(context.words.findLabel(`phases.${phase.phase}`) ?? titled(phase.phase)),
			starts: textCell(sayDate(context, phase.starts) || undefined),
			recorded: textCell(recordedDates(context, phase.actual)),
			days_low: cell(context, low, DAYS),
			days_base: cell(context, base, DAYS),
			days_high: cell(context, high, DAYS),
			hours: textCell(asGiven(context, phase.hours)),
		});
	});

/** `January 12, 2026 to January 26, 2026`: when a phase was begun and ended, as far as it is on record. */
const recordedDates = (
	context: PaperContext,
	actual: { readonly started?: string; readonly ended?: string } | undefined,
): string | undefined => {
	const [from, to] = [sayDate(context, actual?.started), sayDate(context, actual?.ended)];
	return from === false || to === false
		? from || to || undefined
		: context.words.label("phrases.dates").replace("{from}", from).replace("{to}", to);
};

/** Phases for a sheet with little room: with the likely time alone, and once all is done with the days on record alone. */
export const scheduleShort: Part = (context) =>
	table(
		context,
		"schedule",
		[
			textColumn(context, "phase", { width: isFinished(context) ? 2.6 : 3, rowHead: true }),
			...(isFinished(context)
				? [textColumn(context, "recorded", { width: 4.2 })]
				: [
						textColumn(context, "starts", { width: 2 }),
						quantityColumn(context, "days_base", "duration", { style: DAYS }),
						textColumn(context, "recorded", { width: 1.9 }),
					]),
			textColumn(context, "hours", { width: 1.8 }),
		],
		scheduleRows(context),
	);

/** Words of the trade that stand in a section, in plain ones, right behind it; each is explained once. */
export const wordsHere = (
	context: PaperContext,
	isSaid: (word: string) => boolean,
	explained: Set<string>,
): readonly Block[] => {
	const found = context.glossary.flatMap(({ id, words: of }) => {
		const words = of[context.words.language] ?? of.en;
		return words === undefined || explained.has(id) || !isSaid(words.term) ? [] : [{ id, ...words }];
	});
	for (const { id } of found) explained.add(id);
	if (found.length === 0) return [];
	return [
		{
			kind: "paragraph",
			tone: "note",
			children: found.flatMap(({ term, plain }, i): Inline[] => [
				...(i === 0 ? [] : [text(" ")]),
				{ kind: "strong", children: [text(`${capital(term)}:`)] },
				text(` ${plain}`),
			]),
		},
	];
};
