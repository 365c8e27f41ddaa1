import type { Shape } from "../document/shapes.ts";

/** Shapes that belong together under a name; a name that begins with `label` is of words that nothing may cover. */
export const named = (name: string, children: readonly Shape[]): Shape => ({
	kind: "group",
	dx: 0,
	dy: 0,
	name,
	children,
});
