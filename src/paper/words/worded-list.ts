import type { CompileWithin } from "./questions.ts";
import type { Template } from "./template.ts";

/** An entry of a list of words: what it is of, what the well must have for it, and its words. */
export interface WordedEntry {
	readonly id: string;
	/** Names of the narrative that must be there for the entry to be told. */
	readonly needs: readonly string[];
	/** Fields that are words to be filled. */
	readonly words: Readonly<Record<string, Template>>;
	/** Fields that are names of something else. */
	readonly plain: Readonly<Record<string, string>>;
}

interface WordedList {
	/** Below `templates/<language>/`. */
	readonly file: string;
	readonly key: string;
	/** Fields that are words; every other is a name. */
	readonly words: readonly string[];
}

/** Lists whose entries hold words; the build compiles each of them. */
export const FRAME_WORDS: WordedList = {
	file: "sequence/frames.yaml",
	key: "frames",
	words: ["title", "say", "shows", "answer"],
};
export const SLIDE_WORDS: WordedList = {
	file: "slides/slides.yaml",
	key: "slides",
	words: ["title", "say", "exact", "answer"],
};
export const WORDED_LISTS: readonly WordedList[] = [FRAME_WORDS, SLIDE_WORDS];

/**
 * Checks and compiles such a list.
 *
 * @throws Error naming the file and the place
 */
export const wordedEntries = (
	data: unknown,
	{ file, key, words }: WordedList,
	compile: CompileWithin,
): readonly WordedEntry[] => {
	const list = isRecord(data) ? data[key] : undefined;
	if (!Array.isArray(list)) throw new Error(`${file}: ${key} must be a list`);
	return list.map((node: unknown, i): WordedEntry => {
		const where = `${file}: ${key}[${i}]`;
		const id = isRecord(node) ? node["id"] : undefined;
		if (!isRecord(node) || typeof id !== "string") throw new Error(`${where} needs an id`);
		const { needs } = node as { needs?: unknown };
		const said = Object.entries(node).filter(([name]) => name !== "id" && name !== "needs");
		for (const [name, value] of said)
			if (typeof value !== "string" || value === "") throw new Error(`${where}.${name} must be words`);
		const texts = said as readonly (readonly [string, string])[];
		return {
			id,
			needs: Array.isArray(needs) ? needs.map(String) : [],
			words: Object.fromEntries(
				texts
					.filter(([name]) => words.includes(name))
					.map(([name, value]) => [name, compile(`${where}.${name}`, value)]),
			),
			plain: Object.fromEntries(texts.filter(([name]) => !words.includes(name))),
		};
	});
};

const isRecord = (node: unknown): node is Record<string, unknown> =>
	typeof node === "object" && node !== null && !Array.isArray(node);
