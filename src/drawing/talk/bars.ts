import type { Drawing, Shape } from "../../document/shapes.ts";
import { type Line, lineText, run, setLine, wrap } from "../line-of-text.ts";
import { boxPath, n } from "../lithology.ts";
import { named } from "../named.ts";
import { INK, PAPER, SECOND_INK } from "../palette.ts";

export interface BarRow {
	readonly name: string;
	/** Length of the bar, in the unit that all rows share. */
	readonly value: number;
	/** From the least to the greatest it may be. */
	readonly range?: readonly [number, number];
	/** Printed behind the bar. */
	readonly says: Line;
	/** In full ink; the others are open. */
	readonly strong: boolean;
}

interface BarOptions {
	readonly id: string;
	readonly title: string;
	readonly scale: string;
	readonly width: number;
	readonly height: number;
	/** Type size [pt]. */
	readonly size: number;
	/** Share of the width for names. */
	readonly names?: number;
}

/** Rows of bars from one zero, each with its name before it and its number behind it: few, and large. */
export const barDrawing = (rows: readonly BarRow[], options: BarOptions): Drawing => {
	const { width, height, size, names = 0.36 } = options;
	const left = width * names;
	const most = Math.max(...rows.flatMap(({ value, range }) => [value, ...(range ?? [])]), 1e-9);
	const behind = Math.max(...rows.map(({ says }) => textRoom(says, size)));
	const room = width - left - behind - size * 0.8;
	const tall = Math.min(height / Math.max(rows.length, 1), size * 3.2);
	const bar = Math.min(tall * 0.5, size * 1.2);
	const reach = (value: number): number => left + (value / most) * room;
	const shapes = rows.flatMap((row, i): Shape[] => {
		const middle = (i + 0.5) * tall;
		const lines = wrap(
			[run(row.name, { weight: row.strong ? "bold" : "regular" })],
			size,
			left - size * 0.6,
			2,
		);
		const end = reach(Math.max(row.value, row.range?.[1] ?? 0));
		return [
			named(
				`label name ${i + 1}`,
				lines.flatMap((line, k) =>
					setLine(line, {
						x: left - size * 0.5,
						y: middle + size * 0.34 + (k - (lines.length - 1) / 2) * size * 1.1,
						size,
						anchor: "end",
					}),
				),
			),
			{
				kind: "path",
				d: boxPath({
					x: left,
					y: middle - bar / 2,
					width: Math.max(reach(row.value) - left, 1.5),
					height: bar,
				}),
				fill: row.strong ? INK : PAPER,
				stroke: { color: INK, width: Math.max(0.8, size * 0.09) },
			},
			...(row.range === undefined
				? []
				: rangeMark(reach(row.range[0]), reach(row.range[1]), middle + bar / 2 + size * 0.28, bar, size)),
			named(
				`label value ${i + 1}`,
				setLine(row.says, { x: end + size * 0.5, y: middle + size * 0.34, size }),
			),
		];
	});
	return {
		id: options.id,
		width,
		height: tall * rows.length,
		title: options.title,
		alternative: `${rows.map(({ name, says }) => `${name}: ${lineText(says)}.`).join(" ")} ${options.scale}`,
		scale: options.scale,
		shapes: [
			{
				kind: "line",
				x1: left,
				y1: 0,
				x2: left,
				y2: tall * rows.length,
				stroke: { color: INK, width: Math.max(0.8, size * 0.08) },
			},
			...shapes,
		],
	};
};

const textRoom = (line: Line, size: number): number => lineText(line).length * size * 0.56;

/** From the least to the greatest: a line with short ends under the bar. */
const rangeMark = (from: number, to: number, y: number, bar: number, size: number): Shape[] => [
	{
		kind: "path",
		d: `M${n(from)} ${n(y - bar * 0.16)}v${n(bar * 0.32)}M${n(from)} ${n(y)}H${n(to)}M${n(to)} ${n(y - bar * 0.16)}v${n(bar * 0.32)}`,
		stroke: { color: SECOND_INK, width: Math.max(1, size * 0.12) },
	},
];
