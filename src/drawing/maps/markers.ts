import type { Shape } from "../../document/shapes.ts";
import { n } from "../lithology.ts";
import { BLUE, INK, PAPER } from "../palette.ts";
import type { Point } from "../well-axis.ts";

/** What a place on the plan is, as drawn. */
export type MarkerKind = "water" | "building" | "other" | "offset";

const ring = (x: number, y: number, radius: number): string =>
	`M${n(x - radius)} ${n(y)}a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0Z`;

/** Water: a ring half full. Building: a gabled house. Offset well: a ring with a cross. Anything else: a diamond. */
export const marker = (kind: MarkerKind, [x, y]: Point): Shape[] => {
	const stroke = { color: INK, width: 0.8, join: "round" } as const;
	switch (kind) {
		case "water":
			return [
				{ kind: "path", d: ring(x, y, 3.4), fill: PAPER },
				{ kind: "path", d: `M${n(x - 3.4)} ${n(y)}a3.4 3.4 0 0 0 6.8 0Z`, fill: BLUE },
				{ kind: "path", d: ring(x, y, 3.4), stroke },
			];
		case "building":
			return [
				{
					kind: "path",
					d: `M${n(x - 3.2)} ${n(y + 3)}v-4l3.2 -2.8l3.2 2.8v4Z`,
					fill: PAPER,
					stroke,
				},
			];
		case "offset":
			return [
				{ kind: "path", d: ring(x, y, 3), fill: PAPER, stroke },
				{ kind: "path", d: `M${n(x - 4.6)} ${n(y)}h9.2M${n(x)} ${n(y - 4.6)}v9.2`, stroke },
			];
		case "other":
			return [
				{
					kind: "path",
					d: `M${n(x)} ${n(y - 3.6)}l3.6 3.6l-3.6 3.6l-3.6 -3.6Z`,
					fill: PAPER,
					stroke,
				},
			];
	}
};

/** North: an arrow with its left half filled. */
export const northArrow = ([x, y]: Point, height: number): Shape[] => {
	const half = height * 0.28;
	return [
		{ kind: "path", d: `M${n(x)} ${n(y)}l${n(-half)} ${n(height)}l${n(half)} ${n(-half * 0.8)}Z`, fill: INK },
		{
			kind: "path",
			d: `M${n(x)} ${n(y)}l${n(-half)} ${n(height)}l${n(half)} ${n(-half * 0.8)}l${n(half)} ${n(half * 0.8)}Z`,
			stroke: { color: INK, width: 0.8, join: "round" },
		},
	];
};
