import type { BoundPaper, Imprint } from "../document/document.ts";
import type { PaperContext } from "./context.ts";
import { jobTitle } from "./crew/job.ts";
import { jobName } from "./jobs.ts";
import { isBuilt } from "./narrative/done.ts";
import { sayDate } from "./narrative/say.ts";
import { named } from "./parts/part.ts";
import type { PageOrder } from "./words/page-order.ts";

/** Of a crew pack or a neighbor's own edition: what its file name adds. */
export const partOf = ({ job, neighbor }: PaperContext): { readonly part?: string } => {
	if (job !== undefined) return { part: jobName(job) };
	return neighbor === undefined ? {} : { part: neighbor.id };
};

/** A string has its jobs as the others have theirs: a sheet that did not say whose could be read out for another's. */
export const spokenJob = (
	context: PaperContext,
	{ id, string }: NonNullable<PaperContext["job"]>,
): string => {
	const { label } = context.words;
	const name = jobTitle(context, id);
	if (string === undefined) return name;
	return label("phrases.job_of_string")
		.replace("{job}", name)
		.replace("{string}", named(context, string).toLowerCase());
};

/** Papers that are given, shown or read out to the public: they call themselves a version. */
const PUBLIC: ReadonlySet<BoundPaper> = new Set(["landowner", "handout", "slides", "notes", "answers"]);

/** What the head, foot and metadata of a paper say of this well. */
export const imprint = (
	context: PaperContext,
	title: string,
	subtitle: string | undefined,
	bound: BoundPaper = context.paper,
): Imprint => {
	const { identity } = context.well;
	const label = context.words.label;
	const job = context.job === undefined ? undefined : spokenJob(context, context.job);
	const open = PUBLIC.has(bound);
	const revision = identity.revisions?.at(-1)?.id;
	const place = context.well.neighbors.find(({ id }) => id === context.neighbor?.id);
	const line = place === undefined ? subtitle : label("imprint.copy_for").replace("{name}", place.name);
	return {
		operator: identity.operator,
		well: identity.name,
		...(identity.api_number === undefined ? {} : { apiNumber: identity.api_number }),
		title: job === undefined ? title : `${title}: ${job}`,
		...(line === undefined ? {} : { subtitle: line }),
		state: label(`states.${identity.state}`),
		revision: revision ?? "–",
		issued: identity.issued,
		issuedAs: sayDate(context, identity.issued) || identity.issued,
		// To a neighbor a second date beside the day of issue says nothing: how long to comment stands on the page.
		...(identity.valid_until === undefined || open
			? {}
			: { validUntil: sayDate(context, identity.valid_until) || identity.valid_until }),
		digest: context.digest,
		caution: label("imprint.caution"),
		subject: label(`imprint.subject.${bound}`),
		words: {
			page: label("imprint.page"),
			of: label("imprint.of"),
			revision: label(open ? "imprint.version" : "imprint.revision"),
			contents: label("imprint.contents"),
		},
	};
};

/** The same by a page order: its title, or that of a well that is drilled. */
export const imprintOf = (context: PaperContext, order: PageOrder): Imprint =>
	imprint(
		context,
		(context.pad === undefined ? undefined : order.titleSeveral) ??
			(isBuilt(context) ? order.titleBuilt : undefined) ??
			order.title,
		order.subtitle,
	);
