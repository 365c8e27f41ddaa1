import { Lexer } from "yaml";

/** Marks that the lexer puts between its tokens; they stand for nothing in the text. */
const MARKS = new Set(["\u0002", "\u0018", "\u001f"]);

/** The pieces that a YAML reader cuts the text into, each with its offset. */
export function* lexemes(text: string): Generator<readonly [lexeme: string, offset: number]> {
	let offset = 0;
	for (const lexeme of new Lexer().lex(text)) {
		if (MARKS.has(lexeme)) continue;
		yield [lexeme, offset];
		offset += lexeme.length;
	}
}
