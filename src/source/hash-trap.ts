import { Lexer } from "yaml";

/** Marks that the lexer puts between its tokens; they stand for nothing in the text. */
const MARKS = new Set(["\u0002", "\u0018", "\u001f"]);

/**
 * Offsets of every `#` that starts a comment but was meant as part of a value: `8.8 #/gal`, `Sorrel #3`. A comment has
 * a space or a letter after its `#` and so is told apart.
 */
export const hashTraps = (text: string): ReadonlySet<number> => {
	const found = new Set<number>();
	let offset = 0;
	for (const token of new Lexer().lex(text)) {
		if (MARKS.has(token)) continue;
		if (/^#[\d/]/.test(token)) {
			const lineStart = offset === 0 ? 0 : text.lastIndexOf("\n", offset - 1) + 1;
			if (text.slice(lineStart, offset).trim() !== "") found.add(offset);
		}
		offset += token.length;
	}
	return found;
};
