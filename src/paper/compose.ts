import type { Block, Section, SheetName } from "../document/blocks.ts";
import type { BoundPaper, Imprint, PaperDocument } from "../document/document.ts";
import type { Drawing } from "../document/shapes.ts";
import type { PaperContext } from "./context.ts";
import { jobTitle } from "./crew/job.ts";
import { findingsFor } from "./findings-for.ts";
import { jobName } from "./jobs.ts";
import { isBuilt, isFinished } from "./narrative/done.ts";
import { narrative } from "./narrative/narrative.ts";
import { PARTS } from "./parts/index.ts";
import { named } from "./parts/part.ts";
import { keysIn, placesIn } from "./places.ts";
import { saidIn, wordsIn } from "./said.ts";
import { noteSections } from "./slides/notes.ts";
import { slideSections } from "./slides/slides.ts";
import type { OrderSection, PageOrder } from "./words/page-order.ts";

/**
 * Sets one paper: its page order, filled with the language's words and with parts made from the findings. A section
 * that comes out empty is left out, so that no heading stands over nothing.
 *
 * @throws Error for an order that names an unknown part or a template that names unknown data: faults of ours
 */
export const composePaper = (asked: PaperContext): PaperDocument => {
	const context: PaperContext = {
		...findingsFor(asked, asked.paper),
		...(asked.paper === "answers" || asked.paper === "notes"
			? { printedAt: placesIn(composePaper({ ...asked, paper: "regulator" })) }
			: {}),
	};
	const order = context.words.order(context.paper);
	if (context.paper === "slides" || context.paper === "notes")
		return talkOf(
			context,
			order,
			context.paper === "slides" ? slideSections(context) : noteSections(context),
		);
	const data = narrative(context);
	const early = order.sections.map((section) =>
		isLate(section) ? [] : sectionBlocks(section, context, data),
	);
	const said = early.flatMap(wordsIn).join(" ");
	const after: PaperContext = {
		...context,
		saidElsewhere: saidIn(said),
		printedKeys: new Set(early.flatMap(keysIn)),
		drawn: early.flatMap(drawingsIn),
	};
	const filled = order.sections
		.map((section, i) => ({
			section,
			blocks: isLate(section) ? sectionBlocks(section, after, data) : (early[i] ?? []),
		}))
		.filter(({ blocks }) => blocks.some((block) => block.kind !== "page-break"));
	const body = filled.filter(({ section }) => !section.appendix).length;
	const sections = filled.map(
		({ section, blocks }, i): Section => ({
			id: section.id,
			title: (isFinished(context) ? section.titleDone : undefined) ?? section.title,
			...(order.numbered ? { number: section.appendix ? letter(i - body) : String(i + 1) } : {}),
			...(section.newPage || (section.appendix && i === body) ? { newPage: true } : {}),
			...(section.appendix ? { appendix: true } : {}),
			...(section.onePage ? { onePage: true } : {}),
			...(section.headless ? { headless: true } : {}),
			blocks,
		}),
	);
	return {
		paper: context.paper,
		...partOf(context),
		language: context.words.language,
		units: context.units,
		setting: order.setting,
		...(order.sheet === undefined ? {} : { sheet: jobSheet(context) }),
		imprint: imprint(
			context,
			(isBuilt(context) ? order.titleBuilt : undefined) ?? order.title,
			order.subtitle,
		),
		sections,
	};
};

/** Metric readers print on A4. */
const jobSheet = ({ units }: PaperContext): SheetName => (units === "metric" ? "job-a4" : "job-letter");
/** Slides and their notes: made of claims and steps, and of no page order. */
const talkOf = (context: PaperContext, order: PageOrder, sections: readonly Section[]): PaperDocument => ({
	paper: context.paper,
	language: context.words.language,
	units: context.units,
	setting: order.setting,
	...(context.paper === "slides" ? { sheet: "screen" } : {}),
	imprint: imprint(context, (isBuilt(context) ? order.titleBuilt : undefined) ?? order.title, order.subtitle),
	sections,
});

/** Parts that speak of what the rest of the paper says and shows. */
const LATE: ReadonlySet<string> = new Set(["glossary", "drawings-left-out", "other-inputs"]);
const isLate = ({ content }: OrderSection): boolean =>
	content.some((item) => "part" in item && LATE.has(item.part));

const drawingsIn = (blocks: readonly Block[]): readonly Drawing[] =>
	blocks.flatMap((block) => (block.kind === "figure" ? [block.drawing] : []));

const letter = (i: number): string => String.fromCodePoint("A".charCodeAt(0) + i);

const sectionBlocks = (
	section: OrderSection,
	context: PaperContext,
	data: Readonly<Record<string, unknown>>,
): readonly Block[] =>
	section.content.flatMap((item): readonly Block[] => {
		if ("words" in item) return context.words.blocks(context.paper, item.words, data);
		const part = PARTS[item.part];
		if (part === undefined)
			throw new Error(`the page order of ${context.paper} names no known part: "${item.part}"`);
		return part(context);
	});

const partOf = ({ job, neighbor }: PaperContext): { readonly part?: string } => {
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
		...(identity.valid_until === undefined ? {} : { validUntil: identity.valid_until }),
		digest: context.digest,
		caution: label("imprint.caution"),
		subject: label(`imprint.subject.${bound}`),
		words: {
			page: label("imprint.page"),
			of: label("imprint.of"),
			revision: label("imprint.revision"),
			contents: label("imprint.contents"),
		},
	};
};
