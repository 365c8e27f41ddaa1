/** Longest word that is never broken; beyond it, keys and formulas may break behind their joints. */
const WHOLE_WORD = 16;

/** Where a word may be broken over lines (never with a hyphen: see `unhyphenated`). */
export const piecesOf = (word: string): string[] =>
	word.length <= WHOLE_WORD ? [word] : word.split(/(?<=[._/=·-])/u);
