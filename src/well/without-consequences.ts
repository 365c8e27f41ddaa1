import type { Code } from "../diagnostics/codes.ts";
import { diagnose } from "../diagnostics/diagnose.ts";
import type { Diagnostic, Place } from "../diagnostics/diagnostic.ts";
import { pathKey } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";

/*
 * One slip, one message: where several checks stumble over the same value, the value is told of and the stumbling is not.
 */

const pointsTo = ({ related = [] }: Diagnostic): readonly string[] =>
	related.map(({ at }) => pathKey(at.path));

const pointedToBy = (faults: readonly Diagnostic[], code: Code): ReadonlySet<string> =>
	new Set(faults.filter((each) => each.code === code).flatMap(pointsTo));

/** A fault that follows from another where both point to the same value. */
const FOLLOWS: readonly (readonly [consequence: Code, cause: Code])[] = [
	// A hole that its own pipe does not fit is itself too narrow; that the next one is wider follows.
	["well/hole-diameter", "well/pipe-hole"],
	// A hole that ends above its shoe ends above its survey too.
	["well/beyond-total-depth", "well/shoe-below-hole"],
];

/** What is attached to a string and reaches below its shoe. */
const BELOW_SHOE: ReadonlySet<Code> = new Set<Code>([
	"well/slurry-bottom",
	"well/centralizer-range",
	"well/stage-outside",
]);

/** From so many on it is the shoe that is wrong. */
const AGREE = 3;

export const withoutConsequences = (found: readonly Diagnostic[]): readonly Diagnostic[] => {
	const faults = FOLLOWS.reduce<readonly Diagnostic[]>((left, [consequence, cause]) => {
		const places = pointedToBy(left, cause);
		return left.filter(
			(each) => each.code !== consequence || !pointsTo(each).some((place) => places.has(place)),
		);
	}, found);
	return shallowShoes(faults);
};

const shallowShoes = (faults: readonly Diagnostic[]): readonly Diagnostic[] => {
	const byShoe = new Map<string, Diagnostic[]>();
	for (const each of faults) {
		const [shoe] = BELOW_SHOE.has(each.code) ? pointsTo(each) : [];
		if (shoe !== undefined) byShoe.set(shoe, [...(byShoe.get(shoe) ?? []), each]);
	}
	return [...byShoe.values()]
		.filter((group) => group.length >= AGREE)
		.reduce<readonly Diagnostic[]>((left, group) => {
			const shoe = group[0]?.related?.[0]?.at;
			return shoe === undefined
				? left
				: [...left.filter((each) => !group.includes(each)), tooShallow(shoe, group)];
		}, faults);
};

const tooShallow = (shoe: Place, group: readonly Diagnostic[]): Diagnostic =>
	diagnose("well/shoe-too-shallow", shoe, {
		what: message("well/shoe-too-shallow.what", { group: String(group.length) }),
		expected: message("well/shoe-too-shallow.expected"),
		mend: message("well/shoe-too-shallow.mend"),
		related: group.map(({ at, what }) => ({ at, label: what })),
	});
