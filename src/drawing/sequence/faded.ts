import type { Shape } from "../../document/shapes.ts";
import { CEMENT_GRAIN, INK, tint, VERMILLION, WALL } from "../palette.ts";

/** What was there before is lighter than what a step adds; it keeps 3:1 on white. */
const LIGHTER: ReadonlyMap<string, string> = new Map([
	[INK, "#8c8c8c"],
	[WALL, "#8c8c8c"],
	[CEMENT_GRAIN, "#a39d92"],
	[VERMILLION, tint(VERMILLION, 0.7)],
]);

const lighter = (color: string): string => LIGHTER.get(color) ?? color;

/** Shapes of an earlier step: in grey. Words stay as they are. */
export const faded = (shapes: readonly Shape[]): Shape[] => shapes.map(fade);

const fade = (shape: Shape): Shape => {
	if (shape.kind === "text") return shape;
	if (shape.kind === "group") return { ...shape, children: faded(shape.children) };
	if (shape.kind === "line")
		return { ...shape, stroke: { ...shape.stroke, color: lighter(shape.stroke.color) } };
	const { fill, stroke } = shape;
	return {
		...shape,
		...(fill === undefined ? {} : { fill: lighter(fill) }),
		...(stroke === undefined ? {} : { stroke: { ...stroke, color: lighter(stroke.color) } }),
	};
};
