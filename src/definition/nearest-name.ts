/** Edits (insert, delete, replace, swap of neighbors) that turn one word into the other. */
const distance = (from: string, to: string): number => {
	let beforeLast: number[] = [];
	let last = Array.from({ length: to.length + 1 }, (_, i) => i);
	for (let i = 1; i <= from.length; i++) {
		const row = [i];
		for (let j = 1; j <= to.length; j++) {
			const same = from[i - 1] === to[j - 1];
			const swapped = i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1];
			row.push(
				Math.min(
					(row[j - 1] ?? 0) + 1,
					(last[j] ?? 0) + 1,
					(last[j - 1] ?? 0) + (same ? 0 : 1),
					swapped ? (beforeLast[j - 2] ?? 0) + 1 : Number.POSITIVE_INFINITY,
				),
			);
		}
		beforeLast = last;
		last = row;
	}
	return last[to.length] ?? 0;
};

const plain = (word: string): string => word.toLowerCase().replace(/[\s_-]+/g, "");

/** The word of a list that was probably meant, or nothing where none is near: a third of the letters may differ. */
export const nearestName = (word: string, words: readonly string[]): string | undefined => {
	const written = plain(word);
	let best: { readonly name: string; readonly edits: number } | undefined;
	for (const name of words) {
		const edits = distance(written, plain(name));
		if (
			edits <= Math.max(1, Math.floor(written.length / 3)) &&
			edits < (best?.edits ?? Number.POSITIVE_INFINITY)
		)
			best = { name, edits };
	}
	// A word of one or two letters is one edit from almost anything.
	return best !== undefined && (written.length > 2 || best.edits === 0) ? best.name : undefined;
};
