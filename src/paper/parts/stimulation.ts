import type { StageResults } from "../../calc/results.ts";
import type { Known } from "../../cite/known.ts";
import type { Block, Cell } from "../../document/blocks.ts";
import type { QuantityStyle } from "../../document/inline.ts";
import { stepName } from "../../drawing/treatment/step-name.ts";
import type { Stage } from "../../well/well.ts";
import { cell, type PaperContext, textCell } from "../context.ts";
import { asGiven, facts, named, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

export const stimulationTotals: Part = (context) => {
	const totals = context.results.stimulation;
	const plan = context.well.stimulation;
	if (!totals || !plan) return [];
	// With a record these stand in the table of plan and record.
	const total = (value: Known | undefined, style?: QuantityStyle) =>
		cell(context, totals.as_pumped === undefined ? value : undefined, style);
	return facts(
		context,
		[
			["method", textCell(asGiven(context, plan.method))],
			["treated_through", textCell(named(context, plan.treatedThrough))],
			["base_fluid", textCell(plan.baseFluid.kind)],
			["base_fluid_density", cell(context, plan.baseFluid.density)],
			["stage_count", cell(context, totals.stage_count)],
			["top_perforation_md", cell(context, totals.top_perforation.md)],
			["top_perforation_tvd", cell(context, totals.top_perforation.tvd)],
			["bottom_perforation_md", cell(context, totals.bottom_perforation.md)],
			["clean_volume", total(totals.clean_volume, { decimals: 0 })],
			["water_volume", total(totals.water_volume, { decimals: 0 })],
			["recycled_water", cell(context, totals.recycled_water_volume, { decimals: 0 })],
			["slurry_volume", total(totals.slurry_volume, { decimals: 0 })],
			["proppant_mass", total(totals.proppant_mass)],
			["pumping_time", total(totals.pumping_time, { unit: "hr", decimals: 1 })],
			["treated_length", cell(context, totals.averages?.treated_length, { decimals: 0 })],
			["clean_per_length", total(totals.averages?.clean_per_length, { decimals: 1 })],
			["proppant_per_length", total(totals.averages?.proppant_per_length, { decimals: 0 })],
			["shot_diameter", cell(context, alike(plan.stages.map(({ shotDiameter }) => shotDiameter)))],
			["phasing", cell(context, alike(plan.stages.map(({ phasing }) => phasing)), { decimals: 0 })],
			["toe_kind", textCell(asGiven(context, plan.toe?.kind))],
			["toe_depth", cell(context, plan.toe?.depth)],
			["toe_opens_at", cell(context, totals.toe_opens_at_surface, { nearest: 10 })],
		],
		{ columns: 2 },
	);
};

/** The value that every stage has; nothing where they differ, and a column shows them. */
const alike = (values: readonly (Known | undefined)[]): Known | undefined => {
	const [first] = values;
	return values.every((each) => each?.value === first?.value) ? first : undefined;
};

/** What makes two stages pumped alike: every step as written, and the ramp. */
const designOf = ({ steps, ramp }: Stage): string =>
	JSON.stringify([
		steps.map(({ name, fluid, proppant, concentration, cleanVolume, flushTo, rate }) => [
			name,
			fluid ?? "",
			proppant ?? "",
			concentration?.value ?? "",
			cleanVolume?.value ?? flushTo ?? "",
			rate.value,
		]),
		ramp === undefined
			? ""
			: [ramp.slurryVolume.value, ramp.proppant, ramp.mass.value, ramp.efficiency.value, ramp.steps.value],
	]);

/** `1–14, 16–36`: numbers in order, runs drawn together. */
const runsOf = (numbers: readonly number[]): string => {
	const runs: (readonly [number, number])[] = [];
	for (const number of numbers) {
		const last = runs.at(-1);
		if (last !== undefined && last[1] === number - 1) runs[runs.length - 1] = [last[0], number];
		else runs.push([number, number]);
	}
	return runs.map(([from, to]) => (from === to ? String(from) : `${from}–${to}`)).join(", ");
};

/** The steps of each design, and the stages that are pumped by it; flush and times are those of the first of them. */
export const treatmentSchedule: Part = (context) => {
	const stages = context.well.stimulation?.stages ?? [];
	const designs = new Map<string, Stage[]>();
	for (const stage of stages) designs.set(designOf(stage), [...(designs.get(designOf(stage)) ?? []), stage]);
	return [...designs.values()].flatMap((alike) => {
		const [first] = alike;
		const computed = context.results.stimulation?.stages.find((s) => s.number === first?.number);
		if (computed === undefined) return [];
		const which =
			alike.length === 1
				? `${context.words.label("phrases.stage")} ${computed.number}`
				: `${context.words.label("phrases.stages")} ${runsOf(alike.map(({ number }) => number))}`;
		return scheduleOf(context, computed, which);
	});
};

const scheduleOf = (context: PaperContext, computed: StageResults, which: string): readonly Block[] =>
	table(
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
		computed.steps.map((step) =>
			row({
				step: textCell(stepName(step.name, (words) => context.words.findLabel(`steps_given.${words}`))),
				fluid: textCell(step.fluid ?? context.well.stimulation?.baseFluid.kind),
				proppant: textCell(step.proppant),
				concentration: cell(context, step.concentration, { decimals: 2 }),
				rate: cell(context, step.rate),
				clean: cell(context, step.clean_volume),
				slurry_volume: cell(context, step.slurry_volume),
				proppant_mass: step.proppant === undefined ? { kind: "none" } : cell(context, step.proppant_mass),
				time: cell(context, step.time),
			}),
		),
		{ note: "treatment_schedule", suffix: which },
	);

const span = (stage: StageResults, context: PaperContext): Record<string, Cell> => ({
	top_md: cell(context, stage.top.md),
	bottom_md: cell(context, stage.bottom.md),
	top_tvd: cell(context, stage.top.tvd),
	bottom_tvd: cell(context, stage.bottom.tvd),
});

export const stageTable: Part = (context) => {
	const totals = context.results.stimulation;
	if (!totals) return [];
	// The table is of the plan: what was pumped has tables of its own, with the plan beside it.
	const sums = totals.as_pumped?.planned ?? totals;
	const column = (id: "clean" | "proppant") =>
		totals.as_pumped === undefined ? {} : { label: `planned_${id}` };
	const planned = new Map(context.well.stimulation?.stages.map((stage) => [stage.number, stage]));
	const differs = (values: readonly (Known | undefined)[]) =>
		alike(values) === undefined && values.some((each) => each !== undefined);
	const shotsDiffer = differs([...planned.values()].map(({ shotDiameter }) => shotDiameter));
	const phasingDiffers = differs([...planned.values()].map(({ phasing }) => phasing));
	// On a level lateral the depths stand in the caption, and the rest leaves room for two abreast.
	const isLevel =
		alike(totals.stages.map(({ top }) => top.tvd)) !== undefined &&
		alike(totals.stages.map(({ bottom }) => bottom.tvd)) !== undefined;
	const rows = totals.stages.map((stage) =>
		row({
			stage: { kind: "quantity", dimension: "count", value: stage.number },
			...span(stage, context),
			clusters:
				stage.clusters.length === 0
					? { kind: "none" }
					: { kind: "quantity", dimension: "count", value: stage.clusters.length },
			shots: cell(context, planned.get(stage.number)?.shotsPerCluster),
			...(shotsDiffer ? { shot_diameter: cell(context, planned.get(stage.number)?.shotDiameter) } : {}),
			...(phasingDiffers ? { phasing: cell(context, planned.get(stage.number)?.phasing) } : {}),
			plug: cell(context, stage.plug?.md),
			clean: cell(context, stage.clean_volume),
			proppant_mass: cell(context, stage.proppant_mass),
			flush: cell(context, stage.flush_volume),
		}),
	);
	const sum = row(
		{
			stage: textCell(context.words.label("phrases.total")),
			clean: cell(context, sums.clean_volume),
			proppant_mass: cell(context, sums.proppant_mass),
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
			quantityColumn(context, "shots", "count", {
				width: 0.8,
				label: totals.stages.some(({ clusters }) => clusters.length > 0) ? "shots_per_cluster" : "shots",
			}),
			quantityColumn(context, "shot_diameter", "diameter", { style: { decimals: 2 } }),
			quantityColumn(context, "phasing", "angle", { style: { decimals: 0 } }),
			quantityColumn(context, "plug", "measured-depth"),
			quantityColumn(context, "clean", "volume", { style: { decimals: 0 }, ...column("clean") }),
			quantityColumn(context, "proppant_mass", "mass", { width: 1.1, ...column("proppant") }),
			quantityColumn(context, "flush", "volume", { style: { decimals: 1 } }),
		],
		[...rows, sum],
		{ dense: true, ...(isLevel && rows.length > ONE_COLUMN ? { abreast: 2 } : {}) },
	);
};

/** Rows from which a table runs two abreast. */
const ONE_COLUMN = 12;

export const waterSources: Part = (context) =>
	table(
		context,
		"water_sources",
		[
			textColumn(context, "source", { width: 2, rowHead: true }),
			quantityColumn(context, "share", "share", { style: { decimals: 0 } }),
			quantityColumn(context, "water", "volume", { style: { nearest: 100, decimals: 0 } }),
			textColumn(context, "recycled", { width: 1 }),
			quantityColumn(context, "dissolved_solids", "dissolved-solids"),
			quantityColumn(context, "source_density", "density", { style: { decimals: 2 } }),
		],
		(context.well.stimulation?.waterSources ?? []).map((source) =>
			row({
				dissolved_solids: cell(context, source.dissolvedSolids),
				source_density: cell(
					context,
					context.results.stimulation?.water_by_source.find(({ name }) => name === source.name)?.density,
				),
				source: textCell(source.name),
				share: cell(context, source.share),
				water: cell(
					context,
					context.results.stimulation?.water_by_source.find(({ name }) => name === source.name)?.volume,
				),
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

/** Additives as stated. Their ingredients stand here only where no share of the fluid can be told of them. */
export const additivesTable: Part = (context) => {
	const disclosed = context.results.stimulation?.disclosure !== undefined;
	return table(
		context,
		disclosed ? "additives_rates" : "additives",
		[
			textColumn(context, "additive", { width: 1.8, rowHead: true }),
			textColumn(context, "additive_purpose", { width: 1.4 }),
			textColumn(context, "supplier", { width: 1.4 }),
			quantityColumn(context, "additive_rate", "additive-rate", { width: 1.2 }),
			quantityColumn(context, "density", "density"),
			textColumn(context, "ingredient", { width: 1.8 }),
			textColumn(context, "cas", { width: 1.1 }),
			quantityColumn(context, "max_share", "share", { style: { decimals: 0 } }),
		],
		(context.well.stimulation?.additives ?? []).flatMap((additive) => {
			const stated = {
				additive: textCell(additive.name),
				additive_purpose: textCell(asGiven(context, additive.purpose)),
				supplier: textCell(additive.supplier),
				additive_rate: cell(context, additive.rate),
				density: cell(context, additive.density),
			};
			if (disclosed) return [row(stated)];
			return additive.ingredients.map((ingredient, i) =>
				row({
					...(i === 0 ? stated : { additive: textCell("″") }),
					ingredient: textCell(ingredient.name),
					cas: textCell(
						ingredient.tradeSecret === undefined
							? ingredient.cas
							: `${context.words.label("phrases.trade_secret")}, ${context.words.label("phrases.claimed_by")} ${ingredient.tradeSecret}`,
					),
					max_share: cell(context, ingredient.maxShare),
				}),
			);
		}),
		disclosed ? { dense: true } : { dense: true, note: "additives" },
	);
};
