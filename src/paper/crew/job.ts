import type { Job, JobWords } from "../../catalog/jobs.ts";
import type { CasingString } from "../../well/well.ts";
import type { PaperContext } from "../context.ts";

/** The data of the job that a sheet is made for. */
export const jobOf = (context: PaperContext): Job | undefined =>
	context.jobs.find((entry) => entry.id === context.job?.id);

/** The string that a job is done on. */
export const stringOf = (context: PaperContext): CasingString | undefined =>
	context.well.strings.find((string) => string.id === context.job?.string);

/** Words of a job's data in the paper's language; what a company gave in one language alone is printed as it gave it. */
export const inPaperWords = (
	{ words }: PaperContext,
	said: JobWords | { readonly en: string; readonly es?: string | undefined },
): string => (typeof said === "string" ? said : (said[words.language] ?? said.en));

/** What the job is called: a shipped one among the labels, a company's own by its data. */
export const jobTitle = (context: PaperContext, id: string): string => {
	const { findLabel } = context.words;
	const name = context.jobs.find((entry) => entry.id === id)?.name;
	return findLabel(`jobs.${id}`) ?? (name === undefined ? id : inPaperWords(context, name));
};

/** Whether the definition has the record of the job already: nothing of it is still to be set. */
export const isDone = ({ job }: PaperContext): boolean => job?.done === true;
