import type { Said } from "../messages/message.ts";
import type { Path } from "./path.ts";

/** Half-open range of characters in a file's text. */
export type Range = readonly [start: number, end: number];

/** Answers where in a text a path of its tree stands. */
export interface Positions {
	/** The value at `path`; where there is none, the nearest existing parent, and `exact` is false. */
	readonly valueRange: (path: Path) => { readonly range: Range; readonly exact: boolean };
	/** The key of the entry at `path`, or its value where it has no key (an item of a list). */
	readonly keyRange: (path: Path) => { readonly range: Range; readonly exact: boolean };
	/** The path in words: an item of a list by its id or name, or by its number from 1. */
	readonly trail: (path: Path) => readonly Said[];
}

/** What the printer needs of a file: its text, and its positions if a tree could be read from it. */
export interface SourceText {
	readonly text: string;
	readonly positions?: Positions;
}

/** Line and column as editors count them, from 1. A tab is one column. */
export interface LineColumn {
	readonly line: number;
	readonly column: number;
}

/** Start offset of every line; `\r\n`, `\n` and a lone `\r` end one. */
export const lineStarts = (text: string): number[] => {
	const starts = [0];
	for (const end of text.matchAll(/\r\n|\n|\r/g)) starts.push(end.index + end[0].length);
	return starts;
};

/** Line and column of a character offset; an offset outside the text gives its nearest end. */
export const lineColumn = (starts: readonly number[], offset: number): LineColumn => {
	let low = 0;
	let high = starts.length - 1;
	while (low < high) {
		const middle = Math.ceil((low + high) / 2);
		if ((starts[middle] ?? 0) <= offset) low = middle;
		else high = middle - 1;
	}
	return { line: low + 1, column: Math.max(0, offset - (starts[low] ?? 0)) + 1 };
};
