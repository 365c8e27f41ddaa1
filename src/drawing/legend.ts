import type { Shape } from "../document/shapes.ts";
import { type Line, lineText, lineWidth, run, setLine } from "./line-of-text.ts";
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

const rowHeight = (size: number) => Math.max(SWATCH.height, size) + 4;

const flow = (entries: readonly LegendEntry[], { width, size }: LegendBox) => {
	let [x, row] = [0, 0];
	const places = entries.map((entry) => {
		const wide = SWATCH.width + 4 + lineWidth(lineOf(entry), size);
		if (x > 0 && x + wide > width) [x, row] = [0, row + 1];
		const place = { entry, x, row };
		x += wide + 12;
		return place;
	});
	return { places, rows: entries.length === 0 ? 0 : row + 1 };
};

export const legendHeight = (entries: readonly LegendEntry[], box: LegendBox): number =>
	flow(entries, box).rows * rowHeight(box.size);

/** Entries from left to right, in as many rows as they need. */
export const legendShapes = (
	entries: readonly LegendEntry[],
	box: LegendBox & { readonly y: number },
): Shape[] =>
	flow(entries, box).places.flatMap(({ entry, x, row }): Shape[] => {
		const [left, top] = [box.x + x, box.y + row * rowHeight(box.size)];
		return [
			{ kind: "group", dx: left, dy: top, children: entry.swatch },
			{
				kind: "group",
				dx: 0,
				dy: 0,
				name: `label legend ${lineText(lineOf(entry))}`,
				children: setLine(lineOf(entry), {
					x: left + SWATCH.width + 4,
					y: top + SWATCH.height / 2 + box.size * 0.34,
					size: box.size,
				}),
			},
		];
	});
