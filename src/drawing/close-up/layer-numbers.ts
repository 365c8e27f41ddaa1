import type { Shape } from "../../document/shapes.ts";
import { RING, ring } from "../charts/ring.ts";
import { placeInOrder } from "../label-column.ts";
import type { LegendEntry } from "../legend.ts";
import type { Line } from "../line-of-text.ts";
import { n } from "../lithology.ts";
import { INK, PAPER } from "../palette.ts";
import type { View } from "../schematic/view.ts";
import type { Layer } from "./layers.ts";

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
		places.map((anchor) => ({ anchor, size: 2 * RING + 1.5 })),
		middle - 4,
		frame.lane,
	);
	return inward.flatMap((_, i): Shape[] => {
		const place = places[i] ?? middle;
		const x = (starts[i] ?? place) + RING + 0.75;
		const d = `M${n(x)} ${n(row)}L${n(x)} ${n(row + RING + 2)}L${n(place)} ${n(y - 5)}V${n(y)}`;
		return [
			{ kind: "path", d, stroke: { color: PAPER, width: 2 } },
			{ kind: "path", d, stroke: { color: INK, width: 0.6 } },
			...ring([x, row], layers.length - i),
		];
	});
};

/** The same numbers with what each layer is. */
export const layerEntries = (lines: readonly Line[]): LegendEntry[] =>
	lines.map((text, i) => ({ text, swatch: ring([11, 4.5], i + 1) }));
