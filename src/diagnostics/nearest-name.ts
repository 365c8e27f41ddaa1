import { distance } from "fastest-levenshtein";

const plain = (word: string): string => word.toLowerCase().replace(/[\s_-]+/g, "");

/**
 * The word of a list that was probably meant, or nothing where none is near: a third of the letters may differ, or the word
 * is cut short (`plug and perf`).
 */
export const nearestName = (word: string, words: readonly string[]): string | undefined => {
	const written = plain(word);
	let best: { readonly name: string; readonly edits: number } | undefined;
	for (const name of words) {
		const edits = distance(written, plain(name));
		if (
			edits <= Math.max(1, Math.ceil(written.length / 3)) &&
			edits < (best?.edits ?? Number.POSITIVE_INFINITY)
		)
			best = { name, edits };
	}
	const longer = written.length > 2 ? words.filter((name) => plain(name).startsWith(written)) : [];
	if (best === undefined && longer.length === 1) return longer[0];
	// A word of one or two letters is one edit from almost anything.
	return best !== undefined && (written.length > 2 || best.edits === 0) ? best.name : undefined;
};
