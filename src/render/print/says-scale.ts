import type { Drawing, Shape } from "../../document/shapes.ts";

/** Letters of the scale statement that a label of the drawing must share to be it; the label may be broken into lines. */
const TELLING = 16;

/** Whether the drawing itself carries its scale statement. */
export const saysScale = ({ shapes, scale }: Drawing): boolean => says(shapes, scale.slice(0, TELLING));

const says = (shapes: readonly Shape[], start: string): boolean =>
	shapes.some((shape) =>
		shape.kind === "group"
			? says(shape.children, start)
			: shape.kind === "text" && shape.text.startsWith(start),
	);
