import { JOB_IDS, type Job } from "../catalog/jobs.ts";
import type { Well } from "../well/well.ts";

/** A job of the well: which, and on which string where it is done once a string. */
export interface WellJob {
	readonly id: string;
	readonly string?: string;
	/** Whether the definition has its record already. */
	readonly done: boolean;
	/** The day of that record, where it says one. */
	readonly doneOn?: string;
}

/** `cementing-surface`: how a job is asked for, and how its pack is named. */
export const jobName = (job: { readonly id: string; readonly string?: string }): string =>
	job.string === undefined ? job.id : `${job.id}-${job.string}`;

const slug = (words: string): string => words.replaceAll(/\s+/gu, "-");

const recorded = (record: { readonly date?: string } | undefined): Pick<WellJob, "done" | "doneOn"> => ({
	done: record !== undefined,
	...(record?.date === undefined ? {} : { doneOn: record.date }),
});

/**
 * The jobs that the definition names, in the order of the well's life: string by string, then the treatment, then a
 * company's own.
 *
 * @param jobs data of jobs; those that do not ship with the tool are jobs of every well they are given for
 */
export const jobsOfWell = (well: Well, jobs: readonly Job[] = []): readonly WellJob[] => {
	const named = new Set((well.safety?.jobs ?? []).map(slug));
	const asked = (id: string): boolean => named.size === 0 || named.has(id);
	const treated = well.stimulation !== undefined;
	const stages = well.stimulation?.stages ?? [];
	const stagesDone = stages.length > 0 && stages.every((stage) => stage.actual !== undefined);
	const last = stages.at(-1)?.actual?.date;
	const treatedOn = { done: stagesDone, ...(stagesDone && last !== undefined ? { doneOn: last } : {}) };
	/** A job that is a phase of the schedule is done when that has its last day on record. */
	const phaseDone = (id: string): Pick<WellJob, "done" | "doneOn"> => {
		const ended = (well.schedule ?? []).find(({ phase }) => slug(phase) === id)?.actual?.ended;
		return ended === undefined ? { done: false } : { done: true, doneOn: ended };
	};
	const perString = well.strings.flatMap((string): WellJob[] => [
		{
			id: "casing",
			string: string.id,
			...recorded(
				string.plannedShoe === undefined && string.landed === undefined
					? undefined
					: string.landed === undefined
						? {}
						: { date: string.landed },
			),
		},
		...(string.cement ? [{ id: "cementing", string: string.id, ...recorded(string.cement.actual) }] : []),
		...(string.pressureTest
			? [{ id: "pressure-test", string: string.id, ...recorded(string.pressureTest.actual) }]
			: []),
	]);
	const treatment: WellJob[] = treated
		? [
				{ id: "wireline-and-perforating", ...treatedOn },
				{ id: "pumping", ...treatedOn },
				{ id: "plug-drill-out", ...phaseDone("plug-drill-out") },
				{ id: "flowback", ...phaseDone("flowback") },
			]
		: [];
	const begun = perString.some((job) => job.done);
	const before: WellJob[] = [
		{ id: "rig-up", done: begun },
		...(well.wellControl ? [{ id: "preventer-test", done: begun }] : []),
	];
	const own = jobs
		.filter(({ id }) => JOB_IDS.every((shipped) => shipped !== id))
		.flatMap(({ id, on }): WellJob[] =>
			on === "well"
				? [{ id, done: false }]
				: well.strings.map((string) => ({ id, string: string.id, done: false })),
		);
	return [...[...before, ...perString, ...treatment].filter((job) => asked(job.id)), ...own];
};

/** The first job without a record; the last one where all have theirs. */
export const nextJob = (jobs: readonly WellJob[]): WellJob | undefined =>
	jobs.find((job) => !job.done) ?? jobs.at(-1);

/** The job asked for: `pumping`, or `cementing-surface`; a string's job without a string is the first not done. */
export const findJob = (jobs: readonly WellJob[], asked: string): WellJob | undefined =>
	jobs.find((job) => jobName(job) === slug(asked)) ?? nextJob(jobs.filter((job) => job.id === slug(asked)));
