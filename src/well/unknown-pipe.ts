import type { PipeDefinition } from "../definition/definition.ts";
import { nearestName } from "../diagnostics/nearest-name.ts";
import type { Path } from "../diagnostics/path.ts";
import { asWritten, type Desk, fault, placeOf } from "./desk.ts";

/** How many of the nearest sizes or weights a message names. */
const NAMED = 4;

/** The values nearest to one, in ascending order. */
const nearest = (value: number, values: readonly number[]): number[] =>
	[...new Set(values)]
		.sort((a, b) => Math.abs(a - value) - Math.abs(b - value))
		.slice(0, NAMED)
		.sort((a, b) => a - b);

/** Tells of pipe that is not in the catalogue, naming the nearest that is. */
export const unknownPipe = (written: PipeDefinition, at: Path, desk: Desk): undefined => {
	const { od, weight, wall } = written;
	const ofSize = desk.catalog.casingOfSize(od.value);
	const outside = "or, for pipe outside the catalogue, state both `weight` and `wall`";
	if (ofSize.length === 0) {
		const sizes = nearest(
			od.value,
			desk.catalog.casing.map(({ outsideDiameter }) => outsideDiameter.value),
		);
		const names = sizes.map((size) => desk.catalog.casingOfSize(size)[0]?.size ?? `${size} in`);
		return fault(desk, "well/unknown-pipe", placeOf(od, [...at, "od"]), {
			what: "the catalogue has no casing of this outside diameter",
			expected: `a listed size; the nearest are ${names.join(", ")}`,
			found: asWritten(od, "in"),
			mend: `correct the diameter, ${outside}`,
		});
	}
	const size = ofSize[0]?.size ?? "";
	if (weight !== undefined) {
		const weights = nearest(
			weight.value,
			ofSize.map(({ nominalWeight }) => nominalWeight.value),
		);
		return fault(desk, "well/unknown-pipe", placeOf(weight, [...at, "weight"]), {
			what: `the catalogue has no ${size} casing of this weight`,
			expected: `a listed weight; the nearest are ${weights.join(", ")} lb/ft`,
			found: asWritten(weight, "lb/ft"),
			mend: `correct the weight, ${outside}`,
		});
	}
	const walls = nearest(
		wall?.value ?? 0,
		ofSize.map((row) => row.wall.value),
	);
	return fault(desk, "well/unknown-pipe", placeOf(wall, [...at, "wall"]), {
		what: `the catalogue has no ${size} casing of this wall`,
		expected: `a listed wall; the nearest are ${walls.join(", ")} in`,
		...(wall === undefined ? {} : { found: asWritten(wall, "in") }),
		mend: `correct the wall, ${outside}`,
	});
};

/** Tells of a grade that is not in the catalogue. */
export const unknownGrade = (written: string, at: Path, desk: Desk): undefined => {
	const grades = desk.catalog.grades.map(({ id }) => id);
	const near = nearestName(written, grades);
	return fault(desk, "well/unknown-grade", at, {
		what: "the catalogue does not know the strength of this grade",
		expected: `one of: ${grades.join(", ")}`,
		found: written,
		mend:
			near === undefined
				? "correct the grade, or state `minimum_yield` for a maker's own"
				: `write ${near} if that is the one meant, or state \`minimum_yield\` for a maker's own`,
	});
};
