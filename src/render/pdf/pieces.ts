/** Longest word that is never broken; beyond it, keys and formulas may break behind their joints. */
const WHOLE_WORD = 16;

/** Where a word that no line can hold may be broken; never with a hyphen, with which a key or a number would read as another. */
export const piecesOf = (word: string): string[] =>
	word.length <= WHOLE_WORD ? [word] : word.split(/(?<=[._/=·-])/u);
