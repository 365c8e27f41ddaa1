/**
 * A step of a treatment in the reader's language, where `given` has its words; as it was written where it has not. A number
 * behind the words, as in `sand 2`, stays.
 */
export const stepName = (name: string, given: (words: string) => string | undefined): string =>
	name.replace(/^\D*[^\d\s](?=\s*\d*$)/u, (words) => given(words) ?? words);
