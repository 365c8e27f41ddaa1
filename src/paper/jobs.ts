import type { JobId } from "../catalog/jobs.ts";
import { JOB_IDS } from "../catalog/jobs.ts";
import type { Well } from "../well/well.ts";

/** A job of the well: which, and on which string where it is done once a string. */
export interface WellJob {
	readonly id: JobId;
	readonly string?: string;
	/** Whether the definition has its record already. */
	readonly done: boolean;
}

/** `cementing-surface`: how a job is asked for, and how its pack is named. */
export const jobName = (job: { readonly id: string; readonly string?: string }): string =>
	job.string === undefined ? job.id : `${job.id}-${job.string}`;

const slug = (words: string): string => words.replaceAll(/\s+/gu, "-");

/** The jobs that the definition names, in the order of the well's life: string by string, then the treatment. */
export const jobsOfWell = (well: Well): readonly WellJob[] => {
	const named = new Set((well.safety?.jobs ?? []).map(slug));
	const asked = (id: JobId): boolean => named.size === 0 || named.has(id);
	const treated = well.stimulation !== undefined;
	const stagesDone = well.stimulation?.stages.every((stage) => stage.actual !== undefined) ?? false;
	const perString = well.strings.flatMap((string): WellJob[] => [
		{ id: "casing", string: string.id, done: string.plannedShoe !== undefined },
		...(string.cement
			? [{ id: "cementing" as const, string: string.id, done: string.cement.actual !== undefined }]
			: []),
		...(string.pressureTest
			? [{ id: "pressure-test" as const, string: string.id, done: string.pressureTest.actual !== undefined }]
			: []),
	]);
	const treatment: WellJob[] = treated
		? [
				{ id: "wireline-and-perforating", done: stagesDone },
				{ id: "pumping", done: stagesDone },
				{ id: "plug-drill-out", done: false },
				{ id: "flowback", done: false },
			]
		: [];
	const before: WellJob[] = [
		{ id: "rig-up", done: perString.some((job) => job.done) },
		...(well.wellControl ? [{ id: "preventer-test" as const, done: perString.some((job) => job.done) }] : []),
	];
	return [...before, ...perString, ...treatment].filter((job) => asked(job.id) && JOB_IDS.includes(job.id));
};

/** The first job without a record; the last one where all have theirs. */
export const nextJob = (jobs: readonly WellJob[]): WellJob | undefined =>
	jobs.find((job) => !job.done) ?? jobs.at(-1);

/** The job asked for: `pumping`, or `cementing-surface`; a string's job without a string is the first not done. */
export const findJob = (jobs: readonly WellJob[], asked: string): WellJob | undefined =>
	jobs.find((job) => jobName(job) === slug(asked)) ?? nextJob(jobs.filter((job) => job.id === slug(asked)));
