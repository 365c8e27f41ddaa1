import type { Shape } from "../../document/shapes.ts";
import { boxPath } from "../lithology.ts";
import { INK, PAPER } from "../palette.ts";

/** An open bar beside the rock column: the target, where its tint cannot be told from white. `x` is the column's edge. */
export const targetBar = (x: number, y: number, height: number): Shape[] => [
	{
		kind: "path",
		d: boxPath({ x: x - 3.6, y: y + 0.4, width: 2.4, height: Math.max(height - 0.8, 0.4) }),
		fill: PAPER,
		stroke: { color: INK, width: 0.8 },
	},
];
