import type { Known } from "../cite/known.ts";
import type { StimulationDefinition } from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { type Desk, fault, maybe } from "./desk.ts";
import { layOutStages, type PlacedStage, type StagesDefinition } from "./lay-out-stages.ts";
import type { ReadFile } from "./read-file.ts";
import { unknownReference } from "./references.ts";
import { asWritten } from "./said.ts";
import { readStageChart, type StageChart } from "./stage-chart.ts";
import { type ListedStage, readRecordTable, readStageTable, type StageRecord } from "./stage-table.ts";
import type { Stage, StageActual, TreatmentStep } from "./well.ts";

type StepsDefinition = StagesDefinition["treatment"]["steps"];
type Override = NonNullable<StagesDefinition["overrides"]>[number];

const AT: Path = ["stimulation", "stages"];

/** Stages from the deepest up, each with its treatment and, where there is one, its record. */
export const resolveStages = (
	stimulation: StimulationDefinition,
	files: ReadFile,
	desk: Desk,
): readonly Stage[] => {
	const { stages: written } = stimulation;
	const overrides = new Map((written.overrides ?? []).map((each) => [each.stage.value as number, each]));
	const placed = placedStages(stimulation, files, desk);
	const { treatment } = written;
	checkSteps(treatment.steps, [...AT, "treatment", "steps"], stimulation, desk);
	for (const [i, each] of (written.overrides ?? []).entries()) {
		if (each.steps !== undefined) checkSteps(each.steps, [...AT, "overrides", i, "steps"], stimulation, desk);
		if (placed.length > 0 && each.stage.value > placed.length)
			unknownStage([...AT, "overrides", i, "stage"], each.stage.value, placed.length, desk);
	}
	const proppantIds = (stimulation.proppants ?? []).map(({ id }) => id);
	if (treatment.ramp !== undefined && !proppantIds.includes(treatment.ramp.proppant))
		unknownReference(
			desk,
			[...AT, "treatment", "ramp", "proppant"],
			message("well/thing.proppant"),
			treatment.ramp.proppant,
			proppantIds,
		);
	const records = recordsOf(written, files, desk);
	const charts = chartsOf(written, placed.length, files, desk);
	tellOfRecords(records, placed.length, desk);
	checkRecordRows(records, desk);
	return placed.map((stage): Stage => {
		const override = overrides.get(stage.number);
		const rate = override?.rate ?? stage.rate;
		const record = records.find(({ number }) => number === stage.number);
		return {
			...stage,
			rate: rate ?? treatment.rate,
			steps: (override?.steps ?? treatment.steps).map((step) => resolveStep(step, rate ?? treatment.rate)),
			...(treatment.ramp === undefined || override?.steps !== undefined
				? {}
				: { ramp: rampOf(treatment.ramp) }),
			...actualOf(record, charts.get(stage.number)),
		};
	});
};

const placedStages = (
	{ method, stages: written }: StimulationDefinition,
	files: ReadFile,
	desk: Desk,
): readonly ListedStage[] => {
	if (written.layout !== undefined)
		return layOutStages(written.layout, written.overrides ?? [], method === "plug and perforate", desk);
	if (written.rows !== undefined) {
		const listed =
			readStageTable(written.rows.file, [...AT, "rows", "file"], files, desk, written.rows.columns) ?? [];
		return listed.map((stage) => overridden(stage, written.overrides));
	}
	if (written.interval === undefined) return [];
	const { from, to, shots, shot_diameter, phasing } = written.interval;
	const interval: PlacedStage = {
		number: 1,
		bottom: to,
		top: from,
		clusters: [],
		...maybe("shotsPerCluster", shots),
		...maybe("shotDiameter", shot_diameter),
		...maybe("phasing", phasing),
	};
	return [interval];
};

/** A listed stage with what an override says instead. */
const overridden = (stage: ListedStage, overrides: readonly Override[] | undefined): ListedStage => {
	const override = overrides?.find((each) => each.stage.value === stage.number);
	if (override === undefined) return stage;
	return {
		...stage,
		...maybe("bottom", override.bottom),
		...maybe("top", override.top),
		...maybe("clusters", override.clusters && [...override.clusters].sort((a, b) => b.value - a.value)),
		...maybe("shotsPerCluster", override.shots_per_cluster),
		...maybe("plug", override.plug),
		...maybe("why", override.why),
	};
};

const recordsOf = (written: StagesDefinition, files: ReadFile, desk: Desk): readonly StageRecord[] => {
	const { actual } = written;
	if (actual?.file !== undefined)
		return readRecordTable(actual.file, [...AT, "actual", "file"], files, desk, actual.columns);
	return (actual?.records ?? []).map((each, i): StageRecord => {
		const at: Path = [...AT, "actual", "records", i];
		return {
			number: each.stage.value,
			at: { path: [...at, "stage"] },
			dateAt: { path: [...at, "date"] },
			averageAt: { path: [...at, "average_pressure"] },
			actual: {
				...maybe("date", each.date),
				...maybe("averageRate", each.average_rate),
				...maybe("averagePressure", each.average_pressure),
				...maybe("maximumPressure", each.maximum_pressure),
				...maybe("breakdown", each.breakdown),
				...maybe("instantaneousShutIn", each.instantaneous_shut_in),
				...maybe("cleanVolume", each.clean_volume),
				...maybe("proppantMass", each.proppant_mass),
				...maybe("started", each.started),
				...maybe("ended", each.ended),
				...maybe("endedBy", each.ended_by),
				...maybe("problem", each.problem),
			},
		};
	});
};

/** Charts by the number of their stage. */
const chartsOf = (
	{ actual }: StagesDefinition,
	count: number,
	files: ReadFile,
	desk: Desk,
): ReadonlyMap<number, StageChart> =>
	new Map(
		(actual?.charts ?? []).flatMap((each, i): [number, StageChart][] => {
			const at: Path = [...AT, "actual", "charts", i];
			if (count > 0 && each.stage.value > count)
				unknownStage([...at, "stage"], each.stage.value, count, desk);
			const chart = readStageChart(each, at, files, desk);
			return chart === undefined ? [] : [[each.stage.value, chart]];
		}),
	);

const actualOf = (
	record: StageRecord | undefined,
	chart: StageChart | undefined,
): { readonly actual?: StageActual } =>
	record === undefined && chart === undefined
		? {}
		: { actual: { ...record?.actual, ...maybe("chart", chart) } };

/** A stage that an override gives its own steps has no ramp. */
const rampOf = (ramp: NonNullable<StagesDefinition["treatment"]["ramp"]>): NonNullable<Stage["ramp"]> => ({
	slurryVolume: ramp.slurry_volume,
	proppant: ramp.proppant,
	mass: ramp.mass,
	efficiency: ramp.efficiency,
	steps: ramp.steps,
});

/** Records of stages that do not exist; of several, once, for the count of stages is then most likely wrong. */
const tellOfRecords = (records: readonly StageRecord[], count: number, desk: Desk): void => {
	const strange = records.filter(
		({ number }) => count > 0 && (number < 1 || number > count || !Number.isInteger(number)),
	);
	const [first] = strange;
	if (first === undefined) return;
	if (strange.length === 1) {
		unknownStage(first.at, first.number, count, desk);
		return;
	}
	fault(desk, "well/unknown-stage", first.at, {
		what: message("well/unknown-stage.there-are-records-stages-that", { strange: String(strange.length) }),
		expected: message("well/unknown-stage.stages-from-1-to", { count: String(count) }),
		found: strange.map(({ number }) => number).join(", "),
		mend: message("well/unknown-stage.correct-count-stages-or-numbers"),
	});
};

const ISO = /^\d{4}-\d{2}-\d{2}$/;

/** What a record says that no stage can have done: a second time, on no date, or above its own maximum. */
const checkRecordRows = (records: readonly StageRecord[], desk: Desk): void => {
	const first = new Map<number, StageRecord>();
	const misdated = records.filter(({ actual: { date } }) => date !== undefined && !ISO.test(date));
	const [wrongDate] = misdated;
	if (wrongDate !== undefined)
		fault(desk, "well/stage-row", wrongDate.dateAt, {
			what: message("well/stage-row.date", { count: misdated.length }),
			expected: message("well/stage-row.date-such-as-2026-08"),
			found: wrongDate.actual.date ?? "",
			mend:
				misdated.length === 1
					? message("well/stage-row.write-it-so")
					: message("well/stage-row.write-dates-so-all-them"),
		});
	for (const record of records) {
		const { number, at, averageAt, actual } = record;
		const earlier = first.get(number);
		if (earlier === undefined) first.set(number, record);
		else
			fault(desk, "well/stage-row", at, {
				what: message("well/stage-row.there-is-second-record-stage", { number: String(number) }),
				expected: message("well/stage-row.one-record-for-stage"),
				found: String(number),
				mend: message("well/stage-row.correct-number-stage-or-take"),
				related: [{ at: earlier.at, label: message("well/stage-row.label") }],
			});
		const { averagePressure: average, maximumPressure: greatest } = actual;
		if (average !== undefined && greatest !== undefined && average.value > greatest.value)
			fault(desk, "well/stage-row", averageAt, {
				what: message("well/stage-row.average-pressure-stage-is-above", { number: String(number) }),
				expected: message("well/stage-row.at-most", { greatest: asWritten(greatest) }),
				found: asWritten(average),
				mend: message("well/stage-row.correct-whichever-two-is-wrong"),
			});
	}
};

const unknownStage = (
	at: Parameters<typeof fault>[2],
	number: number,
	count: number,
	desk: Desk,
): undefined =>
	fault(desk, "well/unknown-stage", at, {
		what: message("well/unknown-stage.there-is-no-stage", { number: String(number) }),
		expected: message("well/unknown-stage.expected", { count: String(count) }),
		found: String(number),
		mend: message("well/unknown-stage.mend"),
	});

const resolveStep = (step: StepsDefinition[number], rate: Known<"flow-rate">): TreatmentStep => ({
	name: step.name,
	...maybe("fluid", step.fluid),
	...maybe("proppant", step.proppant),
	...maybe("concentration", step.concentration),
	...("flush_to" in step.clean_volume
		? { flushTo: step.clean_volume.flush_to }
		: { cleanVolume: step.clean_volume }),
	rate: step.rate ?? rate,
});

const checkSteps = (
	steps: StepsDefinition,
	at: Path,
	{ proppants = [], additives = [] }: StimulationDefinition,
	desk: Desk,
): void => {
	const proppantIds = proppants.map(({ id }) => id);
	const additiveIds = additives.map(({ id }) => id);
	for (const [i, { proppant, concentration, fluid }] of steps.entries()) {
		if (proppant !== undefined && !proppantIds.includes(proppant))
			unknownReference(desk, [...at, i, "proppant"], message("well/thing.proppant"), proppant, proppantIds);
		if (fluid !== undefined && !additiveIds.includes(fluid))
			unknownReference(desk, [...at, i, "fluid"], message("well/thing.additive"), fluid, additiveIds);
		if ((proppant === undefined) !== (concentration === undefined))
			fault(desk, "well/step-material", [...at, i, proppant === undefined ? "concentration" : "proppant"], {
				what:
					proppant === undefined
						? message("well/step-material.what")
						: message("well/step-material.proppant-is-given-and-no"),
				expected: message("well/step-material.expected"),
				mend:
					proppant === undefined
						? message("well/step-material.mend")
						: message("well/step-material.state-its-concentration"),
			});
	}
};
