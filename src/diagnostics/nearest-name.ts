import { distance } from "fastest-levenshtein";

const plain = (word: string): string => word.toLowerCase().replace(/[\s_-]+/g, "");

/** The word of a list that was probably meant, or nothing where none is near: a third of the letters may differ. */
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
	// A word of one or two letters is one edit from almost anything.
	return best !== undefined && (written.length > 2 || best.edits === 0) ? best.name : undefined;
};
