/**
 * Ratings are printed as the trade's tables print them: pressures to 10 psi, forces to 1,000 lbf. Nothing is calculated
 * from a rounded rating.
 *
 * @source api-5c2, convention of the tables (from memory)
 */
export const PRINTED_RATING = { pressure: 10, force: 1000 } as const;

/**
 * To the nearest multiple of `step`, exact halves up. A value that misses a half only by the last bits of its arithmetic
 * counts as the half.
 */
export const roundHalfUp = (value: number, step: number): number =>
	Math.floor(value / step + 0.5 + 1e-9) * step;
