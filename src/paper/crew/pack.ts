import type { Block, Section } from "../../document/blocks.ts";
import type { PaperDocument } from "../../document/document.ts";
import { capital } from "../../messages/print.ts";
import { composePaper } from "../compose.ts";
import type { PaperContext } from "../context.ts";
import { findingsFor } from "../findings-for.ts";
import { spokenJob } from "../imprint.ts";
import { jobName, type WellJob } from "../jobs.ts";
import { narrative } from "../narrative/narrative.ts";
import { POSTER, POSTER_JOB, posterSection } from "./poster.ts";

/** What `--job` calls the pack of every job. */
export const ALL_JOBS = "all";

/** A place of one sheet is named once in it, and again in the next. */
const unnamed = (block: Block): Block => {
	if (block.kind !== "table" && block.kind !== "figure") return block;
	const { id: _, ...rest } = block;
	return rest;
};

const posterOf = (context: PaperContext, jobs: readonly WellJob[]): Section | undefined => {
	const job = jobs.find(({ id }) => id === POSTER_JOB);
	if (job === undefined) return undefined;
	const own: PaperContext = { ...findingsFor(context, "crew"), job };
	return posterSection(own, narrative(own));
};

/** The sheets of all jobs in one paper: a list of them, each on its two pages, and the poster behind. */
export const crewPack = (context: PaperContext, jobs: readonly WellJob[]): PaperDocument | undefined => {
	const { label, order } = context.words;
	const sheets = jobs.map((job) => ({
		name: jobName(job),
		title: capital(spokenJob({ ...context, job }, job)),
		paper: composePaper({ ...context, job }),
	}));
	const [first] = sheets;
	if (first === undefined) return undefined;
	const poster = posterOf(context, jobs);
	return {
		...first.paper,
		part: ALL_JOBS,
		imprint: { ...first.paper.imprint, title: `${order("crew").title}: ${label("crew.all_jobs")}` },
		sections: [
			{
				id: "jobs",
				title: label("crew.jobs"),
				onePage: true,
				headless: true,
				unlisted: true,
				blocks: [{ kind: "contents" }],
			},
			...sheets.flatMap(({ name, title, paper }) =>
				paper.sections.map(
					({ headless, ...section }): Section => ({
						...section,
						id: `${name}-${section.id}`,
						title: headless === true ? title : `${title}: ${section.title.toLowerCase()}`,
						newPage: true,
						...(headless === true ? {} : { unlisted: true }),
						blocks: section.blocks.map(unnamed),
					}),
				),
			),
			...(poster === undefined ? [] : [poster]),
		],
	};
};

/** The wall poster by itself; nothing where the well has no pressure ladder. */
export const crewPoster = (context: PaperContext, jobs: readonly WellJob[]): PaperDocument | undefined => {
	const poster = posterOf(context, jobs);
	const job = jobs.find(({ id }) => id === POSTER_JOB);
	if (poster === undefined || job === undefined) return undefined;
	const { sheet, ...paper } = composePaper({ ...context, job });
	return {
		...paper,
		part: POSTER,
		...(poster.sheet === undefined ? {} : { sheet: poster.sheet }),
		imprint: { ...paper.imprint, title: poster.title },
		sections: [{ ...poster, headless: true }],
	};
};
