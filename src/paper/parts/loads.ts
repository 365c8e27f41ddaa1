import type { EverydaySound, PhaseLoads } from "../../calc/results.ts";
import { cell, type PaperContext, textCell } from "../context.ts";
import { type Part, quantityColumn, row, table, textColumn, titled } from "./part.ts";

const phaseName = (context: PaperContext, { phase }: PhaseLoads) =>
	textCell(
		phase === undefined
			? context.words.label("phrases.no_one_phase")
			: (context.words.findLabel(`phases.${phase}`) ?? titled(phase)),
	);

/** Loads and one-way trips of each phase, on a likely day and on its busiest. */
const counts = (context: PaperContext, phase: PhaseLoads) => ({
	phase: phaseName(context, phase),
	loads: cell(context, phase.loads),
	trips: cell(context, phase.one_way_trips),
	loads_a_day: cell(context, phase.loads_per_day),
	busiest_loads: cell(context, phase.busiest_day),
	busiest_trips: cell(context, phase.busiest_day_trips),
});

const countColumns = (context: PaperContext) => [
	quantityColumn(context, "loads", "count"),
	quantityColumn(context, "trips", "count"),
	quantityColumn(context, "loads_a_day", "ratio", { style: { decimals: 1 } }),
	quantityColumn(context, "busiest_loads", "count", { width: 1.1 }),
	quantityColumn(context, "busiest_trips", "count", { width: 1.1 }),
];

const totalRow = (context: PaperContext, more: Parameters<typeof row>[0] = {}) => {
	const logistics = context.results.logistics;
	return logistics?.total_loads === undefined
		? []
		: [
				row(
					{
						phase: textCell(context.words.label("hauled.total")),
						...more,
						loads: cell(context, logistics.total_loads),
						trips: cell(context, logistics.one_way_trips),
					},
					"total",
				),
			];
};

/** The same for a reader who asks how many trucks pass the house, and when. */
export const loadsByPhasePlain: Part = (context) => {
	const logistics = context.results.logistics;
	if (logistics === undefined) return [];
	return table(
		context,
		"loads_by_phase",
		[textColumn(context, "phase", { width: 2.6, rowHead: true }), ...countColumns(context)],
		[...logistics.by_phase.map((phase) => row(counts(context, phase))), ...totalRow(context)],
		{ dense: true, note: noteOf(context) },
	);
};

/** Whether the trucks that haul returned water away are among those counted. */
const noteOf = ({ results }: PaperContext): string =>
	results.stimulation?.returned !== undefined && results.logistics?.returned_water_loads === undefined
		? "loads_by_phase_without_returns"
		: "loads_by_phase";

/** Noise at every neighbor whose distance is known, between sounds that everybody knows. */
export const noiseTable: Part = (context) => {
	const sound = (each: EverydaySound | undefined) =>
		textCell(each && context.words.label(`sounds.${each.id}`));
	return table(
		context,
		"noise",
		[
			textColumn(context, "neighbor", { width: 2, rowHead: true }),
			quantityColumn(context, "noise_distance", "distance", { style: { nearest: 10 } }),
			quantityColumn(context, "noise_level", "sound-level", { style: { decimals: 0 } }),
			textColumn(context, "as_loud_as", { width: 2 }),
			textColumn(context, "softer_than", { width: 2 }),
		],
		(context.results.safety?.noise_at_neighbors ?? []).map((place) =>
			row({
				neighbor: textCell(place.name),
				noise_distance: cell(context, place.distance),
				noise_level: cell(context, place.level),
				as_loud_as: sound(place.as_loud_as),
				softer_than: sound(place.softer_than),
			}),
		),
		{ dense: true, note: "noise" },
	);
};
