import type { StageResults } from "../../calc/results.ts";
import type { Cell } from "../../document/blocks.ts";
import { cell, type PaperContext, textCell } from "../context.ts";
import { facts, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

export const stimulationTotals: Part = (context) => {
	const totals = context.results.stimulation;
	const plan = context.well.stimulation;
	if (!totals || !plan) return [];
	return facts(context, [
		["method", textCell(plan.method)],
		["treated_through", textCell(plan.treatedThrough)],
		["base_fluid", textCell(plan.baseFluid.kind)],
		["base_fluid_density", cell(context, plan.baseFluid.density)],
		["stage_count", cell(context, totals.stage_count)],
		["top_perforation_md", cell(context, totals.top_perforation.md)],
		["top_perforation_tvd", cell(context, totals.top_perforation.tvd)],
		["bottom_perforation_md", cell(context, totals.bottom_perforation.md)],
		["clean_volume", cell(context, totals.clean_volume, { decimals: 0 })],
		["water_volume", cell(context, totals.water_volume, { decimals: 0 })],
		["recycled_water", cell(context, totals.recycled_water_volume, { decimals: 0 })],
		["slurry_volume", cell(context, totals.slurry_volume, { decimals: 0 })],
		["proppant_mass", cell(context, totals.proppant_mass)],
		["pumping_time", cell(context, totals.pumping_time, { unit: "hr", decimals: 1 })],
	]);
};

/** The steps of a stage; where every stage pumps the same plan, the first stands for all. */
export const treatmentSchedule: Part = (context) => {
	const stage = context.well.stimulation?.stages[0];
	const computed = context.results.stimulation?.stages.find((s) => s.number === stage?.number);
	if (!stage || !computed) return [];
	return table(
		context,
		"treatment_schedule",
		[
			textColumn(context, "step", { width: 1.2, rowHead: true }),
			textColumn(context, "fluid", { width: 1.3 }),
			textColumn(context, "proppant", { width: 1.2 }),
			quantityColumn(context, "concentration", "proppant-concentration", { width: 1.1 }),
			quantityColumn(context, "rate", "flow-rate", { style: { decimals: 0 } }),
			quantityColumn(context, "clean", "volume", { style: { decimals: 0 } }),
			quantityColumn(context, "slurry_volume", "volume", { style: { decimals: 0 } }),
			quantityColumn(context, "proppant_mass", "mass"),
			quantityColumn(context, "time", "duration", { style: { decimals: 1 } }),
		],
		stage.steps.map((step, i) => {
			const worked = computed.steps[i];
			return row({
				step: textCell(step.name),
				fluid: textCell(step.fluid ?? context.well.stimulation?.baseFluid.kind),
				proppant: textCell(step.proppant),
				concentration: cell(context, step.concentration),
				rate: cell(context, step.rate),
				clean: cell(context, worked?.clean_volume),
				slurry_volume: cell(context, worked?.slurry_volume),
				proppant_mass: step.proppant === undefined ? { kind: "none" } : cell(context, worked?.proppant_mass),
				time: cell(context, worked?.time),
			});
		}),
		{ note: "treatment_schedule", suffix: `${context.words.label("phrases.stage")} ${stage.number}` },
	);
};

const span = (stage: StageResults, context: PaperContext): Record<string, Cell> => ({
	top_md: cell(context, stage.top.md),
	bottom_md: cell(context, stage.bottom.md),
	top_tvd: cell(context, stage.top.tvd),
	bottom_tvd: cell(context, stage.bottom.tvd),
});

export const stageTable: Part = (context) => {
	const totals = context.results.stimulation;
	if (!totals) return [];
	const planned = new Map(context.well.stimulation?.stages.map((stage) => [stage.number, stage]));
	const rows = totals.stages.map((stage) =>
		row({
			stage: { kind: "quantity", dimension: "count", value: stage.number },
			...span(stage, context),
			clusters: { kind: "quantity", dimension: "count", value: stage.clusters.length },
			shots: cell(context, planned.get(stage.number)?.shotsPerCluster),
			plug: cell(context, stage.plug?.md),
			clean: cell(context, stage.clean_volume),
			proppant_mass: cell(context, stage.proppant_mass),
			flush: cell(context, stage.flush_volume),
		}),
	);
	const sum = row(
		{
			stage: textCell(context.words.label("phrases.total")),
			clean: cell(context, totals.clean_volume),
			proppant_mass: cell(context, totals.proppant_mass),
		},
		"total",
	);
	return table(
		context,
		"stages",
		[
			{ ...quantityColumn(context, "stage", "count", { width: 0.7, rowHead: true }) },
			quantityColumn(context, "top_md", "measured-depth"),
			quantityColumn(context, "bottom_md", "measured-depth"),
			quantityColumn(context, "top_tvd", "true-vertical-depth"),
			quantityColumn(context, "bottom_tvd", "true-vertical-depth"),
			quantityColumn(context, "clusters", "count", { width: 0.8 }),
			quantityColumn(context, "shots", "count", { width: 0.8, label: "shots_per_cluster" }),
			quantityColumn(context, "plug", "measured-depth"),
			quantityColumn(context, "clean", "volume", { style: { decimals: 0 } }),
			quantityColumn(context, "proppant_mass", "mass", { width: 1.1 }),
			quantityColumn(context, "flush", "volume", { style: { decimals: 1 } }),
		],
		[...rows, sum],
		{ dense: true },
	);
};

/** What was pumped, where a record stands beside the plan. */
export const stageRecords: Part = (context) =>
	table(
		context,
		"stage_records",
		[
			{ ...quantityColumn(context, "stage", "count", { width: 0.7, rowHead: true }) },
			textColumn(context, "date", { width: 1.2 }),
			quantityColumn(context, "average_rate", "flow-rate"),
			quantityColumn(context, "average_pressure", "pressure"),
			quantityColumn(context, "maximum_pressure", "pressure"),
			quantityColumn(context, "breakdown", "pressure"),
			quantityColumn(context, "shut_in", "pressure"),
			quantityColumn(context, "clean", "volume", { style: { decimals: 0 } }),
			quantityColumn(context, "proppant_mass", "mass", { width: 1.1 }),
		],
		(context.well.stimulation?.stages ?? []).flatMap((stage) => {
			const record = stage.actual;
			return record === undefined
				? []
				: [
						row({
							stage: { kind: "quantity", dimension: "count", value: stage.number },
							date: textCell(record.date),
							average_rate: cell(context, record.averageRate),
							average_pressure: cell(context, record.averagePressure),
							maximum_pressure: cell(context, record.maximumPressure),
							breakdown: cell(context, record.breakdown),
							shut_in: cell(context, record.instantaneousShutIn),
							clean: cell(context, record.cleanVolume),
							proppant_mass: cell(context, record.proppantMass),
						}),
					];
		}),
		{ dense: true },
	);

export const waterSources: Part = (context) =>
	table(
		context,
		"water_sources",
		[
			textColumn(context, "source", { width: 2, rowHead: true }),
			quantityColumn(context, "share", "share", { style: { decimals: 0 } }),
			textColumn(context, "recycled", { width: 1 }),
		],
		(context.well.stimulation?.waterSources ?? []).map((source) =>
			row({
				source: textCell(source.name),
				share: cell(context, source.share),
				recycled: textCell(context.words.label(source.recycled ? "phrases.yes" : "phrases.no")),
			}),
		),
	);

export const proppantsTable: Part = (context) =>
	table(
		context,
		"proppants",
		[
			textColumn(context, "proppant", { width: 1.4, rowHead: true }),
			textColumn(context, "material", { width: 1 }),
			quantityColumn(context, "specific_gravity", "ratio"),
			textColumn(context, "cas", { width: 1.2 }),
			textColumn(context, "supplier", { width: 1.4 }),
			quantityColumn(context, "proppant_mass", "mass", { width: 1.2 }),
		],
		(context.well.stimulation?.proppants ?? []).map((proppant) =>
			row({
				proppant: textCell(proppant.id),
				material: textCell(proppant.material),
				specific_gravity: cell(context, proppant.specificGravity),
				cas: textCell(proppant.cas),
				supplier: textCell(proppant.supplier),
				proppant_mass: cell(
					context,
					context.results.stimulation?.proppant_by_type.find((entry) => entry.id === proppant.id)?.mass,
				),
			}),
		),
	);

export const additivesTable: Part = (context) =>
	table(
		context,
		"additives",
		[
			textColumn(context, "additive", { width: 1.8, rowHead: true }),
			textColumn(context, "additive_purpose", { width: 1.4 }),
			textColumn(context, "supplier", { width: 1.2 }),
			quantityColumn(context, "additive_rate", "additive-rate", { width: 1.2 }),
			textColumn(context, "ingredient", { width: 1.8 }),
			textColumn(context, "cas", { width: 1.1 }),
			quantityColumn(context, "max_share", "share", { style: { decimals: 0 } }),
		],
		(context.well.stimulation?.additives ?? []).flatMap((additive) =>
			additive.ingredients.map((ingredient, i) =>
				row({
					additive: i === 0 ? textCell(additive.name) : textCell("″"),
					additive_purpose: i === 0 ? textCell(additive.purpose) : { kind: "none" },
					supplier: i === 0 ? textCell(additive.supplier) : { kind: "none" },
					additive_rate: i === 0 ? cell(context, additive.rate) : { kind: "none" },
					ingredient: textCell(ingredient.tradeSecret ?? ingredient.name),
					cas: textCell(
						ingredient.tradeSecret === undefined
							? ingredient.cas
							: context.words.label("phrases.trade_secret"),
					),
					max_share: cell(context, ingredient.maxShare),
				}),
			),
		),
		{ dense: true, note: "additives" },
	);
