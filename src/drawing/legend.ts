import type { Shape } from "../document/shapes.ts";
import { type Line, lineText, lineWidth, run, setLine, wrap } from "./line-of-text.ts";
import { SECOND_INK } from "./palette.ts";

/** One thing a legend explains; the swatch is drawn in a box of `SWATCH` with its corner at the origin. */
export interface LegendEntry {
	readonly text: string | Line;
	readonly swatch: readonly Shape[];
}

export const SWATCH = { width: 16, height: 9 } as const;

/** A line as it is drawn, across a swatch. */
export const strokeSwatch = (color: string, width: number, dash?: readonly number[]): Shape => ({
	kind: "line",
	x1: 0,
	y1: SWATCH.height / 2,
	x2: SWATCH.width,
	y2: SWATCH.height / 2,
	stroke: { color, width, ...(dash === undefined ? {} : { dash }) },
});

interface LegendBox {
	readonly x: number;
	readonly width: number;
	readonly size: number;
}

const lineOf = ({ text }: LegendEntry): Line =>
	typeof text === "string" ? [run(text, { color: SECOND_INK })] : text;

const rowHeight = (size: number, lines: number) =>
	Math.max(SWATCH.height, size) + 4 + (lines - 1) * size * LEADING;

const LEADING = 1.15;
/** Lines that an entry wider than the whole legend is broken into at most. */
const MOST_LINES = 3;
const INDENT = SWATCH.width + 4;

interface Row {
	readonly top: number;
	readonly height: number;
	readonly entries: readonly {
		readonly entry: LegendEntry;
		readonly x: number;
		readonly lines: readonly Line[];
	}[];
}

const flow = (entries: readonly LegendEntry[], { width, size }: LegendBox): readonly Row[] => {
	const rows: Row[] = [];
	let x = 0;
	for (const entry of entries) {
		const line = lineOf(entry);
		const room = width - INDENT;
		const wide = lineWidth(line, size);
		const lines = wide <= room ? [line] : wrap(line, size, room, MOST_LINES);
		const last = rows.at(-1);
		const height = rowHeight(size, lines.length);
		const taken = INDENT + Math.min(wide, room);
		if (last !== undefined && x + taken <= width)
			rows[rows.length - 1] = {
				...last,
				height: Math.max(last.height, height),
				entries: [...last.entries, { entry, x, lines }],
			};
		else {
			x = 0;
			rows.push({ top: (last?.top ?? 0) + (last?.height ?? 0), height, entries: [{ entry, x, lines }] });
		}
		x += taken + 12;
	}
	return rows;
};

export const legendHeight = (entries: readonly LegendEntry[], box: LegendBox): number =>
	flow(entries, box).reduce((sum, { height }) => sum + height, 0);

/** Entries from left to right, in as many rows as they need; one wider than the legend stands on several lines. */
export const legendShapes = (
	entries: readonly LegendEntry[],
	box: LegendBox & { readonly y: number },
): Shape[] =>
	flow(entries, box).flatMap(({ top, entries: inRow }) =>
		inRow.flatMap(({ entry, x, lines }): Shape[] => {
			const [left, y] = [box.x + x, box.y + top];
			return [
				{ kind: "group", dx: left, dy: y, children: entry.swatch },
				{
					kind: "group",
					dx: 0,
					dy: 0,
					name: `label legend ${lineText(lineOf(entry))}`,
					children: lines.flatMap((line, i) =>
						setLine(line, {
							x: left + INDENT,
							y: y + SWATCH.height / 2 + box.size * (0.34 + i * LEADING),
							size: box.size,
						}),
					),
				},
			];
		}),
	);
