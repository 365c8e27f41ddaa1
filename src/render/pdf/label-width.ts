import type { Block } from "../../document/blocks.ts";
import { textWidth } from "../../measure/text-width.ts";
import { printCell } from "../print/print-text.ts";
import type { Scene } from "./scene.ts";
import { wrapped } from "./wrapped.ts";

type Fact = Extract<Block, { kind: "facts" }>["items"][number];

/** Space between a label and its value [pt]. */
export const LABEL_GAP = 8;
/** Shares of the width that labels may take, the least first. */
const SHARES = [0.25, 0.3, 0.35, 0.4, 0.45, 0.5];

/**
 * Width for the labels of pairs that stand in lines [pt]: the one with which all lines together are lowest; of equals,
 * the first in which every label keeps to one line, else the least.
 */
export const labelWidth = (
	lines: readonly (readonly Fact[])[],
	width: number,
	size: number,
	{ printing }: Scene,
): number => {
	const facts = lines.flat();
	const longest = Math.max(...facts.map(({ label }) => textWidth(label, { size }))) + LABEL_GAP;
	const bounded = Math.min(Math.max(longest, width * 0.25), width * 0.5);
	const rowsOf = ({ label, value }: Fact, share: number): number => {
		const room = width - share;
		const text = value.kind === "rich" ? "" : printCell(value, printing);
		return Math.max(
			wrapped(label, share - LABEL_GAP, { size }).length,
			text
				.split("\n")
				.reduce((sum, line) => sum + wrapped(line, room, { size, weight: "semibold" }).length, 0),
		);
	};
	const rows = (share: number): number =>
		lines.reduce((sum, line) => sum + Math.max(...line.map((fact) => rowsOf(fact, share))), 0);
	// However long a value is, no word of a label is parted.
	const words = facts.flatMap(({ label }) => label.split(/\s+/u));
	const least = Math.max(...words.map((word) => textWidth(word, { size }))) + LABEL_GAP;
	return [bounded, ...SHARES.map((share) => share * width)]
		.map((share) => Math.max(share, least))
		.map((share) => ({ share, rows: rows(share) }))
		.reduce((best, each) => (each.rows < best.rows ? each : best)).share;
};
