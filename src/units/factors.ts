/**
 * The exact definitions every conversion is made of, in SI.
 *
 * @source nist-sp-811, Appendix B (exact values; the pound-force and psi follow from the exact pound, foot and
 *         standard gravity, and are computed here rather than copied rounded)
 */

/** International foot, in metres. */
export const FOOT = 0.3048;
/** US survey foot, of older surveys and state plane coordinates: 1200/3937 m, two parts in a million longer. */
export const SURVEY_FOOT = 1200 / 3937;
export const INCH = 0.0254;
export const MILE = 5280 * FOOT;
/** Avoirdupois pound, in kilograms. */
export const POUND = 0.45359237;
/** Standard acceleration of gravity, m/s². */
export const STANDARD_GRAVITY = 9.80665;
export const POUND_FORCE = POUND * STANDARD_GRAVITY;
export const PSI = POUND_FORCE / INCH ** 2;
/** US gallon: 231 cubic inches, in cubic metres. */
export const GALLON = 231 * INCH ** 3;
/** Petroleum barrel: 42 US gallons. */
export const BARREL = 42 * GALLON;
export const CUBIC_FOOT = FOOT ** 3;
/** Acre: 43,560 square feet (international foot). */
export const ACRE = 43_560 * FOOT ** 2;
/** Density of water that the trade's specific gravity is taken against: 1 g/cm³. */
export const WATER = 1000;
