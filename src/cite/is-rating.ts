import type { Given, Known } from "./known.ts";
import { isKnown } from "./known.ts";

/** Formulas that give the pressure a pipe is rated for. */
const RATINGS: ReadonlySet<string> = new Set([
	"casing/internal-yield",
	"casing/round-coupling-yield",
	"casing/buttress-coupling-yield",
	"casing/buttress-leak",
	"casing/buttress-internal-pressure",
	"casing/worn-rating",
]);

/** Formulas that pick one of several pressures. */
const PICKED: ReadonlySet<string> = new Set(["casing/least-internal-yield", "stimulation/least-pressure"]);

const isRatingGiven = (given: Given): boolean =>
	Array.isArray(given) ? given.every(isRatingGiven) : isKnown(given) && isRating(given);

/**
 * Whether a value is the internal pressure that a pipe is rated for. Such ratings are published to the nearest 10 psi
 * (API TR 5C3), and every paper prints them so: one quantity, one rounding.
 */
export const isRating = ({ from }: Pick<Known, "from">): boolean =>
	from.kind === "worked" &&
	(RATINGS.has(from.formula) ||
		(PICKED.has(from.formula) && Object.values(from.inputs).every(isRatingGiven)));
