import type { OwnSlide } from "../../catalog/own-slides.ts";
import type { Block, Section } from "../../document/blocks.ts";
import type { Inline } from "../../document/inline.ts";
import type { Drawing } from "../../document/shapes.ts";
import { sequenceFrame } from "../../drawing/sequence/sequence-frame.ts";
import { DRAWING_WORDS } from "../../drawing/words/drawing-words.ts";
import { textWidth } from "../../measure/text-width.ts";
import type { PaperContext } from "../context.ts";
import { narrative } from "../narrative/narrative.ts";
import { stepWords } from "../narrative/step.ts";
import { ownWords } from "../own-words.ts";
import { aloud, blockAloud, frameEntry, frameOptions, inlinesOf, toldFrames } from "../sequence/frames.ts";
import type { WordedEntry } from "../words/worded-list.ts";
import { filledBlocks, filledWords, spokenIn } from "./own-slides.ts";
import { PICTURES, type PictureSize } from "./pictures.ts";
import { slideWords } from "./slide-words.ts";

/** One slide, and what its speaker should know. */
export interface Slide {
	readonly id: string;
	readonly title: string;
	/** At any size: large on the slide, small in the notes. */
	readonly picture?: (size: PictureSize) => Drawing | undefined;
	readonly say: readonly Block[];
	readonly ask?: string;
	readonly answer: readonly Inline[];
	/** The operator's own words to the same question. */
	readonly own?: string;
}

/** Where the steps of the well being built stand among the slides. */
export const SEQUENCE = "SEQUENCE";

type Data = Readonly<Record<string, unknown>>;

/** Everything that the words of slides may name. */
export const slideData = (context: PaperContext): Data => ({ ...narrative(context), ...slideWords(context) });

/**
 * The slides of a well, in order, with those of one's own among them; a shipped one that lacks what it needs is left out,
 * and what was to stand behind it keeps its place.
 */
export const slidesOf = (context: PaperContext): readonly Slide[] => {
	const data = slideData(context);
	const entries = context.words.slides();
	const own = (context.ownSlides ?? []).flatMap(({ slides }) => slides).map((slide, i) => ({ slide, i }));
	const last = entries.at(-1)?.id;
	const ownSlides = (of: (after: string | undefined) => boolean): readonly Slide[] =>
		own.filter(({ slide }) => of(slide.after)).map(({ slide, i }) => ownSlide(context, slide, i, data));
	return entries.flatMap((entry) => {
		const shown = entry.needs.every((need) => isThere(data[need]));
		const made = !shown
			? []
			: entry.id === SEQUENCE
				? sequenceSlides(context, data)
				: [slideOf(context, entry, data)];
		return [
			...(entry.id === last ? ownSlides((after) => after === undefined) : []),
			...made,
			...ownSlides((after) => after === (entry.id === SEQUENCE ? "steps" : entry.id)),
		];
	});
};

/** A slide as a presenter wrote it; its words were found good, and its values there. */
const ownSlide = (context: PaperContext, slide: OwnSlide, i: number, data: Data): Slide => {
	const { language } = context.words;
	const draw = PICTURES[slide.picture ?? ""];
	return {
		id: `own-${i + 1}`,
		title: spokenIn(slide.title, language),
		...(draw === undefined ? {} : { picture: (size) => draw(context, size) }),
		say: filledBlocks(spokenIn(slide.say, language), data).map(led),
		...(slide.ask === undefined ? {} : { ask: spokenIn(slide.ask, language) }),
		answer: slide.answer === undefined ? [] : filledWords(spokenIn(slide.answer, language), data).map(aloud),
	};
};

const isThere = (value: unknown): boolean => (Array.isArray(value) ? value.length > 0 : Boolean(value));

const slideOf = (context: PaperContext, entry: WordedEntry, data: Data): Slide => {
	const draw = PICTURES[entry.plain["picture"] ?? ""];
	return {
		id: entry.id,
		title: wordsOf(inlinesOf(entry.words["title"], data)),
		...(draw === undefined ? {} : { picture: (size) => draw(context, size) }),
		say: (entry.words["say"]?.(data) ?? []).map(led),
		...spoken(context, entry, data),
	};
};

const sequenceSlides = (context: PaperContext, data: Data): readonly Slide[] => {
	const { well, results } = context;
	const told = toldFrames(context);
	const steps = told.map(({ step }) => step);
	return told.map(
		(frame): Slide => ({
			id: `step-${frame.step.id}`,
			title: frame.title,
			picture: (size) =>
				sequenceFrame(well, results, steps, frame.step, frame.words, {
					...frameOptions(context, size),
					scale: DRAWING_WORDS[context.words.language].frameScaleShort,
				}),
			say: [{ kind: "paragraph", children: frame.say }],
			...spoken(context, frameEntry(context, frame.step), { ...data, ...stepWords(context, frame.step) }),
		}),
	);
};

/** What the speaker is likely to be asked, and what there is to answer. */
const spoken = (
	context: PaperContext,
	entry: WordedEntry,
	data: Data,
): Pick<Slide, "ask" | "answer" | "own"> => {
	const { ask, own: topic } = entry.plain;
	const said = topic === undefined ? undefined : ownWords(context, topic);
	return {
		...(ask === undefined ? {} : { ask }),
		answer: inlinesOf(entry.words["answer"], data).map(aloud),
		...(said === undefined ? {} : { own: said }),
	};
};

/** Large, as a slide has it. */
const led = (block: Block): Block => {
	const said = blockAloud(block);
	return said.kind === "paragraph" ? { ...said, tone: "lead" } : said;
};

/** Words alone: a title holds no value. */
const wordsOf = (inlines: readonly Inline[]): string =>
	inlines
		.map((inline) =>
			inline.kind === "text" ? inline.text : "children" in inline ? wordsOf(inline.children) : "",
		)
		.join("");

/** A picture under its title, with room for a sentence of two lines and for its scale: less under a title of two lines [pt]. */
const LARGE: PictureSize = { width: 864, height: 306, size: 20 };
const UNDER_TWO_LINES = 266;
/** Widest title of one line [pt], and its type. */
const ONE_LINE = { width: 850, size: 32 };

const sizeUnder = (title: string): PictureSize =>
	textWidth(title, { size: ONE_LINE.size, weight: "bold" }) > ONE_LINE.width
		? { ...LARGE, height: UNDER_TWO_LINES }
		: LARGE;

/** The slides as sections of a paper, a page each. */
export const slideSections = (context: PaperContext): readonly Section[] =>
	slidesOf(context).map(({ id, title, picture, say }, i): Section => {
		const drawing = picture?.(sizeUnder(title));
		return {
			id,
			title,
			// The first stands under the head of the paper.
			...(i === 0 ? {} : { newPage: true }),
			blocks: drawing === undefined ? say : [{ kind: "figure", drawing, caption: sentence(say) }],
		};
	});

const sentence = (blocks: readonly Block[]): readonly Inline[] =>
	blocks.flatMap((block) => (block.kind === "paragraph" ? block.children : []));
