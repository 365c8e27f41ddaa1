import { lexemes } from "./lexemes.ts";

/**
 * Offsets of every `#` that starts a comment but was meant as part of a value: `8.8 #/gal`, `Sorrel #3`. A comment has
 * a space or a letter after its `#` and so is told apart.
 */
export const hashTraps = (text: string): ReadonlySet<number> => {
	const found = new Set<number>();
	for (const [token, offset] of lexemes(text)) {
		if (/^#[\d/]/.test(token)) {
			const lineStart = offset === 0 ? 0 : text.lastIndexOf("\n", offset - 1) + 1;
			if (text.slice(lineStart, offset).trim() !== "") found.add(offset);
		}
	}
	return found;
};
