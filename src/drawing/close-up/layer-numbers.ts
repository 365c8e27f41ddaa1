import type { Shape } from "../../document/shapes.ts";
import { placeInOrder } from "../label-column.ts";
import type { LegendEntry } from "../legend.ts";
import type { Line } from "../line-of-text.ts";
import { n } from "../lithology.ts";
import { INK, PAPER } from "../palette.ts";
import type { View } from "../schematic/view.ts";
import type { Layer } from "./layers.ts";

const RADIUS = 5;

/** A number in a ring. */
const ring = (x: number, y: number, number: number): Shape[] => [
	{
		kind: "path",
		d: `M${n(x - RADIUS)} ${n(y)}a${RADIUS} ${RADIUS} 0 1 0 ${2 * RADIUS} 0a${RADIUS} ${RADIUS} 0 1 0 ${-2 * RADIUS} 0Z`,
		fill: PAPER,
		stroke: { color: INK, width: 0.7 },
	},
	{
		kind: "text",
		x,
		y: y + 2.7,
		text: String(number),
		size: 7.6,
		color: INK,
		weight: "semibold",
		anchor: "middle",
	},
];

/** Over the base of protected water, right of the bore: a number for each layer, with a line down to it. */
export const layerNumbers = ({ results, scale, axis, frame }: View, layers: readonly Layer[]): Shape[] => {
	const base = results.geology.protected_water_base;
	if (base === undefined || layers.length === 0) return [];
	const y = scale.y(base.tvd.value);
	const middle = axis.at(base.md?.value ?? base.tvd.value).x;
	const row = Math.max(y - 19, frame.top + 4);
	// From the rock inward is from right to left on this side of the hole.
	const inward = [...layers].reverse();
	const places = inward.map((layer) => middle + (layer.near + layer.far) / 2);
	const starts = placeInOrder(
		places.map((anchor) => ({ anchor, size: 2 * RADIUS + 1.5 })),
		middle - 4,
		frame.lane,
	);
	return inward.flatMap((_, i): Shape[] => {
		const place = places[i] ?? middle;
		const x = (starts[i] ?? place) + RADIUS + 0.75;
		const d = `M${n(x)} ${n(row)}L${n(x)} ${n(row + RADIUS + 2)}L${n(place)} ${n(y - 5)}V${n(y)}`;
		return [
			{ kind: "path", d, stroke: { color: PAPER, width: 2 } },
			{ kind: "path", d, stroke: { color: INK, width: 0.6 } },
			...ring(x, row, layers.length - i),
		];
	});
};

/** The same numbers with what each layer is. */
export const layerEntries = (lines: readonly Line[]): LegendEntry[] =>
	lines.map((text, i) => ({ text, swatch: ring(11, 4.5, i + 1) }));
