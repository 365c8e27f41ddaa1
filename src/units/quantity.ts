import type { Dimension } from "./dimensions.ts";

declare const dimension: unique symbol;

/** A number in its dimension's canonical unit (see `DIMENSIONS`). Nominal: feet do not pass for inches. */
export type Quantity<D extends Dimension = Dimension> = number & {
	readonly [dimension]: D;
};

/** Marks a bare number as a quantity of a dimension; the caller vouches that it is in the canonical unit. */
export const quantity = <D extends Dimension>(_dimension: D, value: number): Quantity<D> =>
	value as Quantity<D>;

/** Height above mean sea level [ft]. */
export type Elevation = Quantity<"elevation">;
/** [ft] */
export type Feet = Quantity<"length">;
/** Signed distance from an origin [ft] */
export type Offset = Quantity<"offset">;
/** [bbl] */
export type Barrels = Quantity<"volume">;
/** [°] */
export type Degrees = Quantity<"angle">;
/** Fraction of one. */
export type Share = Quantity<"share">;
