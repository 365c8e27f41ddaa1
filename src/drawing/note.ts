import type { Shape } from "../document/shapes.ts";
import { type Line, run, setLine, wrap } from "./line-of-text.ts";
import { named } from "./named.ts";
import { SECOND_INK } from "./palette.ts";

const LEADING = 1.25;
const MOST = 4;

/** What a drawing says of itself, under it: its scale, and what it leaves out. */
export interface Note {
	readonly lines: readonly Line[];
	readonly size: number;
	/** [pt] */
	readonly tall: number;
}

export const noteOf = (sentences: readonly string[], size: number, width: number): Note => {
	const lines = wrap([run(sentences.join(" "), { italic: true, color: SECOND_INK })], size, width, MOST);
	return { lines, size, tall: lines.length * size * LEADING };
};

/** Sets a note with its top at `y`. */
export const noteShapes = ({ lines, size }: Note, y: number): Shape =>
	named(
		"label scale",
		lines.flatMap((line, i) => setLine(line, { x: 0, y: y + size * (0.95 + i * LEADING), size })),
	);
