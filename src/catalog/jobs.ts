import * as z from "zod";

/*
 * Form of `seeds/jobs/<id>.yaml` and of a company's own file of jobs: which numbers stand on a job's sheet, its steps, and
 * what the crew goes through before it. `seeds/jobs/README.md` tells how to write one.
 */

/** Words in the languages of the crews. A company that writes in one language alone has that one printed. */
const inLanguages = z.strictObject({ en: z.string().min(1), es: z.string().min(1) });
const words = z.union([inLanguages, z.string().min(1)]);

/** Keys of the bibliography, or a citation in words: whose rule, guide or habit it is. */
const source = z.array(z.string().min(1)).min(1);

const item = z.strictObject({
	en: z.string().min(1),
	es: z.string().min(1).optional(),
	/** What the pad must have for the line to be one of the sheet. */
	needs: z.literal("other-wells").optional(),
	source,
});

const step = z.strictObject({
	source,
	/** What the job must have for the step to be a step of it. */
	needs: z.literal("plug").optional(),
	step: words,
	hazard: words,
	control: words,
	stop_if: words,
});

const number = z.strictObject({
	/** A value of the sheet: `SHEET_VALUES` in `src/paper/crew/numbers.ts`. */
	value: z.string().regex(/^[a-z][a-z_]*$/),
	/** The job must not start without it. */
	critical: z.boolean().optional(),
	/** An operating number: where it is missing the sheet says so, and the job may start. */
	operating: z.boolean().optional(),
	/** One of the five that are set large. */
	large: z.boolean().optional(),
	/** Printed among the limits, and so not among the numbers. */
	limit: z.boolean().optional(),
});

const question = z.strictObject({
	/** A question of the labels, `crew.ask`, or one of a company's own. */
	question: words,
	/** The values of this sheet that answer it. */
	answers: z.array(z.string().regex(/^[a-z][a-z_]*$/)).min(1),
});

/** What the crew goes through beside the numbers and steps, by the heading it stands under. */
const items = {
	roles: z.array(item).optional(),
	ppe: z.array(item).optional(),
	permits: z.array(item).optional(),
	alongside: z.array(item).optional(),
	signals: z.array(item).optional(),
	chemicals: z.array(item).optional(),
	weather: z.array(item).optional(),
	lessons: z.array(item).optional(),
};

const id = z.string().regex(/^[a-z][a-z-]*$/);

export const jobSchema = z.strictObject({
	id,
	/** In the languages of the crews; a shipped job has its name among the labels. */
	name: words.optional(),
	/** Done once a casing string, or once for the well. */
	on: z.enum(["string", "well"]),
	numbers: z.array(number).min(1),
	ask: z.array(question).min(1),
	/** Facts of the site that the job meets, beside those that every sheet has. */
	site: z.array(z.string().regex(/^[a-z][a-z_]*$/)),
	/** Whether the additives of the treatment are handled, so that the crew is told how. */
	additives: z.boolean().optional(),
	...items,
	steps: z.array(step).min(1),
});

/** What every job is prepared with. */
export const commonSchema = z.strictObject({ id: z.literal("common"), ...items });

/** What a company adds to a shipped job: lists are added behind the job's own. */
const additionSchema = z.strictObject({
	id,
	numbers: z.array(number).optional(),
	ask: z.array(question).optional(),
	site: z.array(z.string()).optional(),
	...items,
	steps: z.array(step).optional(),
});

/** Form of a company's own file of jobs. */
export const ownJobsSchema = z.strictObject({
	jobs: z.array(z.union([jobSchema.required({ name: true }), additionSchema])).min(1),
});

export type Job = z.infer<typeof jobSchema>;
export type CommonItems = z.infer<typeof commonSchema>;
export type OwnJobs = z.infer<typeof ownJobsSchema>;
export type JobItem = z.infer<typeof item>;
export type JobWords = z.infer<typeof words>;

/** The headings that items stand under. */
export const ITEM_LISTS = Object.keys(items) as readonly (keyof typeof items)[];
export type ItemList = (typeof ITEM_LISTS)[number];

/** In the order of a well's life; the file names of `seeds/jobs/`. */
export const JOB_IDS = [
	"rig-up",
	"casing",
	"cementing",
	"preventer-test",
	"pressure-test",
	"wireline-and-perforating",
	"pumping",
	"plug-drill-out",
	"flowback",
] as const;

const both = <T>(before: readonly T[] = [], more: readonly T[] = []): T[] => [...before, ...more];

/** A job with more in its lists. */
const withMore = (job: Job, more: OwnJobs["jobs"][number] | CommonItems): Job => ({
	...job,
	...("numbers" in more ? { numbers: both(job.numbers, more.numbers) } : {}),
	...("ask" in more ? { ask: both(job.ask, more.ask) } : {}),
	...("site" in more ? { site: both(job.site, more.site) } : {}),
	...("steps" in more ? { steps: both(job.steps, more.steps) } : {}),
	...Object.fromEntries(ITEM_LISTS.map((list) => [list, both(job[list], more[list])])),
});

/** Each job with what every job is prepared with behind its own. */
export const withCommon = (jobs: readonly Job[], common: CommonItems): Job[] =>
	jobs.map((job) => withMore(job, common));

/**
 * The shipped jobs with what a company's own files say: what names a shipped job is added to it, behind its own; what names
 * no shipped job is a job of its own, and needs all that a job has.
 *
 * @returns the jobs, and the ids that name no job and are none
 */
export const withOwnJobs = (
	jobs: readonly Job[],
	own: readonly OwnJobs[],
	common: CommonItems,
): { readonly jobs: readonly Job[]; readonly unknown: readonly string[] } => {
	let all = [...jobs];
	const unknown: string[] = [];
	for (const each of own.flatMap((file) => file.jobs)) {
		if (all.some((job) => job.id === each.id))
			all = all.map((job) => (job.id === each.id ? withMore(job, each) : job));
		else if ("on" in each) all.push(...withCommon([each as Job], common));
		else unknown.push(each.id);
	}
	return { jobs: all, unknown };
};
