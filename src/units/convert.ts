import type { Dimension, Unit } from "./dimensions.ts";
import { definitionOf, unitOf } from "./units-of.ts";

const rescale = (value: number, from: Unit, to: Unit): number => {
	if (from === to) return value;
	const shift = (from.zero ?? 0) - (to.zero ?? 0);
	return (value * from.si + shift) / to.si;
};

/**
 * A value written in `unit`, in the dimension's canonical unit. Exact to the last bit or two of a double, and unchanged
 * where the unit is the canonical one.
 *
 * Throws a RangeError if the dimension has no unit of that symbol.
 */
export const toCanonical = (value: number, dimension: Dimension, unit: string): number =>
	rescale(value, unitOf(dimension, unit), unitOf(dimension, definitionOf(dimension).canonical));

/** The inverse of `toCanonical`. */
export const fromCanonical = (value: number, dimension: Dimension, unit: string): number =>
	rescale(value, unitOf(dimension, definitionOf(dimension).canonical), unitOf(dimension, unit));
