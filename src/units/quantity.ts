import type { Dimension } from "./dimensions.ts";

declare const dimension: unique symbol;

/** A number in its dimension's canonical unit (see `DIMENSIONS`). Nominal: feet do not pass for inches. */
export type Quantity<D extends Dimension = Dimension> = number & {
	readonly [dimension]: D;
};

/** Marks a bare number as a quantity of a dimension; the caller vouches that it is in the canonical unit. */
export const quantity = <D extends Dimension>(_dimension: D, value: number): Quantity<D> =>
	value as Quantity<D>;

/** Length along the hole from the depth datum [ft]. */
export type MeasuredDepth = Quantity<"measured-depth">;
/** Vertical distance below the depth datum [ft]. */
export type TrueVerticalDepth = Quantity<"true-vertical-depth">;
/** Vertical distance below ground level [ft]. */
export type DepthBelowGround = Quantity<"depth-below-ground">;
/** Height above mean sea level [ft]. */
export type Elevation = Quantity<"elevation">;
/** [ft] */
export type Feet = Quantity<"length">;
/** Signed distance from an origin [ft] */
export type Offset = Quantity<"offset">;
/** Pipe, hole and wall sizes [in] */
export type Inches = Quantity<"diameter">;
/** [psi] */
export type Psi = Quantity<"pressure">;
/** [psi/ft] */
export type PsiPerFoot = Quantity<"pressure-gradient">;
/** [lb/gal] */
export type PoundsPerGallon = Quantity<"density">;
/** [lb/ft] */
export type PoundsPerFoot = Quantity<"linear-weight">;
/** [lbf] */
export type PoundsForce = Quantity<"force">;
/** [bbl] */
export type Barrels = Quantity<"volume">;
/** [bbl/ft] */
export type BarrelsPerFoot = Quantity<"capacity">;
/** [bbl/min] */
export type BarrelsPerMinute = Quantity<"flow-rate">;
/** [°] */
export type Degrees = Quantity<"angle">;
/** [°/100 ft] */
export type DegreesPer100Feet = Quantity<"dogleg">;
/** Fraction of one. */
export type Share = Quantity<"share">;
