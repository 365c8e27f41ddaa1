import type { StageResults, StimulationResults } from "../../calc/results.ts";
import type { Known } from "../../cite/known.ts";
import type { QuantityStyle } from "../../document/inline.ts";
import type { Stage, StageActual } from "../../well/well.ts";
import { cell, type PaperContext, textCell } from "../context.ts";
import { asGiven, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

/** The treatment as a whole: plan, record, and the difference. */
export const treatmentAgainstPlan: Part = (context) => {
	const totals = context.results.stimulation;
	const record = totals?.as_pumped;
	if (totals === undefined || record === undefined) return [];
	return table(
		context,
		"treatment_against_plan",
		[
			textColumn(context, "treatment_quantity", { width: 2.4, rowHead: true }),
			textColumn(context, "as_planned", { width: 1.3 }),
			textColumn(context, "as_recorded", { width: 1.3 }),
			textColumn(context, "difference", { width: 1.3 }),
			quantityColumn(context, "of_plan", "share", { style: { decimals: 1 } }),
		],
		totalsBeside(totals, record).map(({ label, planned, recorded, difference, share, style }) =>
			row({
				treatment_quantity: textCell(context.words.label(`facts.${label}`)),
				as_planned: cell(context, planned, style),
				as_recorded: cell(context, recorded, style),
				difference: cell(context, difference, style && { ...style, sign: true }),
				of_plan: cell(context, share),
			}),
		),
		{ note: record.complete ? "treatment_against_plan" : "treatment_partly_recorded" },
	);
};

interface Beside {
	readonly label: string;
	readonly planned: Known;
	readonly recorded: Known;
	readonly difference?: Known | undefined;
	readonly share?: Known | undefined;
	readonly style?: QuantityStyle;
}

const totalsBeside = (
	totals: StimulationResults,
	record: NonNullable<StimulationResults["as_pumped"]>,
): readonly Beside[] => {
	const { planned } = record;
	const [pumped, meant] = [totals.averages, planned.averages];
	const whole = { decimals: 0 };
	return [
		{
			label: "clean_volume",
			planned: planned.clean_volume,
			recorded: totals.clean_volume,
			difference: record.clean_difference,
			share: record.clean_of_plan,
			style: whole,
		},
		{
			label: "water_volume",
			planned: planned.water_volume,
			recorded: totals.water_volume,
			difference: record.water_difference,
			style: whole,
		},
		{
			label: "slurry_volume",
			planned: planned.slurry_volume,
			recorded: totals.slurry_volume,
			difference: record.slurry_difference,
			style: whole,
		},
		{
			label: "proppant_mass",
			planned: planned.proppant_mass,
			recorded: totals.proppant_mass,
			difference: record.proppant_difference,
			share: record.proppant_of_plan,
		},
		{
			label: "pumping_time",
			planned: planned.pumping_time,
			recorded: totals.pumping_time,
			style: { unit: "hr", decimals: 1 },
		},
		...(pumped === undefined
			? []
			: [
					{
						label: "clean_per_stage",
						planned: meant.clean_per_stage,
						recorded: pumped.clean_per_stage,
						style: whole,
					},
					{
						label: "clean_per_length",
						planned: meant.clean_per_length,
						recorded: pumped.clean_per_length,
						style: { decimals: 1 },
					},
					{
						label: "proppant_per_stage",
						planned: meant.proppant_per_stage,
						recorded: pumped.proppant_per_stage,
						style: { nearest: 100 },
					},
					{
						label: "proppant_per_length",
						planned: meant.proppant_per_length,
						recorded: pumped.proppant_per_length,
						style: whole,
					},
				]),
	];
};

interface Recorded {
	readonly stage: Stage;
	readonly record: StageActual;
	readonly worked: StageResults | undefined;
}

const recordedStages = ({ well, results }: PaperContext): readonly Recorded[] => {
	const worked = new Map(results.stimulation?.stages.map((stage) => [stage.number, stage]));
	return (well.stimulation?.stages ?? []).flatMap((stage) =>
		stage.actual === undefined ? [] : [{ stage, record: stage.actual, worked: worked.get(stage.number) }],
	);
};

/** What was pumped, each stage's record beside its plan: rates and pressures, then volumes and proppant. */
export const stageRecords: Part = (context) => [
	...ratesAndPressures(context),
	...volumesAndProppant(context),
	...frictionHad(context),
	...stageEnds(context),
];

const stageNumber = (context: PaperContext) =>
	quantityColumn(context, "stage", "count", { width: 0.7, rowHead: true });

const ratesAndPressures: Part = (context) =>
	table(
		context,
		"stage_records",
		[
			stageNumber(context),
			textColumn(context, "date", { width: 1.2 }),
			quantityColumn(context, "planned_rate", "flow-rate", { style: { decimals: 0 } }),
			quantityColumn(context, "average_rate", "flow-rate", { style: { decimals: 1 } }),
			quantityColumn(context, "expected_pressure", "pressure", { style: { decimals: 0 } }),
			quantityColumn(context, "average_pressure", "pressure"),
			quantityColumn(context, "maximum_pressure", "pressure"),
			quantityColumn(context, "breakdown", "pressure", { width: 1.1 }),
			quantityColumn(context, "shut_in", "pressure"),
		],
		recordedStages(context).map(({ stage, record, worked }) =>
			row({
				stage: { kind: "quantity", dimension: "count", value: stage.number },
				date: textCell(record.date),
				planned_rate: cell(context, stage.rate),
				average_rate: cell(context, record.averageRate),
				expected_pressure: cell(context, worked?.pressure?.treating_fresh),
				average_pressure: cell(context, record.averagePressure),
				maximum_pressure: cell(context, record.maximumPressure),
				breakdown: cell(context, record.breakdown),
				shut_in: cell(context, record.instantaneousShutIn),
			}),
		),
		{ dense: true, note: "stage_records" },
	);

const volumesAndProppant: Part = (context) => {
	const totals = context.results.stimulation;
	const record = totals?.as_pumped;
	const rows = recordedStages(context).map(({ stage, worked }) => {
		const pumped = worked?.as_pumped;
		return row({
			stage: { kind: "quantity", dimension: "count", value: stage.number },
			planned_clean: cell(context, worked?.clean_volume),
			clean_pumped: cell(context, pumped?.clean_volume),
			clean_difference: cell(context, pumped?.clean_difference),
			clean_of_plan: cell(context, pumped?.clean_of_plan),
			planned_proppant: cell(context, worked?.proppant_mass),
			proppant_placed: cell(context, pumped?.proppant_mass),
			proppant_difference: cell(context, pumped?.proppant_difference),
			proppant_of_plan: cell(context, pumped?.proppant_of_plan),
		});
	});
	const sum =
		totals === undefined || record?.complete !== true
			? []
			: [
					row(
						{
							stage: textCell(context.words.label("phrases.total")),
							planned_clean: cell(context, record.planned.clean_volume),
							clean_pumped: cell(context, totals.clean_volume),
							clean_difference: cell(context, record.clean_difference),
							clean_of_plan: cell(context, record.clean_of_plan),
							planned_proppant: cell(context, record.planned.proppant_mass),
							proppant_placed: cell(context, totals.proppant_mass),
							proppant_difference: cell(context, record.proppant_difference),
							proppant_of_plan: cell(context, record.proppant_of_plan),
						},
						"total",
					),
				];
	return table(
		context,
		"stage_volumes",
		[
			stageNumber(context),
			quantityColumn(context, "planned_clean", "volume", { style: { decimals: 0 } }),
			quantityColumn(context, "clean_pumped", "volume", { style: { decimals: 0 } }),
			quantityColumn(context, "clean_difference", "volume", {
				label: "difference",
				style: { decimals: 0, sign: true },
			}),
			quantityColumn(context, "clean_of_plan", "share", { label: "of_plan", style: { decimals: 1 } }),
			quantityColumn(context, "planned_proppant", "mass", { width: 1.2 }),
			quantityColumn(context, "proppant_placed", "mass", { width: 1.2 }),
			quantityColumn(context, "proppant_difference", "mass", { width: 1.1, label: "difference" }),
			quantityColumn(context, "proppant_of_plan", "share", { label: "of_plan", style: { decimals: 1 } }),
		],
		[...rows, ...sum],
		{ dense: true },
	);
};

const frictionHad: Part = (context) =>
	table(
		context,
		"stage_friction",
		[
			stageNumber(context),
			quantityColumn(context, "shut_in_gradient", "pressure-gradient", { style: { decimals: 3 } }),
			quantityColumn(context, "net_at_shut_in", "pressure-difference", { style: { decimals: 0 } }),
			quantityColumn(context, "mean_slurry_density", "density", { style: { decimals: 2 } }),
			quantityColumn(context, "friction_had", "pressure-difference", { style: { decimals: 0 } }),
			quantityColumn(context, "reduction_fresh", "share", { style: { decimals: 0 } }),
			quantityColumn(context, "reduction_worn", "share", { style: { decimals: 0 } }),
			quantityColumn(context, "reduction_stated", "share", { style: { decimals: 0 } }),
		],
		recordedStages(context).flatMap(({ stage, worked }) => {
			const found = worked?.recorded_pressure;
			return found === undefined
				? []
				: [
						row({
							stage: { kind: "quantity", dimension: "count", value: stage.number },
							shut_in_gradient: cell(context, found.gradient),
							net_at_shut_in: cell(context, found.net),
							mean_slurry_density: cell(context, found.mean_density),
							friction_had: cell(context, found.friction),
							reduction_fresh: cell(context, found.reduction_fresh),
							reduction_worn: cell(context, found.reduction_worn),
							reduction_stated: cell(context, context.well.stimulation?.pressureModel?.frictionReduction),
						}),
					];
		}),
		{ dense: true, note: "stage_friction" },
	);

/** Stages with times of day, an end that is recorded, or a problem. */
const stageEnds: Part = (context) =>
	table(
		context,
		"stage_ends",
		[
			stageNumber(context),
			textColumn(context, "started", { width: 0.7 }),
			textColumn(context, "ended", { width: 0.7 }),
			textColumn(context, "ended_by", { width: 1 }),
			textColumn(context, "problem", { width: 4 }),
		],
		recordedStages(context).flatMap(({ stage, record: { started, ended, endedBy, problem } }) =>
			[started, ended, endedBy, problem].every((each) => each === undefined)
				? []
				: [
						row({
							stage: { kind: "quantity", dimension: "count", value: stage.number },
							started: textCell(started),
							ended: textCell(ended),
							ended_by: textCell(endedBy && context.words.label(`stage_ends.${endedBy}`)),
							problem: textCell(asGiven(context, problem)),
						}),
					],
		),
		{ dense: true },
	);
