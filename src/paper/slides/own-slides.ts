import type { OwnSlide, SlideWords } from "../../catalog/own-slides.ts";
import type { Block } from "../../document/blocks.ts";
import type { Language } from "../../document/document.ts";
import type { Inline } from "../../document/inline.ts";
import { blocksFromMarkdown } from "../words/markdown.ts";
import { Vault } from "../words/vault.ts";

/*
 * takes  a slide as a presenter wrote it, and the values of the well
 * gives  its words in one language, with the values in them as the other slides say them
 * may not  leave a gap where the well has no value: `own-slide-faults.ts` refuses the slide before it is composed
 */

/**
 * Values of a well that a slide's words may name. What is told of the water's protection is not among them: it follows the
 * verdicts, and no words of one's own can.
 */
export const SLIDE_VALUES = [
	"additive_share",
	"agency_case",
	"agency_name",
	"agency_phone",
	"busiest_trips",
	"comments_until",
	"county",
	"crack_least",
	"crack_most",
	"depth_below_ground",
	"emergency_number",
	"expected_pressure",
	"lateral",
	"lateral_direction",
	"maximum_pressure",
	"noise_home",
	"noise_limit",
	"operator",
	"pad_area",
	"protected_base",
	"recycled_water",
	"relief_pressure",
	"route",
	"sand",
	"sand_share",
	"separation",
	"stages",
	"total_loads",
	"total_trips",
	"water",
	"water_share",
	"well",
	"work_starts",
] as const;

/** A value's name in braces. */
export const NAMED = /\{([^{}]*)\}/gu;

/** A file of slides that was read and found good. */
export interface OwnSlidesFile {
	readonly name: string;
	readonly slides: readonly OwnSlide[];
}

export const spokenIn = (words: SlideWords, language: Language): string =>
	typeof words === "string" ? words : words[language];

/**
 * Markdown with values in it, as blocks.
 *
 * @throws Error for what a slide has no block for
 */
export const filledBlocks = (markdown: string, data: Readonly<Record<string, unknown>>): readonly Block[] => {
	const vault = new Vault();
	const sealed = markdown.replaceAll(NAMED, (_, name: string) => String(vault.seal(data[name.trim()])));
	return blocksFromMarkdown(sealed, vault);
};

/** Of paragraphs the words alone, as one run of text. */
export const filledWords = (markdown: string, data: Readonly<Record<string, unknown>>): readonly Inline[] =>
	filledBlocks(markdown, data).flatMap((block, i): readonly Inline[] =>
		block.kind === "paragraph"
			? [...(i === 0 ? [] : [{ kind: "text", text: " " } as const]), ...block.children]
			: [],
	);
