import type { Block, Section } from "../document/blocks.ts";
import type { Drawing } from "../document/shapes.ts";
import type { PaperContext } from "./context.ts";
import { spokenJob } from "./imprint.ts";
import { jobName } from "./jobs.ts";
import { isFinished } from "./narrative/done.ts";
import { narrative } from "./narrative/narrative.ts";
import { PARTS } from "./parts/index.ts";
import { wordsHere } from "./parts/public.ts";
import { keysIn } from "./places.ts";
import { saidIn, wordsIn } from "./said.ts";
import { blockAloud } from "./sequence/frames.ts";
import { leavesOf, type OrderItem, type OrderSection, type PageOrder } from "./words/page-order.ts";

/** A section of a page order with what came of it. */
interface FilledSection {
	readonly section: OrderSection;
	readonly blocks: readonly Block[];
}

/** A paper on its way: its order, and its sections as far as they speak of the well alone. */
export interface Begun {
	readonly context: PaperContext;
	readonly order: PageOrder;
	readonly data: Readonly<Record<string, unknown>>;
	readonly early: readonly FilledSection[];
}

/**
 * Fills the sections of a paper that speak of the well; those that speak of the paper wait.
 *
 * @throws Error for an order that names an unknown part or a template that names unknown data: faults of ours
 */
export const begin = (context: PaperContext): Begun => {
	const order = context.words.order(context.paper);
	const data = narrative(context);
	const explained = new Set<string>();
	const early = order.sections.map((section) => ({
		section,
		blocks: isLate(section)
			? []
			: explainedIn(section, sectionBlocks(section, context, data), context, explained),
	}));
	return { context, order, data, early };
};

/** Fills the sections that speak of what this paper, and those read with it, say and show; leaves out what came to nothing. */
export const finish = (
	{ context, data, early }: Begun,
	besides: readonly Begun[] = [],
): readonly FilledSection[] => {
	const blocks = [...besides.flatMap((other) => other.early), ...early].flatMap((filled) => filled.blocks);
	const after: PaperContext = {
		...context,
		saidElsewhere: saidIn(wordsIn(blocks).join(" ")),
		printedKeys: new Set(keysIn(blocks)),
		drawn: drawingsIn(blocks),
	};
	return early
		.map(({ section, blocks: found }) => ({
			section,
			blocks: isLate(section) ? sectionBlocks(section, after, data) : found,
		}))
		.filter((filled) => filled.blocks.some(({ kind }) => kind !== "page-break"));
};

const letter = (i: number): string => String.fromCodePoint("A".charCodeAt(0) + i);

/** Filled sections as the document has them: titled, and told by number or letter. */
export const sectioned = (
	context: PaperContext,
	order: PageOrder,
	filled: readonly FilledSection[],
): readonly Section[] => {
	let count = -1;
	return filled.map(({ section, blocks }): Section => {
		if (!section.unnumbered) count += 1;
		const number =
			order.numbered === false || section.unnumbered
				? undefined
				: order.numbered === "letters"
					? letter(count)
					: String(count + 1);
		return {
			id: section.id,
			title: (isFinished(context) ? section.titleDone : undefined) ?? section.title,
			...(number === undefined ? {} : { number }),
			...(section.newPage ? { newPage: true } : {}),
			...(section.onePage ? { onePage: true } : {}),
			...continuation(context, section),
			...(section.headless ? { headless: true } : {}),
			...(section.sheet === undefined ? {} : { sheet: section.sheet }),
			blocks,
		};
	});
};

/** Where what does not fit on a side of a job's sheet goes. */
const continuation = (context: PaperContext, { continued }: OrderSection): Pick<Section, "goesOn"> =>
	continued === undefined || context.job === undefined
		? {}
		: {
				goesOn: {
					sheet: jobName(context.job),
					title: `${continued}: ${spokenJob(context, context.job)}`,
					readAlso: context.words.label("crew.read_also"),
				},
			};

/** In prose for neighbors units are words: `984 feet`, `12 hours`. */
const READ_ALOUD: ReadonlySet<string> = new Set(["landowner", "handout", "answers"]);
const isReadAloud = ({ paper }: PaperContext): boolean => READ_ALOUD.has(paper);

/** Parts that speak of what the rest of the paper says and shows. */
const LATE: ReadonlySet<string> = new Set(["drawings-left-out", "other-inputs"]);
const isLate = ({ content }: OrderSection): boolean =>
	leavesOf(content).some((item) => "part" in item && LATE.has(item.part));

const drawingsIn = (blocks: readonly Block[]): readonly Drawing[] =>
	blocks.flatMap((block) =>
		block.kind === "figure"
			? [block.drawing]
			: block.kind === "beside"
				? drawingsIn([...block.left, ...block.right])
				: [],
	);

/** Words of the trade are explained behind the section that has them first, where its order names `words-here`. */
const WORDS_HERE = "words-here";
const explainedIn = (
	{ content }: OrderSection,
	blocks: readonly Block[],
	context: PaperContext,
	explained: Set<string>,
): readonly Block[] =>
	leavesOf(content).some((item) => "part" in item && item.part === WORDS_HERE)
		? [...blocks, ...wordsHere(context, saidIn(wordsIn(blocks).join(" ")), explained)]
		: blocks;

const sectionBlocks = (
	section: OrderSection,
	context: PaperContext,
	data: Readonly<Record<string, unknown>>,
): readonly Block[] => itemBlocks(section.content, context, data);

const itemBlocks = (
	items: readonly OrderItem[],
	context: PaperContext,
	data: Readonly<Record<string, unknown>>,
): readonly Block[] =>
	items.flatMap((item): readonly Block[] => {
		if ("words" in item) {
			const said = context.words.blocks(context.paper, item.words, data);
			return isReadAloud(context) ? said.map(blockAloud) : said;
		}
		if ("beside" in item) {
			const [left, right] = [item.beside.left, item.beside.right].map((of) => itemBlocks(of, context, data));
			// One that has nothing beside it takes the width.
			if (left === undefined || right === undefined || left.length === 0 || right.length === 0)
				return [...(left ?? []), ...(right ?? [])];
			return [{ kind: "beside", share: item.beside.share, left, right }];
		}
		const part = PARTS[item.part];
		if (part === undefined)
			throw new Error(`the page order of ${context.paper} names no known part: "${item.part}"`);
		return part(context);
	});
