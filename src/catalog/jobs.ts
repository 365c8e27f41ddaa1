import * as z from "zod";

/**
 * Form of `seeds/jobs/<id>.yaml`: which numbers stand on a job's sheet, which of them it must not start without, and what
 * the crew is asked back.
 */
export const jobSchema = z.strictObject({
	id: z.string().regex(/^[a-z][a-z-]*$/),
	/** Done once a casing string, or once for the well. */
	on: z.enum(["string", "well"]),
	numbers: z
		.array(
			z.strictObject({
				value: z.string().regex(/^[a-z][a-z_]*$/),
				/** The job must not start without it. */
				critical: z.boolean().optional(),
				/** An operating number: where it is missing the sheet says so, and the job may start. */
				operating: z.boolean().optional(),
				large: z.boolean().optional(),
			}),
		)
		.min(1),
	/** Questions asked back, each with the values of this sheet that answer it. */
	ask: z
		.array(
			z.strictObject({
				question: z.string().regex(/^[a-z][a-z_]*$/),
				answers: z.array(z.string().regex(/^[a-z][a-z_]*$/)).min(1),
			}),
		)
		.min(1),
	/** Whether the additives of the treatment are handled, so that the crew is told how. */
	additives: z.boolean().optional(),
});

export type Job = z.infer<typeof jobSchema>;

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

export type JobId = (typeof JOB_IDS)[number];
