import type { Shape } from "../../document/shapes.ts";
import { INK, PAPER } from "../palette.ts";
import { type AxisPoint, closedPath } from "../well-axis.ts";
import { local } from "./local.ts";

/** A small open square outside each wall: a tool that lets cement out part of the way up. */
export const stageToolMark = (at: AxisPoint, outer: number): Shape[] => {
	const place = local(at);
	return ([1, -1] as const).map((side) => ({
		kind: "path",
		d: closedPath([
			place(side * outer, -1.9),
			place(side * (outer + 3.4), -1.9),
			place(side * (outer + 3.4), 1.9),
			place(side * outer, 1.9),
		]),
		fill: PAPER,
		stroke: { color: INK, width: 0.9 },
	}));
};

/** Pipe inside the innermost string, as wide as it is drawn. */
export const tubingWidth = (inner: number) => ({ outer: inner * 0.58, inner: inner * 0.36 });

/** An open foot: where a shoe was planned that stands elsewhere now. */
export const plannedShoeMark = (at: AxisPoint, outer: number, size: number): Shape[] => {
	const place = local(at);
	return ([1, -1] as const).map((side) => ({
		kind: "path",
		d: closedPath([place(side * outer, 0), place(side * outer, -size), place(side * (outer + size), 0)]),
		fill: PAPER,
		stroke: { color: INK, width: 0.7, join: "round" },
	}));
};
