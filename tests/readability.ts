import { syllable } from "syllable";
import type { Block } from "../src/document/blocks.ts";
import type { Inline } from "../src/document/inline.ts";

/** Words of the trade and of places whose syllables a rule of thumb miscounts. */
const COUNTED: Readonly<Record<string, number>> = {
	casing: 2,
	annulus: 3,
	proppant: 2,
	aquifer: 3,
	lateral: 3,
	surface: 2,
	tested: 2,
	treated: 2,
	intermediate: 5,
};

export interface Counts {
	readonly words: number;
	readonly sentences: number;
	readonly syllables: number;
}

/**
 * Counts by fixed rules: a numeral with its unit is one word of one syllable; a hyphenated word is one word; headings,
 * tables, labels and contacts are not counted.
 */
export const counts = (text: string): Counts => {
	const sentences = text.split(/(?<=[.?!:])\s+/u).filter((part) => /\p{L}/u.test(part));
	const words = text.match(/[\p{L}\p{N}][\p{L}\p{N}’'.,-]*/gu) ?? [];
	const syllables = words.reduce((sum, word) => {
		const bare = word.toLowerCase().replaceAll(/[^\p{L}]/gu, "");
		if (bare === "") return sum + 1;
		return sum + (COUNTED[bare] ?? Math.max(1, syllable(bare)));
	}, 0);
	return { words: words.length, sentences: Math.max(1, sentences.length), syllables };
};

/** Flesch–Kincaid grade: 0.39 words/sentences + 11.8 syllables/words − 15.59 (Kincaid et al. 1975, from a secondary copy). */
export const fleschKincaidGrade = ({ words, sentences, syllables }: Counts): number =>
	0.39 * (words / sentences) + 11.8 * (syllables / words) - 15.59;

/** Running text of blocks, a numeral for each quantity; each list item a sentence. */
export const runningText = (blocks: readonly Block[]): string =>
	blocks
		.flatMap((block): string[] => {
			switch (block.kind) {
				case "paragraph":
					return [ended(block.children.map(said).join(""))];
				case "list":
					return block.items.map((item) => runningText(item));
				case "callout":
					return [ended(block.title), runningText(block.blocks)];
				case "columns":
					return [runningText(block.blocks)];
				case "beside":
					return [runningText(block.left), runningText(block.right)];
				default:
					return [];
			}
		})
		.join(" ");

const ended = (text: string): string => (/[.?!:]\s*$/u.test(text) ? text : `${text}.`);

const said = (inline: Inline): string => {
	if (inline.kind === "text") return inline.text;
	if (inline.kind === "quantity") return "5";
	return "children" in inline ? inline.children.map(said).join("") : "";
};
