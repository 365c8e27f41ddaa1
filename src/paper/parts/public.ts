import { cell, textCell } from "../context.ts";
import { isWaterShownProtected } from "../water-verdict.ts";
import { asGiven, type Part, quantityColumn, row, table, textColumn, titled } from "./part.ts";

const ROUNDED = { significant: 2 } as const;

/** The three numbers that a neighbor takes home. */
export const headlineFigures: Part = (context) => {
	const { isolation } = context.results;
	const label = context.words.label;
	const items = [
		{
			value: cell(context, isolation.protected_water_to_top_perforation, ROUNDED),
			label: label("headline.separation"),
		},
		...(isWaterShownProtected(context)
			? [{ value: cell(context, isolation.steel_at_protected_water), label: label("headline.steel") }]
			: []),
		{
			value: cell(context, context.results.stimulation?.water_volume, {
				significant: 2,
				...(context.units === "metric" ? {} : { unit: "gal" }),
			}),
			label: label("headline.water"),
		},
	].filter((item) => item.value.kind !== "none");
	return items.length === 0 ? [] : [{ kind: "figures", items }];
};

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
				sampled: textCell(neighbor?.sampled),
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
			starts: textCell(phase.starts),
			recorded: textCell(recordedDates(context, phase.actual)),
			days_low: cell(context, low, DAYS),
			days_base: cell(context, base, DAYS),
			days_high: cell(context, high, DAYS),
			hours: textCell(asGiven(context, phase.hours)),
		});
	});

/** `2026-01-12 to 2026-01-26`: when a phase was begun and ended, as far as it is on record. */
const recordedDates = (
	{ words }: Parameters<Part>[0],
	actual: { readonly started?: string; readonly ended?: string } | undefined,
): string | undefined =>
	actual?.started === undefined || actual.ended === undefined
		? (actual?.started ?? actual?.ended)
		: words.label("phrases.dates").replace("{from}", actual.started).replace("{to}", actual.ended);

/** Phases of the work, with shortest, likely and longest times. */
export const scheduleTable: Part = (context) =>
	table(
		context,
		"schedule",
		[
			textColumn(context, "phase", { width: 3, rowHead: true }),
			textColumn(context, "starts", { width: 1.4 }),
			{ ...quantityColumn(context, "days_low", "duration", { style: DAYS }) },
			{ ...quantityColumn(context, "days_base", "duration", { style: DAYS }) },
			{ ...quantityColumn(context, "days_high", "duration", { style: DAYS }) },
			textColumn(context, "recorded", { width: 1.9 }),
			textColumn(context, "hours", { width: 1.8 }),
		],
		scheduleRows(context),
	);

/** Phases with the likely time alone, for a sheet with little room. */
export const scheduleShort: Part = (context) =>
	table(
		context,
		"schedule",
		[
			textColumn(context, "phase", { width: 3, rowHead: true }),
			textColumn(context, "starts", { width: 1.4 }),
			quantityColumn(context, "days_base", "duration", { style: DAYS }),
			textColumn(context, "recorded", { width: 1.9 }),
			textColumn(context, "hours", { width: 1.8 }),
		],
		scheduleRows(context),
	);

export const loadsPlain: Part = (context) => {
	const logistics = context.results.logistics;
	if (logistics === undefined) return [];
	const line = (label: string, loads: Parameters<typeof cell>[1], total?: boolean) =>
		loads === undefined
			? []
			: [
					row(
						{ load: textCell(context.words.label(`hauled.${label}`)), loads: cell(context, loads) },
						total === true ? "total" : undefined,
					),
				];
	return table(
		context,
		"loads",
		[textColumn(context, "load", { width: 3, rowHead: true }), quantityColumn(context, "loads", "count")],
		[
			...line("water", logistics.water_loads),
			...line("sand", logistics.proppant_loads),
			...line("cement", logistics.cement_loads),
			...line("pipe", logistics.pipe_loads),
			...line("equipment", logistics.equipment_loads),
			...line("returned_water", logistics.returned_water_loads),
			...line("other", logistics.other_loads),
			...line("total", logistics.total_loads, true),
		],
		{ note: "loads" },
	);
};

export const additivesPlain: Part = (context) =>
	table(
		context,
		"additives_plain",
		[
			textColumn(context, "additive", { width: 2, rowHead: true }),
			textColumn(context, "additive_purpose", { width: 1.4 }),
			textColumn(context, "in_plain_words", { width: 3.4 }),
		],
		(context.well.stimulation?.additives ?? []).map((additive) =>
			row({
				additive: textCell(additive.name),
				additive_purpose: textCell(asGiven(context, additive.purpose)),
				in_plain_words: textCell(context.words.findLabel(`purposes_plain.${additive.purpose}`)),
			}),
		),
	);

/** The operator's own answers, in the operator's words, marked as such. Unanswered questions are left out here. */
export const communityAnswers: Part = (context) => {
	const answers = Object.entries(context.well.community ?? {}).filter(
		(entry): entry is [string, string] => typeof entry[1] === "string" && entry[1] !== "",
	);
	return table(
		context,
		"community",
		[
			textColumn(context, "question", { width: 2, rowHead: true }),
			textColumn(context, "answer", { width: 3 }),
		],
		answers.map(([topic, answer]) =>
			row({ question: textCell(context.words.label(`questions.${topic}`)), answer: textCell(answer) }),
		),
	);
};

/** Words of the trade that the paper uses, in plain ones. */
export const glossary: Part = (context) =>
	table(
		context,
		"glossary",
		[
			textColumn(context, "word", { width: 1.4, rowHead: true }),
			textColumn(context, "meaning", { width: 4 }),
		],
		context.glossary.flatMap((entry) => {
			const words = entry.words[context.words.language] ?? entry.words.en;
			return words === undefined || context.saidElsewhere?.(words.term) === false
				? []
				: [row({ word: textCell(words.term), meaning: textCell(words.plain) })];
		}),
	);
