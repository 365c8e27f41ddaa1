import * as z from "zod";

/** Form of `seeds/jobs/<id>.yaml`: which numbers stand on a job's sheet, and which of them it must not start without. */
export const jobSchema = z.strictObject({
	id: z.string().regex(/^[a-z][a-z-]*$/),
	/** Done once a casing string, or once for the well. */
	on: z.enum(["string", "well"]),
	numbers: z
		.array(
			z.strictObject({
				value: z.string().regex(/^[a-z][a-z_]*$/),
				critical: z.boolean().optional(),
				large: z.boolean().optional(),
			}),
		)
		.min(1),
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
