import type { Block } from "../../document/blocks.ts";
import type { Inline } from "../../document/inline.ts";
import type { FrameOptions, StepWords } from "../../drawing/sequence/sequence-frame.ts";
import { toldSteps, type WellStep } from "../../drawing/sequence/steps.ts";
import { DRAWING_WORDS } from "../../drawing/words/drawing-words.ts";
import type { PaperContext } from "../context.ts";
import { narrative } from "../narrative/narrative.ts";
import { stepWords } from "../narrative/step.ts";
import type { Template } from "../words/template.ts";
import type { WordedEntry } from "../words/worded-list.ts";

/** One step as it is told: its words as parts of a paper, and as a drawing takes them. */
interface ToldStep {
	readonly step: WellStep;
	/** From 1. */
	readonly number: number;
	readonly title: string;
	readonly say: readonly Inline[];
	readonly shows: string;
	readonly words: StepWords;
}

/** The steps of the well with their words, for the reader of one paper. */
export const toldFrames = (context: PaperContext): readonly ToldStep[] => {
	const data = narrative(context);
	return toldSteps(context.well, context.results).map((step, i) => toldStep(context, step, i + 1, data));
};

export const toldStep = (
	context: PaperContext,
	step: WellStep,
	number: number,
	data: Readonly<Record<string, unknown>>,
): ToldStep => {
	const entry = frameEntry(context, step);
	const filled = { ...data, ...stepWords(context, step) };
	const fill = (name: string): readonly Inline[] => inlinesOf(entry.words[name], filled);
	const say = fill("say").map(aloud);
	const [title, shows] = [plain(fill("title")), plain(fill("shows"))];
	return {
		step,
		number,
		title,
		say,
		shows,
		words: {
			title,
			shows,
			say: say.map((part) =>
				part.kind === "quantity" ? part : part.kind === "text" ? part.text : plain([part]),
			),
		},
	};
};

/**
 * The words of a step: the last string's steps have their own.
 *
 * @throws Error for a kind of step without words: a fault of ours
 */
export const frameEntry = ({ well, words }: PaperContext, step: WellStep): WordedEntry => {
	const last = step.string !== undefined && step.string === well.strings.at(-1)?.id;
	const several = well.strings.filter(({ id }) => id !== "conductor").length > 1;
	const entries = words.frames();
	const named = (id: string) => entries.find((entry) => entry.id === id);
	const entry = (last && several ? named(`${step.kind}_last`) : undefined) ?? named(step.kind);
	if (entry === undefined) throw new Error(`sequence/frames.yaml has no words for "${step.kind}"`);
	return entry;
};

/** The words of a template's paragraphs, one after another. */
export const inlinesOf = (
	template: Template | undefined,
	data: Readonly<Record<string, unknown>>,
): readonly Inline[] =>
	(template?.(data) ?? []).flatMap((block) => (block.kind === "paragraph" ? block.children : []));

/** A value as it is said to a room. */
export const aloud = (inline: Inline): Inline => {
	if (inline.kind === "quantity") return { ...inline, style: { ...inline.style, spoken: true } };
	return "children" in inline ? { ...inline, children: inline.children.map(aloud) } : inline;
};

/** The same of a whole paragraph, list or callout. */
export const blockAloud = (block: Block): Block => {
	switch (block.kind) {
		case "paragraph":
			return { ...block, children: block.children.map(aloud) };
		case "list":
			return { ...block, items: block.items.map((item) => item.map(blockAloud)) };
		case "callout":
			return { ...block, blocks: block.blocks.map(blockAloud) };
		default:
			return block;
	}
};

/** Words alone: titles hold no values. */
const plain = (inlines: readonly Inline[]): string =>
	inlines
		.map((inline) =>
			inline.kind === "text" ? inline.text : "children" in inline ? plain(inline.children) : "",
		)
		.join("");

/** How pictures of the steps are drawn for the readers of a paper. */
export const frameOptions = (
	context: PaperContext,
	size: { readonly width: number; readonly height: number; readonly size: number },
): FrameOptions => ({
	units: context.units,
	language: context.words.language,
	words: DRAWING_WORDS[context.words.language],
	keyOf: context.index.keyOf,
	...size,
});
