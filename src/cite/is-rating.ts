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
	"casing/collapse",
	"casing/collapse-yield",
	"casing/collapse-plastic",
	"casing/collapse-transition",
	"casing/collapse-elastic",
]);

/** Formulas that pick one of several pressures. */
const PICKED: ReadonlySet<string> = new Set([
	"casing/least-internal-yield",
	"casing/least-collapse",
	"stimulation/least-pressure",
	"cement/least-bump-limit",
]);

/** The given values of which the picked one may be. */
const candidates = (given: Given): readonly Known[] =>
	Array.isArray(given) ? given.flatMap(candidates) : isKnown(given) ? [given] : [];

/**
 * Whether a value is the pressure that a pipe is rated for, from inside or from outside. Such ratings are published to the nearest 10 psi
 * (API TR 5C3), and every paper prints them so: one quantity, one rounding.
 */
export const isRating = ({ from, value }: Pick<Known, "from" | "value">): boolean => {
	if (from.kind !== "worked") return false;
	if (RATINGS.has(from.formula)) return true;
	if (!PICKED.has(from.formula)) return false;
	const picked = Object.values(from.inputs)
		.flatMap(candidates)
		.find((each) => each.value === value);
	return picked !== undefined && isRating(picked);
};
