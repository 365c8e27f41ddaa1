import type { Shape } from "../../document/shapes.ts";
import type { CasingString, Well } from "../../well/well.ts";
import { hangerMark, wellheadMark } from "../marks/wellhead.ts";
import type { View } from "./view.ts";

/** A string that ends at the casing hanger ends no further from it than this [ft]. */
const THERE = 1;

/** Strings that hang in the wellhead, each inside another one, from the outermost inward. */
export const hungAtSurface = ({ strings, datum }: Well): readonly CasingString[] =>
	strings.filter(({ within, top }) => within !== undefined && top.value <= datum.casingHanger.value + THERE);

/** The wellhead above the ground, and what hangs in it; of the public's drawing neither. */
export const wellheadPart = ({ well, frame, scale, axis, nest, detail }: View): Shape[] => {
	const hung = hungAtSurface(well);
	const carried = hung.flatMap((string) => well.strings.find(({ id }) => id === string.within) ?? []);
	if (detail === "plain" || hung.length === 0) return [];
	return [
		...hung.flatMap((string, i) => {
			const outside = carried[i];
			return outside === undefined
				? []
				: hangerMark(axis.at(string.top.value), nest.string(string).outer, nest.string(outside).inner);
		}),
		...wellheadMark(
			frame.middle,
			scale.y(well.datum.groundLevel.value),
			carried.map((string) => nest.string(string).outer),
		),
	];
};
